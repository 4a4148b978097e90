import {
  finding,
  requireNonNegative,
  requireOptions,
  requirePositive,
  type TensionColumns,
  type TestPiece,
  trailStep,
} from '../../base/index.js';
import {
  beyondCompliance,
  lineBeforeUnloading,
  requireFrameCompliance,
  requirePiece,
  requireRecord,
  requireUnloadingOptions,
  stressStrainKernel,
  unloadingLoopsKernel,
  withoutFrame,
  type Compliance,
  type FrameMotion,
  type UnloadingLoop,
  type UnloadingWindow,
} from '../../curve/index.js';
import { metalModuli } from '../../materials/index.js';
import { checkRecordKernel } from '../../record/index.js';
import { calibrationFindings, forceTrail } from '../common/calibrationFindings.js';
import { requireBrokenPiece } from '../common/brokenPiece.js';
import { conditionFindings, refusedFindings, shareFindings } from '../loading/frameFindings.js';
import { frameInWords, frameShare, shareOfSlope, withFrame } from '../loading/frameShare.js';
import type { TestInfo } from '../common/MethodResult.js';
import { provenanceOf } from '../common/provenanceOf.js';
import { isStrainOfPiece } from '../loading/slopeIsModulus.js';
import { plainCopy } from '../common/plainCopy.js';
import { requireTest } from '../common/testInfo.js';
import { loopFindings } from './unloadingFindings.js';
import { loopQuantities, permanentSetStrength, strengthAt } from './unloadingQuantities.js';
import { requireSpikeRepair, withoutSpikes, type SpikeRepair } from '../common/spikeRepair.js';
import type { UnloadingResult } from './UnloadingResult.js';
import { frameRemoved, withUsableFrame } from '../loading/usableFrame.js';

/** Options of {@link analyseUnloading}. */
export interface UnloadingAnalysisOptions {
  /** Reversibility of the force, falling against rising [1]; above 0.015 nothing is taken from unloading. */
  readonly reversibility?: number | undefined;
  /** Permanent set that is allowed [mm/mm]; default 0.002. */
  readonly setLimit?: number | undefined;
  /** Compliance of the frame [mm/N], taken out of crosshead travel; default none. */
  readonly frameCompliance?: Compliance | undefined;
  /** Least fall of stress, as a share of the stress at the top; default 0.1. */
  readonly minimumFall?: number | undefined;
  /** Part of the fall whose line counts, in shares from the top, or `search`; default 0.1 to 0.9. */
  readonly window?: UnloadingWindow | undefined;
  /** Repairs of the record before anything else; default spikes. */
  readonly repairs?: SpikeRepair | undefined;
  /** Who tested what. */
  readonly test?: TestInfo | undefined;
}

/** Above this reversibility a force holds while rising only: class 1 of ISO 7500-1. */
const REVERSIBILITY = 0.015;
const LIMIT = 0.002;

/**
 * The unloadings of a tension test: modulus, permanent set and lost energy of each, and the permanent set strength.
 *
 * $$ R_r: \quad e_r(R_r) = 0.2\,\% \quad\text{between two unloadings} $$
 *
 * @remarks
 * Each loop passes or fails the permanent set that is allowed; the strength itself is interpolated between a loop below and one above, on the power of the set through both. A force that holds while rising only (reversibility above 1.5 %) gives no loop: a
 * friction band would be read as modulus and energy. Slopes are named modulus only where an extensometer or a removed frame compliance justifies it; a compliance that leaves nothing for the piece is not removed, and a finding says so.
 *
 * @param record - `force` [N] and at least one of `extension` [mm], `strain` [mm/mm], `travel` [mm]; `time` [s] where it was logged.
 * @param testPiece - Section and lengths [mm].
 * @param options - Reversibility of the force, permanent set that is allowed, frame compliance [mm/N], window, identity of the test.
 * @returns The result, as plain data.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unequal-lengths`, `too-few`, `out-of-range`, `unknown-option`, `wrong-type`.
 *
 * @example
 * ```ts
 * const up = (from: number, to: number) => Array.from({ length: 101 }, (_, i) => from + ((to - from) * i) / 100);
 * const stress = [...up(0, 300), ...up(300, 0), ...up(0, 320)];
 * const strain = [...up(0, 300).map((R) => R / 2e5 + 1e-3 * (R / 300) ** 20), ...up(300, 0).map((R) => R / 2e5 + 1e-3), ...up(0, 320).map((R) => R / 2e5 + 1e-3)];
 * const piece = { section: sectionFromArea({ area: 50 }), gaugeLength: 40 };
 * const result = analyseUnloading({ force: stress.map((R) => 50 * R), strain }, piece, { reversibility: 0.004 });
 * result.loops[0]?.slope.value; // => 200000
 * result.loops[0]?.withinLimit; // => true
 * ```
 *
 * @see ISO 6892-1:2019, permanent set strength; ISO 7500-1, reversibility. Checked in `test/methods/unloading.test.ts`.
 */
export function analyseUnloading(record: TensionColumns, testPiece: TestPiece, options: UnloadingAnalysisOptions = {}): UnloadingResult {
  const from = 'analyseUnloading';
  requireOptions(from, options, ['reversibility', 'setLimit', 'frameCompliance', 'minimumFall', 'window', 'repairs', 'test']);
  const { reversibility: v, minimumFall, window } = options;
  if (v !== undefined) requireNonNegative(from, 'options.reversibility', v);
  const setLimit = requirePositive(from, 'options.setLimit', options.setLimit ?? LIMIT);
  const asked = requireFrameCompliance(from, 'options.frameCompliance', options.frameCompliance);
  const settings = requireUnloadingOptions(from, { minimumFall, window });
  const test = requireTest(from, options.test ?? {});
  const repairs = requireSpikeRepair(from, options.repairs);
  const raw = requireRecord(from, record);
  const lengths = requirePiece(from, testPiece);
  requireBrokenPiece(from, testPiece);
  const { record: given, repaired, spikes } = withoutSpikes(raw, repairs);

  const evaluate = (motion: FrameMotion | undefined) => {
    const recorded = stressStrainKernel(withoutFrame(given, motion), lengths);
    const line = lineBeforeUnloading(recorded, settings.minimumFall);
    const known = line.ok ? { modulus: line.slope, strainShift: line.strainShift } : {};
    return { recorded, numbers: { line }, found: unloadingLoopsKernel(recorded, { ...settings, ...known }) };
  };
  const evaluated = withUsableFrame(evaluate, asked, given, lengths, metalModuli[1]);
  const { recorded, numbers, found, frameCompliance: frame, refused } = evaluated;
  // strain is motion over the whole of this length
  const own = { area: lengths.area, effectiveLength: recorded.strainLength };
  const share = frameShare(recorded, numbers, own, frame);
  const ofPiece = isStrainOfPiece(recorded, share);
  const shareAlong = ({ slope, range: [first, last] }: UnloadingLoop) =>
    shareOfSlope(recorded, { slope, stresses: [recorded.stress[last]!, recorded.stress[first]!] }, own, frame);
  const isReversible = v === undefined || v <= REVERSIBILITY;
  const loops = found.ok && isReversible ? found.loops : [];
  const shift = found.ok ? found.strainShift : 0;
  const strength = strengthAt(loops, setLimit);
  // the drive goes back on purpose here
  const ofRecord = checkRecordKernel(given).filter(({ code }) => code !== 'drive-reversed');
  const findings = [
    ...spikes,
    ...ofRecord,
    ...refusedFindings(refused, 'loops'),
    ...(frame && given.travel ? [...conditionFindings([frame], test, 'tension'), ...beyondCompliance(given.force, frame)] : []),
    ...(share ? shareFindings(share, 'loops') : []),
    ...calibrationFindings(test, [{ symbol: 'Fm', force: given.force.reduce((most, one) => Math.max(most, one)) }]),
  ];
  if (!isReversible) findings.push(finding('unloading-refused', { reversibility: 100 * v }, { field: 'loops' }));
  else if (!found.ok) findings.push(finding('unloading-none', { why: found.message }, { field: 'loops' }));
  else findings.push(...loopFindings(loops, setLimit, strength));
  if (v === undefined) findings.push(finding('reversibility-unknown', {}, { field: 'loops' }));
  if (recorded.basis === 'travel') findings.push(finding('extension-from-travel', {}, { field: 'loops' }));
  return {
    method: 'unloading',
    test,
    testPiece: plainCopy(testPiece),
    extensionBasis: recorded.basis,
    ...frameRemoved(asked, given.travel, refused),
    curve: { strain: recorded.strain.map((e) => e - shift), stress: recorded.stress },
    setLimit,
    loops: loops.map((loop) => {
      const named = loopQuantities(loop, ofPiece, setLimit);
      return { ...named, slope: withFrame(named.slope, shareAlong(loop)) };
    }),
    ...permanentSetStrength(strength, setLimit),
    findings,
    trail: [
      ...forceTrail(test),
      ...repaired,
      ...(frame && given.travel
        ? [
            trailStep('frame-compliance-removed', {
              ...frameInWords(frame),
              largest: frame.at(given.force.reduce((most, one) => Math.max(most, one))),
            }),
          ]
        : []),
      trailStep('force-over-area', { area: lengths.area }),
      ...(shift === 0 ? [] : [trailStep('origin-moved', { shift })]),
    ],
    provenance: provenanceOf(options, { ...raw }),
  };
}
