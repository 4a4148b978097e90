import { expect, test } from 'vitest';
import { generalisedEsd, grubbsTest, required } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('outliers', 'grubbsCriticalValue', 'grubbsTest');

// NIST/SEMATECH e-Handbook of Statistical Methods, Grubbs's test: uranium data of Tietjen and Moore (from memory)
test('uranium: the largest is flagged', () => {
  const uranium = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];
  const one = required(grubbsTest(uranium, { side: 'largest' }));
  expect(one).toMatchObject({ flagged: true, value: 245.57, index: 7 });
  expect(required(grubbsTest(uranium, { side: 'smallest' })).flagged).toBe(false);
});

test('five tests of a class: no flag', () => {
  const one = required(grubbsTest([452.1, 449.8, 455.0, 451.2, 447.6]));
  expect(one).toMatchObject({ flagged: false, value: 455 });
});

// Rosner (1983), and NIST/SEMATECH e-Handbook, generalized ESD test for outliers (from memory)
test('54 values of Rosner: three outliers, which no single step before the third shows', () => {
  const rosner = [
    -0.25, 0.68, 0.94, 1.15, 1.2, 1.26, 1.26, 1.34, 1.38, 1.43, 1.49, 1.49, 1.55, 1.56, 1.58, 1.65, 1.69, 1.7, 1.76, 1.77, 1.81, 1.91, 1.94,
    1.96, 1.99, 2.06, 2.09, 2.1, 2.14, 2.15, 2.23, 2.24, 2.26, 2.35, 2.37, 2.4, 2.47, 2.54, 2.62, 2.64, 2.9, 2.92, 2.92, 2.93, 3.21, 3.26,
    3.3, 3.59, 3.68, 4.3, 4.64, 5.34, 5.42, 6.01,
  ];
  const { steps, flagged } = required(generalisedEsd(rosner, { most: 10 }));
  const printed = [
    ['3.118', '3.158'],
    ['2.942', '3.151'],
    ['3.179', '3.143'],
    ['2.810', '3.136'],
    ['2.815', '3.128'],
    ['2.848', '3.120'],
    ['2.279', '3.111'],
    ['2.310', '3.103'],
    ['2.101', '3.094'],
    ['2.067', '3.085'],
  ] as const;
  expect(steps).toHaveLength(10);
  for (const [i, [statistic, critical]] of printed.entries()) {
    expectPrinted(steps[i]!.statistic, statistic, 2);
    expectPrinted(steps[i]!.criticalValue, critical, 2);
  }
  expect(flagged.map((i) => rosner[i])).toEqual([6.01, 5.42, 5.34]);
});
