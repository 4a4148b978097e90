import { describe, expect, test } from 'vitest';
import { analysed, compared, uncertainTest, type Kind } from '../../bench/uncertainTests.js';
import {
  analyseTension,
  areaBudget,
  elongationBudget,
  forceBudget,
  fromJson,
  modulusBudget,
  proofStrengthBudget,
  reductionBudget,
  round,
  tensileStrengthBudget,
  toJson,
  type TensionOptions,
  type TestPiece,
} from '../../src/index.js';
import { runTension } from '../../src/methods/tension/runTension.js';
import { quantitiesOf } from '../../src/methods/budgets/statedResult.js';
import { errorOfDrift, freedomOfDrift, tensionNoise } from '../../src/methods/budgets/tensionNoise.js';
import { withFairWindow } from '../../src/methods/budgets/withFairWindow.js';
import { simulateTension } from '../../src/simulate/index.js';
import { AREA, caseT1, COMPLIANCE, roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const after = { gaugeLength: 51.2, area: (Math.PI / 4) * 4.8 ** 2 };
const piece: TestPiece = { ...roundPiece, afterFracture: after };
const section = { diameter: { halfWidth: 0.01 } };
const options: TensionOptions = {
  frameCompliance: COMPLIANCE,
  uncertainty: {
    forceClass: 1,
    section,
    displacement: 0.004,
    gaugeLength: 0.15,
    parallelLength: 0.24,
    frameCompliance: 0.03,
    finalGaugeLength: 0.15,
    finalArea: (Math.PI / 4) * 2 * 4.8 * 0.05,
  },
};
// without noise and without scatter, so that only what was given is in the budgets
const record = caseT1();
const result = analyseTension(record, piece, options);
const budgets = result.uncertainty!;

/** A number within a share of another: the kernel takes differences over one u, the ready budgets derivatives. */
const near = (value: number, expected: number, share: number): void => {
  expect(Math.abs(value / expected - 1)).toBeLessThan(share);
};

describe('budgets of a test agree with those of the formulas', () => {
  const force = forceBudget({ force: result.maximumForce.value, class: 1 });
  const area = areaBudget(piece.section, section);

  test('Fm and Rm', () => {
    near(budgets['Fm']!.standardUncertainty, force.standardUncertainty, 1e-6);
    near(budgets['Rm']!.standardUncertainty, tensileStrengthBudget({ force, area }).standardUncertainty, 1e-4);
  });

  test('A and Z', () => {
    const length = (value: number) => ({ value, uncertainty: 0.15 });
    near(
      budgets['A']!.standardUncertainty,
      elongationBudget({ originalLength: length(40), finalLength: length(51.2) }).standardUncertainty,
      1e-4,
    );
    const byArea = reductionBudget({ originalArea: area, finalArea: { value: after.area, uncertainty: (Math.PI / 4) * 9.6 * 0.05 } });
    near(budgets['Z']!.standardUncertainty, byArea.standardUncertainty, 1e-4);
  });

  test('E on a frame that gives more than the piece', () => {
    const length = { value: 48, uncertainty: 0.24 };
    const scale = (uncertainty: number) => ({ value: 1, uncertainty });
    const byFormula = modulusBudget({
      stiffness: 1 / (COMPLIANCE + 48 / (result.modulus!.value * AREA)),
      area,
      length,
      frameCompliance: { value: COMPLIANCE, uncertainty: 0.03 * COMPLIANCE },
      forceScale: scale(force.relativeStandardUncertainty!),
      extensionScale: scale(0.004),
    });
    near(budgets['E']!.value, byFormula.value, 1e-9);
    // E bends within its uncertainty, so the difference over one u is a little more than the derivative
    near(budgets['E']!.standardUncertainty, byFormula.standardUncertainty, 0.02);
    const most = budgets['E']!.lines[budgets['E']!.dominant!]!;
    expect(most.input).toBe('frameCompliance');
  });

  test('Rp0.2: the line turns by u(E), the exponent is 20', () => {
    const proof = result.proofStrengths[0]!;
    const slope = result.modulus!.value;
    const at = { value: proof.value * AREA, uncertainty: force.relativeStandardUncertainty! * proof.value * AREA };
    const scales = proofStrengthBudget({ force: at, area, slope, offset: 0.002, exponent: 20 });
    // a wrong frame, length or displacement moves curve and line alike: the line's own turn cancels, what is left is below its leverage
    expect(proof.standardUncertainty!).toBeGreaterThan(0.999 * scales.standardUncertainty);
    const turned = proofStrengthBudget({
      force: at,
      area,
      slope: { value: slope, uncertainty: result.modulus!.standardUncertainty! },
      offset: 0.002,
      exponent: 20,
    });
    expect(proof.standardUncertainty!).toBeLessThan(turned.standardUncertainty);
  });
});

describe('what a result states', () => {
  test('every quantity has its standard uncertainty, and its budget under its symbol', () => {
    // without a neck the highest force of the record, at its end, was the maximum
    const brittle = analyseTension(record, { ...roundPiece, afterFracture: { gaugeLength: 40.8, area: 49.3 } }, options);
    const own = brittle.uncertainty!;
    for (const { symbol, standardUncertainty } of quantitiesOf(brittle)) {
      expect(standardUncertainty, symbol).toBeGreaterThan(0);
      expect(standardUncertainty, symbol).toBe(own[symbol]?.standardUncertainty);
      expect(own[symbol]?.symbol).toBe(symbol);
    }
    expect(Object.keys(own)).toEqual(
      expect.arrayContaining(['mE', 'E', 'Rp0.2', 'Rt0.5', 'Fm', 'Rm', 'Agt', 'Ag', 'A', 'Z', 'n', 'K', 'Ur']),
    );
  });

  test('of a whole simulated test too: yield points, fracture, necking, energies', () => {
    const whole = uncertainTest('steel with a yield point, extensometer', 2);
    const found = analysed(whole);
    const stated = quantitiesOf(found).map(({ symbol, standardUncertainty }) => [symbol, standardUncertainty !== undefined] as const);
    expect(stated.filter(([, known]) => !known)).toEqual([]);
    expect(stated.map(([symbol]) => symbol)).toEqual(expect.arrayContaining(['ReH', 'ReL', 'Ae', 'At', 'U', 'εu', 'n', 'K']));
    expect(found.uncertainty!['Rm']!.lines.map(({ input, type }) => `${input} ${type}`)).toEqual(
      expect.arrayContaining(['force B', 'section.diameter B', 'noise A', 'shift by noise B']),
    );
  });

  test('nothing but a finding changes where the option is not given', () => {
    const plain = analyseTension(record, piece, { frameCompliance: COMPLIANCE });
    expect(plain).not.toHaveProperty('uncertainty');
    expect(plain.tensileStrength).not.toHaveProperty('standardUncertainty');
    expect(plain.proofStrengths[0]?.value).toBe(result.proofStrengths[0]?.value);
    // beside these, what the budgets say against themselves
    expect(plain.findings).toEqual(result.findings.filter(({ code }) => !code.startsWith('budgets-')));
  });

  test('coverage is carried through; the result survives its round trip as JSON', () => {
    expect(budgets['Rm']!.coverageFactor).toBeCloseTo(2, 6);
    const wider = analyseTension(record, piece, { ...options, uncertainty: { forceClass: 1, coverageFactor: 3 } });
    expect(wider.uncertainty!['Rm']!.coverageFactor).toBe(3);
    expect(fromJson(toJson(result))).toEqual(result);
  });

  test('readings of L0 move what defaults to it', () => {
    const short: TestPiece = { section: piece.section, gaugeLength: 40 };
    const byExtension = { force: record.force, extension: record.travel! };
    const found = analyseTension(byExtension, short, { uncertainty: { gaugeLength: 0.4 } });
    near(found.elasticSlope!.standardUncertainty! / found.elasticSlope!.value, 0.01, 1e-3);
    expect(found.findings.find(({ code }) => code === 'uncertainty-incomplete')?.values['missing']).toBe('force, section, displacement');
  });
});

describe('findings', () => {
  const codes = (found: { readonly findings: readonly { readonly code: string }[] }) => found.findings.map(({ code }) => code);

  test('what was not given is named, and A and Z wait for their readings', () => {
    const found = analyseTension(record, piece, { frameCompliance: COMPLIANCE, uncertainty: { force: 0.005 } });
    const finding = found.findings.find(({ code }) => code === 'uncertainty-incomplete');
    expect(finding?.values['missing']).toBe(
      'section, displacement, parallelLength, frameCompliance, gaugeLength, finalGaugeLength, finalArea',
    );
    expect(found.elongationAfterFracture).not.toHaveProperty('standardUncertainty');
    expect(found.reductionOfArea).not.toHaveProperty('standardUncertainty');
    near(found.tensileStrength.standardUncertainty! / found.tensileStrength.value, 0.005, 1e-6);
    expect(codes(result)).not.toContain('uncertainty-incomplete');
  });

  test('a neck read as diameters counts like its area, lengths over marks like a final length', () => {
    const read: TestPiece = {
      ...roundPiece,
      afterFracture: { diameters: [4.8, 4.8], subdivision: { intervals: 10, between: 4, xToY: 22, beyondY: 14.6 } },
    };
    const found = analyseTension(record, read, options);
    expect(found.elongationAfterFracture!.value).toBeCloseTo(result.elongationAfterFracture!.value, 12);
    for (const symbol of ['A', 'Z'])
      expect(found.uncertainty![symbol]!.standardUncertainty).toBeCloseTo(budgets[symbol]!.standardUncertainty, 12);
    const without = analyseTension(record, read, { frameCompliance: COMPLIANCE, uncertainty: { force: 0.005 } });
    expect(without.findings.find(({ code }) => code === 'uncertainty-incomplete')?.values['missing']).toContain(
      'gaugeLength, finalGaugeLength, finalArea',
    );
  });

  test('noise that drifts: noise-correlated', () => {
    expect(codes(analysed(uncertainTest('aluminium, correlated noise', 1)))).toContain('noise-correlated');
    expect(codes(analysed(uncertainTest('aluminium, extensometer', 1)))).not.toContain('noise-correlated');
  });

  test('E on a frame in doubt is not linear: the budget says so', () => {
    const soft = analyseTension(record, piece, { frameCompliance: COMPLIANCE, uncertainty: { frameCompliance: 0.15 } });
    expect(codes(soft.uncertainty!['E']!)).toContain('budget-not-linear');
  });
});

describe('noise', () => {
  const scenario = {
    material: { modulus: 70_000, yieldStress: 250, hardening: { law: 'swift' as const, prestrain: 0.02, exponent: 0.2 } },
    piece: { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 },
    // no whole multiple of each other: else readings without noise are as if in steps that the drive goes between two samples
    hand: { speed: 0.02, speedAfterYield: 0.213 },
  };

  test('noise that is given counts instead of what the record shows', () => {
    const clean = simulateTension({ ...scenario, logger: { extensometer: true } });
    const uncertainty = { noise: { force: 20, displacement: 2e-4, correlation: 0 } };
    const found = analyseTension(clean.record, scenario.piece, { uncertainty });
    expect(found.uncertainty!['Rp0.2']!.lines[0]).toMatchObject({ input: 'noise', type: 'A', degreesOfFreedom: 26 });
    const silent = analyseTension(clean.record, scenario.piece, { uncertainty: {} });
    expect(silent.uncertainty!['Rm']).toBeUndefined();
  });

  test('a reading in coarse steps has noise of a step over √12, though most neighbours are equal', () => {
    const steps = { force: 120, travel: 0.008 };
    const coarse = simulateTension({ ...scenario, logger: { rate: 100, loadStep: steps.force, motionStep: steps.travel } });
    const { task, doubts } = runTension('analyseTension', coarse.record, scenario.piece, { uncertainty: {} });
    const noise = tensionNoise(task, doubts!.noise);
    expect(noise.force).toBeGreaterThan(0.99 * (steps.force / Math.sqrt(12)));
    expect(noise.displacement).toBeGreaterThan(0.99 * (steps.travel / Math.sqrt(12)));
  });

  test('a slope by a given window: its scatter is its standard error', () => {
    const noisy = simulateTension({ ...scenario, logger: { extensometer: true, forceNoise: 20 }, seed: 3 });
    const modulus = { window: { by: 'stress' as const, from: 50, to: 200 } };
    const plain = analyseTension(noisy.record, scenario.piece, { modulus, uncertainty: {} });
    const line = plain.uncertainty!['mE']!.lines.find(({ input }) => input === 'noise')!;
    // 40 repeats know it to 11 %, the noise level of some hundred samples to 10 %
    near(line.standardUncertainty, plain.modulusWindow!.relativeStandardError * plain.elasticSlope!.value, 0.4);
  });
});

describe('repeats with fresh noise', () => {
  // a clean line in a given window, and noise of the force that is given: the standard error of its slope is σ over √Sxx
  const { record: clean } = simulateTension({
    material: { modulus: 70_000, yieldStress: 250, hardening: { law: 'swift', prestrain: 0.02, exponent: 0.2 } },
    piece: roundPiece,
    logger: { extensometer: true, rate: 10, forceNoise: 0, motionNoise: 0, tail: 1 },
  });
  const found = (force: Float64Array) =>
    analyseTension({ ...clean, force }, roundPiece, {
      modulus: { window: { by: 'stress', from: 50, to: 200 } },
      uncertainty: { noise: { force: 20, displacement: 0, correlation: 0 } },
    });
  const uOf = (result: ReturnType<typeof found>) =>
    result.uncertainty!['mE']!.lines.find(({ input }) => input === 'noise')!.standardUncertainty;

  test('are drawn anew for each record, so that their chance is not the same in every test, and alike for the same', () => {
    const plain = found(clean.force);
    expect(uOf(found(clean.force))).toBe(uOf(plain));
    const { first, last } = plain.modulusWindow!;
    const strains = plain.curve.strain.slice(first, last + 1);
    const mean = strains.reduce((a, b) => a + b, 0) / strains.length;
    const error = 20 / AREA / Math.sqrt(strains.reduce((sum, e) => sum + (e - mean) ** 2, 0));
    // records that differ in a billionth of a newton after the fracture
    const shares = Array.from({ length: 30 }, (_, k) => {
      const force = Float64Array.from(clean.force);
      force[force.length - 1] = 1e-9 * (k + 1);
      return uOf(found(force)) / error;
    });
    const middle = shares.reduce((a, b) => a + b, 0) / shares.length;
    const scatter = Math.sqrt(shares.reduce((sum, one) => sum + (one - middle) ** 2, 0) / (shares.length - 1));
    // 26 degrees of freedom know a deviation to one over √52: thirty of them to 2.5 %, their own scatter to 13 %; four times that either way
    near(middle, 1, 0.1);
    near(scatter * Math.sqrt(52), 1, 0.52);
  });
});

describe('noise that drifts', () => {
  const drifting = (seed: number) => {
    const { record: read, piece: tested, options: doubts, truth } = uncertainTest('aluminium, correlated noise', seed, false);
    const { task, doubts: checked, result: found } = runTension('analyseTension', read, tested, doubts);
    return { task, found, noise: tensionNoise(task, checked!.noise), truth: truth.modulus };
  };
  const tests = Array.from({ length: 40 }, (_, k) => drifting(2001 + k));
  const rms = (values: readonly number[]) => Math.hypot(...values) / Math.sqrt(values.length);

  test('the standard error of a mean grows by the root of the sum of all correlations', () => {
    for (const correlation of [0, 0.3, 0.9]) {
      let sum = 1;
      for (let k = 1; k < 1000; k += 1) sum += 2 * correlation ** k;
      expect(errorOfDrift({ correlation })).toBeCloseTo(Math.sqrt(sum), 12);
    }
  });

  test('a correlation that few samples told leaves few degrees of freedom: half the square of the value over its own doubt', () => {
    const [correlation, toldBy] = [0.9, 200];
    const slow = (rho: number) => 1 / (1 - rho);
    const doubt = Math.sqrt((1 - correlation ** 2) / toldBy);
    const slope = (slow(correlation + 1e-6) - slow(correlation - 1e-6)) / 2e-6;
    const expected = (slow(correlation) / (slope * doubt)) ** 2 / 2;
    expect(freedomOfDrift({ force: 15, displacement: 0, correlation, toldBy }) / expected).toBeCloseTo(1, 6);
    expect(freedomOfDrift({ force: 15, displacement: 0, correlation })).toBe(Infinity);
    for (const { found } of tests.slice(0, 5)) {
      const line = found.uncertainty!['n']!.lines.find(({ input }) => input === 'noise')!;
      expect(line.degreesOfFreedom).toBeLessThan(13);
    }
  });

  test('what a sample does not owe to the one before is found, beyond the knee of the curve too', () => {
    const fresh = tests.map(({ noise }) => noise.force * Math.sqrt(1 - noise.correlation ** 2));
    const mean = fresh.reduce((sum, one) => sum + one, 0) / fresh.length;
    // of some 200 samples each, in 40 tests: known to 0.8 %; three of these, and half a percent for the terms of the trends
    expect(Math.abs(mean / (15 * Math.sqrt(1 - 0.9 ** 2)) - 1)).toBeLessThan(0.03);
  });

  test('a window that knows of it has the surer, less steep line; without drift, and where no bound chose it, it stays', () => {
    const surer = tests.filter(({ task, noise }) => {
      const [one, other] = [task.numbers.line, withFairWindow(task, noise).numbers.line];
      return one.ok && other.ok && other.standardError <= one.standardError && other.slope <= one.slope;
    });
    expect(surer.length).toBe(tests.length);
    const { task, noise } = tests[0]!;
    expect(withFairWindow(task, { ...noise, correlation: 0 })).toBe(task);
    const given = { by: 'stress', from: 50, to: 200 } as const;
    const { record: read, piece: tested } = uncertainTest('aluminium, correlated noise', 2001, false);
    const byStress = runTension('analyseTension', read, tested, { modulus: { window: given } }).task;
    expect(withFairWindow(byStress, noise)).toBe(byStress);
  });

  test('the stated uncertainty of E is as large as its error, not half as large again', () => {
    const error = rms(tests.map(({ found, truth }) => found.modulus!.value - truth));
    const stated = rms(tests.map(({ found }) => found.modulus!.standardUncertainty!));
    // of 40 errors their root mean square is known to 11 %, and so is that of the uncertainties; two of both together
    expect(Math.abs(Math.log(stated / error))).toBeLessThan(0.32);
  });

  test('a slope by a given window, the noise given: as the variance of a weighted sum of correlated samples', () => {
    const { record: read, piece: tested } = uncertainTest('aluminium, correlated noise', 3, false);
    const [first, last] = [140, 220];
    const { task, result: found } = runTension('analyseTension', read, tested, {
      modulus: { window: { by: 'samples', first, last } },
      uncertainty: { noise: { force: 15, displacement: 0, correlation: 0.9 } },
    });
    const strain = task.recorded.strain.slice(first, last + 1);
    const mean = strain.reduce((sum, one) => sum + one, 0) / strain.length;
    const squares = strain.reduce((sum, one) => sum + (one - mean) ** 2, 0);
    const weight = strain.map((one) => (15 * (one - mean)) / squares / task.lengths.area);
    let variance = 0;
    for (const [i, a] of weight.entries()) for (const [j, b] of weight.entries()) variance += a * b * 0.9 ** Math.abs(i - j);
    const line = found.uncertainty!['mE']!.lines.find(({ input }) => input === 'noise')!;
    // 40 repeats know it to a seventh, two of these
    expect(Math.abs(line.standardUncertainty / Math.sqrt(variance) - 1)).toBeLessThan(0.28);
    expect(line.degreesOfFreedom).toBe(26);
  });
});

describe('coverage of the truth, 40 tests of each kind', () => {
  /** Least count that a binomial variable of 40 with 0.9545 reaches with all but 0.1 % of probability. */
  const least = (() => {
    let sum = 0;
    for (let k = 0; ; k += 1) {
      let choose = 1;
      for (let i = 0; i < k; i += 1) choose *= (40 - i) / (k - i);
      sum += choose * 0.9545 ** k * 0.0455 ** (40 - k);
      if (sum > 0.001) return k;
    }
  })();

  test.each<Kind>(['steel, extensometer', 'aluminium, extensometer', 'aluminium, correlated noise', 'steel, travel less the frame'])(
    '%s: Rp0.2, Rm, E',
    (kind) => {
      const covered: Record<string, number> = {};
      for (let seed = 1001; seed <= 1040; seed += 1) {
        const one = uncertainTest(kind, seed);
        for (const [symbol, [value, truth, u]] of Object.entries(compared(one, analysed(one))))
          covered[symbol] = (covered[symbol] ?? 0) + Number(Math.abs(value - truth) <= 2 * u);
      }
      for (const symbol of ['Rp0.2', 'Rm', 'E']) expect(covered[symbol], symbol).toBeGreaterThanOrEqual(least);
    },
  );
});

describe('an extensometer that was logged and read nothing', () => {
  const { record: without, piece: tested, options: doubts } = uncertainTest('steel, travel less the frame', 7);
  const { force } = without;
  const nothing = force.map(() => NaN);
  const once = nothing.map((x, i) => (i === 0 ? 0 : x));
  /** A result but for the hash of its columns and what is said of the empty one. */
  const rest = (columns: object) => {
    const { findings, provenance, ...others } = analyseTension({ ...without, ...columns }, tested, doubts);
    return toJson({ ...others, findings: findings.filter(({ code }) => code !== 'channel-empty'), options: provenance.options });
  };

  test.each([
    ['extension', nothing],
    ['extension', once],
    ['strain', nothing],
    ['strain', once],
  ] as const)('%s: the result is that of travel alone, its uncertainty too; the empty channel is said', (column, values) => {
    const { uncertainty, findings, extensionBasis } = analyseTension({ ...without, [column]: values }, tested, doubts);
    expect(extensionBasis).toBe('travel');
    expect(findings.filter(({ code }) => code === 'channel-empty').map((one) => one.values)).toEqual([{ column }]);
    expect(uncertainty!['Rp0.2']!.standardUncertainty).toBeGreaterThan(0);
    expect(rest({ [column]: values })).toBe(rest({}));
  });

  test('beside a strain that was read, the strain counts', () => {
    const strain = without.travel!.map((x) => x / 48);
    expect(rest({ strain, extension: once })).toBe(rest({ strain }));
  });
});

describe('refusals', () => {
  const refused = (uncertainty: object) => refusal(() => analyseTension(record, piece, { uncertainty }));
  test.each<[string, object]>([
    ['unknown-option options.uncertainty.forces', { forces: 1 }],
    ['ambiguous options.uncertainty.forceClass', { force: 0.01, forceClass: 1 }],
    ['out-of-range options.uncertainty.forceClass', { forceClass: 5 }],
    ['unknown-option options.uncertainty.section.width', { section: { width: 0.1 } }],
    ['out-of-range options.uncertainty.force.uncertainty', { force: -1 }],
    ['unknown-option options.uncertainty.noise.level', { noise: { level: 1 } }],
    ['out-of-range options.uncertainty.noise.force', { noise: { force: -1 } }],
    ['out-of-range options.uncertainty.noise.correlation', { noise: { correlation: 1 } }],
    ['out-of-range options.uncertainty.coverage', { coverage: 2 }],
    ['ambiguous options.uncertainty.coverageFactor', { coverage: 0.9, coverageFactor: 2 }],
  ])('%s', (expected, uncertainty) => {
    expect(refused(uncertainty)).toBe(expected);
  });

  test('a doubt about what the piece does not have is checked, and then counts for nothing', () => {
    const call = (uncertainty: object) => analyseTension(record, roundPiece, { frameCompliance: COMPLIANCE, uncertainty });
    expect(refusal(() => call({ finalArea: NaN }))).toMatch(/^not-finite options\.uncertainty\.finalArea/);
    expect(refusal(() => call({ finalGaugeLength: { halfWidth: 'x' } }))).toMatch(/^wrong-type .*\.halfWidth$/);
    expect(call({ force: 0.01, finalArea: 1 }).uncertainty).toEqual(call({ force: 0.01 }).uncertainty);
  });
});
