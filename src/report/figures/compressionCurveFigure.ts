import type { CompressionResult } from '../../methods/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type NamedPoint } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import { SHARE } from '../words/shownUnit.js';
import { largest } from './thinned.js';

/** @internal Compressive stress against compression, with yield strength, stated strains and the strain of buckling. */
export function compressionCurveFigure(result: CompressionResult, show: Presentation): Figure {
  const { say, percent, value, colours } = show;
  const { strain, stress } = result.curve;
  const most = Math.max(largest(strain), 1e-9);
  const top = Math.max(largest(stress), 1e-9);
  const { line, path, points } = plane(
    show,
    { title: say('Compression e'), metric: SHARE, from: Math.min(0, -0.01 * most), to: 1.12 * most },
    { title: say('Compressive stress R'), metric: 'MPa', from: 0, to: 1.12 * top },
  );
  const named = (side: NamedPoint['side']) => (one: CompressionResult['proofStrengths'][number]) => ({
    x: one.strain,
    y: one.value,
    text: one.symbol,
    side,
  });
  const watched = result.findings.some(({ code }) => code === 'buckled');
  const buckles = watched ? result.buckling?.reachedAt : undefined;
  const layers = [line({ x: strain, y: stress }, { color: colours.curve, strokeWidth: 1.6 })];
  const places = [...result.proofStrengths.map(named('right')), ...result.stressesAtStrain.map(named('left'))];
  if (buckles !== undefined) {
    const i = strain.findIndex((one) => one >= buckles);
    const upright: [number, number][] = [
      [buckles, 0],
      [buckles, 1.1 * top],
    ];
    layers.push(path(upright, { color: colours.line, strokeDash: [6, 4], strokeWidth: 1.2 }));
    places.push({ x: buckles, y: stress[Math.max(i, 0)]!, text: say('buckling load'), side: 'right' });
  }
  const reach = { strain: percent(most), stress: value(top, 'MPa', 3) };
  return figure(
    show,
    say('Compressive stress against compression'),
    buckles === undefined
      ? say('Compression curve up to {strain} and {stress}, both counted positive.', reach)
      : say('Compression curve up to {strain} and {stress}, both counted positive; a dashed line marks where buckling begins.', reach),
    [...layers, ...points(places)],
  );
}
