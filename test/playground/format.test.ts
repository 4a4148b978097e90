import { expect, test } from 'vitest';
import { change, counted, edited, shown } from '../../playground/format.js';
import { pointsOf } from '../../playground/points.js';
import { fill } from '../../playground/words.js';

test('numbers as a reader sees them', () => {
  expect([shown(197.84), shown(-0.05317, 3), shown(2e5), shown(0), shown(99.996), shown(3.2e-7, 2)]).toEqual([
    '197.8',
    '−0.0532',
    '200000',
    '0',
    '100.0',
    '3.2e−7',
  ]);
  expect([edited(0.1 + 0.2), edited(1e-5)]).toEqual(['0.3', '0.00001']);
  expect([change(0.0198), change(-0.0198), change(0.00004), change(0), change(3)]).toEqual(['+2 %', '−2 %', '0', '0', '+300 %']);
  expect([counted(999), counted(4520), counted(1234567)]).toEqual(['999', '4\u202f520', '1\u202f234\u202f567']);
  expect(fill('{a} of {b}, {c}', { a: 1, b: 'two' })).toBe('1 of two, ');
});

test('a long curve keeps its ends and its peaks', () => {
  const n = 100_000;
  const x = Float64Array.from({ length: n }, (_, i) => i);
  const y = Float64Array.from({ length: n }, (_, i) => (i === 54_321 ? 99 : Math.sin(i / 5000)));
  const points = pointsOf(x, y);
  expect(points.x.length).toBeLessThanOrEqual(1600);
  expect(Math.max(...Array.from(points.y))).toBe(99);
  expect([points.x[0], points.x[points.x.length - 1]]).toEqual([0, n - 1]);
  expect(Array.from(points.x)).toEqual(Array.from(points.x).sort((a, b) => a - b));
  expect(pointsOf(x.subarray(10, 20), y.subarray(10, 20)).x).toEqual(Array.from(x.subarray(10, 20)));
});
