import { finding, type Finding, type Outcome } from '../../base/index.js';
import { percent } from '../common/quantity.js';
import type { Quantities } from '../evaluation/tensionQuantities.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from '../evaluation/tensionOptions.js';

/** Symbols of what is withheld. */
function withheldSymbols(numbers: TensionNumbers, result: Quantities, settings: TensionSettings, at: number): string[] {
  const { proofs, totals, proportional, yielding, maximumSample } = numbers;
  const beyond = (found: readonly Outcome<object, string>[], symbol: string, strains: readonly number[]): string[] =>
    found.flatMap((one, k) => (!one.ok && one.reason === 'after-slip' ? [`${symbol}${percent(strains[k]!)}`] : []));
  const limit = proportional?.[settings.proportionalLimit];
  return [
    ...beyond(proofs, 'Rp', settings.offsets),
    ...beyond(totals, 'Rt', settings.totalExtensions),
    ...(limit?.ok === false && limit.reason === 'after-slip' ? ['Rpl'] : []),
    ...(yielding?.ok === true && !result.yieldPointExtension ? ['Ae'] : []),
    ...(at < maximumSample ? ['n', 'K'] : []),
  ];
}

/**
 * @internal What slips of the piece do to strains by travel: what counts strains of their size is withheld; the large extensions are kept, and it is said by how
 * much they are too large.
 */
export function slipFindings(numbers: TensionNumbers, result: Quantities, settings: TensionSettings): Finding[] {
  const { slips, fracture } = numbers;
  const [slip] = slips;
  if (!slip) return [];
  const sum = (end: number): number => slips.reduce((all, { at, strain }) => all + (at < end ? strain : 0), 0);
  const found: Finding[] = [];
  const symbols = withheldSymbols(numbers, result, settings, slip.at);
  const values = { sample: slip.at, strain: sum(numbers.maximumSample) };
  if (symbols.length > 0)
    found.push(finding('withheld-after-slip', { symbols: symbols.join(', '), ...values }, { field: 'proofStrengths' }));
  const beyond = [
    ...(slip.at < numbers.maximumSample ? [result.uniformExtension, result.totalExtensionAtMaximumForce, result.necking] : []),
    ...(fracture.ok && slip.at < fracture.index ? [result.totalExtensionAtFracture, result.toughness] : []),
  ].flatMap((one) => (one ? [one.symbol] : []));
  if (beyond.length > 0)
    found.push(
      finding(
        'extensions-hold-slip',
        { ...values, symbols: beyond.join(', '), strain: sum(fracture.ok ? fracture.index : numbers.maximumSample) },
        { field: 'totalExtensionAtMaximumForce' },
      ),
    );
  return found;
}
