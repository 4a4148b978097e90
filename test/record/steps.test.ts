import { describe, expect, test } from 'vitest';
import {
  checkRecord,
  alignChannels,
  collapseRepeats,
  joinJumps,
  joinSlips,
  loadingEnvelope,
  reapplySteps,
  rebuildTime,
  removeZeroDrift,
  repairRecord,
  replaceSpikes,
  restoreZero,
  reverseSign,
  splitTests,
  tare,
  undoStep,
} from '../../src/index.js';
import type { TrailStep } from '../../src/base/index.js';
import { applyChange } from '../../src/record/repairs/applyChange.js';
import { refusal, thrown } from '../support/thrown.js';

const of = (count: number, value: (i: number) => number) => Float64Array.from({ length: count }, (_, i) => value(i));
const numbers = (column: ArrayLike<number> | undefined) => Array.from(column ?? []);

describe('one change of a record', () => {
  const record = { force: of(4, (i) => 10 * i), travel: of(4, (i) => i), time: of(4, (i) => 0.5 * i) };
  test('add, from the first to the last sample of a range', () => {
    expect(numbers(applyChange(record, { kind: 'add', column: 'force', range: [1, 2], amount: 5 }).force)).toEqual([0, 15, 25, 30]);
  });
  test('ramp, straight from one end to the other', () => {
    expect(numbers(applyChange(record, { kind: 'ramp', column: 'force', amounts: [3, 9] }).force)).toEqual([3, 15, 27, 39]);
  });
  test('multiply, set, and advance with its ends held', () => {
    expect(numbers(applyChange(record, { kind: 'multiply', column: 'travel', factor: -2 }).travel)).toEqual([-0, -2, -4, -6]);
    expect(numbers(applyChange(record, { kind: 'set', column: 'force', samples: [0, 3], values: [7, 8] }).force)).toEqual([7, 10, 20, 8]);
    expect(numbers(applyChange(record, { kind: 'advance', column: 'force', samples: 1 }).force)).toEqual([10, 20, 30, 30]);
    expect(numbers(applyChange(record, { kind: 'advance', column: 'force', samples: -2 }).force)).toEqual([0, 0, 0, 10]);
  });
  test('keep, of every column, the ranges one after the other', () => {
    const kept = applyChange(record, {
      kind: 'keep',
      ranges: [
        [0, 0],
        [2, 3],
      ],
    });
    expect([kept.force, kept.travel, kept.time].map(numbers)).toEqual([
      [0, 20, 30],
      [0, 2, 3],
      [0, 1, 1.5],
    ]);
  });
  test('a clock counted anew touches time alone', () => {
    const clocked = applyChange(record, { kind: 'clock', start: 2, step: 0.25 });
    expect(numbers(clocked.time)).toEqual([2, 2.25, 2.5, 2.75]);
    expect(clocked.force).toBe(record.force);
  });
  test('other columns stay the same arrays, the raw one as it was', () => {
    const changed = applyChange({ ...record, strain: undefined }, { kind: 'add', column: 'force', range: [0, 3], amount: 1 });
    expect(changed.travel).toBe(record.travel);
    expect(Object.keys(changed)).toEqual(['force', 'travel', 'time']);
    expect(numbers(record.force)).toEqual([0, 10, 20, 30]);
  });
});

describe('steps made again and undone', () => {
  const raw = { force: [0, 1, 2], travel: [0, 1, 2] };
  const step = (amount: number): TrailStep =>
    ({ step: '', code: 'zero-put-back', values: {}, change: { kind: 'add', column: 'force', range: [0, 2], amount } }) as never;
  const still = { step: '', code: 'line-fitted', values: {} } as never as TrailStep;
  const trail = [step(1), still, step(10)];
  test('in order; what changed no column is passed over', () => {
    expect(numbers(reapplySteps(raw, trail).force)).toEqual([11, 12, 13]);
    expect(numbers(undoStep(raw, trail).force)).toEqual([1, 2, 3]);
    expect(numbers(undoStep(raw, trail, 2).force)).toEqual([1, 2, 3]);
    expect(numbers(undoStep(raw, trail, 1).force)).toEqual([1, 2, 3]);
    expect(numbers(undoStep(raw, trail, 0).force)).toEqual([0, 1, 2]);
  });
  test('a step that is none', () => {
    expect(refusal(() => undoStep(raw, trail, 3))).toBe('out-of-range step');
    expect(refusal(() => undoStep(raw, trail, -1))).toBe('out-of-range step');
    expect(thrown(() => undoStep(raw, trail, 0.5)).message).toBe(
      `undoStep: step must be a whole number from 0 to ${trail.length - 1}, got 0.5`,
    );
    expect(thrown(() => undoStep(raw, 5 as never)).message).toBe('undoStep: trail must be an array, got 5');
    expect(thrown(() => reapplySteps(raw, 5 as never)).message).toBe('reapplySteps: trail must be an array, got 5');
    expect(thrown(() => reapplySteps({ ...raw, travel: [0] }, trail)).message).toMatch(/^reapplySteps: record\.travel/);
  });
});

describe('samples that repeat the one before', () => {
  const collapsed = (record: Parameters<typeof collapseRepeats>[0]) => {
    const { record: left, trail } = collapseRepeats(record);
    return { force: numbers(left.force), trail: trail.map(({ code, values, change }) => ({ code, values, change })) };
  };
  test('in force and every motion are left out', () => {
    expect(collapsed({ force: [0, 1, 1, 1, 2, 2, 3], travel: [0, 1, 1, 2, 3, 3, 4], extension: [0, 1, 1, 2, 3, 3, 4] })).toEqual({
      force: [0, 1, 1, 2, 3],
      trail: [
        {
          code: 'repeats-left-out',
          values: { samples: 2 },
          change: {
            kind: 'keep',
            ranges: [
              [0, 1],
              [3, 4],
              [6, 6],
            ],
          },
        },
      ],
    });
    expect(collapsed({ force: [0, 1, 1], travel: [0, 1, 1], extension: [0, 1, 2] }).trail).toEqual([]);
    expect(collapsed({ force: [0, 1, 1], travel: [0, 1, 1], strain: [0, 1, 2] }).trail).toEqual([]);
    expect(collapsed({ force: [0, 1, 1], strain: [0, 1, 1], travel: [0, 1, 2] }).trail).toEqual([]);
    expect(collapsed({ force: [0, 1, 1], travel: [0, 1, 1], extension: [0, NaN, NaN] }).force).toEqual([0, 1]);
    // time goes on, and does not count
    expect(collapsed({ force: [0, 1, 1], travel: [0, 1, 1], time: [0, 1, 2] }).force).toEqual([0, 1]);
  });
});

describe('a clock counted anew', () => {
  test('by the rate, or by the usual step; from where it began', () => {
    const record = { force: [0, 1, 2, 3], travel: [0, 1, 2, 3], time: [5, 5.5, 6, 4] };
    expect(numbers(rebuildTime(record).record.time)).toEqual([5, 5.5, 6, 6.5]);
    expect(rebuildTime(record).trail).toMatchObject([
      { code: 'clock-rebuilt', values: { start: 5, rate: 2 }, change: { kind: 'clock', start: 5, step: 0.5 } },
    ]);
    expect(numbers(rebuildTime(record, { rate: 4 }).record.time)).toEqual([5, 5.25, 5.5, 5.75]);
    expect(numbers(rebuildTime({ force: [0, 1], travel: [0, 1] }, { rate: 4 }).record.time)).toEqual([0, 0.25]);
  });
  test('what gives no rate', () => {
    const record = { force: [0, 1], travel: [0, 1] };
    expect(refusal(() => rebuildTime({ ...record, time: [1, 1] }))).toBe('missing options.rate');
    expect(refusal(() => rebuildTime(record, { rate: 0 }))).toBe('not-positive options.rate');
    expect(thrown(() => rebuildTime(record, { rates: 1 } as object)).message).toBe(
      'rebuildTime: options.rates is not an option (known: rate), got "rates"',
    );
    expect(thrown(() => rebuildTime({ force: [1] })).message).toMatch(/^rebuildTime: record\.force/);
  });
});

describe('signs turned', () => {
  test('of the columns named, in order', () => {
    const { record, trail } = reverseSign({ force: [0, -1], travel: [0, -2], extension: [0, 3], strain: [0, 4] }, [
      'travel',
      'force',
      'extension',
      'strain',
    ]);
    expect([record.force, record.travel, record.extension, record.strain].map((one) => one![1])).toEqual([1, 2, -3, -4]);
    expect(trail.map(({ code, values }) => [code, values])).toEqual(
      ['travel', 'force', 'extension', 'strain'].map((column) => ['sign-turned', { column, factor: -1 }]),
    );
  });
  test('of a column that is not there, or cannot be', () => {
    expect(thrown(() => reverseSign({ force: [0, 1], travel: [0, 1] }, ['force', 'strain'])).message).toBe(
      'reverseSign: columns[1] must name a column of the record, got "strain"',
    );
    expect(thrown(() => reverseSign({ force: [0, 1], time: [0, 1] }, ['time' as never])).message).toBe(
      'reverseSign: columns[0] must be one of "force", "travel", "extension", "strain", got "time"',
    );
    expect(thrown(() => reverseSign({ force: [0, 1] }, 'force' as never)).message).toBe(
      'reverseSign: columns must be an array, got "force"',
    );
  });
});

/** At rest for 40 samples, up by 100 N and 0.01 mm a sample to 20 kN at sample 240, at rest for 40. */
const n = 281;
const pull = of(n, (i) => (i <= 40 || i > 240 ? 0 : 100 * (i - 40)));
const travel = of(n, (i) => 0.01 * (Math.min(240, Math.max(40, i)) - 40));

describe('excursions of the drive', () => {
  test('are left out from the force before to where it is reached again', () => {
    const way = Array.from({ length: 220 }, (_, i) => (i < 60 ? i : i < 90 ? 118 - i : i < 150 ? i - 60 : i < 170 ? 238 - 1 - i : i - 100));
    const { record, trail } = loadingEnvelope({ force: way.map((x) => 100 * x), travel: way.map((x) => 0.01 * x) });
    numbers(record.force).forEach((F, i, all) => {
      if (i > 0) expect(F).toBeGreaterThanOrEqual(all[i - 1]!);
    });
    expect(trail).toHaveLength(1);
    expect(trail[0]!.code).toBe('excursions-left-out');
    expect(trail[0]!.values['count']).toBe(2);
    expect(trail[0]!.values['samples']).toBe(way.length - record.force.length);
    expect(loadingEnvelope({ force: pull, travel }).trail).toEqual([]);
    expect(loadingEnvelope({ force: [0, 0, 0], travel: [0, 1, 2] }).trail).toEqual([]);
  });
});

describe('several tests', () => {
  test('each by itself', () => {
    const twice = { force: of(2 * n, (i) => pull[i % n]!), travel: of(2 * n, (i) => 0.01 * i) };
    const parts = splitTests(twice);
    // gone from sample 241 on; the twenty-first of nothing ends the test
    expect(parts.map(({ trail }) => trail.map(({ code, values }) => [code, values]))).toEqual([
      [['one-test-taken', { test: 1, of: 2, fromSample: 0, toSample: 261 }]],
      [['one-test-taken', { test: 2, of: 2, fromSample: 262, toSample: 561 }]],
    ]);
    expect(numbers(parts[1]!.record.force)).toEqual(numbers(twice.force.subarray(262)));
    expect(splitTests({ force: pull, travel })).toEqual([{ record: { force: pull, travel }, trail: [] }]);
  });
});

describe('repairs together', () => {
  const changed = (by: (i: number) => number) => pull.map((F, i) => F + by(i));
  const steps = (record: Parameters<typeof repairRecord>[0], repairs: Parameters<typeof repairRecord>[1]) =>
    repairRecord(record, repairs).trail.map(({ code }) => code);
  const spiked = { force: changed((i) => (i === 120 ? 3000 : 0)), travel };

  test('spikes alone by default', () => {
    expect(steps(spiked, undefined)).toEqual(['spikes-replaced']);
    expect(steps(spiked, { spikes: true })).toEqual(['spikes-replaced']);
    expect(steps(spiked, { spikes: false })).toEqual([]);
    expect(steps(spiked, { spikes: undefined })).toEqual(['spikes-replaced']);
  });

  test('two spikes close together are both replaced, and no slip', () => {
    // elastic to 15 kN, then hardening: 600 samples
    const n = 600;
    const strain = Array.from({ length: n }, (_, i) => (0.1 * i) / (n - 1));
    const yielded = 300 / 70_000;
    const sound = strain.map((e) => 50 * (e < yielded ? 70_000 * e : 300 * (1 + (e - yielded) / 0.01) ** 0.12));
    const rest = { travel: strain.map((e, i) => 60 * e + sound[i]! / 20_000), time: strain.map((_, i) => 0.1 * i) };
    for (const gap of [2, 3, 4])
      for (const [at, height] of [
        [12, 5000],
        [180, 300],
        [180, 5000],
      ] as const) {
        const record = { force: sound.map((F, i) => F + (i === at ? height : i === at + gap ? 1.02 * height : 0)), ...rest };
        expect(checkRecord(record).map(({ code }) => code)).toEqual(['spikes']);
        const mended = repairRecord(record);
        expect(mended.trail.map(({ code }) => code)).toEqual(['spikes-replaced']);
        // the line between neighbours is off by the bend alone; none where the curve is straight
        for (const i of [at, at + gap]) expect(Math.abs(mended.record.force[i]! - sound[i]!)).toBeLessThan(i < 20 ? 1e-8 : 1);
      }
    // on the steep line 300 N are within a sample's usual change
    const small = { force: sound.map((F, i) => F + (i === 12 || i === 14 ? 300 : 0)), ...rest };
    expect(checkRecord(small)).toEqual([]);
  });

  test('each by its name', () => {
    const late = { force: changed((i) => (i < 20 ? 350 : 0)), travel };
    expect([steps(late, {}), steps(late, { zero: false }), steps(late, { zero: true })]).toEqual([[], [], ['late-tare-carried-back']]);
    const drifting = { force: changed((i) => 30 + i), travel };
    expect([steps(drifting, {}), steps(drifting, { drift: false }), steps(drifting, { drift: true })]).toEqual([
      [],
      [],
      ['zero-drift-removed'],
    ]);
    const jumped = { force: pull, travel: travel.map((x, i) => (i >= 140 ? x - 2 : x)) };
    expect([steps(jumped, {}), steps(jumped, { jumps: true }), steps(jumped, { slips: true })]).toEqual([[], ['jump-joined'], []]);
    const slipped = { force: pull, travel: travel.map((x, i) => (i >= 140 ? x + 0.5 : x)) };
    expect(steps(slipped, { slips: true })).toEqual(['slip-taken-out']);
    expect([
      steps({ force: pull, travel }, { lag: 3 }),
      steps({ force: pull, travel }, { lag: false }),
      steps({ force: pull, travel }, { lag: true }),
    ]).toEqual([['channels-aligned'], [], []]);
    expect([steps({ force: pull, travel }, { repeats: true }), steps({ force: pull, travel }, { rate: 5 })]).toEqual([
      ['repeats-left-out'],
      ['clock-rebuilt'],
    ]);
    expect([steps({ force: pull, travel }, { reverse: ['travel'] }), steps({ force: pull, travel }, { reverse: [] })]).toEqual([
      ['sign-turned'],
      [],
    ]);
    const way = Array.from({ length: 160 }, (_, i) => (i < 60 ? i : i < 90 ? 118 - i : i - 60));
    const back = { force: way.map((x) => 100 * x), travel: way.map((x) => 0.01 * x) };
    expect([steps(back, {}), steps(back, { envelope: true })]).toEqual([[], ['excursions-left-out']]);
  });

  test('one after the other, in their order', () => {
    const all = { force: changed((i) => (i === 120 ? 3000 : 0)).map((F) => -F), travel: travel.map((x, i) => (i >= 140 ? x - 2 : x)) };
    const done = repairRecord(all, { repeats: true, jumps: true, rate: 10, reverse: ['force'] });
    expect(done.trail.map(({ code }) => code)).toEqual([
      'sign-turned',
      'clock-rebuilt',
      'spikes-replaced',
      'jump-joined',
      'repeats-left-out',
    ]);
    expect(done.record.force.reduce((a, b) => Math.max(a, b), 0)).toBe(20_000);
  });

  test('what is no repair', () => {
    const refused = (repairs: object) => thrown(() => repairRecord(spiked, repairs)).message;
    expect(refused({ all: true })).toBe(
      'repairRecord: repairs.all is not an option (known: reverse, rate, spikes, zero, drift, lag, jumps, slips, envelope, repeats), got "all"',
    );
    for (const name of ['spikes', 'zero', 'drift', 'jumps', 'slips', 'envelope', 'repeats'])
      expect(refused({ [name]: 1 })).toBe(`repairRecord: repairs.${name} must be true or false, got 1`);
    expect(refused({ reverse: ['time'] })).toMatch(/^repairRecord: repairs\.reverse\[0\] must be one of/);
    expect(refused({ rate: -1 })).toBe('repairRecord: repairs.rate must be above 0, got -1');
    expect(refused({ lag: 0.5 })).toBe('repairRecord: repairs.lag must be true, false or a whole number of samples, got 0.5');
    expect(refused({ lag: '1' })).toBe('repairRecord: repairs.lag must be a number, got "1"');
  });
});

describe('words of what is refused, by function', () => {
  const bad = { force: [1], travel: [1] };
  test.each([
    ['alignChannels', () => alignChannels(bad)],
    ['collapseRepeats', () => collapseRepeats(bad)],
    ['joinJumps', () => joinJumps(bad)],
    ['joinSlips', () => joinSlips(bad)],
    ['loadingEnvelope', () => loadingEnvelope(bad)],
    ['removeZeroDrift', () => removeZeroDrift(bad)],
    ['replaceSpikes', () => replaceSpikes(bad)],
    ['restoreZero', () => restoreZero(bad)],
    ['reverseSign', () => reverseSign(bad, [])],
    ['splitTests', () => splitTests(bad)],
    ['repairRecord', () => repairRecord(bad)],
  ])('%s', (name, call) => {
    expect(thrown(call).message).toBe(`${name}: record.force must have at least 2 samples, got 1`);
  });

  test('their options', () => {
    const record = { force: pull, travel };
    expect(thrown(() => alignChannels(record, { lag: 0.5 })).message).toBe(
      'alignChannels: options.lag must be a whole number of samples, got 0.5',
    );
    expect(thrown(() => alignChannels(record, { late: 1 } as object)).message).toBe(
      'alignChannels: options.late is not an option (known: lag), got "late"',
    );
    expect(thrown(() => replaceSpikes(record, { columns: ['time' as never] })).message).toBe(
      'replaceSpikes: options.columns[0] must be one of "force", "extension", "strain", "travel", got "time"',
    );
    expect(thrown(() => replaceSpikes(record, { column: 1 } as object)).message).toBe(
      'replaceSpikes: options.column is not an option (known: columns), got "column"',
    );
    expect(thrown(() => tare(record, {})).message).toBe('tare: options must give force or samples, got an object');
    expect(thrown(() => tare(record, { samples: [0.5, 1] })).message).toBe(
      'tare: options.samples must be numbers of samples, got [0.5, 1]',
    );
    expect(thrown(() => tare(record, { sample: 1 } as never)).message).toBe(
      'tare: options.sample is not an option (known: force, samples), got "sample"',
    );
  });
});
