import { describe, expect, test } from 'vitest';
import { analyseBending, analyseCompression, rectangular, round, type TestResult } from '../../src/index.js';
import { modulusStep } from '../../src/report/pages/MethodPage.js';
import { summarise } from '../../src/report/index.js';
import { simulateBending, simulateCompression } from '../../src/simulate/index.js';

describe('moduli are rounded alike in every method', () => {
  const texts = (result: TestResult): Record<string, string> =>
    Object.fromEntries(summarise(result).map(({ symbol, text }) => [symbol, text]));

  test('three figures, from travel without the frame too', () => {
    const beam = { section: rectangular({ width: 10, thickness: 5 }), setup: { points: 3 as const, span: 120 } };
    const material = { modulus: 206_000, yieldStress: 420 };
    const { force, travel, time } = simulateBending({ material, piece: beam, until: 0.02, frame: { compliance: 2e-5 } }).record;
    expect(texts(analyseBending({ force, travel, time }, beam, { frameCompliance: 2e-5 }))).toMatchObject({ mf: '206', Eb: '206' });
    const block = { section: round({ diameter: 10 }), height: 15 };
    const metal = { modulus: 73_400, yieldStress: 250, hardening: { law: 'swift' as const, prestrain: 0.02, exponent: 0.15 } };
    const pressed = simulateCompression({ material: metal, piece: block, frame: { compliance: 4e-6 } });
    expect(texts(analyseCompression(pressed.record, block, { frameCompliance: 4e-6 }))).toMatchObject({ mEc: '73.4', Ec: '73.4' });
  });

  // value and u in MPa: the value ends at the first digit of u at the latest
  test.each([
    [73_390, undefined, 3],
    [73_390, 380, 3],
    [73_390, 12, 3],
    [73_390, 3800, 2],
    [206_000, 9900, 3],
    [206_000, 15_000, 2],
    [206_000, 120_000, 1],
    [95_000, 120_000, 1],
  ])('%f MPa with u %s', (value, standardUncertainty, figures) => {
    expect(modulusStep({ symbol: 'E', name: 'modulus of elasticity', value, unit: 'MPa', source: '', standardUncertainty })).toEqual({
      figures,
    });
  });
});
