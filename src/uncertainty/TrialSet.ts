import { InputError, requireBoolean, requireFinite, requireObject, requireWhole } from '../base/index.js';

/** What trials gave for one output. */
export interface TrialValues {
  /** Values in the order of their trials, those that failed left out. */
  readonly values: Float64Array;
  /** Trials that gave no number. */
  readonly failed: number;
}

/** Trials of a Monte Carlo run, or a part of them: what one worker hands to another. */
export interface TrialSet {
  /** Seed of the run. */
  readonly seed: number;
  /** Number of the first trial. */
  readonly firstTrial: number;
  /** How many trials. */
  readonly trials: number;
  /** Outputs by name; `value` where the model gives one number. */
  readonly outputs: Readonly<Record<string, TrialValues>>;
}

/** Which trials to run. */
export interface TrialRange {
  /** Seed, a whole number; default 1. */
  readonly seed?: number | undefined;
  /** Number of the first trial, from 0; default 0. */
  readonly firstTrial?: number | undefined;
  /** How many trials. */
  readonly trials?: number | undefined;
}

/** A loop may be told to stop; `AbortSignal` of browsers and Node is one. */
export interface StopSignal {
  /** True from when it should stop. */
  readonly aborted: boolean;
}

/** Streams have distinct starts up to here. */
const MOST = 2 ** 30;

/** @internal Checks seed and range of trials. */
export function requireRange(from: string, range: TrialRange, otherwise: number): Required<{ [K in keyof TrialRange]: number }> {
  requireObject(from, 'options', range);
  const seed = requireFinite(from, 'options.seed', range.seed ?? 1);
  if (!Number.isInteger(seed)) throw new InputError(from, 'options.seed', 'out-of-range', 'must be a whole number', seed);
  const firstTrial = requireWhole(from, 'options.firstTrial', range.firstTrial ?? 0, 0, MOST - 1);
  return { seed, firstTrial, trials: requireWhole(from, 'options.trials', range.trials ?? otherwise, 1, MOST - firstTrial) };
}

/** @internal Checks that something is a set of trials, as `monteCarloTrials` makes it. */
export function requireTrialSet(from: string, path: string, set: TrialSet): TrialSet {
  requireObject(from, path, set);
  requireFinite(from, `${path}.seed`, set.seed);
  requireWhole(from, `${path}.firstTrial`, set.firstTrial, 0, MOST - 1);
  requireWhole(from, `${path}.trials`, set.trials, 1, MOST);
  for (const [name, output] of Object.entries(requireObject(from, `${path}.outputs`, set.outputs) as TrialSet['outputs']))
    if (!(requireObject(from, `${path}.outputs.${name}`, output) as { values?: unknown }).values)
      throw new InputError(from, `${path}.outputs.${name}.values`, 'missing', 'must be the values of the trials', undefined);
  return set;
}

/** @internal Checks a signal to stop, where there is one. */
export function requireSignal(from: string, signal: StopSignal | undefined): StopSignal | undefined {
  if (signal !== undefined) {
    requireObject(from, 'options.signal', signal);
    requireBoolean(from, 'options.signal.aborted', signal.aborted);
  }
  return signal;
}

/** @internal Runs trials one by one and keeps what each gives by name. */
export function collectTrials(
  seed: number,
  firstTrial: number,
  trials: number,
  run: (trial: number, keep: (name: string, value: number | undefined) => void) => void,
): TrialSet {
  const kept = new Map<string, { readonly values: Float64Array; count: number; last: number }>();
  let trial = firstTrial;
  const keep = (name: string, value: number | undefined): void => {
    let output = kept.get(name);
    if (!output) kept.set(name, (output = { values: new Float64Array(trials), count: 0, last: -1 }));
    if (value === undefined || !Number.isFinite(value)) return;
    // what a trial names twice, as an offset that is asked for twice, counts once
    if (output.last !== trial) output.count += 1;
    output.last = trial;
    output.values[output.count - 1] = value;
  };
  for (; trial < firstTrial + trials; trial += 1) run(trial, keep);
  const outputs = [...kept].map(([name, { values, count }]) => [name, { values: values.slice(0, count), failed: trials - count }] as const);
  return { seed, firstTrial, trials, outputs: Object.fromEntries(outputs) };
}
