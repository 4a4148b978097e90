import { trailStep, type CurveColumns, type Finding, type TrailStep } from '../../base/index.js';
import { requireCurve, type RecordedCurve } from '../../curve/index.js';
import { resolution } from '../../numeric/index.js';
import { recordOutline, slipsBackOf, surveyExcursions, unloadedFrom } from '../../record/index.js';
import { calibrationFindings } from '../common/calibrationFindings.js';
import { departuresOf } from '../loading/departures.js';
import { interruptionsOf } from '../loading/interruptionsOf.js';
import { excursionsTrail } from '../loading/excursionsTrail.js';
import { familyFindings } from './familyFindings.js';
import { evaluateLoading, findingOnRecord } from '../evaluation/loadingPart.js';
import { methodFindings } from './methodFindings.js';
import { slopeIsModulus } from '../loading/slopeIsModulus.js';
import { slopeOverSlip } from './slopeOverSlip.js';
import { explanationOf } from '../loading/explanationOf.js';
import { curveOptionNames, requireTensionOptions, type CurveAnalysisOptions } from '../evaluation/tensionOptions.js';
import { tensionQuantities } from '../evaluation/tensionQuantities.js';
import type { TensionResult } from '../evaluation/TensionResult.js';
import { provenanceOf } from '../common/provenanceOf.js';
import { withYieldDips, yieldDipFindings, yieldDips } from './yieldDips.js';

/** What stress and strain alone give: a {@link TensionResult} without what needs the test piece. */
export type CurveResult = Omit<
  TensionResult,
  | 'testPiece'
  | 'strainLength'
  | 'maximumForce'
  | 'elongationAfterFracture'
  | 'elongationMethod'
  | 'reductionOfArea'
  | 'rates'
  | 'uncertainty'
>;

/**
 * The same analysis as {@link analyseTension}, from stress and strain alone.
 *
 * $$ (e, R) \to m_E \to e_0 \to R_{eH}, R_p, R_m, A_{gt}, A_t \to n, K $$
 *
 * @remarks
 * The strain is taken as that of the test piece, so the slope is named modulus where the line is straight and has samples enough. Unloading loops stay in the
 * curve, but properties are those of the loading envelope; `interruptions` says where they are.
 *
 * @param curve - Strain [mm/mm] and stress [MPa], at least 3 samples, finite.
 * @param options - As of `analyseTension`, without a frame.
 * @returns The result, as plain data.
 * @throws {@link InputError} `not-finite`, `too-few`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 2801 }, (_, i) => i / 10);
 * const strain = stress.map((R) => R / 70000 + 0.002 * (R / 250) ** 20);
 * analyseCurve({ strain, stress }).proofStrengths[0]?.value; // => 250.00
 * ```
 *
 * @see ISO 6892-1:2019. Checked in `test/handbook/tension.test.ts`.
 */
export function analyseCurve(curve: CurveColumns, options: CurveAnalysisOptions = {}): CurveResult {
  const from = 'analyseCurve';
  const settings = requireTensionOptions(from, options, curveOptionNames);
  const given = requireCurve(from, curve, 3);
  const own: RecordedCurve = {
    strain: given.strain.slice(),
    stress: given.stress.slice(),
    basis: 'extensometer',
    strainLength: 1,
    firstStrain: given.strain[0]!,
  };
  const kept = { strain: own.strain, stress: own.stress };
  const record = { force: given.stress, strain: given.strain };
  const outline = recordOutline(record);
  const found = surveyExcursions(record, outline, []);
  const evidence = { found, pauses: [], unloadedFrom: outline && unloadedFrom(outline), stress: given.stress };
  const interruptions = interruptionsOf(evidence, own, { area: 1, parallelLength: 1 });
  const { excursions, ...where } = departuresOf(interruptions);
  const { numbers, part } = evaluateLoading(
    {
      curve: kept,
      stress: kept.stress,
      resolution: resolution(kept.stress),
      elasticLengthRatio: 1,
      ...where,
    },
    settings,
    excursions,
  );
  const { line } = numbers;
  const explanation = explanationOf(part.numbers, part.input.curve, resolution(given.strain), settings.thresholds);
  const overSlip = slopeOverSlip(record, own, numbers, outline && slipsBackOf(record, outline));
  const dips = yieldDips(found?.untold ?? [], numbers, kept.stress);
  const bare = tensionQuantities(
    numbers,
    kept,
    kept.stress,
    settings,
    { modulus: !overSlip && slopeIsModulus(numbers, explanation, settings.thresholds), strainOfPiece: true },
    explanation,
  );
  const quantities = withYieldDips(bare, dips);
  const findings: Finding[] = [
    ...familyFindings(quantities, numbers, settings, { strainFrom: 'extensometer' }),
    ...calibrationFindings(settings.test, []),
    ...(overSlip ? [overSlip] : []),
    ...yieldDipFindings(dips),
    ...methodFindings(part.numbers, part.input.curve, quantities, settings).map(findingOnRecord(part)),
  ];
  const trail: TrailStep[] = [...excursionsTrail(part.ranges), ...(line.ok ? [trailStep('origin-moved', { shift: numbers.shift })] : [])];
  return {
    method: 'tension',
    test: settings.test,
    extensionBasis: 'curve',
    curve: kept,
    ...quantities,
    ...(interruptions.length > 0 ? { interruptions } : {}),
    findings,
    trail,
    provenance: provenanceOf(options, { strain: given.strain, stress: given.stress }),
  };
}
