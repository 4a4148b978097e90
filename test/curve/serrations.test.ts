import { expect, test } from 'vitest';
import { serrations } from '../../src/index.js';
import { seeded } from '../support/random.js';
import { thrown } from '../support/thrown.js';

const strain = Float64Array.from({ length: 3000 }, (_, i) => 0.02 + 2e-5 * i);
/** A saw on a hardening curve: every 100 samples the stress falls by some MPa within five samples. */
const saw = (fall: number) => strain.map((e, i) => 250 + 1200 * e - (i % 100 < 95 ? 0 : (fall * ((i % 100) - 94)) / 5));

test('every drop is counted, with its fall', () => {
  const { drops, band, range, density } = serrations({ strain, stress: saw(8) });
  // the last fall is not followed by a rise
  expect(drops.length).toBe(29);
  expect(band![0]).toBeGreaterThan(7.8);
  expect(band![1]).toBeLessThan(8.01);
  expect(range![0]).toBeCloseTo(strain[94]!, 12);
  expect(density).toBeCloseTo(1 / (100 * 2e-5), 6);
});

test('noise makes none, and drops out of noise are found in it', () => {
  const { normal } = seeded(3);
  const noisy = (clean: Float64Array) => clean.map((s) => s + 0.4 * normal());
  expect(serrations({ strain, stress: noisy(strain.map((e) => 250 + 1200 * e)) }).drops).toEqual([]);
  expect(serrations({ strain, stress: noisy(saw(8)) }).drops.length).toBe(29);
});

test('a smooth curve and a fall without a rise have none', () => {
  expect(serrations({ strain, stress: strain.map((e) => 250 + 1200 * e) })).toEqual({ drops: [] });
  expect(serrations({ strain, stress: strain.map((e) => 250 - 1200 * e) })).toEqual({ drops: [] });
});

test('a range of strain, and bad input', () => {
  expect(serrations({ strain, stress: saw(8) }, { from: strain[1000]!, to: strain[2000]! }).drops.length).toBe(10);
  expect(thrown(() => serrations({ strain, stress: saw(8) }, { from: 0.05, to: 0.04 })).path).toBe('options.to');
  expect(thrown(() => serrations({ strain, stress: saw(8) }, { minimumFall: 2 })).path).toBe('options.minimumFall');
  expect(thrown(() => serrations({ strain: [1, 2], stress: [1, 2] })).code).toBe('too-few');
});

test('by hand: a fall counts from the share on, up to a rise of as much; the first of equals is the peak and the valley', () => {
  // a level of 100 MPa, of which 1 % is 1 MPa, without noise
  const level = (dips: Readonly<Record<number, number>>) => {
    const stress = Array.from({ length: 60 }, (_, i) => dips[i] ?? 100);
    return serrations({ strain: stress.map((_, i) => i / 100), stress }, { minimumFall: 0.01 });
  };
  expect(level({ 10: 99 }).drops).toEqual([{ peak: 0, valley: 10, fall: 1 }]);
  expect(level({ 10: 99.01 })).toEqual({ drops: [] });
  // 97.9 is no rise of 1 MPa from 97, 98 is
  expect(level({ 10: 99, 30: 98, 31: 97, 32: 97, 33: 97.9, 34: 98 })).toEqual({
    drops: [
      { peak: 0, valley: 10, fall: 1 },
      { peak: 11, valley: 31, fall: 3 },
    ],
    band: [1, 3],
    range: [0, 0.11],
    density: 1 / 0.11,
  });
  expect(level({ 30: 98, 31: 97, 32: 97.9, 33: 96 }).drops).toEqual([{ peak: 0, valley: 33, fall: 4 }]);
  expect(level({ 0: 99.5, 10: 97, 20: 98 }).band).toEqual([2, 3]);
});

test('one drop has no density, and a curve without stress no drop', () => {
  const flat = Array.from({ length: 60 }, () => 100);
  const along = flat.map((_, i) => i / 100);
  expect(serrations({ strain: along, stress: flat.map((R, i) => (i === 20 ? 90 : R)) })).toEqual({
    drops: [{ peak: 0, valley: 20, fall: 10 }],
    band: [10, 10],
    range: [0, 0],
  });
  expect(serrations({ strain: along, stress: flat.map(() => 0) })).toEqual({ drops: [] });
});

test('the range includes the samples at its ends', () => {
  const stress = [50, 100, 90, 100, ...Array.from({ length: 40 }, () => 100)];
  const along = stress.map((_, i) => i / 100);
  expect(serrations({ strain: along, stress }, { from: 0.01, to: 0.03 }).drops).toEqual([{ peak: 1, valley: 2, fall: 10 }]);
  expect(serrations({ strain: along, stress }, { from: 0.011 }).drops).toEqual([]);
  expect(serrations({ strain: along, stress }, { to: 0.029 }).drops).toEqual([]);
});
