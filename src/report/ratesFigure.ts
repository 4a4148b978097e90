import { testingRates } from '../curve/index.js';
import type { TensionResult } from '../methods/index.js';
import { axes, figure, ink, largest, lineLayer, thinned, type Figure } from './figureParts.js';

/** @internal Strain rate over time, with the highest rates of ISO 6892-1 method B where they are near. */
export function ratesFigure({ rates }: TensionResult): Figure | undefined {
  if (!rates || rates.time.length < 2) return undefined;
  const top = Math.max(largest(rates.strainRate), 1e-12);
  const end = rates.time[rates.time.length - 1]!;
  const { upToProof, afterYield } = testingRates.methodB;
  const limits = [upToProof, afterYield].filter((limit) => limit < 1.1 * top && limit > 0.1 * top);
  const encoding = axes({ title: 'Time t / s', from: 0, to: end }, { title: 'Strain rate / 10⁻³ s⁻¹', from: 0, to: 1.1e3 * top });
  return figure('Strain rate over time', `Local strain rates up to ${top.toExponential(2)} per second.`, [
    lineLayer(thinned({ x: rates.time, y: rates.strainRate, yFactor: 1e3 }), encoding, { color: ink.curve, strokeWidth: 1.3 }),
    ...limits.map((limit) =>
      lineLayer(thinned({ x: [0, end], y: [limit, limit], yFactor: 1e3 }), encoding, {
        color: ink.line,
        strokeDash: [5, 4],
        strokeWidth: 1,
      }),
    ),
  ]);
}
