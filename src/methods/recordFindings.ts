import { finding, type Finding, type TensionRecord } from '../base/index.js';
import { noiseLevel } from '../numeric/index.js';
import type { RecordedCurve } from '../curve/index.js';
import { resolution } from '../record/index.js';
import type { TensionNumbers } from './tensionKernel.js';
import type { TensionResult } from './TensionResult.js';

/** No metal breaks below this stress [MPa]; kN taken for N gives a thousandth of the true one. */
const LEAST_STRENGTH = 5;
/** A slope below this with a strength above that one: strain in % makes it a hundredth. */
const LEAST_SLOPE = 5_000;
/** A maximum that stands out of both neighbours by so many standard deviations is a spike. */
const SPIKE = 6;
/** And by so many steps of the reading. */
const STEPS = 3;

/** @internal Doubts about the record that show only in the evaluated curve: units, spikes, the extensometer's end. */
export function recordFindings(
  record: TensionRecord,
  recorded: RecordedCurve,
  numbers: TensionNumbers,
  result: Pick<TensionResult, 'tensileStrength' | 'curve'>,
  parallelLength: number,
): Finding[] {
  const found: Finding[] = [];
  const strength = result.tensileStrength.value;
  const { line, maximumSample } = numbers;
  if (strength > 0 && strength < LEAST_STRENGTH)
    found.push(finding('force-looks-like-kilonewton', { stress: strength }, { field: 'tensileStrength' }));
  else if (line.ok && recorded.basis !== 'travel' && line.slope < LEAST_SLOPE) {
    const last = result.curve.strain[result.curve.strain.length - 1]!;
    found.push(finding('strain-looks-like-percent', { strain: last, slope: line.slope }, { field: 'elasticSlope' }));
  }
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
