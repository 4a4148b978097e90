import { describe, expect, test } from 'vitest';
import { resolution } from '../../src/numeric/index.js';
import { checkRecordKernel } from '../../src/record/checks/checkRecord.js';
import { findPauses, pausesOf } from '../../src/record/checks/findPauses.js';
import { findPausesKernel } from '../../src/record/checks/pauseSearch.js';
import { recordOutline } from '../../src/record/survey/recordOutline.js';
import { requireColumns } from '../../src/record/survey/requireColumns.js';
import { runningTime, surveyRecord } from '../../src/record/survey/surveyRecord.js';
import { checkRecord } from '../../src/index.js';
import { refusal } from '../support/thrown.js';

const of = (count: number, value: (i: number) => number) => Float64Array.from({ length: count }, (_, i) => value(i));

describe('the outline of a record', () => {
  // at rest up to sample 50, up by 100 N and 0.01 mm a sample to 10 kN at sample 150, down by 200 N a sample to 6 kN, then nothing
  const force = of(221, (i) => (i <= 50 ? 0 : i <= 150 ? 100 * (i - 50) : i <= 170 ? 10_000 - 200 * (i - 150) : 0));
  const travel = of(221, (i) => (i < 50 ? 0 : 0.01 * (i - 50)));
  const outline = (given: object = {}) => recordOutline({ force, travel, ...given })!;

  test('highest force, first and last loaded sample, stiffness', () => {
    const found = outline();
    expect(found).toMatchObject({ top: 150, highest: 10_000, first: 52, last: 170, time: undefined });
    expect(found.stiffness).toBeCloseTo(10_000, 6);
    expect(found.motion).toMatchObject({
      column: 'travel',
      end: 220,
      step: 0,
      noise: expect.closeTo(0, 12) as number,
    });
    expect(found.motion!.usual()).toBeCloseTo(0.01, 12);
    // of the changes 98 are 100 N and 20 are 200 N
    expect(found.habit.usual()).toBe(100);
    expect(outline({ time: travel }).time).toBe(travel);
  });

  test('loaded is what stands above 2 % of the highest force', () => {
    const from = (F: number) => outline({ force: force.map((one, i) => (i === 10 ? F : one)) }).first;
    expect([from(200), from(199)]).toEqual([10, 52]);
  });

  test('travel goes before extension, extension before strain; without motion no stiffness', () => {
    const extension = travel.map((x) => x / 2);
    const strain = travel.map((x) => x / 50);
    expect(outline({ extension, strain }).motion!.column).toBe('travel');
    expect(outline({ travel: undefined, extension, strain })).toMatchObject({
      motion: { column: 'extension' },
      stiffness: expect.closeTo(20_000, 6) as number,
    });
    expect(outline({ travel: undefined, strain }).motion!.column).toBe('strain');
    expect(outline({ travel: undefined })).toMatchObject({ motion: undefined, stiffness: 0 });
  });

  test('an extensometer that ends early; of two samples it is none', () => {
    const until = (end: number) => outline({ travel: undefined, extension: travel.map((x, i) => (i < end ? x : NaN)) });
    expect(until(100).motion!.end).toBe(99);
    expect(until(100).stiffness).toBeCloseTo(10_000, 6);
    expect(until(3).motion!.end).toBe(2);
    expect(until(2).motion).toBeUndefined();
    expect(until(3).stiffness).toBe(0);
  });

  test('a force that never rises has no outline', () => {
    expect(recordOutline({ force: of(9, () => 0), travel: of(9, (i) => i) })).toBeUndefined();
    expect(recordOutline({ force: of(9, () => -1), travel: of(9, (i) => i) })).toBeUndefined();
  });

  test('the stiffness is that of the steepest of the chords between levels', () => {
    // 20 kN/mm up to 3 kN, then 5 kN/mm: the chords from 5 to 20, 10 to 25 and 15 to 30 % are steep
    const bent = of(101, (i) => (i <= 30 ? 0.005 * i : 0.15 + 0.02 * (i - 30)));
    expect(recordOutline({ force: of(101, (i) => 100 * i), travel: bent })!.stiffness).toBeCloseTo(20_000, 6);
    // steep above three quarters alone is not looked at
    const late = of(101, (i) => (i <= 75 ? 0.02 * i : 1.5 + 0.005 * (i - 75)));
    expect(recordOutline({ force: of(101, (i) => 100 * i), travel: late })!.stiffness).toBeCloseTo(5000, 6);
    expect(recordOutline({ force: of(101, (i) => 100 * i), travel: late.map((x) => -x) })!.stiffness).toBe(0);
    // a record of few samples reaches several levels in one
    expect(recordOutline({ force: of(5, (i) => 25 * i), travel: of(5, (i) => i) })!.stiffness).toBeCloseTo(25, 9);
  });

  test('the last loaded sample: above the flat level at the end', () => {
    const tail = (level: number, samples = 50) =>
      outline({ force: Float64Array.from([...force.subarray(0, 171), ...of(samples, () => level)]), travel: of(171 + samples, (i) => i) })
        .last;
    expect(tail(0)).toBe(170);
    expect(tail(-500)).toBe(170);
    expect(tail(2900)).toBe(170);
    // 30 % of the highest force and more is a load
    expect(tail(3100)).toBe(220);
    expect(tail(0, 8)).toBe(170);
    expect(tail(300, 8)).toBe(170);
    // fewer than eight samples tell no level: what is above 2 % is loaded
    expect(tail(0, 7)).toBe(170);
    expect(tail(300, 7)).toBe(177);
    // a tail that is not flat is none
    const uneven = of(8, (i) => 1000 + 100 * i);
    expect(outline({ force: Float64Array.from([...force.subarray(0, 171), ...uneven]), travel: of(179, (i) => i) }).last).toBe(178);
  });
});

describe('what one walk over the columns tells', () => {
  const force = of(101, (i) => (i <= 80 ? 100 * i : 0));
  const travel = of(101, (i) => 0.01 * i);
  const time = of(101, (i) => i / 10);
  const motion = (given: object) => surveyRecord({ force, travel, ...given }).motion;

  test('highest force, clock, which motion', () => {
    expect(surveyRecord({ force, travel, time })).toMatchObject({
      top: 80,
      clock: { usual: expect.closeTo(0.1, 9) as number },
      motion: { column: 'travel', end: 101, repeated: 0, backward: 0, largest: 0 },
    });
    expect(motion({ extension: travel, strain: travel })!.column).toBe('extension');
    expect(motion({ strain: travel })!.column).toBe('strain');
    expect(surveyRecord({ force, time })).toMatchObject({ top: 80, motion: undefined });
    expect(surveyRecord({ force, travel }).clock).toBeUndefined();
    expect(surveyRecord({ force, travel, time: time.map((t, i) => (i > 50 ? t + 0.9 : t)) }).clock!.gaps).toBe(1);
    expect(surveyRecord({ force, travel, time: time.map((t, i) => (i > 50 ? t + 0.9 : t)) }, 11).clock!.gaps).toBe(0);
  });

  test('samples that repeat force and motion', () => {
    expect(motion({ travel: travel.map((x, i) => (i === 30 ? 0.29 : x)) })!.repeated).toBe(0);
    expect(motion({ force: force.map((F, i) => (i === 30 ? 2900 : F)) })!.repeated).toBe(0);
    expect(
      motion({ force: force.map((F, i) => (i === 30 ? 2900 : F)), travel: travel.map((x, i) => (i === 30 ? travel[29]! : x)) })!.repeated,
    ).toBe(1);
  });

  test('times that the motion goes back before the highest force, and the largest way', () => {
    const back = (at: number, by: number) => (x: number, i: number) => (i >= at && i < at + 5 ? x - by : x);
    const once = motion({ travel: travel.map(back(30, 0.5)) })!;
    expect(once.backward).toBe(1);
    expect(once.largest).toBeCloseTo(0.29 - (0.3 - 0.5), 9);
    const twice = motion({ travel: travel.map(back(30, 0.5)).map(back(50, 0.3)) })!;
    expect(twice.backward).toBe(2);
    expect(twice.largest).toBeCloseTo(0.49, 9);
    expect(motion({ travel: travel.map(back(85, 0.5)) })!).toMatchObject({ backward: 0, largest: 0 });
    expect(motion({ travel: travel.map(back(30, 0.5)).map(back(85, 0.9)) })!.largest).toBeCloseTo(0.49, 9);
  });

  test('a highest force beyond the end of the extensometer', () => {
    const extension = travel.map((x, i) => (i >= 60 ? NaN : i >= 50 ? x - 0.3 : x));
    expect(surveyRecord({ force, extension })).toMatchObject({ top: 80, motion: { end: 60, backward: 1 } });
    const early = of(101, (i) => (i < 40 ? 100 * i : 50));
    expect(surveyRecord({ force: early, extension })).toMatchObject({ top: 39, motion: { end: 60, backward: 0 } });
    expect(surveyRecord({ force, extension: travel.map(() => NaN) })).toMatchObject({ top: 80, motion: { end: 0 } });
    expect(surveyRecord({ force: of(5, (i) => 5 - i), extension: of(5, () => NaN) }).top).toBe(0);
  });

  test('a clock that goes back or stands all the while does not run', () => {
    const running = (time: Float64Array) => {
      const record = { force, travel, time };
      return runningTime(record, surveyRecord(record));
    };
    expect(running(time)).toBe(time);
    expect(running(time.map((t, i) => (i === 50 ? 0 : t)))).toBeUndefined();
    expect(running(time.map(() => 0))).toBeUndefined();
    expect(runningTime({ force, travel }, surveyRecord({ force, travel }))).toBeUndefined();
  });
});

describe('steps of a reading in a long column', () => {
  test('looked at in places far apart', () => {
    // 50 000 samples: every second pair of neighbours is looked at
    expect(resolution(of(50_000, (i) => 0.25 * (Math.floor(i / 2) + (i % 5 === 4 ? 1 : 0))))).toBe(0.25);
    expect(resolution(of(1, () => 3))).toBe(0);
    expect(resolution(of(2, (i) => i))).toBe(0);
  });

  test('differences within rounding are none, and so are more than a thousand steps', () => {
    const stepped = (i: number) => Math.floor(i / 2) + (i % 5 === 4 ? 1 : 0);
    // a hair of 1e-9 beside numbers of 1e6
    expect(resolution(of(400, (i) => 1e6 + stepped(i) + (i % 3 === 0 ? 1e-9 : 0)))).toBeCloseTo(1, 6);
    // eleven changes far larger than a thousand steps, which are no whole multiples, do not count
    expect(resolution(of(400, (i) => stepped(i) + 1500.4 * Math.floor(i / 36)))).toBe(1);
    expect(resolution(of(400, (i) => stepped(i) + 900.4 * Math.floor(i / 36)))).toBe(0);
  });
});

describe('pauses', () => {
  const n = 601;
  const time = of(n, (i) => i / 20);
  /** 0.1 mm/s and 1 kN/mm, still from 10 s for so long, the force relaxing by 20 N/s. */
  const stopped = (seconds: number, creep = 0, fall = 20) => {
    const moved = time.map((t) =>
      t <= 10 ? 0.1 * t : t <= 10 + seconds ? 1 + creep * (t - 10) : 1 + creep * seconds + 0.1 * (t - 10 - seconds),
    );
    return { motion: moved, force: moved.map((x, i) => 1000 * x - fall * Math.min(seconds, Math.max(0, time[i]! - 10))) };
  };
  const found = (given: { motion: Float64Array; force: Float64Array }, share?: number, duration?: number) =>
    findPausesKernel(given.force, given.motion, time, n - 1, share, duration);

  test('half a second and longer', () => {
    expect(found(stopped(0.5))).toMatchObject([
      { range: [200, 210], duration: expect.closeTo(0.5, 9) as number, fall: expect.closeTo(10, 6) as number },
    ]);
    expect(found(stopped(0.45))).toEqual([]);
    expect(found(stopped(0.45), 0.05, 0.45)).toHaveLength(1);
    expect(found(stopped(3))).toMatchObject([{ range: [200, 260] }]);
  });

  test('slower than a twentieth of the usual speed', () => {
    expect(found(stopped(2, 0.0049))).toHaveLength(1);
    expect(found(stopped(2, 0.0051))).toEqual([]);
    expect(found(stopped(2, 0.0051), 0.06)).toHaveLength(1);
    expect(found(stopped(2), 0)).toEqual([]);
  });

  test('the force must not rise meanwhile', () => {
    expect(found(stopped(2, 0, 0))).toHaveLength(1);
    expect(found(stopped(2, 0, -20))).toEqual([]);
  });

  test('two pauses; none before the loading and after the test', () => {
    const twice = of(n, (i) => 0.005 * (Math.min(i, 200) + Math.min(Math.max(0, i - 220), 100) + Math.max(0, i - 360)));
    expect(found({ motion: twice, force: twice.map((x) => 1000 * x) }).map(({ range }) => range)).toEqual([
      [200, 220],
      [320, 360],
    ]);
    const late = of(n, (i) => Math.max(0, 0.005 * (i - 100)));
    expect(found({ motion: late, force: late.map((x) => 1000 * x) })).toEqual([]);
    // the motion stands while the force is gone
    const over = of(n, (i) => 0.005 * Math.min(i, 400));
    expect(
      findPausesKernel(
        over.map((x, i) => (i > 400 ? 0 : 1000 * x)),
        over,
        time,
        400,
      ),
    ).toEqual([]);
  });

  test('an extensometer that ends early is looked at up to there', () => {
    const { motion, force } = stopped(2);
    expect(found({ motion: motion.map((x, i) => (i > 300 ? NaN : x)), force })).toHaveLength(1);
    expect(found({ motion: motion.map((x, i) => (i > 190 ? NaN : x)), force })).toEqual([]);
    expect(found({ motion: motion.map(() => NaN), force })).toEqual([]);
  });

  test('a drive that goes back and on again moved', () => {
    const { force } = stopped(2);
    const swing = time.map((t) =>
      t <= 10 ? 0.1 * t : t <= 11 ? 1 - 0.05 * (t - 10) : t <= 12 ? 0.95 + 0.05 * (t - 11) : 1 + 0.1 * (t - 12),
    );
    expect(found({ motion: swing, force }).filter(({ duration }) => duration > 1)).toEqual([]);
  });

  test('a fast logger is looked at in strides, and finds the same', () => {
    const fast = of(12_001, (i) => i / 400);
    const moved = fast.map((t) => 0.1 * Math.min(t, 10) + 0.1 * Math.max(0, t - 12));
    const [pause, ...more] = findPausesKernel(
      moved.map((x) => 1000 * x),
      moved,
      fast,
      12_000,
    );
    expect(more).toEqual([]);
    // strides are a fiftieth of the least duration: 0.01 s
    expect(Math.abs(fast[pause!.range[0]]! - 10)).toBeLessThanOrEqual(0.01);
    expect(Math.abs(pause!.duration - 2)).toBeLessThanOrEqual(0.02);
  });

  test('arguments', () => {
    const record = { force: [0, 1, 2], travel: [0, 1, 2], time: [0, 1, 2] };
    expect(findPauses(record)).toEqual([]);
    expect(refusal(() => findPauses({ ...record, force: [1] }))).toBe('too-few record.force');
    expect(refusal(() => findPauses({ ...record, time: [0, 1] }))).toBe('unequal-lengths record.time');
    expect(refusal(() => findPauses({ ...record, travel: [0, 1, NaN] }))).toBe('not-finite record.travel[2]');
    expect(findPauses({ force: [0, 1, 2], time: [0, 1, 2], extension: [0, 1, NaN] })).toEqual([]);
    expect(findPauses({ force: [0, 1, 2], time: [0, 1, 2], strain: [0, 1, NaN] })).toEqual([]);
    expect(refusal(() => findPauses({ force: [0, 1, 2], time: [0, 1, 2] }))).toBe('missing record.strain');
    expect(refusal(() => findPauses({ ...record, extension: [0, NaN, 1] }))).toBe('not-finite record.extension[1]');
    expect(refusal(() => findPauses({ ...record, transverseStrain: [0] }))).toBe('unequal-lengths record.transverseStrain');
    expect(refusal(() => findPauses(record, { shares: 1 } as object))).toBe('unknown-option options.shares');
    expect(refusal(() => findPauses(record, { share: -0.1 }))).toBe('out-of-range options.share');
    expect(refusal(() => findPauses(null as never))).toBe('wrong-type record');
    expect(() => findPauses({ ...record, time: [0, 1, 0.5] })).toThrow('findPauses: record.time[2] must not go back, got 0.5');
  });
});

describe('checks of a whole record', () => {
  const n = 301;
  const force = of(n, (i) => (i <= 40 ? 0 : i <= 240 ? 50 * (i - 40) : 0));
  const travel = of(n, (i) => 0.01 * i);
  const time = of(n, (i) => i / 10);
  const codes = (given: object, thresholds?: object) =>
    checkRecordKernel({ force, travel, time, ...given }, thresholds).map(({ code }) => code);

  test('an order: clock, channels, zeros, motion', () => {
    expect(codes({})).toEqual(['tail-after-fracture']);
    expect(codes({ time: undefined })).toEqual(['time-missing', 'tail-after-fracture']);
  });

  test('a force that is negative for the most part, by three times', () => {
    const low = (lowest: number, highest: number) => codes({ force: of(n, (i) => (i < 150 ? (highest * i) / 149 : lowest)) });
    expect(low(-301, 100)).toEqual(['force-sign-reversed']);
    expect(low(-299, 100)).not.toContain('force-sign-reversed');
    expect(codes({ force: of(n, (i) => -i) })).toEqual(['force-sign-reversed', 'force-does-not-rise']);
    expect(checkRecordKernel({ force: of(n, (i) => -i), travel, time })[0]).toMatchObject({
      values: { lowest: -300, highest: -0 },
      field: 'maximumForce',
    });
  });

  test('a motion that falls by more than half of its range while the force rises', () => {
    expect(codes({ travel: travel.map((x) => -x) })).toEqual(['motion-sign-reversed']);
    expect(checkRecordKernel({ force, travel: travel.map((x) => 5 - x), time })[0]).toMatchObject({
      values: { column: 'travel', first: expect.closeTo(5 - 0.44, 9) as number, last: expect.closeTo(5 - 2.4, 9) as number },
    });
    // first up by 1 mm, then down by as much as is told, from first to last loaded sample
    const humped = (down: number) => codes({ travel: of(n, (i) => (i < 140 ? (i - 44) / 96 : 1 - (down * (i - 140)) / 100)) });
    expect(humped(2.1)).toEqual(['motion-sign-reversed']);
    expect(humped(1.9)).not.toContain('motion-sign-reversed');
    expect(codes({ travel: undefined, extension: travel.map((x) => -x) })).toEqual(['motion-sign-reversed']);
  });

  test('a force that never rises', () => {
    expect(codes({ force: of(n, () => 0) })).toEqual(['force-does-not-rise']);
    expect(codes({ force: of(n, () => 5), time: undefined })).toEqual(['force-does-not-rise', 'time-missing']);
    expect(checkRecordKernel({ force: of(n, () => 5), travel, time })[0]).toMatchObject({
      values: { first: 5, highest: 5 },
      field: 'maximumForce',
    });
    // ten deviations of its noise: one sample of every four is off by 1 N, the deviation is 0.66 N to 1 N
    expect(codes({ force: of(n, (i) => (i % 2 === 0 ? 1 : 0)) })).toEqual(['force-does-not-rise']);
  });

  test('several tests', () => {
    // gone from sample 241 on, for more than a second at sample 252
    const twice = of(2 * n, (i) => force[i % n]!);
    const found = checkRecordKernel({ force: twice, travel: of(2 * n, (i) => 0.01 * i), time: of(2 * n, (i) => i / 10) });
    expect(found).toMatchObject([{ code: 'several-tests', values: { count: 2, second: 253 }, range: [253, 2 * n - 1] }]);
  });

  test('each threshold decides, and an undefined one is the default', () => {
    const gap = { time: time.map((t, i) => (i > 150 ? t + 0.45 : t)) };
    expect(codes(gap)).toContain('time-gap');
    expect(codes(gap, { gap: 6 })).not.toContain('time-gap');
    expect(codes(gap, { gap: undefined })).toContain('time-gap');
    const repeated = { force: of(n, (i) => force[i - (i % 2)]!), travel: of(n, (i) => travel[i - (i % 2)]!) };
    expect(codes(repeated)).toContain('samples-repeated');
    expect(codes(repeated, { repeated: 0.6 })).not.toContain('samples-repeated');
    const cut = { force: force.map((F) => Math.min(F, 9800)) };
    expect(codes(cut)).toContain('force-saturated');
    expect(codes(cut, { saturated: 6 })).not.toContain('force-saturated');
    const late = { force: force.slice(55), travel: travel.slice(55), time: time.slice(55) };
    expect(codes(late)).toContain('record-starts-late');
    expect(codes(late, { lateStart: 0.08 })).not.toContain('record-starts-late');
    const drift = { force: force.map((F, i) => (i > 245 ? F + 60 : F)) };
    expect(codes(drift)).toContain('zero-drift');
    expect(codes(drift, { zeroDrift: 0.007 })).not.toContain('zero-drift');
  });

  test('thresholds are numbers of 0 and more', () => {
    const record = { force, travel, time };
    for (const name of ['gap', 'repeated', 'saturated', 'lateStart', 'zeroDrift'])
      expect(refusal(() => checkRecord(record, { [name]: -1 }))).toBe(`out-of-range thresholds.${name}`);
    expect(checkRecord(record, { gap: undefined }).map(({ code }) => code)).toEqual(['tail-after-fracture']);
    expect(checkRecord({ ...record, force: force.map((F, i) => (i === 100 ? F + 3000 : F)) }).map(({ code }) => code)).toContain('spikes');
  });
});

test('columns of a record', () => {
  const force = [1, 2, 3];
  const ends = [0, 1, NaN];
  expect(
    Object.keys(requireColumns('f', { force, extension: ends, strain: ends, travel: force, transverseStrain: ends, time: force })),
  ).toEqual(['force', 'extension', 'strain', 'travel', 'transverseStrain', 'time']);
  expect(refusal(() => requireColumns('f', { force, travel: ends }))).toBe('not-finite record.travel[2]');
  expect(refusal(() => requireColumns('f', { force, time: ends }))).toBe('not-finite record.time[2]');
  expect(refusal(() => requireColumns('f', { force, time: [1] }))).toBe('unequal-lengths record.time');
  expect(refusal(() => requireColumns('f', { force: [1] }))).toBe('too-few record.force');
  expect(Object.keys(requireColumns('f', { force: [1] }, 1))).toEqual(['force']);
  expect(refusal(() => requireColumns('f', 3 as never))).toBe('wrong-type record');
});

test('pauses of a record whose clock runs, by its travel, else extension, else strain', () => {
  const time = of(601, (i) => i / 20);
  const moved = time.map((t) => 0.1 * Math.min(t, 10) + 0.1 * Math.max(0, t - 12));
  const steady = time.map((t) => 0.1 * t);
  const force = moved.map((x) => 1000 * x);
  const pauses = (record: object, clock = time) => {
    const timed = { force, time: clock, ...record };
    return pausesOf(timed, surveyRecord(timed).clock, 600).length;
  };
  expect([pauses({ travel: moved }), pauses({ extension: moved }), pauses({ strain: moved })]).toEqual([1, 1, 1]);
  expect([pauses({ travel: steady, extension: moved }), pauses({ extension: steady, strain: moved }), pauses({})]).toEqual([0, 0, 0]);
  expect(pausesOf({ force, travel: moved }, undefined, 600)).toEqual([]);
  expect(pausesOf({ force, travel: moved, time }, undefined, 600)).toEqual([]);
  expect(
    pauses(
      { travel: moved },
      time.map((t, i) => (i === 50 ? 0 : t)),
    ),
  ).toBe(0);
  // a clock by which 60 of 601 samples stand runs, with 61 it does not
  const standing = (count: number) => time.map((t, i) => (i > 400 && i <= 400 + 2 * count && i % 2 === 0 ? time[i - 1]! : t));
  expect([pauses({ travel: moved }, standing(60)), pauses({ travel: moved }, standing(61))]).toEqual([1, 0]);
  expect(
    pauses(
      { travel: moved },
      time.map(() => 0),
    ),
  ).toBe(0);
});
