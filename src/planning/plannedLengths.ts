import { InputError, requireOptions, requirePositive, type Section } from '../base/index.js';
import { leastParallelLength, proportionalGaugeLength, roundedGaugeLength } from '../geometry/index.js';
import { leastFilletRadius } from './leastFilletRadius.js';
import type { PlannedLengths } from './TensionPlan.js';
import type { GivenLengths } from './TensionPlanInput.js';

/** @internal Lengths that are given, and those that the standard asks for. */
export function plannedLengths(from: string, section: Section, given: GivenLengths): PlannedLengths {
  const names = ['gaugeLength', 'coefficient', 'parallelLength', 'effectiveLength'] as const;
  requireOptions(from, given, [...names, 'arbitration'], 'lengths');
  for (const name of names) if (given[name] !== undefined) requirePositive(from, `lengths.${name}`, given[name]);
  const proportionalLength = proportionalGaugeLength({ area: section.area, coefficient: given.coefficient });
  const gaugeLength = given.gaugeLength ?? roundedGaugeLength({ gaugeLength: proportionalLength });
  const least = leastParallelLength({ section, gaugeLength, arbitration: given.arbitration });
  const parallelLength = given.parallelLength ?? least;
  const effective = given.effectiveLength ?? parallelLength;
  if (parallelLength < gaugeLength)
    throw new InputError(
      from,
      'lengths.parallelLength',
      'out-of-range',
      `must be at least the gauge length (${gaugeLength})`,
      parallelLength,
    );
  if (effective < parallelLength)
    throw new InputError(
      from,
      'lengths.effectiveLength',
      'out-of-range',
      `must be at least the parallel length (${parallelLength})`,
      effective,
    );
  return {
    proportionalLength,
    gaugeLength,
    leastParallelLength: least,
    parallelLength,
    effectiveLength: effective,
    leastFilletRadius: leastFilletRadius({ section }),
  };
}
