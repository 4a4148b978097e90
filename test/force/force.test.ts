import { describe, expect, test } from 'vitest';
import {
  applyCalibration,
  calibrationUncertainty,
  currentToPressure,
  fitCalibration,
  forceResolution,
  forceToPressure,
  InputError,
  pistonArea,
  pressureToForce,
  required,
  voltageToPressure,
} from '../../src/index.js';
import { fExceeds, incompleteBeta } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';

const failure = (call: () => unknown): string => {
  try {
    call();
  } catch (error) {
    if (error instanceof InputError) return `${error.code} ${error.path}`;
    throw error;
  }
  return 'nothing thrown';
};

describe('pressureToForce', () => {
  const pressureRecord = { pressure: [0, 5, 10], travel: [0, 10, 20], time: [0, 1, 2], extension: [0, 0.1, NaN] };

  test('a record keeps its other columns, as copies', () => {
    const record = pressureToForce(pressureRecord, { bore: 40 });
    expect(record.force[2]).toBeCloseTo(12_566.37, 2);
    expect([...record.travel!]).toEqual([0, 10, 20]);
    expect(Number.isNaN(record.extension![2]!)).toBe(true);
    expect('pressure' in record).toBe(false);
  });

  test('a spring keeps back more as it travels', () => {
    const tareForce = { travel: [0, 20], force: [100, 300] };
    const record = pressureToForce(pressureRecord, { bore: 40, tareForce });
    expect(record.force[0]).toBeCloseTo(-100, 9);
    expect(record.force[1]).toBeCloseTo(5 * pistonArea({ bore: 40 }) - 200, 9);
    expect(record.force[2]).toBeCloseTo(10 * pistonArea({ bore: 40 }) - 300, 9);
  });

  test.each([
    ['out-of-range travel[2]', () => pressureToForce(pressureRecord, { bore: 40, tareForce: { travel: [0, 15], force: [0, 1] } })],
    ['missing record.travel', () => pressureToForce({ pressure: [1, 2] }, { bore: 40, tareForce: { travel: [0, 15], force: [0, 1] } })],
    [
      'not-increasing tareForce.travel[1]',
      () => pressureToForce(pressureRecord, { bore: 40, tareForce: { travel: [0, 0], force: [0, 1] } }),
    ],
    ['wrong-type tareForce', () => pressureToForce(1, { bore: 40, tareForce: { travel: [0, 15], force: [0, 1] } })],
    ['out-of-range rod', () => pressureToForce(1, { bore: 20, rod: 20 })],
    ['out-of-range efficiency', () => pressureToForce(1, { bore: 20, efficiency: 1.2 })],
    ['not-finite pressure[1]', () => pressureToForce([1, NaN], { bore: 20 })],
    // @ts-expect-error: no option of that name
    ['unknown-option chain.diameter', () => pressureToForce(1, { bore: 20, diameter: 3 })],
    ['not-positive bore', () => pistonArea({ bore: 0 })],
    ['out-of-range efficiency', () => forceToPressure(1, { bore: 10, efficiency: 0 })],
    ['out-of-range bits', () => forceResolution({ fullScale: 1, bits: 2.5 })],
  ])('%s', (expected, call) => {
    expect(failure(call)).toBe(expected);
  });
});

describe('transmitters', () => {
  test('the pressure ends before the first fault', () => {
    const { pressure, faults } = currentToPressure([4, 8, 3.5, 3.4, 12], { fullScale: 16 });
    expect([...pressure]).toEqual([0, 4]);
    expect(faults).toEqual([[2, 3]]);
  });

  test('a little below zero is a small negative pressure, not a fault', () => {
    expect(currentToPressure([3.8], { fullScale: 16 }).pressure[0]).toBeCloseTo(-0.2, 12);
  });

  test('voltage with and without a live zero', () => {
    expect([...voltageToPressure([0, 5, 10], { fullScale: 40 }).pressure]).toEqual([0, 20, 40]);
    expect(voltageToPressure([0.5, 0, 4.5], { fullScale: 40, low: 0.5, high: 4.5 }).faults).toEqual([[1, 1]]);
    expect(failure(() => voltageToPressure([1], { fullScale: 1, low: 5, high: 5 }))).toBe('out-of-range high');
  });
});

describe('calibration', () => {
  const indicated = Float64Array.from({ length: 21 }, (_, i) => i);

  test('the degree is raised only as far as the data ask', () => {
    const random = seeded(3);
    const noise = indicated.map(() => random.normal());
    const of = (law: (x: number) => number) =>
      required(fitCalibration({ indicated, reference: indicated.map((x, i) => law(x) + noise[i]!) }));
    expect(of((x) => 1200 * x + 15).degree).toBe(1);
    expect(of((x) => 1200 * x + 3 * x * x).degree).toBe(2);
    expect(of((x) => 1200 * x + 0.5 * x ** 3).degree).toBe(3);
    expect(of((x) => 1200 * x).degreeBy).toBe('F-test');
  });

  test('relative weights follow the small forces', () => {
    const reference = indicated.map((x) => 100 + 1000 * x + (x === 20 ? 500 : 0));
    const equal = required(fitCalibration({ indicated, reference }, { degree: 1 }));
    const relative = required(fitCalibration({ indicated, reference }, { degree: 1, weights: 'relative' }));
    expect(Math.abs(relative.residuals[0]!)).toBeLessThan(Math.abs(equal.residuals[0]!));
    expect(failure(() => fitCalibration({ indicated, reference: indicated }, { weights: 'relative' }))).toBe('out-of-range reference[0]');
  });

  test('a curve that turns within its span is refused, one at its ends is not', () => {
    expect(fitCalibration({ indicated, reference: indicated.map((x) => (x - 10) ** 2) }, { degree: 2 })).toMatchObject({
      ok: false,
      reason: 'not-monotonic',
    });
    expect(fitCalibration({ indicated, reference: indicated.map((x) => (x + 1) ** 2) }, { degree: 2 }).ok).toBe(true);
    expect(fitCalibration({ indicated: [1, 1, 2], reference: [1, 1, 2] }, { degree: 2 })).toMatchObject({
      ok: false,
      reason: 'too-few-points',
    });
  });

  test('nothing is extrapolated unless it is allowed', () => {
    const calibration = required(fitCalibration({ indicated, reference: indicated.map((x) => 1000 * x) }));
    expect(applyCalibration(calibration, 20)).toBeCloseTo(20_000, 6);
    expect(failure(() => applyCalibration(calibration, 20.1))).toBe('out-of-range indicated');
    expect(failure(() => applyCalibration(calibration, [1, -1]))).toBe('out-of-range indicated[1]');
    expect(applyCalibration(calibration, 21, { beyond: 0.1 })).toBeCloseTo(21_000, 6);
    expect([...applyCalibration(calibration, [1, 2])].map(Math.round)).toEqual([1000, 2000]);
  });

  test('its uncertainty is that of the fitted line, also by simulation', () => {
    const random = seeded(11);
    const at = 15;
    const found: number[] = [];
    let stated = 0;
    for (let k = 0; k < 400; k += 1) {
      const calibration = required(
        fitCalibration({ indicated, reference: indicated.map((x) => 1000 * x + 10 * random.normal()) }, { degree: 1 }),
      );
      found.push(applyCalibration(calibration, at));
      stated += calibrationUncertainty(calibration, at) / 400;
    }
    const mean = found.reduce((a, b) => a + b, 0) / found.length;
    const scatter = Math.sqrt(found.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (found.length - 1));
    // 400 trials know a standard deviation to 3.5 %
    expect(Math.abs(stated / scatter - 1)).toBeLessThan(0.11);
  });

  test.each([
    ['out-of-range options.degree', () => fitCalibration({ indicated, reference: indicated }, { degree: 4 as 3 })],
    ['unequal-lengths reference', () => fitCalibration({ indicated, reference: [1, 2, 3] })],
    ['too-few indicated', () => fitCalibration({ indicated: [1, 2], reference: [1, 2] })],
    ['out-of-range options.weights', () => fitCalibration({ indicated, reference: indicated }, { weights: 'heavy' as 'equal' })],
    ['not-positive options.weights[0]', () => fitCalibration({ indicated, reference: indicated }, { weights: indicated })],
  ])('%s', (expected, call) => {
    expect(failure(call)).toBe(expected);
  });
});

// scipy.stats.f.sf and scipy.special.betainc, SciPy 1.17: a general-purpose reference library
test('F distribution and incomplete beta function against SciPy to 1e-10', () => {
  for (const [f, a, b, p] of FVALUES) expect(Math.abs(fExceeds(f, a, b) / p - 1)).toBeLessThan(1e-10);
  for (const [a, b, x, value] of BETAVALUES) expect(Math.abs(incompleteBeta(a, b, x) / value - 1)).toBeLessThan(1e-10);
  expect(incompleteBeta(2, 3, 0)).toBe(0);
  expect(incompleteBeta(2, 3, 1)).toBe(1);
  expect(fExceeds(-1, 2, 3)).toBe(1);
});

/** f, degrees of freedom of numerator and denominator, probability to exceed f. */
const FVALUES = [
  [0.1, 1, 1, 0.8050177709578635],
  [0.1, 1, 3, 0.7725549111200868],
  [0.1, 1, 18, 0.7554672956239509],
  [0.1, 1, 200, 0.752159420623996],
  [0.1, 2, 1, 0.9128709291752768],
  [0.1, 2, 3, 0.9077304717673633],
  [0.1, 2, 18, 0.9053365502530971],
  [0.1, 2, 200, 0.9048826308977761],
  [0.1, 5, 1, 0.9749689841815469],
  [0.1, 5, 3, 0.9851114742762083],
  [0.1, 5, 18, 0.9908668870033657],
  [0.1, 5, 200, 0.9920089845887375],
  [1, 1, 1, 0.5000000000000001],
  [1, 1, 3, 0.3910022189557705],
  [1, 1, 18, 0.3305649312781842],
  [1, 1, 200, 0.3185188479097467],
  [1, 2, 1, 0.5773502691896257],
  [1, 2, 3, 0.46475800154489],
  [1, 2, 18, 0.387420489],
  [1, 2, 200, 0.36971121232911924],
  [1, 5, 1, 0.6367825323508771],
  [1, 5, 3, 0.535145210006365],
  [1, 5, 18, 0.44569124479910593],
  [1, 5, 200, 0.4188924864715362],
  [4.5, 1, 1, 0.2804377980075435],
  [4.5, 1, 3, 0.1240270626575546],
  [4.5, 1, 18, 0.04803752774094713],
  [4.5, 1, 200, 0.03512617780481452],
  [4.5, 2, 1, 0.31622776601683794],
  [4.5, 2, 3, 0.125],
  [4.5, 2, 18, 0.026012294873748915],
  [4.5, 2, 200, 0.012256626595517076],
  [4.5, 5, 1, 0.34279577902204583],
  [4.5, 5, 3, 0.1228121408784406],
  [4.5, 5, 18, 0.007770168144588863],
  [4.5, 5, 200, 0.0006572005766926773],
  [30, 1, 1, 0.11496411795103316],
  [30, 1, 3, 0.011966912298547423],
  [30, 1, 18, 3.344778226973025e-5],
  [30, 1, 200, 1.2884990064300915e-7],
  [30, 2, 1, 0.12803687993289598],
  [30, 2, 3, 0.010391328106475826],
  [30, 2, 18, 1.8560989357135219e-6],
  [30, 2, 200, 4.033339404492154e-12],
  [30, 5, 1, 0.13769601402759818],
  [30, 5, 3, 0.009158377112018267],
  [30, 5, 18, 3.942376570978118e-8],
  [30, 5, 200, 1.0895661597076947e-22],
] as const;

/** a, b, x, value. */
const BETAVALUES = [
  [0.5, 0.5, 0.001, 0.020135041633377492],
  [0.5, 0.5, 0.2, 0.2951672353008665],
  [0.5, 0.5, 0.5, 0.5000000000000001],
  [0.5, 0.5, 0.9, 0.7951672353008665],
  [0.5, 3, 0.001, 0.05925318951594623],
  [0.5, 3, 0.2, 0.733430296619931],
  [0.5, 3, 0.5, 0.9501747372194231],
  [0.5, 3, 0.9, 0.9996750253207289],
  [0.5, 40, 0.001, 0.22208013236431182],
  [0.5, 40, 0.2, 0.9999747065666534],
  [0.5, 40, 0.5, 0.9999999999998872],
  [0.5, 40, 0.9, 1.0],
  [2, 0.5, 0.001, 3.7512507035940927e-7],
  [2, 0.5, 0.2, 0.016130089900092546],
  [2, 0.5, 0.5, 0.11611652351681556],
  [2, 0.5, 0.9, 0.5414697392755851],
  [2, 3, 0.001, 5.992003e-6],
  [2, 3, 0.2, 0.18080000000000004],
  [2, 3, 0.5, 0.6875],
  [2, 3, 0.9, 0.9963],
  [2, 40, 0.001, 0.0007989808347557147],
  [2, 40, 0.2, 0.9988036948037936],
  [2, 40, 0.5, 0.9999999999809006],
  [2, 40, 0.9, 1.0],
  [30, 0.5, 0.001, 1.0262784370021795e-91],
  [30, 0.5, 0.2, 1.2265219714158866e-22],
  [30, 0.5, 0.5, 1.3302059355529255e-10],
  [30, 0.5, 0.9, 0.012282448499852763],
  [30, 3, 0.001, 4.950404650000003e-88],
  [30, 3, 0.2, 3.4638911242240062e-19],
  [30, 3, 0.5, 1.2316741049289703e-7],
  [30, 3, 0.9, 0.36668351908062025],
  [30, 40, 0.001, 3.0455315861394243e-71],
  [30, 40, 0.2, 8.14350065456995e-6],
  [30, 40, 0.5, 0.8857998873233515],
  [30, 40, 0.9, 1.0],
] as const;
