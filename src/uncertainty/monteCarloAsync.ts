import { requireFunction, requireObject, type Outcome } from '../base/index.js';
import { monteCarloRun, type MonteCarloOptions, type MonteCarloResult } from './monteCarlo.js';
import type { UncertainInputs } from './UncertaintySource.js';

/** Options of {@link monteCarloAsync}. */
export interface AsyncMonteCarloOptions extends MonteCarloOptions {
  /** Awaited after each block of trials. A promise that a timer resolves lets pages draw and signals arrive; default an empty one, which lets only other promises. */
  readonly pause?: (() => Promise<unknown>) | undefined;
}

/**
 * The same as `monteCarlo`, with a pause after each block of trials, so that others have their turn and a signal can arrive.
 *
 * $$ y_r = f(x_{1,r}, \dots, x_{N,r}) $$
 *
 * @remarks
 * Give `pause: () => new Promise((go) => setTimeout(go))` where an `AbortSignal` is set by a timer or a button: awaiting alone lets
 * neither run. The result is that of `monteCarlo` to the last bit.
 *
 * @param model - As of `monteCarlo`.
 * @param inputs - As of `monteCarlo`.
 * @param options - As of `monteCarlo`, and `pause`.
 * @returns A promise of the distribution, or of `too-few-trials`.
 * @throws {@link InputError} As `monteCarlo`, as a promise that is rejected.
 *
 * @example
 * ```ts
 * const found = await monteCarloAsync(({ x }) => 2 * x, { x: { value: 5, uncertainty: 0 } }, { trials: 10 });
 * required(found).mean; // => 10
 * ```
 *
 * @see JCGM 101:2008, Monte Carlo method. Checked in `test/uncertainty/monteCarlo.test.ts`.
 */
export async function monteCarloAsync<Name extends string>(
  model: (inputs: Readonly<Record<Name, number>>) => number,
  inputs: UncertainInputs<Name>,
  options: AsyncMonteCarloOptions = {},
): Promise<Outcome<MonteCarloResult, 'too-few-trials'>> {
  const { pause } = requireObject('monteCarloAsync', 'options', options) as AsyncMonteCarloOptions;
  if (pause !== undefined) requireFunction('monteCarloAsync', 'options.pause', pause);
  const run = monteCarloRun('monteCarloAsync', model, inputs, options, ['pause']);
  for (;;) {
    const step = run.next();
    if (step.done === true) return step.value;
    await pause?.();
  }
}
