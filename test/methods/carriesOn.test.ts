import { describe, expect, test } from 'vitest';
import { analyseCupping, analyseShear, type Finding } from '../../src/index.js';

const time = Array.from({ length: 700 }, (_, i) => i / 10);
const travel = Array.from({ length: 700 }, (_, i) => Math.max(0, i - 50) / 100);
/** Nothing for 50 samples, a rise to 9 kN over 500, and what is left after the fracture, from sample to sample. */
const broken = (after: (k: number) => number): number[] =>
  time.map((_, i) => (i < 50 ? 0 : i < 550 ? (9000 * (i - 50)) / 499 : after(i - 550)));

const doubts = (findings: readonly Finding[]) => findings.filter(({ code }) => /zero/.test(code)).map(({ code }) => code);
const methods: readonly (readonly [string, (force: number[]) => readonly Finding[]])[] = [
  ['a pin rubs', (force) => analyseShear({ force, travel, time }, { diameter: 5, planes: 1 }).findings],
  ['a ball stands in the cup', (force) => analyseCupping({ force, travel, time }, { thickness: 1 }).findings],
];

describe.each(methods)('what is left of the force after the fracture: %s', (_, findingsOf) => {
  test.each([60, 300, 900, 1800])('%s N are no doubt about the zero', (rest) => {
    expect(doubts(findingsOf(broken(() => rest)))).toEqual([]);
  });

  test('nor is a force that goes up and down as it rubs', () => {
    expect(doubts(findingsOf(broken((k) => 300 * Math.abs(Math.sin(k)))))).toEqual([]);
  });

  test('but less than nothing is: no friction pulls back', () => {
    expect(doubts(findingsOf(broken(() => -300)))).toEqual(['zero-drift']);
  });

  test('a zero that was set under load shows as less than nothing', () => {
    // set at 3 kN, after which the force rises on
    const force = broken(() => 0).map((F, i) => (i > 220 ? F - 3000 : F));
    expect(doubts(findingsOf(force))).toEqual(['force-zero-moved']);
  });
});
