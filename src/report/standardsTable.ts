import { compareStandards, type StandardValue, type TensionResult } from '../methods/index.js';
import type { PageTable } from './MethodPage.js';

const cell = ({ symbol, name, rule, text }: StandardValue, unit: string): string =>
  `${text === undefined ? '' : `${symbol} ${text} ${unit}: `}${text === undefined && symbol === '' ? '' : `${name}; `}${rule}`;

/** @internal Two standards side by side, as a table of the page. */
export function standardsTable(result: TensionResult): PageTable {
  return {
    heading: 'Two standards side by side',
    caption: 'One evaluation, rounded by each standard; rules in our own words, from memory: read the standard that governs.',
    columns: ['', 'ISO 6892-1', 'ASTM E8/E8M', 'Where they part'],
    rows: compareStandards(result).map(({ iso, astm, unit, difference }) => [
      iso.symbol === '' ? iso.name : iso.symbol,
      cell(iso, unit),
      cell(astm, unit),
      difference,
    ]),
  };
}
