import type { TensionColumns, TestPiece } from '../../base/index.js';
import type { TensionOptions } from '../evaluation/tensionOptions.js';
import type { TensionResult } from '../evaluation/TensionResult.js';
import { runTension } from './runTension.js';

/**
 * A tension test from its record: properties, how each was found, and every doubt that the data show.
 *
 * $$ \text{record} \to x - C_f F \to (e, R) \to m_E \to e_0 \to R_{eH}, R_p, R_m, A_{gt}, A_t \to n, K $$
 *
 * @remarks
 * Each station is a public function of its own (`removeCompliance`, `stressStrain`, `fitModulus`, `yieldPoints`, `proofStrength`,
 * `maximumStress`, `fracture`, `considere`, `fitHollomon`). A quantity that the record cannot support is absent and a finding says why; E in
 * particular is given only where an extensometer or a removed frame compliance justifies the name. Strains count from where the
 * elastic line meets zero stress; samples are those of the record as given. Unloadings, strokes of a drive that goes back and slips stay in the curve, but
 * properties are those of the loading envelope, without them (`interruptions` says where they are); after a slip that strain by travel counts, what counts small strains is withheld.
 *
 * @param record - `force` [N] and at least one of `extension` [mm], `strain` [mm/mm], `travel` [mm]; `time` [s] where it was logged. At
 * least 2 samples, finite; extension and strain may end early with NaN.
 * @param testPiece - Section, gauge length [mm], and the lengths that apply.
 * @param options - Offsets, frame compliance (a number [mm/N], a table or a power law), window, family of the metal, repairs, uncertainties, identity of the test, thresholds of findings.
 * @returns The result, as plain data.
 * @throws {@link InputError} before anything is computed: `missing`, `not-finite`, `not-positive`, `unequal-lengths`, `too-few`,
 * `out-of-range`, `unknown-option`, `wrong-type`.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 2801 }, (_, i) => i / 10);
 * const record = {
 *   force: stress.map((R) => R * 50.26548),
 *   extension: stress.map((R) => 40 * (R / 70000 + 0.002 * (R / 250) ** 20)),
 * };
 * const result = analyseTension(record, { section: round({ diameter: 8 }), gaugeLength: 40 });
 * result.proofStrengths[0]?.value; // => 250.00
 * result.modulus?.value; // => 70000.0
 * ```
 *
 * @see ISO 6892-1:2019; ASTM E8/E8M. Checked in `test/handbook/tension.test.ts` and on measured records in `test/handbook/real-curves.test.ts`.
 */
export function analyseTension(record: TensionColumns, testPiece: TestPiece, options: TensionOptions = {}): TensionResult {
  return runTension('analyseTension', record, testPiece, options).result;
}
