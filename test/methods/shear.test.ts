import { describe, expect, test } from 'vitest';
import { analyseShear, shearStress, type ShearOptions, type ShearPiece } from '../../src/index.js';
import { figures, renderHtml, summarise } from '../../src/report/index.js';
import { simulateShear } from '../../src/simulate/index.js';
import { refusal } from '../support/thrown.js';

const { record, truth } = simulateShear({
  strength: 310,
  diameter: 8,
  planes: 2,
  push: { compliance: 2e-5, forceNoise: 15, travelNoise: 5e-4, rate: 50 },
});
const pin: ShearPiece = { diameter: 8, planes: 2 };
const codes = (piece: ShearPiece, options: ShearOptions = {}, given: Parameters<typeof analyseShear>[0] = { maximumForce: 31_000 }) =>
  analyseShear(given, piece, options).findings.map(({ code }) => code);

describe('analyseShear', () => {
  test('finds the truth of a simulated test within its noise', () => {
    const result = analyseShear(record, pin);
    expect(Math.abs(result.maximumForce.value - truth.maximumForce)).toBeLessThan(5 * 15);
    expect(result.shearStrength.value).toBe(shearStress({ force: result.maximumForce.value, diameter: 8, planes: 2 }));
    expect(result.record!.force).not.toBe(record.force);
  });

  test('the way to the maximum counts from contact, however far the tool ran empty', () => {
    const way = (slack: number) => {
      const sheared = simulateShear({ strength: 310, diameter: 8, planes: 2, push: { slack, compliance: 2e-5, rate: 50 } });
      return analyseShear(sheared.record, pin);
    };
    // into the pin a fifth of its diameter, and what the frame gives
    const truly = 8 / 5 + 2e-5 * truth.maximumForce;
    for (const slack of [0, 1, 6]) {
      const { travelAtMaximumForce, contact, trail } = way(slack);
      // a sample is 0.002 mm, and near its top the force is level over some of them
      expect(Math.abs(travelAtMaximumForce!.value - truly)).toBeLessThan(0.01);
      expect(Math.abs(contact! - slack)).toBeLessThan(0.005);
      expect(trail.at(-1)).toMatchObject({ code: 'travel-from-contact', values: { contact } });
    }
    expect(analyseShear({ force: record.force, time: record.time }, pin)).not.toHaveProperty('contact');
  });

  test('the same seed gives the same record, another seed another', () => {
    const again = (seed: number) => simulateShear({ strength: 310, diameter: 8, planes: 2, push: { forceNoise: 15 }, seed }).record.force;
    expect(again(3)).toEqual(again(3));
    expect(again(3)).not.toEqual(again(4));
    expect(refusal(() => simulateShear({ strength: 310, diameter: 8, planes: 2, seed: 0.5 }))).toBe('out-of-range seed');
  });

  test('a shear modulus is never derived, and a record with travel says so', () => {
    const result = analyseShear(record, pin);
    expect(result.findings.map(({ code }) => code)).toContain('no-shear-modulus');
    expect(JSON.stringify(Object.keys(result))).not.toMatch(/modulus/i);
  });

  test('clearance and bending are doubts', () => {
    expect(codes({ ...pin, clearance: 0.1 })).toEqual([]);
    expect(codes({ ...pin, clearance: 0.2 })).toEqual(['shear-clearance']);
    expect(codes({ ...pin, clearance: 0.2 }, { clearanceShare: 0.05 })).toEqual([]);
    expect(codes({ ...pin, bent: true })).toEqual(['shear-bending']);
  });

  test('the ratio to the tensile strength is compared with what is usual', () => {
    expect(codes(pin, { tensileStrength: 450, family: 'steel' })).toEqual([]);
    expect(codes(pin, { tensileStrength: 900, family: 'steel' })).toEqual(['shear-ratio-unusual']);
    expect(codes(pin, { tensileStrength: 320 })).toEqual([]);
    expect(codes(pin, { tensileStrength: 250 })).toEqual(['shear-ratio-unusual']);
    expect(analyseShear({ maximumForce: 31_000 }, pin, { tensileStrength: 450 }).ratioToTensileStrength!.value).toBeCloseTo(0.685, 3);
  });

  test('a record that ends at its maximum, and a spike, are doubts', () => {
    const rising = { force: [0, 100, 200, 300, 400], travel: [0, 1, 2, 3, 4] };
    expect(codes(pin, {}, rising)).toContain('maximum-at-end');
    const force = record.force.slice();
    force[200] = 60_000;
    expect(codes(pin, { repairs: { spikes: false } }, { ...record, force })).toContain('maximum-is-spike');
  });

  test('wrong arguments are refused, each by its path', () => {
    const call = (piece: object, options: object = {}, given: object = { maximumForce: 1 }) =>
      refusal(() => analyseShear(given as never, piece as never, options));
    expect(call({ planes: 1 })).toBe('missing piece.area');
    expect(call({ planes: 1, area: 1, diameter: 1 })).toBe('ambiguous piece.area');
    expect(call({ planes: 3, area: 1 })).toBe('out-of-range piece.planes');
    expect(call({ planes: 1, area: 1, clearance: -1 })).toBe('out-of-range piece.clearance');
    expect(call({ planes: 1, area: 1, length: 1 })).toBe('unknown-option piece.length');
    expect(call(pin, { family: 'wood' })).toBe('out-of-range options.family');
    expect(call(pin, { modulus: true })).toBe('unknown-option options.modulus');
    expect(call(pin, {}, { force: [0, NaN] })).toBe('not-finite record.force[1]');
    expect(call(pin, {}, { force: [0, 1], travel: [0] })).toBe('unequal-lengths record.travel');
    expect(call(pin, {}, { force: [0, -1] })).toBe('not-positive record.force');
    expect(call(pin, {}, { maximumForce: 0 })).toBe('not-positive record.maximumForce');
    expect(refusal(() => shearStress({ force: -1, area: 1, planes: 1 }))).toBe('out-of-range force');
    expect(refusal(() => shearStress({ force: 1, area: 1, planes: 0 as never }))).toBe('out-of-range planes');
  });

  test('has a page of its own', () => {
    const result = analyseShear(record, { ...pin, clearance: 0.01 }, { tensileStrength: 450, test: { invented: true } });
    expect(summarise(result).map(({ symbol }) => symbol)).toEqual(['Fm', 'τm', 'τm/Rm', 'x(Fm)']);
    expect(Object.keys(figures(result))).toEqual(['force']);
    const page = renderHtml(result);
    for (const words of ['Shear test', 'double shear', 'No shear modulus', 'sheared pin', 'Invented data', 'not design values'])
      expect(page).toContain(words);
    expect(renderHtml(analyseShear({ maximumForce: 1000 }, { area: 20, planes: 1 }))).toContain('as given');
    expect(figures(analyseShear({ force: record.force, time: record.time }, pin)).force?.title).toBe('Force over time');
  });
});
