import type { UnloadingResult } from '../../methods/index.js';
import type { Figure } from '../figures/Figure.js';
import { figure } from '../figures/figureStyle.js';
import { modulusStep, shownByBasis, type MethodPage } from './MethodPage.js';
import { plane } from '../figures/plane.js';
import type { Presentation } from '../words/presentation.js';
import { sectionInWords } from '../words/lineInWords.js';
import { SHARE, SLOPE } from '../words/shownUnit.js';
import { largest } from '../figures/thinned.js';

/** Stress against strain with the tops and the permanent sets. */
function loopsFigure({ curve, loops }: UnloadingResult, show: Presentation): Figure {
  const { say, value, colours } = show;
  const { strain, stress } = curve;
  const end = Math.max(...loops.map(({ bottom }) => bottom.index), 0);
  // what lies far beyond the last loop would press the loops together
  const reach = loops.length > 0 ? 1.5 * largest(strain, end + 1) : largest(strain);
  let last = 0;
  while (last + 1 < strain.length && (last < end || strain[last + 1]! <= reach)) last += 1;
  const most = Math.max(largest(strain, last + 1), 1e-9);
  const top = Math.max(largest(stress, last + 1), 1e-9);
  const { line, path, points } = plane(
    show,
    { title: say('Strain e'), metric: SHARE, from: -0.02 * most, to: 1.06 * most },
    { title: say('Stress R'), metric: 'MPa', from: 0, to: 1.12 * top },
  );
  return figure(
    show,
    say('Stress against strain with its unloadings'),
    say('{count} unloadings below {stress}.', { count: loops.length, stress: value(top, 'MPa', 4) }),
    [
      line({ x: strain.subarray(0, last + 1), y: stress.subarray(0, last + 1) }, { color: colours.curve, strokeWidth: 1.4 }),
      ...loops.map(({ top: { stress: level }, permanentSet, slope }) =>
        path(
          [
            [permanentSet.value, 0],
            [permanentSet.value + level / slope.value, level],
          ],
          { color: colours.line, strokeDash: [5, 4], strokeWidth: 1 },
        ),
      ),
      ...points(loops.map((loop, k) => ({ x: loop.top.strain, y: loop.top.stress, text: String(k + 1), side: 'left' }))),
    ],
  );
}

/** Slope of each unloading against the permanent set that it leaves. */
function slopesFigure({ loops }: UnloadingResult, show: Presentation): Figure | undefined {
  if (loops.length < 2) return undefined;
  const { say, value } = show;
  const slopes = loops.map(({ slope }) => slope.value);
  const sets = loops.map(({ permanentSet }) => permanentSet.value);
  const most = Math.max(...sets, 1e-9);
  const [low, high] = [Math.min(...slopes), Math.max(...slopes)];
  const room = Math.max(0.3 * (high - low), 0.02 * high);
  const { points } = plane(
    show,
    { title: say('Permanent set'), metric: SHARE, from: Math.min(...sets, 0) - 0.05 * most, to: 1.15 * most },
    { title: say('Slope of the unloading'), metric: SLOPE, from: low - room, to: high + room },
  );
  return figure(
    show,
    say('Slope of the unloadings'),
    say('Slopes from {low} to {high}.', { low: value(low, SLOPE, 4), high: value(high, SLOPE, 4) }),
    points(slopes.map((y, k) => ({ x: sets[k]!, y, text: String(k + 1), side: 'right' }))),
  );
}

/** @internal The page of unloadings. */
export const unloadingPage: MethodPage<UnloadingResult> = {
  title: 'Tension test with unloadings',
  steps: 'ISO 6892-1',
  identity: ({ testPiece: { section, gaugeLength }, extensionBasis, loops }, show) => [
    ['Section', sectionInWords(section, show)],
    ['Gauge length L0', show.value(gaugeLength, 'mm', 5)],
    ['Strain from', show.term(extensionBasis.replaceAll('-', ' '))],
    ['Unloadings', String(loops.length)],
  ],
  quantities: (result) => {
    const shown = shownByBasis(result.extensionBasis);
    return [
      ...shown('permanentSetStrength', 1, result.permanentSetStrength),
      ...result.loops.flatMap(({ slope, permanentSet, energy }, k) => [
        ...shown('loops', modulusStep, { ...slope, symbol: `${slope.symbol} ${k + 1}` }),
        ...shown('loops', 0.01, { ...permanentSet, symbol: `er ${k + 1}` }),
        ...shown('loops', { figures: 3 }, energy && { ...energy, symbol: `w ${k + 1}` }),
      ]),
    ];
  },
  howFound: ({ loops, setLimit }, { say, value, percent }) => [
    ...loops.map(({ top, bottom, slope, permanentSet, withinLimit }, k) =>
      say(
        withinLimit
          ? 'Unloading {number}: from {top} (sample {first}) to {bottom} (sample {last}); slope {slope}; permanent set {set}, within {limit}.'
          : 'Unloading {number}: from {top} (sample {first}) to {bottom} (sample {last}); slope {slope}; permanent set {set}, above {limit}.',
        {
          number: k + 1,
          top: value(top.stress, 'MPa', 4),
          first: top.index,
          bottom: value(bottom.stress, 'MPa', 3),
          last: bottom.index,
          slope: value(slope.value, SLOPE, 4),
          set: percent(permanentSet.value),
          limit: percent(setLimit),
        },
      ),
    ),
    say(
      'An unloading is a fall of stress in which the strain goes back by at least half of what the elastic line says; a pause is none. Friction of a cylinder is in slopes and energies.',
    ),
  ],
  figures: (result, show) => ({ stressStrain: loopsFigure(result, show), unloadingSlopes: slopesFigure(result, show) }),
  work: 'unloading',
};
