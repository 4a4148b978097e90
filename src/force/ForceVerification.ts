import type { Finding } from '../base/index.js';
import type { ForceClass } from './forceClasses.js';

/** Terms that decide on the class of a force. */
export type ForceTerm = 'indicationError' | 'repeatability' | 'reversibility' | 'zeroError' | 'resolution';

/** One force of a verification. */
export interface ForceStep {
  /** The force that was set [N]: the true one, or the indicated one, by `held`. */
  readonly force: number;
  /** Readings of the other one with rising force [N], one a run, at least three. */
  readonly rising: ArrayLike<number>;
  /** Readings with falling force [N], of the first runs in the same order; default none. */
  readonly falling?: ArrayLike<number> | undefined;
}

/** A verification of a force-measuring system. */
export interface ForceVerification {
  /** Steps of ascending force. */
  readonly steps: readonly ForceStep[];
  /** End of the range F_N [N]. */
  readonly range: number;
  /** One step of the reading r [N]. */
  readonly resolution: number;
  /** Range over which the reading wanders at a steady force [N]; default 0. */
  readonly fluctuation?: number | undefined;
  /** Readings of the indicator without force after the runs [N]. */
  readonly zeros?: ArrayLike<number> | undefined;
  /** Relative standard uncertainty of the reference instrument, with its calibration, drift and temperature [1], below 0.1; default unknown. */
  readonly reference?: number | undefined;
  /** Which force was set: the true one (the indicator is read) or the indicated one (the reference is read); default `true`. */
  readonly held?: 'true' | 'indicated' | undefined;
}

/** One verified force. */
export interface VerifiedStep {
  /** The force that was set [N]. */
  readonly force: number;
  /** Indication error q [1]. */
  readonly indicationError: number;
  /** Standard uncertainty of that error [1], where that of the reference instrument was given. */
  readonly standardUncertainty?: number | undefined;
  /** Repeatability b [1]. */
  readonly repeatability: number;
  /** Reversibility v, the largest of the runs [1]; negative where falling forces read low. */
  readonly reversibility?: number | undefined;
  /** Zero error f0, of the end of the range [1]. */
  readonly zeroError?: number | undefined;
  /** Resolution a [1]. */
  readonly resolution: number;
  /** Friction between rising and falling force, half of their difference [N]. */
  readonly friction?: number | undefined;
  /** Best class that this step reaches; absent where it reaches none. */
  readonly forceClass?: ForceClass | undefined;
  /** The term that stops a better class, or uses most of its limit in the best one. */
  readonly limitedBy: ForceTerm;
}

/** Forces over which a class holds. */
export interface VerifiedRange {
  /** The class. */
  readonly forceClass: ForceClass;
  /** Lowest force [N]: a step, or what the resolution allows if that is higher. */
  readonly from: number;
  /** Highest force [N]: a step. */
  readonly to: number;
  /** The term that stops the class at the next step below; `steps` where no lower step was verified. */
  readonly stoppedBelowBy: ForceTerm | 'steps';
}

/** What a verification found. */
export interface ForceVerificationResult {
  /** Which force was set. */
  readonly held: 'true' | 'indicated';
  /** Steps as given, with their terms and classes. */
  readonly steps: readonly VerifiedStep[];
  /** Class that every step reaches; absent where one reaches none. */
  readonly forceClass?: ForceClass | undefined;
  /** Forces over which each class holds, best class first. */
  readonly ranges: readonly VerifiedRange[];
  /** Resolution r that counts [N]: with a wandering reading half its range and one step. */
  readonly resolution: number;
  /** True where every step has falling readings too. */
  readonly fallingVerified: boolean;
  /** Doubts. */
  readonly findings: readonly Finding[];
}
