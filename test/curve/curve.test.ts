import { describe, expect, test } from 'vitest';
import {
  elasticExtension,
  energyDensity,
  fitModulus,
  fracture,
  frameCompliance,
  loadingRates,
  maximumStress,
  offsetLeverage,
  proofStrength,
  proportionalLimit,
  removeCompliance,
  required,
  round,
  slopeScatter,
  stressStrain,
  totalExtensionStrength,
  yieldPoints,
} from '../../src/index.js';
import { seeded } from '../support/random.js';
import { refusal as thrown } from '../support/thrown.js';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const ramp = { strain: [0, 0.001, 0.002, 0.003], stress: [0, 70, 140, 210] };
const smooth = (n: number, noise = 0, seed = 1) => {
  const random = seeded(seed);
  const stress = Float64Array.from({ length: n }, (_, i) => (280 * i) / (n - 1));
  return { strain: stress.map((R) => R / 70_000 + 0.002 * (R / 250) ** 20), stress: stress.map((R) => R + noise * random.normal()) };
};

describe('stressStrain', () => {
  test('an extensometer goes before travel, a strain column is used as it is', () => {
    expect(stressStrain({ force: [0, 1], extension: [0, 1], travel: [0, 9] }, piece)).toMatchObject({
      basis: 'extensometer',
      strainLength: 40,
    });
    expect(stressStrain({ force: [0, 1], extension: [0, 1] }, { ...piece, extensometerLength: 25 }).strain[1]).toBe(0.04);
    expect(stressStrain({ force: [0, 1], strain: [0, 0.5] }, piece).strain[1]).toBe(0.5);
    expect(stressStrain({ force: [0, 1], travel: [0, 4.8] }, piece)).toMatchObject({ basis: 'travel', strainLength: 48 });
  });

  test('taken off: travel carries on by its increments, or the curve ends there', () => {
    const force = [0, 1, 2, 3, 4];
    const extension = [0, 0.4, 0.8, NaN, NaN];
    const carried = stressStrain({ force, extension, travel: [1, 2, 3, 3.48, 3.96] }, piece);
    expect(carried.basis).toBe('extensometer-then-travel');
    expect(carried.extensometerEnd).toBe(3);
    expect([...carried.strain]).toEqual([0, 0.01, 0.02, expect.closeTo(0.03, 12), expect.closeTo(0.04, 12)]);
    expect(stressStrain({ force, extension }, piece).strain).toHaveLength(3);
  });

  test.each([
    ['missing record', () => stressStrain({ force: [0, 1] }, piece)],
    ['not-finite record.force[1]', () => stressStrain({ force: [0, NaN], travel: [0, 1] }, piece)],
    ['not-finite record.extension[1]', () => stressStrain({ force: [0, 1, 2], extension: [0, NaN, 2] }, piece)],
    ['unequal-lengths record.travel', () => stressStrain({ force: [0, 1], travel: [0] }, piece)],
    ['too-few record.force', () => stressStrain({ force: [1], travel: [0] }, piece)],
    ['not-positive testPiece.gaugeLength', () => stressStrain({ force: [0, 1], travel: [0, 1] }, { ...piece, gaugeLength: 0 })],
    ['out-of-range testPiece.effectiveLength', () => stressStrain({ force: [0, 1], travel: [0, 1] }, { ...piece, effectiveLength: 40 })],
  ])('%s', (expected, call) => {
    expect(thrown(call)).toBe(expected);
  });
});

describe('fitModulus', () => {
  test('windows given by stress, strain or samples', () => {
    for (const window of [
      { by: 'stress', from: 10, to: 200 },
      { by: 'strain', from: 0, to: 0.002 },
      { by: 'samples', first: 0, last: 3 },
    ] as const)
      expect(required(fitModulus(ramp, { window })).slope).toBeCloseTo(70_000, 6);
  });

  test('least relative error finds a straight part to the last digit', () => {
    const strain = Float64Array.from({ length: 300 }, (_, i) => i * 2e-5);
    const curve = { strain, stress: strain.map((e) => Math.min(70_000 * e, 150)) };
    expect(required(fitModulus(curve, { window: { by: 'relative-error' } })).slope).toBeCloseTo(70_000, 5);
  });

  test('a curve without linear part shows a fall of slope well above its error', () => {
    const stress = Float64Array.from({ length: 600 }, (_, i) => i / 6);
    const fit = required(fitModulus({ strain: stress.map((R) => R / 115_000 + 0.002 * (R / 55) ** 3), stress }));
    expect(fit.slopeFall!.value).toBeGreaterThan(0.1);
    expect(required(fitModulus(smooth(2000, 0.3))).slopeFall!.value).toBeLessThan(0.05);
  });

  test('too few samples between the bounds: which bound was eased is said', () => {
    expect(required(fitModulus(smooth(8))).eased).not.toEqual([]);
    expect(fitModulus({ strain: [0, 1, 2], stress: [3, 2, 1] })).toMatchObject({ ok: false, reason: 'too-few-points' });
    expect(fitModulus(ramp, { window: { by: 'samples', first: 2, last: 2.5 } })).toMatchObject({ ok: false });
    expect(fitModulus({ strain: [0, 1, 2], stress: [3, 2, 1] }, { window: { by: 'samples', first: 0, last: 2 } })).toMatchObject({
      ok: false,
      reason: 'no-rise',
    });
  });

  test('the density of samples does not matter, and typed arrays equal arrays', () => {
    const [coarse, fine] = [required(fitModulus(smooth(500))), required(fitModulus(smooth(50_000)))];
    expect(Math.abs(coarse.slope / fine.slope - 1)).toBeLessThan(1e-4);
    const { strain, stress } = smooth(400);
    expect(fitModulus({ strain: [...strain], stress: [...stress] })).toEqual(fitModulus({ strain, stress }));
  });

  test.each([
    ['unknown-option options.windows', () => fitModulus(ramp, { windows: 1 } as object)],
    ['out-of-range options.window.by', () => fitModulus(ramp, { window: { by: 'eye' } as never })],
    ['unknown-option options.window.zz', () => fitModulus(ramp, { window: { by: 'lower-bound', zz: 1 } as never })],
    ['out-of-range options.window.z', () => fitModulus(ramp, { window: { by: 'lower-bound', z: -1 } })],
    ['out-of-range options.window.startShare', () => fitModulus(ramp, { window: { by: 'lower-bound', startShare: 1 } })],
    ['out-of-range options.window.spanShare', () => fitModulus(ramp, { window: { by: 'relative-error', spanShare: 2 } })],
    ['out-of-range options.window.to', () => fitModulus(ramp, { window: { by: 'stress', from: 5, to: 5 } })],
    ['out-of-range options.window.last', () => fitModulus(ramp, { window: { by: 'samples', first: 5, last: 1 } })],
    ['not-finite curve.stress[2]', () => fitModulus({ strain: [0, 1, 2], stress: [0, 1, NaN] })],
    ['unequal-lengths curve.stress', () => fitModulus({ strain: [0, 1, 2], stress: [0, 1] })],
    ['too-few curve.strain', () => fitModulus({ strain: [0], stress: [0] })],
  ])('%s', (expected, call) => {
    expect(thrown(call)).toBe(expected);
  });
});

describe('proofStrength', () => {
  test('noise does not move it by more than it must', () => {
    const errors = Array.from({ length: 60 }, (_, seed) => {
      const curve = smooth(4000, 0.3, seed + 1);
      return required(proofStrength(curve, { modulus: 70_000 })).stress - 250;
    });
    const mean = errors.reduce((a, b) => a + b, 0) / errors.length;
    const scatter = Math.sqrt(errors.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (errors.length - 1));
    // a single crossing would scatter by the noise itself, 0.3
    expect(scatter).toBeLessThan(0.2);
    expect(Math.abs(mean)).toBeLessThan((3 * 0.2) / Math.sqrt(errors.length) + 0.02);
  });

  test('a single noisy sample below the line is no crossing', () => {
    const { strain, stress } = smooth(2000);
    stress[900] = 0;
    expect(required(proofStrength({ strain, stress }, { modulus: 70_000 })).stress).toBeCloseTo(250, 2);
  });

  test('not reached, or beyond from the start', () => {
    expect(proofStrength(ramp, { modulus: 70_000 })).toMatchObject({ ok: false, reason: 'not-reached' });
    expect(proofStrength({ strain: [0.1, 0.2, 0.3], stress: [1, 2, 3] }, { modulus: 70_000 })).toMatchObject({
      ok: false,
      reason: 'starts-beyond',
    });
    expect(totalExtensionStrength(ramp)).toMatchObject({ ok: false, reason: 'not-reached' });
  });

  test.each([
    ['missing line.modulus', () => proofStrength(ramp, {} as never)],
    ['not-positive line.modulus', () => proofStrength(ramp, { modulus: -1 })],
    ['not-positive line.offset', () => proofStrength(ramp, { modulus: 1, offset: 0 })],
    ['not-positive where.totalExtension', () => totalExtensionStrength(ramp, { totalExtension: 0 })],
  ])('%s', (expected, call) => {
    expect(thrown(call)).toBe(expected);
  });
});

describe('proportionalLimit', () => {
  test('by deviation: where the curve leaves the line by three standard deviations', () => {
    const limit = required(proportionalLimit(smooth(3000), { modulus: 70_000, definition: 'deviation', residualStandardDeviation: 0.5 }));
    // 70 000 · 0.002 (R/250)^20 = 1.5
    expect(limit.stress).toBeCloseTo(250 * (1.5 / 140) ** (1 / 20), 0);
  });

  test('never reached on a straight line; too few samples', () => {
    for (const definition of ['offset', 'tangent', 'johnson', 'deviation'] as const)
      expect(proportionalLimit(ramp, { modulus: 70_000, definition }).ok).toBe(false);
    expect(thrown(() => proportionalLimit(ramp, { modulus: 70_000, definition: 'eye' as never }))).toBe('out-of-range line.definition');
  });

  test('in noise the tangent is taken over as much as it needs', () => {
    const limit = required(proportionalLimit(smooth(4000, 0.2), { modulus: 70_000, definition: 'tangent' }));
    const exact = 250 * (((250 / 20 / 0.002) * (1 / 0.9 - 1)) / 70_000) ** (1 / 19);
    expect(Math.abs(limit.stress / exact - 1)).toBeLessThan(0.02);
  });
});

describe('yieldPoints', () => {
  const withDip = (n: number) => Array.from({ length: n }, (_, i) => i * 2e-5);
  const pausedAt = 100;

  test('a fall while the crosshead stood still is relaxation', () => {
    const strain = withDip(600);
    const stress = strain.map((e, i) => Math.min(200_000 * e, 300 + 400 * e) - (i > pausedAt && i < pausedAt + 40 ? 8 : 0));
    expect(yieldPoints({ strain, stress }).ok).toBe(true);
    const paused = yieldPoints({ strain, stress }, { pauses: [[pausedAt, pausedAt + 2]] });
    expect(paused).toMatchObject({ ok: false, reason: 'fall-in-pause' });
  });

  test('the maximum before the neck is no yield point', () => {
    const strain = withDip(2000);
    const stress = strain.map((e) => Math.min(200_000 * e, 300) - (e > 0.02 ? 3000 * (e - 0.02) : 0));
    expect(yieldPoints({ strain, stress })).toMatchObject({ ok: false, reason: 'no-hardening-after' });
  });

  test('a fall within noise is none', () => {
    const { normal } = seeded(5);
    const strain = withDip(1500);
    const stress = strain.map((e) => Math.min(200_000 * e, 300 + 300 * e) + 1.2 * normal());
    expect(yieldPoints({ strain, stress })).toMatchObject({ ok: false, reason: 'fall-within-noise' });
  });

  test.each([
    ['out-of-range options.pauses[0][0]', () => yieldPoints(ramp, { pauses: [[-1, 2]] })],
    ['out-of-range options.pauses[0][1]', () => yieldPoints(ramp, { pauses: [[2, 1]] })],
    ['out-of-range options.pauses[0]', () => yieldPoints(ramp, { pauses: [[0.5, 1]] })],
    ['out-of-range options.lowerRule', () => yieldPoints(ramp, { lowerRule: 'long' as never })],
    ['not-positive options.modulus', () => yieldPoints(ramp, { modulus: 0 })],
  ])('%s', (expected, call) => {
    expect(thrown(call)).toBe(expected);
  });
});

test('a plateau within one step of the reading counts by its middle', () => {
  const curve = { strain: [0, 1, 2, 3, 4, 5], stress: [0, 9.9, 10, 9.9, 10, 5] };
  expect(maximumStress(curve)).toMatchObject({ index: 2, strain: 2 });
  expect(maximumStress(curve, { resolution: 0.1 })).toMatchObject({ strain: 2.5, plateau: [1, 4] });
  expect(maximumStress(curve, { from: 3 }).index).toBe(4);
  expect(thrown(() => maximumStress(curve, { from: 6 }))).toBe('out-of-range options.from');
});

describe('fracture', () => {
  const strain = Array.from({ length: 60 }, (_, i) => i / 100);
  const neck = strain.map((_, i) => (i <= 20 ? 20 * i : 400 - 5 * (i - 20)));

  test('a sudden fall, also over several samples or held by the oil', () => {
    const of = (tail: readonly number[]) =>
      required(fracture({ strain: strain.slice(0, 40 + tail.length), stress: [...neck.slice(0, 40), ...tail] }));
    expect(of([0, 0, 0])).toMatchObject({ index: 39, how: 'sudden-fall' });
    expect(of([180, 60, 1, 0])).toMatchObject({ index: 39, how: 'sudden-fall' });
    expect(of([30, 29, 28, 28])).toMatchObject({ index: 39, how: 'sudden-fall' });
    expect(of([30, 20, 5, 1])).toMatchObject({ index: 39, how: 'sudden-fall' });
  });

  test('a slow fade, the end of the record, no fracture', () => {
    const fade = strain.map((_, i) => (i <= 20 ? 20 * i : 400 - 10.4 * (i - 20)));
    expect(required(fracture({ strain, stress: fade.map((R) => Math.max(R, 1)) })).how).toBe('faded-away');
    expect(required(fracture({ strain, stress: neck })).how).toBe('end-of-record');
    expect(fracture(ramp)).toMatchObject({ ok: false, reason: 'not-fractured' });
    expect(fracture({ strain: [0, 1, 2], stress: [0, -1, 0] })).toMatchObject({ ok: false, message: 'the force never rises above zero' });
    expect(thrown(() => fracture(ramp, { share: 0.9 }))).toBe('out-of-range options.share');
  });
});

test('areas between strains are interpolated; strains outside the record are refused', () => {
  expect(energyDensity(ramp, { from: 0.0005, to: 0.0025 })).toBeCloseTo(35_000 * (0.0025 ** 2 - 0.0005 ** 2), 12);
  expect(energyDensity(ramp, { from: 0 })).toBeCloseTo(35_000 * 0.003 ** 2, 12);
  expect(thrown(() => energyDensity(ramp, { to: 0.5 }))).toBe('out-of-range options.to');
  expect(thrown(() => energyDensity(ramp, { from: 0.002, to: 0.001 }))).toBe('out-of-range options.to');
  expect(thrown(() => energyDensity(ramp, { from: -1 }))).toBe('out-of-range options.from');
});

test('frame, extension, leverage and scatter refuse what they cannot use', () => {
  expect(thrown(() => frameCompliance({ stiffness: 1e9, modulus: 210_000, effectiveLength: 48, area: 50 }))).toBe(
    'out-of-range test.stiffness',
  );
  expect(thrown(() => removeCompliance({ force: [0, 1], extension: [0, 1] }, 1e-5))).toBe('missing record.travel');
  expect(thrown(() => removeCompliance({ force: [0, 1], travel: [0, 1] }, -1))).toBe('out-of-range compliance');
  expect(thrown(() => elasticExtension({ stress: 1, modulus: 0, length: 1 }))).toBe('not-positive bar.modulus');
  expect(thrown(() => offsetLeverage({ stress: 1, modulus: 1, offset: 0 }))).toBe('not-positive at.offset');
  expect(thrown(() => slopeScatter({ rSquared: 0, points: 5 }))).toBe('not-positive line.rSquared');
  expect(thrown(() => slopeScatter({ rSquared: 0.5, points: 2 }))).toBe('out-of-range line.points');
});

test('removeCompliance keeps the other columns and leaves its input alone', () => {
  const record = {
    force: Float64Array.of(0, 1000),
    travel: Float64Array.of(0, 0.05),
    time: [0, 1],
    extension: [0, NaN],
    strain: [0, 0.1],
    transverseStrain: [0, 0.2],
  };
  const corrected = removeCompliance(record, 2e-5);
  expect(corrected.travel![1]).toBeCloseTo(0.03, 15);
  expect(Object.keys(corrected).sort()).toEqual([...Object.keys(record), 'findings'].sort());
  expect(record.travel[1]).toBe(0.05);
});

test('local rates, and time that goes back', () => {
  const time = Array.from({ length: 100 }, (_, i) => i / 10);
  const curve = { strain: time.map((t) => 1e-4 * t), stress: time.map((t) => (t < 5 ? 20 * t : 100 + 5 * (t - 5))) };
  const rates = loadingRates(curve, time, { places: 10 });
  expect(rates.stressRate[0]).toBeCloseTo(20, 9);
  expect(rates.stressRate[9]).toBeCloseTo(5, 9);
  expect(rates.strainRate[4]).toBeCloseTo(1e-4, 12);
  expect(
    thrown(() =>
      loadingRates(
        curve,
        time.map((t, i) => (i === 7 ? 0 : t)),
      ),
    ),
  ).toBe('not-increasing time[7]');
});

test('a record that ends within the fall after a peak says so, not that there is no fall', () => {
  const stress = [0, 100, 200, 300, 290];
  const strain = [0, 0.0005, 0.001, 0.0015, 0.0016];
  expect(yieldPoints({ strain, stress })).toMatchObject({ ok: false, reason: 'ends-after-fall' });
  expect(yieldPoints({ strain: strain.slice(0, 4), stress: stress.slice(0, 4) })).toMatchObject({ ok: false, reason: 'no-fall' });
  expect(yieldPoints({ strain: [...strain, 0.0017], stress: [...stress, 301] })).toMatchObject({ ok: false, reason: 'no-fall' });
  expect(yieldPoints({ strain: [...strain, 0.0021], stress: [...stress, 289] })).toMatchObject({ ok: false, reason: 'no-hardening-after' });
});
