import type { StressStrainCurve } from '../../base/index.js';
import { mean } from '../../numeric/index.js';

/** What the steps of a coarse strain reading leave open of the slope of a line. */
export interface StrainSteps {
  /** One step of the reading, as strain [mm/mm]. */
  readonly step: number;
  /** Steps that the line rises by within its window [1]. */
  readonly steps: number;
  /** Standard uncertainty that they leave to the slope beyond the scatter of its samples, as a share of it [1]. */
  readonly slopeShare: number;
}

/** A rise by more of a step is the reading's next: of travel the frame may take nearly all of a step. A fall by more was read, for the frame alone takes less. */
const RISE = 1 / 20;
const FALL = 1 / 2;

/** True where a reading in such steps moves on by this change of the strain. */
const movesOn = (change: number, step: number): boolean => change > RISE * step || change < -FALL * step;

/** Of samples from one place to another whose error runs evenly from one end to the other, each end by itself within a step: the squares of what both ends weigh in the slope. */
function squaresOfEnds(strain: Float64Array, middle: number, from: number, to: number): number {
  let [all, late] = [0, 0];
  for (let i = from; i <= to; i += 1) {
    const x = strain[i]! - middle;
    all += x;
    late += to > from ? (x * (i - from)) / (to - from) : 0;
  }
  return late ** 2 + (all - late) ** 2;
}

/** Of ten stretches and more the errors cancel, to 10^(-3/2) of those of one: the scatter tells them. */
const FEWEST = 10;

/** The same over all stretches in which each sample moves on by as many steps as the one before; of short ones, the squares of their samples. */
function squaresOfStrides(strain: Float64Array, middle: number, first: number, last: number, step: number): number {
  let squares = 0;
  let from = first;
  for (let i = first; i <= last; i += 1) {
    const on = i < last && (i === from || Math.abs(strain[i + 1]! - 2 * strain[i]! + strain[i - 1]!) < step / 2);
    if (on) continue;
    if (FEWEST * (i - from) > last - first) squares += squaresOfEnds(strain, middle, from, i);
    else for (; from <= i; from += 1) squares += (strain[from]! - middle) ** 2;
    from = i + 1;
  }
  return squares;
}

/**
 * @internal What steps of the strain leave open of a least-squares line; undefined where the strain was not read in steps.
 *
 * $$ \left(\frac{u(m)}{m}\right)^2 = \frac{q^2}{12} \frac{\sum_j X_j^2 - \sum_i x_i^2}{\left(\sum_i x_i^2\right)^2}
 *    + \left(\frac{q^2 / 12}{\frac1n \sum_i x_i^2}\right)^2, \qquad x_i = e_i - \bar e, \quad X_j = \sum_{i \in j} x_i $$
 *
 * A strain read in steps q is off by up to half of one, evenly: by q/√12. Samples at which the reading stands (the stand j) share that error, and
 * the slope is off by the sum of X_j times it over that of x². What it would be if each sample had an error of its own is in the scatter of the line, and taken off.
 * The second term is how much too flat a line is that begins and ends anywhere within a step. Of r stands of equal length it is about r^(-3/2): a tenth of the slope at
 * five. Long rests weigh more; noise that moves the reading to and fro leaves little.
 *
 * Samples that move on by the same number of steps each, as where a steady drive goes a whole number of them between two samples, scatter about no line at all, and yet their error
 * runs on evenly by up to a step: what both ends of such a stretch leave open stands in place of X² where it is more. Of a window that is one stretch this is a share of q/(√6 Δe).
 *
 * @param step - One step of the reading [mm/mm], as the record tells it; 0 where it does not: then stands tell it, where there are few.
 */
export function strainSteps(
  { strain, stress }: StressStrainCurve,
  { slope, first, last }: { readonly slope: number; readonly first: number; readonly last: number },
  step: number,
): StrainSteps | undefined {
  const n = last - first + 1;
  let stands = 1;
  for (let i = first + 1; i <= last; i += 1) if (movesOn(strain[i]! - strain[i - 1]!, step)) stands += 1;
  // so few steps in a whole record that nothing else tells them
  const told = 2 * stands <= n ? Math.abs(strain[last]! - strain[first]!) / (stands - 1) : 0;
  const own = step > 0 ? step : told;
  if (!(own > 0)) return undefined;
  const middle = mean(strain.subarray(first, last + 1));
  let [squares, ofStands, stand] = [0, 0, 0];
  for (let i = first; i <= last; i += 1) {
    const x = strain[i]! - middle;
    squares += x * x;
    stand += x;
    if (i < last && !movesOn(strain[i + 1]! - strain[i]!, step)) continue;
    ofStands += stand * stand;
    stand = 0;
  }
  const variance = own ** 2 / 12;
  const ofStrides = squaresOfStrides(strain, middle, first, last, own);
  const shared = Math.sqrt(variance * Math.max(0, ofStands - squares, ofStrides - squares)) / squares;
  const flatter = (variance * n) / squares;
  return {
    step: own,
    steps: Math.abs(stress[last]! - stress[first]!) / slope / own,
    // beyond all of itself nothing of a slope is known; where no two samples share an error it is noise, told by the scatter and by noiseFlattening
    slopeShare: !(squares > 0) ? 1 : Math.min(1, Math.hypot(shared, ofStands > squares ? flatter : 0)),
  };
}
