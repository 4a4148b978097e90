import {
  failure,
  InputError,
  requireColumn,
  requireFinite,
  requireList,
  requireNonNegative,
  requireOneOf,
  requireOptions,
  requirePositive,
  success,
  type Outcome,
} from '../../base/index.js';
import { complianceFindings, type CheckedPull } from './complianceFindings.js';
import { fitComplianceKernel, type ComplianceShape, type ComplianceTask } from './complianceFit.js';
import { complianceUncertainty, fittedMotion } from './complianceUncertainty.js';
import { requireConditions } from './frameTravel.js';
import type { ComplianceOptions, CompliancePull, ComplianceReason, FittedCompliance } from './FittedCompliance.js';

const FROM = 'fitCompliance';

function requirePull(pull: CompliancePull, k: number): CheckedPull {
  const path = `pulls[${k}]`;
  requireOptions(FROM, pull, ['force', 'travel', 'effectiveLength', 'area', 'relativeUncertainty'], path);
  const force = requireColumn(FROM, `${path}.force`, pull.force, { least: 2 });
  return {
    force,
    travel: requireColumn(FROM, `${path}.travel`, pull.travel, { length: force.length }),
    piece: requirePositive(FROM, `${path}.effectiveLength`, pull.effectiveLength) / requirePositive(FROM, `${path}.area`, pull.area),
    doubt: requireNonNegative(FROM, `${path}.relativeUncertainty`, pull.relativeUncertainty ?? 0),
  };
}

/** Points of a table, or the forces that a result names. */
function pointsOf(points: ComplianceOptions['points'], shape: ComplianceShape, low: number, high: number): Float64Array {
  const evenly = (count: number) => Float64Array.from({ length: count }, (_, k) => low + ((high - low) * k) / (count - 1));
  if (points === undefined) return evenly(shape === 'table' ? 9 : 11);
  if (typeof points === 'number') {
    if (!Number.isInteger(points) || points < 2 || points > 100)
      throw new InputError(FROM, 'options.points', 'out-of-range', 'must be a whole number from 2 to 100, or forces', points);
    return evenly(points);
  }
  const forces = requireColumn(FROM, 'options.points', points, { least: 2 });
  for (let k = 1; k < forces.length; k += 1)
    if (forces[k]! <= forces[k - 1]!)
      throw new InputError(FROM, `options.points[${k}]`, 'not-increasing', 'must be above the one before', forces[k]);
  // they rise, so the first or the last lies outside
  const out = forces[0]! < low ? 0 : forces.length - 1;
  if (forces[out]! < low || forces[out]! > high)
    throw new InputError(
      FROM,
      `options.points[${out}]`,
      'out-of-range',
      `must lie within the forces of all pulls (${low} to ${high} N)`,
      forces[out],
    );
  return Float64Array.from(forces);
}

/**
 * Compliance of a frame from elastic pulls: of a stiff blank or a piece of known modulus, or of two or more lengths of one material.
 *
 * $$ x = x_k + \delta_f(F) + \frac{F}{E} \left( \frac{L_{eff}}{S_0} \right)_k, \qquad \delta_f = C_f F,\ \text{a table, or}\ a F^b $$
 *
 * @remarks
 * Least squares of the travel. With `modulus` the pieces' own extension is taken off (a stiff blank has one too: left in, it makes E too high); without it pieces
 * of different length over area find the modulus as well. Each pull has an origin of its own, so only the motion from the lowest force counts. Give
 * rising forces, every pull by itself; where forces fall in the tests, measure them apart. The uncertainty holds scatter (widened where neighbouring
 * residuals are alike, as they are where the shape does not fit), and what lengths, areas and modulus carry in; not that of the force.
 *
 * @param pulls - `force` [N], `travel` [mm], `effectiveLength` [mm], `area` [mm²] of each, elastic only.
 * @param options - `shape`, `modulus` [MPa] with `modulusUncertainty` of it, relative and below 1, `from` and `to` [N], `points` of a table; `grips` and `direction` go into the result.
 * @returns Compliance with range and standard uncertainty; or `too-few-points`, `not-determined` (one length and no modulus, too narrow a range), `not-rising`
 * (the pieces alone would be softer than measured).
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `too-few`, `not-finite`, `not-positive`, `unequal-lengths`, `not-increasing`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const force = Array.from({ length: 50 }, (_, i) => 200 * (i + 1));
 * const pull = (effectiveLength: number) => ({
 *   force, effectiveLength, area: 50, travel: force.map((F) => F * (2e-5 + effectiveLength / (210000 * 50))),
 * });
 * const fitted = required(fitCompliance([pull(40), pull(80)]));
 * frameTravel(fitted.compliance, 10000); // => 0.2000
 * fitted.modulus; // => 210000.0
 * ```
 *
 * @see Springs in series. Checked in `test/handbook/compliance.test.ts`.
 */
export function fitCompliance(
  pulls: readonly CompliancePull[],
  options: ComplianceOptions = {},
): Outcome<FittedCompliance, ComplianceReason> {
  const given = requireList(FROM, 'pulls', pulls).map(requirePull);
  requireOptions(FROM, options, ['shape', 'modulus', 'modulusUncertainty', 'from', 'to', 'points', 'grips', 'direction']);
  const conditions = requireConditions(FROM, 'options', options);
  const shape = requireOneOf(FROM, 'options.shape', options.shape ?? 'constant', ['constant', 'table', 'power']);
  const softness = options.modulus === undefined ? undefined : 1 / requirePositive(FROM, 'options.modulus', options.modulus);
  const modulusDoubt = requireNonNegative(FROM, 'options.modulusUncertainty', options.modulusUncertainty ?? 0);
  // as large as the modulus itself: the uncertainty in MPa was meant
  if (modulusDoubt >= 1)
    throw new InputError(
      FROM,
      'options.modulusUncertainty',
      'out-of-range',
      'is relative and must be below 1 (0.02 is 2 % of the modulus)',
      modulusDoubt,
    );
  const limit = (name: 'from' | 'to', otherwise: number): number =>
    options[name] === undefined ? otherwise : requireFinite(FROM, `options.${name}`, options[name]);
  const extreme = (pick: (a: number, b: number) => number, of: Float64Array): number => of.reduce((a, b) => pick(a, b));
  const from = limit('from', Math.max(...given.map(({ force }) => extreme(Math.min, force))));
  const to = limit('to', Math.min(...given.map(({ force }) => extreme(Math.max, force))));
  if (!(from < to) || to <= 0) return failure('not-determined', `the pulls share no range of pulling force (${from} to ${to} N)`);
  const grid = pointsOf(options.points, shape, from, to);
  const [low, high] = [grid[0]!, grid[grid.length - 1]!];

  const kept = given.map(({ force }) => [...force.keys()].filter((i) => force[i]! >= low && force[i]! <= high));
  const gather = (of: (pull: number, sample: number) => number): Float64Array =>
    Float64Array.from(kept.flatMap((samples, k) => samples.map((i) => of(k, i))));
  const task: ComplianceTask = {
    shape,
    f: gather((k, i) => given[k]!.force[i]! / high),
    travel: gather((k, i) => given[k]!.travel[i]!),
    pull: Uint16Array.from(kept.flatMap((samples, k) => samples.map(() => k))),
    pieces: given.map(({ piece }) => piece * high),
    softness,
    knots: grid.map((F) => F / high),
  };
  const unknowns = given.length + (softness === undefined ? 1 : 0) + { constant: 1, power: 2, table: grid.length - 1 }[shape];
  if (task.f.length <= unknowns)
    return failure('too-few-points', `${task.f.length} samples do not determine ${unknowns} numbers with their uncertainty`);
  const fit = fitComplianceKernel(task);
  if (!fit)
    return failure('not-determined', 'the samples do not tell the frame from the pieces: give a modulus, other lengths or a wider range');
  const f = task.knots;
  const travel = fittedMotion(fit, f);
  const top = travel[travel.length - 1]!;
  if (!travel.every((one, k) => k === 0 || one >= travel[k - 1]!) || !(top > 0))
    return failure('not-rising', 'the motion of the frame does not rise with the force: the pieces alone would be softer than measured');
  const { standardUncertainty, widening } = complianceUncertainty(
    task,
    fit,
    given.map(({ doubt }) => doubt),
    modulusDoubt,
  );
  const relativeStandardUncertainty = standardUncertainty[standardUncertainty.length - 1]! / top;
  const samples = task.f.length;
  const variance = fit.residualSumOfSquares / (samples - unknowns);
  const range = [low, high] as const;
  const about = { range, relativeStandardUncertainty, ...conditions };
  const size = fit.parameters[fit.first]!;
  const found = softness ?? fit.parameters[given.length]!;
  if (!(found > 0)) return failure('not-rising', 'longer pieces do not stretch more than shorter ones');
  return success({
    shape,
    compliance:
      shape === 'constant'
        ? { constant: size / high, ...about }
        : shape === 'power'
          ? { coefficient: size / high ** fit.exponent, exponent: fit.exponent, ...about }
          : { force: grid, travel, relativeStandardUncertainty, ...conditions },
    range,
    force: grid,
    travel,
    standardUncertainty,
    relativeStandardUncertainty,
    ...(softness === undefined
      ? {
          modulus: 1 / found,
          modulusStandardError: Math.sqrt(widening * variance * fit.inverse[given.length]![given.length]!) / found ** 2,
        }
      : {}),
    residualStandardDeviation: Math.sqrt(variance),
    samples,
    findings: complianceFindings(given, task, fit, found, { range, relativeStandardUncertainty, widening }),
  });
}
