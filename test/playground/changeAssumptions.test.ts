import { expect, test } from 'vitest';
import { keyOf, unknownPiece, withWindow } from '../../playground/assumptions.js';
import { changed, limitedBy, putBack, shaped } from '../../playground/changeAssumptions.js';
import { evaluate } from '../../playground/effects.js';
import { scenarioAssumptions, simulated, usualScenario } from '../../playground/scenario.js';

const scenario = { ...usualScenario, samples: 'few' } as const;
const { record, truth } = simulated(scenario);
const known = scenarioAssumptions(scenario, truth);
const result = evaluate(record, known, true);
const { first, last, stressLimits } = result.modulusWindow!;

test('of a window that was searched the other limit is held, and a limit taken away searches again', () => {
  const narrowed = changed(known, 'windowFirst', first + 3, result);
  expect(narrowed.values).toMatchObject({ windowFirst: first + 3, windowLast: last });
  // also where the values before could not stand
  expect(changed(narrowed, 'windowLast', last - 3, undefined).values).toMatchObject({ windowFirst: first + 3, windowLast: last - 3 });
  expect(changed(narrowed, 'windowLast', undefined, result)).toEqual(known);
  expect(changed(known, 'windowLast', 40, undefined)).toEqual(known);
  expect(changed(known, 'diameter', 9, result).values.diameter).toBe(9);
});

test('a value goes back to where it began', () => {
  expect(putBack(changed(known, 'diameter', 9, result), known, 'diameter')).toEqual(known);
  expect(putBack(changed(known, 'windowFirst', 5, result), known, 'windowLast')).toEqual(known);
});

test('another shape begins with the size there is', () => {
  expect(shaped(known, 'flat')).toMatchObject({ shape: 'flat', values: { diameter: 8, width: 8, thickness: 8 } });
  expect(shaped({ ...unknownPiece, values: {} }, 'flat').values).toMatchObject({ width: 10, thickness: 10 });
});

test('a given window stays where it is in another unit, a searched one is still searched', () => {
  const given = withWindow(known, [first, last]);
  expect(limitedBy(given, 'stress', result)).toEqual({ ...withWindow(known, stressLimits), limits: 'stress' });
  expect(limitedBy(known, 'stress', result)).toEqual({ ...known, limits: 'stress' });
});

test('paths of the library by the assumption that they stand for', () => {
  expect(keyOf('testPiece.gaugeLength')).toBe('gaugeLength');
  expect(keyOf('testPiece.afterFracture.gaugeLength')).toBe('finalGaugeLength');
  expect(keyOf('options.modulus.window.to')).toBe('windowLast');
  expect(keyOf('rod')).toBe('rod');
  expect(keyOf('record.force[3]')).toBeUndefined();
});
