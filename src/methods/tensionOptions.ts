import { requireColumn, requireNonNegative, requireObject, requireOneOf, requireOptions, requirePositive } from '../base/index.js';
import { requireModulusOptions, type ModulusOptions, type ProportionalDefinition, type WindowChoice } from '../curve/index.js';
import type { TestInfo } from './MethodResult.js';
import { requireTest } from './testInfo.js';

/** Thresholds of findings: common practice where no standard is named. */
export interface TensionThresholds {
  /** Samples in the elastic window below which a caution is given; default 50. */
  readonly elasticPoints?: number | undefined;
  /** Samples in the elastic window below which E is withheld; default 8. */
  readonly leastElasticPoints?: number | undefined;
  /** Relative standard error of the slope above which a caution is given; default 0.01. */
  readonly slopeScatter?: number | undefined;
  /** Fall of slope within the elastic part above which there is no linear part; default 0.1. */
  readonly slopeFall?: number | undefined;
  /** Change of slope over the window by a parabola, as a share of the slope, that is a caution; default 0.05. */
  readonly windowBend?: number | undefined;
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
  /** Strain rate up to the proof strength that is a caution [1/s]; default 0.0025. */
  readonly strainRateElastic?: number | undefined;
  /** Strain rate beyond it that is a caution [1/s]; default 0.008. */
  readonly strainRatePlastic?: number | undefined;
}

/** @internal The thresholds when nothing is asked. */
export const defaultThresholds = {
  elasticPoints: 50,
  leastElasticPoints: 8,
  slopeScatter: 0.01,
  slopeFall: 0.1,
  windowBend: 0.05,
  offsetDoubt: 0.05,
  displacementStep: 0.1,
  toeShare: 0.25,
  sectionSpread: 0.005,
  gaugeLengthDeviation: 0.1,
  strainRateElastic: 0.0025,
  strainRatePlastic: 0.008,
};

/** Options of an analysis of a curve. */
export interface CurveAnalysisOptions {
  /** Plastic extensions of the proof strengths [mm/mm]; default `[0.002]`. */
  readonly offsets?: ArrayLike<number> | undefined;
  /** Total extensions of the Rt strengths [mm/mm]; default `[0.005]`. */
  readonly totalExtensions?: ArrayLike<number> | undefined;
  /** How the elastic window is chosen. */
  readonly modulus?: ModulusOptions | undefined;
  /** Definition of the proportional limit; default `offset` (Rp0.01). */
  readonly proportionalLimit?: ProportionalDefinition | undefined;
  /** Rule for ReL; default `whole`. */
  readonly lowerYield?: 'whole' | 'short' | undefined;
  /** Who tested what. */
  readonly test?: TestInfo | undefined;
  /** Thresholds of findings. */
  readonly thresholds?: TensionThresholds | undefined;
}

/** Options of {@link analyseTension}. */
export interface TensionOptions extends CurveAnalysisOptions {
  /** Compliance of the frame [mm/N], taken out of crosshead travel; default none. */
  readonly frameCompliance?: number | undefined;
  /** Least elongation after fracture that is specified [mm/mm]: where it is reached, A is valid wherever the piece broke; default none. */
  readonly minimumElongation?: number | undefined;
}

/** @internal Options after the checks, with defaults. */
export interface TensionSettings {
  readonly offsets: readonly number[];
  readonly totalExtensions: readonly number[];
  readonly window: WindowChoice;
  readonly proportionalLimit: ProportionalDefinition;
  readonly lowerYield: 'whole' | 'short';
  readonly frameCompliance: number | undefined;
  readonly minimumElongation: number | undefined;
  readonly test: TestInfo;
  readonly thresholds: typeof defaultThresholds;
}

/** @internal Checks the options before any work, and fills in defaults. */
export function requireTensionOptions(from: string, options: TensionOptions, names: readonly string[]): TensionSettings {
  requireOptions(from, options, names);
  const strains = (name: 'offsets' | 'totalExtensions', otherwise: readonly number[]): number[] => {
    const given = options[name];
    return given === undefined ? [...otherwise] : [...requireColumn(from, `options.${name}`, given, { least: 0, positive: true })];
  };
  const thresholds = requireObject(from, 'options.thresholds', options.thresholds ?? {});
  requireOptions(from, thresholds, Object.keys(defaultThresholds), 'options.thresholds');
  const given = Object.entries(thresholds).filter(([, value]) => value !== undefined);
  for (const [name, value] of given) requirePositive(from, `options.thresholds.${name}`, value);
  return {
    offsets: strains('offsets', [0.002]),
    totalExtensions: strains('totalExtensions', [0.005]),
    window: requireModulusOptions(from, options.modulus ?? {}, 'options.modulus'),
    proportionalLimit: requireOneOf(from, 'options.proportionalLimit', options.proportionalLimit ?? 'offset', [
      'offset',
      'deviation',
      'tangent',
      'johnson',
    ]),
    lowerYield: requireOneOf(from, 'options.lowerYield', options.lowerYield ?? 'whole', ['whole', 'short']),
    frameCompliance:
      options.frameCompliance === undefined ? undefined : requireNonNegative(from, 'options.frameCompliance', options.frameCompliance),
    minimumElongation:
      options.minimumElongation === undefined
        ? undefined
        : requireNonNegative(from, 'options.minimumElongation', options.minimumElongation),
    test: requireTest(from, options.test ?? {}),
    thresholds: { ...defaultThresholds, ...Object.fromEntries(given) },
  };
}

/** @internal Names that {@link TensionOptions} knows. */
export const curveOptionNames = ['offsets', 'totalExtensions', 'modulus', 'proportionalLimit', 'lowerYield', 'test', 'thresholds'];
