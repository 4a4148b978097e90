import { quantity } from '../common/quantity.js';
import type { HardeningSummary } from './HardeningSummary.js';
import type { TensionNumbers } from './TensionNumbers.js';

/** @internal The hardening law. */
export function hardeningQuantities({ hardening: fit }: Pick<TensionNumbers, 'hardening'>): { readonly hardening?: HardeningSummary } {
  if (fit?.ok !== true) return {};
  return {
    hardening: {
      law: 'Hollomon',
      exponent: quantity(
        'n',
        'hardening exponent',
        fit.exponent,
        '1',
        'Hollomon, least squares on true plastic strain',
        fit.standardErrors.exponent,
      ),
      strengthCoefficient: quantity(
        'K',
        'strength coefficient',
        fit.strengthCoefficient,
        'MPa',
        'Hollomon, least squares on true plastic strain',
        fit.standardErrors.strengthCoefficient,
      ),
      range: fit.range,
      points: fit.points,
      rSquared: fit.rSquared,
    },
  };
}
