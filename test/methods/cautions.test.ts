import { expect, test } from 'vitest';
import { cautions, cautionsFor, type FrameWork } from '../../src/index.js';
import { refusal } from '../support/thrown.js';

const works: FrameWork[] = ['tension', 'compression', 'bending', 'shear', 'brinell', 'cupping', 'unloading', 'calibration'];

test.each(works)('%s: guard, limits, oil and drive are always there, the deference to codes comes last', (work) => {
  const text = cautionsFor(work).join('\n');
  for (const word of ['guard', 'relief valve', 'jet of oil', 'drive can move', 'magnesium']) expect(text).toContain(word);
  expect(cautionsFor(work).at(-1)).toMatch(/not design values.*licensed.*Local law/);
});

test('each test has its own, and not those of another', () => {
  const has = (word: string) => works.filter((work) => cautionsFor(work).join(' ').includes(word));
  expect(has('extensometer off')).toEqual(['tension', 'unloading']);
  expect(has('Keep hands out of the tool')).toEqual(['bending', 'shear', 'cupping']);
  expect(has('buckles')).toEqual(['compression']);
  expect(has('slip off its supports')).toEqual(['bending']);
  expect(has('sheared pin')).toEqual(['shear']);
  expect(has('Balls')).toEqual(['brinell']);
  expect(has('cup a torn one')).toEqual(['cupping']);
  expect(has('transmitter')).toEqual(['calibration']);
});

test('no caution of the catalogue is lost, none stands twice', () => {
  const used = new Set(works.flatMap((work) => cautionsFor(work)));
  expect(used.size).toBe(cautions.length);
  expect(cautions.every(({ text }) => used.has(text))).toBe(true);
});

test('any other word is refused', () => {
  expect(refusal(() => cautionsFor('welding' as never))).toBe('out-of-range work');
});
