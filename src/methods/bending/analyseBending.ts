import { chordModulusKernel } from '../../curve/index.js';
import { checkRecordKernel, motionColumn, ofPiece as pieceFirst } from '../../record/index.js';
import { bendingFindings } from './bendingFindings.js';
import {
  requireBendingOptions,
  requireBendingPiece,
  requireBendingRecord,
  shearShareOf,
  whatWasRemoved,
  type BendingOptions,
} from './bendingOptions.js';
import { bendingQuantities } from './bendingQuantities.js';
import type { BendingColumns, BendingPiece, BendingResult } from './BendingResult.js';
import { calibrationFindings, forcesOf, windowForce } from '../common/calibrationFindings.js';
import { forceTrail } from '../common/forceOrigin.js';
import { evaluateLine } from '../loading/evaluateLine.js';
import { excursionsTrail } from '../loading/excursionsTrail.js';
import { frameShare, slopeWithFrame, shareOfSlope } from '../loading/frameShare.js';
import { bendingControls, lineLoading } from '../loading/lineLoading.js';
import { lineTrail } from '../loading/lineTrail.js';
import { toldOnce, trailStep, type TrailStep } from '../../base/index.js';
import { loadingPositive } from '../common/positiveSigns.js';
import { provenanceOf } from '../common/provenanceOf.js';
import { withoutSpikes } from '../common/spikeRepair.js';
import { isStrainOfPiece, slopeIsModulus } from '../loading/slopeIsModulus.js';
import { plainCopy } from '../common/plainCopy.js';
import { markedBeyond } from '../loading/beyondExtensometer.js';
import { explanationOf } from '../loading/explanationOf.js';
import { frameRemoved } from '../loading/usableFrame.js';

/**
 * A bending test from its record: modulus by slope and chord, flexural strengths, and every doubt that the data show.
 *
 * $$ \text{record} \to s - C_f F \to \sigma_f = \frac{F a}{2 W}, \; \varepsilon_f = \frac{m c}{\kappa}\, s \to E_b, E_f \to \varepsilon_0 \to \sigma_{fp}, \sigma_{fM}, \varepsilon_{fM} $$
 *
 * @remarks
 * Three points, and four points with any arm; deflection by a gauge at mid-span, travel of the noses, or strain of the outer fibre. The crosshead
 * measures the noses, which of four points sink less than mid-span: the formulas know. A modulus from travel needs the compliance of frame and indentation.
 * Stress and strain are those of the elastic formulas throughout: beyond yielding they are nominal, and a finding says by how much.
 * An unloading loop stays in the curve and enters no property.
 * The chord between strains of 0.0005 and 0.0025 is the rule for plastics, counted from the line's origin but from no earlier than the record; of metals take the slope. Brittle pieces throw fragments: guard closed.
 *
 * @param record - `force` [N], whole; at least one of `deflection` [mm] at mid-span, `strain` [mm/mm], `travel` [mm]; `time` [s] where it was logged.
 * @param piece - `section` and `setup`: points, span [mm], of four points the arm [mm].
 * @param options - Offsets, chord, compliances [mm/N] or tables, window, identity of the test, thresholds of findings.
 * @returns The result, as plain data.
 * @throws {@link InputError} before anything is computed: `missing`, `not-finite`, `not-positive`, `unequal-lengths`, `too-few`,
 * `out-of-range`, `not-increasing`, `unknown-option`, `wrong-type`.
 *
 * @example
 * ```ts
 * const deflection = Array.from({ length: 200 }, (_, i) => 0.005 * i);
 * const record = { force: deflection.map((s) => 100 * s), deflection };
 * const piece = { section: rectangular({ width: 10, thickness: 4 }), setup: { points: 3 as const, span: 64 } };
 * analyseBending(record, piece).chordModulus?.value; // => 10240.0
 * ```
 *
 * @see ISO 178, flexural properties; ASTM E855, bend testing of metallic flat materials. Checked in `test/methods/analyseBending.test.ts`.
 */
export function analyseBending(record: BendingColumns, piece: BendingPiece, options: BendingOptions = {}): BendingResult {
  const from = 'analyseBending';
  const asked = requireBendingOptions(from, options);
  const lengths = requireBendingPiece(from, piece);
  const asGiven = requireBendingRecord(from, record);
  const { record: spikeless, repaired, spikes } = withoutSpikes(asGiven, asked.repairs);
  const { record: given, turned: columns } = loadingPositive(spikeless);
  const turned = columns.map((name) => (name === 'extension' ? 'deflection' : name));

  // plastics and ceramics are bent as well: no beam is too stiff, but less than nothing is none
  const evaluated = evaluateLine(given, lengths, asked, Infinity);
  const { recorded, curve, numbers, part, frameCompliance: frame, refused, survey, time, pauses, strainStep } = evaluated;
  const settings = { ...asked, frameCompliance: frame };
  const gauge = motionColumn(given, pieceFirst) === 'extension' ? 'deflection' : 'strain';
  // a strain gauge reads strain itself
  const strainLength = recorded.basis !== 'travel' && gauge === 'strain' ? 1 : recorded.strainLength;

  const { line } = numbers;
  // plastics are softer than any metal
  const share = frameShare(recorded, numbers, lengths, frame, 0);
  const ofPiece = isStrainOfPiece(recorded, share);
  // a curve that softens from the start has its line meet zero stress before the record: the chord counts from no earlier than that start
  const origin = line.ok ? Math.max(0, curve.strain[0]! - curve.stress[0]! / line.slope) : 0;
  const chord = ofPiece && line.ok ? chordModulusKernel(part.curve, settings.chord, origin, part.numbers.plateauEnd + 1) : undefined;
  const explanation = explanationOf(part.numbers, part.curve, strainStep, settings.thresholds);
  const highestForce = given.force[survey.top]!;
  const shearShare = shearShareOf(piece, settings.poissonRatio, recorded.basis === 'travel' ? 'nose' : 'mid-span');
  const found = slopeWithFrame(
    bendingQuantities({
      numbers,
      curve,
      part,
      lengths,
      settings,
      explanation,
      isModulus: slopeIsModulus(numbers, explanation, settings.thresholds, ofPiece),
      chord,
      chordShare:
        chord?.ok === true ? shareOfSlope(recorded, { slope: chord.modulus, stresses: chord.stresses }, lengths, frame, 0) : undefined,
      shearShare,
      highestForce,
      top: survey.top,
    }),
    share,
  );
  const quantities = markedBeyond(found, recorded, curve);

  const loading = lineLoading(curve, time, numbers, { pauses, controlsOf: bendingControls(strainLength) });
  const evidence = {
    recorded: { ...recorded, strainLength },
    numbers,
    part,
    chord,
    lengths,
    record: given,
    time,
    pauses,
    strainStep,
    turned,
    share,
    refused,
    section: piece.section,
  };
  const trail: TrailStep[] = [
    ...forceTrail(settings.test),
    ...repaired,
    ...(turned.length > 0 ? [trailStep('signs-turned', { columns: turned.join(', ') })] : []),
    ...(frame && given.travel ? [trailStep(whatWasRemoved(settings), { largest: frame.at(given.force[survey.top]!) })] : []),
    trailStep('outer-fibre-stress', { forcePerStress: lengths.area }),
    recorded.basis !== 'travel' && gauge === 'strain'
      ? trailStep('outer-fibre-strain-by-gauge', {})
      : trailStep(recorded.basis === 'travel' ? 'outer-fibre-strain-by-travel' : 'outer-fibre-strain-by-deflection', {
          length: strainLength,
        }),
    ...excursionsTrail(part.ranges),
    ...lineTrail(numbers),
  ];
  return {
    method: 'bending',
    test: settings.test,
    piece: plainCopy(piece),
    motionBasis: recorded.basis === 'travel' ? 'travel' : recorded.basis === 'extensometer' ? gauge : `${gauge}-then-travel`,
    deflectionLength: strainLength,
    ...frameRemoved(asked.frameCompliance, given.travel, refused),
    curve,
    ...quantities,
    ...(loading ? { loading } : {}),
    findings: toldOnce([
      ...spikes,
      ...checkRecordKernel(given, {}, evaluated.known),
      ...bendingFindings({ curve, ...quantities }, evidence, settings),
      ...calibrationFindings(
        settings.test,
        forcesOf([...quantities.proofStrengths, quantities.flexuralStrength], lengths.area),
        {},
        windowForce(numbers.line, curve.stress, lengths.area),
      ),
    ]),
    trail,
    provenance: provenanceOf(options, { ...asGiven }),
  };
}
