import { cautionsFor, type UnloadingResult } from '../methods/index.js';
import { axes, figure, ink, largest, lineLayer, pointLayers, thinned, type Figure } from './figureParts.js';
import { number, percent, shownAs, type MethodPage } from './MethodPage.js';

/** Stress against strain with the tops and the permanent sets. */
function loopsFigure({ curve, loops }: UnloadingResult): Figure {
  const { strain, stress } = curve;
  const end = Math.max(...loops.map(({ bottom }) => bottom.index), 0);
  // what lies far beyond the last loop would press the loops together
  const reach = loops.length > 0 ? 1.5 * largest(strain, end + 1) : largest(strain);
  let last = 0;
  while (last + 1 < strain.length && (last < end || strain[last + 1]! <= reach)) last += 1;
  const most = Math.max(largest(strain, last + 1), 1e-9);
  const top = Math.max(largest(stress, last + 1), 1e-9);
  const encoding = axes({ title: 'Strain e / %', from: -2 * most, to: 106 * most }, { title: 'Stress R / MPa', from: 0, to: 1.12 * top });
  return figure('Stress against strain with its unloadings', `${loops.length} unloadings below ${number(top, 4)} MPa.`, [
    lineLayer(thinned({ x: strain.subarray(0, last + 1), y: stress.subarray(0, last + 1), xFactor: 100 }), encoding, {
      color: ink.curve,
      strokeWidth: 1.4,
    }),
    ...loops.map(({ top: { stress: level }, permanentSet, slope }) =>
      lineLayer(
        [
          { i: 0, x: 100 * permanentSet.value, y: 0 },
          { i: 1, x: 100 * (permanentSet.value + level / slope.value), y: level },
        ],
        encoding,
        { color: ink.line, strokeDash: [5, 4], strokeWidth: 1 },
      ),
    ),
    ...pointLayers(
      loops.map((loop, k) => ({ x: 100 * loop.top.strain, y: loop.top.stress, text: String(k + 1), side: 'left' })),
      encoding,
    ),
  ]);
}

/** Slope of each unloading against the permanent set that it leaves. */
function slopesFigure({ loops }: UnloadingResult): Figure | undefined {
  if (loops.length < 2) return undefined;
  const slopes = loops.map(({ slope }) => slope.value / 1000);
  const sets = loops.map(({ permanentSet }) => 100 * permanentSet.value);
  const most = Math.max(...sets, 1e-9);
  const [low, high] = [Math.min(...slopes), Math.max(...slopes)];
  const room = Math.max(0.3 * (high - low), 0.02 * high);
  const encoding = axes(
    { title: 'Permanent set / %', from: Math.min(...sets, 0) - 0.05 * most, to: 1.15 * most },
    { title: 'Slope of the unloading / GPa', from: low - room, to: high + room },
  );
  return figure(
    'Slope of the unloadings',
    `Slopes from ${number(low, 4)} to ${number(high, 4)} GPa.`,
    pointLayers(
      slopes.map((y, k) => ({ x: sets[k]!, y, text: String(k + 1), side: 'right' })),
      encoding,
    ),
  );
}

/** @internal The page of unloadings. */
export const unloadingPage: MethodPage<UnloadingResult> = {
  title: 'Tension test with unloadings',
  identity: ({ testPiece: { section, gaugeLength }, extensionBasis, loops }) => [
    ['Section', `${section.shape}; S0 = ${number(section.area, 5)} mm²`],
    ['Gauge length L0', `${number(gaugeLength, 5)} mm`],
    ['Strain from', extensionBasis.replaceAll('-', ' ')],
    ['Unloadings', String(loops.length)],
  ],
  quantities: (result) => {
    const stamp = result.extensionBasis === 'travel' ? 'determined from crosshead displacement' : undefined;
    return [
      ...shownAs('permanentSetStrength', { unit: 'MPa', factor: 1, step: 1 }, result.permanentSetStrength, stamp),
      ...result.loops.flatMap(({ slope, permanentSet, energy }, k) => [
        ...shownAs('loops', { unit: 'GPa', factor: 1e-3, step: { figures: 3 } }, { ...slope, symbol: `${slope.symbol} ${k + 1}` }, stamp),
        ...shownAs('loops', { unit: '%', factor: 100, step: 0.01 }, { ...permanentSet, symbol: `er ${k + 1}` }, stamp),
        ...shownAs('loops', { unit: 'MJ/m³', factor: 1, step: { figures: 3 } }, energy && { ...energy, symbol: `w ${k + 1}` }, stamp),
      ]),
    ];
  },
  howFound: ({ loops, setLimit }) => [
    ...loops.map(
      ({ top, bottom, slope, permanentSet, withinLimit }, k) =>
        `Unloading ${k + 1}: from ${number(top.stress, 4)} MPa (sample ${top.index}) to ${number(bottom.stress, 3)} MPa (sample ${bottom.index}); slope ${number(slope.value / 1000, 4)} GPa; permanent set ${percent(permanentSet.value)}, ${withinLimit ? 'within' : 'above'} ${percent(setLimit)}.`,
    ),
    'An unloading is a fall of stress in which the strain goes back by at least half of what the elastic line says; a pause is none. Friction of a cylinder is in slopes and energies.',
  ],
  figures: (result) => ({ stressStrain: loopsFigure(result), unloadingSlopes: slopesFigure(result) }),
  cautions: cautionsFor('tension'),
};
