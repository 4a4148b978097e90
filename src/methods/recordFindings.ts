import { finding, type Finding, type TensionRecord } from '../base/index.js';
import { noiseLevel } from '../numeric/index.js';
import type { RecordedCurve } from '../curve/index.js';
import { resolution } from '../record/index.js';
import type { TensionNumbers } from './tensionKernel.js';
import type { TensionResult } from './TensionResult.js';

/** A maximum that stands out of both neighbours by so many standard deviations is a spike. */
const SPIKE = 6;
/** And by so many steps of the reading. */
const STEPS = 3;

/** @internal Doubts about the record that show only in the evaluated curve: spikes, the extensometer's end. */
export function recordFindings(
  record: TensionRecord,
  recorded: RecordedCurve,
  numbers: TensionNumbers,
  result: Pick<TensionResult, 'tensileStrength' | 'curve'>,
  parallelLength: number,
): Finding[] {
  const found: Finding[] = [];
  const strength = result.tensileStrength.value;
  const { maximumSample } = numbers;
  const { force } = record;
  const before = force[maximumSample - 1];
  const after = force[maximumSample + 1];
  if (before !== undefined && after !== undefined && numbers.highest === maximumSample) {
    const excess = force[maximumSample]! - Math.max(before, after);
    const noise = noiseLevel(force, Math.max(0, maximumSample - 100), Math.min(force.length, maximumSample + 100));
    if (excess > Math.max(SPIKE * noise, STEPS * resolution(force), 0.01 * force[maximumSample]!))
      found.push(
        finding(
          'maximum-is-spike',
          { excess: (excess / force[maximumSample]!) * strength },
          { field: 'tensileStrength', range: [maximumSample, maximumSample] },
        ),
      );
  }
  const end = recorded.extensometerEnd;
  if (end !== undefined) {
    const strain = result.curve.strain[end - 1]!;
    if (recorded.basis === 'extensometer-then-travel')
      found.push(finding('travel-carries-on', { strain, length: parallelLength }, { range: [end, result.curve.strain.length - 1] }));
  }
  return found;
}
