import { describe, expect, test } from 'vitest';
import {
  chordModulus,
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
import { lineTrust } from '../../src/curve/modulus/lineTrust.js';
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

  test('stress is force over area, strain motion over length, of every sample', () => {
    const force = [0, 1000, 2000];
    const area = 16 * Math.PI;
    const by = (record: object) => stressStrain({ force, ...record }, piece);
    for (const record of [{ extension: [0.4, 0.8, 1.2] }, { strain: [0.01, 0.02, 0.03] }, { travel: [0.48, 0.96, 1.44] }]) {
      const { stress, strain, firstStrain, extensometerEnd } = by(record);
      expect([...stress]).toEqual([0, expect.closeTo(1000 / area, 9), expect.closeTo(2000 / area, 9)]);
      expect([...strain]).toEqual([0.01, 0.02, 0.03].map((e) => expect.closeTo(e, 12) as number));
      expect(firstStrain).toBe(strain[0]);
      expect(extensometerEnd).toBeUndefined();
    }
  });

  test('an extensometer that read a single sample says nothing, two are enough', () => {
    const travel = [0, 0.48, 0.96, 1.44];
    const of = (extension: number[]) => stressStrain({ force: [0, 1, 2, 3], extension, travel }, piece);
    expect(of([0, NaN, NaN, NaN])).toMatchObject({ basis: 'travel', strainLength: 48 });
    expect(of([0, NaN, NaN, NaN])).not.toHaveProperty('extensometerEnd');
    expect(of([0, 0.4, NaN, NaN])).toMatchObject({ basis: 'extensometer-then-travel', extensometerEnd: 2, strainLength: 40 });
    // travel carries on from 1 %
    expect([...of([0, 0.4, NaN, NaN]).strain]).toEqual([0, 0.01, expect.closeTo(0.02, 12), expect.closeTo(0.03, 12)]);
    expect(of([0, 0.4, 0.8, 1.2])).toMatchObject({ basis: 'extensometer' });
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
    for (const stress of [
      [3, 2, 1],
      [3, 3, 3],
      [0, 0, 0],
    ])
      expect(fitModulus({ strain: [0, 1, 2], stress })).toMatchObject({ ok: false, reason: 'no-rise' });
    expect(fitModulus({ strain: [0, 1, 2, 3], stress: [0, 0, 0, 9] })).toMatchObject({ ok: false, reason: 'too-few-points' });
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
    ['out-of-range options.window.last', () => fitModulus(ramp, { window: { by: 'samples', first: 2, last: 2.5 } })],
    ['out-of-range options.window.first', () => fitModulus(ramp, { window: { by: 'samples', first: 0.25, last: 3 } })],
    ['out-of-range options.window.first', () => fitModulus(ramp, { window: { by: 'samples', first: -1, last: 3 } })],
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

  test('nor the strength at a total extension', () => {
    // the curve itself at 0.5 %, by bisection
    let [low, high] = [0, 280];
    for (let k = 0; k < 60; k += 1) {
      const middle = (low + high) / 2;
      if (middle / 70_000 + 0.002 * (middle / 250) ** 20 < 0.005) low = middle;
      else high = middle;
    }
    const errors = Array.from({ length: 60 }, (_, seed) => required(totalExtensionStrength(smooth(4000, 0.3, seed + 1))).stress - low);
    const mean = errors.reduce((a, b) => a + b, 0) / errors.length;
    const scatter = Math.sqrt(errors.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (errors.length - 1));
    expect(scatter).toBeLessThan(0.15);
    expect(Math.abs(mean)).toBeLessThan((3 * 0.15) / Math.sqrt(errors.length) + 0.02);
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
    ['out-of-range options.pauses[0][0]', () => yieldPoints(ramp, { pauses: [[0.5, 1]] })],
    ['out-of-range options.lowerYield', () => yieldPoints(ramp, { lowerYield: 'long' as never })],
    ['not-positive options.modulus', () => yieldPoints(ramp, { modulus: 0 })],
  ])('%s', (expected, call) => {
    expect(thrown(call)).toBe(expected);
  });
});

describe('a strength on the plateau of the maximum is reached', () => {
  /** An elastic, ideally plastic curve of 200 GPa and 300 MPa: the line offset by e_p meets it at a strain of 300 MPa/E + e_p. */
  const strain = Array.from({ length: 6000 }, (_, i) => i * 3.3e-6);
  const ideal = strain.map((e) => Math.min(200_000 * e, 300));
  const line = { modulus: 200_000 };

  test('of equal samples, to rounding', () => {
    for (const offset of [0.0001, 0.002, 0.01]) {
      const found = required(proofStrength({ strain, stress: ideal }, { ...line, offset }));
      expect(found.stress).toBeCloseTo(300, 9);
      expect(found.strain).toBeCloseTo(0.0015 + offset, 9);
    }
    expect(required(proportionalLimit({ strain, stress: ideal }, line)).stress).toBeCloseTo(300, 9);
    // from 200 GPa · 0.05 % = 100 MPa to 300 MPa
    expect(required(chordModulus({ strain, stress: ideal })).modulus).toBeCloseTo(200 / 0.002, 6);
  });

  test.each([1, 0.1, 0.3])('of a reading in steps of %d MPa whose highest comes first, to a step', (step) => {
    const stress = ideal.map((R) => Math.round(R / step) * step);
    const first = stress.indexOf(Math.max(...stress));
    stress[first + 1]! += step;
    expect(Math.abs(required(proofStrength({ strain, stress }, line)).stress - 300)).toBeLessThanOrEqual(step);
    expect(Math.abs(required(proportionalLimit({ strain, stress }, line)).stress - 300)).toBeLessThanOrEqual(step);
  });

  test('not on a curve that falls from its maximum by more than a step before it meets the line', () => {
    const stress = ideal.map((R, i) => Math.round(strain[i]! > 0.0016 ? R - 20_000 * (strain[i]! - 0.0016) : R));
    expect(proofStrength({ strain, stress }, line)).toMatchObject({ ok: false, reason: 'not-reached' });
  });
});

describe('a plateau of the maximum counts by its middle', () => {
  test('from the first to the last sample that reads as it does', () => {
    const curve = { strain: [0, 1, 2, 3, 4, 5], stress: [0, 9.9, 10, 9.9, 10, 5] };
    expect(maximumStress(curve)).toMatchObject({ index: 2, strain: 2 });
    expect(maximumStress(curve, { resolution: 0.1 })).toMatchObject({ strain: 3, plateau: [2, 4] });
    // two steps lower is between, three steps lower the force has fallen
    const between = (R: number) =>
      maximumStress({ strain: [0, 1, 2, 3, 4, 5], stress: [0, 0, 10, R, 10, 0] }, { resolution: 0.125 }).plateau;
    expect(between(9.75)).toEqual([2, 4]);
    expect(between(9.625)).toEqual([2, 2]);
    // digits lost on the way from the force: 0.1 + 0.2 is no more than 0.3
    expect(maximumStress({ strain: [0, 1, 2], stress: [0.3, 0.1 + 0.2, 0.2] }, { resolution: 0.1 }).plateau).toEqual([0, 1]);
    expect(maximumStress(curve, { from: 3 }).index).toBe(4);
    expect(thrown(() => maximumStress(curve, { from: 6 }))).toBe('out-of-range options.from');
  });

  // R = 400 (1 − u²) over u from −0.3 to 0.3, in steps of 1 MPa and noise of 0.4. The highest reading is 401: a sample at u reads it by a chance of
  // Q((0.5 + 400 u²)/0.4), Q the upper tail of a normal deviate. Summed over the samples beyond 0.06, 4.85 deviations, that is 2.9e-6 on either side. The plateau
  // begins before 0 and ends after it, so that its middle lies within 0.03; a reading of 402, which one record in 120 has, is a sample of its own, and
  // lies beyond 0.03 by 3e-5. Of 20 records one is outside these limits by less than 1e-3.
  test('where coarse digits and noise read it here and there', () => {
    for (let seed = 1; seed <= 20; seed += 1) {
      const { normal } = seeded(seed);
      const strain = Array.from({ length: 2001 }, (_, i) => (i - 1000) * 3e-4);
      const stress = strain.map((u) => Math.round(400 * (1 - u * u) + 0.4 * normal()));
      const { strain: middle, plateau } = maximumStress({ strain, stress }, { resolution: 1 });
      expect(Math.abs(middle)).toBeLessThan(0.03);
      expect(plateau[0]).toBeGreaterThan(-0.06);
      expect(plateau[1]).toBeLessThan(0.06);
    }
  });
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
  for (const points of [2, 3.5]) expect(thrown(() => slopeScatter({ rSquared: 0.5, points }))).toBe('out-of-range line.points');
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

test('rates of stretches of five samples at least: a rest is left out, and so is a stretch in which time stands', () => {
  const twelve = Array.from({ length: 12 }, (_, i) => i);
  const of = (time: readonly number[], places = 10_000) =>
    loadingRates({ strain: twelve.map((t) => 5 + 0.001 * t), stress: twelve.map((t) => 100 + 20 * t) }, time, { places });
  const rates = of(twelve.map((t) => 3 + 2 * t));
  expect([...rates.time]).toEqual([7, 17]);
  expect([...rates.stressRate]).toEqual([expect.closeTo(10, 12), expect.closeTo(10, 12)]);
  expect([...rates.strainRate]).toEqual([expect.closeTo(0.0005, 12), expect.closeTo(0.0005, 12)]);
  expect(of(twelve, 2).time).toEqual(Float64Array.of(2.5, 8.5));
  const standing = of(twelve.map((t) => (t < 5 ? 4 : t)));
  expect([...standing.time]).toEqual([7]);
  expect([...standing.stressRate]).toEqual([expect.closeTo(20, 12)]);
  expect(standing.strainRate).toHaveLength(1);
  // unequal steps of time: the least-squares slope of 0, 20, 40, 60, 80 over 0, 1, 2, 3, 10
  const uneven = of([0, 1, 2, 3, 10, 11, 12, 13, 14, 15, 16, 17]);
  expect(uneven.stressRate[0]).toBeCloseTo((5 * (20 + 80 + 180 + 800) - 16 * 200) / (5 * 114 - 16 ** 2), 9);
});

test('a record that ends within the fall after a peak says so, not that there is no fall', () => {
  const stress = [0, 100, 200, 300, 290];
  const strain = [0, 0.0005, 0.001, 0.0015, 0.0016];
  expect(yieldPoints({ strain, stress })).toMatchObject({ ok: false, reason: 'ends-after-fall' });
  expect(yieldPoints({ strain: strain.slice(0, 4), stress: stress.slice(0, 4) })).toMatchObject({ ok: false, reason: 'no-fall' });
  expect(yieldPoints({ strain: [...strain, 0.0017], stress: [...stress, 301] })).toMatchObject({ ok: false, reason: 'no-fall' });
  // it fell by 10 MPa, then by 1: a level or a neck, two samples do not say
  const far = (...more: readonly number[]) =>
    yieldPoints({ strain: [...strain, ...more.map((_, k) => 0.0021 + 5e-4 * k)], stress: [...stress, ...more] });
  expect(far(289)).toMatchObject({ ok: false, reason: 'ends-after-fall' });
  // a fall that grows is a neck
  expect(far(285, 275, 260)).toMatchObject({ ok: false, reason: 'no-hardening-after' });
});

describe('by hand, and at limits exactly hit', () => {
  const stepped = (n: number, step: number) => Array.from({ length: n }, (_, i) => i * step);
  /** 100 GPa up to 200 MPa, half of it beyond; one sample each MPa of the elastic part. */
  const kinked = (n: number) => {
    const strain = stepped(n, 1e-5);
    return { strain, stress: strain.map((_, i) => (i <= 200 ? i : 200 + (i - 200) / 2)) };
  };
  const coarse = { strain: [0, 0.002, 0.012, 0.022], stress: [0, 200, 300, 400] };
  const shifted = { strain: coarse.strain.map((e) => e + 0.001), stress: coarse.stress };

  test('proof strength between two samples, its strain from the shifted origin', () => {
    // u beyond the kink: 200 + 10 000 u = 100 000 u
    const found = required(proofStrength(coarse, { modulus: 100_000 }));
    expect(found.stress).toBeCloseTo(200 + 200 / 9, 9);
    expect(found.strain).toBeCloseTo(0.004 + 0.002 / 9, 12);
    expect(found.index).toBe(2);
    const same = required(proofStrength(shifted, { modulus: 100_000, strainShift: 0.001 }));
    expect(same.stress).toBeCloseTo(found.stress, 9);
    expect(same.strain).toBeCloseTo(found.strain, 12);
    // half the offset: 200 + 10 000 u = 100 000 (u + 0.001)
    expect(required(proofStrength(coarse, { modulus: 100_000, offset: 0.001 })).stress).toBeCloseTo(200 + 100 / 9, 9);
  });

  test('a crossing lasts over five samples, over 0.05 % strain, or to the end in two samples', () => {
    const crossing = (n: number, step: number, first: number, below: number) => {
      const strain = stepped(n, step);
      const stress = strain.map((e, i) => (i >= first && i < first + below ? 0 : 100_000 * e));
      return proofStrength({ strain, stress }, { modulus: 100_000 });
    };
    expect(crossing(500, 1e-5, 300, 4)).toMatchObject({ ok: false, reason: 'not-reached' });
    expect(crossing(500, 1e-5, 300, 5)).toMatchObject({ ok: true, index: 300 });
    expect(crossing(40, 2e-4, 20, 3)).toMatchObject({ ok: false, reason: 'not-reached' });
    expect(crossing(40, 2e-4, 20, 4)).toMatchObject({ ok: true, index: 20 });
    const ending = { strain: [0, 0.002, 0.0042, 0.0043], stress: [0, 200, 210, 211] };
    expect(proofStrength(ending, { modulus: 100_000 })).toMatchObject({ ok: true, index: 2 });
    const last = { strain: ending.strain.slice(0, 3), stress: ending.stress.slice(0, 3) };
    expect(proofStrength(last, { modulus: 100_000 })).toMatchObject({ ok: false, reason: 'not-reached' });
  });

  test('strength at total extension: on the chord, at a sample, at the last one, and not beyond', () => {
    expect(required(totalExtensionStrength(coarse))).toMatchObject({ stress: expect.closeTo(230, 9) as number, strain: 0.005 });
    const same = required(totalExtensionStrength(shifted, { strainShift: 0.001 }));
    expect(same.stress).toBeCloseTo(230, 9);
    expect(same.strain).toBe(0.005);
    expect(required(totalExtensionStrength(coarse, { totalExtension: 0.012 })).stress).toBeCloseTo(300, 9);
    expect(required(totalExtensionStrength(coarse, { totalExtension: 0.022 })).stress).toBeCloseTo(400, 9);
    for (const where of [{ totalExtension: 0.0221 }, { totalExtension: 0.001, strainShift: -0.002 }])
      expect(totalExtensionStrength(coarse, where)).toMatchObject({ ok: false, reason: 'not-reached' });
  });

  test('proportional limit by offset is the proof strength of that offset', () => {
    // beyond the kink 200 + E u / 2 = E (u + offset) at u = 2 offset: 200 + E offset
    const limit = (offset?: number) => required(proportionalLimit(kinked(600), { modulus: 100_000, offset }));
    expect(limit().stress).toBeCloseTo(210, 6);
    expect(limit().definition).toBe('offset');
    expect(limit(0.0005).stress).toBeCloseTo(250, 6);
    expect(limit(0.0005).strain).toBeCloseTo(0.003, 9);
  });

  test('proportional limit by deviation: five samples in a row beyond three standard deviations, or the last ones', () => {
    const strain = stepped(31, 1e-4);
    const leaving = (by: number, from: number, to: number, more: object = {}) =>
      proportionalLimit(
        { strain, stress: strain.map((e, i) => 100_000 * e - (i >= from && i < to ? by : 0)) },
        { modulus: 100_000, definition: 'deviation', residualStandardDeviation: 1, ...more },
      );
    expect(required(leaving(4, 16, 31))).toMatchObject({
      stress: expect.closeTo(156, 9) as number,
      strain: expect.closeTo(0.0016, 12) as number,
      definition: 'deviation',
    });
    expect(leaving(4, 16, 20)).toMatchObject({ ok: false, reason: 'not-reached' });
    expect(required(leaving(4, 16, 21)).stress).toBeCloseTo(156, 9);
    expect(required(leaving(4, 29, 31)).stress).toBeCloseTo(286, 9);
    expect(leaving(2.9, 16, 31).ok).toBe(false);
    expect(required(leaving(4, 16, 31, { first: 20 })).stress).toBeCloseTo(196, 9);
    // looked for from a fifth of the maximum on: 300 MPa here
    expect(leaving(4, 0, 6).ok).toBe(false);
    // the origin 0.01 % to the left of the line: 10 MPa above it, all along
    expect(leaving(4, 16, 31, { strainShift: 0.0001 }).ok).toBe(false);
    expect(required(leaving(4, 16, 31, { strainShift: -0.0001, first: 10 }))).toMatchObject({
      stress: expect.closeTo(100, 9) as number,
      strain: expect.closeTo(0.0011, 12) as number,
    });
  });

  test('proportional limit by tangent: slopes of lines through five samples across a kink', () => {
    // such a line loses 0, 1, 2.5, 4 and 5 tenths of its slope from two samples before the kink on, by Σ u y / Σ u²
    const of = (line: object) => required(proportionalLimit(kinked(400), { modulus: 100_000, ...line }));
    const tangent = of({ definition: 'tangent', tangentShare: 0.8 });
    expect(tangent.stress).toBeCloseTo(199 + 2 / 3, 6);
    expect(tangent.strain).toBeCloseTo(1e-5 * (199 + 2 / 3), 10);
    const johnson = of({ definition: 'johnson' });
    expect(johnson.stress).toBeCloseTo(200 + (0.5 * 5) / 9, 6);
    expect(johnson.strain).toBeCloseTo(1e-5 * (200 + 5 / 9), 10);
    expect(johnson.definition).toBe('johnson');
    expect(of({ definition: 'johnson', strainShift: 0.001 }).strain).toBeCloseTo(1e-5 * (100 + 5 / 9), 10);
    const few = { strain: stepped(5, 0.001), stress: stepped(5, 100) };
    expect(proportionalLimit(few, { modulus: 100_000, definition: 'tangent', first: 0 })).toMatchObject({ reason: 'too-few-points' });
    // without `first` it is looked for; below zero there is none
    expect(proportionalLimit({ strain: [0, 1e-3], stress: [-5, -4] }, { modulus: 1000 })).toMatchObject({ reason: 'not-reached' });
    expect(thrown(() => proportionalLimit(few, { modulus: 100_000, first: 0.5 }))).toBe('out-of-range line.first');
    const six = { strain: stepped(6, 0.001), stress: stepped(6, 100) };
    expect(proportionalLimit(six, { modulus: 100_000, definition: 'tangent', first: 0 })).toMatchObject({ reason: 'not-reached' });
  });

  test('a tangent that falls for a while and rises again is no limit', () => {
    const strain = stepped(400, 1e-5);
    const stress = strain.map((_, i) => i - 0.5 * Math.max(0, Math.min(i, 152) - 150));
    expect(proportionalLimit({ strain, stress }, { modulus: 100_000, definition: 'tangent' })).toMatchObject({ reason: 'not-reached' });
  });

  test('a maximum at either end, equal neighbours and a fractional first sample', () => {
    const strain = [0, 1, 2, 3];
    expect(maximumStress({ strain, stress: [10, 10, 9, 8] })).toEqual({ stress: 10, strain: 0.5, index: 0, plateau: [0, 1] });
    expect(maximumStress({ strain, stress: [8, 9, 10, 10] })).toEqual({ stress: 10, strain: 2.5, index: 2, plateau: [2, 3] });
    expect(maximumStress({ strain, stress: [8, 12, 10, 11] }, { from: 1.5 }).index).toBe(3);
    expect(maximumStress({ strain, stress: [8, 12, 10, 11] }, { from: 1 }).index).toBe(1);
    expect(maximumStress({ strain, stress: [8, 12, 10, 11] }, { from: 3 }).index).toBe(3);
    // one step of 2 MPa below the highest belongs to it, more does not
    expect(maximumStress({ strain, stress: [12, 10, 12, 7.9] }, { resolution: 2 }).plateau).toEqual([0, 2]);
    expect(thrown(() => maximumStress({ strain, stress: strain }, { resolution: -1 }))).toBe('out-of-range options.resolution');
  });

  test('areas from and to samples, between them, and of nothing', () => {
    const curve = { strain: [0.1, 0.2, 0.3, 0.4], stress: [0, 100, 150, 150] };
    expect(energyDensity(curve)).toBeCloseTo(5 + 12.5 + 15, 12);
    expect(energyDensity(curve, { from: 0.15, to: 0.35 })).toBeCloseTo(3.75 + 12.5 + 7.5, 12);
    expect(energyDensity(curve, { from: 0.2, to: 0.3 })).toBeCloseTo(12.5, 12);
    expect(energyDensity(curve, { to: 0.4 })).toBeCloseTo(32.5, 12);
    expect(energyDensity(curve, { to: 0.1 })).toBe(0);
    expect(energyDensity(curve, { from: 0.25, to: 0.25 })).toBeCloseTo(0, 12);
    expect(thrown(() => energyDensity(curve, { from: 0.0999 }))).toBe('out-of-range options.from');
    expect(thrown(() => energyDensity(curve, { from: 0.41 }))).toBe('out-of-range options.from');
    expect(thrown(() => energyDensity(curve, { to: NaN }))).toBe('not-finite options.to');
  });

  test('trust in a line: 5 and 20 per cent of the offset still belong to the better verdict', () => {
    // 280 MPa at 70 GPa are 0.4 % elastic strain, twice the offset
    const of = (relativeStandardError: number) =>
      lineTrust({ slope: 70_000, relativeStandardError, points: 8 }, 280, { verdict: 'found' }, undefined);
    expect(of(0.025)).toEqual({ leverage: 2, offsetDoubt: 0.05, verdict: 'sound' });
    expect(of(0.026).verdict).toBe('doubtful');
    expect(of(0.1)).toEqual({ leverage: 2, offsetDoubt: 0.2, verdict: 'doubtful' });
    expect(of(0.101).verdict).toBe('unusable');
  });
});

describe('fracture at its limits', () => {
  // 400 MPa at sample 20, then 5 MPa less each
  const neck = (n: number) => Array.from({ length: n }, (_, i) => (i <= 20 ? 20 * i : 400 - 5 * (i - 20)));
  const of = (stress: readonly number[], share?: number) => fracture({ strain: stress.map((_, i) => i / 100), stress }, { share });

  test('a sudden fall begins where the steps are more than five usual ones', () => {
    // steps of 25, 26, 154 and 100 MPa where 5 are usual
    expect(of([...neck(40), 280, 254, 100, 0])).toMatchObject({ index: 40, stress: 280, strain: 0.4, how: 'sudden-fall' });
    expect(of([...neck(40), 279, 253, 100, 0])).toMatchObject({ index: 39, stress: 305, how: 'sudden-fall' });
  });

  test('a sample at the share itself has not gone', () => {
    const fade = [...neck(21), ...Array.from({ length: 40 }, (_, k) => 390 - 10 * k)];
    expect(of(fade)).toMatchObject({ index: 59, stress: 10, how: 'faded-away' });
    expect(of(fade, 0.025)).toMatchObject({ index: 59, stress: 10, how: 'faded-away' });
    expect(of(fade, 0.03)).toMatchObject({ index: 58, stress: 20, how: 'faded-away' });
  });

  test('held by the oil: below 15 % of the maximum, after a fall of more than 20 %', () => {
    expect(of([...neck(40), 59, 59, 58])).toMatchObject({ index: 39, how: 'sudden-fall' });
    expect(of([...neck(40), 60, 60, 60])).toMatchObject({ index: 42, how: 'end-of-record' });
    expect(of([...neck(73), 59, 59, 58])).toMatchObject({ index: 72, stress: 140, how: 'sudden-fall' });
    expect(of([...neck(72), 139, 59, 59, 58])).toMatchObject({ index: 75, how: 'end-of-record' });
    // the same where the force goes on to nothing later
    expect(of([...neck(40), 59, 40, 21, 2])).toMatchObject({ index: 39, how: 'sudden-fall' });
    expect(of([...neck(40), 60, 41, 22, 3])).toMatchObject({ index: 42, stress: 22, how: 'faded-away' });
  });

  test('a fall of less than a fifth is none, however low it ends; one of more counts where the neck is steep too', () => {
    const fade = [...neck(21), ...Array.from({ length: 31 }, (_, k) => 390 - 10 * k)];
    expect(of([...fade, 85, 55, 45, 35, 25, 15, 5])).toMatchObject({ index: 57, stress: 15, how: 'faded-away' });
    const steep = [...neck(21), ...Array.from({ length: 13 }, (_, k) => 380 - 20 * k)];
    expect(of([...steep, 50, 49, 48])).toMatchObject({ index: 33, stress: 140, how: 'sudden-fall' });
    expect(of([...steep, 50, 30, 12, 4])).toMatchObject({ index: 33, stress: 140, how: 'sudden-fall' });
  });

  test('after a level maximum a step of one per cent of it is part of the collapse, a smaller one is not', () => {
    const level = [0, 200, ...Array<number>(20).fill(400)];
    expect(of([...level, 397, 300, 0])).toMatchObject({ index: 22, stress: 397, how: 'sudden-fall' });
    expect(of([...level, 395, 300, 0])).toMatchObject({ index: 21, stress: 400, how: 'sudden-fall' });
  });

  test('a record that ends at 99 % of its maximum has not begun to neck', () => {
    expect(of([0, 200, 400, 398, 396])).toMatchObject({ ok: false, message: 'the record ends at 99.0 % of its maximum' });
    expect(of([0, 200, 400, 398, 395])).toMatchObject({ index: 4, how: 'end-of-record' });
  });
});

describe('yield points by hand', () => {
  // peak 400 MPa, a long yielding range, hardening along a straight line from 2 % on
  const strain = [0, 0.001, 0.002, 0.0025, 0.004, 0.006, 0.01, 0.015, 0.02, 0.025, 0.03, 0.035, 0.04];
  const stress = [0, 200, 400, 390, 391, 392, 389, 388, 390, 440, 490, 540, 590];

  test('ReH, ReL by both rules, and Ae where the level of ReL meets the line of hardening', () => {
    const found = required(yieldPoints({ strain, stress }));
    expect(found.upper).toEqual({ stress: 400, strain: 0.002, index: 2 });
    expect(found.lower).toEqual({ stress: 388, strain: 0.015, index: 7 });
    // the line of hardening rises by 10 000 MPa: 390 at 0.02, so 388 at 0.0198
    expect(found.extension).toBeCloseTo(0.0198 - 0.002, 9);
    expect(found.hardeningStart).toBe(8);
    expect(required(yieldPoints({ strain, stress }, { lowerYield: 'short' })).lower).toEqual({ stress: 390, strain: 0.0025, index: 3 });
    const shifted = required(yieldPoints({ strain: strain.map((e) => e + 0.001), stress }, { strainShift: 0.001 }));
    expect(shifted.upper.strain).toBeCloseTo(0.002, 12);
    expect(shifted.lower.strain).toBeCloseTo(0.015, 12);
    expect(shifted.extension).toBeCloseTo(found.extension!, 12);
  });

  test('the fall of ReH counts from the share on, its strain from the width on', () => {
    const falling = (to: number, options: object = {}) => {
      const R = stress.map((one, i) => (i >= 3 && i <= 8 ? to : one));
      return yieldPoints({ strain, stress: R }, options);
    };
    expect(falling(398).ok).toBe(true);
    expect(falling(398.1)).toMatchObject({ ok: false, reason: 'no-fall' });
    expect(falling(380, { minimumFall: 0.05 }).ok).toBe(true);
    expect(falling(380.1, { minimumFall: 0.05 })).toMatchObject({ ok: false, reason: 'no-fall' });
    // below the peak from 0.0025 to 0.02, back above it at 0.025
    expect(falling(390, { minimumStrain: 0.0179 }).ok).toBe(true);
    expect(falling(390, { minimumStrain: 0.0181 })).toMatchObject({ ok: false, reason: 'no-fall' });
  });

  test('a fall below a fifth of the maximum is seating', () => {
    const seating = (peak: number) => {
      const R = [0, peak, 0.9 * peak, 0.9 * peak, 120, 200, 300, 400, 440, 480, 500];
      return yieldPoints({ strain: R.map((_, i) => i / 1000), stress: R });
    };
    expect(seating(100).ok).toBe(true);
    expect(seating(99)).toMatchObject({ ok: false, reason: 'no-fall' });
  });

  test('with a modulus no yield point is looked for beyond 0.5 % plastic extension', () => {
    const late = (plastic: number, options: object = {}) => {
      const e = [0, 0.001, 0.002, 0.002 + plastic, 0.01, 0.012, 0.02, 0.03];
      return yieldPoints({ strain: e, stress: [0, 200, 390, 400, 380, 380, 450, 500] }, options);
    };
    expect(late(0.0051).ok).toBe(true);
    expect(late(0.0051, { modulus: 200_000 })).toMatchObject({ ok: false, reason: 'no-fall' });
    expect(late(0.0049, { modulus: 200_000 }).ok).toBe(true);
    // the same from an origin that is shifted by 0.1 %
    expect(late(0.0059, { modulus: 200_000, strainShift: 0.001 }).ok).toBe(true);
    expect(late(0.0061, { modulus: 200_000, strainShift: 0.001 }).ok).toBe(false);
  });

  test('what fell in a pause is no ReL, until the stress is back where it was', () => {
    // relaxation within the yielding range: 388 would be the lowest
    const found = required(yieldPoints({ strain, stress: stress.map((R, i) => (i === 5 ? 370 : R)) }, { pauses: [[4, 5]] }));
    expect(found.lower).toEqual({ stress: 388, strain: 0.015, index: 7 });
    const unspoilt = required(yieldPoints({ strain, stress: stress.map((R, i) => (i === 5 ? 370 : R)) }));
    expect(unspoilt.lower).toEqual({ stress: 370, strain: 0.006, index: 5 });
  });

  test('a first dip that is short and soon over is a transient, one that lasts is not', () => {
    const e = [0, 0.001, 0.002, 0.0022, 0.0025, 0.003, 0.0035, 0.004, 0.006, 0.01, 0.015, 0.02, 0.025, 0.03, 0.035];
    const level = [0, 200, 400, 380, 370, 390, 390, 390, 390, 389, 390, 390, 440, 490, 540];
    expect(required(yieldPoints({ strain: e, stress: level })).lower).toEqual({ stress: 389, strain: 0.01, index: 9 });
    const lasting = level.map((R, i) => (i >= 4 && i <= 8 ? 370 : R));
    expect(required(yieldPoints({ strain: e, stress: lasting })).lower.stress).toBe(370);
  });

  /** A dip after ReH, a level of 390 MPa with three waves, and hardening, steeper than these, by 10 GPa from 2 % strain on. */
  const levelled = (depth: number, wave: number, noise = 0) => {
    const { normal } = seeded(3);
    const e = Array.from({ length: 6000 }, (_, i) => i * 1e-5);
    const of = (x: number): number => {
      if (x <= 0.002) return 200_000 * x;
      if (x <= 0.0025) return 400 - ((10 + depth) * (x - 0.002)) / 0.0005;
      if (x <= 0.003) return 390 - depth + (depth * (x - 0.0025)) / 0.0005;
      return x <= 0.02 ? 390 + wave * Math.sin((6 * Math.PI * (x - 0.003)) / 0.017) : 390 + 10_000 * (x - 0.02);
    };
    return { strain: e, stress: e.map((x) => of(x) + noise * normal()) };
  };

  test.each([5, 20, 60])(
    'before a level without waves a dip of %d MPa is a transient, and the level ends where hardening begins',
    (depth) => {
      const found = required(yieldPoints(levelled(depth, 0)));
      expect(found.upper.stress).toBeCloseTo(400, 9);
      expect(found.lower.stress).toBeCloseTo(390, 9);
      expect(found.extension).toBeCloseTo(0.018, 4);
    },
  );

  test.each([
    [3, 0],
    [5, 0],
    [8, 0],
    [3, 0.3],
    [8, 0.3],
  ])('of waves of %d MPa, noise %d, the trough is ReL, and its level meets hardening where Ae ends', (wave, noise) => {
    const found = required(yieldPoints(levelled(20, wave, noise)));
    // noise pulls the lowest of some hundred samples down by two to three of its deviations, and moves either end of Ae by some ten samples
    const level = 390 - wave - 2.5 * noise;
    expect(Math.abs(found.lower.stress - level)).toBeLessThan(0.01 + noise);
    expect(Math.abs(found.extension! - (0.018 - (390 - level) / 10_000))).toBeLessThan(noise > 0 ? 2e-4 : 5e-5);
    expect(Math.abs(found.upper.stress - 400)).toBeLessThan(0.01 + 3 * noise);
  });
});
