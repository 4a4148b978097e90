import { PROOF_OFFSET } from '../base/index.js';
import type { ExerciseTest } from './Exercise.js';
import { breakOf, broken, maximumOf, parallelLengthOf, proofAt, walk } from './walk.js';
import type { SlipRoute } from './WrongRoute.js';

const overGauge = (test: ExerciseTest) => walk(test, { length: test.piece.gaugeLength });
const elongation = (test: ExerciseTest): number => broken(test).length / test.piece.gaugeLength - 1;

/** @internal Slips of slopes, extensions and readings of the broken piece that are no mere factor. */
export const extensionRoutes: readonly SlipRoute[] = [
  {
    key: 'frame-left-in',
    symbols: ['E', 'Agt'],
    value: (test, symbol) => {
      const walked = walk(test, { compliance: 0 });
      return symbol === 'E' ? walked.line.slope : maximumOf(walked).extension;
    },
  },
  {
    key: 'frame-taken-out',
    symbols: ['mE'],
    value: (test) => walk(test).line.slope,
  },
  {
    key: 'gauge-for-parallel-length',
    symbols: ['mE', 'E', 'Agt', 'Rp0.2'],
    value: (test, symbol) => {
      if (symbol === 'mE') return walk(test, { compliance: 0, length: test.piece.gaugeLength }).line.slope;
      const walked = overGauge(test);
      if (symbol === 'Rp0.2') return proofAt(walked, PROOF_OFFSET);
      return symbol === 'E' ? walked.line.slope : maximumOf(walked).extension;
    },
  },
  {
    key: 'secant-to-proof',
    symbols: ['E'],
    value: (test) => {
      const walked = walk(test);
      const proof = proofAt(walked, PROOF_OFFSET);
      return proof === undefined ? undefined : proof / (proof / walked.line.slope + PROOF_OFFSET);
    },
  },
  {
    key: 'one-point-for-slope',
    symbols: ['mE', 'E'],
    value: (test, symbol) => {
      const { curve, line } = walk(test, symbol === 'E' ? {} : { compliance: 0 });
      const at = Math.round((line.first + line.last) / 2);
      return curve.strain[at]! > 0 ? curve.stress[at]! / curve.strain[at]! : undefined;
    },
  },
  {
    key: 'fracture-for-maximum',
    symbols: ['Agt'],
    value: (test) => breakOf(walk(test)).extension,
  },
  {
    key: 'true-strain',
    symbols: ['Agt', 'A'],
    value: (test, symbol) => Math.log1p(symbol === 'A' ? elongation(test) : maximumOf(walk(test)).extension),
  },
  {
    key: 'parallel-for-gauge-length',
    symbols: ['A'],
    value: (test) => (broken(test).length - test.piece.gaugeLength) / parallelLengthOf(test),
  },
  {
    key: 'parallel-length-taken-off',
    symbols: ['A'],
    value: (test) => broken(test).length / parallelLengthOf(test) - 1,
  },
  {
    key: 'final-length-as-base',
    symbols: ['A'],
    value: (test) => 1 - test.piece.gaugeLength / broken(test).length,
  },
  {
    key: 'original-not-taken-off',
    symbols: ['A'],
    value: (test) => 1 + elongation(test),
  },
  {
    key: 'curve-for-marks',
    symbols: ['A'],
    value: (test) => breakOf(walk(test)).extension,
  },
  {
    key: 'travel-for-marks',
    symbols: ['A'],
    value: (test) => test.record.travel![breakOf(walk(test)).index]! / test.piece.gaugeLength,
  },
  {
    key: 'maximum-for-fracture',
    symbols: ['A'],
    value: (test) => maximumOf(walk(test)).extension,
  },
  {
    key: 'diameter-for-area',
    symbols: ['Z'],
    value: (test) => 1 - broken(test).diameter / Math.sqrt((4 * test.piece.section.area) / Math.PI),
  },
  {
    key: 'final-area-as-base',
    symbols: ['Z'],
    value: (test) => test.piece.section.area / broken(test).area - 1,
  },
  {
    key: 'remaining-area',
    symbols: ['Z'],
    value: (test) => broken(test).area / test.piece.section.area,
  },
  {
    key: 'elongation-for-reduction',
    symbols: ['Z'],
    value: elongation,
  },
];
