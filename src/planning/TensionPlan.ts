import type { Finding, Section } from '../base/index.js';
import type { RateLimits } from '../curve/index.js';
import type { UsualRange } from '../materials/index.js';
import type { PlannedMaterial } from './expectedProperties.js';
import type { LargestSection } from './largestSection.js';
import type { PlannedForce } from './planForce.js';
import type { RateControl } from './TensionPlanInput.js';
import type { TestFrame } from './TestFrame.js';
import type { TravelNeeded } from './travelNeeded.js';

/** Lengths of the planned piece. */
export interface PlannedLengths {
  /** Proportional gauge length [mm]. */
  readonly proportionalLength: number;
  /** Gauge length L0 to mark [mm]. */
  readonly gaugeLength: number;
  /** Least parallel length of the standard [mm]. */
  readonly leastParallelLength: number;
  /** Parallel length Lc [mm]. */
  readonly parallelLength: number;
  /** Length that stretches elastically [mm]. */
  readonly effectiveLength: number;
  /** Least radius of the fillets where the piece has heads [mm]. */
  readonly leastFilletRadius: number;
}

/** Part of a test with a speed of its own. */
export interface SpeedStage {
  /** Which part: up to the change before yield, through yield, from there to fracture. */
  readonly stage: 'elastic' | 'yield' | 'strength';
  /** Strain rate of the parallel length to aim at [1/s]. */
  readonly strainRate: number;
  /** Strain rates that the standard allows [1/s]; the lowest is 0 where it names none. */
  readonly limits: RateLimits;
  /** Speed of the crosshead [mm/s]. */
  readonly speed: number;
  /** Stress rate [MPa/s], in the elastic part. */
  readonly stressRate?: number | undefined;
  /** Force rate [N/s], in the elastic part. */
  readonly forceRate?: number | undefined;
  /** Rise of the oil pressure [MPa/s], in the elastic part. */
  readonly pressureRate?: number | undefined;
  /** Flow of oil [mm³/s]. */
  readonly oilFlow?: number | undefined;
  /** Strokes or turns of the drive per minute [1/min]. */
  readonly drivePerMinute?: number | undefined;
  /** Stress at which the next stage begins [MPa]. */
  readonly untilStress?: number | undefined;
  /** Plastic strain at which the next stage begins [mm/mm]. */
  readonly untilPlasticStrain?: number | undefined;
}

/** What the operator does at a row of the pace sheet. */
export type PaceAction = 'start' | 'read' | 'slow-down' | 'hold-speed' | 'watch-yield' | 'speed-up' | 'maximum' | 'stop';

/** One row of the pace sheet. */
export interface PaceRow {
  /** Time from the first force on [s]. */
  readonly time: number;
  /** Part of the test. */
  readonly stage: SpeedStage['stage'];
  /** Stress [MPa]. */
  readonly stress: number;
  /** Force [N]. */
  readonly force: number;
  /** Oil pressure [MPa]. */
  readonly pressure?: number | undefined;
  /** Travel of the crosshead from the first force on [mm]. */
  readonly travel: number;
  /** What to do. */
  readonly action: PaceAction;
}

/** Energy stored at fracture, each a least value. */
export interface PlannedEnergy {
  /** In frame and piece [N·mm]. */
  readonly frameAndPiece: number;
  /** In oil and hoses [N·mm]; absent where the volume of oil is not known. */
  readonly oil?: number | undefined;
  /** Both [N·mm]. */
  readonly total: number;
}

/** What the readings resolve. */
export interface PlannedResolution {
  /** Steps of the displacement reading in the offset of Rp0.2 [1]; absent where its step is not known. */
  readonly stepsInOffset?: number | undefined;
  /** Steps of the force reading in the lowest yield force [1]; absent where its step is not known. */
  readonly forceStepsAtYield?: number | undefined;
  /** Slope that the record will show [MPa]: of frame and piece together without an extensometer; absent where the compliance is not known. */
  readonly slope?: number | undefined;
  /** Leverage of that slope on Rp0.2 [1]. */
  readonly leverage?: number | undefined;
  /** Give of the frame over that of the piece in the elastic part [1]. */
  readonly frameOverPiece?: number | undefined;
}

/** Uncertainty to be expected of a quantity. */
export interface ExpectedUncertainty {
  /** Symbol. */
  readonly symbol: 'Rm' | 'Rp0.2' | 'A' | 'E';
  /** Value to be expected, the middle of its range [MPa; A mm/mm]. */
  readonly expected: number;
  /** Standard uncertainty, in the same unit. */
  readonly standardUncertainty: number;
  /** Its terms, relative to the value [1]. */
  readonly terms: Readonly<Record<string, number>>;
}

/** How far an answer can be trusted. */
export type Verdict = 'good' | 'fair' | 'teaching only' | 'not';

/** What this frame can answer of one or several quantities. */
export interface Answer {
  /** Symbols. */
  readonly symbols: readonly string[];
  /** How far to trust. */
  readonly verdict: Verdict;
  /** Why. */
  readonly why: string;
}

/** The plan of a tension test. */
export interface TensionPlan {
  /** Which test is planned. */
  readonly planOf: 'tension';
  /** What the material is taken to be. */
  readonly material: PlannedMaterial;
  /** Section of the piece. */
  readonly section: Section;
  /** The frame, as given. */
  readonly frame: TestFrame;
  /** How the rates are chosen. */
  readonly control: RateControl;
  /** Force and pressure. */
  readonly force: PlannedForce;
  /** Yield force from lowest to highest [N]; absent where there is none. */
  readonly yieldForce?: UsualRange | undefined;
  /** Largest sections that this frame breaks at the share of its capacity that the thresholds name. */
  readonly largest: readonly LargestSection[];
  /** Lengths. */
  readonly lengths: PlannedLengths;
  /** Travel. */
  readonly travel: TravelNeeded;
  /** Energy stored at fracture. */
  readonly energy: PlannedEnergy;
  /** Speeds, in the order of the test. */
  readonly stages: readonly SpeedStage[];
  /** Pace sheet. */
  readonly pace: readonly PaceRow[];
  /** Least sampling rate [1/s]. */
  readonly leastSamplingRate: number;
  /** What the readings resolve. */
  readonly resolution: PlannedResolution;
  /** Uncertainties to be expected. */
  readonly uncertainties: readonly ExpectedUncertainty[];
  /** What this frame can answer. */
  readonly answers: readonly Answer[];
  /** What to do where the piece does not break. */
  readonly ifItStalls: readonly string[];
  /** Cautions of the test. */
  readonly cautions: readonly string[];
  /** Doubts. */
  readonly findings: readonly Finding[];
}
