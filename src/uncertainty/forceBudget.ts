import { InputError, requireNonNegative, requireOptions, requirePositive } from '../base/index.js';
import { forceClasses, type ForceClass } from '../force/index.js';
import type { UncertaintyBudget } from './Budget.js';
import { positiveInput, requireInput, type CheckedInput } from './components.js';
import type { CoverageOptions } from './coverageFactor.js';
import { budgetOf } from './uncertaintyBudget.js';
import type { ExpandedSource, UncertainInput, UncertaintySource } from './UncertaintySource.js';

/** What is known of a force channel. Errors are shares of the force; what is not given counts as exact. */
export interface ForceDoubt {
  /** The force [N], above 0. */
  readonly force: number;
  /** Class of the verification: its limits stand for `accuracy` and `repeatability`, unless these are given. */
  readonly class?: ForceClass | undefined;
  /** Largest error q either way [1]. */
  readonly accuracy?: number | undefined;
  /** Range b of repeated readings, largest less smallest [1]. */
  readonly repeatability?: number | undefined;
  /** Reversibility v either way [1]; only where falling forces are used. */
  readonly reversibility?: number | undefined;
  /** Standard uncertainty of the reference instrument [1]. */
  readonly reference?: number | undefined;
  /** From a calibration certificate instead of class or errors: expanded uncertainty [1] with its coverage factor. */
  readonly certificate?: Pick<ExpandedSource, 'expanded' | 'coverageFactor'> | undefined;
  /** One step of the reading r [N]. */
  readonly resolution?: number | undefined;
  /** Doubt of the zero z either way [N]. */
  readonly zero?: number | undefined;
}

/** Limits of a class: accuracy q either way, repeatability b as a range. */
function limitsOf(grade: ForceClass): readonly [accuracy: number, repeatability: number] {
  const { indicationError, repeatability } = forceClasses.find(({ forceClass }) => forceClass === grade)!;
  return [indicationError, repeatability];
}

const names = ['force', 'class', 'accuracy', 'repeatability', 'reversibility', 'reference', 'certificate', 'resolution', 'zero'];

/** @internal Sources of a class of verification, as shares of the force: limits as rectangular distributions. */
export function classSources(grade: ForceClass): readonly UncertaintySource[] {
  const [accuracy, repeatability] = limitsOf(grade);
  return [
    { halfWidth: accuracy, name: 'accuracy' },
    { halfWidth: repeatability / 2, name: 'repeatability' },
  ];
}

/** @internal Checks a class. */
export function requireForceClass(from: string, path: string, value: unknown): ForceClass {
  const grade = ([0.5, 1, 2, 3] as const).find((one) => one === value);
  if (grade === undefined) throw new InputError(from, path, 'out-of-range', 'must be one of 0.5, 1, 2, 3', value);
  return grade;
}

/** The field of the largest source of the scale. */
function largestOf({ components }: CheckedInput): string {
  const { name } = components.reduce((most, one) => (one.standardUncertainty > most.standardUncertainty ? one : most));
  return name === 'reference instrument' ? 'reference' : name!;
}

/** Sources of the scale of the force, as shares of it. */
function scaleSources(from: string, doubt: ForceDoubt): readonly UncertaintySource[] {
  const grade = doubt.class === undefined ? undefined : limitsOf(requireForceClass(from, 'doubt.class', doubt.class));
  const limit = (name: 'accuracy' | 'repeatability' | 'reversibility' | 'reference', otherwise?: number): number | undefined =>
    doubt[name] === undefined ? otherwise : requireNonNegative(from, `doubt.${name}`, doubt[name]);
  const q = limit('accuracy', grade?.[0]);
  const b = limit('repeatability', grade?.[1]);
  const v = limit('reversibility');
  const reference = limit('reference');
  const { certificate } = doubt;
  if (certificate !== undefined && (q ?? b ?? v ?? reference) !== undefined)
    throw new InputError(from, 'doubt.certificate', 'ambiguous', 'stands instead of class and errors, not beside them', 'both');
  if (certificate !== undefined) requireOptions(from, certificate, ['expanded', 'coverageFactor'], 'doubt.certificate');
  return [
    ...(certificate === undefined ? [] : [{ ...certificate, name: 'certificate' }]),
    ...(q === undefined ? [] : [{ halfWidth: q, name: 'accuracy' }]),
    ...(b === undefined ? [] : [{ halfWidth: b / 2, name: 'repeatability' }]),
    ...(v === undefined ? [] : [{ halfWidth: v, name: 'reversibility' }]),
    ...(reference === undefined ? [] : [{ standardUncertainty: reference, name: 'reference instrument' }]),
  ];
}

/**
 * Uncertainty budget of a force reading, from the class of the verification, its errors, or a calibration certificate.
 *
 * $$ \frac{u(F)}{F} = \sqrt{\left(\frac{q}{\sqrt3}\right)^2 + \left(\frac{b}{2\sqrt3}\right)^2 + \left(\frac{v}{\sqrt3}\right)^2 + \left(\frac{r}{2\sqrt3 F}\right)^2 + \left(\frac{z}{\sqrt3 F}\right)^2 + u_{std}^2} $$
 *
 * @remarks
 * Class limits count as rectangular distributions, since nothing more is known; the repeatability is a full range, so half of it counts.
 * The errors found at a verification, or a certificate's expanded uncertainty, give less. Class 1 alone gives 0.645 %.
 *
 * @param doubt - The force [N] and what is known of its channel.
 * @param options - Coverage.
 * @returns The budget of F [N]; lines of the scale have the sensitivity F.
 * @throws {@link InputError} `missing`, `not-positive`, `out-of-range`, `unknown-option`; `ambiguous` for a certificate beside a class or
 * errors; `empty` where nothing is known.
 *
 * @example
 * ```ts
 * forceBudget({ force: 22619, class: 1, reference: 0.001 }).relativeStandardUncertainty; // => 0.006532
 * ```
 *
 * @see ISO 7500-1, classes of machine (limits from memory); JCGM 100:2008. Checked in `test/handbook/uncertainty.test.ts`.
 */
export function forceBudget(doubt: ForceDoubt, options: CoverageOptions = {}): UncertaintyBudget {
  const from = 'forceBudget';
  requireOptions(from, doubt, names, 'doubt');
  requireOptions(from, options, ['coverage', 'coverageFactor']);
  const force = requirePositive(from, 'doubt.force', doubt.force);
  const scale = scaleSources(from, doubt);
  const step = doubt.resolution === undefined ? undefined : requireNonNegative(from, 'doubt.resolution', doubt.resolution);
  const zero = doubt.zero === undefined ? undefined : requireNonNegative(from, 'doubt.zero', doubt.zero);
  const given: Readonly<Record<string, UncertainInput>> = {
    ...(scale.length > 0 ? { scale: { value: 1, unit: '1', uncertainty: scale } } : {}),
    ...(step === undefined ? {} : { resolution: { value: 0, unit: 'N', uncertainty: { halfWidth: step / 2 } } }),
    ...(zero === undefined ? {} : { zero: { value: 0, unit: 'N', uncertainty: { halfWidth: zero } } }),
  };
  const inputs = Object.entries(given).map(([name, input]) => {
    const checked = requireInput(from, `doubt.${name}`, name, input);
    return name === 'scale' ? positiveInput(from, `doubt.${largestOf(checked)}`, checked) : checked;
  });
  if (inputs.length === 0) throw new InputError(from, 'doubt', 'empty', 'must say something of the channel', 'the force alone');
  return budgetOf(from, ({ scale: k = 1, resolution = 0, zero: z = 0 }) => force * k + resolution + z, inputs, {
    ...options,
    symbol: 'F',
    unit: 'N',
  });
}
