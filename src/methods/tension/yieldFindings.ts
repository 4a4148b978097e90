import { finding, type Finding } from '../../base/index.js';
import { roundingStep } from '../../statistics/index.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from '../evaluation/tensionOptions.js';

/** @internal Doubts about yield point and proportional limit. */
export function yieldFindings(
  { yielding, reached, proportional }: TensionNumbers,
  settings: Pick<TensionSettings, 'proportionalLimit'>,
  withoutLine: boolean,
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
  if (withoutLine && proportional)
    return [
      ...found,
      finding('not-determined', { symbol: 'the proportional limit', why: 'the curve has no linear part' }, { field: 'proportionalLimit' }),
    ];
  const asked = Object.values(proportional ?? {});
  const withheld = asked.some((one) => !one.ok && one.reason === 'after-slip');
  const limits = asked.filter((one) => one.ok).map(({ stress }) => stress);
  const [lowest, highest] = [Math.min(...limits), Math.max(...limits)];
  // what is alike once it is rounded matters to nobody
  if (highest - lowest > roundingStep('strength', highest, 'iso'))
    found.push(finding('proportional-limit-by-definition', { lowest, highest }, { field: 'proportionalLimit' }));
  const stated = proportional?.[settings.proportionalLimit];
  if (stated?.ok === false && stated.reason === 'not-resolved')
    found.push(finding('not-determined', { symbol: 'the proportional limit', why: stated.message }, { field: 'proportionalLimit' }));
  else if (limits.length === 0 && proportional && !withheld)
    found.push(
      finding('not-determined', { symbol: 'the proportional limit', why: 'no definition finds one' }, { field: 'proportionalLimit' }),
    );
  return found;
}
