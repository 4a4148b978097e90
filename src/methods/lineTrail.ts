import type { TrailStep } from '../base/index.js';
import type { TensionNumbers } from './tensionKernel.js';

/** @internal The steps of an elastic line, where there is one. */
export const lineTrail = ({ line, shift }: Pick<TensionNumbers, 'line' | 'shift'>): TrailStep[] =>
  line.ok
    ? [
        { step: 'elastic line fitted', values: { first: line.first, last: line.last, slope: line.slope } },
        { step: 'strain origin moved to where the line meets zero stress', values: { shift } },
      ]
    : [];
