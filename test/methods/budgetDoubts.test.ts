import { describe, expect, test } from 'vitest';
import {
  analyseTension,
  monteCarloTension,
  required,
  round,
  sectionFromArea,
  type TensionOptions,
  type TensionResult,
} from '../../src/index.js';
import { runTension } from '../../src/methods/tension/runTension.js';
import { tensionNoise } from '../../src/methods/budgets/tensionNoise.js';
import { medianOf, noiseLevel, noiseLevelError, normalCdf, randomNumbers } from '../../src/numeric/index.js';
import { simulateTension } from '../../src/simulate/index.js';
import { AREA, caseT1, COMPLIANCE, roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const codes = ({ findings }: TensionResult) => findings.map(({ code }) => code);
const lineOf = (result: TensionResult, symbol: string, input: string) =>
  result.uncertainty?.[symbol]?.lines.find((line) => line.input === input);

describe('a doubt so large that a step of it leaves no value', () => {
  const record = caseT1();
  const withFrame = (frameCompliance: number) =>
    analyseTension(record, roundPiece, { frameCompliance: COMPLIANCE, uncertainty: { force: 0.005, frameCompliance } });

  test.each([0.01, 0.03, 0.1, 0.2, 0.23, 0.25, 0.4, 0.9])('u(Cf)/Cf = %f: the derivative of springs in series, Cf over c', (doubt) => {
    const found = withFrame(doubt);
    const { value } = found.modulus!;
    // E = L / (S0 (c_app − Cf)): dE/E = dCf / c with c = L / (E S0)
    const expected = (doubt * COMPLIANCE * value * AREA) / 48;
    const { contribution } = lineOf(found, 'E', 'frameCompliance')!;
    // over a step of x = dCf/c either way E is 1/(1 ∓ x) of itself: it bends by x of its change, a tenth at most, and the quotient is 1/(1 − x²) of the derivative
    expect(Math.abs(contribution / value / expected - 1)).toBeLessThan(0.1 ** 2 / (1 - 0.1 ** 2));
  });

  test('so the uncertainty grows with the doubt', () => {
    const all = [0.03, 0.1, 0.2, 0.22, 0.24, 0.26, 0.3].map((doubt) => withFrame(doubt).modulus!.standardUncertainty!);
    expect([...all].sort((a, b) => a - b)).toEqual(all);
  });

  test('a zero of the force far beyond the force moves ReH by itself over S0', () => {
    const { record: whole } = simulateTension({
      material: { ...mild, modulus: 206_000 },
      piece: roundPiece,
      hand: { speed: 0.02 },
      logger: { rate: 20, extensometer: true },
      seed: 3,
    });
    const found = analyseTension(whole, roundPiece, { uncertainty: { forceZero: 50_000 } });
    expect(lineOf(found, 'ReH', 'forceZero')!.contribution / (50_000 / AREA)).toBeCloseTo(1, 6);
  });

  // the record ends where 0.5 % is just reached: less displacement, by however little, and it is not
  const strain = Array.from({ length: 501 }, (_, i) => (0.005 * (1 + 1e-6) * i) / 500);
  const barely = { force: strain.map((e) => 50 * Math.min(70_000 * e, 200 + 2000 * e)), strain };
  const piece = { section: sectionFromArea({ area: 50 }), gaugeLength: 40 };

  test('where no step gives both sides, nothing is stated, and a finding names input and symbol', () => {
    const found = analyseTension(barely, piece, { uncertainty: { force: 0.005, displacement: 0.05 } });
    expect(found.totalExtensionStrengths[0]).toBeDefined();
    expect(found.totalExtensionStrengths[0]).not.toHaveProperty('standardUncertainty');
    expect(found.uncertainty).not.toHaveProperty(['Rt0.5']);
    const one = found.findings.find(({ code }) => code === 'uncertainty-not-determined')!;
    expect(one.values).toMatchObject({ input: 'displacement', symbols: 'Rt0.5' });
    expect(one.field).toBe('totalExtensionStrengths');
    const fine = analyseTension(barely, piece, { uncertainty: { force: 0.005 } });
    expect(codes(fine)).not.toContain('uncertainty-not-determined');
    expect(fine.totalExtensionStrengths[0]!.standardUncertainty! / fine.totalExtensionStrengths[0]!.value).toBeCloseTo(0.005, 9);
  });
});

describe('a value that most repeats with other noise do not have', () => {
  const section = round({ diameter: 8 });
  /** ReH 300, a level of 270 MPa, and noise that hides the fall between them in one record and not in the next. */
  const noisy = (seed: number) => {
    const random = randomNumbers(seed);
    const strain = Array.from({ length: 500 }, (_, i) => i * 1e-4);
    const law = (e: number) =>
      e < 0.0015 ? 200_000 * e : e < 0.002 ? 390 - 60_000 * e : e < 0.02 ? 270 : 270 + 150 * (1 - Math.exp(-25 * (e - 0.02)));
    const force = strain.map((e) => section.area * (law(e) + 4.5 * random.normal()));
    return analyseTension({ force, extension: strain.map((e) => 40 * e) }, { section, gaugeLength: 40 }, { uncertainty: { force: 0.005 } });
  };
  const found = Array.from({ length: 20 }, (_, k) => noisy(k + 1)).filter(({ lowerYieldStrength }) => lowerYieldStrength);

  test('states no uncertainty, and is named', () => {
    const silent = found.filter(({ lowerYieldStrength }) => lowerYieldStrength!.standardUncertainty === undefined);
    expect(silent.length).toBeGreaterThan(0);
    for (const one of silent) {
      expect(one.uncertainty).not.toHaveProperty('ReL');
      expect(String(one.findings.find(({ code }) => code === 'noise-decides')!.values['symbols'])).toContain('ReL');
    }
  });

  test('every other one has the noise in its budget', () => {
    const stated = found.filter(({ lowerYieldStrength }) => lowerYieldStrength!.standardUncertainty !== undefined);
    expect(stated.length).toBeGreaterThan(0);
    for (const one of stated) expect(lineOf(one, 'ReL', 'noise')).toBeDefined();
  });
});

const mild = {
  modulus: 206_000,
  yieldStress: 280,
  yieldPoint: { upper: 305, plateau: 0.014 },
  hardening: { law: 'swift', prestrain: 0.03, exponent: 0.25 },
  fracture: { extension: 0.35 },
} as const;

describe('the doubt that a compliance carries', () => {
  const record = caseT1();
  const carried = { constant: COMPLIANCE, relativeStandardUncertainty: 0.03 };
  const analyse = (options: TensionOptions) => analyseTension(record, roundPiece, options);
  const plain = analyse({ frameCompliance: COMPLIANCE, uncertainty: { force: 0.005, frameCompliance: 0.03 } });

  test('stands in the budgets as if it were given there, and counts as given', () => {
    const found = analyse({ frameCompliance: carried, uncertainty: { force: 0.005 } });
    expect(found.uncertainty!['E']).toEqual(plain.uncertainty!['E']);
    expect(found.findings.find(({ code }) => code === 'uncertainty-incomplete')!.values['missing']).not.toContain('frameCompliance');
  });

  test('gives way to one that is given there', () => {
    const found = analyse({ frameCompliance: carried, uncertainty: { force: 0.005, frameCompliance: 0.01 } });
    expect(lineOf(found, 'E', 'frameCompliance')!.standardUncertainty).toBe(0.01);
  });

  test('is drawn by Monte Carlo too', () => {
    const options = { uncertainty: { force: 0.005 }, trials: 100 };
    const found = monteCarloTension(record, roundPiece, { ...options, frameCompliance: carried });
    const given = monteCarloTension(record, roundPiece, {
      ...options,
      frameCompliance: COMPLIANCE,
      uncertainty: { force: 0.005, frameCompliance: 0.03 },
    });
    expect(found.distributions['E']!.standardUncertainty).toBe(given.distributions['E']!.standardUncertainty);
  });

  test('as large as the motion itself it is refused by its own name', () => {
    const given = { frameCompliance: { ...carried, relativeStandardUncertainty: 1.2 }, uncertainty: { force: 0.005 } };
    expect(refusal(() => analyse(given))).toBe('out-of-range options.frameCompliance.relativeStandardUncertainty');
  });
});

describe('what budgets say against themselves stands among the findings of the result', () => {
  const record = caseT1();

  test('a model that bends: one finding with all symbols, at the field that it weighs most with', () => {
    const found = analyseTension(record, roundPiece, { frameCompliance: COMPLIANCE, uncertainty: { force: 0.005, frameCompliance: 0.2 } });
    const own = Object.values(found.uncertainty!).filter(({ findings }) => findings.some(({ code }) => code === 'budget-not-linear'));
    const told = found.findings.filter(({ code }) => code === 'budgets-not-linear');
    expect(told).toHaveLength(1);
    expect(told[0]!.values).toMatchObject({ input: 'frameCompliance', symbols: own.map(({ symbol }) => symbol).join(', ') });
    expect(['modulus', 'elasticSlope']).toContain(told[0]!.field);
  });

  test('few degrees of freedom: of three readings two', () => {
    const found = analyseTension(record, roundPiece, { uncertainty: { section: { diameter: { readings: [7.9, 8, 8.1] } } } });
    const one = found.findings.find(({ code }) => code === 'budgets-of-few-degrees-of-freedom')!;
    // nothing else is in doubt, so that they are the budget's
    expect(one.values['freedom']).toBeCloseTo(2, 9);
    expect(String(one.values['symbols'])).toContain('Rm');
  });
});

describe('per cent, or another unit, in the place of a fraction', () => {
  const record = caseT1();
  const analyse = (uncertainty: TensionOptions['uncertainty']) =>
    analyseTension(record, { ...roundPiece, afterFracture: { gaugeLength: 51 } }, { frameCompliance: COMPLIANCE, uncertainty });

  test.each([
    ['force', { force: 0.5 }],
    ['frameCompliance', { frameCompliance: 0.5 }],
    ['section.diameter', { section: { diameter: 1 } }],
    ['gaugeLength', { gaugeLength: 5, finalGaugeLength: 0.1 }],
  ])('%s: told once', (input, uncertainty) => {
    const told = analyse(uncertainty).findings.filter(({ code }) => code === 'uncertainty-large');
    expect(told.map(({ values }) => values['input'])).toEqual([input]);
  });

  test.each([
    ['force', { force: 5 }],
    ['frameCompliance', { frameCompliance: 3 }],
    ['displacement', { displacement: 1 }],
    ['section.diameter', { section: { diameter: 8 } }],
    ['gaugeLength', { gaugeLength: 60, finalGaugeLength: 0.1 }],
  ])('%s: as large as the value, refused by its name', (input, uncertainty) => {
    expect(refusal(() => analyse(uncertainty))).toBe(`out-of-range options.uncertainty.${input}`);
  });

  test('a usual doubt is not told', () => {
    expect(codes(analyse({ forceClass: 3, frameCompliance: 0.1, section: { diameter: 0.05 } }))).not.toContain('uncertainty-large');
  });
});

/** Stress by strain with a yield point: elastic to 395 MPa, down to 362 MPa over a plastic strain, level, then hardening. */
function peaked(over: number, rate: number, seed: number, noise: number) {
  const modulus = 206_000;
  const [high, low] = [395, 362];
  const { normal, uniform } = randomNumbers(seed);
  const begins = uniform();
  const speed = 50 / modulus;
  const stressAt = (e: number): number => {
    const beyond = e - high / modulus;
    if (beyond <= 0) return modulus * e;
    // elastic strain comes back as the stress falls
    const span = over - (high - low) / modulus;
    if (beyond < span) return high - ((high - low) * beyond) / span;
    return low + 1500 * Math.max(0, beyond - 0.015);
  };
  const time = Array.from({ length: Math.floor((0.05 / speed) * rate) }, (_, i) => (i + begins) / rate);
  const strain = time.map((t) => speed * t);
  return { force: strain.map((e) => 50 * stressAt(e) + 50 * noise * normal()), strain, time };
}

describe('ReH: the peak between two samples', () => {
  const piece = { section: sectionFromArea({ area: 50 }), gaugeLength: 40 };
  const found = (over: number, rate: number, noise: number) =>
    Array.from({ length: 40 }, (_, seed) => {
      const { upperYieldStrength: upper, uncertainty } = analyseTension(peaked(over, rate, seed + 1, noise), piece, {
        uncertainty: { coverage: 0.95 },
      });
      const budget = uncertainty!['ReH']!;
      return {
        missed: 395 - upper!.value,
        bound: Math.sqrt(3) * (budget.lines.find(({ input }) => input === 'peak between samples')?.contribution ?? 0),
        half: budget.expandedUncertainty,
      };
    });

  test('a fall that is over at once: anywhere from nothing to the rise between two samples, here 50/11 MPa', () => {
    const all = found(0.0002, 11, 1e-9);
    for (const { missed, bound } of all) {
      expect(bound).toBeCloseTo(50 / 11, 6);
      expect(missed).toBeGreaterThan(-1e-6);
      expect(missed).toBeLessThan(bound);
    }
  });

  test('a fall that several samples follow: no more than the fall between two', () => {
    // 33 MPa over a strain of 0.00064, at 50 MPa/s of 206 GPa: 12.5 MPa/s
    const falls = (33 / (0.0008 - 33 / 206_000)) * (50 / 206_000);
    for (const { missed, bound } of found(0.0008, 11, 1e-9)) {
      // noise of 1e-9 MPa in 1.1 MPa
      expect(bound / (falls / 11)).toBeCloseTo(1, 6);
      expect(missed).toBeLessThan(bound);
    }
  });

  test.each([
    ['at once', 0.0002, 11],
    ['slowly', 0.0008, 11],
    ['slowly', 0.0008, 100],
  ])('in noise, falling %s (%f), %i samples a second: nine in ten hold it at the least', (_, over, rate) => {
    const all = found(over, rate, 0.4);
    // of 40 that hold with 95 %, fewer than 34 come once in 300 times
    expect(all.filter(({ missed, half }) => Math.abs(missed) <= half).length).toBeGreaterThanOrEqual(34);
  });
});

describe('few samples', () => {
  const tested = (seed: number, rate: number) =>
    simulateTension({
      material: mild,
      piece: { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 },
      frame: { compliance: 1e-5, slack: 0.1 },
      hand: { speed: 0.02, speedAfterYield: 0.2 },
      logger: { rate, forceNoise: 20, motionNoise: 2e-4 },
      seed,
    });
  const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
  const frame = { frameCompliance: 1e-5 };

  test('ReL, the lowest of some twenty noisy samples: nine in ten hold it at the least', () => {
    const held = Array.from({ length: 30 }, (_, k) => {
      const { record, truth } = tested(k + 1, 2);
      const { lowerYieldStrength: lower, uncertainty } = analyseTension(record, piece, { ...frame, uncertainty: { coverage: 0.95 } });
      return Math.abs(lower!.value - truth.lowerYieldStrength!) <= uncertainty!['ReL']!.expandedUncertainty;
    });
    // of 30 that hold with 95 %, fewer than 25 come once in 300 times
    expect(held.filter(Boolean).length).toBeGreaterThanOrEqual(25);
  });

  test('a short elastic line does not take the noise of the whole record for less by its own chance', () => {
    const found = Array.from({ length: 30 }, (_, k) => {
      const { task } = runTension('test', tested(k + 1, 5).record, piece, frame);
      const { highest } = task.numbers;
      const line = required(task.numbers.line);
      const samples = highest + 1;
      const whole = noiseLevel(task.record.force, 0, samples);
      // the line is a part of the stretch that tells the noise, and by itself would tell it no better
      const own = noiseLevelError(line.last - line.first + 1);
      return { force: tensionNoise(task, {}).force, whole, own, error: noiseLevelError(samples) };
    });
    const sum = (of: (one: (typeof found)[number]) => number): number => found.reduce((all, one) => all + of(one), 0);
    const share = (of: (one: (typeof found)[number]) => number): number => sum(of) / found.length;
    // less is believed only from so many deviations on: z below −a, of the quotient of both levels; what is then lost is the rest, its mean φ(a) − a Q(a)
    const lost = found.map(({ own, error }) => {
      const deviation = Math.hypot(own, error);
      const a = own / deviation;
      const [density, beyond] = [Math.exp(-(a ** 2) / 2) / Math.sqrt(2 * Math.PI), 1 - normalCdf(a)];
      const mean = density - a * beyond;
      const variance = (1 + a ** 2) * beyond - a * density - mean ** 2;
      return { mean: deviation * mean, variance: deviation ** 2 * variance, beyond };
    });
    const expected = lost.reduce((all, one) => all + one.mean, 0) / lost.length;
    const scatter = Math.sqrt(lost.reduce((all, one) => all + one.variance, 0)) / lost.length;
    // without that allowance half of the lines would lower it, on the average by 0.4 of their errors
    expect(1 - share(({ force, whole }) => force / whole)).toBeLessThan(expected + 3 * scatter);
    expect(expected + 3 * scatter).toBeLessThan(0.4 * share(({ own }) => own));
    expect(Math.max(...found.map(({ force, whole }) => force / whole))).toBeLessThanOrEqual(1);
    // the median of 30 levels to three standard errors, and by what the lowered ones move it in their rank
    const rank = lost.reduce((all, one) => all + one.beyond, 0) / lost.length;
    const within = Math.sqrt(Math.PI / 2) * share(({ error }) => error) * (3 / Math.sqrt(found.length) + rank);
    expect(Math.abs(medianOf(found.map(({ force }) => force)) / 20 - 1)).toBeLessThan(within);
  });
});

describe('the onset of a neck that begins suddenly', () => {
  const modulus = 205_000;
  const begins = 0.12;
  /** A true stress that hardens on by 800 MPa, until the force falls at an extension, as a line or a parabola. */
  function sudden(seed: number, power: number) {
    const { normal } = randomNumbers(seed);
    const rising = (e: number): number => {
      const strain = Math.log1p(e);
      return Math.min(modulus * strain, (350 + 800 * strain) / (1 + 800 / modulus)) / (1 + e);
    };
    const stress = (e: number): number => (e <= begins ? rising(e) : rising(begins) * (1 - 0.25 * ((e - begins) / 0.07) ** power));
    const strain = Array.from({ length: 1200 }, (_, i) => (i < 500 ? (0.015 * i) / 500 : 0.015 + (0.175 * (i - 500)) / 700));
    return { force: strain.map((e) => 78.54 * stress(e) + 15 * normal()), extension: strain.map((e) => 50 * e + 4e-4 * normal()) };
  }
  const piece = { section: sectionFromArea({ area: 78.54 }), gaugeLength: 50 };

  test.each([1, 2])('a fall by a power of %i: the truth is held, and the line names the kink', (power) => {
    for (let seed = 1; seed <= 10; seed += 1) {
      const { necking, uncertainty } = analyseTension(sudden(seed, power), piece, { uncertainty: { coverage: 0.95 } });
      const budget = uncertainty!['εu']!;
      // U is 1.96 times the way from the onset to the kink, so that it holds the truth in every record in which noise moves the kink by less than 0.96 of that way
      expect(Math.abs(necking!.value - Math.log1p(begins))).toBeLessThan(budget.expandedUncertainty);
      expect(budget.lines.map(({ input }) => input)).toContain('neck that begins suddenly');
    }
  });

  test('a smooth maximum has no such line', () => {
    const { record } = simulateTension({
      material: { ...mild, yieldPoint: undefined },
      piece: roundPiece,
      hand: { speed: 0.02, speedAfterYield: 0.2 },
      logger: { rate: 20, extensometer: true, forceNoise: 20, motionNoise: 2e-4 },
      seed: 4,
    });
    const { uncertainty } = analyseTension(record, roundPiece, { uncertainty: { coverage: 0.95 } });
    expect(uncertainty!['εu']!.lines.map(({ input }) => input)).not.toContain('neck that begins suddenly');
  });
});
