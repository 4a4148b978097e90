import { finding, type Finding } from '../../base/index.js';
import { roundingStep } from '../../statistics/index.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** The neighbourhood of the maximum may be this wide (common practice). */
const WIDEST_MAXIMUM = 0.02;
/**
 * Agt states its uncertainty; that it lies beyond what two laboratories find of one bar, some 5 % (study behind ASTM E8/E8M, from memory), is worth a note, and
 * twice as much a caution (common practice). ISO 6892-1 gives it in steps of 0.5 % (from memory): what is known to one is known as well as it is reported.
 */
const OPEN = 0.05;
const UNKNOWN = 0.1;
/** A maximum among so many last samples is at the end. */
const LAST = 3;
/** Why there is no Agt. */
const whyNot: Readonly<Record<TensionNumbers['reached'], string>> = {
  maximum: 'the extensometer ends before the maximum force',
  'still-rising': 'the force still rose where the test was stopped',
  'before-hardening': 'the test ended on the level of yielding, before hardening',
  'no-hardening': 'no hardening follows the level of yielding',
};

/** @internal Doubts about maximum and fracture. */
export function maximumFindings(
  numbers: TensionNumbers,
  result: Pick<TensionResult, 'tensileStrength' | 'totalExtensionAtMaximumForce'>,
): Finding[] {
  const found: Finding[] = [];
  const { maximumSample, fracture, highest, spread, reached, end, endStress } = numbers;
  const { yielding } = numbers;
  const top = result.tensileStrength.value;
  const field = 'totalExtensionAtMaximumForce';
  const { value = 0, standardUncertainty: uncertainty = 0 } = result[field] ?? {};
  const open = uncertainty > roundingStep('extension', value, 'iso') && uncertainty > OPEN * value;
  if (!numbers.maximum)
    found.push(
      finding(
        'not-determined',
        {
          symbol: 'Agt',
          why: whyNot[reached],
        },
        { field },
      ),
    );
  else if (open && spread && spread.width > WIDEST_MAXIMUM && spread.depth < top)
    found.push(
      finding(
        'maximum-wide',
        { share: (100 * spread.depth) / top, width: spread.width, uncertainty },
        { field, range: spread.range, severity: uncertainty > UNKNOWN * value ? 'caution' : 'note' },
      ),
    );
  if (yielding?.ok === true && reached === 'no-hardening')
    found.push(finding('no-hardening', { lower: yielding.lower.stress, upper: yielding.upper.stress }, { field: 'tensileStrength' }));
  const hardened = reached === 'maximum' || reached === 'still-rising';
  if (yielding?.ok === true && hardened && highest === yielding.upper.index)
    found.push(finding('maximum-below-upper-yield', { strength: top, upper: yielding.upper.stress }, { field: 'tensileStrength' }));
  if (!fracture.ok) {
    // by noise the highest of the last samples need not be the very last; one that was unloaded after it did not break
    const atEnd = fracture.reason === 'not-fractured' && reached === 'maximum' && maximumSample >= end - LAST;
    const rises = fracture.reason === 'not-fractured' && reached === 'still-rising';
    if (rises || atEnd) found.push(finding('maximum-at-end', {}, { field: 'tensileStrength' }));
    else if (fracture.reason !== 'extension-ends')
      found.push(
        finding('stopped-before-fracture', { share: top > 0 ? Math.min(100, (100 * endStress) / top) : 0 }, { field: 'fracture' }),
      );
    found.push(finding('not-determined', { symbol: 'At', why: fracture.message }, { field: 'totalExtensionAtFracture' }));
  } else if (fracture.how === 'end-of-record') found.push(finding('fracture-not-recorded', {}, { field: 'fracture' }));
  return found;
}
