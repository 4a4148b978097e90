import { expect, it } from 'vitest';
import { aboveOthers, type ElasticLine } from '../../src/curve/index.js';

const line: ElasticLine = {
  slope: 220_000,
  intercept: 0,
  strainShift: 0,
  first: 0,
  last: 99,
  points: 100,
  standardError: 500,
  relativeStandardError: 500 / 220_000,
  rSquared: 0.999,
  residualStandardDeviation: 1,
  criterion: { by: 'lower-bound', z: 4 },
  alternatives: [],
  eased: [],
  offsetStress: 400,
};
const others = (lowest: number, highest: number) => ({
  envelope: { windows: 100, slope: [lowest, highest] as const, verdict: 'fragile' as const },
});
/** A rise of half of the offset stress: windows of the least rise, 0.2, are 2.5 times shorter. */
const RISE = 200;

it('tells a slope above all others, and how far it lies above their middle', () => {
  expect(aboveOthers(line, RISE, others(190_000, 210_000))?.slopeShare).toBeCloseTo(1 - 200 / 220, 12);
});

it('allows what scatter, an extensometer, noise and steps of the strain may make of the difference', () => {
  // 2 % of the others, and one and a half times u, which is twice the standard error of a search
  const highest = (220_000 - 1.5 * 2 * 500) / 1.02;
  expect(aboveOthers(line, RISE, others(190_000, highest + 1))).toBeUndefined();
  expect(aboveOthers(line, RISE, others(190_000, highest - 1))).toBeDefined();
  const noiseFlattening = { strainNoise: 1e-5, slopeShare: 0.005 };
  expect(aboveOthers(line, RISE, { ...others(190_000, highest / 1.03 + 10), noiseFlattening })).toBeUndefined();
  const strainSteps = { step: 1e-5, steps: 10, slopeShare: 0.02 };
  expect(aboveOthers(line, RISE, { ...others(190_000, highest / 1.07), strainSteps })).toBeUndefined();
});

it('does not ask of a window that was given, nor where there are no others', () => {
  expect(aboveOthers({ ...line, criterion: { by: 'samples', first: 0, last: 99 } }, RISE, others(1, 2))).toBeUndefined();
  expect(aboveOthers(line, RISE, {})).toBeUndefined();
});

it('leaves the others to a toe that shows in them', () => {
  expect(aboveOthers(line, RISE, { ...others(190_000, 210_000), remainingToe: { slopeShare: 0 } })).toBeUndefined();
});
