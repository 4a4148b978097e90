import { InputError } from '../base/index.js';
import type { CheckedInput } from './components.js';

/** @internal A model as it is called: inputs by name. */
export type Model = (inputs: Readonly<Record<string, number>>) => number;

/** @internal How a model answers a change of one input. */
export interface Sensitivity {
  /** Partial derivative at the estimates. */
  readonly slope: number;
  /** Second-order part over one standard uncertainty: ½ f'' u². */
  readonly bend: number;
}

/** Step over the standard uncertainty, and the least step as a share of the value, below which digits are lost. */
const SHARE = 1 / 8;
const LEAST = 1e-4;

/**
 * @internal Partial derivative of a model by central differences at two steps, their first error cancelled (Richardson): of the
 * order of step⁴, with a step of an eighth of the uncertainty.
 */
export function sensitivity(from: string, model: Model, inputs: readonly CheckedInput[], at: CheckedInput, centre: number): Sensitivity {
  const estimates = Object.fromEntries(inputs.map(({ name, value }) => [name, value]));
  const u = at.standardUncertainty;
  const call = (x: number): number => {
    const y = model({ ...estimates, [at.name]: x });
    if (!Number.isFinite(y)) throw new InputError(from, 'model', 'not-finite', `must give a number at ${at.name} = ${x}`, y);
    return y;
  };
  const step = Math.max(u * SHARE, LEAST * Math.abs(at.value)) || LEAST;
  const difference = (h: number): number => (call(at.value + h) - call(at.value - h)) / (2 * h);
  const slope = (4 * difference(step / 2) - difference(step)) / 3;
  const bend = u > 0 ? (call(at.value + u) + call(at.value - u) - 2 * centre) / 2 : 0;
  return { slope, bend };
}
