import { expect, test } from 'vitest';
import {
  optionsOf,
  pieceOf,
  rows,
  unknownPiece,
  windowOf,
  withValue,
  withWindow,
  type AssumptionKey,
} from '../../playground/assumptions.js';
import { effectOf, evaluate, rowsFor } from '../../playground/effects.js';
import { hardeningOf } from '../../playground/hardening.js';
import { preview, stated } from '../../playground/preview.js';
import { scenarioAssumptions, simulated, usualScenario } from '../../playground/scenario.js';
import { changes, valuesOf } from '../../playground/values.js';

const scenario = { ...usualScenario, samples: 'few' } as const;
const { record, truth } = simulated(scenario);
const known = scenarioAssumptions(scenario, truth);
const result = evaluate(record, known, true);

/** What a change of one assumption does. */
const effect = (key: AssumptionKey, value: number | undefined) => {
  const changed = withValue(known, key, value);
  return effectOf(record, changed, known, evaluate(record, changed, false), key, rows.find((row) => row.key === key)!.share);
};

test('a diameter divides every stress by its square, and leaves strains alone', () => {
  const { changed, stepped, step } = effect('diameter', 8.08);
  for (const property of ['E', 'Rp', 'Rm'] as const) expect(changed![property]).toBeCloseTo(1 / 1.01 ** 2 - 1, 9);
  expect(changed!.Agt).toBeCloseTo(0, 9);
  expect(step).toBeCloseTo(0.0808, 12);
  expect(stepped!.Rm).toBeCloseTo(1 / 1.01 ** 2 - 1, 9);
});

test('the gauge length moves A alone, by its own formula', () => {
  const { changed } = effect('gaugeLength', 41);
  const Lu = known.values.finalGaugeLength!;
  expect(changed!.A).toBeCloseTo((Lu / 41 - 1) / (Lu / 40 - 1) - 1, 9);
  for (const property of ['E', 'Rp', 'Rm', 'Agt', 'Z', 'n'] as const) expect(changed![property]).toBe(0);
});

test('the compliance moves E by the springs in series, and not the proof strength', () => {
  const { changed } = effect('frameCompliance', 0.9e-5);
  const S0 = Math.PI * 16;
  const E = result.modulus!.value;
  // 1/E = (travel per force) − C, times the area over the length
  const other = 1 / (1 / E + (0.1e-5 * S0) / 48);
  expect(Math.abs(changed!.E! - (other / E - 1))).toBeLessThan(1e-3);
  expect(Math.abs(changed!.Rp!)).toBeLessThan(1e-4);
});

test('what is as it began has no change, and what is not given no step', () => {
  expect(effect('diameter', 8).changed).toBeUndefined();
  expect(effect('effectiveLength', undefined)).toEqual({});
  expect(effect('windowFirst', undefined).changed).toBeUndefined();
  expect(effect('windowFirst', undefined).step).toBeGreaterThanOrEqual(1);
});

test('a window by hand is told against the search', () => {
  const { first, last, slope } = result.modulusWindow!;
  const narrowed = withWindow(known, [first, first + Math.round((last - first) / 2)]);
  const own = evaluate(record, narrowed, false);
  const { changed } = effectOf(record, narrowed, known, own, 'windowLast', 0.05);
  expect(changed!.E).toBeCloseTo(own.modulus!.value / result.modulus!.value - 1, 12);
  expect(own.modulusWindow!.slope).not.toBe(slope);
});

test('a value that cannot stand is said, not thrown', () => {
  const narrow = withWindow(known, [200, 201]);
  // a step of one sample leaves no window
  expect(effectOf(record, narrow, known, result, 'windowFirst', 0.05).refused).toContain('window.last');
});

test('window, piece and options of assumptions', () => {
  expect(windowOf(unknownPiece)).toBeUndefined();
  expect(windowOf(withWindow(unknownPiece, [10.4, 20]))).toEqual({ by: 'samples', first: 10, last: 20 });
  expect(windowOf({ ...withWindow(unknownPiece, [10.4, 20]), limits: 'stress' })).toEqual({ by: 'stress', from: 10.4, to: 20 });
  const flat = { shape: 'flat', limits: 'samples', values: { gaugeLength: 50, width: 12, thickness: 3, finalArea: 20 } } as const;
  expect(pieceOf(flat)).toMatchObject({ section: { area: 36 }, afterFracture: { area: 20 } });
  expect(optionsOf(flat).offsets).toEqual([0.002]);
  const keys = rowsFor(record, known).map(({ key }) => key);
  expect(keys).toContain('frameCompliance');
  expect(keys).not.toContain('width');
  expect(keys).not.toContain('bore');
  expect(keys).not.toContain('extensometerLength');
});

test('the preview of a drag is what the full evaluation gives', () => {
  const { first, last } = result.modulusWindow!;
  const found = preview(result.curve, [first, last], 0.002, stated(result));
  if (!found.ok) throw new Error(found.message);
  expect(found.slope).toBeCloseTo(result.modulus!.value, 6);
  expect(found.origin).toBeCloseTo(0, 12);
  expect(found.proof!.stress).toBeCloseTo(result.proofStrengths[0]!.value, 9);
  const { index } = result.fracture!;
  expect(preview(result.curve, [index - 5, index], 0.002, 1)).toMatchObject({ ok: false });
  // the largest offset that a proof strength has, along the line before necking of a curve cut short
  const short = result.curve.strain.findIndex((e) => e > 0.04);
  const curve = { strain: result.curve.strain.subarray(0, short), stress: result.curve.stress.subarray(0, short) };
  const beyond = preview(curve, [first, last], 0.05, 1);
  expect(beyond).toMatchObject({ ok: true });
  expect('proof' in beyond).toBe(false);
});

test('necking and hardening as they are drawn: at the neck the rate has fallen to the stress', () => {
  const view = hardeningOf(result);
  if (!view.ok) throw new Error(view.message);
  if (!('strain' in view.neck)) throw new Error(view.neck.message);
  expect(view.neck.strain).toBeGreaterThan(0.8 * truth.necking);
  expect(view.neck.strain).toBeLessThan(1.2 * truth.necking);
  const total = view.laws.reduce((sum, { weight }) => sum + weight, 0);
  expect(total).toBeCloseTo(1, 9);
  expect(view.laws.length + view.failed.length).toBe(5);
  const elastic = { force: record.force.slice(0, 60), travel: record.travel!.slice(0, 60) };
  expect(hardeningOf(evaluate(elastic, withWindow(known, [10, 50]), false))).toMatchObject({ ok: false });
});

test('changes are relative, and there are none where a value is missing', () => {
  expect(changes({ E: 100, Rm: 0, A: 0.1 }, { E: 101, Rm: 1, Z: 1 })).toEqual({ E: 0.010000000000000009 });
  expect(Object.keys(valuesOf(result)).sort()).toEqual(['A', 'Agt', 'E', 'Rm', 'Rp', 'Z', 'n']);
});
