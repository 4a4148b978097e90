import { describe, expect, test } from 'vitest';
import { required, type CurveColumns, type Outcome } from '../../src/base/index.js';
import { aicc } from '../../src/hardening/fits/aicc.js';
import {
  compareLaws,
  fitHockettSherby,
  fitHollomon,
  fitLaw,
  fitLudwik,
  fitSwift,
  fitSwiftVoce,
  fitVoce,
  hollomon,
  swift,
  voce,
  type FitOptions,
  type FitReason,
  type FitSummary,
} from '../../src/hardening/index.js';
import { seeded } from '../support/random.js';

type Values = Readonly<Record<string, number>>;
type Fit = (flow: CurveColumns, options?: FitOptions<never>) => Outcome<FitSummary<string>, FitReason>;
/** A law by its bare formula, and the fit of it. */
interface Law {
  readonly name: string;
  readonly truth: Values;
  readonly stress: (e: number, p: Values) => number;
  readonly fit: Fit;
}
const laws: readonly Law[] = [
  {
    name: 'Hollomon',
    truth: { strengthCoefficient: 700, exponent: 0.2 },
    stress: (e, { strengthCoefficient: K, exponent: n }) => K! * e ** n!,
    fit: fitHollomon,
  },
  {
    name: 'Ludwik',
    truth: { yieldStress: 220, strengthCoefficient: 480, exponent: 0.6 },
    stress: (e, { yieldStress: s0, strengthCoefficient: K, exponent: n }) => s0! + K! * e ** n!,
    fit: fitLudwik,
  },
  {
    name: 'Swift',
    truth: { strengthCoefficient: 640, prestrain: 0.01, exponent: 0.21 },
    stress: (e, { strengthCoefficient: K, prestrain: e0, exponent: n }) => K! * (e0! + e) ** n!,
    fit: fitSwift,
  },
  {
    name: 'Voce',
    truth: { saturationStress: 520, initialStress: 240, rate: 14 },
    stress: (e, { saturationStress: top, initialStress: first, rate }) => top! - (top! - first!) * Math.exp(-rate! * e),
    fit: fitVoce,
  },
  {
    name: 'Hockett-Sherby',
    truth: { saturationStress: 610, initialStress: 230, rate: 6, power: 0.75 },
    stress: (e, { saturationStress: top, initialStress: first, rate, power }) => top! - (top! - first!) * Math.exp(-rate! * e ** power!),
    fit: fitHockettSherby,
  },
];
const parametersOf = (fit: object, names: readonly string[]): Values =>
  Object.fromEntries(names.map((name) => [name, (fit as Values)[name]!]));

describe.each(laws)('$name', ({ truth, stress, fit }) => {
  const { normal } = seeded(11);
  const names = Object.keys(truth);
  const strain = Array.from({ length: 24 }, (_, i) => 0.003 * 1.2 ** i);
  const flow = { strain, stress: strain.map((e) => stress(e, truth) + 0.3 * normal()) };
  const found = required(fit(flow));

  test('is what the same formula gives as a law of one’s own, by derivatives from differences: values, errors, correlations', () => {
    const own = required(fitLaw(flow, { parameters: truth, stress }));
    for (const name of names) {
      expect(parametersOf(found, names)[name]! / own.parameters[name]!).toBeCloseTo(1, 6);
      expect(found.standardErrors[name]! / own.standardErrors[name]!).toBeCloseTo(1, 4);
    }
    own.correlations.flat().forEach((one, k) => {
      expect(found.correlations.flat()[k]).toBeCloseTo(one, 5);
    });
    expect(found.residualSumOfSquares / own.residualSumOfSquares).toBeCloseTo(1, 9);
    expect(found.rSquared).toBeCloseTo(own.rSquared, 10);
  });

  test('samples, range and AICc are those of the samples', () => {
    const k = names.length + 1;
    const rest = strain.reduce((sum, e, i) => sum + (flow.stress[i]! - stress(e, parametersOf(found, names))) ** 2, 0);
    expect(found).toMatchObject({ points: 24, range: [strain[0], strain[23]], converged: true });
    expect(found.residualSumOfSquares).toBeCloseTo(rest, 6);
    expect(found.aicc).toBeCloseTo(24 * Math.log(rest / 24) + 2 * k + (2 * k * (k + 1)) / (24 - k - 1), 6);
    expect(found.iterations).toBeGreaterThan(0);
  });

  test('a trade-off is every pair that is correlated by more than 0.99, either way', () => {
    const pairs = names.flatMap((a, i) => names.slice(i + 1).map((b) => [a, b] as const));
    const strong = pairs.filter(([a, b]) => Math.abs(found.correlations[names.indexOf(a)]![names.indexOf(b)]!) > 0.99);
    expect(found.tradeOffs).toEqual(strong);
  });

  test('weights k of a sample are k samples: sums, R² and errors but for the degrees of freedom', () => {
    const weights = strain.map((_, i) => 1 + (i % 3));
    const weighted = required(fit(flow, { weights }));
    const many = (column: readonly number[]) => column.flatMap((one, i) => Array<number>(weights[i]!).fill(one));
    const repeated = required(fit({ strain: many(strain), stress: many(flow.stress) }));
    const samples = many(strain).length;
    for (const name of names) {
      expect(parametersOf(weighted, names)[name]! / parametersOf(repeated, names)[name]!).toBeCloseTo(1, 7);
      const freedom = Math.sqrt((samples - names.length) / (24 - names.length));
      expect(weighted.standardErrors[name]! / repeated.standardErrors[name]! / freedom).toBeCloseTo(1, 6);
    }
    expect(weighted.residualSumOfSquares / repeated.residualSumOfSquares).toBeCloseTo(1, 9);
    expect(weighted.rSquared).toBeCloseTo(repeated.rSquared, 10);
    expect(weighted.points).toBe(24);
  });

  test('a range counts the samples and the weights within it only', () => {
    const range = { from: strain[4]!, to: strain[20]! };
    const weights = strain.map((_, i) => 1 + i);
    const cut = required(fit(flow, { ...range, weights }));
    const alone = required(fit({ strain: strain.slice(4, 21), stress: flow.stress.slice(4, 21) }, { weights: weights.slice(4, 21) }));
    expect(cut).toEqual(alone);
    expect(cut).toMatchObject({ points: 17, range: [strain[4], strain[20]] });
    expect(required(fit(flow, { from: range.from })).points).toBe(20);
    expect(required(fit(flow, { to: range.to })).points).toBe(21);
  });

  test('each parameter that is held stays without error; the others are their optimum', () => {
    for (const name of names) {
      const value = truth[name]! * 1.02;
      const held = required(fit(flow, { fixed: { [name]: value } }));
      const others = names.filter((one) => one !== name);
      const own = required(
        fitLaw(flow, { parameters: parametersOf(truth, others), stress: (e, p: Values) => stress(e, { ...p, [name]: value }) }),
      );
      expect(parametersOf(held, names)[name]).toBe(value);
      expect(held.standardErrors[name]).toBe(0);
      for (const other of others) {
        expect(parametersOf(held, names)[other]! / own.parameters[other]!).toBeCloseTo(1, 5);
        expect(held.standardErrors[other]! / own.standardErrors[other]!).toBeCloseTo(1, 3);
      }
      const k = names.indexOf(name);
      names.forEach((_, j) => {
        expect(held.correlations[k]![j]).toBe(j === k ? 1 : 0);
      });
      // a held parameter is none that the samples must pay for
      expect(held.aicc).toBeCloseTo(aicc(held.residualSumOfSquares, 24, others.length, 300), 9);
    }
  });

  test('all parameters but one held: two samples are enough, one is not', () => {
    const [name, ...others] = names as [string, ...string[]];
    const options = { fixed: parametersOf(truth, others) as never };
    const two = { strain: [0.05, 0.1], stress: [0.05, 0.1].map((e) => stress(e, truth)) };
    expect(parametersOf(required(fit(two, options)), names)[name]! / truth[name]!).toBeCloseTo(1, 9);
    expect(fit({ strain: [0.05], stress: [300] }, options)).toMatchObject({ ok: false, reason: 'too-few-points' });
  });

  test('a bound beyond the optimum is where the parameter ends, a bound below the least value does nothing', () => {
    for (const name of names) {
      const value = parametersOf(found, names)[name]!;
      const end = (bound: readonly [number, number]) => parametersOf(required(fit(flow, { bounds: { [name]: bound } })), names)[name]!;
      expect(end([value * 1.01, Infinity])).toBe(value * 1.01);
      expect(end([-Infinity, value * 0.99])).toBe(value * 0.99);
      expect(end([-1000, 10 * value]) / value).toBeCloseTo(1, 9);
    }
  });

  test('the uniform strain itself is in the range', () => {
    expect(fit(flow, { uniformStrain: strain[23] }).ok).toBe(true);
    expect(fit(flow, { uniformStrain: strain[23]! * (1 - 1e-8) })).toMatchObject({ ok: false, reason: 'beyond-maximum' });
    expect(fit(flow, { uniformStrain: strain[20], to: strain[20] }).ok).toBe(true);
  });
});

describe('what stands in a summary', () => {
  const truth = voce({ saturationStress: 520, initialStress: 240, rate: 14 });

  test.each(laws)(
    '$name over a short range: the pairs that trade off are those correlated by more than 0.99',
    ({ truth: { ...own }, fit }) => {
      const strain = Array.from({ length: 24 }, (_, i) => 0.002 + 0.001 * i);
      const { correlations, tradeOffs } = required(fit({ strain, stress: strain.map((e, i) => truth.stress(e) + 0.1 * Math.sin(9 * i)) }));
      const names = Object.keys(own);
      const pairs = names.flatMap((a, i) => names.flatMap((b, j) => (j > i ? [[a, b, Math.abs(correlations[i]![j]!)] as const] : [])));
      expect(tradeOffs).toEqual(pairs.filter(([, , one]) => one > 0.99).map(([a, b]) => [a, b]));
      if (names.length > 2) expect(tradeOffs.length).toBeGreaterThan(0);
    },
  );

  test('a curve that is the law to the last digit: no rest, no errors, AICc by the rounding of its mean stress', () => {
    const fixed = { saturationStress: 520, initialStress: 240, rate: 14 };
    const strain = [0.01, 0.05, 0.2];
    const stress = strain.map((e) => 520 - (520 - 240) * Math.exp(-14 * e));
    const byMean = (mean: number) => 6 * Math.log(mean * 2 ** -52) + 2 + 4;
    const exact = required(fitVoce({ strain, stress }, { fixed }));
    expect(exact).toMatchObject({ residualSumOfSquares: 0, rSquared: 1, converged: true, tradeOffs: [] });
    expect(exact.standardErrors).toEqual({ saturationStress: 0, initialStress: 0, rate: 0 });
    expect(exact.aicc).toBeCloseTo(byMean((stress[0]! + stress[1]! + stress[2]!) / 3), 9);
    const weights = [1, 2, 5];
    const weighted = required(fitVoce({ strain, stress }, { fixed, weights }));
    expect(weighted.aicc).toBeCloseTo(byMean((stress[0]! + 2 * stress[1]! + 5 * stress[2]!) / 8), 9);
  });

  test('steps on few points and on all count', () => {
    const strain = Array.from({ length: 600 }, (_, i) => 0.002 + 0.0003 * i);
    const stress = strain.map((e, i) => truth.stress(e) + Math.sin(9 * i));
    const long = required(fitVoce({ strain, stress }));
    const few = required(fitVoce({ strain: strain.slice(0, 400), stress: stress.slice(0, 400) }));
    expect(long.points).toBe(600);
    expect(long.iterations).toBeGreaterThanOrEqual(few.iterations);
  });

  test('two strains, though many samples, do not determine three parameters', () => {
    const flow = { strain: [0.01, 0.01, 0.1, 0.1], stress: [300, 302, 400, 402] };
    const message = 'the samples do not determine all parameters';
    expect(fitVoce(flow)).toEqual({ ok: false, reason: 'undetermined', message });
    expect(fitVoce(flow, { initialStress: 250 }).ok).toBe(true);
  });

  test('an initial stress that is known goes with what else is held, with a range and with weights', () => {
    const strain = Array.from({ length: 30 }, (_, i) => 0.002 + 0.006 * i);
    const stress = strain.map((e, i) => truth.stress(e) + Math.sin(9 * i));
    const options = { from: 0.01, to: 0.15, weights: strain.map((_, i) => 1 + i), bounds: { rate: [1, 100] } } as const;
    const one = fitVoce({ strain, stress }, { ...options, initialStress: 240, fixed: { saturationStress: 520 } });
    expect(one).toEqual(fitVoce({ strain, stress }, { ...options, fixed: { initialStress: 240, saturationStress: 520 } }));
    expect(required(one)).toMatchObject({
      initialStress: 240,
      saturationStress: 520,
      points: strain.filter((e) => e >= 0.01 && e <= 0.15).length,
    });
  });
});

describe('held parameters that leave no hardening', () => {
  const strain = [0.01, 0.03, 0.06, 0.1, 0.15];
  const flow = { strain, stress: [300, 372, 430, 465, 488] };
  test.each([
    ['Hollomon, K 0', fitHollomon(flow, { fixed: { strengthCoefficient: 0 } })],
    ['Hollomon, n 0', fitHollomon(flow, { fixed: { exponent: 0 } })],
    ['Ludwik, K 0', fitLudwik(flow, { fixed: { strengthCoefficient: 0 } })],
    ['Swift, K 0', fitSwift(flow, { fixed: { strengthCoefficient: 0 } })],
    ['Swift, n 0', fitSwift(flow, { fixed: { exponent: 0 } })],
    ['Voce, both stresses the same', fitVoce(flow, { fixed: { saturationStress: 400, initialStress: 400 } })],
    ['Hockett-Sherby, both stresses the same', fitHockettSherby(flow, { fixed: { saturationStress: 400, initialStress: 400 } })],
  ])('%s', (_, outcome) => {
    expect(outcome).toMatchObject({ ok: false, reason: 'no-hardening' });
  });

  test.each([
    ['Ludwik, n 0', fitLudwik(flow, { fixed: { exponent: 0 } })],
    ['Voce, rate 0', fitVoce(flow, { fixed: { rate: 0 } })],
    ['Hockett-Sherby, rate 0', fitHockettSherby(flow, { fixed: { rate: 0 } })],
  ])('%s: two stresses that only act together', (_, outcome) => {
    expect(outcome).toMatchObject({ ok: false, reason: 'undetermined' });
  });
});

describe('aicc', () => {
  test('the correction for few samples begins where its denominator is above 0', () => {
    // 2 parameters and the scatter: k = 3, 2k(k + 1) = 24
    expect(aicc(8, 5, 2, 300)).toBeCloseTo(5 * Math.log(8 / 5) + 6 + 24, 12);
    expect(aicc(8, 4, 2, 300)).toBeCloseTo(4 * Math.log(2) + 6, 12);
    expect(aicc(8, 3, 2, 300)).toBeCloseTo(3 * Math.log(8 / 3) + 6, 12);
  });
  test('residuals of nothing count as the rounding of the stress, each', () => {
    expect(aicc(0, 10, 2, 300)).toBeCloseTo(20 * Math.log(300 * 2 ** -52) + 6 + 4, 9);
  });
});

describe('compareLaws by its definitions', () => {
  const { normal } = seeded(12);
  const law = swift({ strengthCoefficient: 640, prestrain: 0.01, exponent: 0.21 });
  const strain = Array.from({ length: 40 }, (_, i) => 0.002 + 0.005 * i);
  const flow = { strain, stress: strain.map((e) => law.stress(e) + 2 * normal()) };
  const strains = [0.3, 0.9];
  const { ranked, spread, strains: kept } = compareLaws(flow, { strains });

  test('each law is its own fit, with its parameters by name and the law made of them', () => {
    const fits: Readonly<Record<string, Fit>> = Object.fromEntries(laws.map(({ name, fit }) => [name, fit]));
    expect(ranked).toHaveLength(5);
    for (const { name, parameters, fit, law: made, extrapolated } of ranked) {
      const { truth, stress } = laws.find((one) => one.name === name)!;
      const { ok, ...own } = required(fits[name]!(flow));
      expect(ok).toBe(true);
      expect({ ...parameters, ...fit }).toEqual(own);
      expect(Object.keys(parameters)).toEqual(Object.keys(truth));
      expect(made.name).toBe(name);
      strains.forEach((e, k) => {
        expect(extrapolated[k]! / stress(e, parameters)).toBeCloseTo(1, 12);
      });
    }
  });

  test('differences from the lowest AICc, weights exp(−Δ/2) of their sum, best first', () => {
    const lowest = ranked[0]!.fit.aicc;
    const belief = ranked.map(({ fit }) => Math.exp((lowest - fit.aicc) / 2));
    const sum = belief.reduce((a, b) => a + b, 0);
    ranked.forEach(({ difference, weight, fit }, k) => {
      expect(difference).toBeCloseTo(fit.aicc - lowest, 12);
      expect(weight).toBeCloseTo(belief[k]! / sum, 12);
    });
    expect(ranked.map(({ difference }) => difference)).toEqual(ranked.map(({ difference }) => difference).sort((a, b) => a - b));
    expect(ranked[4]!.difference).toBeGreaterThan(0.1);
  });

  test('weights of a quiet curve, whose AICc lie far below 0, add up to one as well', () => {
    const quiet = compareLaws({ strain, stress: strain.map((e) => law.stress(e) + 1e-7 * normal()) });
    expect(quiet.ranked[0]!.fit.aicc).toBeLessThan(-1000);
    expect(quiet.ranked.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(quiet.failed).toEqual([]);
  });

  test('spread is the highest less the lowest stress over their mean', () => {
    expect([...kept]).toEqual(strains);
    strains.forEach((_, k) => {
      const values = ranked.map(({ extrapolated }) => extrapolated[k]!).sort((a, b) => a - b);
      expect(spread[k]).toBeCloseTo((values[4]! - values[0]!) / (values.reduce((a, b) => a + b, 0) / 5), 12);
    });
  });

  test('one law alone has all the weight and no spread; the range is that of its fit', () => {
    const alone = compareLaws(flow, { laws: ['Voce'], to: 0.1 });
    expect(alone.ranked).toMatchObject([{ name: 'Voce', difference: 0, weight: 1 }]);
    expect([...alone.spread]).toEqual([0, 0, 0, 0]);
    expect(alone.ranked[0]!.fit.points).toBe(strain.filter((e) => e <= 0.1).length);
  });

  test('no law at all on two samples: each says why', () => {
    const none = compareLaws({ strain: [0.01, 0.02], stress: [300, 320] });
    expect(none.ranked).toEqual([]);
    expect(none.failed.map(({ name, reason }) => `${name}: ${reason}`)).toEqual(laws.map(({ name }) => `${name}: too-few-points`));
    expect(none.failed[0]!.message).toBe('2 samples lie in the range; 3 are needed');
    expect([...none.spread]).toEqual([0, 0, 0, 0]);
  });

  test('the strains that were given are kept as a copy', () => {
    const given = Float64Array.from([0.5]);
    const made = compareLaws(flow, { laws: ['Hollomon'], strains: given });
    given[0] = 9;
    expect([...made.strains]).toEqual([0.5]);
  });
});

describe('fitSwiftVoce by its definitions', () => {
  const { normal } = seeded(13);
  const one = swift({ strengthCoefficient: 640, prestrain: 0.004, exponent: 0.21 });
  const other = voce({ saturationStress: 520, initialStress: 240, rate: 14 });
  const curveOf = (n: number, noise = 0.5) => {
    const strain = Array.from({ length: n }, (_, i) => 0.002 + (0.16 * i) / (n - 1));
    return { strain, stress: strain.map((e) => 0.5 * (one.stress(e) + other.stress(e)) + noise * normal()) };
  };

  test.each([7, 8, 40])('%d samples: the weight of least squares in closed form, and its error by the scatter', (n) => {
    const { strain, stress } = curveOf(n);
    const { swift: s, voce: v, weight, standardError, residualSumOfSquares, law } = required(fitSwiftVoce({ strain, stress }));
    const [a, b] = [
      swift({ ...pick(s, ['strengthCoefficient', 'prestrain', 'exponent']) }),
      voce({ ...pick(v, ['saturationStress', 'initialStress', 'rate']) }),
    ];
    const apart = strain.map((e) => a.stress(e) - b.stress(e));
    const square = apart.reduce((sum, d) => sum + d * d, 0);
    const free = apart.reduce((sum, d, i) => sum + d * (stress[i]! - b.stress(strain[i]!)), 0) / square;
    expect(weight).toBeCloseTo(Math.min(1, Math.max(0, free)), 9);
    const rest = strain.reduce((sum, e, i) => sum + (stress[i]! - weight * a.stress(e) - (1 - weight) * b.stress(e)) ** 2, 0);
    expect(residualSumOfSquares).toBeCloseTo(rest, 9);
    // three parameters of each law and the weight; at least one sample is left over
    expect(standardError / Math.sqrt(rest / Math.max(1, n - 7) / square)).toBeCloseTo(1, 9);
    expect(law.stress(0.3)).toBeCloseTo(weight * a.stress(0.3) + (1 - weight) * b.stress(0.3), 9);
  });

  test('three strains: both laws go through all of them, and leave the weight open', () => {
    const strain = [0.02, 0.02, 0.08, 0.08, 0.2, 0.2];
    expect(fitSwiftVoce({ strain, stress: strain.map(one.stress) })).toEqual({
      ok: false,
      reason: 'undetermined',
      message: 'both laws are the same on this curve: any weight would do',
    });
  });

  test('a range is that of both laws and of the weight', () => {
    const { strain, stress } = curveOf(40);
    const range = { from: strain[5]!, to: strain[30]! };
    const cut = required(fitSwiftVoce({ strain, stress }, range));
    const alone = required(fitSwiftVoce({ strain: strain.slice(5, 31), stress: stress.slice(5, 31) }));
    for (const field of ['weight', 'standardError', 'residualSumOfSquares', 'swift', 'voce'] as const)
      expect(cut[field]).toEqual(alone[field]);
    expect(fitSwiftVoce({ strain, stress }, { uniformStrain: 0.1 })).toMatchObject({ ok: false, reason: 'beyond-maximum' });
  });
});

/** Some fields of a fit. */
function pick<Name extends string>(fit: Readonly<Record<Name, number>>, names: readonly Name[]): Record<Name, number> {
  return Object.fromEntries(names.map((name) => [name, fit[name]])) as Record<Name, number>;
}

describe('fitHollomon by the line through the logarithms', () => {
  const strain = [0.02, 0.05, 0.1, 0.15, 0.2];
  const stress = [330, 385, 440, 480, 505];

  test('errors and correlation are those of slope and intercept of a line, in closed form', () => {
    const fit = required(fitHollomon({ strain, stress }, { method: 'log-log' }));
    const [x, y] = [strain.map(Math.log), stress.map(Math.log)];
    const sum = (column: readonly number[]) => column.reduce((a, b) => a + b, 0);
    const [sx, sxx] = [sum(x), sum(x.map((one) => one * one))];
    const determinant = 5 * sxx - sx * sx;
    const n = (5 * sum(x.map((one, i) => one * y[i]!)) - sx * sum(y)) / determinant;
    const lnK = (sum(y) - n * sx) / 5;
    const variance = sum(x.map((one, i) => (y[i]! - lnK - n * one) ** 2)) / 3;
    const K = Math.exp(lnK);
    expect(fit.exponent).toBeCloseTo(n, 12);
    expect(fit.strengthCoefficient / K).toBeCloseTo(1, 12);
    expect(fit.standardErrors.exponent / Math.sqrt((variance * 5) / determinant)).toBeCloseTo(1, 9);
    expect(fit.standardErrors.strengthCoefficient / (K * Math.sqrt((variance * sxx) / determinant))).toBeCloseTo(1, 9);
    expect(fit.correlations).toEqual([
      [1, expect.closeTo(-sx / Math.sqrt(5 * sxx), 12)],
      [expect.closeTo(-sx / Math.sqrt(5 * sxx), 12), 1],
    ]);
    const rest = sum(strain.map((e, i) => (stress[i]! - K * e ** n) ** 2));
    expect(fit.residualSumOfSquares).toBeCloseTo(rest, 9);
    expect(fit.aicc).toBeCloseTo(5 * Math.log(rest / 5) + 6 + 24, 9);
    expect(fit).toMatchObject({ points: 5, range: [0.02, 0.2], converged: true, iterations: 0, tradeOffs: [] });
  });

  test('over a short range K and n trade off', () => {
    const short = { strain: [0.1, 0.11, 0.12, 0.13], stress: [440, 448, 455, 463] };
    expect(required(fitHollomon(short, { method: 'log-log' })).tradeOffs).toEqual([['strengthCoefficient', 'exponent']]);
  });

  test('three samples are enough, the uniform strain is in the range, and from and to cut it', () => {
    const three = { strain: strain.slice(0, 3), stress: stress.slice(0, 3) };
    expect(fitHollomon(three, { method: 'log-log', uniformStrain: 0.1 }).ok).toBe(true);
    expect(fitHollomon(three, { method: 'log-log', uniformStrain: 0.1 * (1 - 1e-8) })).toMatchObject({ reason: 'beyond-maximum' });
    const cut = fitHollomon({ strain, stress }, { method: 'log-log', from: 0.05, to: 0.15 });
    expect(cut).toMatchObject({ points: 3, range: [0.05, 0.15] });
  });

  test('an exponent that is rounding only is no hardening', () => {
    const law = hollomon({ strengthCoefficient: 400, exponent: 1e-10 });
    expect(fitHollomon({ strain, stress: strain.map(law.stress) }, { method: 'log-log' }).ok).toBe(true);
    expect(fitHollomon({ strain, stress: strain.map(() => 400) }, { method: 'log-log' })).toMatchObject({ reason: 'no-hardening' });
  });
});
