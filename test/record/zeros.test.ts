import { describe, expect, test } from 'vitest';
import { testSegments } from '../../src/record/survey/segments.js';
import { zeroFindings } from '../../src/record/checks/zeroFindings.js';
import { findZeroMoves } from '../../src/record/checks/zeroMoves.js';
import { surveyZeros } from '../../src/record/checks/zeros.js';
import { outlineOf } from '../support/outlines.js';

const of = (count: number, value: (i: number) => number) => Array.from({ length: count }, (_, i) => value(i));

/** At rest for a while, up by 100 N a sample to 10 kN, and at rest again. */
const pull = (rest: number, before = 0, after = 0, tail = 40) => [
  ...of(rest, () => before),
  ...of(101, (i) => before + 100 * i),
  ...of(tail, () => after),
];
const motionOf = (rest: number, tail = 40) => [...of(rest, () => 0), ...of(101, (i) => 0.01 * i), ...of(tail, () => 1)];
/** The outline of such a record: loaded until the force is gone. */
const outlined = (force: readonly number[], rest = 40, given: Parameters<typeof outlineOf>[2] = {}, tail = 40) =>
  outlineOf(force, motionOf(rest, tail), {
    first: rest + 3,
    last: rest + 100,
    stiffness: 10_000,
    habit: { noise: 0, step: 0, usual: () => 100 },
    ...given,
  });

describe('what the force reads when nothing pulls', () => {
  test('before loading over the first three quarters of the rest, after fracture the median without its first quarter', () => {
    // 40 samples at 5 N, and the first of the loading
    const after = of(40, (i) => (i < 10 ? 500 : 30 + (i % 3)));
    const force = [...pull(40, 5, 0, 0), ...after];
    // 41 samples at 5 N: 31 of them count, 0 to 30; the tail is from 141 to 180, its last 30 samples from 151 on
    expect(surveyZeros(outlined(force))).toEqual({
      from: 0,
      tareStep: undefined,
      before: 5,
      beforeAt: 15,
      after: 31,
      afterAt: (151 + 180) / 2,
    });
  });

  test('fewer than ten samples before and five after say nothing', () => {
    const before = (rest: number) => surveyZeros(outlined(pull(rest, 50), rest)).before;
    // the first sample of the loading is at the level too
    expect(before(9)).toBe(50);
    expect(before(8)).toBeUndefined();
    const after = (tail: number) => surveyZeros(outlined(pull(40, 0, 50, tail), 40, {}, tail)).after;
    expect(after(5)).toBe(50);
    expect(after(4)).toBeUndefined();
  });

  test('a level is flat to five deviations, one step and a half, or a thousandth of the highest force', () => {
    // samples 20 to 39 are off
    const before = (off: number, habit: object = {}) =>
      surveyZeros(
        outlined(
          pull(40).map((F, i) => (i >= 20 && i < 40 ? off : F)),
          40,
          { habit: { noise: 0, step: 0, usual: () => 100_000, ...habit } },
        ),
      ).beforeAt;
    // 41 flat samples have their middle at 15, 20 of them at 7
    expect(before(10)).toBe(15);
    expect(before(10.1)).toBe(7);
    expect(before(39, { noise: 8 })).toBe(15);
    expect(before(41, { noise: 8 })).toBe(7);
    expect(before(44, { step: 30 })).toBe(15);
    expect(before(46, { step: 30 })).toBe(7);
  });

  test('a rise within the stretch is loading, unless it is as slow as a zero that drifts, or within the scatter', () => {
    // 41 samples rise by so much each; the two halves of the first 31 lie 15.5 samples apart
    const before = (rise: number, habit: object) =>
      surveyZeros(
        outlined(
          pull(40).map((F, i) => (i <= 40 ? rise * i : F + 40 * rise)),
          40,
          { habit: { noise: 0, step: 0, usual: () => 0, ...habit } },
        ),
      ).before;
    expect(before(0.01, {})).toBeUndefined();
    // creeping: a twentieth of the usual change, over 15 samples
    expect(before(0.01, { usual: () => 0.22 })).toBeCloseTo(0.15, 9);
    expect(before(0.01, { usual: () => 0.2 })).toBeUndefined();
    // scatter: three deviations over the root of 31 / 4
    expect(before(0.01, { noise: 0.15 })).toBeCloseTo(0.15, 9);
    expect(before(0.01, { noise: 0.14 })).toBeUndefined();
    expect(before(0.01, { step: 0.15 })).toBeCloseTo(0.15, 9);
    // a millionth of the highest force
    expect(before(0.0006, {})).toBeCloseTo(0.009, 9);
    expect(before(0.0007, {})).toBeUndefined();
  });
});

describe('a tare that was pressed while nothing moved', () => {
  const stepped = (by: number, at = 20) => pull(40).map((F, i) => (i < at ? F - by : F));
  test('its sample and size; what counts begins there', () => {
    const zeros = surveyZeros(outlined(stepped(350)));
    expect(zeros).toMatchObject({ from: 20, tareStep: 350, before: 0 });
    // 20 to 40 at zero: the first 16 of them
    expect(zeros.beforeAt).toBe(27.5);
    expect(surveyZeros(outlined(stepped(-350)))).toMatchObject({ from: 20, tareStep: -350 });
  });

  test('it is at least a five hundredth of the highest force, and twice what is flat', () => {
    const step = (by: number, habit: object = {}) =>
      surveyZeros(outlined(stepped(by), 40, { habit: { noise: 0, step: 0, usual: () => 100, ...habit } })).from;
    expect([step(20), step(19.9)]).toEqual([20, 0]);
    expect([step(51, { noise: 5 }), step(49, { noise: 5 })]).toEqual([20, 0]);
    expect([step(91, { step: 30 }), step(89, { step: 30 })]).toEqual([20, 0]);
  });

  test('five flat samples on both sides', () => {
    const at = (place: number) => surveyZeros(outlined(stepped(350, place))).from;
    expect([at(4), at(5), at(36), at(37)]).toEqual([0, 5, 36, 0]);
    const uneven = (sample: number) => surveyZeros(outlined(stepped(350).map((F, i) => (i === sample ? F + 1 : F)))).from;
    expect([14, 15, 19, 20, 24, 25].map(uneven)).toEqual([20, 0, 0, 0, 0, 20]);
  });

  test('the last of two; below a tenth of the highest force', () => {
    const twice = pull(40).map((F, i) => (i < 10 ? F - 500 : i < 25 ? F - 200 : F));
    expect(surveyZeros(outlined(twice))).toMatchObject({ from: 25, tareStep: 200 });
    // levels at 900 and 950 N, and at 1050 and 1100 N, on the way up
    const onTheWay = (F: number) => {
      const force = [...of(40, () => 0), ...of(10, () => F), ...of(10, () => F + 50), ...of(80, (i) => 2000 + 100 * i), ...of(41, () => 0)];
      return surveyZeros(
        outlineOf(
          force,
          of(181, () => 0),
          { first: 40, last: 139, stiffness: 10_000 },
        ),
      ).from;
    };
    expect(onTheWay(900)).toBe(50);
    expect(onTheWay(1050)).toBe(0);
  });

  test('a drive that moved by a fifth of what the stiffness asks for did it', () => {
    // 350 N over 10 kN/mm: five times as much is 0.175 mm over three samples
    const moved = (way: number) =>
      surveyZeros(
        outlineOf(
          stepped(350),
          motionOf(40).map((x, i) => (i < 20 ? x - way : x)),
          { first: 43, last: 140, stiffness: 10_000 },
        ),
      ).from;
    expect([moved(0.009), moved(0.011), moved(-0.011)]).toEqual([20, 0, 0]);
    expect(surveyZeros(outlineOf(stepped(350), undefined, { first: 43, last: 140 })).from).toBe(20);
  });
});

describe('a zero that was set under load', () => {
  const noZeros = { from: 0, tareStep: undefined, before: undefined, beforeAt: 0, after: undefined, afterAt: 0 };
  /** Up by 100 N a sample; from sample 60 on as much lower. */
  const moved = (fall: number, samples = 141) => of(samples, (i) => 100 * i - (i >= 60 ? fall + 100 : 0));
  const moves = (force: readonly number[], given: Parameters<typeof outlineOf>[2] = {}, zeros: object = {}) =>
    findZeroMoves(
      outlineOf(
        force,
        of(force.length, (i) => 0.01 * i),
        given,
      ),
      { ...noZeros, ...zeros },
    );

  test('the force falls to nothing within a sample and goes on', () => {
    // 5900 N before it
    expect(moves(moved(5900))).toEqual([{ at: 60, fall: 5900 }]);
    // a level of 2 % of the highest force, 8000 N, is nothing
    const level = (F: number) => moves(moved(5900 - F), { highest: 8000 }).length;
    expect([level(159), level(161), level(-159), level(-161)]).toEqual([1, 0, 1, 0]);
  });

  test('or the level after fracture is as much too low, to three tenths of the fall', () => {
    const after = (level: number) => moves(moved(2000), {}, { after: level }).length;
    expect([after(-2000), after(-1401), after(-1399), after(-2599), after(-2601), after(0)]).toEqual([1, 1, 0, 1, 0, 0]);
  });

  test('a fall counts from ten deviations, five steps, a fiftieth of the highest force, and five times the changes beside it', () => {
    const counts = (fall: number, habit: object, highest?: number) =>
      moves(
        moved(fall),
        { habit: { noise: 0, step: 0, usual: () => 100, ...habit }, ...(highest === undefined ? {} : { highest }) },
        { after: -fall },
      ).length;
    expect([counts(2000, { noise: 200 }), counts(2000, { noise: 201 })]).toEqual([1, 0]);
    expect([counts(2000, { step: 400 }), counts(2000, { step: 401 })]).toEqual([1, 0]);
    expect([counts(500, {}), counts(499, {})]).toEqual([1, 0]);
    expect([counts(600, {}, 30_000), counts(600, {}, 30_001)]).toEqual([1, 0]);
    // one change of 400 N among the three before and after
    const beside = (i: number) =>
      moves(
        moved(1999).map((F, k) => (k >= i ? F + 300 : F)),
        {},
        { after: -1999 },
      ).length;
    expect([56, 57, 58, 59, 61, 62, 63, 64].map(beside)).toEqual([1, 0, 0, 0, 0, 0, 0, 1]);
  });

  test('the drive neither stopped nor went back meanwhile', () => {
    const back = (way: number, motion: object) =>
      findZeroMoves(
        outlineOf(
          moved(5900),
          of(141, (i) => 0.01 * i - (i >= 60 ? way + 0.01 : 0)),
          { motion },
        ),
        noZeros,
      ).length;
    expect([back(0.03, { step: 0.011 }), back(0.03, { step: 0.009 })]).toEqual([1, 0]);
    expect([back(0.03, { noise: 0.0051 }), back(0.03, { noise: 0.0049 })]).toEqual([1, 0]);
    expect(back(-0.01, {})).toBe(1);
    expect(findZeroMoves(outlineOf(moved(5900), undefined), noZeros)).toHaveLength(1);
  });

  test('the force goes on rising by a twentieth of the fall and of the highest force', () => {
    const on = (samples: number, given: object = {}) => moves(moved(5900, samples), given).length;
    // by 500 N until sample 65
    expect(on(66, { highest: 9999 })).toBe(1);
    expect(on(66, { highest: 10_000 })).toBe(0);
    const slowly = (by: number) =>
      moves(
        moved(5900, 66).map((F, i) => (i > 60 ? by * (i - 60) : F)),
        { highest: 5000 },
      ).length;
    // a twentieth of 5900 N are 295 N
    expect([slowly(60), slowly(59)]).toEqual([1, 0]);
  });

  test('four samples within the loaded part, and after a late tare', () => {
    expect(moves(moved(5900), { first: 56 })).toHaveLength(1);
    expect(moves(moved(5900), { first: 57 })).toHaveLength(0);
    expect(moves(moved(5900), {}, { from: 57 })).toHaveLength(0);
    expect(moves(moved(5900), { last: 65, highest: 5900 })).toHaveLength(1);
    expect(moves(moved(5900), { last: 64, highest: 5900 })).toHaveLength(0);
  });
});

describe('zeros as findings', () => {
  const limits = { lateStart: 0.05, zeroDrift: 0.005 };
  /** Ten samples, highest 10 kN, of which the last three come after the fracture. */
  const found = (zeros: object, { first = 0, last = 6, moves = [] as { at: number; fall: number }[] } = {}) =>
    zeroFindings(
      outlineOf([first, 0, 0, 0, 0, 0, 10_000, 0, 0, 0], undefined, { last }),
      {
        zeros: { from: 0, tareStep: undefined, before: undefined, beforeAt: 0, after: undefined, afterAt: 0, ...zeros },
        zeroMoves: moves,
        drops: [],
        untold: [],
        leaps: [],
      },
      limits,
    ).map(({ code, severity, values, range }) => ({ code, severity, values, range }));
  const tail = { code: 'tail-after-fracture', severity: 'note', values: { count: 3 }, range: [7, 9] };

  test('nothing to say of a record that ends with the fracture', () => {
    expect(found({ before: 0, after: 5000 }, { last: 9 })).toEqual([]);
    expect(found({ before: 0, after: 0 })).toEqual([tail]);
  });

  test('zeros that were moved, and a late tare', () => {
    expect(found({ after: -700 }, { moves: [{ at: 4, fall: 700 }] })).toEqual([
      { code: 'force-zero-moved', severity: 'fault', values: { sample: 4, fall: 700 }, range: [3, 4] },
      tail,
    ]);
    expect(found({ from: 2, tareStep: -80 })[0]).toEqual({
      code: 'late-tare',
      severity: 'note',
      values: { sample: 2, step: -80 },
      range: [0, 2],
    });
  });

  test('a first sample above 5 % of the highest force starts late, unless a zero before it is known', () => {
    expect(found({}, { first: 501 })[0]).toEqual({
      code: 'record-starts-late',
      severity: 'caution',
      values: { share: 5.01 },
      range: undefined,
    });
    expect(found({}, { first: 500 })).toEqual([tail]);
    expect(found({ before: 40 }, { first: 501 })).toEqual([tail]);
    expect(found({ before: 501 }, { first: 501 })[0]!.code).toBe('record-starts-late');
    expect(found({ before: 500 }, { first: 501 })[0]!.code).toBe('zero-before-loading');
    expect(found({ from: 1 }, { first: 501 })).toEqual([tail]);
  });

  test('a force before loading of more than half a per cent', () => {
    expect(found({ before: -51 })[0]).toEqual({
      code: 'zero-before-loading',
      severity: 'caution',
      values: { force: -51, share: 0.51 },
      range: [0, 1],
    });
    expect(found({ from: 2, before: 51 })[0]!.range).toEqual([2, 3]);
    expect(found({ before: 50 })).toEqual([tail]);
  });

  test('a drift of more than half a per cent is a caution, of more than one a fault; without a zero before it is told by itself', () => {
    expect(found({ before: 0, after: 50 })).toEqual([tail]);
    expect(found({ before: 0, after: -51 })[1]).toEqual({
      code: 'zero-drift',
      severity: 'caution',
      values: { force: -51, share: 0.51 },
      range: undefined,
    });
    expect(found({ before: 30, after: -21 })[1]!.values).toEqual({ force: -51, share: 0.51 });
    expect([100, 101].map((after) => found({ before: 0, after })[1]!.severity)).toEqual(['caution', 'fault']);
    expect(found({ after: 50 })).toEqual([tail]);
    expect(found({ after: -51 })[1]).toEqual({
      code: 'zero-after-fracture',
      severity: 'caution',
      values: { force: -51, share: 0.51 },
      range: undefined,
    });
    expect([100, 101].map((after) => found({ after })[1]!.severity)).toEqual(['caution', 'fault']);
  });
});

describe('several tests in one record', () => {
  const segments = (force: readonly number[], rate?: number) =>
    testSegments(
      Float64Array.from(force),
      Math.max(...force),
      rate === undefined ? undefined : Float64Array.from(force, (_, i) => i / rate),
    );
  const peak = [0, 50, 100, 50];
  test('one', () => {
    expect(segments(peak)).toEqual([[0, 3]]);
    expect(segments([...peak, ...of(30, () => 0)])).toEqual([[0, 33]]);
    expect(segments(of(9, () => 0))).toEqual([]);
  });

  test('two, with twenty samples of nothing between them', () => {
    const two = (gap: number, level = 0) => segments([...peak, ...of(gap, () => level), ...peak]);
    // the first sample of the second is nothing too
    expect(two(19)).toEqual([[0, 26]]);
    expect(two(20)).toEqual([
      [0, 24],
      [25, 27],
    ]);
    expect(two(30, 2)).toEqual([[0, 37]]);
    expect(two(30, 1.9)).toEqual([
      [0, 24],
      [25, 37],
    ]);
    expect(two(30, -1.9)).toEqual([
      [0, 24],
      [25, 37],
    ]);
    expect(two(30, -2)).toEqual([[0, 37]]);
  });

  test('by a clock, more than a second and three samples', () => {
    const two = (gap: number, rate: number) => segments([...peak, ...of(gap, () => 0), ...peak], rate).length;
    expect([two(10, 10), two(11, 10)]).toEqual([1, 2]);
    expect([two(2, 1), two(3, 1)]).toEqual([1, 2]);
  });

  test('only what rises above three tenths of the highest force is a test; what is quiet must be so without a break', () => {
    const second = (height: number) => segments([...peak, ...of(25, () => 0), height, ...of(30, () => 0)]);
    expect(second(31)).toHaveLength(2);
    expect(second(30)).toEqual([[0, 59]]);
    expect(segments([...peak, ...of(15, () => 0), 10, ...of(15, () => 0), ...peak])).toHaveLength(1);
    expect(segments([...peak, ...of(15, () => 0), 40, ...of(15, () => 0), ...peak])).toHaveLength(1);
    expect(segments([...peak, ...of(25, () => 0), ...peak, ...of(25, () => 0), ...peak])).toHaveLength(3);
  });
});
