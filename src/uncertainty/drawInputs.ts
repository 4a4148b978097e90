import { InputError } from '../base/index.js';
import type { RandomStreams } from '../numeric/index.js';
import type { CheckedInput, Component } from './components.js';
import type { CheckedCorrelations } from './correlations.js';

/** @internal Student's t by Bailey's polar method (Mathematics of Computation 62 (1994) 779): any degrees of freedom, no table. */
function student({ uniform }: RandomStreams, freedom: number): number {
  for (;;) {
    const u = 2 * uniform() - 1;
    const v = 2 * uniform() - 1;
    const w = u * u + v * v;
    if (w > 0 && w < 1) return u * Math.sqrt((freedom * (w ** (-2 / freedom) - 1)) / w);
  }
}

/** @internal A deviation from the estimate, drawn from one source; of few readings by Student's t, as JCGM 101 asks. */
export function drawComponent(
  random: RandomStreams,
  { distribution, standardUncertainty, degreesOfFreedom, halfWidth, top }: Component,
): number {
  if (standardUncertainty === 0) return 0;
  switch (distribution) {
    case 'normal':
      return standardUncertainty * (degreesOfFreedom === Infinity ? random.normal() : student(random, degreesOfFreedom));
    case 'rectangular':
      return halfWidth * (2 * random.uniform() - 1);
    case 'triangular':
      return halfWidth * (random.uniform() + random.uniform() - 1);
    case 'arcsine':
      return halfWidth * Math.sin(2 * Math.PI * random.uniform());
    case 'trapezoidal':
      return halfWidth * (((1 + top) * (2 * random.uniform() - 1) + (1 - top) * (2 * random.uniform() - 1)) / 2);
  }
}

/** @internal Refuses correlations of inputs that are not normal: for other distributions a coefficient does not say how two inputs go together. */
export function requireNormalTies(from: string, inputs: readonly CheckedInput[], { tied }: CheckedCorrelations): void {
  inputs.forEach(({ name, components }, i) => {
    const other = tied[i] === true && components.find(({ distribution }) => distribution !== 'normal');
    if (other)
      throw new InputError(
        from,
        'options.correlations',
        'out-of-range',
        `must be between normal inputs, and ${name} is not`,
        other.distribution,
      );
  });
}

/** @internal Fills in one draw of all inputs. */
export function drawInputs(
  random: RandomStreams,
  inputs: readonly CheckedInput[],
  { factor, tied }: CheckedCorrelations,
  into: Record<string, number>,
  normals: Float64Array,
): void {
  const n = inputs.length;
  const together = tied.includes(true);
  if (together) for (let i = 0; i < n; i += 1) normals[i] = tied[i] === true ? random.normal() : 0;
  for (let i = 0; i < n; i += 1) {
    const { name, value, components, standardUncertainty } = inputs[i]!;
    let deviation = 0;
    if (tied[i] === true) {
      for (let j = 0; j <= i; j += 1) deviation += factor[n * i + j]! * normals[j]!;
      deviation *= standardUncertainty;
    } else for (const one of components) deviation += drawComponent(random, one);
    into[name] = value + deviation;
  }
}
