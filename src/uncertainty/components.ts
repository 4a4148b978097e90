import {
  InputError,
  requireBetween,
  requireColumn,
  requireFinite,
  requireNonNegative,
  requireObject,
  requireOneOf,
  requireOptions,
  requirePositive,
  requireText,
  quoted,
} from '../base/index.js';
import { mean, sampleDeviation } from '../numeric/index.js';
import type {
  StatedValue,
  UncertainInput,
  UncertainQuantity,
  UncertaintyDistribution,
  UncertaintySource,
  UncertaintySources,
} from './UncertaintySource.js';

/** @internal A source after its checks: what a budget and a Monte Carlo trial both start from. */
export interface Component {
  readonly name: string | undefined;
  readonly type: 'A' | 'B';
  readonly distribution: UncertaintyDistribution;
  readonly standardUncertainty: number;
  /** Infinity where the uncertainty is known for sure. */
  readonly degreesOfFreedom: number;
  readonly halfWidth: number;
  readonly top: number;
  /** Mean of readings, where the source has them. */
  readonly mean: number | undefined;
}

/** @internal An input after its checks. */
export interface CheckedInput {
  readonly name: string;
  readonly value: number;
  readonly unit: string | undefined;
  readonly components: readonly Component[];
  readonly standardUncertainty: number;
  /** True of what is above 0 by its nature: a scale, a length, an area. */
  readonly positive?: boolean;
}

const distributions = ['normal', 'rectangular', 'triangular', 'arcsine', 'trapezoidal'] as const;

/** Half-width over standard deviation. */
const divisorOf = (distribution: UncertaintyDistribution, top: number, given: number): number =>
  ({ normal: given, rectangular: Math.sqrt(3), triangular: Math.sqrt(6), arcsine: Math.SQRT2, trapezoidal: Math.sqrt(6 / (1 + top ** 2)) })[
    distribution
  ];

const kinds = {
  readings: ['readings', 'name'],
  standardDeviation: ['standardDeviation', 'count', 'degreesOfFreedom', 'name'],
  halfWidth: ['halfWidth', 'distribution', 'top', 'divisor', 'degreesOfFreedom', 'name'],
  expanded: ['expanded', 'coverageFactor', 'degreesOfFreedom', 'name'],
  standardUncertainty: ['standardUncertainty', 'degreesOfFreedom', 'type', 'name'],
} as const;

const plain = { distribution: 'normal', halfWidth: 0, top: 0, mean: undefined } as const;

/** One source as a component. */
function componentOf(from: string, path: string, source: UncertaintySource): Component {
  if (typeof source === 'number')
    return {
      ...plain,
      name: undefined,
      type: 'B',
      standardUncertainty: requireNonNegative(from, path, source),
      degreesOfFreedom: Infinity,
    };
  requireObject(from, path, source);
  const kind = (Object.keys(kinds) as (keyof typeof kinds)[]).find((one) => one in source);
  if (!kind) throw new InputError(from, path, 'missing', `must have one of ${quoted(Object.keys(kinds))}`, Object.keys(source).join(', '));
  requireOptions(from, source, kinds[kind], path);
  const { name } = source;
  if (name !== undefined) requireText(from, `${path}.name`, name);
  // infinite ones are those of a source that does not name them: so they may be left out, and JSON can hold every source
  const freedom = (otherwise: number): number => {
    const given = 'degreesOfFreedom' in source ? source.degreesOfFreedom : undefined;
    return given === undefined || given === otherwise ? otherwise : requirePositive(from, `${path}.degreesOfFreedom`, given);
  };
  if ('readings' in source) {
    const readings = requireColumn(from, `${path}.readings`, source.readings, { least: 2 });
    const n = readings.length;
    const standardUncertainty = sampleDeviation(readings) / Math.sqrt(n);
    return { ...plain, name, type: 'A', standardUncertainty, degreesOfFreedom: n - 1, mean: mean(readings) };
  }
  if ('standardDeviation' in source) {
    const s = requireNonNegative(from, `${path}.standardDeviation`, source.standardDeviation);
    const count = requireBetween(from, `${path}.count`, source.count, 1, Number.MAX_SAFE_INTEGER);
    if (count === 1 && source.degreesOfFreedom === undefined)
      throw new InputError(from, `${path}.count`, 'too-few', 'must be 2 or more where degreesOfFreedom is not given', count);
    return { ...plain, name, type: 'A', standardUncertainty: s / Math.sqrt(count), degreesOfFreedom: freedom(count - 1) };
  }
  if ('halfWidth' in source) {
    const halfWidth = requireNonNegative(from, `${path}.halfWidth`, source.halfWidth);
    const distribution = requireOneOf(from, `${path}.distribution`, source.distribution ?? 'rectangular', distributions);
    const only = (field: 'top' | 'divisor', of: UncertaintyDistribution): void => {
      if (source[field] !== undefined && distribution !== of)
        throw new InputError(from, `${path}.${field}`, 'unknown-option', `goes with ${of} alone`, source[field]);
    };
    only('top', 'trapezoidal');
    only('divisor', 'normal');
    const top = distribution === 'trapezoidal' ? requireBetween(from, `${path}.top`, source.top, 0, 1) : 0;
    const divisor = requirePositive(from, `${path}.divisor`, source.divisor ?? 2);
    return {
      name,
      type: 'B',
      distribution,
      standardUncertainty: halfWidth / divisorOf(distribution, top, divisor),
      degreesOfFreedom: freedom(Infinity),
      halfWidth,
      top,
      mean: undefined,
    };
  }
  if ('expanded' in source) {
    const expanded = requireNonNegative(from, `${path}.expanded`, source.expanded);
    const k = requirePositive(from, `${path}.coverageFactor`, source.coverageFactor ?? 2);
    return { ...plain, name, type: 'B', standardUncertainty: expanded / k, degreesOfFreedom: freedom(Infinity) };
  }
  return {
    ...plain,
    name,
    type: requireOneOf(from, `${path}.type`, source.type ?? 'B', ['A', 'B']),
    standardUncertainty: requireNonNegative(from, `${path}.standardUncertainty`, source.standardUncertainty),
    degreesOfFreedom: freedom(Infinity),
  };
}

/** @internal Checks one source or several. */
export function requireSources(from: string, path: string, sources: UncertaintySources): readonly Component[] {
  if (!Array.isArray(sources)) return [componentOf(from, path, sources as UncertaintySource)];
  if (sources.length === 0) throw new InputError(from, path, 'empty', 'must have at least one source', 0);
  return (sources as readonly UncertaintySource[]).map((one, i) => componentOf(from, `${path}[${i}]`, one));
}

/** A number is exact; a value with its uncertainty is one source. */
function sourced(from: string, path: string, input: UncertainQuantity): UncertainInput {
  if (typeof input === 'number') return { value: input, uncertainty: 0 };
  requireObject(from, path, input);
  if (!('standardUncertainty' in input)) {
    requireOptions(from, input, ['value', 'uncertainty', 'unit'], path);
    const { uncertainty } = input as Partial<UncertainInput>;
    if (uncertainty === undefined) throw new InputError(from, `${path}.uncertainty`, 'missing', 'must be a source or several', undefined);
    return input as UncertainInput;
  }
  if ('uncertainty' in input)
    throw new InputError(from, `${path}.uncertainty`, 'ambiguous', 'must not be given beside standardUncertainty', 'both');
  const { value, standardUncertainty, degreesOfFreedom, unit } = input satisfies StatedValue;
  return {
    value,
    uncertainty: { standardUncertainty: requireFinite(from, `${path}.standardUncertainty`, standardUncertainty), degreesOfFreedom },
    unit,
  };
}

/** @internal Checks an input. */
export function requireInput(from: string, path: string, name: string, input: UncertainQuantity): CheckedInput {
  const { value, uncertainty, unit } = sourced(from, path, input);
  const components = requireSources(from, `${path}.uncertainty`, uncertainty);
  return {
    name,
    value: requireFinite(from, `${path}.value`, value ?? components[0]!.mean),
    unit,
    components,
    standardUncertainty: Math.hypot(...components.map((one) => one.standardUncertainty)),
  };
}

/**
 * @internal An input that is above 0 by its nature. A doubt as large as the value leaves nothing of it: per cent, or another unit, was meant; a budget says so from a tenth of the value on.
 */
export function positiveInput(from: string, path: string, input: CheckedInput): CheckedInput {
  const { value, standardUncertainty: u } = input;
  if (u >= value)
    throw new InputError(
      from,
      path,
      'out-of-range',
      `must be a standard uncertainty below the value itself (${value}): relative ones are fractions (0.02 is 2 %), lengths are in mm`,
      u,
    );
  return { ...input, positive: true };
}

/** @internal Checks the inputs of a model, at least one. */
export function requireInputs(from: string, inputs: Readonly<Record<string, UncertainQuantity>>): readonly CheckedInput[] {
  const checked = Object.entries(requireObject(from, 'inputs', inputs) as typeof inputs).map(([name, input]) =>
    requireInput(from, `inputs.${name}`, name, input),
  );
  if (checked.length === 0) throw new InputError(from, 'inputs', 'empty', 'must have at least one input', 0);
  return checked;
}

/** @internal Checks the inputs of a ready model: known names, those that it needs, values above 0. */
export function requireNamedInputs(
  from: string,
  given: object,
  needed: readonly string[],
  possible: readonly string[] = [],
): readonly CheckedInput[] {
  requireOptions(from, given, [...needed, ...possible], 'inputs');
  const inputs = given as Readonly<Record<string, UncertainQuantity | undefined>>;
  return [...needed, ...possible.filter((name) => inputs[name] !== undefined)].map((name) => {
    const input = inputs[name];
    if (input === undefined) throw new InputError(from, `inputs.${name}`, 'missing', 'must be given', undefined);
    const checked = requireInput(from, `inputs.${name}`, name, input);
    requirePositive(from, `inputs.${name}.value`, checked.value);
    return positiveInput(from, `inputs.${name}`, checked);
  });
}
