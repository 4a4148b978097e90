/** Numbers within findings, limits exactly hit, and whole messages of refused arguments. */
import { describe, expect, test } from 'vitest';
import {
  checkPieceChart,
  comparePointer,
  cylinderFriction,
  fitCalibration,
  forceDrift,
  forceResolution,
  fullScaleError,
  idleStroke,
  leakDown,
  required,
  verifyDisplacement,
  verifyForce,
  voltageToPressure,
  type Finding,
  type ForceStep,
} from '../../src/index.js';
import { refusal, thrown } from '../support/thrown.js';

const valuesOf = (findings: readonly Finding[], code: string) => findings.filter((one) => one.code === code).map(({ values }) => values);
const codesOf = ({ findings }: { readonly findings: readonly Finding[] }) => findings.map(({ code }) => code);

describe('verifyForce', () => {
  const runs = (force: number, error = 0, falling?: readonly number[]): ForceStep => ({
    force,
    rising: [force + error, force + error, force + error],
    ...(falling ? { falling } : {}),
  });
  const good = [2000, 4000, 6000, 8000, 10_000].map((force) => runs(force));

  test('a sound verification of five steps has no doubt but the zero', () => {
    const found = verifyForce({ steps: good, range: 10_000, resolution: 2, zeros: [0, 1, -2] });
    expect(found.findings).toEqual([]);
    expect(found.forceClass).toBe(0.5);
    expect(found.fallingVerified).toBe(false);
    expect(found.steps[0]!.zeroError).toBe(-0.0002);
    expect(codesOf(verifyForce({ steps: good, range: 10_000, resolution: 2 }))).toEqual(['zero-not-verified']);
  });

  test('every number of every finding', () => {
    const steps = [runs(1000, 15), runs(2000, 0, [2040]), runs(4000, 0, [3900]), runs(6000), runs(8000)];
    const { findings, ranges, fallingVerified, ...rest } = verifyForce({ steps, range: 10_000, resolution: 2 });
    expect(valuesOf(findings, 'force-class-not-reached')).toEqual([{ count: 3, steps: 5, force: 1000, term: 'indication error' }]);
    expect(valuesOf(findings, 'rising-force-only')).toEqual([{ reversibility: 2.5 }]);
    expect(valuesOf(findings, 'falling-above-rising')).toEqual([{ force: 2000, excess: 40 }]);
    expect(valuesOf(findings, 'verification-steps-few')).toEqual([{ count: 4 }]);
    expect(valuesOf(findings, 'range-not-reached')).toEqual([{ force: 8000, share: 80 }]);
    expect(valuesOf(findings, 'class-range-starts-high')).toEqual([{ force: 6000, share: 60, term: 'reversibility' }]);
    expect(fallingVerified).toBe(false);
    expect(rest.forceClass).toBe(2);
    expect(ranges.map(({ forceClass, from, to }) => [forceClass, from, to])).toEqual([
      [0.5, 6000, 8000],
      [2, 1000, 8000],
    ]);
  });

  test('a step without a class leaves the whole without one; a stretch of two steps beats one step', () => {
    const { forceClass, ranges } = verifyForce({
      steps: [runs(1000), runs(2000, 200), runs(3000), runs(4000), runs(5000, 500), runs(6000)],
      range: 6000,
      resolution: 1,
    });
    expect(forceClass).toBeUndefined();
    expect(ranges).toEqual([{ forceClass: 0.5, from: 3000, to: 4000, stoppedBelowBy: 'indicationError' }]);
  });

  test('of stretches as wide the upper one counts, and falling forces are of every step or not verified', () => {
    const steps = [runs(1000), runs(2000), runs(3000, 300), runs(4000), runs(5000)];
    expect(verifyForce({ steps, range: 5000, resolution: 1 }).ranges[0]).toMatchObject({ from: 4000, to: 5000 });
    const all = steps.map((one) => ({ ...one, falling: [one.force] }));
    expect(verifyForce({ steps: all, range: 5000, resolution: 1 }).fallingVerified).toBe(true);
  });

  test('as many falling readings as runs are allowed; a fluctuation of one step is the step', () => {
    expect(verifyForce({ steps: [runs(1000, 0, [1000, 1000, 1000])], range: 1000, resolution: 4, fluctuation: 4 }).resolution).toBe(4);
    expect(verifyForce({ steps: [runs(1000)], range: 1000, resolution: 4, fluctuation: 5 }).resolution).toBe(6.5);
    expect(refusal(() => verifyForce({ steps: [runs(1000, 0, [0])], range: 1000, resolution: 4 }))).toBe(
      'not-positive verification.steps[0].falling[0]',
    );
    expect(refusal(() => verifyForce({ steps: [{ force: 1, rising: [1, 1, 0] }], range: 1000, resolution: 4 }))).toBe(
      'not-positive verification.steps[0].rising[2]',
    );
  });
});

describe('verifyDisplacement', () => {
  test('every number, and the class of the worst step', () => {
    const steps = [
      { reference: 1, rising: [1, 1.0005], falling: [1.001] },
      { reference: 2, rising: [2.1], falling: [2.15] },
      { reference: 4, rising: [4.02], falling: [4.03] },
    ];
    const found = verifyDisplacement({ steps, resolution: 0.001, gaugeLength: { nominal: 50, measured: 50.1 } });
    expect(found.gaugeLengthError).toBeCloseTo(0.002, 12);
    expect(found.steps[1]!.relativeError).toBeCloseTo(0.075, 12);
    expect(found.steps[2]!.relativeResolution).toBe(0.00025);
    expect(found.leastOffset).toBe(0.01);
    expect(found.displacementClass).toBeUndefined();
    expect(valuesOf(found.findings, 'displacement-class-not-reached')).toEqual([{ count: 1, steps: 3, travel: 2, term: 'error' }]);
    const [play] = valuesOf(found.findings, 'displacement-reversal');
    expect(play!['difference']).toBeCloseTo(0.05, 12);
    expect(play!['travel']).toBe(2);
  });

  test('class 1 is no doubt, and a play of less than twice the resolution is none', () => {
    const found = verifyDisplacement({ steps: [{ reference: 1, rising: [1.0075], falling: [1.0045] }], resolution: 0.002 });
    expect(found.displacementClass).toBe(1);
    expect(codesOf(found)).toEqual(['displacement-steps-few']);
    expect(refusal(() => verifyDisplacement({ steps: [{ reference: 1, rising: [1] }], resolution: 1, gaugeLength: 5 as never }))).toBe(
      'wrong-type verification.gaugeLength',
    );
  });
});

describe('forceDrift', () => {
  const asLeft = { date: '2025-03-01', force: [5000, 10_000, 20_000], error: [0.002, 0.004, 0.001] };
  const drifted = (error: readonly number[], results: readonly { identity: string; date: string; force: number }[] = []) =>
    forceDrift({ asLeft, asFound: { date: '2026-03-01', force: [5000, 10_000, 20_000], error }, results });

  test('errors between the checked forces lie on straight lines, at the ends on theirs', () => {
    const results = [2500, 5000, 7500, 10_000, 15_000, 20_000, 40_000].map((force) => ({
      identity: `${force}`,
      date: '2025-06-01',
      force,
    }));
    const { touched, findings, largest } = drifted([0.012, 0.016, 0.02], results);
    expect(touched.map(({ error }) => Number(error.toFixed(12)))).toEqual([0.012, 0.012, 0.014, 0.016, 0.018, 0.02, 0.02]);
    expect(largest).toBeCloseTo(0.019, 12);
    const [drift] = valuesOf(findings, 'force-drifted');
    expect(drift).toEqual({ error: 2, force: 20_000, before: 0.1, date: '2025-03-01', count: 7 });
    expect(valuesOf(findings, 'force-outside-certificate')).toEqual([
      { identity: '2500', force: 2500, low: 5000, high: 20_000 },
      { identity: '40000', force: 40_000, low: 5000, high: 20_000 },
    ]);
  });

  test('the worst is looked for either way; the days of both ends count', () => {
    const one = (date: string) => ({ identity: date, date, force: 10_000 });
    const found = drifted([0.011, -0.03, 0.02], [one('2025-02-28'), one('2025-03-01'), one('2026-03-01'), one('2026-03-02')]);
    expect(found.touched.map(({ identity }) => identity)).toEqual(['2025-03-01', '2026-03-01']);
    expect(valuesOf(found.findings, 'force-drifted')[0]).toMatchObject({ error: -3, force: 10_000, before: 0.4 });
    expect(found.largest).toBeCloseTo(-0.034, 12);
    expect(found.findings[0]!.severity).toBe('fault');
    expect(drifted([0.011, -0.03, 0.02]).findings[0]!.severity).toBe('caution');
  });

  test('found on the day of the certificate is allowed; what is no day is not', () => {
    expect(forceDrift({ asLeft, asFound: { ...asLeft } }).largest).toBe(0);
    const wrong = (date: unknown) => refusal(() => forceDrift({ asLeft: { ...asLeft, date: date as string }, asFound: asLeft }));
    for (const date of ['x2025-03-01', '2025-03-011', '2025-13-01', '2025-02-30', 20250301])
      expect(wrong(date)).toBe('wrong-type input.asLeft.date');
    expect(thrown(() => forceDrift({ asLeft: { ...asLeft, date: undefined as never }, asFound: asLeft })).message).toBe(
      'forceDrift: input.asLeft.date must be a day of the form 2026-03-31, got undefined',
    );
    expect(refusal(() => forceDrift({ asLeft: { ...asLeft, force: [0, 1, 2] }, asFound: asLeft }))).toBe(
      'not-positive input.asLeft.force[0]',
    );
  });
});

describe('checkPieceChart', () => {
  const level = [10, 10.2, 9.8, 10.1, 9.9, 10, 10.2, 9.8, 10.1, 9.9, 10, 10.2, 9.8, 10.1, 9.9, 10, 10.2, 9.8, 10.1, 9.9];

  test('numbers and ranges of a value outside, and of its jumps', () => {
    const { findings, lower, upper, rangeLimit, outside } = checkPieceChart([...level, 12, 10], { baseline: 20 });
    expect(outside).toEqual([20]);
    expect(findings[0]).toMatchObject({ code: 'check-out-of-limits', values: { index: 21, value: 12, lower, upper }, range: [20, 20] });
    const jumps = findings.filter(({ code }) => code === 'check-jumped');
    expect(jumps.map(({ range }) => range)).toEqual([
      [19, 20],
      [20, 21],
    ]);
    expect(jumps[0]!.values).toMatchObject({ before: 20, index: 21, limit: rangeLimit });
    expect(jumps[0]!.values['range']).toBeCloseTo(2.1, 12);
    const low = checkPieceChart([...level, 8], { baseline: 20 });
    expect(low.outside).toEqual([20]);
  });

  test('runs on either side and trends either way, by count, last piece and range', () => {
    const above = checkPieceChart([...level, ...Array<number>(7).fill(10.1)], { baseline: 20 }).findings;
    expect(above).toMatchObject([{ code: 'check-on-one-side', values: { count: 7, index: 27, side: 'above' }, range: [20, 26] }]);
    const below = checkPieceChart([...level, 10, ...Array<number>(7).fill(9.95)], { baseline: 20 }).findings;
    expect(below.filter(({ code }) => code === 'check-on-one-side')).toMatchObject([
      { values: { count: 7, index: 28, side: 'below' }, range: [21, 27] },
    ]);
    const trend = (sign: number) =>
      checkPieceChart([...level, ...Array.from({ length: 7 }, (_, i) => 10 + sign * (-0.15 + 0.05 * i))], { baseline: 20 }).findings;
    // from the ninth tenth up: the first of the seven lies below the last of the baseline
    expect(trend(1).filter(({ code }) => code === 'check-trend')).toMatchObject([
      { values: { count: 7, index: 27, direction: 'up' }, range: [20, 26] },
    ]);
    expect(trend(-1).filter(({ code }) => code === 'check-trend')).toMatchObject([{ values: { direction: 'down', index: 27 } }]);
  });

  test('few pieces', () => {
    expect(valuesOf(checkPieceChart([1, 2, 1]).findings, 'check-few')).toEqual([{ count: 3 }]);
    expect(thrown(() => checkPieceChart([1, 2, 3], { baseline: 1 })).message).toBe(
      'checkPieceChart: options.baseline must be a whole number from 2 to 3, got 1',
    );
    expect(checkPieceChart([1, 2, 3], { baseline: 2 }).centre).toBe(1.5);
  });
});

describe('oil', () => {
  test('idle stroke: the middle nine tenths tell how even it is, whatever their order', () => {
    const pressure = Array.from({ length: 40 }, (_, i) => 1 + (i % 2 === 0 ? 0.01 : -0.01) * (i % 7));
    pressure[3] = 50;
    pressure[9] = 0.001;
    const area = Math.PI * 25;
    const sound = idleStroke({ pressure, bore: 10, before: area });
    expect(sound.force / area).toBeCloseTo(1, 1);
    expect(sound.findings).toEqual([]);
    const changed = idleStroke({ pressure: [2, 2, 2], bore: 10, before: area });
    expect(valuesOf(changed.findings, 'idle-friction-changed')).toEqual([{ force: 2 * area, before: area, share: 100 }]);
    const uneven = idleStroke({ pressure: [1, 2, 3], bore: 10 });
    expect(valuesOf(uneven.findings, 'idle-friction-uneven')).toEqual([{ spread: 2 * area, force: 2 * area }]);
  });

  test('leak down: shares and rates a minute', () => {
    const time = Array.from({ length: 61 }, (_, i) => i);
    const even = required(leakDown({ time, pressure: time.map((t) => 10 - 0.01 * t), bore: 10 }));
    expect(even.sharePerMinute).toBeCloseTo(0.6 / 9.7, 9);
    expect(even.forceRate).toBeCloseTo(0.01 * Math.PI * 25, 9);
    expect(even.findings).toHaveLength(1);
    expect(Number(valuesOf(even.findings, 'leak-down-fast')[0]!['share'])).toBeCloseTo(60 / 9.7, 6);
    const settling = required(leakDown({ time, pressure: time.map((t) => 10 - 0.02 * Math.min(t, 30) - 0.001 * t), bore: 10 }));
    const [rates] = valuesOf(settling.findings, 'leak-down-settles');
    expect(Number(rates!['early'])).toBeCloseTo(60 * 0.021, 6);
    expect(Number(rates!['late'])).toBeCloseTo(60 * 0.001, 6);
    // four samples are enough, and the first of them may lie at the start
    expect(leakDown({ time, pressure: time.map(() => 10), bore: 10 }, { from: 57 }).ok).toBe(true);
    expect(leakDown({ time, pressure: time.map(() => 10), bore: 10 }, { from: 58 }).ok).toBe(false);
  });

  test('standard error of the force rate is the area times that of the pressure', () => {
    const time = [0, 1, 2, 3, 4];
    const pressure = [10, 10.1, 9.9, 10.1, 10];
    const small = required(leakDown({ time, pressure, bore: 10 }));
    const large = required(leakDown({ time, pressure, bore: 20 }));
    expect(large.standardError / small.standardError).toBeCloseTo(4, 9);
    // by hand: the line is level at 10.02, the squares about it sum to 0.028, those of the times to 10
    expect(small.forceRate).toBeCloseTo(0, 12);
    expect(small.standardError).toBeCloseTo(25 * Math.PI * Math.sqrt(0.028 / 3 / 10), 12);
  });

  test('a first half that is faster by no more than the scatter of both is no settling', () => {
    const time = Array.from({ length: 21 }, (_, i) => i);
    // 2.1 times as fast at first, in steps of 0.04 MPa up and down
    const pressure = time.map((t) => 10 - 0.0021 * Math.min(t, 10) - 0.001 * Math.max(t - 10, 0) + (t % 2 === 0 ? 0.02 : -0.02));
    expect(codesOf(required(leakDown({ time, pressure, bore: 10 })))).not.toContain('leak-down-settles');
    const quiet = time.map((t) => 10 - 0.0021 * Math.min(t, 10) - 0.001 * Math.max(t - 10, 0));
    expect(codesOf(required(leakDown({ time, pressure: quiet, bore: 10 })))).toContain('leak-down-settles');
  });
});

describe('readings', () => {
  test('steps of a converter', () => {
    expect(forceResolution({ fullScale: 255, bits: 8 })).toEqual({ step: 1, leastForceClass1: 200 });
    expect(forceResolution({ fullScale: 1, bits: 1 }).step).toBe(1);
    expect(forceResolution({ fullScale: 2 ** 32 - 1, bits: 32 }).step).toBe(1);
    for (const bits of [0, 33, 2.5])
      expect(thrown(() => forceResolution({ fullScale: 1, bits })).message).toBe(
        `forceResolution: bits must be a whole number from 1 to 32, got ${bits}`,
      );
  });

  test('accuracy of full scale as force', () => {
    const { force, onePercentFrom, ofReading } = fullScaleError({ fullScale: 40, accuracy: 0.005, bore: 20, forces: [1000] });
    expect(force).toBeCloseTo(0.2 * Math.PI * 100, 9);
    expect(onePercentFrom).toBeCloseTo(100 * force, 9);
    expect(ofReading![0]).toBeCloseTo(force / 1000, 12);
  });

  test('a voltage range that is upside down', () => {
    expect(thrown(() => voltageToPressure([1], { fullScale: 1, low: 5, high: 4 })).message).toBe(
      'voltageToPressure: high must be above low (5), got 4',
    );
    expect(refusal(() => voltageToPressure([1], { fullScale: 0 }))).toBe('not-positive fullScale');
    expect(refusal(() => voltageToPressure([1], { fullScale: 1, high: NaN }))).toBe('not-finite high');
    expect(refusal(() => voltageToPressure([1], { fullScale: 1, other: 1 } as never))).toBe('unknown-option output.other');
  });

  test('the pointer: each cause needs all of its signs', () => {
    const base = { pointer: 20_600, recorded: 20_000 };
    const causeOf = (more: object) => comparePointer({ ...base, ...more }).cause;
    expect(causeOf({})).toBe('pushed-past');
    expect(causeOf({ before: 20_600 })).toBe('not-reset');
    expect(causeOf({ before: 25_000 })).toBe('pushed-past');
    expect(causeOf({ forceRate: 6000 })).toBe('pushed-past');
    expect(causeOf({ frequency: 10 })).toBe('pushed-past');
    expect(causeOf({ forceRate: 6000, frequency: 10 })).toBe('peak-between-samples');
    expect(causeOf({ forceRate: 5999, frequency: 10 })).toBe('pushed-past');
    // half a division of 1200 is the difference; a quarter is not
    expect(causeOf({ division: 1200 })).toBe('agree');
    expect(causeOf({ division: 600 })).toBe('pushed-past');
    expect(comparePointer({ pointer: 20_000, recorded: 20_600, spike: 600 }).cause).toBe('spike-in-record');
    expect(comparePointer({ pointer: 20_000, recorded: 20_600, spike: 5000 }).cause).toBe('stuck');
    expect(comparePointer({ pointer: 20_000, recorded: 20_600 }).cause).toBe('stuck');
    // one per cent of the record, to the last newton; a pointer that stood no higher than the record was brought back
    expect(comparePointer({ pointer: 20_200, recorded: 20_000 }).cause).toBe('agree');
    expect(comparePointer({ pointer: 20_201, recorded: 20_000 }).cause).toBe('pushed-past');
    expect(comparePointer({ pointer: 20_201, recorded: 20_000, before: 20_001 }).cause).toBe('not-reset');
    expect(comparePointer({ pointer: 20_199, recorded: 19_999, before: 19_999 }).cause).toBe('pushed-past');
    expect(comparePointer({ pointer: 20_200, recorded: 20_000 }).cause).toBe('agree');
  });

  test('friction below zero counts its steps alone', () => {
    const runs = { force: [1000, 2000, 3000], risingPressure: [1.1, 2.1, 3.1], fallingPressure: [1.1, 2.2, 3] };
    const { findings, friction } = cylinderFriction(runs, { bore: 40 });
    expect(valuesOf(findings, 'friction-negative')).toEqual([{ count: 1, friction: friction[1] }]);
    expect(friction[1]).toBeCloseTo(-0.05 * Math.PI * 400, 9);
    expect(cylinderFriction({ ...runs, fallingPressure: [1.1, 2, 3] }, { bore: 40 }).findings).toEqual([]);
  });

  // Fisher's orthogonal polynomials of seven equal steps; F of the 2.5 % tables (two tests share 5 %): 12.22 at 1 and 4, 16.04 at 2 and 3 degrees of freedom
  test.each([
    ['square', 1, 4, 12.22, 2],
    ['cubic', 2, 3, 16.04, 3],
  ])('a %s term is taken from the F of the tables on, not below', (term, more, free, critical, degree) => {
    const shape = { square: [5, 0, -3, -4, -3, 0, 5], cubic: [-1, 1, 1, 0, -1, -1, 1] }[term]!;
    const fourth = [3, -7, 1, 6, 1, -7, 3];
    const squares = (of: readonly number[]) => of.reduce((sum, one) => sum + one * one, 0);
    const degreeAt = (F: number) => {
      const size = Math.sqrt((F * more * squares(fourth)) / free / squares(shape));
      const reference = shape.map((one, i) => 5000 + 1000 * i + size * one + fourth[i]!);
      return required(fitCalibration({ indicated: shape.map((_, i) => i), reference })).degree;
    };
    expect(degreeAt(critical + 0.02)).toBe(degree);
    expect(degreeAt(critical - 0.02)).toBe(1);
  });

  test('what rounding leaves of a straight line is no further term', () => {
    for (let k = 1; k <= 40; k += 1) {
      const indicated = Array.from({ length: 9 }, (_, i) => (0.1 * i * k) / 3);
      expect(required(fitCalibration({ indicated, reference: indicated.map((x) => 7.3 * k + 1234.56 * x) })).degree).toBe(1);
    }
  });

  test('a calibration asked for by its degree is told from one that the F-test chose', () => {
    const indicated = [0, 1, 2, 3, 4, 5];
    const reference = indicated.map((x) => 10 + 100 * x + (x % 2));
    expect(required(fitCalibration({ indicated, reference }, { degree: 2 })).degreeBy).not.toBe('F-test');
    expect(required(fitCalibration({ indicated, reference })).degree).toBe(1);
    expect(refusal(() => fitCalibration({ indicated: [1, 2], reference: [1, 2] }))).toBe('too-few pairs.indicated');
  });
});
