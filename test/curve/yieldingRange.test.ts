/** The range between ReH and hardening, by curves of few samples: strain counts from ReH, which is 400 MPa, so that half a per cent of it is 2 MPa. */
import { describe, expect, test } from 'vitest';
import { seeded } from '../support/random.js';
import { yieldingRange, type YieldingTask } from '../../src/curve/yield/yieldingRange.js';

type Points = readonly (readonly [strain: number, stress: number])[];

/** Independent noise, and what else is otherwise. */
type Change = Partial<Omit<YieldingTask, 'noise'>> & { readonly noise?: number };

/** ReL with its strain, where Ae ends, and the first sample of hardening; ReH is put before the points, and the first of them has fallen. */
function rangeOf(points: Points, { noise = 0, ...change }: Change = {}, origin = 0) {
  const all = [[-0.002, 0], [0, 400], ...points] as const;
  const strain = Float64Array.from(all, ([e]) => e + origin);
  const stress = Float64Array.from(all, ([, R]) => R);
  const found = yieldingRange(
    { strain, stress },
    {
      peak: 1,
      fallen: 2,
      end: all.length,
      noise: { level: noise, ofMeans: noise },
      reach: 0,
      step: 0,
      spoilt: undefined,
      lowerYield: 'whole',
      ...change,
    },
  );
  if (typeof found === 'string' || !found.onset) return undefined;
  const { lowest, onset } = found;
  return { lower: [strain[lowest], stress[lowest]], end: onset.hardeningStrain, start: strain[onset.hardeningStart] };
}
/** Samples that a pause spoils, by their strains. */
const spoiltAt = (points: Points, ...strains: number[]) => Uint8Array.from([0, 0, ...points.map(([e]) => Number(strains.includes(e)))]);
const near = (value: number) => expect.closeTo(value, 9) as number;

describe('the last minimum before hardening', () => {
  /** Hardening by 10 GPa from a stress at 2.4 %. */
  const hardening = (from: number): Points => [0.024, 0.028, 0.032, 0.036].map((e) => [e, from + 10_000 * (e - 0.024)] as const);

  test('waves are followed to the last one that stands out by half a per cent', () => {
    const waves = (...levels: number[]): Points => levels.map((R, k) => [0.004 * (k + 1), R] as const);
    // 385 MPa lies 0.5 mm/m before 390 on the line of 10 GPa
    expect(rangeOf([...waves(380, 395, 376, 396, 385), ...hardening(390)])).toEqual({
      lower: [0.012, 376],
      end: near(0.0235),
      start: 0.024,
    });
    // half a per cent of the first, 380 MPa, is 1.9: a fall and a rise of 2 make a minimum, a fall of 1 none
    expect(rangeOf([...waves(380, 395, 376, 394, 392), ...hardening(394)])!.end).toBeCloseTo(0.0238, 9);
    expect(rangeOf([...waves(380, 395, 376, 394, 393), ...hardening(394)])!.end).toBeCloseTo(0.0222, 9);
    // a rise of 1 does not end a fall, and a fall is counted from the top of its rise
    expect(rangeOf([...waves(380, 395, 376, 377, 375.5), ...hardening(394)])!.end).toBeCloseTo(0.02215, 9);
    expect(rangeOf([...waves(376, 380, 396, 393.5), ...hardening(396)])!.end).toBeCloseTo(0.02375, 9);
  });

  test('a fall at the maximum that noise explains is none', () => {
    const flat: Points = [
      [0.004, 380],
      [0.015, 380],
      [0.017, 385],
      [0.05, 395],
      [0.06, 392.5],
      [0.07, 395.5],
      [0.08, 385],
    ];
    // 385 on the line of 2.5 GPa from the end of the level on
    expect(rangeOf(flat, { noise: 0.4, reach: 3.9 })!.end).toBeCloseTo(0.015, 9);
  });

  test('yielding is over where the stress passes ReH, not where it touches it', () => {
    const passed: Points = [
      [0.004, 380],
      [0.008, 390],
      [0.012, 430],
      [0.016, 470],
      [0.02, 464],
      [0.024, 500],
    ];
    expect(rangeOf(passed)).toEqual({ lower: [0.004, 380], end: near(0.007), start: 0.008 });
    const touched: Points = [
      [0.004, 380],
      [0.008, 400],
      [0.012, 384],
      [0.016, 390],
      [0.02, 430],
      [0.024, 470],
    ];
    expect(rangeOf(touched)!.end).toBeCloseTo(0.0154, 9);
  });

  test('below ReH without a rise of a thousandth of it, and of what noise explains, there is no hardening', () => {
    const rising = (to: number): Points => [
      [0.004, 380],
      [0.008, to],
    ];
    expect(rangeOf(rising(380.41))).toBeDefined();
    expect(rangeOf(rising(380.39))).toBeUndefined();
    // the means of two stretches of one sample lie no farther apart than 2 (1 + √(2 ln 2)) = 4.35 deviations
    expect(rangeOf(rising(384.4), { noise: 1 })).toBeDefined();
    expect(rangeOf(rising(384.3), { noise: 1 })).toBeUndefined();
    // the mean of a stretch that is read in steps of 3 MPa lies anywhere within one
    expect(rangeOf(rising(383.1), { step: 3 })).toBeDefined();
    expect(rangeOf(rising(382.9), { step: 3 })).toBeUndefined();
  });

  /** Levels of 20 samples each (or so many), a mean of 0.02 % strain, and hardening from the last of them by 10 GPa, 0.098 MPa each sample. */
  const steps = (levels: readonly number[], change: Readonly<Record<number, number>> = {}, samples = 20): Points => {
    const last = levels[levels.length - 1]!;
    const stress = [...levels.flatMap((R) => Array<number>(samples).fill(R)), ...Array.from({ length: 400 }, (_, k) => last + 0.098 * k)];
    return stress.map((R, i) => [0.003 + 0.98e-5 * i, change[i] ?? R] as const);
  };
  /** Strain at which that line passes a stress, after three levels. */
  const passes = (R: number, last: number, samples = 20): number => 0.003 + 0.98e-5 * 3 * samples + (R - last) / 10_000;

  test('out of noise minima are told by means over 0.02 % strain', () => {
    // where noise explains 6 MPa of single samples, of means of 20 their root less: 1.34, so 1.9 by the share
    expect(rangeOf(steps([380, 384, 381.8]), { noise: 0.8, reach: 6 })!.end).toBeCloseTo(passes(381.8, 381.8), 9);
    // that mean gives the level, not its lowest sample
    expect(rangeOf(steps([380, 384, 381.8], { 50: 381 }), { noise: 0.8, reach: 6 })!.end).toBeCloseTo(passes(381.76, 381.8), 9);
    // the same fall is within the noise of means, 2.68, where that explains 12 MPa: the level is the first, but no hardening before the wave is over, at the third mean
    expect(rangeOf(steps([380, 384, 381.8]), { noise: 0.8, reach: 12 })!.end).toBeCloseTo(0.003 + 0.98e-5 * 49.5, 9);
  });

  // a mean of 20 still leaves more than 0.05 % of 380 MPa where noise is above 0.19 √20 = 0.85 MPa: then the level is taken from means of 40, 0.04 % of strain
  test('of more noise the level is taken from means over twice as much: as it is where it lasts as long, mixed with its neighbours where not', () => {
    for (const noise of [0.84, 0.86, 1]) {
      const long = steps([380, 384, 381.8], {}, 40);
      expect(rangeOf(long, { noise, reach: 6 })!.end).toBeCloseTo(passes(381.8, 381.8, 40), 9);
    }
    const short = steps([380, 384, 381.8]);
    expect(rangeOf(short, { noise: 0.84, reach: 6 })!.end).toBeCloseTo(passes(381.8, 381.8), 9);
    // the mean that holds the minimum is of 20 samples at 381.8 and of 20 that rise from there by 0.098 each: 381.8 + 0.098 × 19/4 = 382.2655; the one before,
    // of 380 and 384, lies less than six deviations of such means from it, 6 × 0.86/√40 = 0.82, and counts as the same level: 382.1328 for both
    expect(rangeOf(short, { noise: 0.86, reach: 6 })!.end).toBeCloseTo(passes((382 + 381.8 + (0.098 * 19) / 4) / 2, 381.8), 9);
  });

  test('a single sample makes a minimum only where noise is less than a ten thousandth', () => {
    const lone = steps([380, 381, 381], { 30: 390 });
    expect(rangeOf(lone, { noise: 0.03 })!.end).toBeCloseTo(passes(381, 381), 9);
    expect(rangeOf(lone, { noise: 0.05 })!.end).toBeCloseTo(passes(380, 381), 9);
  });

  test('what a pause spoils is no minimum, also where a mean begins with it', () => {
    const points = steps([380, 384, 381.8], { 40: 300, 45: 300 });
    const spoilt = spoiltAt(points, points[40]![0], points[45]![0]);
    expect(rangeOf(points, { noise: 0.8, reach: 6, spoilt })!.end).toBeCloseTo(passes(381.8, 381.8), 9);
    const whole = steps([380, 384, 381.8], Object.fromEntries(Array.from({ length: 20 }, (_, k) => [20 + k, 300])));
    expect(rangeOf(whole, { noise: 0.8, reach: 6, spoilt: spoiltAt(whole, ...whole.slice(20, 40).map(([e]) => e)) })!.end).toBeCloseTo(
      passes(380, 381.8),
      9,
    );
  });
});

/** A first dip to 370 MPa, a level of 390, and hardening by 10 GPa from 2 % on; strains in percent are those of the points. */
const level: Points = [
  [0.0025, 389.2],
  [0.003, 390],
  [0.005, 390],
  [0.01, 389.5],
  [0.015, 390],
  [0.02, 390],
  [0.022, 410],
  [0.024, 430],
  [0.026, 450],
];
const dip: Points = [
  [0.0002, 390],
  [0.0005, 370],
  [0.001, 385],
  [0.002, 391],
];

describe('a first dip, and the level after it', () => {
  test('the lowest of the level is ReL, and where it meets hardening Ae ends', () => {
    // 389.2 MPa lies 0.08 mm/m before 390 on the line
    expect(rangeOf([...dip, ...level])).toEqual({ lower: [0.0025, 389.2], end: near(0.01992), start: 0.02 });
  });

  test('a level that begins later than 0.25 % after ReH is none: Ae ends at the bottom of the dip', () => {
    const from = (begin: number): Points => [...dip.slice(0, 2), [begin, 391], ...level.slice(1)];
    expect(rangeOf(from(0.0025))!.end).toBeCloseTo(0.01995, 9);
    expect(rangeOf(from(0.0027))).toEqual({ lower: [0.0005, 370], end: near(0.018), start: 0.02 });
  });

  test('even is what nothing within 0.25 % rises over by more than half a per cent of ReH', () => {
    const shoulder = (R: number): Points => [[0.0001, 390], [0.0002, 370], [0.0024, R], [0.003, 391], ...level.slice(2)];
    expect(rangeOf(shoulder(389))!.end).toBeCloseTo(0.01995, 9);
    expect(rangeOf(shoulder(388.9))!.end).toBeCloseTo(0.018, 9);
  });

  test('a level that lies half a per cent over the bottom is the bottom', () => {
    const shallow = (R: number): Points => [
      [0.0002, 390],
      [0.0005, 370],
      [0.001, R],
      [0.005, 371],
      [0.01, 371],
      [0.02, 371],
      [0.022, 391],
      [0.024, 411],
    ];
    // hardening: 371 at 2 %, 10 GPa
    expect(rangeOf(shallow(372))!.end).toBeCloseTo(0.0199, 9);
    expect(rangeOf(shallow(372.1))!.end).toBeCloseTo(0.02, 9);
  });

  test('relaxation on the level does not lower it', () => {
    const paused = Array.from({ length: 12 }, (_, k) => 0.006 + 1e-4 * k);
    const points: Points = [...dip, ...level.slice(0, 3), ...paused.map((e) => [e, 360] as const), ...level.slice(3)];
    const found = rangeOf(points, { spoilt: spoiltAt(points, ...paused) });
    expect(found).toEqual({ lower: [0.0025, 389.2], end: near(0.01992), start: 0.02 });
  });
});

describe('the line of hardening', () => {
  test('is taken up to the first pause', () => {
    const points: Points = [...dip, ...level.slice(0, 8), [0.0241, 380], [0.026, 470], [0.028, 510]];
    const spoilt = spoiltAt(points, 0.0241);
    expect(rangeOf(points, { spoilt })!.end).toBeCloseTo(0.01992, 9);
    // unpaused, the steepest line is that from 380 to 470 MPa
    expect(rangeOf(points)!.end).toBeCloseTo(0.0241 + (0.0019 * 9.2) / 90, 9);
  });

  describe('stands out of noise', () => {
    /** A level of 380 MPa to 1.5 %, hardening by 4 GPa at first that slows down over 2.5 % of strain; a sample each so much strain, noise of 1 MPa. */
    const noisy = (seed: number, step: number, keep: (uniform: number) => boolean = () => true): Points => {
      const { normal, uniform } = seeded(seed);
      return Array.from({ length: Math.floor(0.12 / step) }, (_, i) => {
        const e = (i + 1) * step;
        return [e, 380 + (e < 0.015 ? 0 : 100 * (1 - Math.exp((0.015 - e) / 0.025))) + normal()] as const;
      }).filter(() => keep(uniform()));
    };
    // the lowest sample of noise lies up to 4 MPa low, 0.1 % on that line; a wider line meets the level sooner, by less than its half
    const within = (pointsOf: (seed: number) => Points) => {
      for (let seed = 1; seed <= 20; seed += 1)
        expect(Math.abs(rangeOf(pointsOf(seed), { noise: 1, reach: 9 })!.end - 0.015)).toBeLessThan(0.005);
    };

    test.each([0.001, 0.0005, 0.0001])('with a sample each %d of strain', (step) => {
      within((seed) => noisy(seed, step));
    });

    test('where samples were lost', () => {
      within((seed) => noisy(seed, 0.0002, (uniform) => uniform > 0.6));
    });
  });

  test('begins where the curve leaves the level by half a per cent of ReH: a steep wave within it is no hardening', () => {
    const wave = (R: number): Points => [...dip, ...level.slice(0, 4), [0.01001, R], ...level.slice(4)];
    expect(rangeOf(wave(391))!.end).toBeCloseTo(0.01992, 9);
  });

  test('where a pause leaves no line, Ae ends at the last minimum', () => {
    const points: Points = [
      [0.004, 380],
      [0.008, 381],
      [0.012, 400],
      [0.016, 440],
    ];
    expect(rangeOf(points, { spoilt: spoiltAt(points, 0.012) })).toEqual({ lower: [0.004, 380], end: 0.004, start: 0.004 });
  });
});

describe('the first dip is left out of ReL', () => {
  const lower = (points: Points, change: Change = {}) => rangeOf(points, change)!.lower;

  test('where it begins within 0.1 % after ReH', () => {
    expect(lower([[0.0005, 390], [0.001, 370], [0.002, 391], ...level])).toEqual([0.0025, 389.2]);
    expect(lower([[0.0005, 390], [0.0011, 370], [0.002, 391], ...level])).toEqual([0.0011, 370]);
  });

  test('where it is over within 0.25 %', () => {
    expect(lower([...dip.slice(0, 3), [0.0025, 391], ...level.slice(1)])).toEqual([0.01, 389.5]);
    expect(lower([...dip.slice(0, 3), [0.0026, 391], ...level.slice(1)])).toEqual([0.0005, 370]);
  });

  test('and within half of the yielding range', () => {
    // the range ends at 0.4 %, where hardening by 50 GPa begins
    const short = (back: number): Points => [
      [0.0002, 390],
      [0.0005, 370],
      [back, 390],
      [0.003, 390],
      [0.004, 390],
      [0.005, 440],
      [0.006, 490],
    ];
    expect(rangeOf(short(0.0019))).toEqual({ lower: [0.0019, 390], end: near(0.004), start: expect.closeTo(0.0045, 3) as number });
    expect(lower(short(0.0021))).toEqual([0.0005, 370]);
    // wherever strain counts from
    expect(rangeOf(short(0.0019), {}, 0.01)!.lower[1]).toBe(390);
    expect(rangeOf(short(0.0021), {}, 0.01)!.lower[1]).toBe(370);
  });

  test('with the overshoot of its recovery within 0.05 %', () => {
    const over = (at: number): Points => [...dip.slice(0, 3), [0.002, 390], [0.0022, 388.5], [at, 392], ...level.slice(1)];
    expect(lower(over(0.0024))).toEqual([0.01, 389.5]);
    expect(lower(over(0.0026))).toEqual([0.0022, 388.5]);
  });

  test('a dip of less than a thousandth of ReH below the level, or within three standard deviations of noise, is none', () => {
    const small = (R: number): Points => [[0.0002, 390], [0.0005, R], [0.002, 391], [0.003, 390], [0.01, 389.8], ...level.slice(5)];
    // the median of the level is 390, a thousandth of ReH 0.4
    expect(lower(small(389.5))).toEqual([0.01, 389.8]);
    expect(lower(small(389.7))).toEqual([0.0005, 389.7]);
    expect(lower(small(388))).toEqual([0.01, 389.8]);
    expect(lower(small(388), { noise: 1 })).toEqual([0.0005, 388]);
  });
});

describe('the short rule', () => {
  const falling: Points = [
    [0.0005, 391],
    [0.0015, 389],
    [0.0025, 388],
    [0.0026, 387],
    [0.01, 387],
    [0.02, 390],
    [0.022, 410],
    [0.024, 430],
  ];

  test('looks up to 0.25 % after ReH, the whole one at all of the range; the first of equals counts', () => {
    expect(rangeOf(falling, { lowerYield: 'short' })!.lower).toEqual([0.0025, 388]);
    expect(rangeOf(falling)!.lower).toEqual([0.0026, 387]);
    expect(rangeOf(falling, { lowerYield: 'short' }, 0.01)!.lower[1]).not.toBe(387);
  });

  test('of a record without a sample there the first that has fallen counts', () => {
    expect(rangeOf([[0.003, 390], [0.01, 388], ...level.slice(5)], { lowerYield: 'short' })!.lower).toEqual([0.003, 390]);
  });
});
