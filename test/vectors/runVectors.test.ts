import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { runVectors, type CheckVector } from '../../src/index.js';
import { refusal } from '../support/thrown.js';
import { vectorsOf } from '../support/vectors.js';

const topics = readdirSync('vectors').map((file) => file.replace(/\.json$/, ''));
const disc: CheckVector = {
  id: 'disc',
  function: 'round',
  arguments: [{ diameter: 10 }],
  expected: [{ at: 'area', value: 78.5398, tolerance: 0.00005, unit: 'mm²' }],
  source: 'area of a disc',
  status: 'second derivation',
};
const only = (vector: object) => runVectors([{ ...disc, ...vector }])[0]!;

describe('the vectors of the package', () => {
  const vectors = topics.flatMap(vectorsOf);

  test('each topic is run by the handbook test of its name', () => {
    expect(readdirSync('test/handbook')).toEqual(expect.arrayContaining(topics.map((topic) => `${topic}.test.ts`)));
  });

  test('ids are unlike each other, and there are more than a hundred', () => {
    expect(new Set(vectors.map(({ id }) => id)).size).toBe(vectors.length);
    expect(vectors.length).toBeGreaterThan(100);
  });

  test('a tolerance is half of a decimal place, at most a whole one from memory, or a billionth, and the value is printed to it', () => {
    const fits = (value: number, place: number): boolean => {
      const power = Math.log10(place);
      const whole = value / place;
      return Math.abs(power - Math.round(power)) < 1e-9 && Math.abs(whole - Math.round(whole)) < 1e-3;
    };
    const wrong = vectors.flatMap(({ id, status, expected }) =>
      expected.flatMap(({ value, tolerance }) => {
        const exact = Math.abs(tolerance / Math.abs(value) - 1e-9) < 1e-15;
        const sound = exact || fits(value, 2 * tolerance) || (status === 'from memory' && fits(value, tolerance));
        return sound ? [] : [id];
      }),
    );
    expect(wrong).toEqual([]);
  });

  test('a value that is moved by three tolerances fails, in every vector', () => {
    const moved = vectors.map((one) => ({ ...one, expected: one.expected.map((e) => ({ ...e, value: e.value + 3 * e.tolerance })) }));
    expect(runVectors(moved).filter(({ passed }) => passed)).toEqual([]);
  });
});

describe('runVectors', () => {
  test('says what came, beside what was expected', () => {
    expect(only({})).toEqual({
      id: 'disc',
      function: 'round',
      at: 'area',
      expected: 78.5398,
      tolerance: 0.00005,
      unit: 'mm²',
      got: expect.closeTo(25 * Math.PI, 9) as number,
      passed: true,
    });
    expect(runVectors([])).toEqual([]);
  });

  test('the limit itself is within the tolerance, and a result without a place is the value', () => {
    const vector = { function: 'convert', arguments: [1, 'kN', 'N'] };
    expect(only({ ...vector, expected: [{ value: 1001, tolerance: 1 }] }).passed).toBe(true);
    expect(only({ ...vector, expected: [{ value: 1001.01, tolerance: 1 }] })).toMatchObject({ passed: false, got: 1000 });
  });

  test('calls among the arguments are made first', () => {
    const area = { function: 'round', arguments: [{ diameter: 10 }], at: 'area' };
    const expected = [{ value: 50.072, tolerance: 0.0005 }];
    expect(only({ function: 'proportionalGaugeLength', arguments: [{ area }], expected }).passed).toBe(true);
  });

  test('what gives no number has failed and says why', () => {
    const because = (vector: object) => only(vector).problem;
    expect(only({ arguments: [{ diameter: -1 }] })).not.toHaveProperty('got');
    expect(because({ arguments: [{ diameter: -1 }] })).toMatch(/^round: diameter/);
    expect(because({ expected: [{ at: 'volume', value: 1, tolerance: 1 }] })).toBe('no number at volume');
    expect(because({ expected: [{ value: 1, tolerance: 1 }] })).toBe('no number at the result');
    const line = { function: 'yieldPoints', arguments: [{ strain: [0, 0.1, 0.2], stress: [0, 1, 2] }] };
    expect(because({ ...line, expected: [{ at: 'upper.stress', value: 1, tolerance: 1 }] })).not.toMatch(/no number/);
    const inner = { function: 'round', arguments: [{ diameter: 10 }], at: 'volume' };
    expect(because({ function: 'proportionalGaugeLength', arguments: [{ area: inner }] })).toBe('round gives nothing at volume');
    expect(because({ function: 'required', arguments: [[inner]] })).toBe('round gives nothing at volume');
  });

  test.each([
    [{ function: 'roundest' }, 'out-of-range vectors[0].function'],
    [{ function: undefined }, 'out-of-range vectors[0].function'],
    [{ id: ' ' }, 'wrong-type vectors[0].id'],
    [{ source: undefined }, 'missing vectors[0].source'],
    [{ status: 'sure' }, 'out-of-range vectors[0].status'],
    [{ expected: [] }, 'empty vectors[0].expected'],
    [{ expected: [{ value: NaN, tolerance: 1 }] }, 'not-finite vectors[0].expected[0].value'],
    [{ expected: [{ value: 1, tolerance: 0 }] }, 'not-positive vectors[0].expected[0].tolerance'],
    [{ expected: [{ value: 1, tolerance: 1, at: 3 }] }, 'wrong-type vectors[0].expected[0].at'],
    [{ expected: [{ value: 1, tolerance: 1, off: 3 }] }, 'unknown-option vectors[0].expected[0].off'],
    [{ arguments: 5 }, 'wrong-type vectors[0].arguments'],
    [{ arguments: [{ diameter: Infinity }] }, 'not-finite vectors[0].arguments[0].diameter'],
    [{ arguments: [[null]] }, 'wrong-type vectors[0].arguments[0][0]'],
    [{ arguments: [{ function: 'round', arguments: [], of: 1 }] }, 'unknown-option vectors[0].arguments[0].of'],
    [{ arguments: [{ function: 'round', arguments: [], at: 1 }] }, 'wrong-type vectors[0].arguments[0].at'],
    [{ unit: 'mm' }, 'unknown-option vectors[0].unit'],
  ])('%j is refused', (vector, words) => {
    expect(refusal(() => only(vector))).toBe(words);
  });

  test('so is what is no list of vectors', () => {
    expect(refusal(() => runVectors(undefined as never))).toBe('missing vectors');
    expect(refusal(() => runVectors([7 as never]))).toBe('wrong-type vectors[0]');
  });
});
