import {
  InputError,
  requireColumn,
  requireList,
  requireNonNegative,
  requireOneOf,
  requireOptions,
  requirePositive,
} from '../base/index.js';
import { mean, sampleDeviation } from '../numeric/index.js';
import { forceClasses, LEAST_RUNS, type ForceClass } from './forceClasses.js';
import type { ForceTerm, ForceVerification, ForceVerificationResult, VerifiedStep } from './ForceVerification.js';
import { gradeTerms, type GradedTerm } from './gradeTerms.js';
import { requireReference } from './requireReference.js';
import { verificationFindings } from './verificationFindings.js';
import { verifiedRanges } from './verifiedRanges.js';

const FROM = 'verifyForce';
const limitsOf = (name: ForceTerm): readonly number[] => forceClasses.map((one) => one[name]);

/** A step beyond the range by more than this share of it is not of this range: mostly kN beside N (common practice). */
const BEYOND = 0.1;

/** Standard uncertainty of the indication error [1]: scatter of the mean of the runs, one step of the reading, the reference instrument. */
function errorUncertainty(rising: Float64Array, force: number, resolution: number, reference: number): number {
  return Math.hypot(sampleDeviation(rising) / Math.sqrt(rising.length) / force, resolution / force / Math.sqrt(12), reference);
}

/** Terms of one step: q, b, v by the definitions for either force that was set. */
function stepTerms(force: number, rising: Float64Array, falling: Float64Array | undefined, held: 'true' | 'indicated') {
  const meanReading = mean(rising);
  const trueForce = held === 'true' ? force : meanReading;
  const pairs = [...(falling ?? [])].map((down, run) => (held === 'true' ? down - rising[run]! : rising[run]! - down));
  const largest = pairs.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most), 0);
  return {
    indicationError: ((held === 'true' ? meanReading : force) - trueForce) / trueForce,
    repeatability: (Math.max(...rising) - Math.min(...rising)) / trueForce,
    ...(falling ? { reversibility: largest / trueForce, friction: -mean(pairs) / 2 } : {}),
  };
}

/**
 * Verification of a force-measuring system by rising and falling runs against a reference instrument: terms and class of each step,
 * what limits it, and over which forces each class holds.
 *
 * $$ q = \frac{F_i - F}{F}, \quad b = \frac{F_{i,max} - F_{i,min}}{F}, \quad v = \frac{F'_i - F_i}{F}, \quad f_0 = \frac{F_{i0}}{F_N}, \quad a = \frac{r}{F}, \quad u^2(q) = \frac{s_q^2}{n} + \frac{a^2}{12} + u_{ref}^2 $$
 *
 * @remarks
 * As written with the true force $F$ held and the indicator $F_i$ read; with the indicated force held the reference is read, $q = (F_i - \bar F)/\bar F$,
 * $b = (F_{max} - F_{min})/\bar F$, $v = (F - F')/\bar F$, so that friction makes v negative either way. q is of the mean of the rising runs; each
 * falling reading is compared with the rising one of its run. A term that exceeds a limit by 1e-9 of it or less lies on it, and values on a
 * limit are in. With the reference instrument's uncertainty each step has $u(q)$ from its n rising runs; with three runs its first part has two degrees of freedom. The classes judge the runs as given: the reference instrument's own class, temperature, exercise of the frame and preloads are
 * the verifier's to see to. A class is claimed only by whoever is entitled to.
 *
 * @param verification - `steps` with `force` [N] above 0, ascending, `rising` (three runs at least) and `falling` [N] above 0; `range`, `resolution` [N] above 0;
 * `fluctuation` [N] of 0 or more; `zeros` [N]; `reference` [1] of 0 or more and below 0.1; `held`. No step lies beyond the range by more than a tenth of it.
 * @returns Terms as ratios, classes, ranges and findings.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `too-few`, `not-finite`, `not-positive`, `not-increasing`, `out-of-range`, `unequal-lengths`
 * (more falling runs than rising ones, or a number of runs that changes), `unknown-option`.
 *
 * @example
 * ```ts
 * const steps = [{ force: 10000, rising: [10050, 10070, 10020], falling: [9930] }];
 * const { forceClass, limitedBy, reversibility } = verifyForce({ steps, range: 25000, resolution: 6 }).steps[0]!;
 * forceClass; // => 1
 * limitedBy; // => 'reversibility'
 * reversibility; // => -0.0120
 * ```
 *
 * @see ISO 7500-1, calibration and verification of the force-measuring system (limits from memory). Checked in `test/handbook/verification.test.ts`.
 */
export function verifyForce(verification: ForceVerification): ForceVerificationResult {
  const known = ['steps', 'range', 'resolution', 'fluctuation', 'zeros', 'reference', 'held'];
  requireOptions(FROM, verification, known, 'verification');
  const given = requireList(FROM, 'verification.steps', verification.steps);
  const range = requirePositive(FROM, 'verification.range', verification.range);
  const increment = requirePositive(FROM, 'verification.resolution', verification.resolution);
  const fluctuation = requireNonNegative(FROM, 'verification.fluctuation', verification.fluctuation ?? 0);
  const zeros = verification.zeros === undefined ? undefined : requireColumn(FROM, 'verification.zeros', verification.zeros);
  const reference =
    verification.reference === undefined ? undefined : requireReference(FROM, 'verification.reference', verification.reference);
  const held = requireOneOf(FROM, 'verification.held', verification.held ?? 'true', ['true', 'indicated']);
  const resolution = fluctuation > increment ? fluctuation / 2 + increment : increment;
  const zeroError = zeros?.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most), 0);
  let runs: number | undefined;
  let before = 0;
  const steps = given.map((step, k): VerifiedStep => {
    const path = `verification.steps[${k}]`;
    requireOptions(FROM, step, ['force', 'rising', 'falling'], path);
    const force = requirePositive(FROM, `${path}.force`, step.force);
    if (force <= before) throw new InputError(FROM, `${path}.force`, 'not-increasing', 'must be above that of the step before', force);
    if (force > range * (1 + BEYOND))
      throw new InputError(FROM, `${path}.force`, 'out-of-range', `must be in N and lie within the range (${range} N)`, force);
    before = force;
    const rising = requireColumn(FROM, `${path}.rising`, step.rising, {
      least: LEAST_RUNS,
      positive: true,
      ...(runs === undefined ? {} : { length: runs }),
    });
    runs = rising.length;
    const falling = step.falling === undefined ? undefined : requireColumn(FROM, `${path}.falling`, step.falling, { positive: true });
    if (falling && falling.length > runs)
      throw new InputError(
        FROM,
        `${path}.falling`,
        'unequal-lengths',
        `must have at most one reading for each of the ${runs} runs`,
        falling.length,
      );
    const terms = {
      ...stepTerms(force, rising, falling, held),
      ...(reference === undefined ? {} : { standardUncertainty: errorUncertainty(rising, force, resolution, reference) }),
      ...(zeroError === undefined ? {} : { zeroError: zeroError / range }),
      resolution: resolution / force,
    };
    const names = ['indicationError', 'repeatability', 'reversibility', 'zeroError', 'resolution'] as const;
    const graded = names.flatMap((name): GradedTerm<ForceTerm>[] => {
      const value = terms[name];
      return value === undefined ? [] : [{ name, value, limits: limitsOf(name) }];
    });
    const { grade, limitedBy } = gradeTerms(graded);
    const { forceClass } = forceClasses[grade] ?? {};
    return { force, ...terms, ...(forceClass === undefined ? {} : { forceClass }), limitedBy };
  });
  const ranges = verifiedRanges(steps, resolution);
  const whole = steps.every((step) => step.forceClass !== undefined) ? Math.max(...steps.map((step) => step.forceClass!)) : undefined;
  return {
    held,
    steps,
    ...(whole === undefined ? {} : { forceClass: whole as ForceClass }),
    ranges,
    resolution,
    fallingVerified: steps.every(({ reversibility }) => reversibility !== undefined),
    findings: verificationFindings(steps, ranges, range, resolution),
  };
}
