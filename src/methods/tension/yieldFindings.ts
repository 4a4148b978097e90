import { finding, type Finding } from '../../base/index.js';
import { byDefinitions } from '../evaluation/yieldQuantities.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from '../evaluation/tensionOptions.js';

/** Definitions of the proportional limit lie 20 to 40 % apart on a smooth curve: beyond that it is no matter of definition alone. */
const BY_DEFINITION = 0.4;

/** @internal Doubts about yield point and proportional limit. */
export function yieldFindings(
  { yielding, reached, proportional }: Pick<TensionNumbers, 'yielding' | 'proportional'> & Partial<Pick<TensionNumbers, 'reached'>>,
  settings: Pick<TensionSettings, 'proportionalLimit'>,
): Finding[] {
  const found: Finding[] = [];
  if (yielding?.ok === false) {
    found.push(
      yielding.reason === 'fall-in-pause'
        ? finding('yield-fall-in-pause', {}, { field: 'upperYieldStrength' })
        : finding('no-yield-point', { why: yielding.message }, { field: 'upperYieldStrength' }),
    );
  }
  if (yielding?.ok === true && reached === 'before-hardening')
    found.push(
      finding('ends-before-hardening', { lower: yielding.lower.stress, upper: yielding.upper.stress }, { field: 'lowerYieldStrength' }),
    );
  const [lowest, highest] = byDefinitions(proportional) ?? [0, 0];
  if (highest - lowest > BY_DEFINITION * highest)
    found.push(finding('proportional-limit-by-definition', { lowest, highest }, { field: 'proportionalLimit' }));
  const stated = proportional?.[settings.proportionalLimit];
  // a limit after a slip is told with what else is withheld
  if (stated?.ok === false && stated.reason !== 'after-slip') {
    const none = Object.values(proportional ?? {}).every((one) => !one.ok);
    const why = none && stated.reason !== 'not-resolved' ? 'no definition finds one' : stated.message;
    found.push(finding('not-determined', { symbol: 'the proportional limit', why }, { field: 'proportionalLimit' }));
  }
  return found;
}
