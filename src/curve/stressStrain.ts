import { soundLength, type StressStrainCurve, type TensionColumns, type TensionRecord, type UnbrokenPiece } from '../base/index.js';
import { motionColumn, ofPiece } from '../record/index.js';
import { requirePiece, requireRecord, type PieceLengths } from './requireTest.js';

/** A curve with where its strain comes from. */
export interface RecordedCurve extends StressStrainCurve {
  /** Where the strain comes from. */
  readonly basis: 'extensometer' | 'extensometer-then-travel' | 'travel';
  /** Length that strain is counted over [mm]: Le of the extensometer, Lc with travel. */
  readonly strainLength: number;
  /** Strain of the first sample [mm/mm]. */
  readonly firstStrain: number;
  /** First sample without the extensometer, where it was taken off before the end. */
  readonly extensometerEnd?: number | undefined;
}

/** @internal {@link stressStrain} on a checked record; into columns of at least as many samples, where they are given. */
export function stressStrainKernel(record: TensionRecord, lengths: PieceLengths, into?: StressStrainCurve): RecordedCurve {
  const { force, travel } = record;
  const column = motionColumn(record, ofPiece);
  const extensometer = column === 'travel' ? undefined : record[column];
  const scale = column === 'extension' ? lengths.extensometerLength : 1;
  const reading = extensometer ? soundLength(extensometer) : 0;
  const basis = !extensometer ? 'travel' : reading < force.length && travel ? 'extensometer-then-travel' : 'extensometer';
  const n = basis === 'extensometer' ? reading : force.length;
  const { area } = lengths;
  const stress = into ? into.stress.subarray(0, n) : new Float64Array(n);
  const strain = into ? into.strain.subarray(0, n) : new Float64Array(n);
  for (let i = 0; i < n; i += 1) stress[i] = force[i]! / area;
  if (extensometer) for (let i = 0; i < reading; i += 1) strain[i] = extensometer[i]! / scale;
  if (basis !== 'extensometer' && travel) {
    // travel counts from where the extensometer left off
    const start = basis === 'travel' ? 0 : reading;
    const origin = basis === 'travel' ? 0 : strain[reading - 1]! - travel[reading - 1]! / lengths.parallelLength;
    for (let i = start; i < n; i += 1) strain[i] = origin + travel[i]! / lengths.parallelLength;
  }
  return {
    strain,
    stress,
    basis,
    firstStrain: strain[0]!,
    strainLength: basis === 'travel' ? lengths.parallelLength : lengths.extensometerLength,
    ...(extensometer && reading < force.length ? { extensometerEnd: reading } : {}),
  };
}

/** @internal Stress of all samples of a record, also of those that its curve does not reach. */
export const stressOfAll = ({ stress }: Pick<StressStrainCurve, 'stress'>, force: Float64Array, area: number): Float64Array =>
  stress.length === force.length ? stress : force.map((F) => F / area);

/**
 * Stress and strain of a record, sample by sample.
 *
 * $$ R = \frac{F}{S_0}, \qquad e = \frac{\Delta L_e}{L_e} \quad\text{or}\quad e = \frac{x}{L_c} $$
 *
 * @remarks
 * An extension column is divided by the base of the extensometer, a strain column is used as it is, travel is divided by the parallel
 * length. Where the extensometer ends early (NaN from some sample on), travel carries the curve on by its increments; without travel
 * the curve ends there. A column with fewer than two readings counts as none. Strain is as recorded: the origin is not moved.
 *
 * @param record - `force` [N] and at least one of `extension` [mm], `strain` [mm/mm], `travel` [mm].
 * @param testPiece - Section and lengths [mm].
 * @returns Strain [mm/mm], stress [MPa], and where the strain comes from.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unequal-lengths`, `too-few`, `out-of-range`.
 *
 * @example
 * ```ts
 * const curve = stressStrain({ force: [0, 5026.548], extension: [0, 0.02] }, { section: round({ diameter: 8 }), gaugeLength: 40 });
 * curve.stress[1]; // => 100.000
 * curve.strain[1]; // => 0.0005
 * ```
 *
 * @see ISO 6892-1:2019, stress; extension; percentage extension. Checked in `test/handbook/tension.test.ts`.
 */
export function stressStrain(record: TensionColumns, testPiece: UnbrokenPiece): RecordedCurve {
  return stressStrainKernel(requireRecord('stressStrain', record), requirePiece('stressStrain', testPiece));
}
