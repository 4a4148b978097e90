import { finding, type Finding } from '../../base/index.js';
import { roundingStep } from '../../statistics/index.js';
import { endFindings } from '../common/endOfTest.js';
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
/** Why there is no Agt, and nothing else of the maximum. */
const whyNot: Readonly<Record<TensionNumbers['reached'], string>> = {
  maximum: 'the extensometer ends before the maximum force',
  'still-rising': 'the force still rose where the test was stopped',
  'before-hardening': 'the test ended on the level of yielding, before hardening',
  'no-hardening': 'no hardening follows the level of yielding',
};

/** Symbols of what is withheld without a maximum of the curve: the hardening law only where the curve does not harden up to it; a slip before it is told for itself. */
function ofMaximum({ line, hardening, slips, maximumSample }: TensionNumbers): string[] {
  const [slip] = slips;
  const law = line.ok && !hardening && !(slip && slip.at < maximumSample);
  return [...(line.ok ? ['Ag'] : []), 'Agt', 'εu', ...(law ? ['n', 'K'] : [])];
}

/** @internal Doubts about maximum and fracture. */
export function maximumFindings(
  numbers: TensionNumbers,
  result: Pick<TensionResult, 'tensileStrength' | 'totalExtensionAtMaximumForce'>,
): Finding[] {
  const found: Finding[] = [];
  const { line, fracture, highest, spread, reached, endStress } = numbers;
  const { yielding } = numbers;
  const top = result.tensileStrength.value;
  const field = 'totalExtensionAtMaximumForce';
  const { value = 0, standardUncertainty: uncertainty = 0 } = result[field] ?? {};
  const open = uncertainty > roundingStep('extension', value, 'iso') && uncertainty > OPEN * value;
  if (!numbers.maximum) found.push(finding('not-determined', { symbol: ofMaximum(numbers).join(', '), why: whyNot[reached] }, { field }));
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
    const letGo = fracture.reason === 'unloaded';
    if (fracture.reason !== 'extension-ends')
      found.push(...endFindings({ rises: reached === 'still-rising', letGo, share: top > 0 ? endStress / top : 0 }, 'tensileStrength'));
    const symbol = ['At', ...(line.ok ? ['At − R/mE'] : []), 'U'].join(', ');
    found.push(finding('not-determined', { symbol, why: fracture.message }, { field: 'totalExtensionAtFracture' }));
  } else if (fracture.how === 'end-of-record') found.push(finding('fracture-not-recorded', {}, { field: 'fracture' }));
  return found;
}
