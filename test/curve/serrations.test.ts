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
