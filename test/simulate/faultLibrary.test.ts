import { expect, test } from 'vitest';
import { analyseTension, round } from '../../src/index.js';
import { faultLibrary, simulateBrinell, simulateTension } from '../../src/simulate/index.js';
import { refusal } from '../support/thrown.js';

test('at least twenty-five faults, each with a name of its own', () => {
  expect(faultLibrary.length).toBeGreaterThanOrEqual(25);
  expect(new Set(faultLibrary.map(({ name }) => name)).size).toBe(faultLibrary.length);
});

test.each(faultLibrary.map((fault) => [fault.name, fault] as const))(
  '%s is named with its code, wherever it is and however large',
  (_, fault) => {
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const { record, piece } = fault.make(seed);
      const { findings } = analyseTension(record, piece);
      expect(
        findings.map(({ code }) => code),
        `seed ${seed}`,
      ).toContain(fault.expected);
      // every gap of every sentence has its value
      expect(findings.filter(({ message }) => message.includes('{'))).toEqual([]);
    }
  },
);

test('the same seed gives the same record, another gives another', () => {
  const { make } = faultLibrary.find(({ name }) => name === 'spike')!;
  expect(make(4)).toEqual(make(4));
  expect(make(4).record.force).not.toEqual(make(5).record.force);
  expect(refusal(() => make(0.5))).toBe('out-of-range seed');
  for (const seed of [2 ** 53, -1e30]) {
    expect(refusal(() => simulateBrinell({ hardness: 200, ballDiameter: 5, force: 7355, seed }))).toBe('out-of-range seed');
    expect(
      refusal(() =>
        simulateTension({
          material: { modulus: 70_000, hardening: { law: 'hollomon', strengthCoefficient: 375, exponent: 0.05 } },
          piece: { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 },
          seed,
        }),
      ),
    ).toBe('out-of-range seed');
  }
});
