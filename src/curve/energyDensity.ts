import { InputError, requireFinite, requireOptions, type CurveColumns, type StressStrainCurve } from '../base/index.js';
import { requireCurve } from './requireCurve.js';

/** Options of {@link energyDensity}. */
export interface EnergyOptions {
  /** Strain where the area begins [mm/mm]; default the first sample. */
  readonly from?: number | undefined;
  /** Strain where the area ends [mm/mm]; default the last sample. */
  readonly to?: number | undefined;
}

/** @internal Area under samples first to last. */
export function areaUnder({ strain, stress }: StressStrainCurve, first: number, last: number): number {
  let twice = 0;
  let e = strain[first]!;
  let R = stress[first]!;
  for (let i = first + 1; i <= last; i += 1) {
    const nextStrain = strain[i]!;
    const nextStress = stress[i]!;
    twice += (nextStrain - e) * (R + nextStress);
    e = nextStrain;
    R = nextStress;
  }
  return twice / 2;
}

/**
 * Energy per volume under a stress-strain curve.
 *
 * $$ u = \int_{e_1}^{e_2} R\, \mathrm{d}e $$
 *
 * @remarks
 * By trapezoids; the ends are interpolated between samples, at the first passage of each strain. 1 MPa = 1 MJ/m³. The energy up to
 * fracture depends on gauge length and section through the neck, and is not fracture toughness.
 *
 * @param curve - Strain [mm/mm] and stress [MPa], at least 2 samples, finite.
 * @param options - Strains `from` and `to` between which the area is taken [mm/mm], `from` at most `to`; both within the record.
 * @returns Energy per volume [MPa = MJ/m³].
 * @throws {@link InputError} `not-finite`, `too-few`, `unequal-lengths`, `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * energyDensity({ strain: [0, 0.001, 0.003], stress: [0, 200, 200] }, { to: 0.002 }); // => 0.3
 * ```
 *
 * @see Elementary mechanics. Checked in `test/handbook/tension.test.ts`.
 */
export function energyDensity(curve: CurveColumns, options: EnergyOptions = {}): number {
  const from = 'energyDensity';
  const checked = requireCurve(from, curve);
  requireOptions(from, options, ['from', 'to']);
  const { strain, stress } = checked;
  const end = strain.length - 1;
  /** Area from the first sample to the first passage of a strain. */
  const upTo = (path: string, at: number): number => {
    requireFinite(from, path, at);
    const i = strain.findIndex((e) => e >= at);
    if (i < 0 || (i === 0 && strain[0]! > at)) throw new InputError(from, path, 'out-of-range', `must be a strain of the record`, at);
    if (i === 0) return 0;
    const share = (at - strain[i - 1]!) / (strain[i]! - strain[i - 1]!);
    const value = stress[i - 1]! + share * (stress[i]! - stress[i - 1]!);
    return areaUnder(checked, 0, i - 1) + ((at - strain[i - 1]!) * (stress[i - 1]! + value)) / 2;
  };
  const low = options.from === undefined ? 0 : upTo('options.from', options.from);
  const high = options.to === undefined ? areaUnder(checked, 0, end) : upTo('options.to', options.to);
  if (options.from !== undefined && options.to !== undefined && options.to < options.from)
    throw new InputError(from, 'options.to', 'out-of-range', 'must not be below from', options.to);
  return high - low;
}
