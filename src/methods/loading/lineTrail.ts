import { trailStep, type TrailStep } from '../../base/index.js';
import type { TensionNumbers } from './TensionNumbers.js';

/** @internal The steps of an elastic line, where there is one. */
export const lineTrail = ({ line, shift }: Pick<TensionNumbers, 'line' | 'shift'>): TrailStep[] =>
  line.ok
    ? [trailStep('line-fitted', { first: line.first, last: line.last, slope: line.slope }), trailStep('origin-moved', { shift })]
    : [];
