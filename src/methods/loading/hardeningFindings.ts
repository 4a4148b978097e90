import { finding, type Finding, type Quantity } from '../../base/index.js';
import { NECKED } from '../../curve/index.js';
import type { HardeningSummary } from './HardeningSummary.js';
import type { TensionNumbers } from './TensionNumbers.js';

/** Correlation wanted of a hardening fit (common practice). */
const HARDENING_CORRELATION = 0.995;
/** @internal How far n may lie from the true uniform strain: Hollomon's law is an approximation (common practice). */
export const NECKING_AGREEMENT = 0.05;
/** The curve's onset of necking and the law's differ where they lie apart by more standard uncertainties of both than this (common practice). */
const NECKING_SURE = 3;
/** And by more than this share: a law of one exponent lies up to 15 % off where a metal hardens by another law, as simulated ones by Swift or Voce do, and as much again by noise (common practice). */
const NECKING_SHARE = 0.25;

/** @internal Doubts about hardening law and onset of necking. */
export function hardeningFindings(
  {
    line,
    hardening,
    necking,
    maximum,
    endStress,
  }: Pick<TensionNumbers, 'line' | 'hardening' | 'necking' | 'maximum'> & Partial<Pick<TensionNumbers, 'endStress'>>,
  result: { readonly hardening?: HardeningSummary | undefined; readonly totalExtensionAtMaximumForce?: Quantity | undefined },
): Finding[] {
  const found: Finding[] = [];
  if (hardening?.ok === false) found.push(finding('not-determined', { symbol: 'n', why: hardening.message }, { field: 'hardening' }));
  if (necking?.ok === false) found.push(finding('not-determined', { symbol: 'εu', why: necking.message }, { field: 'necking' }));
  if (!result.hardening) return found;
  const { rSquared, exponent } = result.hardening;
  if (rSquared < HARDENING_CORRELATION) found.push(finding('hardening-correlation-low', { correlation: rSquared }, { field: 'hardening' }));
  // both answers count total strain: the law's has the elastic part at its own stress added
  if (necking?.ok === true && hardening?.ok === true && line.ok) {
    const law = hardening.exponent + (hardening.strengthCoefficient * hardening.exponent ** hardening.exponent) / line.slope;
    const apart = Math.abs(necking.strain - law);
    const both = Math.hypot(necking.standardUncertainty, exponent.standardUncertainty ?? 0);
    if (apart > Math.max(NECKING_SURE * both, NECKING_SHARE * necking.strain))
      found.push(
        finding('necking-answers-differ', { curve: necking.strain, uncertainty: necking.standardUncertainty, law }, { field: 'necking' }),
      );
  }
  // a piece that broke at its maximum, or was stopped there, had not come to its neck
  const necked = maximum && endStress !== undefined && endStress < NECKED * maximum.stress;
  const uniform = necked && maximum.strain > 0 ? Math.log1p(maximum.strain) : undefined;
  // on a wide maximum the uniform strain is known no better than Agt
  const sure = (NECKING_SURE * (result.totalExtensionAtMaximumForce?.standardUncertainty ?? 0)) / (1 + (maximum?.strain ?? 0));
  if (uniform !== undefined && Math.abs(exponent.value - uniform) > Math.max(NECKING_AGREEMENT, sure))
    found.push(finding('necking-unlike-exponent', { exponent: exponent.value, strain: uniform }, { field: 'hardening' }));
  return found;
}
