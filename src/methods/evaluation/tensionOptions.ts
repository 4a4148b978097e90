import { PROOF_OFFSET, requireExtensions, requireNonNegative, requireOneOf, requireOptions } from '../../base/index.js';
import {
  lowerYieldRules,
  proportionalDefinitions,
  requireFrameCompliance,
  requireModulusOptions,
  testingRates,
  type Compliance,
  type FrameMotion,
  type LowerYieldRule,
  type ModulusOptions,
  type ProportionalDefinition,
  type WindowChoice,
} from '../../curve/index.js';
import { SAME_LENGTH } from '../../geometry/index.js';
import { requireFamily, type MaterialFamilyKey } from '../../materials/index.js';
import { requireRepairs, type Repairs } from '../../record/index.js';
import type { TestInfo } from '../common/MethodResult.js';
import type { TensionUncertainty } from './tensionUncertainty.js';
import { requireTest } from '../common/testInfo.js';
import { lineThresholds, requireThresholds } from '../common/thresholds.js';

/** Thresholds of findings: common practice where no standard is named. */
export interface TensionThresholds {
  /** Samples in the elastic window below which a caution is given; default 50. */
  readonly elasticPoints?: number | undefined;
  /** Samples in the elastic window below which E is withheld; default 8. */
  readonly leastElasticPoints?: number | undefined;
  /** Relative standard error of the slope above which a caution is given; default 0.01. */
  readonly slopeScatter?: number | undefined;
  /**
   * Share of the slope that may be lost before there is no linear part, and E is withheld; default 0.1. One limit for two signs of the same thing: the fall from one
   * band of stress to the next, and what yielding and toe take off within the window.
   */
  readonly slopeFall?: number | undefined;
  /** Spread of the slopes of other windows, as a share of the lowest, above which there is none; default 0.25. */
  readonly slopeSpread?: number | undefined;
  /** Change of slope over the window by a parabola, as a share of the slope, above which there is none; default 0.2. */
  readonly bendLimit?: number | undefined;
  /** What steps of the strain reading leave open of the slope, as a share of it, above which nothing is known of a linear part, and E is withheld; default 0.1. */
  readonly stepDoubt?: number | undefined;
  /** Change of slope over the window by a parabola, as a share of the slope, that is a caution; default 0.05. */
  readonly bendCaution?: number | undefined;
  /** Doubt of the offset by the slope, as a share of the offset, that is a caution; default 0.05. */
  readonly offsetDoubt?: number | undefined;
  /** Step of the displacement reading, as a share of the offset, that is a caution; default 0.1. */
  readonly displacementStep?: number | undefined;
  /** Toe, as a share of the elastic extension at the top of the window, that is a caution; default 0.25. */
  readonly toeShare?: number | undefined;
  /** Relative spread of section readings that is a caution; default 0.005. */
  readonly sectionSpread?: number | undefined;
  /** Deviation of the gauge length from the proportional one that is a caution; default 0.1, a note from a tenth of it. */
  readonly gaugeLengthDeviation?: number | undefined;
  /** Share by which a property may lie beyond the usual range of its family; default 0.1. */
  readonly familyMargin?: number | undefined;
  /** Strain rate up to the proof strength that is a caution [1/s]; default 0.0025. */
  readonly strainRateElastic?: number | undefined;
  /** Strain rate beyond it that is a caution [1/s]; default 0.008. */
  readonly strainRatePlastic?: number | undefined;
}

/** @internal The thresholds when nothing is asked. */
export const defaultThresholds = {
  ...lineThresholds,
  gaugeLengthDeviation: SAME_LENGTH,
  strainRateElastic: testingRates.methodB.upToProof,
  strainRatePlastic: testingRates.methodB.afterYield,
  familyMargin: 0.1,
};

/** Options of an analysis of a curve. */
export interface CurveAnalysisOptions {
  /** Plastic extensions of the proof strengths [mm/mm], each 0.05 at most; default `[0.002]`. */
  readonly offsets?: ArrayLike<number> | undefined;
  /** Total extensions of the Rt strengths [mm/mm], each 0.05 at most; default `[0.005]`. */
  readonly totalExtensions?: ArrayLike<number> | undefined;
  /** How the elastic window is chosen. */
  readonly modulus?: ModulusOptions | undefined;
  /** Definition of the proportional limit; default `offset` (Rp0.01). */
  readonly proportionalLimit?: ProportionalDefinition | undefined;
  /** ReL over the whole yielding range, or over the first 0.25 % strain after ReH; default `whole`. */
  readonly lowerYield?: LowerYieldRule | undefined;
  /** Family of the metal: properties outside its usual ranges are findings, with what may explain them; default none. */
  readonly family?: MaterialFamilyKey | undefined;
  /** Who tested what. */
  readonly test?: TestInfo | undefined;
  /** Thresholds of findings. */
  readonly thresholds?: TensionThresholds | undefined;
}

/** Options of {@link analyseTension}. */
export interface TensionOptions extends CurveAnalysisOptions {
  /** Compliance of the frame, taken out of crosshead travel: a number [mm/N], a table or a power law (see `frameTravel`); default none. */
  readonly frameCompliance?: Compliance | undefined;
  /** Repairs of the record before anything else; default spikes only. What leaves samples out makes `curve` shorter. */
  readonly repairs?: Repairs | undefined;
  /** What is doubtful about the test: with it every quantity states its standard uncertainty, and the result carries the budgets. */
  readonly uncertainty?: TensionUncertainty | undefined;
  /** Least elongation after fracture that is specified [mm/mm]: where it is reached, A is valid wherever the piece broke; default none. */
  readonly minimumElongation?: number | undefined;
}

/** @internal Options after the checks, with defaults. */
export interface TensionSettings {
  readonly offsets: readonly number[];
  readonly totalExtensions: readonly number[];
  readonly window: WindowChoice;
  readonly proportionalLimit: ProportionalDefinition;
  readonly lowerYield: LowerYieldRule;
  readonly frameCompliance: FrameMotion | undefined;
  readonly repairs: Repairs;
  readonly family: MaterialFamilyKey | undefined;
  readonly minimumElongation: number | undefined;
  readonly test: TestInfo;
  readonly thresholds: typeof defaultThresholds;
}

/** @internal Checks the options before any work, and fills in defaults. */
export function requireTensionOptions(from: string, options: TensionOptions, names: readonly string[]): TensionSettings {
  requireOptions(from, options, names);
  return {
    offsets: requireExtensions(from, 'options.offsets', options.offsets, [PROOF_OFFSET]),
    totalExtensions: requireExtensions(from, 'options.totalExtensions', options.totalExtensions, [0.005]),
    window: requireModulusOptions(from, options.modulus ?? {}, 'options.modulus'),
    proportionalLimit: requireOneOf(from, 'options.proportionalLimit', options.proportionalLimit ?? 'offset', proportionalDefinitions),
    lowerYield: requireOneOf(from, 'options.lowerYield', options.lowerYield ?? 'whole', lowerYieldRules),
    frameCompliance: requireFrameCompliance(from, 'options.frameCompliance', options.frameCompliance),
    repairs: requireRepairs(from, options.repairs ?? {}, 'options.repairs'),
    family: options.family === undefined ? undefined : requireFamily(from, 'options.family', options.family).key,
    minimumElongation:
      options.minimumElongation === undefined
        ? undefined
        : requireNonNegative(from, 'options.minimumElongation', options.minimumElongation),
    test: requireTest(from, options.test ?? {}),
    thresholds: requireThresholds(from, options.thresholds, defaultThresholds),
  };
}

/** @internal Names that {@link CurveAnalysisOptions} knows. */
export const curveOptionNames = [
  'offsets',
  'totalExtensions',
  'modulus',
  'proportionalLimit',
  'lowerYield',
  'family',
  'test',
  'thresholds',
];

/** @internal Names that {@link TensionOptions} knows. */
export const tensionOptionNames = [...curveOptionNames, 'frameCompliance', 'minimumElongation', 'repairs', 'uncertainty'];
