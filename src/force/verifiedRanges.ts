import { forceClasses } from './forceClasses.js';
import type { VerifiedRange, VerifiedStep } from './ForceVerification.js';

/**
 * @internal For each class the widest stretch of neighbouring steps that reach it; a class that holds no further than a better one is left out.
 */
export function verifiedRanges(steps: readonly VerifiedStep[], resolution: number): VerifiedRange[] {
  const found: VerifiedRange[] = [];
  for (const { forceClass, leastSteps } of forceClasses) {
    const holds = ({ forceClass: reached }: VerifiedStep): boolean => reached !== undefined && reached <= forceClass;
    let best: readonly [number, number] | undefined;
    for (let first = 0; first < steps.length; first += 1) {
      if (!holds(steps[first]!)) continue;
      let last = first;
      while (last + 1 < steps.length && holds(steps[last + 1]!)) last += 1;
      if (!best || steps[last]!.force - steps[first]!.force >= steps[best[1]]!.force - steps[best[0]]!.force) best = [first, last];
      first = last;
    }
    if (!best) continue;
    const [first, last] = best;
    const to = steps[last]!.force;
    const lowest = steps[first]!.force;
    const from = Math.min(to, Math.max(lowest, leastSteps * resolution));
    const better = found[found.length - 1];
    if (better && better.from <= from && better.to >= to) continue;
    found.push({ forceClass, from, to, stoppedBelowBy: from > lowest ? 'resolution' : (steps[first - 1]?.limitedBy ?? 'steps') });
  }
  return found;
}
