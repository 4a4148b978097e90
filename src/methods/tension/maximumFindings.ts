import { finding, type Finding } from '../../base/index.js';
import { roundingStep } from '../../statistics/index.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** The neighbourhood of the maximum may be this wide (common practice). */
const WIDEST_MAXIMUM = 0.02;
/** Why there is no Agt. */
const whyNot: Readonly<Record<TensionNumbers['reached'], string>> = {
  maximum: 'the extensometer ends before the maximum force',
  'still-rising': 'the force still rises where the record ends',
  'before-hardening': 'the test ended on the level of yielding, before hardening',
  'no-hardening': 'no hardening follows the level of yielding',
};

/** @internal Doubts about maximum and fracture. */
export function maximumFindings(
  numbers: TensionNumbers,
  result: Pick<TensionResult, 'tensileStrength' | 'totalExtensionAtMaximumForce'>,
): Finding[] {
  const found: Finding[] = [];
  const { fracture, highest, spread, reached, endStress } = numbers;
  const { yielding } = numbers;
  const top = result.tensileStrength?.value ?? (yielding?.ok === true ? yielding.upper.stress : 0);
  const field = 'totalExtensionAtMaximumForce';
  const { value = 0, standardUncertainty: uncertainty = 0 } = result[field] ?? {};
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
  else if (spread && spread.width > WIDEST_MAXIMUM && spread.depth < top)
    found.push(
      finding(
        'maximum-wide',
        { share: (100 * spread.depth) / top, width: spread.width, uncertainty },
        // ISO 6892-1 gives Agt in steps of 0.5 % (from memory): the reported digits say too much where it is not known to such a step
        { field, range: spread.range, severity: uncertainty > roundingStep('extension', value, 'iso') ? 'caution' : 'note' },
      ),
    );
  if (yielding?.ok === true && reached === 'no-hardening')
    found.push(finding('no-hardening', { lower: yielding.lower.stress, upper: yielding.upper.stress }, { field: 'tensileStrength' }));
  if (yielding?.ok === true && result.tensileStrength && highest === yielding.upper.index)
    found.push(finding('maximum-below-upper-yield', { strength: top, upper: yielding.upper.stress }, { field: 'tensileStrength' }));
  if (!fracture.ok) {
    if (reached === 'still-rising') found.push(finding('maximum-at-end', {}, { field: 'tensileStrength' }));
    else if (fracture.reason !== 'extension-ends')
      found.push(
        finding('stopped-before-fracture', { share: top > 0 ? Math.min(100, (100 * endStress) / top) : 0 }, { field: 'fracture' }),
      );
    found.push(finding('not-determined', { symbol: 'At', why: fracture.message }, { field: 'totalExtensionAtFracture' }));
  } else if (fracture.how === 'end-of-record') found.push(finding('fracture-not-recorded', {}, { field: 'fracture' }));
  return found;
}
