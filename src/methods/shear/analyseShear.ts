import {
  InputError,
  finding,
  requireNonNegative,
  requireObject,
  requireOneOf,
  requireOptions,
  requirePositive,
  type Finding,
  type Quantity,
  trailStep,
} from '../../base/index.js';
import { maximumIndex } from '../../numeric/index.js';
import { BROKEN_SHARE, findBreak } from '../../curve/index.js';
import { checkRecordKernel, pausesOf, recordOutline, surveyRecord, unloadedFrom } from '../../record/index.js';
import { calibrationFindings } from '../common/calibrationFindings.js';
import { atHighest, endFindings, endsRising } from '../common/endOfTest.js';
import { forceTrail } from '../common/forceOrigin.js';
import { contactsOf } from '../common/contactsOf.js';
import { requireForceColumns, type ForceColumns, type ForceRecord } from '../common/ForceColumns.js';
import type { TestInfo } from '../common/MethodResult.js';
import { provenanceOf } from '../common/provenanceOf.js';
import { quantity } from '../common/quantity.js';
import { shearArea, shearStress } from './shearStress.js';
import type { ShearPiece, ShearResult } from './ShearResult.js';
import { spikeFindings } from '../common/spikeFindings.js';
import { requireSpikeRepair, withoutSpikes, type SpikeRepair } from '../common/spikeRepair.js';
import { plainCopy } from '../common/plainCopy.js';
import { requireTest } from '../common/testInfo.js';
import { unlikeFinding } from '../common/unlikeFinding.js';

/** Families of metals whose usual ratio of shear to tensile strength is known. */
export type ShearFamily = 'steel' | 'aluminium' | 'any';

/** Options of {@link analyseShear}. */
export interface ShearOptions {
  /** Tensile strength of the same material Rm [MPa], for the ratio. */
  readonly tensileStrength?: number | undefined;
  /** Family of the material, for the usual ratio; default `any`. */
  readonly family?: ShearFamily | undefined;
  /** Clearance, as a share of what is sheared, that is a caution; default 0.02, a choice of this package. */
  readonly clearanceShare?: number | undefined;
  /** Repairs of the record before anything else; default spikes. */
  readonly repairs?: SpikeRepair | undefined;
  /** Who tested what. */
  readonly test?: TestInfo | undefined;
}

/** Usual ratios of shear to tensile strength, from memory; a tenth is allowed beyond them, since fixtures differ by so much. */
const usual = { steel: [0.6, 0.8], aluminium: [0.6, 0.65], any: [0.5, 0.9] } as const;
/** Shear over tensile strength, the middle of what is usual, by which a shear strength is held against the tensile ones of metals. */
const MIDDLE = 0.7;
const MARGIN = 0.1;
const CLEARANCE = 0.02;

/** What was recorded: as given and as it is evaluated, with the sample of the maximum. */
interface Recorded extends ReturnType<typeof withoutSpikes> {
  readonly raw: ForceRecord;
  readonly at: number;
}

/** A record, or the pointer's maximum alone. */
function requireShearForce(
  from: string,
  given: ForceColumns | { readonly maximumForce: number },
  repairs: SpikeRepair,
): { force: number; recorded?: Recorded } {
  requireObject(from, 'record', given);
  if (!('maximumForce' in given)) {
    const raw = requireForceColumns(from, 'record', given);
    const done = withoutSpikes(raw, repairs);
    const at = maximumIndex(done.record.force);
    const force = done.record.force[at]!;
    if (!(force > 0)) throw new InputError(from, 'record.force', 'not-positive', 'must rise above 0', force);
    return { force, recorded: { ...done, raw, at } };
  }
  requireOptions(from, given, ['maximumForce'], 'record');
  return { force: requirePositive(from, 'record.maximumForce', given.maximumForce) };
}

/** Travel at which the tool touches, in the middle of what two laws of the first rise say, and the way from there to the maximum. */
function wayOf({ record: { force, travel }, at }: Recorded): { readonly contact: number; readonly whole: number } | undefined {
  if (!travel) return undefined;
  const [earliest, latest] = contactsOf(force, travel, at);
  const contact = (earliest + latest) / 2;
  return { contact, whole: travel[at]! - contact };
}

/** Whether a piece that did not part could have borne more, whether the drive let go, and the last force of the test over the highest. */
function endOf({ record, at }: Recorded) {
  const { force, travel } = record;
  const survey = surveyRecord(record);
  const outline = recordOutline(record, survey);
  const pauses = pausesOf(record, survey.clock, at, outline?.motion);
  const last = outline && unloadedFrom(outline);
  const end = (last ?? force.length - 1) + 1;
  const parted = findBreak(force, at, BROKEN_SHARE);
  const broke = last === undefined && parted.ok && parted.how !== 'end-of-record';
  const rises = endsRising({ along: travel, force, end, pauses: pauses.map(({ range }) => range), broke });
  return { broke, rises, letGo: last !== undefined, share: force[end - 1]! / force[at]! };
}

function pieceFindings({ clearance = 0, bent = false, diameter }: ShearPiece, area: number, most: number): Finding[] {
  const dimension = diameter ?? Math.sqrt(area);
  const share = clearance / dimension;
  return [
    ...(share > most ? [finding('shear-clearance', { clearance, share: 100 * share, dimension }, { field: 'shearStrength' })] : []),
    ...(bent ? [finding('shear-bending', {}, { field: 'shearStrength' })] : []),
  ];
}

/**
 * A shear test in single or double shear, from its record or from the maximum force alone.
 *
 * $$ \tau_m = \frac{F_m}{A} \text{ (single)}, \qquad \tau_m = \frac{F_m}{2 A} \text{ (double)} $$
 *
 * @remarks
 * Strength only: a shear modulus is never derived, since the travel holds bending, indentation and the tool. Travel at the maximum force counts from contact,
 * where the first rise of the force, extrapolated, meets zero. With a tensile strength the
 * ratio is compared with what is usual: 0.6 to 0.8 for steels, 0.6 to 0.65 for aluminium alloys (from memory), a tenth of itself allowed beyond.
 *
 * @param record - `force` [N], with `travel` [mm] and `time` [s] where they were logged; or `maximumForce` [N] alone.
 * @param piece - Diameter [mm] or area of one plane [mm²], `planes` 1 or 2, clearance of the tool [mm], whether the piece was bent.
 * @param options - Tensile strength [MPa] and family for the ratio, identity of the test.
 * @returns The result, as plain data.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unequal-lengths`, `too-few`, `unknown-option`,
 * `wrong-type`; `ambiguous` with both diameter and area.
 *
 * @example
 * ```ts
 * const result = analyseShear({ maximumForce: 56800 }, { diameter: 12, planes: 2 }, { tensileStrength: 360, family: 'steel' });
 * result.shearStrength.value; // => 251.11
 * result.ratioToTensileStrength?.value; // => 0.6975
 * ```
 *
 * @see Common practice with pins and blanks (compare ASTM B769, shear testing of aluminium alloys). Checked in `test/handbook/shear.test.ts`.
 */
export function analyseShear(
  record: ForceColumns | { readonly maximumForce: number },
  piece: ShearPiece,
  options: ShearOptions = {},
): ShearResult {
  const from = 'analyseShear';
  requireOptions(from, options, ['tensileStrength', 'family', 'clearanceShare', 'repairs', 'test']);
  requireOptions(from, piece, ['diameter', 'area', 'planes', 'clearance', 'bent'], 'piece');
  const area = shearArea(from, 'piece.', piece);
  requireOneOf(from, 'piece.planes', piece.planes, [1, 2]);
  if (piece.clearance !== undefined) requireNonNegative(from, 'piece.clearance', piece.clearance);
  const strength =
    options.tensileStrength === undefined ? undefined : requirePositive(from, 'options.tensileStrength', options.tensileStrength);
  const family = requireOneOf(from, 'options.family', options.family ?? 'any', ['steel', 'aluminium', 'any']);
  const clearanceShare = requirePositive(from, 'options.clearanceShare', options.clearanceShare ?? CLEARANCE);
  const test = requireTest(from, options.test ?? {});
  const { force, recorded } = requireShearForce(from, record, requireSpikeRepair(from, options.repairs));

  const stress = shearStress({ force, area, planes: piece.planes });
  const end = recorded && endOf(recorded);
  const rises = end?.rises === true;
  const findings: Finding[] = calibrationFindings(test, [{ symbol: 'Fm', force }]);
  if (recorded) {
    const { record: own, at, spikes } = recorded;
    findings.push(...spikes, ...checkRecordKernel(own, {}, { carriesOn: true }), ...spikeFindings(own.force, at, stress, 'shearStrength'));
    if (end && !end.broke) findings.push(...endFindings(end, 'shearStrength'));
    if (own.travel) findings.push(finding('no-shear-modulus', {}));
  }
  findings.push(
    ...pieceFindings(piece, area, clearanceShare),
    ...unlikeFinding({
      properties: { tensileStrength: stress / MIDDLE },
      how: { shape: piece.diameter === undefined ? 'from-area' : 'round' },
      words: { tensileStrength: ['τm', 'shearStrength'] },
      shown: MIDDLE,
    }),
  );
  const ratio = strength === undefined ? undefined : stress / strength;
  const [least, most] = usual[family];
  if (ratio !== undefined && ((!rises && ratio < least * (1 - MARGIN)) || ratio > most * (1 + MARGIN)))
    findings.push(
      finding(
        'shear-ratio-unusual',
        { ratio, least, most, family: family === 'any' ? 'metals' : family },
        { field: 'ratioToTensileStrength' },
      ),
    );
  const planes = piece.planes === 1 ? 'single' : 'double';
  const way = recorded && wayOf(recorded);
  const reached = (one: Quantity): Quantity => atHighest(one, rises);
  return {
    method: 'shear',
    test,
    piece: plainCopy(piece),
    area: quantity('A', 'area of one shear plane', area, 'mm²', 'geometry'),
    maximumForce: reached(quantity('Fm', 'maximum force', force, 'N', 'common practice')),
    shearStrength: reached(
      quantity('τm', `shear strength, ${planes} shear`, stress, 'MPa', 'maximum force over the area sheared (elementary mechanics)'),
    ),
    ...(ratio === undefined
      ? {}
      : { ratioToTensileStrength: reached(quantity('τm/Rm', 'shear strength over tensile strength', ratio, '1', 'common practice')) }),
    ...(way
      ? {
          travelAtMaximumForce: reached(
            quantity('x(Fm)', 'travel at maximum force from contact, tool and frame included', way.whole, 'mm', 'common practice'),
          ),
          contact: way.contact,
        }
      : {}),
    ...(recorded ? { record: recorded.record, maximumIndex: recorded.at } : {}),
    findings,
    trail: [
      ...forceTrail(test),
      ...(recorded?.repaired ?? []),
      trailStep('force-over-shear-planes', { area, planes: piece.planes }),
      ...(way ? [trailStep('travel-from-contact', { contact: way.contact })] : []),
    ],
    provenance: provenanceOf(options, recorded ? { ...recorded.raw } : { maximumForce: Float64Array.of(force) }),
  };
}
