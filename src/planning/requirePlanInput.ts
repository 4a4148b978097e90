import { requireBetween, requireOneOf, requireOptions, requirePositive, requireSection } from '../base/index.js';
import type { RateControl, TensionPlanInput, UseOfValues } from './TensionPlanInput.js';

const known = [
  'family',
  'expected',
  'section',
  'frame',
  'lengths',
  'extensometer',
  'control',
  'strengthRange',
  'samplingRate',
  'use',
  'claimsStandard',
  'errors',
  'thresholds',
];
const controls: readonly RateControl[] = ['iso-a', 'iso-b', 'e8-a', 'e8-b', 'e8-c'];
const uses: readonly UseOfValues[] = ['teaching', 'comparison', 'acceptance', 'structural'];

/** @internal Refuses an input that cannot be planned with; material, frame, thresholds and errors have checks of their own. */
export function requirePlanInput(from: string, input: TensionPlanInput): void {
  requireOptions(from, input, known, 'input');
  requireSection(from, 'section', input.section);
  const { control = 'iso-a', use = 'teaching' } = input;
  requireOneOf(from, 'control', control, controls);
  requireOneOf(from, 'use', use, uses);
  requireOneOf(from, 'strengthRange', input.strengthRange ?? 4, [2, 3, 4]);
  if (input.samplingRate !== undefined) requirePositive(from, 'samplingRate', input.samplingRate);
  if (input.extensometer !== undefined) {
    const { extensometer } = input;
    requireOptions(from, extensometer, ['length', 'step', 'error'], 'extensometer');
    requirePositive(from, 'extensometer.length', extensometer.length);
    if (extensometer.step !== undefined) requirePositive(from, 'extensometer.step', extensometer.step);
    if (extensometer.error !== undefined) requireBetween(from, 'extensometer.error', extensometer.error, 0, 0.2);
  }
}
