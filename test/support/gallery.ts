/** One figure of every kind, from seeded simulations: the gallery of the guide, and what the tests of figures draw. All of it is invented. */
import {
  analyseBending,
  analyseBrinell,
  analyseCompression,
  analyseCupping,
  analyseReplicates,
  analyseShear,
  analyseTension,
  analyseUnloading,
  checkConsistency,
  checkPieceChart,
  compareBatches,
  compareLaws,
  fitCalibration,
  fitCompliance,
  flowCurve,
  hardeningPicture,
  interlaboratoryStudy,
  monteCarloTension,
  planTension,
  rectangular,
  required,
  round,
  trueCurve,
  type MeasuredElongation,
} from '../../src/index.js';
import { randomNumbers } from '../../src/numeric/index.js';
import * as report from '../../src/report/index.js';
import type { Figure, FigureOptions } from '../../src/report/index.js';
import {
  simulateBending,
  simulateBrinell,
  simulateCompression,
  simulateCupping,
  simulateShear,
  simulateTension,
} from '../../src/simulate/index.js';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const noise = { rate: 20, forceNoise: 8, motionNoise: 2e-4, lead: 1, tail: 1 };
const brokenPiece = (truth: ReturnType<typeof simulateTension>['truth']) => ({ ...piece, afterFracture: truth.afterFracture });

const steelTest = (seed: number, strength = 280) =>
  simulateTension({
    material: {
      modulus: 206_000,
      yieldStress: strength,
      yieldPoint: { upper: 1.09 * strength },
      hardening: { law: 'swift', prestrain: 0.03, exponent: 0.25 },
      fracture: { extension: 0.35 },
    },
    piece,
    frame: { compliance: 2e-5, slack: 0.2 },
    hand: { speed: 0.05, speedAfterYield: 0.12, pauses: [{ stress: 380, duration: 6 }] },
    logger: { ...noise, extensometer: true },
    seed,
  });
const steelRun = steelTest(1);
const spiked = { ...steelRun.record, force: steelRun.record.force.map((F, i) => (i === 900 ? F + 4000 : F)) };
const steel = analyseTension(spiked, brokenPiece(steelRun.truth), { test: { invented: true }, repairs: { spikes: true } });

const aluminiumRun = simulateTension({
  material: { modulus: 70_000, hardening: { law: 'hollomon', strengthCoefficient: 420, exponent: 0.12 }, fracture: { extension: 0.16 } },
  piece,
  hand: { speed: 0.03 },
  logger: { ...noise, extensometer: true },
  seed: 2,
});
const aluminium = analyseTension(aluminiumRun.record, brokenPiece(aluminiumRun.truth), { test: { invented: true } });

const replicates = analyseReplicates(
  [0, 3, -4, 6, -2, 30].map((off, k) => {
    const { record, truth } = steelTest(10 + k, 280 + off);
    return analyseTension(record, brokenPiece(truth), { test: { identity: `B${k + 1}`, invented: true } });
  }),
);

const trueOf = (result: typeof steel) => {
  let from = 0;
  while (result.curve.strain[from]! < 0.01) from += 1;
  return trueCurve(result.curve, { from, to: result.maximumIndex });
};
const flow = flowCurve(trueOf(aluminium), { modulus: 70_000 });
const strains = Float64Array.from({ length: 100 }, (_, i) => 0.01 * (i + 1));
const laws = compareLaws(flow, { strains });

const { normal } = randomNumbers(3);
const indicated = Float64Array.from({ length: 22 }, (_, k) => 0.9 * (k % 11) + 0.4);
const pairs = { indicated, reference: indicated.map((x) => 40 + 2510 * x + 12 * normal()) };
const steps = [2, 5, 10, 15, 20, 25].map((kilonewtons) => {
  const force = 1000 * kilonewtons;
  const run = (off: number) => Array.from({ length: 3 }, () => force * (1 + off + 0.0006 * normal()) + 6);
  return { force, rising: run(0.003), falling: run(-0.004) };
});
const displacements = [0.5, 1, 2, 5, 10].map((reference) => ({
  reference,
  rising: [1, 2].map(() => reference * 1.002 + 0.001 * normal()),
  falling: [reference * 1.002 + 0.003],
}));
const force = Float64Array.from({ length: 240 }, (_, i) => 80 * (i + 1));
const pulls = [40, 80].map((effectiveLength) => ({
  force,
  effectiveLength,
  area: 50,
  travel: force.map((F) => 0.1 + F * (2e-5 + effectiveLength / (210_000 * 50)) + 0.002 * normal()),
}));
const checks = Array.from({ length: 20 }, (_, k) => 452 + 1.5 * normal() + (k === 16 ? 9 : 0));
const time = Float64Array.from({ length: 240 }, (_, i) => 0.5 * i);
const leaking = { time, pressure: time.map((t) => 15 - 8e-4 * t + 0.002 * normal()), bore: 40 };
const friction = {
  pressure: [3, 6, 9, 12, 15],
  risingForce: [3600, 7290, 10_960, 14_650, 18_320],
  fallingForce: [3900, 7720, 11_520, 15_330, 19_160],
};

const stress = Float64Array.from({ length: 160 }, (_, i) => 1.2 * i);
const elastic = {
  stress,
  strain: stress.map((R) => R / 70_000 + 1e-5 * normal()),
  transverseStrain: stress.map((R) => (-0.33 * R) / 70_000 + 4e-6 * normal()),
};
const sheetStrain = Float64Array.from({ length: 200 }, (_, i) => 0.001 * (i + 1));
const sheetStress = sheetStrain.map((e) => (520 * Math.log1p(e) ** 0.21) / (1 + e));
const sheet = {
  strain: sheetStrain,
  stress: sheetStress,
  transverseStrain: sheetStrain.map((e, i) => {
    const sigma = sheetStress[i]! * (1 + e);
    return Math.exp(-0.62 * (Math.log1p(e) - sigma / 206_000) - (0.3 * sigma) / 206_000) - 1 + 2e-4 * normal();
  }),
};
const [short, long]: [MeasuredElongation, MeasuredElongation] = [
  { elongation: 0.34, gaugeLength: 30, area: 50.27 },
  { elongation: 0.26, gaugeLength: 80, area: 50.27 },
];

const trials = monteCarloTension(aluminiumRun.record, piece, { uncertainty: { force: 0.005 }, trials: 600, seed: 5 });

const unloaded = simulateTension({
  material: { modulus: 70_000, hardening: { law: 'hollomon', strengthCoefficient: 420, exponent: 0.12 }, fracture: { extension: 0.16 } },
  piece,
  hand: { speed: 0.03, unloadings: [{ stress: 180 }, { stress: 230 }, { stress: 260 }] },
  logger: { ...noise, extensometer: true },
});
const unloading = analyseUnloading(unloaded.record, piece);
const compressionPiece = { section: round({ diameter: 10 }), height: 15 };
const pressed = simulateCompression({
  material: { modulus: 70_000, yieldStress: 200, hardening: { law: 'swift', prestrain: 0.02, exponent: 0.2 } },
  piece: compressionPiece,
  until: 0.4,
  logger: noise,
});
const compression = analyseCompression(pressed.record, compressionPiece);
const beam = { section: rectangular({ width: 10, thickness: 5 }), setup: { points: 3 as const, span: 100 } };
const bent = simulateBending({ material: { modulus: 200_000, yieldStress: 300, tangentModulus: 2000 }, piece: beam, logger: noise });
const bending = analyseBending(bent.record, beam);
const sheared = analyseShear(simulateShear({ strength: 300, diameter: 8, planes: 2 }).record, { diameter: 8, planes: 2 });
const brinell = analyseBrinell(simulateBrinell({ hardness: 120, ballDiameter: 5, force: 2451.66, count: 5, readingNoise: 0.01 }).readings);
const cupping = analyseCupping(simulateCupping({ depth: 10.4, force: 9000 }).record, { thickness: 0.8 });
const study = required(
  interlaboratoryStudy(
    ['Ash', 'Birch', 'Cedar', 'Elm', 'Fir'].map((name, k) => ({
      name,
      values: [1, 2, 3, 4].map(() => 412 + 3 * normal() + (k === 3 ? 9 : 0)),
    })),
  ),
);
const batches = required(compareBatches([452.1, 449.8, 455, 451.4], [446.2, 444.9, 448, 447.1], { margin: 10 }));
const measured = { value: 241, standardUncertainty: 3, symbol: 'ReH' };
const specification = { lower: 235, rule: 'guarded' as const };
const plan = planTension({
  family: 'low-carbon-steel-annealed',
  section: round({ diameter: 6 }),
  frame: { capacity: 25_000, compliance: 2e-5, bore: 40, rod: 20 },
  lengths: { parallelLength: 36 },
});

/** The figures by the name of their picture. */
export function gallery(options: FigureOptions = {}): Readonly<Record<string, Figure>> {
  const named = (prefix: string, figures: Partial<Record<string, Figure>>) =>
    Object.fromEntries(Object.entries(figures).flatMap(([name, one]) => (one ? [[`${prefix}-${name}`, one]] : [])));
  const { distributions, result } = trials;
  const budget = result.uncertainty!['Rp0.2']!;
  return {
    ...named('tension', report.figures(steel, options)),
    record: report.recordFigure(spiked, { ...options, trail: steel.trail }),
    windows: report.windowsFigure(aluminium.curve, aluminium.modulusWindow!, options),
    ...named('hardening', report.hardeningFigures(hardeningPicture(trueOf(aluminium)), options)),
    laws: report.lawsFigure(laws, flow, options),
    ...named('unloading', report.figures(unloading, options)),
    ...named('compression', report.figures(compression, options)),
    ...named('bending', report.figures(bending, options)),
    ...named('shear', report.figures(sheared, options)),
    ...named('brinell', report.figures(brinell, options)),
    ...named('cupping', report.figures(cupping, options)),
    poisson: report.poissonFigure(elastic, { first: 20, last: 120 }, options),
    'strain-ratio': report.strainRatioFigure(sheet, { from: 0.03, to: 0.16, modulus: 206_000 }, options),
    'rate-sensitivity': report.rateSensitivityFigure({ stress: 300, strainRate: 0.001, otherStress: 306, otherStrainRate: 0.01 }, options),
    barba: report.barbaFigure(short, long, options),
    replicates: report.replicatesFigures(replicates, options)['ReL']!,
    batches: report.batchesFigure(batches, { ...options, symbol: 'Rm', unit: 'MPa' }),
    study: report.studyFigure(study, options),
    decision: report.decisionFigure(measured, specification, { ...options, unit: 'MPa' }),
    consistency: report.consistencyFigure(checkConsistency(steel, { hardness: { value: 150 }, record: spiked }), options),
    budget: report.budgetFigure(budget, options),
    distribution: report.distributionFigure(distributions['Rp0.2']!, { ...options, symbol: 'Rp0.2', unit: 'MPa', budget }),
    ...named('calibration', report.calibrationFigures(required(fitCalibration(pairs)), pairs, options)),
    'force-verification': report.forceVerificationFigure({ steps, range: 25_000, resolution: 6 }, options),
    'displacement-verification': report.displacementVerificationFigure({ steps: displacements, resolution: 0.001 }, options),
    compliance: report.complianceFigure(required(fitCompliance(pulls)), { ...options, pulls }),
    'check-piece': report.checkPieceFigure(checks, checkPieceChart(checks, { baseline: 12 }), { ...options, symbol: 'Rm', unit: 'MPa' }),
    leak: report.leakFigure(leaking, { ...options, from: 20 }),
    friction: report.frictionFigure(friction, { bore: 40 }, options),
    ...named('plan', report.planFigures(plan, options)),
  };
}
