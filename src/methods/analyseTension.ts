import type { Finding, TensionColumns, TensionRecord, TestPiece } from '../base/index.js';
import {
  requirePiece,
  requireRecord,
  stressStrainKernel,
  travelWithoutFrame,
  type PieceLengths,
  type RecordedCurve,
} from '../curve/index.js';
import { checkRecordKernel, findPausesKernel, resolution, surveyRecord } from '../record/index.js';
import { afterFracture } from './afterFracture.js';
import { requireBrokenPiece } from './brokenPiece.js';
import { frameFindings } from './frameFindings.js';
import { isCurved } from './lineFindings.js';
import { methodFindings } from './methodFindings.js';
import { pieceFindings } from './pieceFindings.js';
import { rateFindings, ratesOf } from './rateFindings.js';
import { recordFindings } from './recordFindings.js';
import { structure } from './structure.js';
import { explanationOf, tensionKernel, type TensionNumbers } from './tensionKernel.js';
import { curveOptionNames, requireTensionOptions, type TensionOptions, type TensionSettings } from './tensionOptions.js';
import { maximumForce } from './quantity.js';
import { tensionQuantities } from './tensionQuantities.js';
import { tensionTrail } from './tensionTrail.js';
import type { TensionResult } from './TensionResult.js';
import { provenanceOf } from './provenanceOf.js';

/** The frame's motion taken out of the travel, where its compliance is known. */
function withoutFrame(record: TensionRecord, compliance: number | undefined): TensionRecord {
  if (compliance === undefined || compliance === 0 || !record.travel) return record;
  return { ...record, travel: travelWithoutFrame(record.travel, record.force, compliance) };
}

/** E is the piece's only where the strain is: an extensometer's, or travel less the frame; on a straight line of enough samples. */
function slopeIsModulus(recorded: RecordedCurve, numbers: TensionNumbers, settings: TensionSettings): boolean {
  const { line } = numbers;
  const ofPiece = recorded.basis !== 'travel' || (settings.frameCompliance !== undefined && settings.frameCompliance > 0);
  return line.ok && ofPiece && line.points >= settings.thresholds.leastElasticPoints && !isCurved(numbers, settings.thresholds.slopeFall);
}

/** Travel without the frame still holds the fillets' share; an extensometer's strain, and a raw one, are left as they are. */
function elasticLengthRatio(recorded: RecordedCurve, lengths: PieceLengths, settings: TensionSettings): number {
  const corrected = recorded.basis === 'travel' && settings.frameCompliance !== undefined && settings.frameCompliance > 0;
  return corrected ? lengths.effectiveLength / lengths.parallelLength : 1;
}

/**
 * A tension test from its record: properties, how each was found, and every doubt that the data show.
 *
 * $$ \text{record} \to F - C_f \to (e, R) \to m_E \to e_0 \to R_{eH}, R_p, R_m, A_{gt}, A_t \to n, K $$
 *
 * @remarks
 * Each station is a public function of its own (`removeCompliance`, `stressStrain`, `fitModulus`, `yieldPoints`, `proofStrength`,
 * `maximumStress`, `fracture`, `considere`, `fitHollomon`). A quantity that the record cannot support is absent and a finding says why; E in
 * particular is given only where an extensometer or a removed frame compliance justifies the name. Strains count from where the
 * elastic line meets zero stress; samples are those of the record as given.
 *
 * @param record - `force` [N] and at least one of `extension` [mm], `strain` [mm/mm], `travel` [mm]; `time` [s] where it was logged. At
 * least 2 samples, finite; extension and strain may end early with NaN.
 * @param testPiece - Section, gauge length [mm], and the lengths that apply.
 * @param options - Offsets, frame compliance [mm/N], window, identity of the test, thresholds of findings.
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
  const from = 'analyseTension';
  const settings = requireTensionOptions(from, options, [...curveOptionNames, 'frameCompliance', 'minimumElongation']);
  const given = requireRecord(from, record);
  const lengths = requirePiece(from, testPiece);
  const broken = requireBrokenPiece(from, testPiece);

  const used = withoutFrame(given, settings.frameCompliance);
  const recorded = stressStrainKernel(used, lengths);
  const curve = { strain: recorded.strain, stress: recorded.stress };
  const n = curve.strain.length;
  const stress = n === given.force.length ? curve.stress : given.force.map((F) => F / lengths.area);
  const survey = surveyRecord(given);
  const time = survey.clock?.backward === 0 && survey.clock.usual > 0 ? given.time : undefined;
  const moved = given.travel ?? given.extension ?? given.strain;
  const pauses = time && moved ? findPausesKernel(given.force, moved, time, survey.top) : [];
  const strainStep = (survey.motion?.step ?? 0) / (survey.motion?.column === 'strain' ? 1 : recorded.strainLength);

  const numbers = tensionKernel(
    {
      curve,
      stress,
      highest: survey.top,
      resolution: resolution(given.force) / lengths.area,
      pauses: pauses.map(({ range }) => range),
      elasticLengthRatio: elasticLengthRatio(recorded, lengths, settings),
    },
    settings,
  );

  const end = numbers.fracture.ok ? numbers.fracture.index + 1 : n;
  const rates = time && ratesOf(curve, time, end);
  const quantities = {
    ...tensionQuantities(numbers, curve, stress, settings, slopeIsModulus(recorded, numbers, settings), explanationOf(numbers, curve)),
    ...afterFracture(testPiece, broken),
  };
  const findings: Finding[] = [
    ...checkRecordKernel(given, {}, survey),
    ...recordFindings(given, recorded, numbers, { ...quantities, curve }, lengths.parallelLength),
    ...rateFindings(given, curve, quantities, numbers, rates, pauses, settings),
    ...pieceFindings(testPiece, broken, quantities, settings, recorded.basis !== 'extensometer'),
    ...frameFindings(recorded, numbers, quantities, settings, lengths.area, strainStep),
    ...methodFindings(numbers, curve, quantities, settings),
  ];
  return {
    method: 'tension',
    test: settings.test,
    testPiece: structure(testPiece),
    extensionBasis: recorded.basis,
    strainLength: recorded.strainLength,
    curve,
    ...quantities,
    maximumForce: maximumForce(given.force[numbers.maximumSample]!),
    ...(rates ? { rates } : {}),
    findings,
    trail: tensionTrail(given, recorded, lengths, numbers, settings),
    provenance: provenanceOf(options, { ...given }),
  };
}
