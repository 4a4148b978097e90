import type { TensionResult } from '../src/index.js';

/** Properties that the table of effects shows. */
export const properties = ['E', 'ReH', 'ReL', 'Rp', 'Rm', 'Agt', 'A', 'Z', 'n'] as const;
export type Property = (typeof properties)[number];
export type Values = Readonly<Partial<Record<Property, number>>>;

/** The numbers of a result that the table shows. */
export function valuesOf(result: TensionResult): Values {
  const found: Record<Property, number | undefined> = {
    E: (result.modulus ?? result.elasticSlope)?.value,
    ReH: result.upperYieldStrength?.value,
    ReL: result.lowerYieldStrength?.value,
    Rp: result.proofStrengths[0]?.value,
    Rm: result.tensileStrength?.value,
    Agt: result.totalExtensionAtMaximumForce?.value,
    A: result.elongationAfterFracture?.value,
    Z: result.reductionOfArea?.value,
    n: result.hardening?.exponent.value,
  };
  return Object.fromEntries(Object.entries(found).filter(([, value]) => value !== undefined));
}

/** Relative changes from one set of values to another. */
export function changes(from: Values, to: Values): Values {
  return Object.fromEntries(
    properties.flatMap((property) => {
      const [before, after] = [from[property], to[property]];
      return before === undefined || after === undefined || before === 0 ? [] : [[property, after / before - 1]];
    }),
  );
}

/** Symbols of the columns, as the result names them. */
export const symbolsOf = (result: TensionResult): Readonly<Record<Property, string>> => ({
  E: result.modulus ? 'E' : 'mE',
  ReH: 'ReH',
  ReL: 'ReL',
  Rp: result.proofStrengths[0]?.symbol ?? 'Rp',
  Rm: 'Rm',
  Agt: 'Agt',
  A: 'A',
  Z: 'Z',
  n: 'n',
});
