import { describe, expect, test } from 'vitest';
import {
  convert,
  explainProperties,
  matchingFamilies,
  materialFamilies,
  type ExplainPropertiesOptions,
  type MeasuredProperties,
  type PropertyCauseKey,
} from '../../src/index.js';
import { refusal } from '../support/thrown.js';

const steel = { modulus: 207_000, yieldStrength: 340, tensileStrength: 460, elongation: 0.25, plasticExtension: 0.22, exponent: 0.18 };
const family = 'structural-steel' as const;
/** The properties as a mistake would give them. */
const mistaken = (stress: number, strain: number): MeasuredProperties => ({
  modulus: (steel.modulus * stress) / strain,
  yieldStrength: steel.yieldStrength * stress,
  tensileStrength: steel.tensileStrength * stress,
  elongation: steel.elongation,
  plasticExtension: steel.plasticExtension * strain,
});
const causes = (properties: MeasuredProperties, options: ExplainPropertiesOptions): string[] =>
  explainProperties(properties, options).causes.map(({ key }) => key);

test('what fits needs no explanation', () => {
  const { compared, causes: none } = explainProperties(steel, { family });
  expect(none).toEqual([]);
  expect(compared.map(({ property }) => property)).toEqual([...Object.keys(steel), 'yieldRatio']);
  expect(compared.every(({ outside }) => outside === undefined)).toBe(true);
});

const by = { force: { forceFrom: 'force' }, pressure: { forceFrom: 'pressure' }, gauge: { strainFrom: 'extensometer' } } as const;
test.each<[PropertyCauseKey, number, number, ExplainPropertiesOptions]>([
  ['radius-for-diameter', 4, 1, { shape: 'round' }],
  ['diameter-doubled', 1 / 4, 1, { shape: 'round' }],
  ['section-a-tenth', 100, 1, {}],
  ['section-tenfold', 1 / 100, 1, { shape: 'rectangular' }],
  ['section-in-inches', 645.16, 1, {}],
  ['section-converted-twice', 1 / 645.16, 1, { shape: 'rectangular' }],
  ['piece-in-inches', 645.16, 25.4, {}],
  ['lengths-in-inches', 1, 25.4, {}],
  ['force-in-kilonewtons', 0.001, 1, by.force],
  ['newtons-as-kilonewtons', 1000, 1, by.force],
  ['force-in-kilograms-force', 1 / 9.80665, 1, by.force],
  ['newtons-as-kilograms-force', 9.80665, 1, by.force],
  ['force-in-pounds-force', convert(1, 'N', 'lbf'), 1, { ...by.force, shape: 'rectangular' }],
  ['newtons-as-pounds-force', convert(1, 'lbf', 'N'), 1, { ...by.force, shape: 'rectangular' }],
  ['bar-as-megapascals', 10, 1, by.pressure],
  ['megapascals-as-bar', 0.1, 1, by.pressure],
  ['psi-as-megapascals', 145.038, 1, by.pressure],
  ['megapascals-as-psi', 1 / 145.038, 1, by.pressure],
  ['psi-as-bar', 14.5038, 1, by.pressure],
  ['bar-as-psi', 1 / 14.5038, 1, by.pressure],
  ['strain-in-percent', 1, 100, by.gauge],
  ['ratio-as-percent', 1, 0.01, by.gauge],
  ['strain-in-microstrain', 1, 1e6, by.gauge],
  ['extension-in-inches', 1, 1 / 25.4, { strainFrom: 'travel', frameRemoved: true }],
  ['extension-in-micrometres', 1, 1000, by.gauge],
  ['strain-length-wrong', 1, 1.5, by.gauge],
  ['strain-length-wrong', 1, 1.3, { strainFrom: 'travel', frameRemoved: true, parallelLengthGiven: false }],
])('%s (stress x %f, strain x %f) is ranked first, with its factor', (key, stress, strain, how) => {
  const [first] = explainProperties(mistaken(stress, strain), { family, ...how }).causes;
  expect(first?.key).toBe(key);
  const known = stress === 1 ? strain : stress;
  // a free factor leads to the nearest end of the range, a known one is exact
  expect(Math.abs(first!.factor / known - 1)).toBeLessThan(key === 'strain-length-wrong' ? 0.05 : 1e-5);
  expect(first!.families).toContain(family);
  expect(first!.sentence).toMatch(/^If .*\.$/);
  expect(first!.check.length).toBeGreaterThan(20);
});

test.each<[PropertyCauseKey, number, ExplainPropertiesOptions]>([
  ['newtons-as-kilonewtons', 1000, by.force],
  ['bar-as-megapascals', 10, { ...by.pressure, shape: 'round' }],
  ['section-a-tenth', 100, { ...by.force, shape: 'round' }],
  ['section-tenfold', 1 / 100, { ...by.force, shape: 'round' }],
])(
  '%s (stress x %f) is ranked first by strengths alone, whatever the metal: the commonest slips of a metric class come first',
  (key, stress, how) => {
    // by travel with the frame in it the slope tells nothing
    const strengths = { yieldStrength: 300 * stress, tensileStrength: 392 * stress, plasticExtension: 0.24 };
    expect(causes(strengths, { ...how, strainFrom: 'travel' })[0]).toBe(key);
  },
);

describe('causes without a known factor', () => {
  const travel = { family, strainFrom: 'travel' } as const;
  test.each<[PropertyCauseKey, MeasuredProperties, ExplainPropertiesOptions]>([
    ['frame-compliance-left-in', { ...steel, modulus: 40_000 }, travel],
    ['frame-compliance-left-in', { ...steel, modulus: 150_000 }, { ...travel, frameRemoved: true, parallelLengthGiven: true }],
    ['frame-compliance-overrated', { ...steel, modulus: 300_000 }, { ...travel, frameRemoved: true }],
    ['grip-slip', { ...steel, plasticExtension: 0.7 }, { ...travel, frameRemoved: true, parallelLengthGiven: true }],
    ['extensometer-slip', { ...steel, modulus: 900_000 }, { family, strainFrom: 'extensometer' }],
    ['worked-or-hardened', { modulus: 207_000, yieldStrength: 800, tensileStrength: 850, elongation: 0.05 }, { family }],
    ['softened', { ...steel, yieldStrength: 180, tensileStrength: 290 }, { family }],
    ['another-family', { modulus: 70_000, yieldStrength: 280, tensileStrength: 340, elongation: 0.11, exponent: 0.08 }, { family }],
  ])('%s is ranked first', (key, properties, options) => {
    expect(causes(properties, options)[0]).toBe(key);
  });

  test('another family is named', () => {
    const [first] = explainProperties(
      { modulus: 70_000, yieldStrength: 280, tensileStrength: 340 },
      { family, strainFrom: 'extensometer' },
    ).causes;
    expect(first?.families).toEqual(['aluminium-age-hardened', 'zinc']);
    expect(first?.sentence).toMatch(/aluminium alloys, age-hardened/);
  });

  test('a mistake that the measurement excludes is not offered', () => {
    expect(causes(mistaken(4, 1), { family, shape: 'rectangular' })).not.toContain('radius-for-diameter');
    expect(causes(mistaken(1e-3, 1), { family, forceFrom: 'pressure' })).not.toContain('force-in-kilonewtons');
    expect(causes(mistaken(1, 100), { family, strainFrom: 'travel' })).not.toContain('strain-in-percent');
  });

  test('rank falls, from 1 downwards', () => {
    for (const [stress, strain] of [
      [4, 1],
      [1e-3, 1],
      [10, 1],
    ] as const) {
      const scores = explainProperties(mistaken(stress, strain), { family }).causes.map(({ score }) => score);
      expect(scores).toEqual([...scores].sort((a, b) => b - a));
      expect(scores.every((score) => score > 0 && score <= 1)).toBe(true);
    }
  });
});

describe('without a family', () => {
  test('whatever lies in a family is no surprise, and twice beyond all of them is', () => {
    for (const { modulus, tensileStrength } of materialFamilies)
      expect(explainProperties({ modulus: modulus[0], tensileStrength: tensileStrength[1] }).causes).toEqual([]);
    const { compared, causes: ranked } = explainProperties({ tensileStrength: 0.45, modulus: 206 });
    expect(compared.map(({ outside }) => outside)).toEqual(['low', 'low']);
    expect(ranked[0]?.key).toBe('force-in-kilonewtons');
    expect(ranked[0]?.families).toContain('structural-steel');
  });

  test('any low slope can be that of a soft frame', () => {
    const slope = { modulus: 2000, tensileStrength: 400 };
    expect(explainProperties(slope, { strainFrom: 'travel' }).causes).toEqual([]);
    expect(explainProperties(slope, { strainFrom: 'travel', frameRemoved: true }).causes[0]?.key).toBe('frame-compliance-left-in');
  });
});

describe('matchingFamilies', () => {
  test('the middle of each family is found, best first', () => {
    for (const { key, modulus, tensileStrength, elongation } of materialFamilies) {
      const middle = { modulus: (modulus[0] + modulus[1]) / 2, tensileStrength: (tensileStrength[0] + tensileStrength[1]) / 2 };
      expect(matchingFamilies({ ...middle, elongation: (elongation[0] + elongation[1]) / 2 }).map((one) => one.key)).toContain(key);
    }
  });

  test('limits with their margin are hit exactly', () => {
    const keys = (modulus: number, margin = 0.1) =>
      matchingFamilies({ modulus }, { margin, strainFrom: 'extensometer' }).map(({ key }) => key);
    expect(keys(20_000 * 1.1)).toEqual(['lead']);
    expect(keys(20_000 * 1.1 * 1.0001)).toEqual([]);
    expect(keys(14_000 / 1.1)).toEqual(['lead']);
    expect(keys((14_000 / 1.1) * 0.9999)).toEqual([]);
    expect(matchingFamilies({ modulus: 3000 }, { strainFrom: 'travel' })).toHaveLength(materialFamilies.length);
  });
});

test.each<[string, MeasuredProperties, object]>([
  ['missing properties', {}, {}],
  ['not-positive properties.modulus', { modulus: 0 }, {}],
  ['not-finite properties.tensileStrength', { tensileStrength: NaN }, {}],
  ['out-of-range properties.elongation', { elongation: -0.1 }, {}],
  ['wrong-type properties.exponent', { exponent: 'x' as never }, {}],
  ['unknown-option properties.strength', { strength: 5 } as never, {}],
  ['out-of-range options.family', steel, { family: 'wood' }],
  ['not-positive options.margin', steel, { margin: 0 }],
  ['out-of-range options.strainFrom', steel, { strainFrom: 'guess' }],
  ['out-of-range options.forceFrom', steel, { forceFrom: 'guess' }],
  ['out-of-range options.shape', steel, { shape: 'oval' }],
  ['wrong-type options.frameRemoved', steel, { frameRemoved: 'yes' }],
  ['unknown-option options.metal', steel, { metal: 'steel' }],
])('%s', (expected, properties, options) => {
  expect(refusal(() => explainProperties(properties, options))).toBe(expected);
  if (!('family' in options)) expect(refusal(() => matchingFamilies(properties, options))).toBe(expected);
});
