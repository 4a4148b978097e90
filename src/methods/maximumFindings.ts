import { finding, type Finding } from '../base/index.js';
import type { TensionNumbers } from './tensionKernel.js';
import type { TensionResult } from './TensionResult.js';

/** Stress within this share of the maximum counts as its neighbourhood, and may be this wide (common practice). */
const NEAR_MAXIMUM = 0.001;
const WIDEST_MAXIMUM = 0.02;
/** A maximum among so many last samples is at the end. */
const LAST = 3;

/** @internal Doubts about maximum and fracture. */
export function maximumFindings(
  numbers: TensionNumbers,
  curve: TensionResult['curve'],
  result: Pick<TensionResult, 'tensileStrength'>,
): Finding[] {
  const found: Finding[] = [];
  const { maximumSample, fracture, highest } = numbers;
  const top = result.tensileStrength.value;
  const field = 'totalExtensionAtMaximumForce';
  if (!numbers.maximum)
    found.push(finding('not-determined', { symbol: 'Agt', why: 'the extensometer ends before the maximum force' }, { field }));
  else {
    let first = maximumSample;
    let last = maximumSample;
    while (first > 0 && curve.stress[first - 1]! >= (1 - NEAR_MAXIMUM) * top) first -= 1;
    while (last < curve.stress.length - 1 && curve.stress[last + 1]! >= (1 - NEAR_MAXIMUM) * top) last += 1;
    const width = curve.strain[last]! - curve.strain[first]!;
    if (width > WIDEST_MAXIMUM) found.push(finding('maximum-wide', { width }, { field, range: [first, last] }));
  }
  const { yielding } = numbers;
  if (yielding?.ok === true && highest === yielding.upper.index)
    found.push(finding('maximum-below-upper-yield', { strength: top, upper: yielding.upper.stress }, { field: 'tensileStrength' }));
  if (!fracture.ok) {
    // by noise the highest of the last samples need not be the very last
    if (maximumSample >= curve.stress.length - LAST) found.push(finding('maximum-at-end', {}, { field: 'tensileStrength' }));
    else
      found.push(
        finding(
          'stopped-before-fracture',
          { share: top > 0 ? (100 * curve.stress[curve.stress.length - 1]!) / top : 0 },
          { field: 'fracture' },
        ),
      );
    found.push(finding('not-determined', { symbol: 'At', why: fracture.message }, { field: 'totalExtensionAtFracture' }));
  } else if (fracture.how === 'end-of-record') found.push(finding('fracture-not-recorded', {}, { field: 'fracture' }));
  return found;
}
