import { describe, expect, test } from 'vitest';
import {
  analyseTension,
  areaAfterFracture,
  barba,
  effectiveThickness,
  elongationBySubdivision,
  fracturePosition,
  type AfterFracture,
  type TensionOptions,
} from '../../src/index.js';
import { renderHtml, summarise } from '../../src/report/index.js';
import { roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const record = { force: [0, 10_000, 20_000, 22_000, 15_000], strain: [0, 0.001, 0.002, 0.15, 0.25] };
const analysed = (afterFracture: AfterFracture, options: TensionOptions = {}) =>
  analyseTension(record, { ...roundPiece, afterFracture }, options);
const about = /^(fracture-(outside|at)|elongation-small|after-fracture)/;
const found = (after: AfterFracture, options: TensionOptions = {}) =>
  analysed({ area: 20, gaugeLength: 50, ...after }, options).findings.flatMap(({ code, severity }) =>
    about.test(code) ? [`${severity} ${code}`] : [],
  );
const subdivision = { intervals: 8, between: 2, xToY: 14, beyondY: 17 };

describe('A and Z of a broken piece', () => {
  test('the way of measuring is named with the value', () => {
    expect(analysed({ gaugeLength: 50 })).toMatchObject({
      elongationMethod: 'marks',
      elongationAfterFracture: { value: 0.25, name: 'elongation after fracture' },
    });
    expect(analysed({ gaugeLength: 49, subdivision }).elongationAfterFracture).toMatchObject({
      name: 'elongation after fracture, by subdivision',
      value: 0.2,
    });
    const fine = analysed({ fineMarksExtension: 1.2 });
    expect(fine.elongationAfterFracture!.value).toBeCloseTo(0.03, 12);
    expect(fine.elongationMethod).toBe('fine-marks');
    expect(renderHtml(fine)).toContain('by fine marks, read under a microscope');
    expect(renderHtml(analysed({ subdivision }))).toContain('by subdivision of the gauge length');
    expect(summarise(analysed({ subdivision })).find(({ symbol }) => symbol === 'A')).toMatchObject({
      text: '20.0',
      name: 'elongation after fracture, by subdivision',
    });
    expect(analysed({})).not.toHaveProperty('elongationMethod');
  });

  test('the neck by its diameters, or by width and thickness', () => {
    expect(analysed({ diameters: [4.8, 4.8] }).reductionOfArea!.value).toBeCloseTo(0.64, 12);
    expect(analysed({ width: 5, thickness: 4 }).reductionOfArea!.value).toBeCloseTo(1 - 20 / roundPiece.section.area, 12);
  });

  test('fracture outside the middle third: a doubt, none by subdivision, valid where the least value is reached, else not', () => {
    expect(found({ fractureDistance: 40 / 3 })).toEqual([]);
    expect(found({ fractureDistance: 13 })).toEqual(['caution fracture-outside-middle']);
    expect(found({ fractureDistance: 13 }, { minimumElongation: 0.25 })).toEqual(['note fracture-outside-middle']);
    expect(found({ fractureDistance: 13 }, { minimumElongation: 0.26 })).toEqual(['fault fracture-outside-middle']);
    expect(found({ fractureDistance: 13, subdivision })).toEqual([]);
  });

  test('fracture at a mark, in the fillet, in the grip', () => {
    expect(found({ fracturePlace: 'at-mark', fractureDistance: 0 })).toEqual([
      'caution fracture-at-mark',
      'caution fracture-outside-middle',
    ]);
    expect(found({ fracturePlace: 'in-fillet' })).toEqual(['fault fracture-outside-parallel']);
    expect(found({ fracturePlace: 'in-grip', fractureDistance: 3 })).toEqual(['fault fracture-outside-parallel']);
  });

  test('a small elongation asks for fine marks', () => {
    expect(found({ gaugeLength: 41.9 })).toEqual(['caution elongation-small']);
    expect(found({ gaugeLength: 42 })).toEqual([]);
    expect(found({ fineMarksExtension: 1.9 })).toEqual([]);
  });

  test('wrong readings are refused before anything is computed', () => {
    const call = (after: object) => refusal(() => analysed(after));
    const path = 'testPiece.afterFracture';
    expect(call({ gaugeLength: NaN })).toBe(`not-finite ${path}.gaugeLength`);
    expect(call({ area: 0 })).toBe(`not-positive ${path}.area`);
    expect(call({ length: 50 })).toBe(`unknown-option ${path}.length`);
    expect(call({ area: 20, diameters: [5, 5] })).toBe(`ambiguous ${path}.area`);
    expect(call({ diameters: [5, 0] })).toBe(`not-positive ${path}.diameters[1]`);
    expect(call({ diameters: [5], width: 5 })).toBe(`ambiguous ${path}.width`);
    expect(call({ width: 5, thickness: [1, 2] })).toBe(`too-few ${path}.thickness`);
    expect(call({ thickness: 5 })).toBe(`missing ${path}.width`);
    expect(call({ width: 5 })).toBe(`missing ${path}.thickness`);
    expect(call({ fractureDistance: -1 })).toBe(`out-of-range ${path}.fractureDistance`);
    expect(call({ fracturePlace: 'somewhere' })).toBe(`out-of-range ${path}.fracturePlace`);
    expect(call({ fineMarksExtension: -1 })).toBe(`out-of-range ${path}.fineMarksExtension`);
    expect(call({ fineMarksExtension: 1, subdivision: { ...subdivision, between: 8 } })).toBe(`out-of-range ${path}.subdivision.between`);
    expect(call({ subdivision: { ...subdivision, between: 8 } })).toBe(`out-of-range ${path}.subdivision.between`);
    expect(call({ subdivision: { ...subdivision, intervals: 7 } })).toBe(`wrong-type ${path}.subdivision.beyondY`);
    expect(call({ subdivision: { ...subdivision, beyondY: [1, 2] } })).toBe(`wrong-type ${path}.subdivision.beyondY`);
    expect(refusal(() => analysed({}, { minimumElongation: -1 }))).toBe('out-of-range options.minimumElongation');
  });
});

test('the formulas refuse what cannot be', () => {
  expect(refusal(() => fracturePosition({ gaugeLength: 40, distance: 81 }))).toBe('out-of-range distance');
  expect(refusal(() => fracturePosition({ gaugeLength: 0, distance: 1 }))).toBe('not-positive gaugeLength');
  expect(refusal(() => elongationBySubdivision({ originalLength: 50, intervals: 10, between: 5, xToY: 31.4, beyondY: 17 }))).toBe(
    'wrong-type beyondY',
  );
  expect(refusal(() => elongationBySubdivision({ originalLength: 50, intervals: 10.5, between: 5, xToY: 31.4, beyondY: 17 }))).toBe(
    'out-of-range intervals',
  );
  expect(refusal(() => elongationBySubdivision({ originalLength: 50, intervals: 10, between: 4, xToY: 5, beyondY: 17 }))).toBe(
    'out-of-range xToY',
  );
  expect(refusal(() => elongationBySubdivision({ originalLength: 50, intervals: 10, between: 5, xToY: 31.4, beyondY: [11, 0] }))).toBe(
    'not-positive beyondY[1]',
  );
  expect(refusal(() => elongationBySubdivision({ originalLength: 50, intervals: 10, between: 5, xToY: 31.4 } as never))).toBe(
    'wrong-type beyondY',
  );
  const one = { elongation: 0.3, gaugeLength: 50, area: 100 };
  expect(refusal(() => barba(one, { ...one, gaugeLength: 100, area: 400 }))).toBe('out-of-range second.gaugeLength');
  expect(refusal(() => barba(one, { ...one, elongation: -0.1 }))).toBe('out-of-range second.elongation');
  expect(refusal(() => barba({ ...one, area: 0 }, one))).toBe('not-positive first.area');
  expect(refusal(() => effectiveThickness({ edge: 1, middle: 1, otherEdge: NaN }))).toBe('not-finite otherEdge');
  expect(refusal(() => areaAfterFracture({ diameters: [] }))).toBe('empty diameters');
  expect(refusal(() => areaAfterFracture({ diameters: [5], thickness: NaN }))).toBe('not-finite thickness');
  expect(refusal(() => areaAfterFracture({ diameters: 5 as never, width: 5, thickness: 2 }))).toBe('wrong-type diameters');
  expect(refusal(() => areaAfterFracture({ width: 5, height: 1 } as never))).toBe('unknown-option neck.height');
});
