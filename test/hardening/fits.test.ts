import { describe, expect, test } from 'vitest';
import {
  compareLaws,
  fitHockettSherby,
  fitHollomon,
  fitLudwik,
  fitSwift,
  fitSwiftVoce,
  fitVoce,
  hockettSherby,
  hollomon,
  ludwik,
  required,
  swift,
  voce,
  type FitOptions,
  type FitReason,
  type FitSummary,
  type HardeningLaw,
  type Outcome,
} from '../../src/index.js';
import { seeded } from '../support/random.js';
import { thrown } from '../support/thrown.js';

type Flow = { strain: Float64Array; stress: Float64Array };
interface Kind {
  readonly name: string;
  readonly draw: (uniform: () => number) => Record<string, number>;
  readonly law: (parameters: never) => HardeningLaw;
  readonly fit: (flow: Flow, options?: FitOptions<never>) => Outcome<FitSummary<string>, FitReason>;
}
/** The parameters of a fit stand beside its summary, by name. */
type Found = FitSummary<string> & Record<string, number>;
function found(outcome: Outcome<FitSummary<string>, FitReason>): Found {
  return required(outcome) as unknown as Found;
}

const kinds: readonly Kind[] = [
  {
    name: 'Hollomon',
    draw: (u) => ({ strengthCoefficient: 400 + 800 * u(), exponent: 0.05 + 0.4 * u() }),
    law: hollomon,
    fit: fitHollomon,
  },
  {
    name: 'Ludwik',
    draw: (u) => ({ yieldStress: 150 + 300 * u(), strengthCoefficient: 300 + 500 * u(), exponent: 0.3 + 0.5 * u() }),
    law: ludwik,
    fit: fitLudwik,
  },
  {
    name: 'Swift',
    draw: (u) => ({ strengthCoefficient: 400 + 800 * u(), prestrain: 0.002 + 0.02 * u(), exponent: 0.1 + 0.3 * u() }),
    law: swift,
    fit: fitSwift,
  },
  {
    name: 'Voce',
    draw: (u) => ({ saturationStress: 400 + 300 * u(), initialStress: 150 + 150 * u(), rate: 5 + 20 * u() }),
    law: voce,
    fit: fitVoce,
  },
  {
    name: 'Hockett-Sherby',
    draw: (u) => ({ saturationStress: 450 + 300 * u(), initialStress: 150 + 150 * u(), rate: 3 + 6 * u(), power: 0.6 + 0.35 * u() }),
    law: hockettSherby,
    fit: fitHockettSherby,
  },
];

/** A flow curve of a law from 0.2 % plastic strain to its neck, with noise as a share of the stress. */
function flowOf(law: HardeningLaw, n: number, noise: number, normal: () => number): Flow {
  const to = Math.max(0.05, law.neckingStrain);
  const strain = Float64Array.from({ length: n }, (_, i) => 0.002 + ((to - 0.002) * i) / (n - 1));
  return { strain, stress: strain.map((e) => law.stress(e) * (1 + noise * normal())) };
}

const restOf = (law: HardeningLaw, { strain, stress }: Flow): number =>
  strain.reduce((sum, e, i) => sum + (stress[i]! - law.stress(e)) ** 2, 0);

describe.each(kinds)('$name', ({ draw, law, fit }) => {
  test('comes back from its own curve without noise', () => {
    const { uniform, normal } = seeded(1);
    for (let k = 0; k < 10; k += 1) {
      const truth = draw(uniform);
      const end = found(fit(flowOf(law(truth as never), 300, 0, normal)));
      for (const [name, value] of Object.entries(truth)) expect(end[name]! / value, name).toBeCloseTo(1, 6);
      expect(end.converged).toBe(true);
      expect(end.rSquared).toBeCloseTo(1, 9);
    }
  });

  test.each([0.001, 0.005])('noise %d: the sum is at least as low as that of the truth, and an optimum', (noise) => {
    const { uniform, normal } = seeded(2);
    for (let k = 0; k < 40; k += 1) {
      const truth = law(draw(uniform) as never);
      const flow = flowOf(truth, 250, noise, normal);
      const end = found(fit(flow));
      expect(end.converged).toBe(true);
      expect(end.residualSumOfSquares).toBeLessThanOrEqual(restOf(truth, flow) * (1 + 1e-12));
    }
  });

  test('a long curve ends at the same optimum as its samples one by one', () => {
    const { uniform, normal } = seeded(3);
    const truth = draw(uniform);
    const flow = flowOf(law(truth as never), 20_000, 0.002, normal);
    const end = found(fit(flow));
    expect(end.converged).toBe(true);
    // all true parameters lie within five standard errors
    for (const [name, value] of Object.entries(truth))
      expect(Math.abs(end[name]! - value), name).toBeLessThan(5 * end.standardErrors[name]!);
  });

  test('a fit is handed to its law as it is', () => {
    const { uniform, normal } = seeded(5);
    const truth = law(draw(uniform) as never);
    const fitted = law(fit(flowOf(truth, 200, 0, normal)) as never);
    for (const e of [0.01, 0.1, 0.5]) expect(fitted.stress(e) / truth.stress(e)).toBeCloseTo(1, 6);
  });
});

test('a fit is not handed to another law, whose parameters are among its own', () => {
  const { normal } = seeded(6);
  const fit = required(fitSwift(flowOf(swift({ strengthCoefficient: 700, prestrain: 0.01, exponent: 0.2 }), 100, 0, normal)));
  expect(thrown(() => hollomon(fit))).toMatchObject({ path: 'parameters.prestrain', code: 'unknown-option' });
  expect(thrown(() => swift({ ...fit, standardErrors: 1 } as never))).toMatchObject({ path: 'parameters', code: 'wrong-type' });
});

describe('options', () => {
  const { normal } = seeded(4);
  const truth = voce({ saturationStress: 500, initialStress: 200, rate: 12 });
  const flow = flowOf(truth, 200, 0.002, normal);

  test('a parameter that is held stays, without error, and costs no freedom', () => {
    const held = required(fitVoce(flow, { initialStress: 200 }));
    expect(held.initialStress).toBe(200);
    expect(held.standardErrors.initialStress).toBe(0);
    expect(required(fitVoce(flow, { fixed: { initialStress: 200 } })).rate).toBe(held.rate);
    const free = required(fitVoce(flow));
    expect(held.residualSumOfSquares).toBeGreaterThanOrEqual(free.residualSumOfSquares * (1 - 1e-12));
    expect(held.aicc).not.toBe(free.aicc);
  });

  test('bounds hold, and a parameter on its bound has no error', () => {
    const bounded = required(fitVoce(flow, { bounds: { rate: [1, 10] } }));
    expect(bounded.rate).toBe(10);
    expect(bounded.standardErrors.rate).toBe(0);
    expect(required(fitVoce(flow, { bounds: { rate: [1, 100] } })).rate).toBeCloseTo(required(fitVoce(flow)).rate, 9);
  });

  test('weights: a sample of weight k counts as k samples', () => {
    const strain = [0.01, 0.03, 0.06, 0.1, 0.15];
    const stress = [300, 372, 430, 465, 488];
    const doubled = required(fitSwift({ strain: [...strain, 0.15], stress: [...stress, 488] }));
    const weighted = required(fitSwift({ strain, stress }, { weights: [1, 1, 1, 1, 2] }));
    expect(weighted.exponent).toBeCloseTo(doubled.exponent, 9);
    expect(weighted.strengthCoefficient).toBeCloseTo(doubled.strengthCoefficient, 6);
  });

  test('trade-offs are named', () => {
    const { strain, stress } = flowOf(hollomon({ strengthCoefficient: 700, exponent: 0.2 }), 50, 0.001, normal);
    const short = { strain: strain.subarray(40), stress: stress.subarray(40) };
    expect(required(fitHollomon(short)).tradeOffs).toEqual([['strengthCoefficient', 'exponent']]);
  });

  test.each([
    ['fewer samples than parameters and one', { strain: [0.01, 0.02, 0.03], stress: [300, 320, 335] }, {}, 'too-few-points'],
    ['strain that falls', { strain: [0.2, 0.15, 0.1, 0.05, 0.01], stress: [300, 310, 320, 330, 340] }, {}, 'not-increasing'],
    ['a stress that stays', { strain: [0.01, 0.02, 0.03, 0.05, 0.1], stress: [300, 300, 300, 300, 300] }, {}, 'no-hardening'],
    ['a stress that falls', { strain: [0.01, 0.02, 0.03, 0.05, 0.1], stress: [340, 330, 320, 310, 300] }, {}, 'no-hardening'],
    [
      'a range beyond the maximum',
      { strain: [0.01, 0.02, 0.03, 0.05, 0.1], stress: [300, 320, 335, 350, 380] },
      { uniformStrain: 0.08 },
      'beyond-maximum',
    ],
  ] as const)('%s', (_, given, options, reason) => {
    expect(fitVoce(given, options)).toMatchObject({ ok: false, reason });
  });

  test('the line through logarithms takes no weights, and keeps to the uniform strain', () => {
    expect(thrown(() => fitHollomon(flow, { method: 'log-log', weights: flow.strain })).path).toBe('options.weights');
    expect(fitHollomon(flow, { method: 'log-log', uniformStrain: 0.05 })).toMatchObject({ ok: false, reason: 'beyond-maximum' });
  });

  test('huge and tiny stresses do not matter', () => {
    const big = required(fitVoce({ strain: flow.strain, stress: flow.stress.map((s) => s * 1e95) }));
    const small = required(fitVoce({ strain: flow.strain, stress: flow.stress.map((s) => s * 1e-95) }));
    expect(big.rate).toBeCloseTo(small.rate, 6);
    expect(big.converged && small.converged).toBe(true);
  });

  test.each([
    [{ fixed: { slope: 1 } }, 'options.fixed.slope'],
    [{ fixed: { rate: -1 } }, 'options.fixed.rate'],
    [{ bounds: { rate: [2, 1] } }, 'options.bounds.rate'],
    [{ bounds: { rate: [-5, -1] } }, 'options.bounds.rate'],
    [{ weights: [1, 2] }, 'options.weights'],
    [{ weights: flow.strain.map(() => 0) }, 'options.weights[0]'],
    [{ initialStress: NaN }, 'options.initialStress'],
    [{ uniformStrain: 0 }, 'options.uniformStrain'],
  ])('%j is refused at %s', (options, path) => {
    expect(thrown(() => fitVoce(flow, options as never)).path).toBe(path);
  });
});

describe('compareLaws', () => {
  test.each(kinds)('$name is found behind its own curve, or a law that holds it as a special case', ({ name, draw, law }) => {
    const { uniform, normal } = seeded(8);
    const special: Readonly<Record<string, readonly string[]>> = { Hollomon: ['Swift', 'Ludwik'], Voce: ['Hockett-Sherby'] };
    for (let k = 0; k < 5; k += 1) {
      const { ranked } = compareLaws(flowOf(law(draw(uniform) as never), 400, 0.0005, normal));
      const own = ranked.find((one) => one.name === name)!;
      expect([name, ...(special[name] ?? [])]).toContain(ranked[0]!.name);
      expect(own.difference).toBeLessThan(10);
    }
  });

  test('weights add up to one, the rank is by AICc, and the spread grows with the extrapolation', () => {
    const { normal } = seeded(9);
    const { ranked, strains, spread, failed } = compareLaws(
      flowOf(voce({ saturationStress: 500, initialStress: 200, rate: 12 }), 200, 0.002, normal),
    );
    expect(ranked.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(ranked.map(({ fit }) => fit.aicc)).toEqual(ranked.map(({ fit }) => fit.aicc).sort((a, b) => a - b));
    expect([...strains]).toEqual([0.1, 0.2, 0.5, 1]);
    expect(spread[3]).toBeGreaterThan(spread[1]!);
    expect(failed).toEqual([]);
  });

  test('a law that cannot be fitted is told, the others stay', () => {
    const { ranked, failed } = compareLaws(
      { strain: [0.01, 0.03, 0.06, 0.1], stress: [300, 372, 430, 465] },
      { laws: ['Hollomon', 'Hockett-Sherby'] },
    );
    expect(ranked.map(({ name }) => name)).toEqual(['Hollomon']);
    expect(failed).toMatchObject([{ name: 'Hockett-Sherby', reason: 'too-few-points' }]);
    expect(thrown(() => compareLaws({ strain: [1], stress: [1] }, { laws: ['Gauss' as never] })).path).toBe('options.laws[0]');
  });
});

describe('fitSwiftVoce', () => {
  const one = swift({ strengthCoefficient: 640, prestrain: 0.004, exponent: 0.21 });
  const other = voce({ saturationStress: 520, initialStress: 240, rate: 14 });
  const strain = Float64Array.from({ length: 200 }, (_, i) => 0.002 + 0.0008 * i);

  test('a curve of either law alone has weight 1 or 0', () => {
    expect(required(fitSwiftVoce({ strain, stress: strain.map(one.stress) })).weight).toBeCloseTo(1, 6);
    expect(required(fitSwiftVoce({ strain, stress: strain.map(other.stress) })).weight).toBeCloseTo(0, 6);
  });

  test('between them the mixture follows a mixed curve better than either, and no other weight does better', () => {
    const stress = strain.map((e) => 0.4 * one.stress(e) + 0.6 * other.stress(e));
    const fit = required(fitSwiftVoce({ strain, stress }));
    expect(fit.residualSumOfSquares).toBeLessThan(fit.swift.residualSumOfSquares);
    expect(fit.residualSumOfSquares).toBeLessThan(fit.voce.residualSumOfSquares);
    const restAt = (weight: number) => {
      const [a, b] = [
        swift(parametersOf(fit.swift, ['strengthCoefficient', 'prestrain', 'exponent'])),
        voce(parametersOf(fit.voce, ['saturationStress', 'initialStress', 'rate'])),
      ];
      return strain.reduce((sum, e, i) => sum + (stress[i]! - weight * a.stress(e) - (1 - weight) * b.stress(e)) ** 2, 0);
    };
    expect(restAt(fit.weight)).toBeCloseTo(fit.residualSumOfSquares, 9);
    expect(restAt(fit.weight + 0.01)).toBeGreaterThan(fit.residualSumOfSquares);
    expect(restAt(fit.weight - 0.01)).toBeGreaterThan(fit.residualSumOfSquares);
    expect(fit.law.stress(0.1)).toBeCloseTo(stress[122]!, -1);
  });

  test('what one of the laws cannot fit is told', () => {
    expect(fitSwiftVoce({ strain: [0.01, 0.02], stress: [300, 320] })).toMatchObject({ ok: false, reason: 'too-few-points' });
    expect(thrown(() => fitSwiftVoce({ strain, stress: strain }, { weight: 0.5 } as never)).path).toBe('options.weight');
  });
});

/** Some parameters of a fit, as its law takes them. */
function parametersOf<Name extends string>(fit: Readonly<Record<Name, number>>, names: readonly Name[]): Record<Name, number> {
  return Object.fromEntries(names.map((name) => [name, fit[name]])) as Record<Name, number>;
}
