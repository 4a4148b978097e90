import { failure, type StressStrainCurve } from '../../base/index.js';
import { stillRising } from '../../curve/index.js';
import { maximumIndex } from '../../numeric/index.js';
import type { TensionInput, TensionNumbers } from '../loading/TensionNumbers.js';

/**
 * @internal What the highest force of a test is worth, and with it Fm, Rm, Ag and Agt. The rule, in this order:
 *
 * - yielding from an upper yield point without hardening after it: ISO 6892-1:2019 defines no Fm there (note to maximum force, and its figure; from memory), and
 *   with it no Rm, Ag and Agt. Where the piece broke, or a neck drew the force down from the level, there is `no-hardening`; where the test ended on the level, it
 *   ended `before-hardening`;
 * - the force still rises where the record ends, or the drive let go, beyond its noise (`still-rising`): it and Rm are at least what was reached, Ag and Agt unknown;
 * - else the `maximum` was reached.
 */
export function whatWasReached(
  { strain }: StressStrainCurve,
  { stress, pauses }: Pick<TensionInput, 'stress' | 'pauses'>,
  { yielding, fracture, end }: Pick<TensionNumbers, 'yielding' | 'fracture' | 'end'>,
): TensionNumbers['reached'] {
  const broke = fracture.ok ? fracture.how !== 'end-of-record' : fracture.reason === 'extension-ends';
  // the force may go on where the strain has ended
  const seen = strain.length >= end;
  const hardened =
    yielding?.ok !== true ||
    yielding.hardeningStart !== undefined ||
    (!seen && stress[maximumIndex(stress, strain.length, end)]! > yielding.upper.stress);
  if (!hardened) return yielding.ends === 'fall' || (broke && seen) ? 'no-hardening' : 'before-hardening';
  if (broke) return 'maximum';
  const resting = new Uint8Array(end);
  for (const [first, last] of pauses) resting.fill(1, first + 1, last + 1);
  // strain that ends before the force tells nothing of the end: there samples are counted
  const along = seen ? strain : Float64Array.from({ length: end }, (_, i) => i);
  return stillRising(along, stress, end, resting) ? 'still-rising' : 'maximum';
}

/**
 * @internal The fracture, where something shows it: a force that fell away, or a piece that was measured broken and a record that ends in its neck. A record that merely
 * ends shows none.
 */
export function shownFracture(
  fracture: TensionNumbers['fracture'],
  reached: TensionNumbers['reached'],
  pieceBroke: boolean | undefined,
  share: number,
): TensionNumbers['fracture'] {
  if (!fracture.ok || fracture.how !== 'end-of-record') return fracture;
  if (reached === 'still-rising') return failure('not-fractured', 'the force still rises where the record ends');
  if (reached === 'before-hardening') return failure('not-fractured', 'the test ended on the level of yielding, before hardening');
  return pieceBroke === true
    ? fracture
    : failure('not-fractured', `the record ends at ${(100 * share).toFixed(1)} % of its maximum, and no fracture is in it`);
}
