import { finding, type Finding, type TensionRecord } from '../base/index.js';
import type { RecordedCurve } from '../curve/index.js';
import { spikeFindings } from './spikeFindings.js';
import type { TensionNumbers } from './tensionKernel.js';
import type { TensionResult } from './TensionResult.js';

/** No metal breaks below this stress [MPa]; kN taken for N gives a thousandth of the true one. */
const LEAST_STRENGTH = 5;
/** A slope below this with a strength above that one: strain in % makes it a hundredth. */
const LEAST_SLOPE = 5_000;

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
  if (numbers.highest === maximumSample) found.push(...spikeFindings(record.force, maximumSample, strength, 'tensileStrength'));
  const end = recorded.extensometerEnd;
  if (end !== undefined) {
    const strain = result.curve.strain[end - 1]!;
    if (recorded.basis === 'extensometer-then-travel')
      found.push(finding('travel-carries-on', { strain, length: parallelLength }, { range: [end, result.curve.strain.length - 1] }));
  }
  return found;
}
