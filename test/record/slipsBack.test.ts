import { describe, expect, test } from 'vitest';
import { analyseCurve, analyseTension, checkRecord, joinJumps, sectionFromArea } from '../../src/index.js';
import { knownCurve, scenarios } from '../../bench/scenarios.js';

const piece = { section: sectionFromArea({ area: 50 }), gaugeLength: 50 };
const BASE = 50;

/** A curve of known modulus whose extensometer slips by so much [mm] where the stress reaches a level [MPa], within so many samples. */
function slipping(slip: number, level: number, seed: number, samples = 1) {
  const { strain, stress, modulus } = knownCurve('steel', 2000, seed);
  const at = stress.findIndex((R) => R >= level);
  const share = (i: number) => Math.min(1, Math.max(0, (i - at + 1) / samples));
  return { at, modulus, record: { force: stress.map((R) => 50 * R), extension: strain.map((e, i) => BASE * e + slip * share(i)) } };
}

/** Slopes of sound curves of this kind scatter by about 0.9 % (`npm run study:modulus`): two deviations, rounded up. */
const SCATTER = 0.02;

const codesOf = (findings: readonly { code: string }[]) => findings.map(({ code }) => code);

describe('an extensometer that slips back in the elastic part', () => {
  test.each([-0.0025, -0.005, -0.01])('by %f mm is named where it is, and E is withheld', (slip) => {
    for (const seed of [1, 2, 3]) {
      const { record, at, modulus } = slipping(slip, 150, seed);
      const result = analyseTension(record, piece);
      const found = result.findings.find(({ code }) => code === 'extensometer-slipped')!;
      expect(found).toMatchObject({ severity: 'caution', about: 'record', values: { column: 'extension', count: 1, unit: 'mm' } });
      expect(Math.abs(Number(found.values['sample']) - at)).toBeLessThanOrEqual(1);
      // three deviations of a step that lines over 12 samples on either side tell in 0.3 µm of noise
      expect(Math.abs(Number(found.values['largest']) + slip)).toBeLessThan(3 * 0.0003 * Math.sqrt(8 / 12));
      // the search seeks the steepest line, and finds the slip
      expect(result.elasticSlope!.value).toBeGreaterThan(1.01 * modulus);
      const over = result.findings.find(({ code }) => code === 'slope-over-slip')!;
      expect(over).toMatchObject({ severity: 'fault', field: 'modulus' });
      expect(Number(over.values['change'])).toBeGreaterThan(1);
      expect(result.modulus).toBeUndefined();
    }
  });

  test('by 0.015 mm it is named too; a window beside it keeps its modulus', () => {
    const { record, modulus } = slipping(-0.015, 150, 1);
    const { modulus: E, findings } = analyseTension(record, piece);
    expect(codesOf(findings)).toContain('extensometer-slipped');
    expect(codesOf(findings)).not.toContain('slope-over-slip');
    expect(Math.abs(E!.value / modulus - 1)).toBeLessThan(SCATTER);
  });

  test('joined it gives the modulus again', () => {
    for (const seed of [1, 2, 3]) {
      const { record, modulus } = slipping(-0.005, 150, seed);
      const joined = joinJumps(record);
      expect(joined.trail.map(({ code }) => code)).toEqual(['jump-joined']);
      const { modulus: E, findings } = analyseTension(joined.record, piece);
      expect(codesOf(findings)).not.toContain('extensometer-slipped');
      expect(Math.abs(E!.value / modulus - 1)).toBeLessThan(SCATTER);
    }
  });

  test('a stated window clear of it keeps its modulus', () => {
    const { record, modulus } = slipping(-0.005, 100, 1);
    const { modulus: E, findings } = analyseTension(record, piece, { modulus: { window: { by: 'stress', from: 120, to: 220 } } });
    expect(codesOf(findings)).toContain('extensometer-slipped');
    expect(codesOf(findings)).not.toContain('slope-over-slip');
    expect(Math.abs(E!.value / modulus - 1)).toBeLessThan(SCATTER);
  });

  test('a step that is twice as large as another is told as the largest of two', () => {
    const { record, at } = slipping(-0.005, 150, 1);
    const earlier = record.force.findIndex((F) => F >= 50 * 60);
    const extension = record.extension.map((x, i) => x - (i >= earlier ? 0.0025 : 0));
    const found = checkRecord({ ...record, extension }).find(({ code }) => code === 'extensometer-slipped');
    expect(found?.values).toMatchObject({ count: 2, sample: at });
  });
});

describe('no slip back', () => {
  test('is seen in curves of known modulus, however they were logged', () => {
    const alarms: string[] = [];
    for (const scenario of scenarios)
      for (const samples of [200, 1000, 5000])
        for (let seed = 0; seed < 5; seed += 1) {
          const { strain, stress } = knownCurve(scenario, samples, seed);
          for (const step of [0, 1e-4, 5e-4]) {
            const stairs = step > 0 ? strain.map((e) => step * Math.round(e / step)) : strain;
            if (codesOf(checkRecord({ force: stress, strain: stairs })).includes('extensometer-slipped'))
              alarms.push(`${scenario} ${samples} ${seed} ${step}`);
          }
        }
    expect(alarms).toEqual([]);
  });

  test('is seen where the piece is unloaded, and its force falls with it', () => {
    const { strain, stress } = knownCurve('steel', 2000, 1);
    const at = stress.findIndex((R) => R >= 180);
    const [e, R] = [strain[at]!, stress[at]!];
    const stroke = Array.from({ length: 60 }, (_, k) => 40 * Math.sin((Math.PI * (k + 1)) / 61));
    const into = (column: Float64Array, values: number[]) => Float64Array.from([...column.slice(0, at), ...values, ...column.slice(at)]);
    const record = {
      force: into(
        stress,
        stroke.map((fall) => R - fall),
      ),
      strain: into(
        strain,
        stroke.map((fall) => e - fall / 205000),
      ),
    };
    expect(codesOf(checkRecord(record))).not.toContain('extensometer-slipped');
  });

  test('is seen where it slips ahead, or slowly', () => {
    for (const one of [slipping(0.005, 150, 1), slipping(-0.005, 150, 1, 60)])
      expect(codesOf(checkRecord(one.record))).not.toContain('extensometer-slipped');
  });
});

test('a curve that holds such a slip gives no modulus either', () => {
  const { record } = slipping(-0.005, 150, 1);
  const { modulus, findings } = analyseCurve({ strain: record.extension.map((x) => x / BASE), stress: record.force.map((F) => F / 50) });
  expect(modulus).toBeUndefined();
  expect(codesOf(findings)).toContain('slope-over-slip');
});
