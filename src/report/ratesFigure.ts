import type { TensionResult } from '../methods/index.js';
import { axes, figure, ink, largest, lineLayer, thinned, type Figure } from './figureParts.js';

/** @internal Strain rate over time. */
export function ratesFigure({ rates }: TensionResult): Figure | undefined {
  if (!rates || rates.time.length < 2) return undefined;
  const top = Math.max(largest(rates.strainRate), 1e-12);
  const encoding = axes(
    { title: 'Time t / s', from: 0, to: rates.time[rates.time.length - 1]! },
    { title: 'Strain rate / 10⁻³ s⁻¹', from: 0, to: 1.1e3 * top },
  );
  return figure('Strain rate over time', `Local strain rates up to ${top.toExponential(2)} per second.`, [
    lineLayer(thinned({ x: rates.time, y: rates.strainRate, yFactor: 1e3 }), encoding, { color: ink.curve, strokeWidth: 1.3 }),
  ]);
}
