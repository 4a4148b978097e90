import { compareStandards, type StandardValue } from '../../methods/index.js';
import type { PageTable } from './MethodPage.js';
import type { Presentation } from '../words/presentation.js';
import type { TensionOrCurve } from '../words/TensionOrCurve.js';

function cell(
  { symbol, name, rule, text }: StandardValue,
  unit: string,
  { term, digits, labelled, listed, unitAfter }: Presentation,
): string {
  const words = text === undefined && symbol === '' ? term(rule) : listed([term(name), term(rule)]);
  return text === undefined ? words : labelled(`${symbol} ${digits(text)}${unitAfter(unit)}`, words);
}

/** @internal Two standards side by side, as a table of the page; values in the units of the standards. */
export function standardsTable(result: TensionOrCurve, show: Presentation): PageTable {
  return {
    heading: show.say('Two standards side by side'),
    caption: [
      show.say('One evaluation, rounded by each standard; rules in our own words, from memory: read the standard that governs.'),
      ...(show.inchPound ? [show.say('Values in this table are in MPa and %.')] : []),
    ].join(' '),
    columns: [show.say('Quantity'), 'ISO 6892-1', 'ASTM E8/E8M', show.say('Where they part')],
    rows: compareStandards(result).map(({ iso, astm, unit, difference }) => [
      iso.symbol === '' ? show.term(iso.name) : iso.symbol,
      cell(iso, unit, show),
      cell(astm, unit, show),
      show.term(difference),
    ]),
  };
}
