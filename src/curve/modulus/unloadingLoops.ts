import {
  failure,
  InputError,
  requireBetween,
  requireFinite,
  requireOptions,
  requirePositive,
  success,
  type CurveColumns,
  type Outcome,
  type StressStrainCurve,
} from '../../base/index.js';
import { maximumIndex } from '../../numeric/index.js';
import { fitModulusKernel } from './fitModulus.js';
import type { ElasticLine, ModulusReason } from './ModulusFit.js';
import { requireCurve } from '../requireCurve.js';
import { loopEnergy, turningPoints, unloadingLine, type TurningPoints, type UnloadingWindow } from './unloadingLoop.js';
import type { YieldPoint } from '../yield/YieldPoint.js';

/** Options of {@link unloadingLoops}. */
export interface UnloadingOptions {
  /** Slope of the elastic line [MPa], by which a true reversal is told from a pause; default that of the line up to the first top. */
  readonly modulus?: number | undefined;
  /** Strain where that line meets zero stress, from which permanent sets count [mm/mm]; default that of the same line. */
  readonly strainShift?: number | undefined;
  /** Least fall of stress, as a share of the stress at the top; default 0.1. */
  readonly minimumFall?: number | undefined;
  /** Part of the fall whose line counts, in shares from the top; or `search`: the window with the highest lower bound of slope. Default 0.1 to 0.9. */
  readonly window?: UnloadingWindow | undefined;
}

/** One unloading, with its reloading where there is one. */
export interface UnloadingLoop {
  /** Where it begins. */
  readonly top: YieldPoint;
  /** Where it ends: the first sample within 0.3 % of the fall of its lowest stress. */
  readonly bottom: YieldPoint;
  /** Slope of the unloading line [MPa]. */
  readonly slope: number;
  /** Its standard error [MPa]. */
  readonly standardError: number;
  /** First and last sample of the line. */
  readonly range: readonly [number, number];
  /** Strain that stays: where the line from the bottom meets zero stress, from the origin [mm/mm]. */
  readonly permanentSet: number;
  /** Energy per volume lost in the loop [MPa = MJ/m³]; absent where the piece was not loaded again. */
  readonly energy?: number | undefined;
}

/** Unloadings of a curve. */
export interface UnloadingLoops {
  /** In order. */
  readonly loops: readonly UnloadingLoop[];
  /** Slope [MPa] by which a reversal was told, and the origin that sets count from [mm/mm]. */
  readonly modulus: number;
  /** Strain where that line meets zero stress [mm/mm]. */
  readonly strainShift: number;
}

/** Why there is none. */
export type UnloadingReason = 'no-line' | 'no-unloading' | 'motion-not-reversed' | 'too-few-points';

const FALL = 0.1;
const WINDOW = { from: 0.1, to: 0.9 } as const;
/** The strain must go back by this share of what the elastic line says of the fall: a pause, a yield drop and a fracture do not. */
const REVERSED = 0.5;

function requireWindow(from: string, window: UnloadingWindow): UnloadingWindow {
  if (window === 'search') return window;
  requireOptions(from, window, ['from', 'to'], 'options.window');
  const low = requireBetween(from, 'options.window.from', window.from, 0, 1);
  const high = requireBetween(from, 'options.window.to', window.to, 0, 1);
  if (high <= low) throw new InputError(from, 'options.window.to', 'out-of-range', 'must be above from', high);
  return { from: low, to: high };
}

/** One loop from its turning points, or undefined where no line goes through it. */
function loopOf(curve: StressStrainCurve, turn: TurningPoints, window: UnloadingWindow, shift: number): UnloadingLoop | undefined {
  const { top, bottom } = turn;
  const line = unloadingLine(curve, top, bottom, window);
  if (!line) return undefined;
  const { strain, stress } = curve;
  const point = (index: number): YieldPoint => ({ stress: stress[index]!, strain: strain[index]! - shift, index });
  const energy = loopEnergy(curve, turn);
  return {
    top: point(top),
    bottom: point(bottom),
    ...line,
    permanentSet: strain[bottom]! - stress[bottom]! / line.slope - shift,
    ...(energy === undefined ? {} : { energy }),
  };
}

/** @internal The elastic line up to the first top that a curve is unloaded from; without one, up to its maximum. */
export const lineBeforeUnloading = (curve: StressStrainCurve, minimumFall = FALL): Outcome<ElasticLine, ModulusReason> =>
  fitModulusKernel(curve, { by: 'lower-bound' }, turningPoints(curve, minimumFall)[0]?.top ?? maximumIndex(curve.stress));

/** @internal {@link unloadingLoops} on a checked curve. */
export function unloadingLoopsKernel(
  curve: StressStrainCurve,
  { modulus, strainShift, minimumFall = FALL, window = WINDOW }: UnloadingOptions,
): Outcome<UnloadingLoops, UnloadingReason> {
  const { strain, stress } = curve;
  const turns = turningPoints(curve, minimumFall);
  const first = turns[0];
  if (!first) return failure('no-unloading', `the stress never falls by ${Number((100 * minimumFall).toPrecision(3))} % of itself`);
  const line = modulus === undefined || strainShift === undefined ? fitModulusKernel(curve, { by: 'lower-bound' }, first.top) : undefined;
  if (line?.ok === false) return failure('no-line', `no elastic line before the first top: ${line.message}`);
  const slope = modulus ?? line!.slope;
  const shift = strainShift ?? line!.strainShift;
  const real = turns.filter(({ top, bottom }) => strain[top]! - strain[bottom]! >= (REVERSED * (stress[top]! - stress[bottom]!)) / slope);
  const loops = real.flatMap((turn) => loopOf(curve, turn, window, shift) ?? []);
  if (real.length > 0 && loops.length === 0) return failure('too-few-points', 'no unloading has samples enough for a line');
  if (loops.length === 0)
    return failure('motion-not-reversed', 'where the stress falls the strain does not go back: pauses, yield drops or fracture');
  return success({ loops, modulus: slope, strainShift: shift });
}

/**
 * Unloadings of a curve: their modulus, the permanent set that each leaves, and the energy lost in each loop.
 *
 * $$ E_u = \frac{\mathrm{d}R}{\mathrm{d}e}\bigg|_{\downarrow}, \qquad e_r = e_b - \frac{R_b}{E_u}, \qquad w = \oint R\, \mathrm{d}e $$
 *
 * @remarks
 * An unloading is a fall of stress by a tenth of itself at least, in which the strain goes back by at least half of what the elastic line says: in a pause
 * the force relaxes and the motion stands still, at a yield drop and at fracture it goes on. The line is fitted to the middle of the fall (0.1 to
 * 0.9), or searched for. The energy is the area between reloading and unloading over the strain that both pass. Friction of a cylinder widens loops and bends their lines: the force must be
 * verified while falling.
 *
 * @param curve - Strain [mm/mm] and stress [MPa] as recorded, at least 3 samples, finite.
 * @param options - Elastic line, least fall, window.
 * @returns The loops, or why there is none: `no-unloading`, `motion-not-reversed`, `no-line`, `too-few-points`.
 * @throws {@link InputError} `not-finite`, `too-few`, `unequal-lengths`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const up = (from: number, to: number) => Array.from({ length: 101 }, (_, i) => from + ((to - from) * i) / 100);
 * const stress = [...up(0, 300), ...up(300, 0), ...up(0, 320)];
 * const strain = [...up(0, 300).map((R) => R / 2e5 + 1e-3 * (R / 300) ** 20), ...up(300, 0).map((R) => R / 2e5 + 1e-3), ...up(0, 320).map((R) => R / 2e5 + 1e-3)];
 * const { loops } = required(unloadingLoops({ strain, stress }));
 * loops[0]?.slope; // => 200000
 * loops[0]?.permanentSet; // => 0.001
 * ```
 *
 * @see ISO 6892-1:2019, permanent set strength; ASTM E111 (unloading). Checked in `test/curve/unloadingLoops.test.ts`.
 */
export function unloadingLoops(curve: CurveColumns, options: UnloadingOptions = {}): Outcome<UnloadingLoops, UnloadingReason> {
  const from = 'unloadingLoops';
  const checked = requireCurve(from, curve, 3);
  return unloadingLoopsKernel(checked, requireUnloadingOptions(from, options));
}

/** @internal Checks the options before any work. */
export function requireUnloadingOptions(from: string, options: UnloadingOptions): UnloadingOptions {
  requireOptions(from, options, ['modulus', 'strainShift', 'minimumFall', 'window']);
  const { modulus, strainShift, minimumFall = FALL, window = WINDOW } = options;
  return {
    modulus: modulus === undefined ? undefined : requirePositive(from, 'options.modulus', modulus),
    strainShift: strainShift === undefined ? undefined : requireFinite(from, 'options.strainShift', strainShift),
    minimumFall: requireBetween(from, 'options.minimumFall', minimumFall, 0.001, 1),
    window: requireWindow(from, window),
  };
}
