/** The elongation after fracture is written with its gauge length where that is not proportional. */
import { describe, expect, test } from 'vitest';
import { analyseTension, compareResults, rectangular, round, type TensionOptions } from '../../src/index.js';
import { comparisonInWords } from '../../src/report/pages/comparisonInWords.js';
import { renderHtml, summarise } from '../../src/report/index.js';
import { elongationSymbol } from '../../src/report/words/elongationSymbol.js';
import { caseT1, COMPLIANCE } from '../support/records.js';

test.each([
  ['5 d', 8, 40, 'A'],
  // 5.65 √S0 is 25.06: rounded to 5 mm
  ['a proportional length that was rounded', 5, 25, 'A'],
  ['10 d', 8, 80, 'A11.3'],
  ['two lengths of flats and of bars', 8, 50, 'A50mm'],
  ['a length with a half', 8, 62.5, 'A62.5mm'],
])('%s', (_, diameter, gaugeLength, symbol) => {
  expect(elongationSymbol({ section: round({ diameter }), gaugeLength })).toBe(symbol);
});

const flat = (options: TensionOptions = {}, final = 66) => {
  // 25 mm² take half the force of the round piece of the record
  const { force, ...others } = caseT1();
  return analyseTension(
    { force: Float64Array.from(force, (F) => F / 2), ...others },
    { section: rectangular({ width: 12.5, thickness: 2 }), gaugeLength: 50, afterFracture: { gaugeLength: final } },
    { frameCompliance: COMPLIANCE, ...options },
  );
};

describe('on 50 mm of a flat piece', () => {
  test('table and page have the index; the data keep A', () => {
    const result = flat();
    expect(result.elongationAfterFracture!.symbol).toBe('A');
    // (66 − 50)/50
    expect(summarise(result).find(({ field }) => field === 'elongationAfterFracture')).toMatchObject({
      symbol: 'A50mm',
      text: '32.0',
      unit: '%',
    });
    expect(renderHtml(result)).toMatch(/<th scope="row" class="short">A50mm</);
  });

  test('its budget is found under the data’s own symbol, and shown with the index', () => {
    const result = flat({ uncertainty: { gaugeLength: 0.05, finalGaugeLength: 0.25 } });
    const row = summarise(result).find(({ symbol }) => symbol === 'A50mm')!;
    expect(row.coverageFactor).toBe(result.uncertainty!['A']!.coverageFactor);
    expect(renderHtml(result)).toContain('Budget of A50mm');
  });

  test('two results beside each other', () => {
    const [first, second] = [flat(), flat({}, 65)];
    const { rows } = comparisonInWords(compareResults(first, second), [first, second]);
    expect(rows.find(([symbol]) => symbol === 'A50mm')!.slice(0, 4)).toEqual(['A50mm', '%', '32.0', '30.0']);
  });
});
