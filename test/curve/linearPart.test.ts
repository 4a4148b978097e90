import { describe, expect, test } from 'vitest';
import { analyseCurve, fitModulus, required, type CurveAnalysisOptions, type WindowChoice } from '../../src/index.js';
import { linearLimits, linearPart } from '../../src/curve/modulus/linearPart.js';
import { lineTrust } from '../../src/curve/modulus/lineTrust.js';
import { seeded } from '../support/random.js';

/** A curve of known modulus: by Ramberg and Osgood, or straight up to its yield strength where no exponent is given. */
interface Truth {
  readonly modulus: number;
  readonly proof: number;
  readonly exponent?: number;
  /** Strain that the toe takes, and the stress over which it is taken up to a share 1/e, as a share of the proof strength. */
  readonly toe?: readonly [number, number];
  /** Standard deviation of the stress, as a share of 1.25 times the highest. */
  readonly noise?: number;
  readonly samples?: number;
}

const copper: Truth = { modulus: 120_000, proof: 60, exponent: 4, toe: [3e-4, 0.06], noise: 1e-3 };
const steel: Truth = { modulus: 205_000, proof: 400, exponent: 10, toe: [2e-4, 0.05], noise: 1e-3 };
const straight: Truth = { modulus: 205_000, proof: 300, toe: [3e-4, 0.05], noise: 1e-3 };

/** 0.3 of the samples lie below the proof strength, even in strain; the rest goes up to 12 or 25 % strain. */
function curveOf({ modulus, proof, exponent, toe = [0, 1], noise = 0, samples = 1000 }: Truth, seed = 1) {
  const stressAt = (e: number): number => {
    if (exponent === undefined) return Math.min(modulus * e, proof + 300 * Math.max(0, e - 0.02) ** 0.7);
    let [low, high] = [0, modulus * e];
    for (let k = 0; k < 60; k += 1) {
      const R = (low + high) / 2;
      if (R / modulus + 0.002 * (R / proof) ** exponent > e) high = R;
      else low = R;
    }
    return (low + high) / 2;
  };
  const { normal } = seeded(seed);
  const knee = proof / modulus + (exponent === undefined ? 2e-4 : 2.1e-3);
  const before = Math.round(0.3 * samples);
  const end = exponent !== undefined && exponent < 6 ? 0.25 : 0.12;
  const piece = Array.from({ length: samples }, (_, i) =>
    i < before ? (knee * i) / before : knee + ((end - knee) * (i - before)) / (samples - before),
  );
  const clean = piece.map(stressAt);
  const scatter = noise * 1.25 * clean[samples - 1]!;
  return {
    strain: piece.map((e, i) => e + toe[0] * (1 - Math.exp(-clean[i]! / (toe[1] * proof)))),
    stress: clean.map((R) => R + scatter * normal()),
  };
}

const seeds = Array.from({ length: 20 }, (_, k) => 100 + k);
const fit = (truth: Truth, seed: number, window?: WindowChoice) => required(fitModulus(curveOf(truth, seed), { window }));
const analysed = (truth: Truth, seed = 1, options: CurveAnalysisOptions = {}) => analyseCurve(curveOf(truth, seed), options);
const error = (truth: Truth, slope: number): number => slope / truth.modulus - 1;

describe('curves without a linear part', () => {
  test.each<[number, number, readonly [number, number]]>([
    [5, 1e-3, [3e-4, 0.06]],
    [4, 1e-3, [3e-4, 0.06]],
    [4, 3e-3, [3e-4, 0.06]],
    [3, 1e-4, [0, 1]],
    [3, 1e-3, [0, 1]],
    [3, 3e-3, [0, 1]],
  ])(
    'exponent %d, noise %d, toe %j: E is withheld whatever the noise, for the slope is more than 15 %% too low',
    (exponent, noise, toe) => {
      const lines = seeds.map((seed) => fit({ ...copper, exponent, noise, toe }, seed));
      for (const { slope } of lines) expect(error(copper, slope)).toBeLessThan(-0.15);
      const found = lines.filter(({ linearPart: part }) => part!.verdict === 'found');
      // of the strongest noise one in ten may slip
      expect(found.length).toBeLessThanOrEqual(noise > 2e-3 ? 2 : 0);
    },
  );

  test('the fall of the slope alone misses most of them: its bands are short, and a toe flattens the lower', () => {
    const missed = seeds.filter((seed) => {
      const fall = fit(copper, seed).slopeFall!;
      return fall.value <= 0.1 || fall.value <= 4 * fall.standardError;
    });
    expect(missed.length).toBeGreaterThan(5);
  });

  test('E is withheld with one fault that names what rests on the line, and the slope stays', () => {
    const result = analysed(copper);
    expect(result.modulus).toBeUndefined();
    expect(result.elasticSlope).toBeDefined();
    const of = (code: string) => result.findings.find((one) => one.code === code);
    expect(of('no-linear-part')).toMatchObject({ field: 'modulus', severity: 'fault' });
    expect(String(of('no-linear-part')!.values['symbols']).split(', ')).toEqual(expect.arrayContaining(['mE', 'Rp0.2', 'Rpl']));
    // as it says: too high, and outside what the other windows give
    expect(result.proofStrengths[0]!.value).toBeGreaterThan(1.01 * copper.proof);
    expect(result.modulusWindow!.envelope!.slope[1]).toBeLessThan(copper.modulus);
    expect(of('no-linear-part')!.remedy).toContain('too flat and a strength by an offset too high');
    expect(of('windows-disagree')).toBeUndefined();
    // limits that are asked for count
    const wide = analysed(copper, 1, { thresholds: { slopeFall: 1, slopeSpread: 2, bendLimit: 3 } });
    expect(wide.modulus).toBeDefined();
    expect(wide.modulusWindow!.linearPart).toEqual({ verdict: 'found' });
  });
});

describe('curves with one', () => {
  test.each<[string, Truth]>([
    ['steel', steel],
    ['steel, 10 000 samples', { ...steel, samples: 10_000 }],
    ['a yield point', straight],
    ['a yield point in strong noise', { ...straight, noise: 3e-3 }],
    ['a yield point, 200 samples', { ...straight, samples: 200 }],
    ['aluminium', { modulus: 70_000, proof: 300, exponent: 16, noise: 1e-3 }],
  ])('%s', (_, truth) => {
    for (const seed of seeds) {
      const line = fit(truth, seed);
      expect(line.linearPart).toEqual({ verdict: 'found' });
      expect(Math.abs(error(truth, line.slope))).toBeLessThan(0.06);
    }
    const { findings, modulus } = analysed(truth);
    expect(modulus).toBeDefined();
    expect(findings.map(({ code }) => code)).not.toContain('no-linear-part');
  });

  test('a long toe below a long straight part: windows in the toe do not count against it', () => {
    const line = fit({ ...straight, toe: [3e-3, 0.06], noise: 1e-4 }, 1);
    expect(line.envelope!.slope[1] / line.envelope!.slope[0]).toBeGreaterThan(1.15);
    expect(line.linearPart).toEqual({ verdict: 'found' });
    expect(Math.abs(error(straight, line.slope))).toBeLessThan(0.01);
  });

  test('a toe that leaves no more than a short window is told as one, and E is withheld', () => {
    const truth = { ...steel, exponent: 14, toe: [3e-3, 0.2] as const };
    const line = fit(truth, 1);
    expect(error(truth, line.slope)).toBeLessThan(-0.2);
    expect(line.linearPart).toMatchObject({ verdict: 'none', why: 'toe-reaches-up' });
    expect(analysed(truth).findings.find(({ code }) => code === 'no-linear-part')!.message).toContain('a toe reaches up to the window');
  });
});

test.each([
  [40, 14, 400],
  [60, 14, 400],
  [60, 8, 400],
])(
  '%d samples of steel with exponent %d: a window of 8 reaches into yielding and is bent, so E is withheld',
  (samples, exponent, proof) => {
    const truth = { ...steel, exponent, proof, samples };
    const { modulus, elasticSlope, modulusWindow } = analysed(truth);
    expect(error(truth, elasticSlope!.value)).toBeLessThan(-0.15);
    expect(modulus).toBeUndefined();
    expect(modulusWindow!.linearPart).toMatchObject({ verdict: 'none', why: 'window-bent' });
    expect(modulusWindow!.trust!.verdict).not.toBe('sound');
  },
);

describe('a window that is given', () => {
  const soft = { ...copper, exponent: 3.5, toe: [0, 1] as const, noise: 1e-4 };
  const stress = (from: number, to: number): WindowChoice => ({ by: 'stress', from, to });

  test.each<[string, Truth, WindowChoice]>([
    ['copper from 15 to 40 MPa', soft, stress(15, 40)],
    ['copper, too short to be bent', soft, stress(15, 18)],
    ['copper by samples', soft, { by: 'samples', first: 20, last: 80 }],
    ['copper by strain', soft, { by: 'strain', from: 2e-4, to: 1e-3 }],
    ['steel up into yielding', steel, stress(100, 380)],
    ['steel down into the toe', { ...steel, toe: [3e-4, 0.06] }, stress(20, 100)],
  ])('%s: E is withheld', (_, truth, window) => {
    const { modulus, elasticSlope, findings } = analysed(truth, 1, { modulus: { window } });
    expect(error(truth, elasticSlope!.value)).toBeLessThan(-0.1);
    expect(modulus).toBeUndefined();
    // copper is bent wherever one looks; of steel it is the window
    expect(findings.map(({ code }) => code)).toContain(truth === soft ? 'no-linear-part' : 'window-not-linear');
  });

  test('on the straight part: E is stated, with the envelope and the fall that a searched window has', () => {
    for (const seed of seeds) {
      const line = fit(steel, seed, stress(100, 200));
      expect(line.linearPart).toEqual({ verdict: 'found' });
      expect(line.envelope!.windows).toBeGreaterThan(10);
      expect(line.slopeFall!.value).toBeLessThan(0.1);
      expect(Math.abs(error(steel, line.slope))).toBeLessThan(0.03);
    }
  });

  test('an unloading line beyond the 0.2 % offset is not judged by the first loading', () => {
    const { strain, stress: loaded } = curveOf({ ...soft, noise: 0 });
    const n = strain.length;
    const back = Array.from({ length: 50 }, (_, i) => 1 - i / 50);
    const [e, R] = [strain[n - 1]!, loaded[n - 1]!];
    const record = {
      strain: [...strain, ...back.map((f) => e - ((1 - f) * R) / soft.modulus)],
      stress: [...loaded, ...back.map((f) => f * R)],
    };
    const line = required(fitModulus(record, { window: { by: 'samples', first: n, last: n + 49 } }));
    expect(line.slope / soft.modulus).toBeCloseTo(1, 6);
    expect(line.linearPart).toEqual({ verdict: 'found' });
    expect(line).not.toHaveProperty('envelope');
  });
});

describe('trust in Rp0.2', () => {
  const verdict = (truth: Truth, window?: WindowChoice) => fit(truth, 1, window).trust!.verdict;

  test('copper is never sound, and unusable where Rp0.2 is more than a tenth too high', () => {
    expect(verdict({ ...copper, exponent: 4 })).not.toBe('sound');
    expect(verdict({ ...copper, exponent: 5 })).not.toBe('sound');
    for (const exponent of [3, 2.5]) expect(verdict({ ...copper, exponent, toe: [0, 1], noise: 1e-4 })).toBe('unusable');
    expect(verdict({ ...copper, exponent: 3, toe: [0, 1] }, { by: 'relative-error' })).toBe('unusable');
  });

  test('steel is sound, two samples are unusable, seven are doubtful', () => {
    expect(verdict({ ...steel, noise: 3e-4 })).toBe('sound');
    const of = (points: number) =>
      lineTrust({ slope: 200_000, relativeStandardError: 0, points }, 400, { verdict: 'found' }, undefined).verdict;
    expect([2, 3, 7, 8].map(of)).toEqual(['unusable', 'doubtful', 'doubtful', 'sound']);
    expect(verdict({ ...steel, noise: 0 }, { by: 'samples', first: 80, last: 81 })).toBe('unusable');
  });

  test('what windows disagree by moves the offset as the standard error does', () => {
    const fragile = { windows: 9, slope: [180_000, 200_000], verdict: 'fragile' } as const;
    // 400 MPa at 200 GPa are once the offset; a ninth of it
    expect(lineTrust({ slope: 200_000, relativeStandardError: 0.001, points: 90 }, 400, { verdict: 'found' }, fragile)).toEqual({
      leverage: 1,
      offsetDoubt: expect.closeTo(1 / 9, 12) as number,
      verdict: 'doubtful',
    });
  });
});

test('the rule by itself: limits exactly hit still pass, and nothing known gives no verdict', () => {
  const own = { slope: 100, rise: 0.2 };
  const rule = (fall?: [number, number], slopes?: [number, number], bend?: [number, number], line = own, yielding?: number) =>
    linearPart(
      line,
      {
        slopeFall: fall && { value: fall[0], standardError: fall[1] },
        envelope: slopes && { windows: 5, slope: slopes, verdict: 'fragile' },
        residuals: bend && { runs: 5, expectedRuns: 5, runsDeviation: 0, slopeChange: bend[0], slopeChangeError: bend[1] },
        beginningYield: yielding === undefined ? undefined : { exponent: 6, slopeShare: yielding },
      },
      linearLimits,
    );
  expect(rule()).toBeUndefined();
  expect(rule([0.1, 0.001], [100, 125], [-0.2, 0.001])).toEqual({ verdict: 'found' });
  expect(rule([0.101, 0.001])).toEqual({ verdict: 'none', why: 'slope-falls', share: 0.101 });
  expect(rule([0.101, 0.03])).toEqual({ verdict: 'found' });
  expect(rule([0.05, 0.001], [100, 126])).toMatchObject({ verdict: 'none', why: 'windows-apart' });
  expect(rule([-0.05, 0.001], [80, 120])).toEqual({ verdict: 'none', why: 'toe-reaches-up', share: 0.5 });
  expect(rule([-0.05, 0.001], [80, 104], undefined, { slope: 104, rise: 0.3 })).toEqual({ verdict: 'found' });
  expect(rule([-0.05, 0.001], [80, 110], undefined, { slope: 100, rise: 0.3 })).toMatchObject({ verdict: 'none' });
  expect(rule(undefined, [-1, 100])).toMatchObject({ share: 1 });
  expect(rule(undefined, undefined, [0.21, 0.1])).toEqual({ verdict: 'none', why: 'window-bent', share: 0.21 });
  expect(rule(undefined, undefined, [-0.21, 0.11])).toEqual({ verdict: 'found' });
  expect(rule([0.1, 0.001], undefined, undefined, own, 0.05)).toEqual({ verdict: 'found' });
  expect(rule([0.1, 0.001], undefined, undefined, own, 0.051)).toEqual({ verdict: 'none', why: 'yields-early', share: 0.102 });
});
