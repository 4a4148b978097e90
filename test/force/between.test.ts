import { describe, expect, test } from 'vitest';
import {
  calibrationUncertainty,
  checkPieceChart,
  comparePointer,
  fitCalibration,
  forceDrift,
  fullScaleError,
  idleStroke,
  leakDown,
  type PointerReading,
} from '../../src/force/index.js';
import { required } from '../../src/base/index.js';
import { refusal } from '../support/thrown.js';

const codes = ({ findings }: { readonly findings: readonly { readonly code: string }[] }): string[] => findings.map(({ code }) => code);

describe('comparePointer', () => {
  const of = (reading: Partial<PointerReading>) => comparePointer({ pointer: 20_000, recorded: 20_000, ...reading });

  test.each<[string, Partial<PointerReading>, string[]]>([
    ['agree', {}, []],
    ['agree', { pointer: 20_200 }, []],
    ['agree', { pointer: 20_240, division: 500 }, []],
    ['pushed-past', { pointer: 20_300 }, ['pointer-above-record']],
    ['peak-between-samples', { pointer: 20_300, forceRate: 4000, frequency: 10 }, ['pointer-above-record']],
    ['pushed-past', { pointer: 20_300, forceRate: 2000, frequency: 10 }, ['pointer-above-record']],
    ['not-reset', { pointer: 22_000, before: 22_000 }, ['pointer-above-record']],
    ['stuck', { pointer: 19_700 }, ['pointer-below-record']],
    ['spike-in-record', { pointer: 19_700, spike: 290 }, ['pointer-below-record']],
  ])('%s: %o', (cause, reading, expected) => {
    const found = of(reading);
    expect(found.cause).toBe(cause);
    expect(codes(found)).toEqual(expected);
  });

  test('above 3 % it is a fault, and says so with the numbers', () => {
    const [found] = of({ pointer: 21_000 }).findings;
    expect(found!.severity).toBe('fault');
    expect(found!.message).toMatch(/^The pointer shows 21000 N, the record 20000 N: 5 % more\. The pointer was probably pushed past/);
    expect(of({ pointer: 19_400 }).findings[0]!.severity).toBe('caution');
  });

  test.each<[string, object]>([
    ['not-positive reading.pointer', { pointer: 0, recorded: 1 }],
    ['missing reading.recorded', { pointer: 1 }],
    ['out-of-range reading.division', { pointer: 1, recorded: 1, division: -1 }],
    ['out-of-range reading.spike', { pointer: 1, recorded: 1, spike: -1 }],
    ['not-finite reading.before', { pointer: 1, recorded: 1, before: NaN }],
    ['out-of-range reading.forceRate', { pointer: 1, recorded: 1, forceRate: -1 }],
    ['not-positive reading.frequency', { pointer: 1, recorded: 1, frequency: 0 }],
    ['unknown-option reading.dial', { pointer: 1, recorded: 1, dial: 0 }],
  ])('refuses: %s', (expected, reading) => {
    expect(refusal(() => comparePointer(reading as never))).toBe(expected);
  });
});

describe('idleStroke', () => {
  test('the median pressure counts, a change and an uneven stroke are findings', () => {
    const even = idleStroke({ pressure: [0.05, 0.05, 0.05, 0.05], bore: 40, before: 60 });
    expect(even.force).toBeCloseTo(0.05 * Math.PI * 400, 9);
    expect(even.spread).toBe(0);
    expect(even.findings).toEqual([]);
    expect(codes(idleStroke({ pressure: [0.05, 0.05, 0.05], bore: 40, before: 40 }))).toEqual(['idle-friction-changed']);
    expect(codes(idleStroke({ pressure: [0.03, 0.05, 0.07], bore: 40 }))).toEqual(['idle-friction-uneven']);
  });

  test.each<[string, object]>([
    ['too-few pressure', { pressure: [1, 2], bore: 40 }],
    ['out-of-range rod', { pressure: [1, 2, 3], bore: 40, rod: 40 }],
    ['not-positive before', { pressure: [1, 2, 3], bore: 40, before: 0 }],
    ['unknown-option stroke.travel', { pressure: [1, 2, 3], bore: 40, travel: [1] }],
  ])('refuses: %s', (expected, stroke) => {
    expect(refusal(() => idleStroke(stroke as never))).toBe(expected);
  });
});

describe('leakDown', () => {
  const time = Array.from({ length: 121 }, (_, i) => i);

  // an exponential leak of 2 % a minute is a line of that slope at its middle, to second order
  test('a leak of 0.5 and of 2 % a minute', () => {
    const leak = (share: number) => required(leakDown({ time, pressure: time.map((t) => 10 * Math.exp((-share * t) / 60)), bore: 40 }));
    expect(leak(0.005).sharePerMinute).toBeCloseTo(0.005, 7);
    expect(codes(leak(0.005))).toEqual([]);
    expect(codes(leak(0.02))).toEqual(['leak-down-fast']);
    expect(leak(0.02).forceRate / leak(0.02).pressureRate).toBeCloseTo(Math.PI * 400, 9);
  });

  test('what settles is told from a leak, and can be left out', () => {
    const pressure = time.map((t) => 10 + 0.1 * Math.exp(-t / 15) - 0.0002 * t);
    const all = required(leakDown({ time, pressure, bore: 40 }));
    expect(codes(all)).toContain('leak-down-settles');
    const still = time.map((t) => 10 + 0.1 * Math.max(0, 1 - t / 50) + 1e-5 * t);
    expect(codes(required(leakDown({ time, pressure: still, bore: 40 })))).toContain('leak-down-settles');
    const late = required(leakDown({ time, pressure, bore: 40 }, { from: 90 }));
    expect(late.pressureRate).toBeCloseTo(0.0002, 4);
    expect(leakDown({ time, pressure, bore: 40 }, { from: 119 })).toMatchObject({ ok: false, reason: 'too-short' });
    expect(leakDown({ time, pressure, bore: 40 }, { from: 500 })).toMatchObject({ ok: false, reason: 'too-short' });
  });

  test.each<[string, object, object]>([
    ['too-few record.time', { time: [1, 2, 3], pressure: [1, 1, 1], bore: 40 }, {}],
    ['not-increasing record.time[2]', { time: [1, 2, 2, 3], pressure: [1, 1, 1, 1], bore: 40 }, {}],
    ['unequal-lengths record.pressure', { time: [1, 2, 3, 4], pressure: [1], bore: 40 }, {}],
    ['not-positive record.pressure[0]', { time: [1, 2, 3, 4], pressure: [0, 1, 1, 1], bore: 40 }, {}],
    ['out-of-range options.from', { time: [1, 2, 3, 4], pressure: [1, 1, 1, 1], bore: 40 }, { from: -1 }],
    ['not-positive options.allowed', { time: [1, 2, 3, 4], pressure: [1, 1, 1, 1], bore: 40 }, { allowed: 0 }],
    ['unknown-option options.to', { time: [1, 2, 3, 4], pressure: [1, 1, 1, 1], bore: 40 }, { to: 0 }],
  ])('refuses: %s', (expected, record, options) => {
    expect(refusal(() => leakDown(record as never, options as never))).toBe(expected);
  });
});

describe('checkPieceChart', () => {
  const steady = [10, 12, 11, 9, 10, 11, 12, 10, 9, 11, 10, 12, 11, 9, 10, 11, 12, 10, 9, 11];

  test('a steady frame has no findings, equal readings neither', () => {
    expect(checkPieceChart(steady).findings).toEqual([]);
    expect(codes(checkPieceChart(Array(20).fill(0.1) as number[]))).toEqual([]);
  });

  test('a check beyond the limits, a jump', () => {
    const found = checkPieceChart([...steady, 20], { baseline: 20 });
    expect(found.outside).toEqual([20]);
    expect(codes(found)).toEqual(['check-out-of-limits', 'check-jumped']);
    expect(found.findings[0]!.range).toEqual([20, 20]);
  });

  test('seven on one side, and not six', () => {
    const above = (count: number) => [...steady, ...Array.from({ length: count }, (_, i) => 11.4 + 0.2 * (i % 2))];
    const { centre } = checkPieceChart(steady);
    expect(centre).toBe(10.5);
    // the last two steady checks are below and above
    expect(codes(checkPieceChart(above(6), { baseline: 20 }))).toEqual(['check-on-one-side']);
    expect(codes(checkPieceChart(above(5), { baseline: 20 }))).toEqual([]);
    const below = [
      ...steady,
      ...above(7)
        .slice(20)
        .map((one) => 21 - one),
    ];
    expect(checkPieceChart(below, { baseline: 20 }).findings[0]!.message).toBe('7 checks in a row, up to number 27, lie below the centre.');
  });

  test('seven that rise, and not six', () => {
    const rising = (count: number) => [...steady, ...Array.from({ length: count }, (_, i) => 9 + 0.3 * i)];
    expect(codes(checkPieceChart(rising(7), { baseline: 20 }))).toEqual(['check-trend']);
    expect(codes(checkPieceChart(rising(6), { baseline: 20 }))).toEqual([]);
    const falling = rising(7).map((one) => 21 - one);
    expect(checkPieceChart(falling, { baseline: 20 }).findings[0]!.message).toBe('7 checks in a row, up to number 27, go down.');
  });

  test('few checks are a note', () => {
    expect(codes(checkPieceChart([10, 12, 11]))).toEqual(['check-few']);
  });

  test.each<[string, unknown, object]>([
    ['too-few values', [1], {}],
    ['not-finite values[1]', [1, NaN], {}],
    ['out-of-range options.baseline', [1, 2, 3], { baseline: 4 }],
    ['out-of-range options.baseline', [1, 2, 3], { baseline: 1.5 }],
    ['out-of-range options.runLength', [1, 2, 3], { runLength: 1 }],
    ['unknown-option options.rules', [1, 2, 3], { rules: 1 }],
  ])('refuses: %s', (expected, values, options) => {
    expect(refusal(() => checkPieceChart(values as never, options))).toBe(expected);
  });
});

describe('forceDrift', () => {
  const asLeft = { date: '2025-03-01', force: [2000, 10_000, 20_000], error: [0.001, 0.002, 0.001] };
  const asFound = { date: '2026-03-01', force: [2000, 10_000, 20_000], error: [-0.002, 0.006, 0.016] };
  const result = (identity: string, date: string, force: number) => ({ identity, date, force });

  test('drift at each force; results since the certificate beyond what is allowed are touched', () => {
    const results = [
      result('before', '2025-02-28', 20_000),
      result('on the day', '2025-03-01', 20_000),
      result('low', '2025-10-10', 5000),
      result('on the limit', '2025-10-10', 14_000),
      result('above it', '2025-10-10', 15_000),
      result('after', '2026-03-02', 20_000),
    ];
    const found = forceDrift({ asLeft, asFound, results });
    [-0.003, 0.004, 0.015].forEach((one, k) => {
      expect(found.drift[k]).toBeCloseTo(one, 12);
    });
    expect(found.largest).toBeCloseTo(0.015, 12);
    // at 14 kN the error as found is 0.6 % + 0.4 of 1 % = 1 %: on the limit
    expect(found.touched.map(({ identity }) => identity)).toEqual(['on the day', 'above it']);
    expect(found.touched[1]!.error).toBeCloseTo(0.011, 12);
    expect(found.touched[1]!.corrected).toBeCloseTo(15_000 / 1.011, 9);
    expect(codes(found)).toEqual(['force-drifted']);
    expect(found.findings[0]!.severity).toBe('fault');
  });

  test('without a touched result it is a caution; within what is allowed nothing', () => {
    expect(forceDrift({ asLeft, asFound }).findings[0]!.severity).toBe('caution');
    expect(forceDrift({ asLeft, asFound, allowed: 0.02 }).findings).toEqual([]);
  });

  test('forces outside the checked ones are findings, judged by the nearest', () => {
    const found = forceDrift({ asLeft, asFound, results: [result('high', '2025-12-01', 24_000), result('low', '2025-12-01', 500)] });
    expect(codes(found)).toEqual(['force-drifted', 'force-outside-certificate', 'force-outside-certificate']);
    expect(found.touched.map(({ error }) => error)).toEqual([0.016]);
  });

  test.each<[string, object]>([
    ['missing input.asLeft', { asFound }],
    ['wrong-type input.asLeft.date', { asLeft: { ...asLeft, date: '1.3.2025' }, asFound }],
    ['wrong-type input.asLeft.date', { asLeft: { ...asLeft, date: '2025-13-01' }, asFound }],
    ['out-of-range input.asFound.date', { asLeft, asFound: { ...asFound, date: '2024-03-01' } }],
    ['not-increasing input.asFound.force[1]', { asLeft, asFound: { ...asFound, force: [2, 2, 3] } }],
    ['unequal-lengths input.asFound.error', { asLeft, asFound: { ...asFound, error: [0] } }],
    ['wrong-type input.results[0].identity', { asLeft, asFound, results: [{ identity: 4, date: '2025-12-01', force: 1 }] }],
    ['not-positive input.results[0].force', { asLeft, asFound, results: [{ identity: '4', date: '2025-12-01', force: 0 }] }],
    ['wrong-type input.results', { asLeft, asFound, results: {} }],
    ['not-positive input.allowed', { asLeft, asFound, allowed: 0 }],
    ['unknown-option input.limit', { asLeft, asFound, limit: 0 }],
  ])('refuses: %s', (expected, input) => {
    expect(refusal(() => forceDrift(input as never))).toBe(expected);
  });
});

test('the error of a transmitter at yield and maximum: the same in N, more of the smaller reading', () => {
  const { force, ofReading } = fullScaleError({ fullScale: 25, accuracy: 0.005, bore: 40, forces: [5000, 20_000] });
  expect([...ofReading!]).toEqual([force / 5000, force / 20_000]);
  expect(refusal(() => fullScaleError({ fullScale: 25, accuracy: 0.005, bore: 40, forces: [0] }))).toBe('not-positive forces[0]');
});

test('reference and resolution come on top of the scatter of a calibration', () => {
  const indicated = [0, 1, 2, 3];
  const line = required(fitCalibration({ indicated, reference: [1, 1201, 2399, 3601] }, { degree: 1 }));
  const scatter = calibrationUncertainty(line, 2);
  const slope = line.coefficients[1]!;
  const force = line.coefficients[0]! + 2 * slope;
  const all = calibrationUncertainty(line, 2, { reference: 0.001, resolution: 0.01 });
  // a rectangular distribution one step wide has a variance of a twelfth of its square
  expect(all ** 2).toBeCloseTo(scatter ** 2 + (0.001 * force) ** 2 + (slope * 0.01) ** 2 / 12, 6);
  expect(refusal(() => calibrationUncertainty(line, 2, { reference: -1 }))).toBe('out-of-range options.reference');
  expect(refusal(() => calibrationUncertainty(line, 2, { step: 1 } as never))).toBe('unknown-option options.step');
});
