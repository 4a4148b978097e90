import type { TensionNumbers } from './TensionNumbers.js';

type Yielding = TensionNumbers['yielding'];

/** @internal True of a test that yielded at a level and ended there: what only hardening tells (Ae, the maximum) is not known. */
export const endsBeforeHardening = (
  yielding: Yielding,
): yielding is Extract<Yielding, { readonly ok: true }> & { readonly hardeningStart?: undefined } =>
  yielding?.ok === true && yielding.hardeningStart === undefined;
