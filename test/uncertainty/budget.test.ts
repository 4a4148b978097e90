import { describe, expect, test } from 'vitest';
import {
  areaBudget,
  elongationBudget,
  forceBudget,
  hardeningExponentBudget,
  hexagon,
  modulusBudget,
  proofStrengthBudget,
  rectangular,
  reductionBudget,
  round,
  sectionFromArea,
  sectionFromMass,
  square,
  strengthCoefficientBudget,
  tensileStrengthBudget,
  tube,
  tubeStrip,
  uncertaintyBudget,
  type UncertainQuantity,
  type UncertaintySource,
} from '../../src/index.js';
import { refusal } from '../support/thrown.js';

const one = (uncertainty: UncertaintySource | readonly UncertaintySource[]) =>
  uncertaintyBudget(({ x }) => x, { x: { value: 10, uncertainty } });

describe('sources', () => {
  test.each<[string, UncertaintySource, number, number | undefined, 'A' | 'B']>([
    ['a number', 0.2, 0.2, undefined, 'B'],
    ['readings: s/√n', { readings: [9, 10, 11] }, 1 / Math.sqrt(3), 2, 'A'],
    ['s of n', { standardDeviation: 0.6, count: 9 }, 0.2, 8, 'A'],
    ['s of a pool', { standardDeviation: 0.6, count: 1, degreesOfFreedom: 30 }, 0.6, 30, 'A'],
    ['rectangular', { halfWidth: 3 }, Math.sqrt(3), undefined, 'B'],
    ['triangular', { halfWidth: 6, distribution: 'triangular' }, Math.sqrt(6), undefined, 'B'],
    ['U-shaped', { halfWidth: 2, distribution: 'arcsine' }, Math.SQRT2, undefined, 'B'],
    ['normal limits', { halfWidth: 3, distribution: 'normal', divisor: 3 }, 1, undefined, 'B'],
    ['trapezoidal, as triangular', { halfWidth: 6, distribution: 'trapezoidal', top: 0 }, Math.sqrt(6), undefined, 'B'],
    ['trapezoidal, as rectangular', { halfWidth: 3, distribution: 'trapezoidal', top: 1 }, Math.sqrt(3), undefined, 'B'],
    ['a certificate', { expanded: 0.4 }, 0.2, undefined, 'B'],
    ['a certificate of k 2.5', { expanded: 0.5, coverageFactor: 2.5, degreesOfFreedom: 8 }, 0.2, 8, 'B'],
    ['a standard uncertainty', { standardUncertainty: 0.2, degreesOfFreedom: Infinity, type: 'A' }, 0.2, undefined, 'A'],
  ])('%s', (_, source, u, freedom, type) => {
    const [line] = one(source).lines;
    expect(line?.standardUncertainty).toBeCloseTo(u, 12);
    expect(line?.degreesOfFreedom).toBe(freedom);
    expect(line?.type).toBe(type);
  });

  test('the mean of readings is the estimate; an explicit value goes before it', () => {
    expect(uncertaintyBudget(({ x }) => x, { x: { uncertainty: { readings: [1, 2, 6] } } }).value).toBe(3);
    expect(uncertaintyBudget(({ x }) => x, { x: { value: 5, uncertainty: { readings: [1, 2, 6] } } }).value).toBe(5);
  });

  test('several sources of one input add in quadrature, each with its line; names and units are carried', () => {
    const budget = uncertaintyBudget(({ x }) => 2 * x, {
      x: {
        value: 1,
        unit: 'mm',
        uncertainty: [
          { standardUncertainty: 3, name: 'a' },
          { standardUncertainty: 4, name: 'b' },
        ],
      },
    });
    expect(budget.standardUncertainty).toBeCloseTo(10, 9);
    expect(budget.lines.map(({ source, unit, share }) => [source, unit, Number(share.toFixed(9))])).toEqual([
      ['a', 'mm', 0.36],
      ['b', 'mm', 0.64],
    ]);
  });

  test('a number is exact; a budget and a quantity serve as inputs', () => {
    const inner = one({ standardUncertainty: 0.3, degreesOfFreedom: 7 });
    const quantity: UncertainQuantity = { value: 2, standardUncertainty: 0.4 };
    const budget = uncertaintyBudget(({ a, b, c }) => a + b + c, { a: inner, b: quantity, c: 5 });
    expect(budget.value).toBe(17);
    expect(budget.standardUncertainty).toBeCloseTo(0.5, 9);
    expect(budget.lines[0]?.degreesOfFreedom).toBeCloseTo(7, 12);
  });
});

describe('combination', () => {
  test('sensitivities of smooth models, to 1e-8 of the derivative', () => {
    const cases: readonly [(x: number) => number, number, number, number][] = [
      [Math.exp, 2, 0.1, Math.exp(2)],
      [Math.sqrt, 9, 0.5, 1 / 6],
      [(x) => x ** 3, 0, 0.2, 0],
      [(x) => 1 / x, 1e-6, 1e-8, -1e12],
      [Math.sin, 0.3, 1e-9, Math.cos(0.3)],
    ];
    for (const [f, value, uncertainty, derivative] of cases) {
      const { sensitivity } = uncertaintyBudget(({ x }) => f(x), { x: { value, uncertainty } }).lines[0]!;
      expect(Math.abs(sensitivity - derivative)).toBeLessThan(1e-6 * Math.max(1e-3, Math.abs(derivative)));
    }
  });

  test('given sensitivities are used instead', () => {
    const budget = uncertaintyBudget(({ x }) => x, { x: { value: 1, uncertainty: 1 } }, { sensitivities: { x: 7 } });
    expect(budget.standardUncertainty).toBe(7);
  });

  test('correlation of 1 adds, of −1 takes away; half of it counts for each side', () => {
    const inputs = { a: { value: 1, uncertainty: 3 }, b: { value: 1, uncertainty: 4 } };
    const sum = (coefficient: number) =>
      uncertaintyBudget(({ a, b }) => a + b, inputs, { correlations: [{ between: ['a', 'b'], coefficient }] });
    expect(sum(1).standardUncertainty).toBeCloseTo(7, 9);
    expect(sum(-1).standardUncertainty).toBeCloseTo(1, 9);
    expect(sum(0.5).lines.reduce((all, { share }) => all + share, 0)).toBeCloseTo(1, 9);
  });

  test('toHalve: √(1 − 0.75/share) for one that can, absent for one that cannot; halving it halves the result', () => {
    const budget = uncertaintyBudget(({ a, b }) => a + b, { a: { value: 1, uncertainty: 3 }, b: { value: 1, uncertainty: 1 } });
    const { toHalve, share } = budget.lines[0]!;
    expect(toHalve).toBeCloseTo(Math.sqrt(1 - 0.75 / share), 9);
    expect(budget.lines[1]).not.toHaveProperty('toHalve');
    const better = uncertaintyBudget(({ a, b }) => a + b, { a: { value: 1, uncertainty: 3 * toHalve! }, b: { value: 1, uncertainty: 1 } });
    expect(better.standardUncertainty).toBeCloseTo(budget.standardUncertainty / 2, 9);
  });

  test.each([
    [3, 2, -0.95],
    [3, 1, 0.5],
    [3, 1, -0.5],
    [2, 2, -0.5],
    [4, 1, -0.9],
    [1, 4, -0.9],
  ])('toHalve of %f beside %f, correlated by %f: halving it halves the result, and a smaller change does not', (u, other, coefficient) => {
    const sum = (factor: number, sign = 1) =>
      uncertaintyBudget(
        ({ a, b }) => sign * a + b,
        {
          a: { value: 1, uncertainty: [{ standardUncertainty: factor * u * 0.8 }, { standardUncertainty: u * 0.6 }] },
          b: { value: 1, uncertainty: other },
        },
        { correlations: [{ between: ['a', 'b'], coefficient: sign * coefficient }] },
      );
    // a falling model with the correlation turned is the same variance
    for (const sign of [1, -1]) {
      const { lines, standardUncertainty } = sum(1, sign);
      // every thousandth: the first, from 1 on, at which it is halved
      const halved = Array.from({ length: 1001 }, (_, i) => 1 - i / 1000).find(
        (f) => sum(f, sign).standardUncertainty <= standardUncertainty / 2,
      );
      if (halved === undefined) expect(lines[0]).not.toHaveProperty('toHalve');
      else expect(Math.abs(lines[0]!.toHalve! - halved)).toBeLessThan(0.0011);
    }
  });

  test('toHalve of 3 beside 2, correlated by −0.95: 9 f² − 11.4 f + 4 is a quarter of 1.6 at two thirds', () => {
    const budget = uncertaintyBudget(
      ({ a, b }) => a + b,
      { a: { value: 1, uncertainty: 3 }, b: { value: 1, uncertainty: 2 } },
      { correlations: [{ between: ['a', 'b'], coefficient: -0.95 }] },
    );
    expect(budget.lines[0]!.toHalve).toBeCloseTo(2 / 3, 9);
  });

  test('a scale, a length or an area: told from a tenth of its value, refused from all of it', () => {
    const told = ({ findings }: { readonly findings: readonly { readonly code: string }[] }) =>
      findings.some(({ code }) => code === 'uncertainty-large');
    expect(told(forceBudget({ force: 1000, accuracy: 1 }))).toBe(true);
    expect(told(forceBudget({ force: 1000, certificate: { expanded: 0.24 } }))).toBe(true);
    expect(told(forceBudget({ force: 1000, class: 3 }))).toBe(false);
    expect(told(areaBudget(round({ diameter: 8 }), { diameter: 1 }))).toBe(true);
    expect(refusal(() => forceBudget({ force: 1000, accuracy: 2 }))).toBe('out-of-range doubt.accuracy');
    expect(refusal(() => areaBudget(round({ diameter: 8 }), { diameter: 8 }))).toBe('out-of-range dimensions.diameter');
    // what may be 0 by its nature has no share
    expect(told(uncertaintyBudget(({ x }) => x, { x: { value: 0.1, uncertainty: 1 } }))).toBe(false);
  });

  test('coverage: k 2 by default, 1.96 at 95 %, as asked for, t for few degrees of freedom', () => {
    const inputs = { x: { value: 1, uncertainty: 1 } };
    const f = ({ x }: { readonly x: number }) => x;
    expect(uncertaintyBudget(f, inputs).coverageFactor).toBeCloseTo(2, 9);
    expect(uncertaintyBudget(f, inputs, { coverage: 0.95 }).coverageFactor).toBeCloseTo(1.959964, 6);
    const asked = uncertaintyBudget(f, inputs, { coverageFactor: 3 });
    expect(asked.expandedUncertainty).toBe(3);
    expect(asked.coverage).toBeCloseTo(0.9973, 4);
    // t(0.975; 4) of tables
    expect(uncertaintyBudget(f, { x: { uncertainty: { readings: [1, 2, 3, 4, 5] } } }, { coverage: 0.95 }).coverageFactor).toBeCloseTo(
      2.7764,
      4,
    );
  });

  test('nothing uncertain: no dominant line, no infinity', () => {
    const budget = uncertaintyBudget(({ x }) => x - 1, { x: 1 });
    expect(budget).toMatchObject({ value: 0, standardUncertainty: 0, expandedUncertainty: 0 });
    for (const field of ['dominant', 'relativeStandardUncertainty', 'degreesOfFreedom']) expect(budget).not.toHaveProperty(field);
  });

  test('inputs are not changed', () => {
    const readings = Object.freeze([1, 2, 3]);
    const inputs = Object.freeze({ x: Object.freeze({ uncertainty: Object.freeze({ readings }) }) });
    expect(() => uncertaintyBudget(({ x }) => x, inputs)).not.toThrow();
  });
});

describe('findings', () => {
  const codes = (budget: ReturnType<typeof uncertaintyBudget>) => budget.findings.map(({ code }) => code);

  test('a bent model: budget-not-linear; at a maximum as well', () => {
    expect(codes(uncertaintyBudget(({ x }) => x ** 2, { x: { value: 1, uncertainty: 0.5 } }))).toContain('budget-not-linear');
    expect(codes(uncertaintyBudget(({ x }) => Math.cos(x), { x: { value: 0, uncertainty: 0.1 } }))).toContain('budget-not-linear');
    expect(codes(uncertaintyBudget(({ x }) => x ** 2, { x: { value: 1, uncertainty: 0.01 } }))).toEqual([]);
  });

  test('a linear model whose variance cancels is no bent one; a bent one is, cancelled or not', () => {
    const both = (value: number, uncertainty: number) => ({ a: { value, uncertainty }, b: { value, uncertainty } });
    const correlations = [{ between: ['a', 'b'] as const, coefficient: 1 }];
    for (const [value, u] of [
      [1, 0.1],
      [0.3, 0.1],
      [1e5, 0.7],
      [7, 1e-9],
      [0, 0.1],
    ] as const) {
      const budget = uncertaintyBudget(({ a, b }) => a - b, both(value, u), { correlations });
      expect(budget.standardUncertainty).toBeLessThan(1e-12 * u);
      expect(codes(budget)).toEqual([]);
    }
    expect(codes(uncertaintyBudget(({ a, b }) => a ** 2 - b, both(0.5, 0.1), { correlations }))).toContain('budget-not-linear');
  });

  test('one source above half of the variance: one-term-dominates, with its name', () => {
    const budget = uncertaintyBudget(({ a, b }) => a + b, {
      a: { value: 1, uncertainty: [{ standardUncertainty: 3, name: 'certificate' }, 0.1] },
      b: { value: 1, uncertainty: 1 },
    });
    expect(budget.findings[0]?.message).toBe('a (certificate) makes 89.91 % of the variance of the result.');
    expect(budget.dominant).toBe(0);
  });

  test('few readings: few-degrees-of-freedom', () => {
    expect(codes(one({ readings: [1, 2] }))).toEqual(['few-degrees-of-freedom']);
  });
});

describe('sections', () => {
  const relative = (section: Parameters<typeof areaBudget>[0], dimensions: Parameters<typeof areaBudget>[1]) =>
    areaBudget(section, dimensions).relativeStandardUncertainty!;

  test('every shape by its own formula', () => {
    expect(relative(round({ diameter: 10 }), { diameter: 0.01 })).toBeCloseTo(0.002, 9);
    expect(relative(rectangular({ width: 20, thickness: 2 }), { width: 0.02, thickness: 0.01 })).toBeCloseTo(Math.hypot(0.001, 0.005), 9);
    expect(relative(square({ side: 10 }), { side: 0.01 })).toBeCloseTo(0.002, 9);
    expect(relative(hexagon({ acrossFlats: 10 }), { acrossFlats: 0.01 })).toBeCloseTo(0.002, 9);
    expect(relative(tube({ outerDiameter: 20, wallThickness: 2 }), { outerDiameter: 0.018 })).toBeCloseTo(0.001, 9);
    expect(relative(sectionFromArea({ area: 50 }), { area: 0.1 })).toBeCloseTo(0.002, 9);
    expect(relative(sectionFromMass({ mass: 100, length: 200, density: 7.85 }), { mass: 0.1, length: 0.2 })).toBeCloseTo(
      Math.hypot(0.001, 0.001),
      9,
    );
    const strip = { width: 20, outerDiameter: 100, wallThickness: 4 };
    const byHand = (tubeStrip({ ...strip, width: 20.001 }).area - tubeStrip({ ...strip, width: 19.999 }).area) / 0.002;
    expect(areaBudget(tubeStrip(strip), { width: 1 }).lines[0]!.sensitivity).toBeCloseTo(byHand, 5);
  });

  test('of several readings the value stays the mean of the areas', () => {
    const section = rectangular({ width: [19, 21], thickness: [1.9, 2.1] });
    expect(areaBudget(section, { width: 0.1 }).value).toBeCloseTo(section.area, 12);
  });
});

describe('forces', () => {
  test('every part of a channel by its own divisor', () => {
    const share = (rest: object) => forceBudget({ force: 1000, ...rest }).relativeStandardUncertainty!;
    expect(share({ class: 1 })).toBeCloseTo(Math.hypot(0.01 / Math.sqrt(3), 0.005 / Math.sqrt(3)), 9);
    expect(share({ class: 1, accuracy: 0.004 })).toBeCloseTo(Math.hypot(0.004 / Math.sqrt(3), 0.005 / Math.sqrt(3)), 9);
    expect(share({ reversibility: 0.015 })).toBeCloseTo(0.015 / Math.sqrt(3), 9);
    expect(share({ resolution: 5 })).toBeCloseTo(5 / (2 * Math.sqrt(3) * 1000), 9);
    expect(share({ zero: 10 })).toBeCloseTo(10 / (Math.sqrt(3) * 1000), 9);
    expect(share({ certificate: { expanded: 0.006 } })).toBeCloseTo(0.003, 9);
  });
});

describe('refusals', () => {
  const f = ({ x }: { readonly x: number }) => x;
  const with_ = (source: object) => () => uncertaintyBudget(f, { x: { value: 1, uncertainty: source as UncertaintySource } });
  test.each<[string, () => unknown]>([
    ['wrong-type model', () => uncertaintyBudget(3 as never, { x: 1 })],
    ['not-finite model', () => uncertaintyBudget(() => NaN, { x: 1 })],
    ['not-finite model', () => uncertaintyBudget(({ x }) => Math.log(x), { x: { value: 1, uncertainty: 2 } })],
    ['missing inputs', () => uncertaintyBudget(f, undefined as never)],
    ['empty inputs', () => uncertaintyBudget(f, {} as never)],
    ['missing inputs.x.uncertainty', () => uncertaintyBudget(f, { x: { value: 1 } })],
    ['missing inputs.x.value', () => uncertaintyBudget(f, { x: { uncertainty: 1 } })],
    ['unknown-option inputs.x.u', () => uncertaintyBudget(f, { x: { value: 1, uncertainty: 1, u: 2 } as never })],
    ['missing inputs.x.standardUncertainty', () => uncertaintyBudget(f, { x: { value: 1, standardUncertainty: undefined } })],
    ['empty inputs.x.uncertainty', with_([])],
    ['out-of-range inputs.x.uncertainty', () => uncertaintyBudget(f, { x: { value: 1, uncertainty: -1 } })],
    ['missing inputs.x.uncertainty', with_({ name: 'what' })],
    ['wrong-type inputs.x.uncertainty.name', with_({ halfWidth: 1, name: 3 })],
    ['too-few inputs.x.uncertainty.readings', with_({ readings: [1] })],
    ['too-few inputs.x.uncertainty.count', with_({ standardDeviation: 1, count: 1 })],
    ['not-positive inputs.x.uncertainty.degreesOfFreedom', with_({ expanded: 1, degreesOfFreedom: 0 })],
    ['not-finite inputs.x.uncertainty.degreesOfFreedom', with_({ standardDeviation: 1, count: 4, degreesOfFreedom: Infinity })],
    ['out-of-range inputs.x.uncertainty.distribution', with_({ halfWidth: 1, distribution: 'round' })],
    ['unknown-option inputs.x.uncertainty.top', with_({ halfWidth: 1, top: 0.5 })],
    ['unknown-option inputs.x.uncertainty.divisor', with_({ halfWidth: 1, divisor: 2 })],
    ['missing inputs.x.uncertainty.top', with_({ halfWidth: 1, distribution: 'trapezoidal' })],
    ['unknown-option inputs.x.uncertainty.k', with_({ expanded: 1, k: 2 })],
    ['unknown-option options.k', () => uncertaintyBudget(f, { x: 1 }, { k: 2 } as never)],
    ['ambiguous options.coverageFactor', () => uncertaintyBudget(f, { x: 1 }, { coverage: 0.9, coverageFactor: 2 })],
    ['out-of-range options.coverage', () => uncertaintyBudget(f, { x: 1 }, { coverage: 1 })],
    ['not-positive options.coverageFactor', () => uncertaintyBudget(f, { x: 1 }, { coverageFactor: 0 })],
    ['unknown-option options.sensitivities.y', () => uncertaintyBudget(f, { x: 1 }, { sensitivities: { y: 1 } })],
    ['not-finite options.sensitivities.x', () => uncertaintyBudget(f, { x: 1 }, { sensitivities: { x: NaN } })],
    ['wrong-type options.correlations', () => uncertaintyBudget(f, { x: 1 }, { correlations: 0.5 as never })],
    [
      'out-of-range options.correlations[0].between[1]',
      () => uncertaintyBudget(f, { x: 1 }, { correlations: [{ between: ['x', 'y'], coefficient: 0 }] }),
    ],
    [
      'out-of-range options.correlations[0].between',
      () => uncertaintyBudget(f, { x: 1 }, { correlations: [{ between: ['x', 'x'], coefficient: 0 }] }),
    ],
    [
      'wrong-type options.correlations[0].between',
      () => uncertaintyBudget(f, { x: 1 }, { correlations: [{ between: ['x'] as never, coefficient: 0 }] }),
    ],
    [
      'out-of-range options.correlations',
      () =>
        uncertaintyBudget(
          ({ a, b, c }) => a + b + c,
          { a: 1, b: 1, c: 1 },
          {
            correlations: [
              { between: ['a', 'b'], coefficient: 0.9 },
              { between: ['b', 'c'], coefficient: 0.9 },
              { between: ['a', 'c'], coefficient: -0.9 },
            ],
          },
        ),
    ],
    ['empty dimensions', () => areaBudget(round({ diameter: 8 }), {})],
    ['unknown-option dimensions.width', () => areaBudget(round({ diameter: 8 }), { width: 1 })],
    ['out-of-range section.shape', () => areaBudget({ ...round({ diameter: 8 }), shape: 'star' as never }, { diameter: 1 })],
    ['out-of-range section.shape', () => areaBudget({ ...round({ diameter: 8 }), shape: 'toString' as never }, { diameter: 1 })],
    ['empty doubt', () => forceBudget({ force: 1 })],
    ['not-positive doubt.force', () => forceBudget({ force: 0, class: 1 })],
    ['out-of-range doubt.class', () => forceBudget({ force: 1, class: 4 as never })],
    ['ambiguous doubt.certificate', () => forceBudget({ force: 1, class: 1, certificate: { expanded: 0.01 } })],
    ['missing inputs.area', () => tensileStrengthBudget({ force: 1 } as never)],
    ['not-positive inputs.originalLength.value', () => elongationBudget({ originalLength: 0, finalLength: 1 })],
    ['out-of-range inputs.finalLength.value', () => elongationBudget({ originalLength: 50, finalLength: 20 })],
    ['out-of-range inputs.finalDiameter.value', () => reductionBudget({ originalDiameter: 8, finalDiameter: 9 })],
    ['out-of-range inputs.finalArea.value', () => reductionBudget({ originalArea: 50, finalArea: { value: 51, uncertainty: 1 } })],
    ['unknown-option inputs.finalArea', () => reductionBudget({ originalDiameter: 1, finalArea: 1 } as never)],
    ['out-of-range inputs.frameCompliance.value', () => modulusBudget({ stiffness: 1e5, area: 50, length: 48, frameCompliance: 1e-5 })],
    ['missing inputs.exponent', () => proofStrengthBudget({ force: 1, area: 1, slope: 1, offset: 1 } as never)],
    ['not-increasing inputs.range', () => hardeningExponentBudget({ exponent: 0.2, range: [0.2, 0.1] })],
    ['unequal-lengths inputs.range', () => hardeningExponentBudget({ exponent: 0.2, range: [0.02, 0.1, 0.01] })],
    ['not-positive inputs.range[0]', () => hardeningExponentBudget({ exponent: 0.2, range: [0, 0.1] })],
    ['missing inputs.stress', () => hardeningExponentBudget({ exponent: 0.2, range: [0.1, 0.2], stressZero: 1 })],
    [
      'ambiguous inputs.force.uncertainty',
      () => tensileStrengthBudget({ force: { value: 1, standardUncertainty: 1, uncertainty: 1 }, area: 1 }),
    ],
    ['not-positive inputs.exponent', () => strengthCoefficientBudget({ strengthCoefficient: 500, exponent: 0 })],
  ])('%s', (expected, call) => {
    expect(refusal(call)).toBe(expected);
  });
});
