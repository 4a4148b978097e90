import type { Section } from '../base/index.js';
import type { MaterialFamilyKey } from '../materials/index.js';
import type { ExpectedProperties } from './expectedProperties.js';
import type { PlanThresholds } from './planForce.js';
import type { TestFrame } from './TestFrame.js';

/** How the rates are chosen: ISO 6892-1 method A or B, ASTM E8 control A, B or C. */
export type RateControl = 'iso-a' | 'iso-b' | 'e8-a' | 'e8-b' | 'e8-c';

/** What the values are for. */
export type UseOfValues = 'teaching' | 'comparison' | 'acceptance' | 'structural';

/** Lengths of a piece that are given; the others follow from the standard. */
export interface GivenLengths {
  /** Gauge length L0 [mm]; default 5.65 roots of the area, to 5 mm. */
  readonly gaugeLength?: number | undefined;
  /** Coefficient of proportionality, where another than 5.65 is meant. */
  readonly coefficient?: number | undefined;
  /** Parallel length Lc [mm]; default the least that the standard allows. */
  readonly parallelLength?: number | undefined;
  /** Length that stretches elastically, fillets included [mm]; default the parallel length. */
  readonly effectiveLength?: number | undefined;
  /** True for arbitration: a longer parallel length; default false. */
  readonly arbitration?: boolean | undefined;
}

/** An extensometer. */
export interface PlannedExtensometer {
  /** Base Le [mm]. */
  readonly length: number;
  /** Step of its reading [mm]. */
  readonly step?: number | undefined;
  /** Greatest relative error [1]; default 0.01, that of class 1. */
  readonly error?: number | undefined;
}

/** Standard uncertainties to be expected of what the operator measures. */
export interface PlannedErrors {
  /** Of the area, relative [1]; default 0.005. */
  readonly section?: number | undefined;
  /** Of the gauge length [mm]; default 0.1. */
  readonly gaugeLength?: number | undefined;
  /** Of the gauge length after fracture [mm]; default 0.2. */
  readonly finalGaugeLength?: number | undefined;
  /** Of the length that stretches elastically, relative [1]; default 0.005. */
  readonly effectiveLength?: number | undefined;
  /** Of the frame's compliance, relative [1]; default 0.03. */
  readonly compliance?: number | undefined;
  /** Of the slope of the elastic line, relative [1]; default 0.01. */
  readonly slope?: number | undefined;
}

/** What a tension test is planned from. */
export interface TensionPlanInput {
  /** Family of the material; or `expected`, or both. */
  readonly family?: MaterialFamilyKey | undefined;
  /** Properties to be expected; they count before the family's. */
  readonly expected?: ExpectedProperties | undefined;
  /** Section of the piece. */
  readonly section: Section;
  /** The frame. */
  readonly frame: TestFrame;
  /** Lengths that are given. */
  readonly lengths?: GivenLengths | undefined;
  /** The extensometer; default none: extension from travel. */
  readonly extensometer?: PlannedExtensometer | undefined;
  /** How the rates are chosen; default `iso-a`. */
  readonly control?: RateControl | undefined;
  /** Strain rate range after yield, for ISO method A; default 4. */
  readonly strengthRange?: 2 | 3 | 4 | undefined;
  /** Samples per second of the logger [1/s]. */
  readonly samplingRate?: number | undefined;
  /** What the values are for; default `teaching`. */
  readonly use?: UseOfValues | undefined;
  /** True where the report is to claim the standard; default false. */
  readonly claimsStandard?: boolean | undefined;
  /** Uncertainties of what the operator measures. */
  readonly errors?: PlannedErrors | undefined;
  /** Thresholds of the findings. */
  readonly thresholds?: PlanThresholds | undefined;
}
