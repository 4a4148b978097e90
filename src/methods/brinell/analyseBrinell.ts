import { finding, requireOneOf, requireOptions, trailStep, type Finding } from '../../base/index.js';
import { calibrationFindings } from '../common/calibrationFindings.js';
import { forceTrail } from '../common/forceOrigin.js';
import { brinellPieceFindings, indentationFindings } from './brinellFindings.js';
import { brinellHardness } from './brinellHardness.js';
import { heldForce } from './brinellDwell.js';
import { brinellDesignation, brinellScale, offScaleFindings } from './brinellScale.js';
import { requireBrinell, type CheckedIndentation } from './brinellReadings.js';
import type { BrinellIndentationResult, BrinellPiece, BrinellReadings, BrinellResult } from './BrinellResult.js';
import type { TestInfo } from '../common/MethodResult.js';
import { meanOf } from '../common/meanOf.js';
import { provenanceOf } from '../common/provenanceOf.js';
import { quantity } from '../common/quantity.js';
import { strengthFromBrinell, type StrengthMaterial } from './strengthFromBrinell.js';
import { requireSpikeRepair, withoutSpikes, type SpikeRepair } from '../common/spikeRepair.js';
import { scatterFindings } from '../common/scatterFindings.js';
import { plainCopy } from '../common/plainCopy.js';
import { requireTest } from '../common/testInfo.js';

/** Options of {@link analyseBrinell}. */
export interface BrinellOptions {
  /** The metal, where a tensile strength is to be estimated; default: none is. */
  readonly strengthOf?: StrengthMaterial | undefined;
  /** Repairs of records of force over time before anything else; default spikes. */
  readonly repairs?: SpikeRepair | undefined;
  /** Who tested what. */
  readonly test?: TestInfo | undefined;
}

const ISO = 'ISO 6506-1:2014';
const strengthMaterials: readonly StrengthMaterial[] = [
  'steel',
  'cold-worked steel',
  'austenitic steel',
  'cast iron',
  'aluminium',
  'copper',
  'other',
];

/** One indentation: the force that counts, what follows, its doubts. */
function evaluated(given: CheckedIndentation, ball: number, number: number, repairs: SpikeRepair, stated: number | undefined) {
  const { diameters } = given;
  const done = given.record && withoutSpikes(given.record, repairs);
  const record = done?.record;
  const dwell = record && heldForce(record.force, record.time!);
  const force = dwell?.force ?? given.force ?? record!.force.reduce((a, b) => Math.max(a, b));
  const found = brinellHardness({ force, ballDiameter: ball, diameters });
  const result: BrinellIndentationResult = {
    hardness: quantity('HBW', 'Brinell hardness', found.hardness, 'HBW', `${ISO}, principle`),
    diameter: quantity('d', 'mean diameter of the indentation', found.diameter, 'mm', `${ISO}, symbols`),
    depth: quantity('h', 'depth of the indentation', found.depth, 'mm', `${ISO}, symbols`),
    force: quantity('F', 'test force', force, 'N', `${ISO}, symbols`),
    diameters,
    forceIndex: found.forceIndex,
    valid: found.valid,
    ...(dwell ? { dwell } : {}),
    ...(record ? { record } : {}),
  };
  return {
    found,
    force,
    result,
    repaired: done?.repaired ?? [],
    findings: [...(done?.spikes ?? []), ...indentationFindings(number, ball, given, found, force, dwell, stated)],
  };
}

/**
 * A Brinell test: one indentation or several, with the force as it was set or as it was recorded over time.
 *
 * $$ \text{HBW} = \frac{0.102 \cdot 2 F}{\pi D \left( D - \sqrt{D^2 - d^2} \right)} $$
 *
 * @remarks
 * Where force was recorded, the highest while it was held governs: a force that fell in the dwell made its indentation before it fell. Each
 * indentation has its own hardness; the mean is over those whose diameter lies within 0.24 and 0.60 of the ball, and whose force is that of the scale
 * within 1 % where that of others is. Index, time, steadiness, thickness, edge and
 * spacing are looked at where they are known.
 *
 * @param readings - `ballDiameter` [mm]; `holdingTime` [s] where nothing was recorded; `indentations` with `diameters` [mm], and `force` [N] or a `record` of force [N] over time [s].
 * @param piece - Thickness [mm] and group of the material.
 * @param options - Metal for an estimate of strength, identity of the test.
 * @returns The result, as plain data.
 * @throws {@link InputError} `missing`, `empty`, `wrong-type`, `not-finite`, `not-positive`, `not-increasing`, `unequal-lengths`, `too-few`,
 * `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const readings = { ballDiameter: 10, force: 9807, indentations: [{ diameters: [3.98, 4.02] }, { diameters: [4.05, 4.07] }] };
 * const result = analyseBrinell(readings, { thickness: 12, material: 'copper alloys' });
 * result.hardness?.value; // => 75.1
 * result.designation; // => 'HBW 10/1000'
 * ```
 *
 * @see ISO 6506-1:2014, Brinell hardness test. Checked in `test/handbook/brinell.test.ts`.
 */
export function analyseBrinell(readings: BrinellReadings, piece: BrinellPiece = {}, options: BrinellOptions = {}): BrinellResult {
  const from = 'analyseBrinell';
  requireOptions(from, options, ['strengthOf', 'repairs', 'test']);
  const strengthOf =
    options.strengthOf === undefined ? undefined : requireOneOf(from, 'options.strengthOf', options.strengthOf, strengthMaterials);
  const test = requireTest(from, options.test ?? {});
  const repairs = requireSpikeRepair(from, options.repairs);
  const { ball, holdingTime, list } = requireBrinell(from, readings, piece);

  const all = list.map((one, k) => evaluated(one, ball, k + 1, repairs, holdingTime));
  const scale = brinellScale(
    ball,
    all.map((one) => one.force),
  );
  const indentations = all.map(({ result, force }): BrinellIndentationResult => ({
    ...result,
    ...(scale.holds(force) ? {} : { offScale: true }),
  }));
  const times = all.flatMap(({ result: { dwell, record } }) => dwell?.duration ?? (record ? [] : (holdingTime ?? [])));
  // what does not count as hardness says nothing about the piece either
  const counting = all.filter(({ found, force }) => found.valid && scale.holds(force)).map(({ found }) => found);
  const ofScale = all.map((one) => one.force).filter(scale.holds);
  const force = ofScale.reduce((sum, one) => sum + one, 0) / ofScale.length;
  const values = counting.map(({ hardness }) => hardness);
  const mean = meanOf(values);
  const findings: Finding[] = [
    ...calibrationFindings(test, [{ symbol: 'F', force }]),
    ...all.flatMap((one, k) => [...one.findings, ...offScaleFindings(k + 1, one.force, scale)]),
    ...scatterFindings('HBW', 'HBW', values, 'hardness'),
    ...brinellPieceFindings(piece, counting, ball, force, mean?.mean),
  ];
  const strength = strengthOf === undefined || !mean ? undefined : strengthFromBrinell({ hardness: mean.mean, material: strengthOf });
  if (strength)
    findings.push(
      strength.ok
        ? finding('strength-estimated', { strength: strength.strength }, { field: 'estimatedStrength' })
        : finding('strength-not-estimated', { why: strength.message }, { field: 'estimatedStrength' }),
    );
  return {
    method: 'brinell',
    test,
    ballDiameter: ball,
    piece: plainCopy(piece),
    ...(holdingTime === undefined ? {} : { holdingTime }),
    indentations,
    ...(mean ? { hardness: quantity('HBW', 'Brinell hardness, mean', mean.mean, 'HBW', `${ISO}, principle`, mean.uncertainty) } : {}),
    designation: brinellDesignation(scale, times),
    ...(strength?.ok === true
      ? {
          // a tenth either way, any value of it as likely
          estimatedStrength: quantity(
            'Rm(HBW)',
            'tensile strength, estimated from hardness',
            strength.strength,
            'MPa',
            '3.45 HBW (common practice)',
            (0.1 * strength.strength) / Math.sqrt(3),
          ),
        }
      : {}),
    findings,
    trail: [
      ...forceTrail(test),
      ...all.flatMap(({ repaired }, k) => repaired.map((step) => ({ ...step, values: { ...step.values, indentation: k + 1 } }))),
      ...all.flatMap(({ result: { dwell } }, k) =>
        dwell
          ? [trailStep('held-force-taken', { indentation: k + 1, force: dwell.force, first: dwell.range[0], last: dwell.range[1] })]
          : [],
      ),
    ],
    provenance: provenanceOf(options, {
      diameters: Float64Array.from(list.flatMap(({ diameters }) => diameters)),
      forces: Float64Array.from(all.map((one) => one.force)),
      ...Object.fromEntries(
        list.flatMap(({ record }, k) =>
          record
            ? [
                [`force${k}`, record.force],
                [`time${k}`, record.time],
              ]
            : [],
        ),
      ),
    }),
  };
}
