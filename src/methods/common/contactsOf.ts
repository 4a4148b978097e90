import { firstReaching, lineFit, noiseLevel, reachedSince } from '../../numeric/index.js';

/** A tool touches above this share of the maximum and so many standard deviations of noise; the first rise ends at so many times that. */
const TOUCH = 0.005;
const NOISE = 6;
const FIRST_RISE = 4;
/** A power law is told from a line only over more of the rise: so many times the level; no force rises more steeply at first than by the line, nor by more than the cube. */
const LONG_RISE = 10;
const POWERS = Array.from({ length: 101 }, (_, k) => 1 + k / 50);
/** Samples that a line needs, and that a power law needs. */
const FEW = 2;
const SEVERAL = 6;
/** Travel at which a line through some samples meets zero; a rise of one sample, or a tool that springs back, gives none. */
function meetsZero(force: Float64Array, travel: Float64Array, first: number, last: number): number | undefined {
  const line = lineFit(travel, force, first, last);
  return line && line.slope > 0 ? -line.intercept / line.slope : undefined;
}

/** The same by the power of the way that fits the force best: a sheet that bends before it stretches rises ever more steeply. */
function powerMeetsZero(force: Float64Array, travel: Float64Array, first: number, last: number): number | undefined {
  const rise = travel.slice(first, last + 1);
  let best = Infinity;
  let contact: number | undefined;
  for (const power of POWERS) {
    const root = force.slice(first, last + 1).map((F) => Math.max(0, F) ** (1 / power));
    const line = lineFit(rise, root, 0, rise.length - 1);
    if (!line || !(line.slope > 0)) continue;
    let squares = 0;
    rise.forEach((x, k) => {
      squares += (force[first + k]! - Math.max(0, line.intercept + line.slope * x) ** power) ** 2;
    });
    if (squares >= best) continue;
    best = squares;
    contact = -line.intercept / line.slope;
  }
  return contact;
}

/** @internal Travel at which the first rise of the force meets zero, by a line and by a power of the way, the earlier first; `highest` the sample of the maximum. */
export function contactsOf(force: Float64Array, travel: Float64Array, highest: number): [number, number] {
  const level = Math.max(TOUCH * force[highest]!, NOISE * noiseLevel(force, 0, highest + 1));
  const first = reachedSince(force, level, highest);
  const until = (times: number): number => Math.min(highest, firstReaching(force, times * level, first, highest));
  const [short, long] = [until(FIRST_RISE), until(LONG_RISE)];
  const line = short - first + 1 < FEW ? undefined : meetsZero(force, travel, first, short);
  const byLine = line ?? travel[first]!;
  const byPower = line === undefined || long - first + 1 < SEVERAL ? byLine : (powerMeetsZero(force, travel, first, long) ?? byLine);
  return [Math.min(byLine, byPower), Math.max(byLine, byPower)];
}
