import { describe, expect, test } from 'vitest';
import { round, type TensionOptions } from '../../src/index.js';
import { withoutNoise } from '../../src/methods/budgets/withoutNoise.js';
import { tensionNoise } from '../../src/methods/budgets/tensionNoise.js';
import { runTension } from '../../src/methods/tension/runTension.js';
import { simulateTension } from '../../src/simulate/index.js';

const NOISE = 20;
const scenario = {
  material: { modulus: 70_000, yieldStress: 250, hardening: { law: 'swift' as const, prestrain: 0.02, exponent: 0.2 } },
  piece: { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 },
  hand: { speed: 0.02, speedAfterYield: 0.2 },
  seed: 3,
};
const logger = { extensometer: true };
const silent = simulateTension({ ...scenario, logger }).record;
const noisy = simulateTension({ ...scenario, logger: { ...logger, forceNoise: NOISE, motionNoise: 1e-4 } }).record;

describe('withoutNoise: an extensometer that is taken off on the way', () => {
  const end = Math.floor(0.35 * noisy.force.length);
  const options: TensionOptions = { uncertainty: {} };
  const road = (extension: Float64Array) => runTension('analyseTension', { ...noisy, extension }, scenario.piece, options);
  const takenOff = road(noisy.extension!.map((x, i) => (i < end ? x : NaN)));
  const whole = road(noisy.extension!);

  test('takes the noise out of the force after the end as before it, and leaves the end of the column as it is', () => {
    const { task, doubts } = takenOff;
    const { record } = withoutNoise(task, tensionNoise(task, doubts!.noise));
    // between end and maximum, less the places that a sliding parabola does not reach
    const [from, to] = [end + 50, task.numbers.maximumSample - 50];
    const left = record.force.slice(from, to).map((F, i) => F - silent.force[from + i]!);
    // what a parabola over 2 · 10 + 1 samples leaves of white noise is a third
    expect(Math.hypot(...left) / Math.sqrt(left.length)).toBeLessThan(0.4 * NOISE);
    expect(record.extension!.subarray(end).every(Number.isNaN)).toBe(true);
    expect(record.extension!.subarray(0, end).some(Number.isNaN)).toBe(false);
  });

  test('so the noise of Rm, and how far it lifts the highest sample, is what it is with the whole column', () => {
    const lines = (one: typeof whole) =>
      one.result.uncertainty!['Rm']!.lines.map(({ input, contribution }) => [input, contribution] as const);
    expect(lines(takenOff).map(([input]) => input)).toEqual(['noise', 'shift by noise']);
    // 40 repeats know a deviation to a seventh
    for (const [k, [, contribution]] of lines(takenOff).entries())
      expect(Math.abs(contribution / lines(whole)[k]![1] - 1)).toBeLessThan(0.15);
  });
});
