import { failure, type StressStrainCurve } from '../../base/index.js';
import { maximumIndex } from '../../numeric/index.js';
import { endsRising } from '../common/endOfTest.js';
import type { FoundFracture } from './fractureOf.js';
import type { TensionInput, TensionNumbers } from '../loading/TensionNumbers.js';

/**
 * @internal What the highest force of a test is worth, and with it Fm, Rm, Ag and Agt. The rule, in this order:
 *
 * - yielding from an upper yield point without hardening after it: ISO 6892-1:2019 defines no Fm there (note to maximum force, and its figure; from memory), and
 *   with it no Rm, Ag and Agt: what stands for Fm and Rm is the highest of the level. Where the piece broke, or a neck drew the force down from the level, there is
 *   `no-hardening`; where the test ended on the level, it ended `before-hardening`, and they are at least so large;
 * - the force still rises where the record ends, or the drive let go, beyond its noise (`still-rising`): Fm and Rm are at least what was reached, Ag and Agt unknown.
 *   A piece that was measured broken, and is hardly longer and thinner than the record shows it, broke there: that was its maximum; not so where the drive let go before;
 * - else the `maximum` was reached.
 */
export function whatWasReached(
  { strain }: StressStrainCurve,
  { stress, pauses }: Pick<TensionInput, 'stress' | 'pauses'>,
  yielding: TensionNumbers['yielding'],
  { fracture, end, brittle }: FoundFracture,
): TensionNumbers['reached'] {
  const broke = fracture.ok ? fracture.how !== 'end-of-record' : fracture.reason === 'extension-ends';
  // the force may go on where the strain has ended
  const seen = strain.length >= end;
  const hardened =
    yielding?.ok !== true ||
    yielding.hardeningStart !== undefined ||
    (!seen && stress[maximumIndex(stress, strain.length, end)]! > yielding.upper.stress);
  if (!hardened) return yielding.ends === 'fall' || (broke && seen) ? 'no-hardening' : 'before-hardening';
  const rises = endsRising({ along: strain, force: stress, end, pauses, broke: broke || brittle });
  return rises ? 'still-rising' : 'maximum';
}

/** @internal The fracture: none where a record ends while the force still rises, or on the level of yielding before hardening. */
export function shownFracture(fracture: TensionNumbers['fracture'], reached: TensionNumbers['reached']): TensionNumbers['fracture'] {
  if (!fracture.ok || fracture.how !== 'end-of-record') return fracture;
  if (reached === 'still-rising') return failure('not-fractured', 'the force still rises where the record ends');
  if (reached === 'before-hardening') return failure('not-fractured', 'the test ended on the level of yielding, before hardening');
  return fracture;
}
