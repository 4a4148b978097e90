import type { TensionResult } from '../methods/index.js';
import { axes, figure, ink, largest, lineLayer, pointLayers, thinned, type Figure, type NamedPoint } from './figureParts.js';

/** @internal One past the last sample that a figure shows: fracture, or the end. */
export const shownEnd = (result: TensionResult): number => (result.fracture ? result.fracture.index + 1 : result.curve.strain.length);

/** @internal Points of the curve that have names, in strain and stress. */
export function namedPoints(result: TensionResult): NamedPoint[] {
  const points: NamedPoint[] = [];
  const add = (strain: number, stress: number, text: string, side: NamedPoint['side']) =>
    points.push({ x: 100 * strain, y: stress, text, side });
  for (const point of [result.upperYieldStrength, result.lowerYieldStrength])
    if (point) add(point.strain, point.value, point.symbol, point.symbol === 'ReH' ? 'left' : 'right');
  if (!result.upperYieldStrength)
    for (const proof of result.proofStrengths.slice(0, 1)) add(proof.strain, proof.value, proof.symbol, 'right');
  const agt = result.totalExtensionAtMaximumForce;
  if (agt) add(agt.value, result.tensileStrength.value, 'Rm at Agt', 'left');
  if (result.fracture) add(result.fracture.strain, result.fracture.stress, 'fracture', 'left');
  return points;
}

/** @internal Stress against strain. */
export function stressStrainFigure(result: TensionResult): Figure {
  const end = shownEnd(result);
  const { strain, stress } = result.curve;
  const most = Math.max(largest(strain, end), 1e-9);
  const top = Math.max(largest(stress, end), 1e-9);
  const encoding = axes(
    { title: 'Strain e / %', from: Math.min(0, -1 * most), to: 106 * most },
    { title: 'Stress R / MPa', from: 0, to: 1.1 * top },
  );
  const values = thinned({ x: strain.subarray(0, end), y: stress.subarray(0, end), xFactor: 100 });
  return figure('Stress against strain', `Stress-strain curve up to ${(100 * most).toFixed(1)} % strain and ${top.toFixed(0)} MPa.`, [
    lineLayer(values, encoding, { color: ink.curve, strokeWidth: 1.6 }),
    ...pointLayers(namedPoints(result), encoding),
  ]);
}
