import type { LineResiduals } from './lineResiduals.js';
import type { ElasticLine } from './ModulusFit.js';

/**
 * How far the chosen slope of a straight line in white noise lies off the true one, root of the mean square over its own standard error: the window is the
 * best of many, so its slope is too high and its scatter too small. By repeats of the search (`docs/measured.md`): 1.8 to 2.3 at four standard errors
 * taken off, where long windows win; 2.4 to 2.7 at three and fewer, where short ones do, the mean greatest of some hundred independent ones.
 */
const LUCK = { at: 4, long: 2, short: 2.5 } as const;
/** However slowly the noise drifts, a line is told as well as by so many independent samples. */
const INDEPENDENT = 3;

/** What the search adds to the scatter of the line that it chose; a window by least relative error is not chosen for its slope. */
function luckOf({ criterion }: Pick<ElasticLine, 'criterion'>, drift: number): number {
  if (criterion.by !== 'lower-bound') return 1;
  // what was taken off, in true standard errors
  const off = (criterion.z ?? 0) / drift;
  return LUCK.long + (LUCK.short - LUCK.long) * Math.min(Math.max(LUCK.at - off, 0), 1);
}

/**
 * What a standard error grows by where neighbours are alike, by how often residuals change sign.
 *
 * $$ \rho = \cos\left(\frac{\pi}{2} \frac{r}{r_0}\right), \qquad \sqrt{\frac{1 + \rho}{1 - \rho}} = \cot\left(\frac{\pi}{4} \frac{r}{r_0}\right) $$
 */
function driftOf({ runs, expectedRuns }: LineResiduals, points: number): number {
  const share = expectedRuns > 0 ? Math.min(1, runs / expectedRuns) : 1;
  return Math.min(1 / Math.tan((Math.PI / 4) * share), Math.sqrt(Math.max(1, points / INDEPENDENT)));
}

/**
 * @internal Standard uncertainty of a slope by the scatter of its samples [MPa]: its standard error, which holds for independent samples of a window that
 * was given, with what drift of the noise and the luck of the search make of it. r runs where r₀ are expected of random order tell the correlation ρ of
 * neighbours (two normal numbers correlated by ρ differ in sign with the probability arccos ρ / π), and that by what a standard error grows (JCGM 100; both from memory).
 */
export function slopeDoubt(
  line: Pick<ElasticLine, 'criterion' | 'points' | 'standardError'>,
  residuals: LineResiduals | undefined,
): number {
  const drift = residuals ? driftOf(residuals, line.points) : 1;
  return line.standardError * luckOf(line, drift) * drift;
}
