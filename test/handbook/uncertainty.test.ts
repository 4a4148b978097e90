import { describe, expect, test } from 'vitest';
import {
  analyseTension,
  areaBudget,
  forceBudget,
  hardeningExponentBudget,
  modulusBudget,
  monteCarlo,
  numericalTolerance,
  proofStrengthBudget,
  reductionBudget,
  required,
  round,
  sectionFromArea,
  strengthCoefficientBudget,
  uncertaintyBudget,
  validateBudget,
  type TensionResult,
  type UncertaintySource,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors(
  'uncertainty',
  'areaBudget',
  'forceBudget',
  'tensileStrengthBudget',
  'elongationBudget',
  'reductionBudget',
  'numericalTolerance',
);

describe('JCGM 100:2008, annex H (from memory)', () => {
  test('H.1, end gauge: u_c 32 nm, effective degrees of freedom 16.76 unrounded, k99 2.92, U99 93 nm (92.5 from u_c 31.67)', () => {
    const budget = uncertaintyBudget(
      ({ standard, difference, temperature, expansion }) => standard + difference + temperature + expansion,
      {
        standard: { value: 50_000_623, uncertainty: { standardUncertainty: 25, degreesOfFreedom: 18 } },
        difference: { value: 215, uncertainty: { standardUncertainty: 9.7, degreesOfFreedom: 25.6 } },
        temperature: { value: 0, uncertainty: { standardUncertainty: 2.9, degreesOfFreedom: 50 } },
        expansion: { value: 0, uncertainty: { standardUncertainty: 16.6, degreesOfFreedom: 2 } },
      },
      { coverage: 0.99 },
    );
    expectPrinted(budget.value, '50000838');
    expectPrinted(budget.standardUncertainty, '31.67');
    expectPrinted(budget.standardUncertainty, '32');
    expectPrinted(budget.degreesOfFreedom!, '16.76', 2);
    expectPrinted(budget.coverageFactor, '2.9208');
    expectPrinted(budget.expandedUncertainty, '92.5');
  });

  test('H.2, resistance and reactance from correlated means: R 127.732, X 219.847, Z 254.260 with u 0.071, 0.295, 0.236', () => {
    // five simultaneous readings of voltage [V], current [A] and phase [rad]
    const V = [5.007, 4.994, 5.005, 4.99, 4.999];
    const I = [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3];
    const phase = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];
    const inputs = {
      V: { uncertainty: { readings: V } },
      I: { uncertainty: { readings: I } },
      phase: { uncertainty: { readings: phase } },
    };
    const rest = (x: readonly number[]) => x.map((one) => one - x.reduce((sum, other) => sum + other) / x.length);
    const product = (x: readonly number[], y: readonly number[]) => rest(x).reduce((sum, one, k) => sum + one * rest(y)[k]!, 0);
    const tie = (a: string, x: readonly number[], b: string, y: readonly number[], printed: string) => {
      const coefficient = product(x, y) / Math.sqrt(product(x, x) * product(y, y));
      expectPrinted(coefficient, printed, 2);
      return { between: [a, b] as const, coefficient };
    };
    const correlations = [tie('V', V, 'I', I, '-0.36'), tie('V', V, 'phase', phase, '0.86'), tie('I', I, 'phase', phase, '-0.65')];
    const resistance = uncertaintyBudget(({ V: v, I: i, phase: f }) => (v / i) * Math.cos(f), inputs, { correlations });
    const reactance = uncertaintyBudget(({ V: v, I: i, phase: f }) => (v / i) * Math.sin(f), inputs, { correlations });
    const impedance = uncertaintyBudget(
      ({ V: v, I: i }) => v / i,
      { V: inputs.V, I: inputs.I },
      { correlations: correlations.slice(0, 1) },
    );
    expectPrinted(resistance.value, '127.732', 2);
    expectPrinted(reactance.value, '219.847', 2);
    expectPrinted(impedance.value, '254.260', 2);
    expectPrinted(resistance.standardUncertainty, '0.071', 2);
    expectPrinted(reactance.standardUncertainty, '0.295', 2);
    expectPrinted(impedance.standardUncertainty, '0.236', 2);
    expectPrinted(resistance.lines[0]!.standardUncertainty, '0.0032', 2);
    expectPrinted(resistance.lines[1]!.standardUncertainty, '0.0000095', 2);
    expectPrinted(resistance.lines[2]!.standardUncertainty, '0.00075', 2);
  });

  test('H.3, thermometer: correction −0.1494 °C at 30 °C with u 0.0041', () => {
    // intercept −0.1712 (0.0029), slope 0.00218 (0.00067), correlation −0.930, about 20 °C
    const budget = uncertaintyBudget(
      ({ intercept, slope }) => intercept + slope * (30 - 20),
      { intercept: { value: -0.1712, uncertainty: 0.0029 }, slope: { value: 0.00218, uncertainty: 0.00067 } },
      { correlations: [{ between: ['intercept', 'slope'], coefficient: -0.93 }] },
    );
    expectPrinted(budget.value, '-0.1494');
    expectPrinted(budget.standardUncertainty, '0.0041', 2);
  });
});

describe('JCGM 101:2008 (from memory)', () => {
  const normal = { value: 0, uncertainty: 1 };
  const rectangular = { value: 0, uncertainty: { halfWidth: Math.sqrt(3) } };
  const sum = ({ a, b, c, d }: Readonly<Record<'a' | 'b' | 'c' | 'd', number>>): number => a + b + c + d;
  const four = <T>(one: T) => ({ a: one, b: one, c: one, d: one });
  const options = { coverage: 0.95, trials: 1_000_000, seed: 3 };

  test('9.2.2, four normal inputs: u 2.00, interval ±3.92, budget valid', () => {
    const found = required(monteCarlo(sum, four(normal), options));
    expectPrinted(found.standardUncertainty!, '2.00');
    expectPrinted(found.interval[0], '-3.92', 2);
    expectPrinted(found.interval[1], '3.92', 2);
    // never longer, and not shorter than the sampling error of its ends
    const width = (ends: readonly [number, number]) => ends[1] - ends[0];
    expect(width(found.shortestInterval)).toBeLessThanOrEqual(width(found.interval));
    expect(width(found.shortestInterval)).toBeGreaterThan(7.84 - 0.03);
    const budget = uncertaintyBudget(sum, four(normal), { coverage: 0.95 });
    expectPrinted(budget.expandedUncertainty, '3.92');
    expect(validateBudget(budget, found, 2).valid).toBe(true);
  });

  test('9.2.3, four rectangular inputs: interval ±3.88 where the budget gives ±3.92: valid to one digit', () => {
    const found = required(monteCarlo(sum, four(rectangular), options));
    expectPrinted(found.standardUncertainty!, '2.00');
    expectPrinted(found.interval[0], '-3.88', 2);
    expectPrinted(found.interval[1], '3.88', 2);
    const budget = uncertaintyBudget(sum, four(rectangular), { coverage: 0.95 });
    expectPrinted(budget.expandedUncertainty, '3.92');
    expect(validateBudget(budget, found).valid).toBe(true);
  });

  test('9.2.4, one rectangular input ten times as wide: u 10.1, interval ±17.0 where the budget gives ±19.9: not valid', () => {
    const inputs = { ...four(rectangular), d: { value: 0, uncertainty: { halfWidth: 10 * Math.sqrt(3) } } };
    const found = required(monteCarlo(sum, inputs, options));
    expectPrinted(found.standardUncertainty!, '10.1', 2);
    expectPrinted(found.interval[0], '-17.0', 2);
    expectPrinted(found.interval[1], '17.0', 2);
    const budget = uncertaintyBudget(sum, inputs, { coverage: 0.95 });
    expectPrinted(budget.expandedUncertainty, '19.9');
    const compared = validateBudget(budget, found, 2);
    expect(compared.valid).toBe(false);
    expect(compared.findings[0]?.code).toBe('budget-not-validated');
  });

  test('9.3, mass calibration: 1.234 mg, u 0.0754 with second-order terms, 0.0539 by the first order; interval 1.0834 to 1.3825', () => {
    // masses in mg beside 100 g; densities in kg/m³
    const mass = ({
      reference,
      small,
      air,
      weight,
      standard,
    }: Readonly<Record<'reference' | 'small' | 'air' | 'weight' | 'standard', number>>) =>
      (reference + small) * (1 + (air - 1.2) * (1 / weight - 1 / standard)) - 100_000;
    const inputs = {
      reference: { value: 100_000, uncertainty: 0.05 },
      small: { value: 1.234, uncertainty: 0.02 },
      air: { value: 1.2, uncertainty: { halfWidth: 0.1 } },
      weight: { value: 8000, uncertainty: { halfWidth: 1000 } },
      standard: { value: 8000, uncertainty: { halfWidth: 50 } },
    };
    const budget = uncertaintyBudget(mass, inputs, { coverage: 0.95 });
    expectPrinted(budget.value, '1.234');
    expectPrinted(budget.standardUncertainty, '0.0539');
    const found = required(monteCarlo(mass, inputs, { coverage: 0.95, trials: 1_000_000 }));
    expectPrinted(found.mean!, '1.234', 2);
    // beside the last printed digit the sampling error of both runs of trials, ours and the printed one of as many
    expect(Math.abs(found.standardUncertainty! - 0.0754)).toBeLessThan(0.0001 + 4 * Math.SQRT2 * found.uncertaintyError!);
    // an end at 2.5 %: its sampling error is √(p(1 − p)/M) over the density there, about 0.0004
    expect(Math.abs(found.shortestInterval[0] - 1.0834)).toBeLessThan(4 * 0.0004 * Math.SQRT2);
    expect(Math.abs(found.shortestInterval[1] - 1.3825)).toBeLessThan(4 * 0.0004 * Math.SQRT2);
    expect(validateBudget(budget, found).valid).toBe(false);
  });

  test('numerical tolerance of 0.0996, which rounds to 0.10, and of nothing', () => {
    expectPrinted(numericalTolerance(0.0996), '0.005');
    expect(numericalTolerance(0)).toBe(0);
  });
});

// second derivations beside the relative formulas in quadrature
const diameter: readonly UncertaintySource[] = [
  { standardDeviation: 0.006, count: 3, name: 'readings' },
  { halfWidth: 0.01, name: 'micrometer' },
  { standardUncertainty: 0.002, name: 'taper' },
];

describe('ready budgets, formulas in quadrature', () => {
  const area = areaBudget(round({ diameter: 8 }), { diameter });
  const force = forceBudget({ force: 450 * 50.26548245743669, class: 1, reference: 0.001 });

  test('u(S0)/S0 of d 8 ± 0.01 with scatter 0.006 of 3 and taper 0.002: the micrometer dominates', () => {
    expect(area.lines.map(({ source }) => source)).toEqual(['readings', 'micrometer', 'taper']);
    expect(area.lines[area.dominant!]!.source).toBe('micrometer');
  });

  test('Z of 8 to 4.8 mm by its areas: 0.7527 points, as by diameters', () => {
    const quarter = Math.PI / 4;
    const byArea = reductionBudget({
      originalArea: { value: quarter * 64, uncertainty: quarter * 2 * 8 * 0.00702 },
      finalArea: { value: quarter * 4.8 ** 2, uncertainty: quarter * 2 * 4.8 * 0.05 },
    });
    expectPrinted(100 * byArea.standardUncertainty, '0.7527');
  });

  test('E on a frame of 20 µm/kN known to 3 %: 13.96 %, of which the frame alone 13.19 %; skewed, so a finding says so', () => {
    const budget = modulusBudget({
      stiffness: { value: 40_737.704, uncertainty: 0.005 * 40_737.704 },
      area,
      length: { value: 48, uncertainty: 0.48 },
      frameCompliance: { value: 2e-5, uncertainty: 0.03 * 2e-5 },
      forceScale: { value: 1, uncertainty: force.relativeStandardUncertainty! },
    });
    expectPrinted(budget.value, '210000', 2);
    expectPrinted(100 * budget.relativeStandardUncertainty!, '13.96');
    const frame = budget.lines.find(({ input }) => input === 'frameCompliance')!;
    expectPrinted((100 * frame.contribution) / budget.value, '13.19');
    expect(budget.findings.map(({ code }) => code)).toEqual(['budget-not-linear', 'one-term-dominates']);
  });

  test('Rp: √(u_F² + u_S² + (λ/n u_m)² + (u_e/(n e))²), with λ 3.2132 of 250 MPa on that frame', () => {
    const budget = proofStrengthBudget({
      force: { value: 250 * 50.26548245743669, uncertainty: force.relativeStandardUncertainty! * 250 * 50.26548245743669 },
      area,
      slope: { value: 38_901.642, uncertainty: 0.01 * 38_901.642 },
      offset: { value: 0.002, uncertainty: 0.00004 },
      exponent: 20,
    });
    const expected = Math.hypot(0.006532, 0.0017559, (3.2132 / 20) * 0.01, 0.02 / 20);
    expect(budget.value).toBeCloseTo(250, 9);
    expect(Math.abs(budget.relativeStandardUncertainty! / expected - 1)).toBeLessThan(1e-3);
  });

  test('n and K: scales cancel in n; K carries force, area, and strain to the power n', () => {
    const n = hardeningExponentBudget({
      exponent: { value: 0.2, uncertainty: 0.001 },
      range: [0.02, 0.18],
      stress: 400,
      strainOrigin: 1e-4,
      stressZero: 1,
    });
    // derivatives of the two-point exponent, by hand
    const decades = Math.log(9);
    const byOrigin = (-0.2 * (1 / 0.18 - 1 / 0.02) * 1e-4) / decades;
    const start = 400 * (1 / 9) ** 0.2;
    const byZero = ((1 / 400 - 1 / start) * 1) / decades;
    expect(n.value).toBeCloseTo(0.2, 12);
    expect(n.standardUncertainty).toBeCloseTo(Math.hypot(0.001, byOrigin, byZero), 9);
    const K = strengthCoefficientBudget({
      strengthCoefficient: { value: 500, uncertainty: 2 },
      exponent: 0.2,
      force: 0.0065,
      area: 0.0018,
      strain: 0.005,
    });
    expect(K.relativeStandardUncertainty).toBeCloseTo(Math.hypot(2 / 500, 0.0065, 0.0018, 0.2 * 0.005), 8);
  });
});

// the law: Ramberg and Osgood, NACA TN 902 (1943), e = R/E + p0 (R/R0)^N; its strengths differentiated by hand (implicit differentiation; JCGM 100:2008, 5.1)
describe('sensitivities of strengths on a curve of Ramberg and Osgood', () => {
  const [E, p0, R0, N] = [70_000, 0.002, 280, 20] as const;
  const [S0, L] = [50, 40] as const;
  const piece = { section: sectionFromArea({ area: S0 }), gaugeLength: L, parallelLength: L };
  const stress = Float64Array.from({ length: 3001 }, (_, i) => i / 10);
  const extension = stress.map((R) => L * (R / E + p0 * (R / R0) ** N));
  const force = stress.map((R) => S0 * R);
  const modulus = { window: { by: 'stress', from: 20, to: 120 } } as const;
  const small = { force: 1e-4, forceZero: 0.5, displacement: 1e-4, noise: { force: 0, displacement: 0 } };
  const withGauge = analyseTension(
    { force, extension },
    { ...piece, extensometerLength: L },
    { modulus, uncertainty: { ...small, extensometerLength: 0.004 } },
  );
  const compliance = 1e-5;
  const withFrame = analyseTension({ force, travel: extension.map((x, i) => x + compliance * force[i]!) }, piece, {
    modulus,
    frameCompliance: compliance,
    uncertainty: { ...small, parallelLength: 0.004, frameCompliance: 1e-3 },
  });
  /** Slope of the curve at a stress: 1/h = 1/E + N p/R. */
  const h = (R: number) => 1 / (1 / E + (N * p0 * (R / R0) ** N) / R);
  const [Rp, Rpl] = [R0, R0 * (0.0001 / p0) ** (1 / N)] as const;
  /** Rt0.5 by bisection. */
  const Rt = (() => {
    let [low, high] = [0, 400];
    for (let k = 0; k < 100; k += 1) {
      const R = (low + high) / 2;
      if (R / E + p0 * (R / R0) ** N < 0.005) low = R;
      else high = R;
    }
    return low;
  })();
  const of = ({ uncertainty }: TensionResult, symbol: string, input: string) =>
    uncertainty![symbol]!.lines.find((line) => line.input === input)?.sensitivity ?? 0;
  // a total extension is looked at over an eighth to either side, where h is no constant: the law itself gives 2.6 % between tangent and chord there
  const KNEE = 0.03;

  test.each([
    // a scale of the force moves curve and line alike
    ['Rp0.2', 'force', Rp, 1e-3],
    ['Rpl', 'force', Rpl, 1e-3],
    // R ∝ p^(1/N) where strains are a little larger: dR/ds = −R/N
    ['Rp0.2', 'displacement', -Rp / N, 0.01],
    ['Rpl', 'displacement', -Rpl / N, 0.01],
    ['Rt0.5', 'displacement', -h(Rt) * 0.005, KNEE],
    ['Rp0.2', 'extensometerLength', Rp / N / L, 0.01],
    ['Rt0.5', 'extensometerLength', (h(Rt) * 0.005) / L, KNEE],
    // a zero lifts the curve by 1/S0 and moves the origin of its line with it, by −1/(S0 E)
    ['Rp0.2', 'forceZero', 1 / S0, 1e-3],
    ['Rpl', 'forceZero', 1 / S0, 1e-3],
    ['Rt0.5', 'forceZero', (1 - h(Rt) / E) / S0, KNEE],
  ] as const)('extensometer: d%s by %s', (symbol, input, expected, share) => {
    expect(Math.abs(of(withGauge, symbol, input) / expected - 1)).toBeLessThan(share);
  });

  test('travel: more taken off for the frame turns curve and line alike, so that Rp and Rpl stay and Rt rises by h C S0 R/L', () => {
    // so much of the change that the strain alone would make
    for (const [symbol, R] of [
      ['Rp0.2', Rp],
      ['Rpl', Rpl],
    ] as const)
      // prettier-ignore
      expect(Math.abs(of(withFrame, symbol, 'frameCompliance')) / ((compliance * S0 * R * h(R)) / L)).toBeLessThan(1e-3);
    const expected = (h(Rt) * compliance * S0 * Rt) / L;
    expect(Math.abs(of(withFrame, 'Rt0.5', 'frameCompliance') / expected - 1)).toBeLessThan(KNEE);
  });
});
