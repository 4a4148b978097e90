import { expect, test } from 'vitest';
import { analyseTension, type Finding, type TensionRecord, type TestPiece } from '../../src/index.js';
import { soundTest } from '../../src/simulate/index.js';

/** The rule of the guide, "While the test runs" in docs/the-whole-job.md. */
const shown = ['elasticSlope', 'modulus', 'proofStrengths'];
function soFar(record: TensionRecord, piece: TestPiece) {
  const { findings, elasticSlope, proofStrengths } = analyseTension(record, piece);
  if (proofStrengths.length === 0 || findings.some(({ code }) => code === 'force-does-not-rise')) return undefined;
  return {
    elasticSlope: elasticSlope!,
    proofStrength: proofStrengths[0]!,
    findings: findings.filter(({ field }) => shown.includes(field ?? '')),
  };
}
const first = (record: TensionRecord, samples: number): TensionRecord =>
  Object.fromEntries(
    Object.entries(record as object).map(([name, column]: [string, Float64Array]) => [name, column.subarray(0, samples)]),
  ) as never;
const codesOf = (findings: readonly Finding[]): string[] => findings.map(({ code }) => code);

test.each(Array.from({ length: 16 }, (_, k) => k))('sound test %i while it runs: what may be shown is what the whole test gives', (k) => {
  const { record, piece } = soundTest(k);
  const n = record.force.length;
  const whole = soFar(record, piece)!;
  let opened = 0;
  for (let percent = 1; percent < 100; percent += 3) {
    const now = soFar(first(record, Math.max(2, Math.floor((percent / 100) * n))), piece);
    // once it may be shown it stays
    if (!now) expect(opened).toBe(0);
    else {
      opened += 1;
      // the step in which a strength is reported, and the doubt of the slope itself
      expect(Math.abs(now.proofStrength.value - whole.proofStrength.value)).toBeLessThan(0.5);
      expect(Math.abs(now.elasticSlope.value - whole.elasticSlope.value)).toBeLessThan(whole.elasticSlope.standardUncertainty!);
      expect(codesOf(whole.findings)).toEqual(expect.arrayContaining(codesOf(now.findings)));
    }
  }
  expect(opened).toBeGreaterThan(5);
});

test('without the rule a beginning would show what is not so', () => {
  const early = [1, 3, 5, 11].flatMap((percent) => {
    const { record, piece } = soundTest(5);
    const { findings } = analyseTension(first(record, Math.floor((percent / 100) * record.force.length)), piece);
    return codesOf(findings);
  });
  expect(early).toEqual(expect.arrayContaining(['force-does-not-rise', 'force-looks-like-kilonewton']));
});
