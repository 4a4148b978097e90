import { describe, expect, test } from 'vitest';
import { analyseTension, fitModulus, required, round, type ModulusOptions } from '../../src/index.js';
import { randomNumbers } from '../../src/numeric/index.js';

const section = round({ diameter: 8 });

/** An invented aluminium of 70 GPa, Rp0.2 270 MPa, exponent 20, with 0.12 MPa of noise. */
function curve(n = 800) {
  const { normal } = randomNumbers(9);
  const exact = Array.from({ length: n }, (_, i) => (i < 0.6 * n ? (291 * i) / (0.6 * n) : 291 + (40 * (i - 0.6 * n)) / (0.4 * n)));
  return { strain: exact.map((R) => R / 70_000 + 0.002 * (R / 270) ** 20), stress: exact.map((R) => R + 0.12 * normal()) };
}

const analysed = (modulus: ModulusOptions) => {
  const { strain, stress } = curve();
  return analyseTension({ force: stress.map((R) => R * section.area), strain }, { section, gaugeLength: 40 }, { modulus });
};

describe('a window that was given beside the others', () => {
  test('two samples in noise: the others agree, the window is at fault', () => {
    const { strain, stress } = curve();
    // the pair whose noise makes the flattest line
    const pairs = Array.from({ length: 200 }, (_, i) => 100 + i).filter((i) => stress[i + 1]! > stress[i]!);
    const slopeAt = (i: number) => (stress[i + 1]! - stress[i]!) / (strain[i + 1]! - strain[i]!);
    const first = pairs.reduce((a, b) => (slopeAt(b) < slopeAt(a) ? b : a));
    const line = required(fitModulus({ strain, stress }, { window: { by: 'samples', first, last: first + 1 } }));
    const [low, high] = line.envelope!.slope;
    // lines of 20 samples and more over 54 MPa know the slope of 0.12 MPa of noise to 0.2 %: three deviations, and half a per cent of yielding
    expect(low).toBeGreaterThan(0.989 * 70_000);
    expect(high).toBeLessThan(1.006 * 70_000);
    expect(line.envelope!.proofStrength![0]).toBeGreaterThan(0.99 * 270);
    expect(line.envelope!.verdict).toBe('fragile');
    expect(line.linearPart).toMatchObject({ verdict: 'none', why: 'window-apart', share: low / line.slope - 1 });
    const { findings, modulus } = analysed({ window: { by: 'samples', first, last: first + 1 } });
    expect(modulus).toBeUndefined();
    expect(findings.map(({ code }) => code)).not.toContain('no-linear-part');
    const fault = findings.find(({ code }) => code === 'window-not-linear')!;
    expect(fault).toMatchObject({ severity: 'fault', field: 'modulus', range: [first, first + 1] });
    expect(fault.message).toContain('off those of other windows');
  });

  test('in yielding: its own strength is found, lies outside those of the others, and is not trusted', () => {
    const window = { by: 'stress', from: 200, to: 265 } as const;
    const { modulusWindow, proofStrengths, findings } = analysed({ window });
    const { envelope, linearPart, trust, slope } = modulusWindow!;
    expect(proofStrengths[0]!.value).toBeGreaterThan(1.015 * 270);
    expect(Math.abs(envelope!.proofStrength![1] / 270 - 1)).toBeLessThan(0.005);
    expect(envelope!.verdict).toBe('fragile');
    expect(linearPart).toMatchObject({ verdict: 'none', why: 'window-apart' });
    expect(trust!.verdict).toBe('unusable');
    // λ is of the crossing that the result states, to what means over its neighbourhood leave open
    expect(trust!.leverage).toBeCloseTo(proofStrengths[0]!.value / slope / 0.002, 1);
    const told = findings.find(({ code }) => code === 'windows-disagree')!;
    expect(told.values).toMatchObject({ slope, lowest: envelope!.slope[0], highest: envelope!.slope[1] });
    expect(findings.map(({ code }) => code)).toContain('window-not-linear');
  });

  test('on the straight part nothing is said of it', () => {
    const { modulus, findings, modulusWindow } = analysed({ window: { by: 'stress', from: 60, to: 150 } });
    expect(Math.abs(modulus!.value / 70_000 - 1)).toBeLessThan(0.01);
    expect(modulusWindow!.envelope!.verdict).toBe('robust');
    expect(findings.map(({ code }) => code)).not.toContain('window-not-linear');
  });
});

describe('slopes below zero are told as such', () => {
  test('of other windows, where strain goes back while the stress rises', () => {
    // travel in steps of 0.05 mm, on a frame of 2e-6 mm/N: without the frame each stand of the reading goes back
    const force = Array.from({ length: 400 }, (_, i) => (section.area * 324 * i) / 400);
    const travel = force.map(
      (F) => Math.round((48 * (F / section.area / 206_000 + 0.002 * (F / section.area / 300) ** 20) + 2e-6 * F) / 0.05) * 0.05,
    );
    const { modulusWindow, findings } = analyseTension(
      { force, travel },
      { section, gaugeLength: 40, parallelLength: 48 },
      { frameCompliance: 2e-6 },
    );
    expect(modulusWindow!.envelope!.slope[0]).toBeLessThan(0);
    const codes = findings.map(({ code }) => code);
    expect(codes).toContain('windows-fall');
    expect(codes).not.toContain('windows-disagree');
    expect(findings.find(({ code }) => code === 'windows-fall')!.message).toContain('negative');
  });

  test('of the band above, where the slope falls by more than all of it', () => {
    // straight, but from 30 to 40 MPa the strain goes back by 5 MPa's worth; then to 100 MPa and flat
    const stress = Array.from({ length: 1200 }, (_, i) => Math.min(i / 10, 100));
    const strain = stress.map((R, i) => (R < 30 ? R : R < 40 ? 30 - (R - 30) / 2 : R - 15) / 70_000 + Math.max(0, i - 1000) * 3e-5);
    const { findings, modulusWindow } = analyseTension({ force: stress.map((R) => 50 * R), strain }, { section, gaugeLength: 40 });
    expect(modulusWindow!.slopeFall!.value).toBeGreaterThan(1);
    const { message } = findings.find(({ code }) => code === 'no-linear-part')!;
    expect(message).toContain('the slope is negative between 0.3 and 0.4 of the offset stress');
  });
});
