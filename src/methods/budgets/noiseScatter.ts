import type { Quantity } from '../../base/index.js';
import { randomStreams, stretchAbove } from '../../numeric/index.js';
import { requireInput, type CheckedInput } from '../../uncertainty/index.js';
import { withoutNoise } from './withoutNoise.js';
import { shiftOfLowest } from './shiftOfLowest.js';
import { columnsHash } from '../common/columnsHash.js';
import { tensionModel, type TensionChange, type TensionTask } from './tensionModel.js';
import { fillNoise, freedomOfDrift, type KnownNoise } from './tensionNoise.js';

const FROM = 'analyseTension';
/** Repeats with fresh noise: their standard deviation is known to a seventh. */
const REPEATS = 40;
/** Share of the repeats beyond either end of the stretch that their deviation is taken from; that stretch of a normal distribution, in deviations; and how much of the repeats it uses (Benson 1949, from memory). */
const TAIL = 0.07;
const NORMAL_STRETCH = 2 * 1.4758;
const EFFICIENCY = 0.65;
/** Second from either end of so many, in deviations of a normal distribution; beyond so many times what that stretch tells, the tails are heavier. */
const NORMAL_ENDS = 2 * 1.746;
const HEAVY = 1.5;
/** @internal Degrees of freedom that such repeats have. */
export const REPEAT_FREEDOM = Math.round(EFFICIENCY * REPEATS);
/** @internal Name of the line that the repeats make. */
export const NOISE = 'noise';
/** Standard errors of the middle of the repeats beyond which it is shifted. */
const SURE = 2.5;
/** @internal Contributions below this share of the value are no lines. */
export const NOTHING = 1e-9;

/** @internal Values by symbol. */
export type Values = ReadonlyMap<string, number>;
/** @internal Quantities as such. */
export const bySymbol = (quantities: readonly Quantity[]): Values => new Map(quantities.map(({ symbol, value }) => [symbol, value]));

/** Strengths at which the curve crosses a line. */
const isCrossing = (symbol: string): boolean => /^R[pt]/.test(symbol);

/** Extensions that lie at the maximum, wherever noise puts it. */
const liesAtMaximum = (symbol: string): boolean => symbol === 'Ag' || symbol === 'Agt';

/**
 * Standard deviation by the stretch of ordered values from 7 % to 93 %, the pair that knows a normal one best; unlike the root of the squares
 * it does not take its size from the odd repeat in which the search took quite another window. A level that now and then is crossed by one noisy sample has
 * heavier tails, in which an interval of 95 % ends: of a crossing it is theirs.
 */
function stretchOf(values: readonly number[], crossing: boolean): { readonly middle: number; readonly s: number } {
  const sorted = Float64Array.from(values).sort();
  const at = (share: number): number => {
    const place = share * (sorted.length - 1);
    const below = Math.floor(place);
    return sorted[below]! + (place - below) * ((sorted[below + 1] ?? sorted[below]!) - sorted[below]!);
  };
  const core = (at(1 - TAIL) - at(TAIL)) / NORMAL_STRETCH;
  const ends = (sorted[sorted.length - 2]! - sorted[1]!) / NORMAL_ENDS;
  return { middle: at(0.5), s: crossing && ends > HEAVY * core ? ends : core };
}

/** Strain over which the quiet force lies within two deviations of its noise of the maximum: no sample tells where in it the maximum is. */
function flatStrain({ record: { force }, top, recorded: { strain } }: TensionTask, noise: KnownNoise): number {
  const least = force[top]! - 2 * noise.force;
  const [first, last] = stretchAbove(force, least, top, strain.length);
  return last < strain.length ? strain[last]! - strain[first]! : 0;
}

/** @internal Scatter and shift of every quantity by noise, from repeats of the record without its noise with fresh noise; undefined of one that most of them do not have. */
export function noiseScatter(task: TensionTask, noise: KnownNoise, kept: Partial<TensionChange>) {
  const calm = withoutNoise(task, noise);
  const model = tensionModel(calm);
  // by the window that was found: what is left of the noise is smooth, and a search would follow it
  const quiet = bySymbol(model({ inputs: {}, ...kept }));
  const flat = flatStrain(calm, noise) / Math.sqrt(12);
  const lowest = shiftOfLowest(task, noise) ?? 0;
  // each record draws its own repeats: the same for all would put their chance error into every test alike, where no interval allows for it
  const random = randomStreams(Number.parseInt(columnsHash({ force: task.record.force }).slice(0, 8), 16));
  const n = task.record.force.length;
  const forceNoise = new Float64Array(n);
  const displacementNoise = new Float64Array(n);
  const found = new Map<string, number[]>();
  for (let k = 0; k < REPEATS; k += 1) {
    random.at(k);
    fillNoise(random, noise, forceNoise, displacementNoise);
    for (const { symbol, value } of model({ inputs: {}, forceNoise, displacementNoise }))
      found.set(symbol, [...(found.get(symbol) ?? []), value]);
  }
  return (symbol: string, value: number): CheckedInput[] | undefined => {
    const values = found.get(symbol) ?? [];
    const count = values.length;
    const without = quiet.get(symbol);
    if (count < REPEATS / 2 || without === undefined) return undefined;
    const stretch = stretchOf(values, isCrossing(symbol));
    const s = liesAtMaximum(symbol) ? Math.max(stretch.s, flat) : stretch.s;
    if (!(s > NOTHING * Math.abs(value))) return [];
    // noise lifts a highest sample, and whatever is chosen because it is extreme: on average, and in this record
    const bias = Math.abs(stretch.middle - without);
    const shifted = bias > (SURE * s) / Math.sqrt(EFFICIENCY * count);
    const shift = Math.max(shifted ? Math.max(bias, Math.abs(value - without)) : 0, symbol === 'ReL' ? lowest : 0);
    const source = (name: string, standardUncertainty: number, degreesOfFreedom?: number) =>
      requireInput(FROM, name, name, {
        value: 0,
        uncertainty: { standardUncertainty, degreesOfFreedom, type: degreesOfFreedom ? 'A' : 'B' },
      });
    return [
      // known as well as so many repeats tell it, of a noise that is itself known so well
      source(NOISE, s, 1 / (1 / Math.round(EFFICIENCY * count) + 1 / freedomOfDrift(noise))),
      ...(shift > NOTHING * Math.abs(value) ? [source('shift by noise', shift)] : []),
    ];
  };
}
