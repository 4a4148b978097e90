import { success, toldOnce } from '../../base/index.js';
import { requireRecord } from '../../curve/index.js';
import { metalModuli } from '../../materials/index.js';
import { checkRecordKernel } from '../../record/index.js';
import { calibrationFindings, forceOf, forcesOf, windowForce } from '../common/calibrationFindings.js';
import { forceTrail } from '../common/forceOrigin.js';
import { compressionFindings } from './compressionFindings.js';
import { bucklingOf, flowCurveOf, trueCurveOf } from './compressionKernel.js';
import { requireCompressionOptions, requireCompressionPiece, type CompressionOptions } from './compressionOptions.js';
import { compressionQuantities } from './compressionQuantities.js';
import type { CompressionColumns, CompressionPiece, CompressionResult } from './CompressionResult.js';
import { loadingPositive } from '../common/positiveSigns.js';
import { compressionTrail } from './compressionTrail.js';
import { evaluateLine } from '../loading/evaluateLine.js';
import { fadedBreak } from './fadedBreak.js';
import { frameShare, slopeWithFrame } from '../loading/frameShare.js';
import { brokeSuddenly, type LineNumbers } from '../loading/lineKernel.js';
import { compressionControls, lineLoading } from '../loading/lineLoading.js';
import { provenanceOf } from '../common/provenanceOf.js';
import { withoutSpikes } from '../common/spikeRepair.js';
import { isStrainOfPiece, slopeIsModulus } from '../loading/slopeIsModulus.js';
import { plainCopy } from '../common/plainCopy.js';
import { hollomonOf, meansOf } from '../loading/hardeningAndNecking.js';
import { markedBeyond } from '../loading/beyondExtensometer.js';
import { explanationOf } from '../loading/explanationOf.js';
import { frameRemoved } from '../loading/usableFrame.js';

/**
 * A compression test from its record: yield strength, stresses at stated strains, flow curve, and every doubt that the data show.
 *
 * $$ \text{record} \to x - C_f F \to (e, R) \to m_E \to e_0 \to R_{pc}, R_{tc} \to \varepsilon_p = -\ln(1 - p), \; \sigma = \frac{R (1 - p)}{1 + \mu d / 3h} $$
 *
 * @remarks
 * Compression may be negative or positive in each column; signs are turned and the trail says so. In results it counts positive. The modulus is given only where an extensometer or a
 * removed compliance (of frame and plates, measured in compression) justifies it, and so are the stresses at stated strains. A piece that does not break has no compressive strength: stresses are given
 * at stated strains. An unloading loop stays in the curve and enters no property. The flow curve takes the plastic part of the compression p alone; with a coefficient of friction Siebel's correction
 * is applied with the present diameter and height. Of pieces longer than three diameters the force is compared with the tangent-modulus
 * buckling load all along the curve. Hard pieces shatter and slender ones shoot out: guard closed.
 *
 * @param record - `force` [N] and at least one of `extension` [mm], `strain` [mm/mm], `travel` [mm]; `time` [s] where it was logged.
 * @param piece - Section, height [mm], and what applies: base of the extensometer, end factor, what was measured after the test.
 * @param options - Offsets, stated strains, frame compliance [mm/N] or a table, friction, window, identity of the test, thresholds of findings.
 * @returns The result, as plain data.
 * @throws {@link InputError} before anything is computed: `missing`, `not-finite`, `not-positive`, `unequal-lengths`, `too-few`,
 * `out-of-range`, `not-increasing`, `unknown-option`, `wrong-type`.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 3001 }, (_, i) => i / 10);
 * const record = {
 *   force: stress.map((R) => -R * 78.53982),
 *   extension: stress.map((R) => -15 * (R / 70000 + 0.002 * (R / 250) ** 20)),
 * };
 * const result = analyseCompression(record, { section: round({ diameter: 10 }), height: 15 });
 * result.proofStrengths[0]?.value; // => 250.00
 * result.modulus?.value; // => 70000.0
 * ```
 *
 * @see ASTM E9, compression testing of metallic materials at room temperature. Checked in `test/methods/analyseCompression.test.ts`.
 */
export function analyseCompression(
  record: CompressionColumns,
  piece: CompressionPiece,
  options: CompressionOptions = {},
): CompressionResult {
  const from = 'analyseCompression';
  const asked = requireCompressionOptions(from, options);
  const given = requireRecord(from, record);
  const lengths = requireCompressionPiece(from, piece);

  const { record: spikeless, repaired, spikes } = withoutSpikes(given, asked.repairs);
  const { record: positive, turned } = loadingPositive(spikeless);
  const evaluated = evaluateLine(positive, lengths, asked, metalModuli[1]);
  const { recorded, curve, frameCompliance, refused, survey, time, pauses, strainStep } = evaluated;
  const settings = { ...asked, frameCompliance };
  const { thresholds } = settings;

  const slender = lengths.gaugeLength > thresholds.bucklingRatio * lengths.width;
  const fade = slender ? undefined : fadedBreak(evaluated.part.numbers, evaluated.part.curve);
  const withFade = (one: LineNumbers): LineNumbers => (fade ? { ...one, fracture: success({ ...fade, index: one.highest }) } : one);
  const numbers = withFade(evaluated.numbers);
  const part = { ...evaluated.part, numbers: withFade(evaluated.part.numbers) };
  const { line } = numbers;
  const share = frameShare(recorded, numbers, { area: lengths.area, effectiveLength: recorded.strainLength }, frameCompliance);
  const ofPiece = isStrainOfPiece(recorded, share);
  const explanation = explanationOf(part.numbers, part.curve, strainStep, thresholds);
  const broken = piece.afterTest?.broken ?? (fade !== undefined || brokeSuddenly(part.numbers, part.curve));
  const buckling = bucklingOf(part.numbers, part.curve, lengths, thresholds.bucklingShare, broken);
  const trueCurve = ofPiece && line.ok ? trueCurveOf(part.curve, part.numbers.plateauEnd) : undefined;
  const flow = flowCurveOf(part.curve, part.numbers, lengths, settings.friction);
  const hardening = flow && hollomonOf(meansOf(flow, 0, flow.strain.length - 1));
  const found = slopeWithFrame(
    compressionQuantities({
      numbers,
      curve,
      explanation,
      lengths,
      settings,
      isModulus: slopeIsModulus(numbers, explanation, thresholds, ofPiece),
      strainOfPiece: ofPiece,
      broken,
      buckling,
      flow,
      trueCurve,
      hardening,
      piece,
      top: survey.top,
      highestForce: positive.force[survey.top]!,
    }),
    share,
  );
  const quantities = markedBeyond(found, recorded, curve);
  const loading = lineLoading(curve, time, numbers, { pauses, controlsOf: compressionControls });
  const evidence = {
    recorded,
    numbers,
    part,
    buckling,
    area: lengths.area,
    record: positive,
    time,
    pauses,
    strainStep,
    frictionShare: flow?.largestShare,
    hardening,
    broken,
    turned,
    share,
    strainOfPiece: ofPiece,
    refused,
  };
  return {
    method: 'compression',
    test: settings.test,
    piece: plainCopy(piece),
    extensionBasis: recorded.basis,
    strainLength: recorded.strainLength,
    ...frameRemoved(asked.frameCompliance, given.travel, refused),
    curve,
    ...quantities,
    ...(loading ? { loading } : {}),
    findings: toldOnce([
      ...spikes,
      ...checkRecordKernel(positive, {}, { ...evaluated.known, carriesOn: true }),
      ...compressionFindings(piece, { curve, ...quantities }, evidence, settings),
      ...calibrationFindings(
        settings.test,
        [...forcesOf([...quantities.proofStrengths, ...quantities.stressesAtStrain], lengths.area), forceOf(quantities.maximumForce)],
        {},
        windowForce(numbers.line, curve.stress, lengths.area),
      ),
    ]),
    trail: [...forceTrail(settings.test), ...repaired, ...compressionTrail(evidence, settings)],
    provenance: provenanceOf(options, { ...given }),
  };
}
