import { requireArray, requireBetween, requireNonNegative, requireOptions, requirePositive } from '../base/index.js';
import type { PieceLengths } from '../curve/index.js';
import type { Motion } from './motion.js';
import type { SimulatedUnloading, SimulationSettings } from './settings.js';

/** What is true of an unloading. */
export interface TrueUnloading {
  /** Stress at the top [MPa]. */
  readonly stress: number;
  /** Slope of the piece between top and bottom [MPa]. */
  readonly slope: number;
  /** Strain that stays at zero stress [mm/mm]. */
  readonly permanentSet: number;
  /** Energy per volume lost in the loop [MPa]. */
  readonly energy: number;
  /** Sample at the top. */
  readonly index: number;
}

const FROM = 'simulateTension';
/** Least samples on the way down, and on the way up. */
const LEAST = 20;

/** @internal Checks the unloadings of a hand. */
export const requireUnloadings = (unloadings: readonly SimulatedUnloading[], modulus: number) =>
  requireArray(FROM, 'hand.unloadings', unloadings).map((one, k) => {
    const path = `hand.unloadings[${k}]`;
    requireOptions(FROM, one, ['stress', 'to', 'modulus', 'bow'], path);
    return {
      stress: requirePositive(FROM, `${path}.stress`, one.stress),
      to: requireBetween(FROM, `${path}.to`, one.to ?? 0.02, 0, 0.95),
      modulus: requirePositive(FROM, `${path}.modulus`, one.modulus ?? modulus),
      bow: requireNonNegative(FROM, `${path}.bow`, one.bow ?? 0),
    };
  });

/**
 * @internal Puts unloadings into a motion: from the first sample at or above each stress straight down and up again, with a bow of the
 * strain that is largest in the middle, e = line ± 4 bow s (1 − s) over the share s of the fall; the loop's area is then 4/3 bow ΔR.
 */
export function withUnloadings(
  motion: Motion,
  unloadings: ReturnType<typeof requireUnloadings>,
  lengths: PieceLengths,
  set: SimulationSettings,
  modulus: number,
): { readonly motion: Motion; readonly truth: TrueUnloading[] } {
  const columns = { time: [] as number[], force: [] as number[], travel: [] as number[], strain: [] as number[] };
  const truth: TrueUnloading[] = [];
  const put = (time: number, force: number, travel: number, strain: number): void => {
    columns.time.push(time);
    columns.force.push(force);
    columns.travel.push(travel);
    columns.strain.push(strain);
  };
  const { area, parallelLength, effectiveLength } = lengths;
  const fillets = (effectiveLength - parallelLength) / (modulus * area);
  const seat = (force: number): number => -set.seating * Math.exp(-force / set.seatingForce);
  const moved: number[] = [];
  let next = 0;
  let later = 0;
  for (let k = 0; k < motion.force.length; k += 1) {
    const [force, travel, strain] = [motion.force[k]!, motion.travel[k]!, motion.strain[k]!];
    moved.push(columns.force.length);
    put(motion.time[k]! + later, force, travel, strain);
    const spec = unloadings[next];
    const stress = force / area;
    if (!spec || stress < spec.stress) continue;
    next += 1;
    const fall = stress * (1 - spec.to);
    const compliance = set.compliance + fillets;
    const way = (parallelLength * fall) / spec.modulus + fall * area * compliance;
    const steps = Math.max(LEAST, Math.ceil((way * set.rate) / set.speed));
    const at = (down: number, sign: 1 | -1): void => {
      const e = strain - (down * fall) / spec.modulus + sign * 4 * spec.bow * down * (1 - down);
      const F = (stress - down * fall) * area;
      later += 1 / set.rate;
      put(motion.time[k]! + later, F, travel + parallelLength * (e - strain) + compliance * (F - force) + seat(F) - seat(force), e);
    };
    truth.push({
      stress,
      slope: spec.modulus,
      permanentSet: strain - stress / spec.modulus,
      energy: (4 / 3) * spec.bow * fall,
      index: columns.force.length - 1,
    });
    for (let i = 1; i <= steps; i += 1) at(i / steps, 1);
    for (let i = 1; i <= steps; i += 1) at(1 - i / steps, -1);
  }
  return {
    motion: {
      time: Float64Array.from(columns.time),
      force: Float64Array.from(columns.force),
      travel: Float64Array.from(columns.travel),
      strain: Float64Array.from(columns.strain),
      highest: motion.highest,
      pauses: motion.pauses.map(([from, to]) => [moved[from]!, moved[to]!] as const),
    },
    truth,
  };
}
