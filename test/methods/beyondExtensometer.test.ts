/** An extensometer that is taken off before the proof strength: what travel carries on is a value by travel. */
import { describe, expect, test } from 'vitest';
import { analyseCompression, analyseReplicates, analyseTension, decide, required, round } from '../../src/index.js';
import { renderHtml } from '../../src/report/index.js';
import { simulateTension } from '../../src/simulate/index.js';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
// 420 MPa is passed at a strain of 420/206 000 = 0.2 %: Rp0.01 lies before 0.3 %, Rp0.2 beyond
const material = {
  modulus: 206_000,
  yieldStress: 420,
  hardening: { law: 'swift' as const, prestrain: 0.02, exponent: 0.15 },
  fracture: { extension: 0.3 },
};
const tested = (offAt: number, seed = 1) =>
  analyseTension(
    simulateTension({
      material,
      piece,
      logger: { rate: 40, extensometer: { offAt }, forceNoise: 5, motionNoise: 1e-4 },
      hand: { speed: 0.02 },
      seed,
    }).record,
    piece,
    { offsets: [0.0001, 0.002] },
  );
const early = tested(0.003);
const late = tested(0.02);
const proofs = ({ proofStrengths }: typeof early) => proofStrengths.map(({ symbol, beyondExtensometer }) => [symbol, beyondExtensometer]);

test('a proof strength beyond its last reading is marked, one before it is not', () => {
  expect(early.extensionBasis).toBe('extensometer-then-travel');
  expect(proofs(early)).toEqual([
    ['Rp0.01', undefined],
    ['Rp0.2', true],
  ]);
  expect(proofs(late)).toEqual([
    ['Rp0.01', undefined],
    ['Rp0.2', undefined],
  ]);
  expect([early.elasticSlope, early.modulus].map((one) => one?.beyondExtensometer)).toEqual([undefined, undefined]);
});

describe('and stands as such', () => {
  const stamp = 'determined from crosshead displacement beyond the extensometer';
  const row = (result: typeof early) => /Rp<sub>0\.2<\/sub>.*?<\/tr>|Rp0\.2.*?<\/tr>/s.exec(renderHtml(result))?.[0];

  test('in the report', () => {
    expect(row(early)).toContain(stamp);
    expect(row(late)).not.toContain(stamp);
  });

  test('in a decision', () => {
    const codes = (result: typeof early) =>
      required(decide({ ...result.proofStrengths[1]!, extensionBasis: result.extensionBasis }, { lower: 400 })).findings.map(
        ({ code }) => code,
      );
    expect(codes(early)).toContain('decision-on-travel');
    expect(codes(late)).not.toContain('decision-on-travel');
  });

  test('in replicates: it is not taken together with one by extensometer', () => {
    const symbols = (results: readonly (typeof early)[]) => analyseReplicates(results).properties.map(({ symbol }) => symbol);
    expect(symbols([late, tested(0.02, 2)])).toContain('Rp0.2');
    expect(symbols([early, tested(0.003, 2)])).toContain('Rp0.2');
    expect(symbols([early, late])).not.toContain('Rp0.2');
    expect(analyseReplicates([early, late]).differences).toContain('extensionBasis');
  });
});

test('in compression alike', () => {
  const strain = Array.from({ length: 1500 }, (_, i) => i * 1e-5);
  const force = strain.map((e) => (e < 0.004 ? 70_000 * e : 280 + 1000 * (e - 0.004)) * piece.section.area);
  const extension = strain.map((e) => (e < 0.005 ? e * 15 : NaN));
  const found = analyseCompression(
    { force, extension, travel: strain.map((e) => e * 15) },
    { section: piece.section, height: 15 },
    { offsets: [0.0005, 0.002] },
  );
  expect(found.proofStrengths.map(({ beyondExtensometer }) => beyondExtensometer)).toEqual([undefined, true]);
});
