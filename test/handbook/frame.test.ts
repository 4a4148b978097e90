import { describe, expect, test } from 'vitest';
import {
  effectiveLength,
  fitModulus,
  frameCompliance,
  offsetLeverage,
  removeCompliance,
  required,
  round,
  stressStrain,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('frame', 'elasticExtension', 'frameCompliance', 'offsetLeverage', 'effectiveLength');

describe('springs in series: d 8, Leff 48, frame 20 µm/kN', () => {
  const { area } = round({ diameter: 8 });

  test('piece 4.547284 µm/kN; slope with frame 38.901642 GPa, stiffness 40 737.704 N/mm; back to 20.000', () => {
    const piece = 48 / (210_000 * area);
    expectPrinted(piece * 1e6, '4.547284');
    // a record of piece and frame, evaluated with and without the frame
    const force = [0, 1000, 2000, 3000, 4000];
    const travel = force.map((F) => F * (piece + 2e-5));
    const testPiece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
    const window = { by: 'samples', first: 0, last: 4 } as const;
    const apparent = required(fitModulus(stressStrain({ force, travel }, testPiece), { window })).slope;
    expectPrinted(apparent / 1000, '38.901642');
    const stiffness = (apparent * area) / 48;
    expectPrinted(stiffness, '40737.704');
    expectPrinted(frameCompliance({ stiffness, modulus: 210_000, effectiveLength: 48, area }) * 1e6, '20.000');
    const corrected = required(fitModulus(stressStrain(removeCompliance({ force, travel }, 2e-5), testPiece), { window })).slope;
    expect(corrected).toBeCloseTo(210_000, 5);
  });

  test('with aluminium the slope is 28.385169 GPa', () => {
    const compliance = 48 / (70_000 * area) + 2e-5;
    const stiffness = 1 / compliance;
    expectPrinted((stiffness * 48) / area / 1000, '28.385169');
    expectPrinted(frameCompliance({ stiffness, modulus: 70_000, effectiveLength: 48, area }) * 1e6, '20.000');
  });
});

// computed from the definition: elastic strain over offset
test.each([210_000, 38_901.642, 70_000, 28_385.169])('leverage of 250 MPa at a slope of %f MPa', (modulus) => {
  expect(offsetLeverage({ stress: 250, modulus })).toBeCloseTo(250 / modulus / 0.002, 12);
});

/** Length of both fillets by the midpoint rule over 200 000 slices of the drawing: an independent derivation. */
function filletsBySlices(b: number, B: number, R: number, power: number): number {
  const slices = 200_000;
  const end = B - b >= 2 * R ? R : Math.sqrt(R ** 2 - (R - (B - b) / 2) ** 2);
  let sum = 0;
  for (let k = 0; k < slices; k += 1) {
    const x = (end * (k + 0.5)) / slices;
    sum += (b / (b + 2 * (R - Math.sqrt(R ** 2 - x ** 2)))) ** power;
  }
  return (2 * sum * end) / slices;
}

describe('effective length', () => {
  test.each([
    [8, 12, 5],
    [8, 12, 25],
    [10, 16, 3],
    [5, 30, 4],
  ])('%f to %f over R %f, round and flat, against slices', (b, B, R) => {
    const filletRadius = R;
    const round = effectiveLength({ parallelLength: 40, diameter: b, headDiameter: B, filletRadius }) - 40;
    const flat = effectiveLength({ parallelLength: 40, width: b, headWidth: B, filletRadius }) - 40;
    // the midpoint rule meets a vertical end of the arc with an error of its own
    const exact = B - b >= 2 * R ? 5 : 9;
    expect(round).toBeCloseTo(filletsBySlices(b, B, R, 2), exact);
    expect(flat).toBeCloseTo(filletsBySlices(b, B, R, 1), exact);
  });
});
