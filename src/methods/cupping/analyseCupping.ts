import { finding, InputError, requireBetween, requireOptions, requirePositive, trailStep, type Finding } from '../../base/index.js';
import { requireFrameCompliance, type Compliance } from '../../curve/index.js';
import { calibrationFindings, forceOf } from '../common/calibrationFindings.js';
import { forceTrail } from '../common/forceOrigin.js';
import { conditionFindings, refusedFindings } from '../loading/frameFindings.js';
import { cuppingBlank } from './cuppingBlank.js';
import { CUPPING_TOOLS, cuppingSetUpFindings } from './cuppingSetUp.js';
import type { CuppingResult, CuppingSheet } from './CuppingResult.js';
import { requireForceColumns, type ForceColumns, type ForceRecord } from '../common/ForceColumns.js';
import { frameInWords } from '../loading/frameShare.js';
import type { TestInfo } from '../common/MethodResult.js';
import { meanOf } from '../common/meanOf.js';
import { provenanceOf } from '../common/provenanceOf.js';
import { quantity } from '../common/quantity.js';
import { requireSpikeRepair, withoutSpikes, type SpikeRepair } from '../common/spikeRepair.js';
import { scatterFindings } from '../common/scatterFindings.js';
import { plainCopy } from '../common/plainCopy.js';
import { requireTest } from '../common/testInfo.js';
import { frameRemoved, shareOfLoading } from '../loading/usableFrame.js';

/** Options of {@link analyseCupping}. */
export interface CuppingOptions {
  /** Compliance of the frame (a number [mm/N], a table or a power law), taken out of the travel; default none. */
  readonly frameCompliance?: Compliance | undefined;
  /** Diameter of the ball [mm]; default 20. */
  readonly ballDiameter?: number | undefined;
  /** Bore of the die [mm]; default 27. */
  readonly dieDiameter?: number | undefined;
  /** Force that holds the blank [N], where it was measured. */
  readonly holdingForce?: number | undefined;
  /** Least fall of the force after its maximum, as a share of it, that shows the crack; default 0.05, a choice of this package. */
  readonly minimumFall?: number | undefined;
  /** Repairs of the records before anything else; default spikes. */
  readonly repairs?: SpikeRepair | undefined;
  /** Who tested what. */
  readonly test?: TestInfo | undefined;
}

const ISO = 'ISO 20482:2013';
const FALL = 0.05;
/** Of the standard: number of blanks; about 10 kN [N], a fifth either way. */
const BLANKS = 3;
const HOLDING = [8000, 12_000] as const;

function setUpFindings(sheet: CuppingSheet, ball: number, die: number, holding: number | undefined, blanks: number): Finding[] {
  return [
    ...cuppingSetUpFindings(sheet, ball, die, { field: 'cuppingIndex' }),
    ...(holding !== undefined && (holding < HOLDING[0] || holding > HOLDING[1])
      ? [finding('cupping-holding-force', { force: holding })]
      : []),
    ...(blanks < BLANKS ? [finding('cupping-few-blanks', { blanks }, { field: 'cuppingIndex' })] : []),
  ];
}

/** A doubt about a record, with the number of its blank where there are several; its own have it anyway. */
const ofBlank = (one: Finding, blank: number): Finding =>
  'number' in one.values ? one : { ...one, message: `Blank ${blank}: ${one.message}`, values: { ...one.values, blank } };

/** One record, or one of each blank. */
function requireBlanks(from: string, records: ForceColumns | readonly ForceColumns[]): ForceRecord[] {
  const list = Array.isArray(records) ? (records as readonly ForceColumns[]) : undefined;
  if (list?.length === 0) throw new InputError(from, 'record', 'empty', 'must be of one blank at least', 0);
  const checked = list
    ? list.map((one, k) => requireForceColumns(from, `record[${k}]`, one, ['travel']))
    : [requireForceColumns(from, 'record', records as ForceColumns, ['travel'])];
  checked.forEach(({ force }, k) => {
    if (!force.some((F) => F > 0))
      throw new InputError(from, list ? `record[${k}].force` : 'record.force', 'not-positive', 'must rise above 0', 0);
  });
  return checked;
}

/**
 * A cupping test of sheet: depth of the cup when the first crack goes through, of one blank or several.
 *
 * $$ IE = x_{crack} - C_f F_{crack} - x_{contact} $$
 *
 * @remarks
 * The ball touches where the first rise of the force, extrapolated, meets zero: the middle of what a line and a power of the way say, and a finding where they differ by more than 0.1 mm. The crack is where the force begins to fall away after its
 * maximum, by 5 % at least; a fall over more than 0.3 mm of depth is no moment, and a finding says so. Depth counts without the frame where its compliance is given and leaves a way for the sheet. A quantity that a record cannot support is
 * absent. The uncertainty of the mean is that of its scatter and, the same way in all blanks, of the contact: half of what line and power differ by, over √3.
 *
 * @param record - `force` [N] and `travel` [mm], with `time` [s] where it was logged; of one blank, or a list of one for each.
 * @param sheet - Thickness and width of the blank [mm].
 * @param options - Frame compliance [mm/N], tools [mm], holding force [N], identity of the test.
 * @returns The result, as plain data.
 * @throws {@link InputError} `missing`, `empty`, `not-finite`, `not-positive`, `out-of-range`, `unequal-lengths`, `too-few`, `unknown-option`, `wrong-type`.
 *
 * @example
 * ```ts
 * const travel = Array.from({ length: 130 }, (_, i) => i / 10);
 * const force = travel.map((x) => (x < 1 ? 0 : x <= 11.5 ? 1800 * (x - 1) : 9000));
 * analyseCupping({ force, travel }, { thickness: 1, width: 90 }).cuppingIndex?.value; // => 10.5
 * ```
 *
 * @see ISO 20482:2013, cupping test of sheet and strip. Checked in `test/handbook/cupping.test.ts`.
 */
export function analyseCupping(
  record: ForceColumns | readonly ForceColumns[],
  sheet: CuppingSheet,
  options: CuppingOptions = {},
): CuppingResult {
  const from = 'analyseCupping';
  requireOptions(from, options, ['frameCompliance', 'ballDiameter', 'dieDiameter', 'holdingForce', 'minimumFall', 'repairs', 'test']);
  requireOptions(from, sheet, ['thickness', 'width'], 'sheet');
  requirePositive(from, 'sheet.thickness', sheet.thickness);
  if (sheet.width !== undefined) requirePositive(from, 'sheet.width', sheet.width);
  const asked = requireFrameCompliance(from, 'options.frameCompliance', options.frameCompliance);
  const ballDiameter = requirePositive(from, 'options.ballDiameter', options.ballDiameter ?? CUPPING_TOOLS.ball);
  const dieDiameter = requirePositive(from, 'options.dieDiameter', options.dieDiameter ?? CUPPING_TOOLS.die);
  const holding = options.holdingForce === undefined ? undefined : requirePositive(from, 'options.holdingForce', options.holdingForce);
  const fall = requireBetween(from, 'options.minimumFall', options.minimumFall ?? FALL, 0.005, 0.9);
  const test = requireTest(from, options.test ?? {});
  const repairs = requireSpikeRepair(from, options.repairs);
  const records = requireBlanks(from, record);
  const spikeless = records.map((one) => withoutSpikes(one, repairs));

  // one that a blank refuses is taken from none: their depths are compared
  const refused = asked && spikeless.map((one) => shareOfLoading(one.record, asked)).find((one) => one !== undefined);
  const frame = refused ? undefined : asked;
  const all = spikeless.map((one, k) => cuppingBlank(one.record, frame, fall, k + 1));
  const blanks = all.map(({ blank }) => blank);
  const depths = blanks.flatMap(({ depth }) => (depth ? [depth.value] : []));
  const mean = meanOf(depths);
  // sheets of one kind rise alike, so all contacts are off the same way; anywhere within is as likely
  const contactDoubt = meanOf(all.map((one) => one.contactDoubt))!.mean / Math.sqrt(3);
  return {
    method: 'cupping',
    test,
    sheet: plainCopy(sheet),
    ballDiameter,
    dieDiameter,
    ...frameRemoved(asked, records[0]!.travel, refused),
    blanks,
    ...(mean
      ? {
          cuppingIndex: quantity(
            'IE',
            `cupping index, mean of ${depths.length}`,
            mean.mean,
            'mm',
            `${ISO}, cupping index`,
            mean.uncertainty === undefined ? undefined : Math.hypot(mean.uncertainty, contactDoubt),
          ),
        }
      : {}),
    findings: [
      ...calibrationFindings(
        test,
        blanks.map(({ maximumForce }) => forceOf(maximumForce)),
      ),
      ...refusedFindings(refused, 'cuppingIndex'),
      ...conditionFindings([frame], test, 'compression'),
      ...all.flatMap(({ findings }, k) => {
        const own = [...spikeless[k]!.spikes, ...findings];
        return all.length === 1 ? own : own.map((one) => ofBlank(one, k + 1));
      }),
      ...(options.frameCompliance === undefined ? [finding('cupping-frame-included', {}, { field: 'cuppingIndex' })] : []),
      ...scatterFindings('IE', 'mm', depths, 'cuppingIndex'),
      ...setUpFindings(sheet, ballDiameter, dieDiameter, holding, blanks.length),
    ],
    trail: [
      ...forceTrail(test),
      ...spikeless.flatMap(({ repaired }, k) =>
        repaired.map((one) => ({ ...one, step: `Blank ${k + 1}: ${one.step}`, values: { ...one.values, blank: k + 1 } })),
      ),
      ...(frame
        ? [
            trailStep('frame-compliance-removed', {
              ...frameInWords(frame),
              largest: Math.max(...blanks.map(({ maximumForce }) => frame.at(maximumForce.value))),
            }),
          ]
        : []),
      ...blanks.map(({ contact }, k) => trailStep('depth-from-contact', { blank: k + 1, contact })),
    ],
    provenance: provenanceOf(
      options,
      Object.fromEntries(
        records.flatMap((one, k) =>
          Object.entries(one as unknown as Record<string, Float64Array>).map(([name, column]) => [`${name}${k + 1}`, column]),
        ),
      ),
    ),
  };
}
