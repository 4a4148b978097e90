/**
 * The numbers of `reference.py same-steps` against those of the package: only then is it the same work. They may differ by what the coarse window
 * of the script makes of them, and each limit is computed from that; what does not hang on the window must be the same.
 */
import { fitModulusKernel } from '../src/curve/index.js';
import type { TensionRecord, TensionResult } from '../src/index.js';
import { lineFit } from '../src/numeric/index.js';
import { recordOutline, surveyRecord } from '../src/record/index.js';
import { STEP } from './scenarios.js';
import { searchTask } from './searchTask.js';

/** What the script prints; null where it finds none. */
export interface SameSteps {
  readonly ms: number;
  readonly slope: number;
  readonly shift: number;
  readonly slopeError: number;
  readonly proof: number;
  readonly strength: number;
  readonly exponent: number;
  readonly energy: number;
  readonly necking: number;
  readonly total: number;
  readonly upper: number | null;
  readonly lower: number | null;
  readonly extension: number | null;
  readonly lag: number | null;
  readonly forceNoise: number;
  readonly motionNoise: number;
  readonly forceStep: number;
  readonly motionStep: number;
  readonly strainRates: readonly number[];
}

/** Cells of the script's lattice, and the samples from which on it leaves the last few out. */
const CELLS = 48;
const LONG = 16_384;
/** Sums in another order; the sum of a million products is off by some more. */
const ROUNDING = 1e-9;
/** The plastic strain from which on Hollomon's law is fitted. */
const FIT_FROM = 0.02;
/** A parabola about a crossing is taken as wide as its residuals stay within 1.25 deviations of the noise: so much lack of fit may pass. */
const UNSEEN = Math.sqrt(1.25 ** 2 - 1);
/** Places of a stage at which rates are taken. */
const PLACES = 40;

type Curve = TensionResult['curve'];

/** Scores of the exact window, and of the one between edges of the lattice that lies nearest to it: the script must find one that is no worse. */
function scoresOf(curve: Curve): { readonly exact: number; readonly near: number } {
  const task = searchTask(curve);
  const exact = fitModulusKernel(curve, { by: 'lower-bound' });
  if (!task || !exact.ok) throw new Error('no elastic line');
  const { start, end, span } = task;
  const n = end - start;
  const cells = Math.min(CELLS, n);
  const edge = (k: number): number => start + (n > LONG ? k * Math.floor(n / cells) : Math.floor((k * n) / cells + 0.5));
  const scoreOf = (first: number, last: number): number => {
    const line = lineFit(curve.strain, curve.stress, first, last);
    const fits = line && line.points >= 8 && line.slope * (curve.strain[last]! - curve.strain[first]!) >= span;
    return fits ? line.slope - 4 * line.standardError : -Infinity;
  };
  const at = ((exact.first - start) * cells) / n;
  const behind = ((exact.last + 1 - start) * cells) / n;
  let near = -Infinity;
  // down to the next edge and up to it, at either end
  for (const a of [Math.floor(at), Math.ceil(at)])
    for (const b of [Math.floor(behind), Math.min(cells, Math.ceil(behind))]) near = Math.max(near, scoreOf(edge(a), edge(b) - 1));
  return { exact: exact.score ?? NaN, near };
}

/** Share of Ae that the level of yielding, above its lowest sample, makes at the noise of the bench's curve with a yield point. */
const OF_LEVEL = 0.05;

/** Throws where the script differs from the package by more than its window explains. */
export function checkSameSteps(record: TensionRecord, raw: Curve, result: TensionResult, found: SameSteps): void {
  const { elasticSlope, modulusWindow, hardening, necking, toughness, tensileStrength } = result;
  const [proof] = result.proofStrengths;
  const [total] = result.totalExtensionStrengths;
  const outline = recordOutline(record, surveyRecord(record));
  if (!elasticSlope || !modulusWindow || !hardening || !necking || !toughness || !proof || !total || !outline?.motion)
    throw new Error('the package finds less than a sound record holds');
  const agree = (what: string, script: number | null, own: number | undefined, limit: number): void => {
    const same = script === null || own === undefined ? script === (own ?? null) : Math.abs(script - own) <= limit;
    if (!same) throw new Error(`${what}: the script finds ${String(script)}, the package ${String(own)}; allowed is ${limit}`);
  };
  const exactly = (what: string, script: number | null, own: number | undefined): void => {
    agree(what, script, own, ROUNDING * Math.abs(own ?? 0));
  };

  // the best window of the lattice scores no better than the best of all, and no worse than the one that lies nearest to that
  const slope = elasticSlope.value;
  const { exact, near } = scoresOf(raw);
  const score = found.slope - 4 * found.slopeError;
  if (score > exact * (1 + ROUNDING) || score < near * (1 - ROUNDING))
    throw new Error(`window: the script scores ${score}, the best is ${exact}, the nearest of the lattice ${near}`);
  // a score is a slope less four standard errors, so that this is the limit of the slope
  const errors = 4 * Math.abs(found.slopeError - (elasticSlope.standardUncertainty ?? 0));
  agree('slope', found.slope, slope, exact - near + errors + ROUNDING * slope);

  // either line at a stress: by so much strain one lies beside the other there
  const apart = (R: number): number => Math.abs(R / slope + modulusWindow.strainShift - R / found.slope - found.shift);
  // an offset line that moves by so much goes along the curve, whose tangent is no steeper than the chord from the proportional limit
  const limit = result.proportionalLimit?.value ?? 0;
  const chord = (proof.value - limit) / (proof.strain - limit / slope);
  const tangent = chord > 0 && chord < slope ? chord / (1 - chord / slope) : 0;
  // and the parabola about the crossing may be taken one step wider or narrower
  const unseen = (UNSEEN * found.forceNoise * tensileStrength!.value) / result.maximumForce!.value;
  agree('Rp0.2', found.proof, proof.value, apart(proof.value) * tangent + unseen);
  // the curve is read at a strain that moves with the origin
  const shifted = Math.abs(found.shift - modulusWindow.strainShift);
  agree('Rt0.5', found.total, total.value, shifted * Math.max(0, chord) + unseen);
  // the logarithm of a plastic strain that moves by so much is off by it over the least strain; and one mean comes in or goes out at an end, which
  // moves a slope of so many by twice its standard error over their root for each deviation that it is off, three at most
  const { exponent, points } = hardening;
  const atEnd = (6 * (exponent.standardUncertainty ?? 0)) / Math.sqrt(points);
  agree('n', found.exponent, exponent.value, (exponent.value * apart(tensileStrength!.value)) / FIT_FROM + atEnd);
  // the origin moves all strains alike; the place of the corner is looked for at a hundred places over its likelihood, which is some ten deviations wide
  agree('necking strain', found.necking, necking.value, shifted + 0.1 * (necking.standardUncertainty ?? 0));
  // no origin moves an area
  exactly('energy', found.energy, toughness.value);

  // single samples, and differences of strain
  exactly('Rm', found.strength, tensileStrength!.value);
  exactly('ReH', found.upper, result.upperYieldStrength?.value);
  exactly('ReL', found.lower, result.lowerYieldStrength?.value);
  // the script lays its horizontal through the lowest sample; out of noise the package lays it through the level about it, some deviations higher
  agree('Ae', found.extension, result.yieldPointExtension?.value, OF_LEVEL * (result.yieldPointExtension?.value ?? 0));
  // what the record itself tells
  exactly('noise of the force', found.forceNoise, outline.habit.noise);
  // of an even motion third differences leave rounding, which is no number to agree on
  agree(
    'noise of the motion',
    found.motionNoise,
    outline.motion.noise,
    ROUNDING * outline.motion.noise + 1e-12 * outline.motion.values.at(-1)!,
  );
  exactly('step of the force', found.forceStep, outline.habit.step);
  exactly('step of the motion', found.motionStep, outline.motion.step);
  const lag = result.findings.find(({ code }) => code === 'channels-out-of-step')?.values['samples'];
  agree('lag', found.lag, typeof lag === 'number' ? lag : undefined, 0);
  // hardening may begin one sample beside: its places then read one step of the motion more or less
  const stage = result.loading?.stages.find((one) => one.stage === 'hardening');
  if (!stage || !record.time) return;
  const [first, last] = stage.range;
  const step = STEP / result.strainLength / ((record.time[last]! - record.time[first]!) / PLACES);
  agree('strain rate of hardening', found.strainRates.at(-1) ?? null, stage.strainRate.median, step);
}
