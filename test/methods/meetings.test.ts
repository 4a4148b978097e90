import { describe, expect, test } from 'vitest';
import { analyseTension, round, sectionFromArea } from '../../src/index.js';
import { answersTo } from '../../src/methods/budgets/answers.js';
import { bySymbol } from '../../src/methods/budgets/noiseScatter.js';
import { tensionMeetings, tensionModel } from '../../src/methods/budgets/tensionModel.js';
import { runTension } from '../../src/methods/tension/runTension.js';
import { randomNumbers } from '../../src/numeric/index.js';
import { simulateTension } from '../../src/simulate/index.js';

const [E, p0, N] = [70_000, 0.002, 12] as const;
const [S0, L] = [50, 40] as const;
const piece = { section: sectionFromArea({ area: S0 }), gaugeLength: L, parallelLength: L };
const window = { by: 'stress', from: 20, to: 100 } as const;
const R0 = 280;
const plastic = (R: number) => p0 * (R / R0) ** N;
/** Stress at a plastic extension. */
const stressAt = (p: number) => R0 * (p / p0) ** (1 / N);

/** A curve of Ramberg and Osgood, with noise of the stress [MPa]. */
function tested(noise = 0, seed = 1, samples = 900) {
  const { normal } = randomNumbers(seed);
  const stress = Array.from({ length: samples }, (_, i) => (320 * i) / (samples - 1));
  return {
    force: stress.map((R) => S0 * (R + (noise > 0 ? noise * normal() : 0))),
    extension: stress.map((R) => L * (R / E + plastic(R))),
  };
}

/** How the strengths of a test answer to a turn of its elastic line by so much. */
function answersToSlope(record: ReturnType<typeof tested>, u: number) {
  const { task } = runTension('test', record, piece, { modulus: { window } });
  const { line } = task.numbers;
  if (!line.ok) throw new Error('no line');
  const kept = { window: { by: 'samples', first: line.first, last: line.last } } as const;
  const meetings = tensionMeetings(task, kept);
  const model = tensionModel(task);
  const evaluate = (slopeFactor: number) => bySymbol(model({ inputs: {}, ...kept, meetings, slopeFactor }));
  return answersTo({ value: 1, standardUncertainty: u }, evaluate, bySymbol(model({ inputs: {}, ...kept, meetings })));
}

/** The stress at an offset p where the line is turned by a factor about R = 60, the middle of its window: p(R) + (R − 60)(1 − 1/f)/E = p, by bisection. */
function turned(p: number, factor: number): number {
  let [low, high] = [0, 600];
  for (let k = 0; k < 100; k += 1) {
    const R = (low + high) / 2;
    if (plastic(R) + ((R - 60) * (1 - 1 / factor)) / E < p) low = R;
    else high = R;
  }
  return low;
}

describe('a line that turns about the middle of its window', () => {
  test.each([
    ['Rp0.2', 0.002],
    ['Rpl', 0.0001],
  ] as const)('%s: −R (R − 60)/(E N p) for each unit, by implicit differentiation; its second-order part too', (symbol, p) => {
    const u = 0.02;
    const { slope, bend } = answersToSlope(tested(), u).get(symbol)!;
    const R = stressAt(p);
    const expected = (-R * (R - 60)) / (E * N * p);
    // over a step that bends by a tenth a difference misses the derivative by a hundredth; the line of this window is flatter than E by less than 1e-4
    expect(Math.abs(slope / expected - 1)).toBeLessThan(0.015);
    const second = (turned(p, 1 + u) + turned(p, 1 - u)) / 2 - turned(p, 1);
    // how what moves grows along the curve is told by the chord from half to twice the offset, (2^(1/N) − 2^(−1/N)) N/1.5 of its tangent or 7.5 % less, where the
    // tangent enters by R/(E N p) of the change; terms of the fourth order are below a fiftieth of the second
    expect(Math.abs(bend - second)).toBeLessThan(0.075 * Math.abs(slope) * u * u * (R / (E * N * p)) + Math.abs(second) / 50);
  });
});

describe('in noise', () => {
  const noise = 0.5;
  const seeds = Array.from({ length: 30 }, (_, k) => k + 1);

  test.each([
    ['Rp0.2', 0.002],
    ['Rpl', 0.0001],
  ] as const)('%s answers to the slope as the curve without noise does, within what noise makes of two strengths', (symbol, p) => {
    const R = stressAt(p);
    const expected = (-R * (R - 60)) / (E * N * p);
    const shares = seeds.map((seed) => answersToSlope(tested(noise, seed), 0.01).get(symbol)!.slope / expected);
    // the exponent is ln(R₂/R₁)/ln 4, each strength known by one sample at the worst: R moves by the noise of the extension, σ/E, over p/2 and 2p
    const one = (q: number) => (noise / E / q / N) ** 2;
    const error = (Math.sqrt(one(p / 2) + one(2 * p)) / Math.log(4)) * N;
    for (const share of shares) expect(Math.abs(share - 1)).toBeLessThan(0.05 + 4 * error);
  });

  // records in which the difference of two searched crossings fell by a tenth to a half where the doubt grew by a fifth
  test.each(['displacement', 'extensometerLength'] as const)('a growing doubt of %s never makes u of a strength smaller', (input) => {
    const bar = { section: round({ diameter: 8 }), gaugeLength: L, parallelLength: 48 };
    const { record } = simulateTension({
      material: {
        modulus: 206_000,
        hardening: { law: 'hollomon', strengthCoefficient: 480 / 0.002 ** 0.08, exponent: 0.08 },
        fracture: { extension: 0.12 },
      },
      piece: bar,
      hand: { speed: 0.02, speedAfterYield: 0.2 },
      logger: { rate: 20, extensometer: true, forceNoise: 30, motionNoise: 2e-4 },
      seed: 2,
    });
    const budgets = Array.from({ length: 28 }, (_, k) => {
      const doubt = 0.0003 * 1.2 ** k * (input === 'displacement' ? 1 : L);
      return analyseTension(record, bar, { uncertainty: { noise: { force: 0, displacement: 0 }, [input]: doubt } }).uncertainty!;
    });
    for (const symbol of ['Rp0.2', 'Rt0.5', 'Rpl']) {
      const all = budgets.map((one) => Math.abs(one[symbol]?.lines.find((line) => line.input === input)?.contribution ?? 0));
      expect(all[0], symbol).toBeGreaterThan(0);
      expect(
        [...all].sort((a, b) => a - b),
        symbol,
      ).toEqual(all);
    }
  });
});

describe('a bend of the budget', () => {
  const centre = new Map([['y', 0]]);
  const bendOf = (f: (x: number) => number) =>
    answersTo({ value: 0, standardUncertainty: 1 }, (x) => new Map([['y', f(x)]]), centre).get('y')!;

  test('is that of the curve, however often the step is halved', () => {
    expect(bendOf((x) => x + 0.5 * x * x)).toMatchObject({ slope: 1, bend: 0.5 });
  });

  test('is not the leap within a narrow step, times the square of how narrow it is', () => {
    // a bend of 0.12 over one u, and a leap by 0.04 beyond a quarter of it
    const { slope, bend } = bendOf((x) => x + 0.12 * x * x + (x > 0.2 ? 0.04 : 0));
    expect(Math.abs(bend)).toBeLessThan(0.15);
    expect(Math.abs(slope - 1)).toBeLessThan(0.1);
  });
});
