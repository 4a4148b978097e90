import {
  finding,
  InputError,
  requireColumn,
  requireFinite,
  requireList,
  requireOptions,
  requirePositive,
  type Finding,
} from '../base/index.js';
import { mean } from '../numeric/index.js';
import { displacementClasses } from './displacementClasses.js';
import { gradeTerms, type GradedTerm } from './gradeTerms.js';

/** Class of an extensometer. */
export type DisplacementClass = 0.2 | 0.5 | 1 | 2;

/** Terms that decide on the class of a displacement. */
export type DisplacementTerm = 'error' | 'resolution' | 'gaugeLength';

/** One displacement of a verification. */
export interface DisplacementStep {
  /** Displacement by gauge blocks, dial or micrometer [mm]. */
  readonly reference: number;
  /** Readings when it is reached from below [mm]. */
  readonly rising: ArrayLike<number>;
  /** Readings when it is reached from above [mm]; default none. */
  readonly falling?: ArrayLike<number> | undefined;
}

/** The base of an extensometer. */
export interface ExtensometerBase {
  /** What it is taken as [mm]. */
  readonly nominal: number;
  /** What it is [mm]. */
  readonly measured: number;
}

/** A verification of a travel sensor or an extensometer. */
export interface DisplacementVerification {
  /** Steps of ascending displacement from the zero of the sensor. */
  readonly steps: readonly DisplacementStep[];
  /** One step of the reading r [mm]. */
  readonly resolution: number;
  /** Base of an extensometer; default none, for a travel sensor. */
  readonly gaugeLength?: ExtensometerBase | undefined;
}

/** One verified displacement. */
export interface VerifiedDisplacement {
  /** Displacement by the reference [mm]. */
  readonly reference: number;
  /** Largest error of its readings, either way [mm]. */
  readonly error: number;
  /** That over the reference [1]. */
  readonly relativeError: number;
  /** Mean reading from above less mean reading from below [mm]. */
  readonly reversibility?: number | undefined;
  /** One step of the reading over the reference [1]. */
  readonly relativeResolution: number;
  /** Best class that this step reaches; absent where it reaches none. */
  readonly displacementClass?: DisplacementClass | undefined;
  /** The term that stops a better class, or uses most of its limit in the best one. */
  readonly limitedBy: DisplacementTerm;
}

/** What a verification of displacement found. */
export interface DisplacementResult {
  /** Steps as given, with their errors and classes. */
  readonly steps: readonly VerifiedDisplacement[];
  /** Class that every step reaches; absent where one reaches none. */
  readonly displacementClass?: DisplacementClass | undefined;
  /** Displacement at which one step of the reading is a tenth of it, which an offset should be at least [mm]. */
  readonly leastOffset: number;
  /** Error of the base [1], where there is one. */
  readonly gaugeLengthError?: number | undefined;
  /** Doubts. */
  readonly findings: readonly Finding[];
}

const FROM = 'verifyDisplacement';

/** A verification takes two runs of ten displacements (from memory). */
const STEPS = 10;
const RUNS = 2;

const words: Readonly<Record<DisplacementTerm, string>> = { error: 'error', resolution: 'resolution', gaugeLength: 'gauge length' };

/**
 * Verification of a travel sensor or an extensometer by gauge blocks, dial or micrometer: error, reversibility, resolution and class.
 *
 * $$ q = l_i - l_t, \qquad q_{rb} = \frac{l_i - l_t}{l_t}, \qquad |q| \le \max(q_{rb,lim}\, l_t,\ q_{lim}) $$
 *
 * @remarks
 * Limits from memory: class 0.2 ±0.2 % or 0.6 µm, class 0.5 ±0.5 % or 1.5 µm, class 1 ±1 % or 3 µm, class 2 ±2 % or 6 µm of error; resolution
 * half of the share and a third of the length; the base of an extensometer to the same share. Crosshead travel is no extension: the class says
 * how well the sensor reads its own displacement, and frame and grips come on top.
 *
 * @param verification - `steps` with `reference` above 0, ascending, `rising` and `falling` readings; `resolution` above 0; `gaugeLength` above 0 [mm].
 * @returns Errors [mm] and [1], classes and findings.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `not-increasing`, `unknown-option`.
 *
 * @example
 * ```ts
 * const steps = [{ reference: 1, rising: [1.004, 1.006], falling: [1.009] }, { reference: 10, rising: [10.02, 10.03] }];
 * const verified = verifyDisplacement({ steps, resolution: 0.002 });
 * verified.steps[0]?.displacementClass; // => 1
 * verified.steps[1]?.displacementClass; // => 0.5
 * verified.displacementClass; // => 1
 * ```
 *
 * @see ISO 9513, calibration of extensometer systems (limits from memory). Checked in `test/handbook/verification.test.ts`.
 */
export function verifyDisplacement(verification: DisplacementVerification): DisplacementResult {
  requireOptions(FROM, verification, ['steps', 'resolution', 'gaugeLength'], 'verification');
  const given = requireList(FROM, 'verification.steps', verification.steps);
  const resolution = requirePositive(FROM, 'verification.resolution', verification.resolution);
  const { gaugeLength } = verification;
  if (gaugeLength) requireOptions(FROM, gaugeLength, ['nominal', 'measured'], 'verification.gaugeLength');
  const part = (name: 'nominal' | 'measured'): number => requirePositive(FROM, `verification.gaugeLength.${name}`, gaugeLength?.[name]);
  const gaugeLengthError = gaugeLength && part('measured') / part('nominal') - 1;
  let before = 0;
  const steps = given.map((step, k): VerifiedDisplacement => {
    const path = `verification.steps[${k}]`;
    requireOptions(FROM, step, ['reference', 'rising', 'falling'], path);
    const reference = requireFinite(FROM, `${path}.reference`, step.reference);
    if (reference <= before)
      throw new InputError(FROM, `${path}.reference`, k === 0 ? 'not-positive' : 'not-increasing', `must be above ${before}`, reference);
    before = reference;
    const rising = requireColumn(FROM, `${path}.rising`, step.rising);
    const falling = step.falling === undefined ? undefined : requireColumn(FROM, `${path}.falling`, step.falling);
    const errors = [...rising, ...(falling ?? [])].map((one) => one - reference);
    const error = errors.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most));
    const terms: GradedTerm<DisplacementTerm>[] = [
      { name: 'error', value: error, limits: displacementClasses.map(({ share, length }) => Math.max(share * reference, length)) },
      {
        name: 'resolution',
        value: resolution,
        limits: displacementClasses.map(({ resolutionShare, resolution: length }) => Math.max(resolutionShare * reference, length)),
      },
    ];
    if (gaugeLengthError !== undefined)
      terms.push({ name: 'gaugeLength', value: gaugeLengthError, limits: displacementClasses.map(({ base }) => base) });
    const { grade, limitedBy } = gradeTerms(terms);
    const displacementClass = displacementClasses[grade]?.displacementClass;
    return {
      reference,
      error,
      relativeError: error / reference,
      ...(falling ? { reversibility: mean(falling) - mean(rising) } : {}),
      relativeResolution: resolution / reference,
      ...(displacementClass === undefined ? {} : { displacementClass }),
      limitedBy,
    };
  });
  const worst = Math.max(...steps.map(({ displacementClass }) => displacementClass ?? Infinity));
  const findings: Finding[] = [];
  const worse = steps.filter(({ displacementClass }) => displacementClass === undefined || displacementClass > 1);
  const [first] = worse;
  if (first)
    findings.push(
      finding('displacement-class-not-reached', {
        count: worse.length,
        steps: steps.length,
        travel: first.reference,
        term: words[first.limitedBy],
      }),
    );
  const played = steps.reduce((a, b) => (Math.abs(b.reversibility ?? 0) > Math.abs(a.reversibility ?? 0) ? b : a));
  if (Math.abs(played.reversibility ?? 0) > 2 * resolution)
    findings.push(finding('displacement-reversal', { difference: played.reversibility!, travel: played.reference }));
  const runs = Math.min(...given.map(({ rising }) => rising.length));
  if (steps.length < STEPS || runs < RUNS) findings.push(finding('displacement-steps-few', { steps: steps.length, runs }));
  return {
    steps,
    ...(worst < Infinity ? { displacementClass: worst as DisplacementClass } : {}),
    leastOffset: 10 * resolution,
    ...(gaugeLengthError === undefined ? {} : { gaugeLengthError }),
    findings,
  };
}
