import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyseTension, readRecord, reductionOfArea, round, sectionFromArea, type TensionRecord } from '../../src/index.js';

/** A measured record, read as any logger's file. */
const measured = (name: string): TensionRecord =>
  readRecord(readFileSync(new URL(`open-data/${name}.csv`, import.meta.url))).record as TensionRecord;
const within = (found: number | undefined, reported: number, share: number): void => {
  expect(Math.abs(found! / reported - 1), `${found} against the reported ${reported}`).toBeLessThanOrEqual(share);
};

// BAM (2021), CC BY 4.0: see open-data/README.md. Tolerances: those of the laboratory's own rounding and choice of window.
describe('S355 sheet, measured by BAM', () => {
  const piece = {
    section: sectionFromArea({ area: 120.444 }),
    gaugeLength: 60,
    extensometerLength: 50,
    afterFracture: { gaugeLength: 81, area: 3.38 * 14.67 },
  };
  const result = analyseTension(measured('s355-zx2'), piece);

  test('ReH 379, Rp0.2 374, Rm 504 MPa, E 199 GPa, A 35 %, Z 59 %', () => {
    within(result.upperYieldStrength?.value, 379, 0.005);
    within(result.proofStrengths[0]?.value, 374, 0.005);
    within(result.tensileStrength!.value, 504, 0.001);
    within(result.modulus?.value, 199_000, 0.03);
    expect(result.elongationAfterFracture?.value).toBeCloseTo(0.35, 12);
    expect(Math.abs(100 * result.reductionOfArea!.value - 59)).toBeLessThanOrEqual(0.5);
  });

  test('the plateau ends near 1.3 % and the extensometer was taken off at 3.9 %', () => {
    expect(result.yieldPointExtension!.value).toBeGreaterThan(0.005);
    expect(result.yieldPointExtension!.value).toBeLessThan(0.013);
    expect(result.extensionBasis).toBe('extensometer-then-travel');
    const codes = result.findings.map(({ code }) => code);
    expect(codes).toContain('extensometer-taken-off');
    expect(codes).toContain('travel-carries-on');
    expect(codes).toContain('pause');
  });
});

// Fraunhofer IWM and IWT Bremen (2022), CC BY 4.0
describe('42CrMoS4 round piece, measured by Fraunhofer IWM', () => {
  const section = round({ diameter: 5.013 });
  const piece = { section, gaugeLength: 25, parallelLength: 30, afterFracture: { area: 8.408460170962467 } };
  const result = analyseTension(measured('42crmos4-46nt75'), piece, { offsets: [0.002, 0.01] });

  test('Rp0.2 1131.91, Rp1 1147.94, Rm 1199.31 MPa, E 205.7 GPa, Ag 4.955 %, Z 57.398 %', () => {
    within(result.proofStrengths[0]?.value, 1131.91, 0.005);
    within(result.proofStrengths[1]?.value, 1147.94, 0.005);
    within(result.tensileStrength!.value, 1199.31, 0.001);
    within(result.modulus?.value, 205_699.7, 0.08);
    expect(Math.abs(100 * result.uniformExtension!.value - 4.955)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(100 * result.reductionOfArea!.value - 57.398)).toBeLessThanOrEqual(0.05);
    expect(reductionOfArea({ originalArea: section.area, finalArea: 8.408460170962467 })).toBe(result.reductionOfArea!.value);
  });
});
