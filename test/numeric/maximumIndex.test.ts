import { expect, test } from 'vitest';
import { maximumIndex } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';

test.each([1, 2, 5, 63, 64, 65, 300, 1000])('of %d samples the first of the highest, wherever they lie', (n) => {
  const { normal, uniform } = seeded(n);
  for (let round = 0; round < 200; round += 1) {
    // rising, falling or level, in noise, smooth or in steps, so that many are equal
    const rise = round % 3;
    const step = round % 2 === 0 ? 0 : 0.5;
    const column = Float64Array.from({ length: n }, (_, i) => {
      const value = (rise - 1) * 0.02 * i + normal();
      return step > 0 ? Math.round(value / step) * step : value;
    });
    const first = Math.floor(uniform() * n);
    const end = first + 1 + Math.floor(uniform() * (n - first));
    const range = Array.from(column.subarray(first, end));
    expect(maximumIndex(column, first, end)).toBe(first + range.indexOf(Math.max(...range)));
  }
});
