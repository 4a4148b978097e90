import { describe, expect, test } from 'vitest';
import { beamDeflection, hexagon, rectangular, round, type BendingPiece } from '../../src/index.js';
import { simulateBending, type BendingScenario } from '../../src/simulate/index.js';
import { refusal } from '../support/thrown.js';

const material = { modulus: 200_000, yieldStress: 400, tangentModulus: 5000 };
const rectangle = rectangular({ width: 8, thickness: 5 });
const disc = round({ diameter: 6 });
const flow = (strain: number): number => (strain <= 0.002 ? 200_000 * strain : 400 + 5000 * (strain - 0.002));

/** Moment at a curvature, by strips over the height. */
function momentByStrips(width: (y: number) => number, c: number, curvature: number, n = 4000): number {
  let sum = 0;
  for (let k = 0; k < n; k += 1) {
    const y = ((k + 0.5) * c) / n;
    sum += 2 * flow(curvature * y) * y * width(y) * (c / n);
  }
  return sum;
}
const shapes = {
  rectangle: { section: rectangle, c: 2.5, width: () => 8 },
  round: { section: disc, c: 3, width: (y: number) => 2 * Math.sqrt(Math.max(0, 9 - y * y)) },
} as const;

describe.each(['rectangle', 'round'] as const)('%s', (shape) => {
  const { section, c, width } = shapes[shape];
  const three: BendingPiece = { section, setup: { points: 3, span: 90 } };
  const four: BendingPiece = { section, setup: { points: 4, span: 120, arm: 35 } };

  test('moment by strips, elastic and far beyond yielding', () => {
    for (const until of [0.001, 0.0021, 0.004, 0.03]) {
      const { truth } = simulateBending({ material, piece: three, until });
      const nominal = (momentByStrips(width, c, until / c) * c) / section.secondMoment!;
      expect(truth.flexuralStrength / nominal).toBeCloseTo(1, 5);
      expect(truth.maximumForce / ((4 * momentByStrips(width, c, until / c)) / 90)).toBeCloseTo(1, 5);
    }
  });

  test.each([
    ['three points', three],
    ['four points', four],
  ])('%s: both deflections by sums of the curvature along the beam', (_, piece) => {
    const until = 0.012;
    const { record, truth } = simulateBending({ material, piece, until, logger: { extensometer: true } });
    const { span } = piece.setup;
    const arm = piece.setup.arm ?? span / 2;
    const highest = momentByStrips(width, c, until / c);
    // the curvature at each place, by halving on the moment
    const curvatureAt = (moment: number): number => {
      let [low, high] = [0, until / c];
      for (let k = 0; k < 45; k += 1) {
        const middle = (low + high) / 2;
        if (momentByStrips(width, c, middle, 500) < moment) low = middle;
        else high = middle;
      }
      return high;
    };
    const n = 400;
    let [nose, middle] = [0, 0];
    for (let k = 0; k < n; k += 1) {
      const x = ((k + 0.5) * span) / 2 / n;
      const curvature = x >= arm ? until / c : curvatureAt((highest * x) / arm);
      const dx = span / 2 / n;
      // unit forces: one at mid-span, or half of one under each nose
      nose += Math.min(x, arm) * curvature * dx;
      middle += x * curvature * dx;
    }
    expect(truth.deflection / nose).toBeCloseTo(1, 2);
    expect(Math.abs(truth.deflection / nose - 1)).toBeLessThan(2e-3);
    expect(Math.abs(record.deflection!.at(-1)! / middle - 1)).toBeLessThan(2e-3);
    expect(record.travel!.at(-1)!).toBeCloseTo(truth.deflection, 9);
  });

  test('while elastic the record is that of elementary beam theory, with frame and indentation as springs', () => {
    for (const piece of [three, four]) {
      const { record } = simulateBending({
        material: { modulus: 200_000 },
        piece,
        until: 0.0015,
        frame: { compliance: 2e-5, indentation: 3e-5, slack: 0.2 },
        logger: { extensometer: true },
      });
      const i = Math.floor(record.force.length / 2);
      const force = record.force[i]!;
      const at = (measuredAt: 'nose' | 'mid-span') =>
        beamDeflection({ force, modulus: 200_000, section, setup: { ...piece.setup, measuredAt } });
      expect(record.travel![i]!).toBeCloseTo(0.2 + 5e-5 * force + at('nose'), 9);
      expect(record.deflection![i]!).toBeCloseTo(at('mid-span'), 9);
    }
  });
});

test('three points, ideally plastic rectangle: M/My = 3/2 - 1/2 (εy/ε)², and the classical deflection (textbooks)', () => {
  const piece: BendingPiece = { section: rectangle, setup: { points: 3, span: 100 } };
  const { truth } = simulateBending({ material: { modulus: 200_000, yieldStress: 400 }, piece, until: 0.008 });
  const t = 0.25;
  const m = 1.5 - t ** 2 / 2;
  expect(truth.flexuralStrength).toBeCloseTo(400 * m, 9);
  // Prager and Hodge: deflection over that at first yield, (5 - (3 + m) sqrt(3 - 2 m)) / m²
  const atYield = (0.002 * 100 ** 2) / (6 * 5);
  expect(truth.deflection).toBeCloseTo((atYield * (5 - (3 + m) * Math.sqrt(3 - 2 * m))) / m ** 2, 8);
});

test('a proof strength of the truth is where the record crosses', () => {
  const piece: BendingPiece = { section: disc, setup: { points: 4, span: 120, arm: 40 } };
  const { record, truth } = simulateBending({ material, piece, logger: { rate: 100, extensometer: true } });
  const crossing = (motion: Float64Array, perStrain: number, offset: number): number => {
    const stress = (F: number) => (F * 40 * 3) / (2 * disc.secondMoment!);
    const i = record.force.findIndex((F, k) => motion[k]! / perStrain - stress(F) / 200_000 >= offset);
    return stress(record.force[i]!);
  };
  // s = ε (3 L² - 4 a²) / (24 c) at mid-span, ε a (3 L - 4 a) / (6 c) at the noses
  expect(crossing(record.deflection!, (3 * 120 ** 2 - 4 * 40 ** 2) / 72, 0.002) / truth.proofStrengthsAtMidSpan[1]!.stress).toBeCloseTo(
    1,
    3,
  );
  expect(crossing(record.travel!, (40 * (360 - 160)) / 18, 0.002) / truth.proofStrengths[1]!.stress).toBeCloseTo(1, 3);
  expect(simulateBending({ material, piece, until: 0.003 }).truth.proofStrengths).toEqual([]);
});

test('seeds, and wrong scenarios', () => {
  const scenario: BendingScenario = {
    material,
    piece: { section: rectangle, setup: { points: 3, span: 90 } },
    logger: { forceNoise: 1, motionNoise: 1e-3 },
  };
  expect(simulateBending(scenario)).toEqual(simulateBending(scenario));
  expect(simulateBending(scenario).record.force).not.toEqual(simulateBending({ ...scenario, seed: 2 }).record.force);
  const with_ = (change: object) => refusal(() => simulateBending({ ...scenario, ...change }));
  const setup = { points: 3, span: 90 };
  expect(with_({ piece: { section: hexagon({ acrossFlats: 5 }), setup } })).toBe('out-of-range piece.section.shape');
  expect(with_({ piece: { section: rectangle, setup: { ...setup, measuredAt: 'nose' } } })).toBe('out-of-range piece.setup.measuredAt');
  expect(with_({ material: { modulus: 1, tangentModulus: 2 } })).toBe('out-of-range material.tangentModulus');
  expect(with_({ material: { modulus: 1, yieldStress: 0 } })).toBe('not-positive material.yieldStress');
  expect(with_({ until: 0.6 })).toBe('out-of-range until');
  expect(with_({ frame: { indentation: -1 } })).toBe('out-of-range frame.indentation');
  expect(with_({ frame: { bore: 40 } })).toBe('unknown-option frame.bore');
});
