import { expect, test } from 'vitest';
import { analyseTension } from '../../src/index.js';
import { faultLibrary } from '../../src/simulate/index.js';
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
});
