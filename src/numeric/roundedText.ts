import { roundToStep } from './roundToStep.js';

/** @internal Step of rounding, or number of significant figures. */
export type RoundingStep = number | { readonly figures: number };

/** @internal A value rounded half to even, as text with as many decimals as the step has. */
export function roundedText(value: number, step: RoundingStep): string {
  if (typeof step === 'number') return roundToStep(value, step).toFixed(Math.max(0, -Math.floor(Math.log10(step))));
  if (value === 0) return '0';
  // 99.97 to three figures is 100, so the place of the first figure is that of the rounded value
  const size = 10 ** (Math.floor(Math.log10(Math.abs(Number(value.toPrecision(step.figures))))) + 1 - step.figures);
  return roundToStep(value, size).toFixed(Math.max(0, -Math.round(Math.log10(size))));
}
