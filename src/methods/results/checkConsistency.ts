import {
  finding,
  InputError,
  requireNonNegative,
  requireObject,
  requireOptions,
  requirePositive,
  type Finding,
  type TensionColumns,
  unitInWords,
} from '../../base/index.js';
import { requireRecord } from '../../curve/index.js';
import { motionColumn, ofPiece } from '../../record/index.js';
import type { ConsistencyLink } from './consistencyLink.js';
import { barbaLinks, elongationLinks, hardnessLink, neckingLink } from './consistencyLinks.js';
import { elasticEnergyLink, workLink } from './energyLinks.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** What else is known of the piece. */
export interface ConsistencyOptions {
  /** Brinell hardness of the same steel. */
  readonly hardness?:
    | {
        /** HBW, above 0. */
        readonly value: number;
        /** Standard uncertainty [HBW]; default 0. */
        readonly standardUncertainty?: number | undefined;
      }
    | undefined;
  /** Elongation after fracture on a second gauge length of the same piece. */
  readonly otherElongation?:
    | {
        /** A on that length [mm/mm]. */
        readonly elongation: number;
        /** That gauge length [mm], other than the piece's. */
        readonly gaugeLength: number;
      }
    | undefined;
  /** The record that the result was made from, as given to `analyseTension`. */
  readonly record?: TensionColumns | undefined;
}

/** The values of one test against each other. */
export interface ConsistencyWeb {
  /** The links that the result supports. */
  readonly links: readonly ConsistencyLink[];
  /** One finding for each broken link, and one for a link that can tell one side only. */
  readonly findings: readonly Finding[];
}

const FROM = 'checkConsistency';

function requireElongation(other: NonNullable<ConsistencyOptions['otherElongation']>, gaugeLength: number) {
  const path = 'options.otherElongation';
  requireOptions(FROM, other, ['elongation', 'gaugeLength'], path);
  requireNonNegative(FROM, `${path}.elongation`, other.elongation);
  if (requirePositive(FROM, `${path}.gaugeLength`, other.gaugeLength) === gaugeLength)
    throw new InputError(FROM, `${path}.gaugeLength`, 'out-of-range', "must differ from the piece's own", gaugeLength);
  return other;
}

function requireHardness({ value, standardUncertainty = 0, ...rest }: NonNullable<ConsistencyOptions['hardness']>) {
  requireOptions(FROM, rest, [], 'options.hardness');
  return {
    value: requirePositive(FROM, 'options.hardness.value', value),
    uncertainty: requireNonNegative(FROM, 'options.hardness.standardUncertainty', standardUncertainty),
  };
}

/** The links of the record; with an extensometer and travel together no single column holds the motion. */
function recordLinks(result: TensionResult, record: TensionColumns): ConsistencyLink[] {
  const checked = requireRecord(FROM, record);
  const byTravel = result.extensionBasis === 'travel';
  const column = byTravel ? 'travel' : motionColumn(checked, ofPiece);
  const motion = checked[column];
  if (result.extensionBasis === 'extensometer-then-travel' || !motion || byTravel !== (column === 'travel')) return [];
  const moved = column === 'strain' ? motion.map((e) => e * result.strainLength) : motion;
  const { frameCompliance } = result.provenance.options;
  const removed = byTravel && typeof frameCompliance === 'number' && result.frameRemoved !== false;
  return workLink(result, checked.force, moved, removed ? frameCompliance : 0);
}

/**
 * The values of one test against each other, link by link: each with both sides, what it tolerates, and why it may be broken.
 *
 * $$ R_m \approx 3.3\,\mathrm{HBW}, \quad n \approx \ln(1 + A_{gt}), \quad A = a + b\frac{\sqrt{S_0}}{L_0},\ a \approx A_g, \quad
 * \ln\frac{1}{1 - Z} \ge \ln(1 + A), \quad A \ge A_g, \quad \int F\,\mathrm{d}x = U S_0 L + \tfrac12 C_f F^2 $$
 *
 * @remarks
 * The tolerance is what the rule itself leaves open plus twice the combined standard uncertainty of both sides; where A and Z carry none,
 * 0.6 and 1 point stand for it (common practice). A broken link says that two readings do not go together, not which one is wrong. The
 * rule of hardness is one of carbon and low-alloy steels: give `hardness` for those only. Where the test ended before its maximum, Rm is only at least so large: then the link of
 * hardness tells one side only, and a finding says so.
 *
 * @param result - A result of `analyseTension`.
 * @param options - Hardness [HBW], a second elongation, the record.
 * @returns The links that the result supports, and a finding for each that is broken or tells one side only.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unequal-lengths`, `unknown-option`.
 *
 * @example
 * ```ts
 * const record = { force: [0, 10000, 20000, 19000], strain: [0, 0.001, 0.2, 0.25] };
 * const result = analyseTension(record, { section: sectionFromArea({ area: 50 }), gaugeLength: 40 });
 * checkConsistency(result, { hardness: { value: 120 } }).links[0]?.holds; // => true
 * checkConsistency(result, { hardness: { value: 200 } }).findings[0]?.code; // => 'values-disagree'
 * ```
 *
 * @see Barba (1880), Résistance des matériaux; Considère; textbooks. Checked in `test/methods/checkConsistency.test.ts`.
 */
export function checkConsistency(result: TensionResult, options: ConsistencyOptions = {}): ConsistencyWeb {
  const given = requireObject(FROM, 'result', result);
  if (!('method' in given) || given.method !== 'tension' || !('testPiece' in given))
    throw new InputError(FROM, 'result.method', 'wrong-type', 'must be that of analyseTension', result);
  requireOptions(FROM, options, ['hardness', 'otherElongation', 'record']);
  const hardness = options.hardness && requireHardness(options.hardness);
  const other = options.otherElongation && requireElongation(options.otherElongation, result.testPiece.gaugeLength);
  const links = [
    ...(hardness ? hardnessLink(result, hardness.value, hardness.uncertainty) : []),
    ...neckingLink(result),
    ...(other ? barbaLinks(result, other) : []),
    ...elongationLinks(result),
    ...elasticEnergyLink(result),
    ...(options.record ? recordLinks(result, options.record) : []),
  ];
  const oneSided =
    hardness && result.tensileStrength.atLeast
      ? [finding('link-one-sided', { link: 'strength-hardness', symbol: 'Rm' }, { field: 'tensileStrength' })]
      : [];
  const broken = links
    .filter(({ holds }) => !holds)
    .map(({ link, left, right, tolerance }) =>
      finding('values-disagree', {
        link,
        left: left.symbol,
        leftValue: left.value,
        leftUnit: unitInWords(left.unit),
        right: right.symbol,
        rightValue: right.value,
        rightUnit: unitInWords(right.unit),
        tolerance,
      }),
    );
  return { links, findings: [...oneSided, ...broken] };
}
