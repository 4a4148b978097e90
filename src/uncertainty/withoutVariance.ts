import type { CheckedInput } from './components.js';
import type { TrialDistribution } from './trialDistribution.js';

/** Student's t has a variance above 2 degrees of freedom, so of more than 3 readings, and a mean above 1 (JCGM 101, 6.4.9). */
const VARIANCE = 2;
const MEAN = 1;

/** @internal An input whose trials have no variance. */
export interface NoVariance {
  readonly input: string;
  readonly freedom: number;
}

/** @internal The input that is drawn from Student's t with the fewest degrees of freedom, where these are too few for a variance. */
export function withoutVariance(inputs: readonly CheckedInput[], tied: readonly boolean[] = []): NoVariance | undefined {
  return inputs
    .filter((_, i) => tied[i] !== true)
    .flatMap(({ name, components }) =>
      components
        .filter((one) => one.distribution === 'normal' && one.standardUncertainty > 0 && one.degreesOfFreedom <= VARIANCE)
        .map(({ degreesOfFreedom }) => ({ input: name, freedom: degreesOfFreedom })),
    )
    .sort((a, b) => a.freedom - b.freedom)[0];
}

/** @internal A distribution with only the moments that exist: those that do not converge with more trials are left out. */
export function existingMoments(distribution: TrialDistribution, none: NoVariance | undefined): TrialDistribution {
  if (none === undefined) return distribution;
  const unsettled: readonly string[] = [
    'standardUncertainty',
    'skewness',
    'meanError',
    'uncertaintyError',
    ...(none.freedom > MEAN ? [] : ['mean']),
  ];
  return Object.fromEntries(Object.entries(distribution).filter(([name]) => !unsettled.includes(name))) as unknown as TrialDistribution;
}
