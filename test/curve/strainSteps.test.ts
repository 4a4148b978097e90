import { describe, expect, test } from 'vitest';
import { analyseTension, fitModulus, required, round, type TensionResult } from '../../src/index.js';
import { strainSteps } from '../../src/curve/modulus/strainSteps.js';
import { lineFit, randomNumbers } from '../../src/numeric/index.js';

const section = round({ diameter: 8 });
const E = 70_000;
const RP = 270;
const BASE = 25;

/** An invented aluminium alloy, Rp0.2 of 270 MPa, on an extensometer of 25 mm that reads in steps [mm]. */
function coarse(step: number, n = 600, options: Parameters<typeof analyseTension>[2] = {}): TensionResult {
  const stress = Array.from({ length: n }, (_, i) => (i < (5 * n) / 6 ? (360 * i) / n : 300 + (120 * (i - (5 * n) / 6)) / n));
  const extension = stress.map((R) => BASE * (R / E + 0.002 * (R / RP) ** 20)).map((x) => (step > 0 ? Math.round(x / step) * step : x));
  return analyseTension(
    { force: stress.map((R) => R * section.area), extension },
    { section, gaugeLength: 40, extensometerLength: BASE },
    options,
  );
}

const found = ({ findings }: TensionResult, code: string) => findings.find((one) => one.code === code);

/** What is told, by the covariance of every pair of samples: those of one stand share an error of q/√12, whose own part the scatter holds; and how much too flat the line is. */
function ofPairs(read: Float64Array, q: number): number {
  const mean = read.reduce((a, b) => a + b, 0) / read.length;
  const squares = read.reduce((a, e) => a + (e - mean) ** 2, 0);
  let pairs = 0;
  for (const [i, a] of read.entries())
    for (const [j, b] of read.entries()) if (i !== j && a === b) pairs += ((a - mean) * (b - mean)) / squares ** 2;
  return Math.hypot(Math.sqrt((pairs * q ** 2) / 12), q ** 2 / 12 / (squares / read.length));
}

/** Root of the mean of squares. */
const rms = (values: readonly number[]) => Math.sqrt(values.reduce((a, b) => a + b * b, 0) / values.length);

describe('steps of the strain', () => {
  test.each([20, 60])(
    'a drive that goes about a step between two of %i samples: readings in line, a slope that is off by what is told',
    (n) => {
      // where every sample reads one step more, the ends of the line are off by up to half a step each: their difference is a triangle of ±q, of q/√6
      const { uniform } = randomNumbers(n);
      const strain = Float64Array.from({ length: n + 1 }, (_, i) => 1e-4 * i);
      const errors: number[] = [];
      while (errors.length < 2000) {
        const rate = 1 + (2 * uniform() - 1) / n;
        const start = uniform() - 0.5;
        const inLine = strain.every((_, i) => Math.round(start + rate * i) === i);
        if (inLine) errors.push(rate - 1);
      }
      const stress = strain.map((e) => E * e + 50);
      const line = required(fitModulus({ strain, stress }, { window: { by: 'samples', first: 0, last: n } }));
      const told = strainSteps({ strain, stress }, line, 1e-4)!.slopeShare;
      // 2000 trials tell an rms to 2 %, and this is three of those; the scatter's own part, 12/n³ against 1/6 n², is taken off
      expect(Math.abs(rms(errors) / Math.sqrt(1 / (6 * n ** 2)) - 1)).toBeLessThan(0.06);
      expect(Math.abs(told / Math.sqrt(1 / (6 * n ** 2) - 1 / n ** 3) - 1)).toBeLessThan(0.06);
    },
  );

  test.each([4, 6, 12, 30])('a hand that stops %i times: the slopes of its lines scatter by what is told', (k) => {
    // ten samples wherever the hand stops, once within each step; the truth is a straight line
    const { uniform } = randomNumbers(k);
    const each = 10;
    const told: number[] = [];
    const errors: number[] = [];
    for (let trial = 0; trial < 400; trial += 1) {
      const exact = Float64Array.from({ length: k + 1 }, (_, i) => 1e-4 * (i + uniform() - 0.5));
      const of = (i: number) => Math.floor(i / each);
      const strain = Float64Array.from({ length: each * (k + 1) }, (_, i) => 1e-4 * of(i));
      const stress = strain.map((_, i) => E * (exact[of(i)]! + 1e-3));
      const line = required(fitModulus({ strain, stress }, { window: { by: 'samples', first: 0, last: strain.length - 1 } }));
      errors.push(line.slope / E - 1);
      told.push(line.strainSteps!.slopeShare);
    }
    // by theory k + 1 errors of a rectangle on k + 1 places have √(1/(k(k + 1)(k + 2))); what is told says 1/k√(1/(k + 1)) less the scatter's tenth,
    // so up to √((k + 2)/k) more; 400 trials tell an rms to 4 %, and this is three of those
    const theory = Math.sqrt(1 / (k * (k + 1) * (k + 2)));
    expect(Math.abs(rms(errors) / theory - 1)).toBeLessThan(0.12);
    expect(rms(told) / theory).toBeGreaterThan(0.88 * Math.sqrt(0.9));
    expect(rms(told) / theory).toBeLessThan(1.12 * Math.sqrt((k + 2) / k));
  });

  test.each([
    // steps, what the frame takes of the motion, samples of each of two rests on the way
    [6, 0, 150],
    [10, 0, 150],
    [20, 0, 150],
    [12, 0.8, 60],
    [3.3, 0.9, 0],
    [4.3, 0.9, 0],
    [5.2, 0.8, 0],
  ])('over %f steps, the frame taking %f, with rests of %i samples anywhere: what is told holds the errors', (k, frame, rest) => {
    const { uniform } = randomNumbers(Math.round(10 * k));
    const q = 1e-4;
    const told: number[] = [];
    const errors: number[] = [];
    for (let trial = 0; trial < 400; trial += 1) {
      const phase = uniform();
      const rests = [10, 50].map((from) => from + Math.floor(40 * uniform()));
      const places = Array.from({ length: 100 }, (_, i) => Array<number>(rests.includes(i) ? 1 + rest : 1).fill(i / 99)).flat();
      // the piece stretches by k steps, the travel by the frame's part more
      const piece = Float64Array.from(places, (t) => k * q * t);
      const strain = piece.map((e) => q * Math.round(e / (1 - frame) / q + phase) - (e * frame) / (1 - frame));
      const stress = piece.map((e) => E * e);
      const { slope } = lineFit(strain, stress, 0, strain.length - 1)!;
      errors.push(slope / E - 1);
      told.push(strainSteps({ strain, stress }, { slope, first: 0, last: strain.length - 1 }, q)!.slopeShare);
    }
    // 400 trials tell an rms to 3.5 %, of which this is three
    expect(rms(told)).toBeGreaterThan(0.89 * rms(errors));
    // stands that are passed evenly have hardly an error, and k clean ones are told with k^(-3/2) and k^-2 all the same
    expect(rms(told)).toBeLessThan(Math.hypot(1.11 * rms(errors), k ** -1.5, k ** -2));
  });

  test('are none where every sample has a strain of its own, and few where noise moves the reading to and fro', () => {
    const { normal } = randomNumbers(1);
    const exact = Float64Array.from({ length: 600 }, (_, i) => 2e-6 * i);
    const window = { by: 'samples', first: 50, last: 549 } as const;
    const line = (strain: Float64Array) => required(fitModulus({ strain, stress: exact.map((e) => E * e) }, { window }));
    expect(line(exact).strainSteps).toBeUndefined();
    const read = exact.map((e) => Math.round(e / 1e-4) * 1e-4);
    const stands = line(read).strainSteps!;
    // 500 samples of 2e-6 are ten steps of 1e-4
    expect(stands.steps).toBeCloseTo(10, 0);
    expect(stands.slopeShare).toBeCloseTo(ofPairs(read.subarray(50, 550), 1e-4), 12);
    const dithered = line(exact.map((e) => Math.round((e + 1e-4 * normal()) / 1e-4) * 1e-4)).strainSteps!;
    // noise of a step: two neighbours of three differ, their errors know little of each other; the line is too flat by 1/k² at most
    expect(dithered.slopeShare).toBeLessThan(0.01);
    expect(line(exact.map((e, i) => e + (i % 2) * 2e-6)).strainSteps?.slopeShare ?? 0).toBeLessThan(0.01);
  });

  test('25, 37.5, 50 and 75 µm on 25 mm: E is withheld, by numbers, and no proof strength is sound', () => {
    for (const step of [0.025, 0.0375, 0.05, 0.075]) {
      const result = coarse(step);
      expect(result.modulus).toBeUndefined();
      expect(result.modulusWindow!.linearPart).toBeUndefined();
      expect(result.modulusWindow!.trust?.verdict).toBe('unusable');
      const few = found(result, 'strain-steps-few')!;
      expect(few).toMatchObject({
        severity: 'fault',
        field: 'modulus',
        values: { step: expect.closeTo(step / BASE, 12) as number, limit: 10 },
      });
      expect(few.values['steps']).toBeLessThan(5);
      expect(few.message).toContain('E is withheld');
      expect(found(result, 'offset-leverage')?.severity).toBe('fault');
    }
  });

  test('up to 10 µm E is right within what is stated, and doubted in proportion', () => {
    const severities = [0, 1e-4, 1e-3, 5e-3, 0.01].map((step) => {
      const { modulus, modulusWindow, findings } = coarse(step);
      expect(modulusWindow!.linearPart).toEqual({ verdict: 'found' });
      // the curve's own plastic strain in the window is part of the error: 0.02 % without steps
      expect(Math.abs(modulus!.value - E)).toBeLessThan(2 * modulus!.standardUncertainty! + 2e-4 * E);
      return findings.find(({ code }) => code === 'strain-steps-open')?.severity;
    });
    expect(severities).toEqual([undefined, undefined, undefined, 'note', 'caution']);
    expect(coarse(0.01).modulusWindow!.trust?.verdict).not.toBe('sound');
    expect(coarse(1e-3).modulusWindow!.trust?.verdict).toBe('sound');
  });

  test('stand in the uncertainty of E, with a budget as a line of its own', () => {
    const plain = coarse(5e-3);
    const { slopeShare } = plain.modulusWindow!.strainSteps!;
    expect(plain.modulus!.standardUncertainty).toBeGreaterThan(slopeShare * plain.modulus!.value);
    const { modulus, uncertainty } = coarse(5e-3, 600, { uncertainty: { forceClass: 1 } });
    const { lines } = uncertainty!['E']!;
    const line = lines.find(({ input }) => input === 'steps of the strain in the elastic line')!;
    expect(line.standardUncertainty).toBeCloseTo(slopeShare, 12);
    expect(modulus!.standardUncertainty).toBeGreaterThan(slopeShare * modulus!.value);
  });

  test('of travel with the frame taken out count by what the piece stretches', () => {
    // 206 GPa, 300 MPa, 48 mm on a frame of 2e-5 mm/N
    const of = (step: number) => {
      const stress = Array.from({ length: 800 }, (_, i) => (i < 480 ? 0.675 * i : 324 + 0.14 * (i - 480)));
      const travel = stress.map((R) => 48 * (R / 206_000 + 0.002 * (R / 300) ** 20) + R * section.area * 2e-5);
      return analyseTension(
        { force: stress.map((R) => R * section.area), travel: travel.map((x) => Math.round(x / step) * step) },
        { section, gaugeLength: 40, parallelLength: 48 },
        { frameCompliance: 2e-5 },
      );
    };
    const result = of(0.05);
    expect(result.modulus).toBeUndefined();
    expect(found(result, 'strain-steps-few')).toBeDefined();
    expect(of(1e-3).modulus!.value / 206_000).toBeCloseTo(1, 1);
    expect(found(of(1e-3), 'strain-steps-few')).toBeUndefined();
  });

  test('the limit is a threshold', () => {
    const share = coarse(0.01).modulusWindow!.strainSteps!.slopeShare;
    expect(coarse(0.01, 600, { thresholds: { stepDoubt: share } }).modulus).toBeDefined();
    expect(coarse(0.01, 600, { thresholds: { stepDoubt: 0.999 * share } }).modulus).toBeUndefined();
  });
});

test('a linear part that is not known is none: three samples tell no bend', () => {
  const result = coarse(0, 9, { thresholds: { leastElasticPoints: 3 } });
  expect(result.modulusWindow!.points).toBeLessThan(5);
  expect(result.modulusWindow!.linearPart).toBeUndefined();
  expect(result.modulus).toBeUndefined();
  const { points } = result.modulusWindow!;
  expect(found(result, 'linear-part-unknown')).toMatchObject({ severity: 'fault', field: 'modulus', values: { points, strains: points } });
});
