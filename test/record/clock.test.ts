import { describe, expect, test } from 'vitest';
import { clockFindings, surveyClock } from '../../src/record/survey/clock.js';

/** A clock from its steps [s]. */
const clockOf = (steps: readonly number[], start = 0): Float64Array => {
  const time = [start];
  for (const step of steps) time.push(time.at(-1)! + step);
  return Float64Array.from(time);
};
const even = (count: number, step = 0.25): number[] => Array<number>(count).fill(step);
const findings = (time: Float64Array) => clockFindings(surveyClock(time), time).map(({ code, values, range }) => ({ code, values, range }));

test('no clock at all', () => {
  expect(clockFindings(undefined, undefined).map(({ code }) => code)).toEqual(['time-missing']);
  expect(clockFindings(surveyClock(clockOf(even(9))), undefined).map(({ code }) => code)).toEqual(['time-missing']);
});

describe('steps of a clock', () => {
  test('an even clock has nothing but its usual step', () => {
    expect(surveyClock(clockOf(even(100)))).toEqual({
      usual: 0.25,
      backward: 0,
      firstBackward: -1,
      standing: 0,
      gaps: 0,
      longest: 0,
      longestAt: -1,
      change: undefined,
    });
    expect(findings(clockOf(even(100)))).toEqual([]);
  });

  test('steps back, the first of them, and steps of no time', () => {
    const survey = surveyClock(clockOf([...even(10), -0.5, ...even(5), 0, 0, -0.25, ...even(10)]));
    expect(survey).toMatchObject({ usual: 0.25, backward: 2, firstBackward: 11, standing: 2, gaps: 0 });
    expect(findings(clockOf([...even(10), -0.5, ...even(5), -0.25]))).toEqual([
      { code: 'time-not-increasing', values: { count: 2, first: 11 }, range: [10, 11] },
    ]);
  });

  test('a gap is longer than five usual steps; the longest is told, and the sample before it', () => {
    const time = clockOf([...even(100), 1.25, ...even(100), 1.5, ...even(100), 4, ...even(100), 2, ...even(50)]);
    expect(surveyClock(time)).toMatchObject({ gaps: 3, longest: 4, longestAt: 302 });
    expect(findings(time)).toEqual([{ code: 'time-gap', values: { count: 3, longest: 4, first: 302, usual: 0.25 }, range: [302, 303] }]);
    expect(surveyClock(time, 6).gaps).toBe(2);
    expect(surveyClock(time, 20).gaps).toBe(0);
  });

  test('long steps in more than one sample of a hundred are the way of the logger', () => {
    // 3 of 300 samples, and 3 of 299
    const gaps = (rest: number) => clockOf([...even(100), 3, ...even(50), 3, ...even(50), 3, ...even(rest)]);
    expect(gaps(96)).toHaveLength(300);
    expect(findings(gaps(96)).map(({ code }) => code)).toEqual(['time-gap']);
    expect(findings(gaps(95))).toEqual([]);
  });

  test('the usual step of a long clock is that of five hundred places', () => {
    // every third step is three times as long: of all steps the median is the short one
    expect(surveyClock(clockOf(Array.from({ length: 3000 }, (_, i) => (i % 3 === 2 ? 0.75 : 0.25)))).usual).toBe(0.25);
    expect(surveyClock(clockOf([0.5, 0, 0, 0.5, 0])).usual).toBe(0.5);
  });
});

describe('a clock that is coarser than the logging', () => {
  const stepped = (count: number, each: number) => clockOf(Array.from({ length: count - 1 }, (_, i) => (i % each === 0 ? 0 : 0.25)));
  test('more than one step in ten stands still', () => {
    // 199 steps, of which 20 stand: a tenth of the samples; one more is too many
    expect(findings(stepped(200, 10))).toEqual([]);
    const time = clockOf([0, ...Array.from({ length: 198 }, (_, i) => (i % 10 === 0 ? 0 : 0.25))]);
    expect(findings(time)).toEqual([{ code: 'time-coarse', values: { share: (100 * 21) / 200, step: 0.25 }, range: undefined }]);
  });
});

describe('a unit of time that changes on the way', () => {
  // one sample a second, then one every millisecond: 400 samples, the change after sample 219
  const faster = clockOf([...even(219, 1), ...even(180, 0.001)]);
  const slower = clockOf([...even(219, 0.001), ...even(180, 1)]);
  test.each([
    ['faster', faster, 1 / 1000],
    ['slower', slower, 1000],
  ])('%s: the sample and the factor', (_, time, factor) => {
    const { change } = surveyClock(time);
    expect(change!.at).toBe(220);
    expect(change!.factor / factor).toBeCloseTo(1, 9);
    const found = clockFindings(surveyClock(time), time);
    expect(found.map(({ code, range }) => ({ code, range }))).toEqual([{ code: 'time-unit-changes', range: [220, 399] }]);
    expect(found[0]!.values).toEqual({ sample: 220, factor: change!.factor });
  });

  test('a change by less than thirty, one that does not stay, and a short clock are none', () => {
    expect(surveyClock(clockOf([...even(219, 1), ...even(180, 1 / 31)])).change!.at).toBe(220);
    expect(surveyClock(clockOf([...even(219, 1), ...even(180, 1 / 29)])).change).toBeUndefined();
    expect(surveyClock(clockOf([...even(219, 1), ...even(180, 31)])).change!.at).toBe(220);
    expect(surveyClock(clockOf([...even(219, 1), ...even(180, 29)])).change).toBeUndefined();
    expect(surveyClock(clockOf([...even(150, 1), ...even(100, 0.001), ...even(149, 1)])).change).toBeUndefined();
    expect(surveyClock(clockOf([...even(10, 1), ...even(29, 0.001)])).change!.at).toBe(11);
    expect(surveyClock(clockOf([...even(10, 1), ...even(28, 0.001)])).change).toBeUndefined();
    // a clock that stands at first has no pace to be compared with
    expect(surveyClock(clockOf([...even(219, 0), ...even(180, 1)])).change).toBeUndefined();
  });

  test('wherever it lies between two blocks of the record', () => {
    for (let before = 190; before <= 209; before += 1)
      for (const factor of [1 / 60, 60, 1000]) {
        const { change } = surveyClock(clockOf([...even(before, 1), ...even(399 - before, factor)]));
        expect(change!.at).toBe(before + 1);
        expect(change!.factor / factor).toBeCloseTo(1, 9);
      }
  });

  test('one block before its end too, and not where the clock goes back', () => {
    // the last of twenty blocks ends with sample 380
    expect(surveyClock(clockOf([...even(361, 1), ...even(38, 1000)])).change).toEqual({ at: 362, factor: 1000, before: 1 });
    expect(surveyClock(clockOf([...even(219, 1), -1, ...even(180, 0.001)])).change).toBeUndefined();
  });
});

describe('a unit of time that changes, and a gap', () => {
  // 2000 samples, from sample 1001 on sixty times slower or faster, with a gap [s] after some sample
  const withGap = (factor: number, at: number, gap: number) => {
    const steps = [...even(1000, 1), ...even(999, factor)];
    steps[at]! += gap;
    return clockOf(steps);
  };
  test.each([
    [250, 31],
    [250, 600],
    [250, 6000],
    [10, 6000],
    [950, 6000],
    [995, 6000],
    [1005, 6000],
    [1150, 600_000],
    [1250, 600_000],
    [1990, 600_000],
  ])('the gap after sample %i does not move the change', (at, gap) => {
    for (const factor of [60, 1 / 64]) {
      const time = withGap(factor, at, gap);
      const usual = at < 1000 ? 1 : factor;
      const longest = gap + usual;
      expect(findings(time)).toEqual([
        { code: 'time-unit-changes', values: { factor, sample: 1001 }, range: [1001, 1999] },
        { code: 'time-gap', values: { count: 1, longest, first: at, usual }, range: [at, at + 1] },
      ]);
    }
  });

  test('a gap alone is no change, however long and wherever it is', () => {
    for (const count of [100, 119, 399])
      for (let at = 0; at < count; at += 1) {
        const steps = even(count, 1);
        steps[at] = 1e6;
        expect(findings(clockOf(steps)).map(({ code }) => code)).toEqual(['time-gap']);
      }
    for (let at = 0; at < 39; at += 1) {
      const steps = even(39, 1);
      steps[at] = 1e6;
      expect(surveyClock(clockOf(steps))).toMatchObject({ gaps: 1, longestAt: at, change: undefined });
    }
  });

  test('a clock of few ticks changes too', () => {
    // of 400 samples each tenth ticks, by one second and then by sixty: most fifths of a block of 19 stand, which has one tick
    // or two; the sample is looked for among three blocks
    const ticks = Array.from({ length: 399 }, (_, i) => (i % 10 !== 9 ? 0 : i < 200 ? 1 : 60));
    const { change } = surveyClock(clockOf(ticks));
    expect(change!.factor).toBeGreaterThanOrEqual(30);
    expect(change!.factor).toBeLessThanOrEqual(120);
    expect(Math.abs(change!.at - 200)).toBeLessThanOrEqual(3 * 19);
  });
});

describe('a unit of time that is unlikely', () => {
  const codes = (time: Float64Array) => findings(time).map(({ code }) => code);
  test('fifty samples in less than a second, or more than five seconds between two', () => {
    const quick = clockOf(even(49, 1 / 64));
    expect(findings(quick)).toEqual([
      { code: 'time-unit-unlikely', values: { duration: 49 / 64, samples: 50, usual: 1 / 64 }, range: undefined },
    ]);
    expect(codes(clockOf(even(64, 1 / 64)))).toEqual([]); // one second
    expect(codes(clockOf(even(63, 1 / 64)))).toEqual(['time-unit-unlikely']);
    expect(codes(clockOf(even(48, 1 / 64)))).toEqual([]); // 49 samples
    expect(codes(clockOf(even(60, 5)))).toEqual([]);
    expect(codes(clockOf(even(60, 5.5)))).toEqual(['time-unit-unlikely']);
    // it counts from wherever it starts
    expect(codes(clockOf(even(60, 1 / 64), 1000))).toEqual(['time-unit-unlikely']);
  });

  test('a clock that changes, goes back or stands says something else', () => {
    expect(codes(clockOf([...even(219, 60), ...even(180, 0.001)]))).toEqual(['time-unit-changes']);
    expect(codes(clockOf([...even(30, 1 / 64), -1 / 64, ...even(30, 1 / 64)]))).toEqual(['time-not-increasing']);
    expect(codes(clockOf(even(60, 0)))).toEqual(['time-coarse']);
  });
});
