import { describe, expect, test } from 'vitest';
import { grubbsCriticalValue, interlaboratoryStudy, required } from '../../src/index.js';
import { criticalH, criticalK, criticalShare } from '../../src/statistics/consistencyLimits.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('precision', 'interlaboratoryStudy');

/** ASTM E691, worked example: glucose in serum, 8 laboratories, three results each; materials A and E. */
const glucose = {
  A: '41.03 41.45 41.37|41.17 42.00 41.15|41.01 40.68 42.66|39.37 42.37 42.63|41.88 41.19 41.32|43.28 40.50 42.28|41.08 41.27 39.02|43.36 42.65 41.72',
  E: '292.78 294.09 292.89|292.27 309.40 295.08|295.53 290.14 292.34|295.19 295.44 296.83|293.93 292.48 294.28|297.74 296.80 290.33|287.29 293.76 289.36|298.46 295.28 296.12',
};
const groupsOf = (text: string) => text.split('|').map((group) => ({ values: group.split(' ').map(Number) }));

describe('ASTM E691, glucose in serum', () => {
  test('material A: h of laboratory 8 1.746, k of laboratory 4 1.704', () => {
    const study = required(interlaboratoryStudy(groupsOf(glucose.A)));
    expect(study.betweenDeviation).toBe(0);
    expectPrinted(study.groups[7]!.h, '1.746');
    expectPrinted(study.groups[3]!.k!, '1.704');
    expectPrinted(study.repeatabilityLimit, '2.977');
    expect(study.findings).toEqual([]);
  });

  test('material E: laboratory 2 scatters beyond k 2.06, and is an outlier by the test of Cochran', () => {
    const study = required(interlaboratoryStudy(groupsOf(glucose.E)));
    expectPrinted(study.groups[1]!.k!, '2.3347');
    expectPrinted(study.groups[1]!.criticalK!, '2.06');
    expect(study.findings.map(({ code, values }) => [code, values['group']])).toEqual([
      ['group-scatters', '2'],
      ['group-variance-outlying', '2'],
    ]);
    // k² / p is the share of all squares
    expect(study.cochran.statistic).toBeCloseTo(study.groups[1]!.k! ** 2 / 8, 12);
    expect(study.cochran.verdict).toBe('outlier');
  });
});

// ASTM E691, table of critical h and k at 0.5 % (from memory)
test.each([
  [6, '1.92'],
  [8, '2.15'],
  [10, '2.29'],
])('critical h of %d groups: %s', (p, printed) => {
  expectPrinted(criticalH(p, 0.005), printed, 2);
});

test('critical k of 8 groups of 3: 2.06', () => {
  expectPrinted(criticalK(2, 16, 0.005), '2.06', 2);
});

// ISO 5725-2, critical values of the test of Cochran at 5 % and 1 % (from memory)
test.each([
  [8, 3, '0.516', '0.615'],
  [8, 2, '0.680', '0.794'],
  [5, 3, '0.684', '0.788'],
  [10, 3, '0.445', '0.536'],
])('critical C of %d groups of %d: %s and %s', (p, n, five, one) => {
  expectPrinted(criticalShare(n - 1, p * (n - 1), p, 0.05), five, 2);
  expectPrinted(criticalShare(n - 1, p * (n - 1), p, 0.01), one, 2);
});

/** ISO 5725-2, worked example: thermometric titration of creosote oil, 9 laboratories, two results each; levels 1 and 3 (from memory). */
const creosote = {
  1: '4.44 4.39|4.03 4.23|3.70 3.70|4.10 4.10|3.97 4.04|3.75 4.03|3.70 3.80|3.91 3.90|4.02 4.07',
  3: '17.40 16.90|14.42 14.50|13.60 13.60|14.60 14.20|13.73 13.92|13.90 14.06|14.10 14.20|14.84 14.84|14.24 14.10',
};

describe('ISO 5725-2, creosote oil: Grubbs on the means of the laboratories', () => {
  test('level 1: laboratory 1 at 1.95, no straggler', () => {
    const { grubbs, findings } = required(interlaboratoryStudy(groupsOf(creosote[1])));
    expect(grubbs).toMatchObject({ group: '1', verdict: 'none' });
    expectPrinted(grubbs.statistic, '1.95');
    expect(findings.map(({ code }) => code)).not.toContain('group-mean-outlying');
  });

  test('level 3: laboratory 1 at 2.50, an outlier', () => {
    const { grubbs, findings, groups } = required(interlaboratoryStudy(groupsOf(creosote[3])));
    expect(grubbs).toMatchObject({ group: '1', verdict: 'outlier' });
    expectPrinted(grubbs.statistic, '2.50');
    expectPrinted(grubbs.criticalValue5, '2.215');
    expectPrinted(grubbs.criticalValue1, '2.387');
    expect(findings.at(-1)).toMatchObject({ code: 'group-mean-outlying', severity: 'caution', values: { group: '1', verdict: 'outlier' } });
    // nothing is left out
    expect(groups).toHaveLength(9);
  });

  test('between the two limits the group is a straggler, and that a note', () => {
    const means = [10, 10.1, 10.2, 9.9, 9.8, 10.05, 9.95, 10.6];
    const { grubbs, findings } = required(interlaboratoryStudy(means.map((x) => ({ values: [x - 0.3, x + 0.3] }))));
    // by hand: 10.6 is 0.525 above the mean of 10.075, and the squares sum to 0.42
    expect(grubbs.statistic).toBeCloseTo(0.525 / Math.sqrt(0.42 / 7), 9);
    expect(grubbs.verdict).toBe('straggler');
    expect(findings.at(-1)).toMatchObject({
      code: 'group-mean-outlying',
      severity: 'note',
      values: { group: '8', limit: grubbs.criticalValue5 },
    });
  });
});

// ISO 5725-2, critical values of the test of Grubbs for one outlying observation at 5 % and 1 % (from memory)
test.each([
  [3, '1.155', '1.155'],
  [5, '1.715', '1.764'],
  [8, '2.126', '2.274'],
  [10, '2.290', '2.482'],
])('critical G of %d means: %s and %s', (n, five, one) => {
  expectPrinted(grubbsCriticalValue({ n }), five, 2);
  expectPrinted(grubbsCriticalValue({ n, alpha: 0.01 }), one, 2);
});

// second derivation: analysis of variance from the raw sums, as ISO 5725-2 defines it
test('groups of unequal size: the components of an analysis of variance from raw sums', () => {
  const groups = [[10.1, 10.4, 10.2], [10.9, 11.2], [9.8, 9.9, 10.3, 10.0], [10.6]];
  const study = required(interlaboratoryStudy(groups.map((values) => ({ values }))));
  const flat = groups.flat();
  const total = flat.reduce((sum, x) => sum + x, 0);
  const correction = total ** 2 / flat.length;
  const all = flat.reduce((sum, x) => sum + x ** 2, 0) - correction;
  const between = groups.reduce((sum, own) => sum + own.reduce((a, b) => a + b, 0) ** 2 / own.length, 0) - correction;
  const within = (all - between) / (flat.length - groups.length);
  const size = (flat.length - groups.reduce((sum, own) => sum + own.length ** 2, 0) / flat.length) / (groups.length - 1);
  expect(study.repeatability ** 2).toBeCloseTo(within, 9);
  expect(study.reproducibility ** 2).toBeCloseTo(within + (between / (groups.length - 1) - within) / size, 9);
  expect(study.groups[3]).not.toHaveProperty('k');
  expect(study.cochran.group).not.toBe('4');
});
