import { describe, expect, test } from 'vitest';
import { materialFamilies, materialFamily, type MaterialFamily } from '../../src/index.js';
import { refusal } from '../support/thrown.js';

const ranges = ['modulus', 'yieldStrength', 'tensileStrength', 'elongation', 'exponent'] as const;

describe.each(materialFamilies.map((family) => [family.key, family] as const))('%s', (key, family: MaterialFamily) => {
  test('is found by its key', () => {
    expect(materialFamily(key)).toBe(family);
  });

  test('every range rises, and yielding comes before the maximum', () => {
    for (const name of ranges) {
      const range = family[name];
      if (range) expect(range[0], name).toBeLessThan(range[1]);
    }
    if (family.yieldStrength) {
      expect(family.yieldStrength[0]).toBeLessThan(family.tensileStrength[0]);
      expect(family.yieldStrength[1]).toBeLessThan(family.tensileStrength[1]);
    }
    expect(family.elongation[1]).toBeLessThan(1);
  });

  test('says where it comes from', () => {
    expect(family.source).toMatch(/from memory/);
  });
});

test('keys are words with hyphens, and no two are the same', () => {
  const keys = materialFamilies.map(({ key }) => key);
  expect(new Set(keys).size).toBe(keys.length);
  for (const key of keys) expect(key).toMatch(/^[a-z]+(-[a-z]+)*$/);
});

test('an unknown key is refused with all that are known', () => {
  expect(refusal(() => materialFamily('wood' as never))).toBe('out-of-range key');
  expect(() => materialFamily('wood' as never)).toThrow(/brass.*titanium/);
});
