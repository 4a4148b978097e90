import { finding, type Finding } from '../base/index.js';
import { forceClasses } from './forceClasses.js';
import type { ForceTerm, VerifiedRange, VerifiedStep } from './ForceVerification.js';
import { ON_LIMIT } from './gradeTerms.js';

const words: Readonly<Record<ForceTerm | 'steps', string>> = {
  indicationError: 'indication error',
  repeatability: 'repeatability',
  reversibility: 'reversibility',
  zeroError: 'zero error',
  resolution: 'resolution',
  steps: 'the lowest step',
};

/** The standard verifies from a fifth of the range on, by five steps at least (from memory). */
const LOW = 0.2;
const STEPS = 5;

/** @internal Doubts about a verification. */
export function verificationFindings(
  steps: readonly VerifiedStep[],
  ranges: readonly VerifiedRange[],
  range: number,
  resolution: number,
): Finding[] {
  const found: Finding[] = [];
  const worse = steps.filter(({ forceClass }) => forceClass === undefined || forceClass > 1);
  const [first] = worse;
  if (first)
    found.push(
      finding('force-class-not-reached', {
        count: worse.length,
        steps: steps.length,
        force: first.force,
        term: words[first.limitedBy],
      }),
    );
  const reversibility = Math.max(...steps.map((step) => Math.abs(step.reversibility ?? 0)));
  const limit = forceClasses.find(({ forceClass }) => forceClass === 1)!.reversibility;
  if (reversibility > limit * (1 + ON_LIMIT)) found.push(finding('rising-force-only', { reversibility: 100 * reversibility }));
  for (const { force, friction } of steps)
    if (friction !== undefined && -2 * friction > resolution) found.push(finding('falling-above-rising', { force, excess: -2 * friction }));
  if (steps.every(({ zeroError }) => zeroError === undefined)) found.push(finding('zero-not-verified', {}));
  const counted = steps.filter(({ force }) => force >= LOW * range * (1 - ON_LIMIT));
  if (counted.length < STEPS) found.push(finding('verification-steps-few', { count: counted.length }));
  const top = steps[steps.length - 1]!.force;
  if (top < range * (1 - ON_LIMIT)) found.push(finding('range-not-reached', { force: top, share: (100 * top) / range }));
  // the widest stretch that is class 1 or better
  const one = ranges.filter(({ forceClass }) => forceClass <= 1).at(-1);
  if (one && one.from > LOW * range * (1 + ON_LIMIT))
    found.push(finding('class-range-starts-high', { force: one.from, share: (100 * one.from) / range, term: words[one.stoppedBelowBy] }));
  return found;
}
