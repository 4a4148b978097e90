import { PROOF_OFFSET } from '../base/index.js';
import type { ExerciseTest } from './Exercise.js';
import { breakOf, broken, maximumOf, parallelLengthOf, proofAt, walk } from './walk.js';
import type { WrongRoute } from './WrongRoute.js';

const overGauge = (test: ExerciseTest) => walk(test, { length: test.piece.gaugeLength });
const elongation = (test: ExerciseTest): number => broken(test).length / test.piece.gaugeLength - 1;

/** @internal Slips of slopes, extensions and readings of the broken piece that are no mere factor. */
export const extensionRoutes: readonly WrongRoute[] = [
  {
    key: 'frame-left-in',
    symbols: ['E', 'Agt'],
    slip: 'The travel still holds the motion of the frame.',
    advice: 'Take the compliance times the force off the travel before the strain is made.',
    value: (test, symbol) => {
      const walked = walk(test, { compliance: 0 });
      return symbol === 'E' ? walked.line.slope : maximumOf(walked).extension;
    },
  },
  {
    key: 'frame-taken-out',
    symbols: ['mE'],
    slip: 'The frame was taken out of the travel.',
    advice: 'The slope mE is asked of the curve as it was recorded; without the frame the slope is E.',
    value: (test) => walk(test).line.slope,
  },
  {
    key: 'gauge-for-parallel-length',
    symbols: ['mE', 'E', 'Agt', 'Rp0.2'],
    slip: 'Strain was counted over the gauge length L0.',
    advice: 'Travel is spread over the parallel length Lc: divide by that.',
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
    slip: 'The slope was taken from the origin to the proof strength.',
    advice: 'Plastic extension is in that secant: fit the straight part alone.',
    value: (test) => {
      const walked = walk(test);
      const proof = proofAt(walked, PROOF_OFFSET);
      return proof === undefined ? undefined : proof / (proof / walked.line.slope + PROOF_OFFSET);
    },
  },
  {
    key: 'one-point-for-slope',
    symbols: ['mE', 'E'],
    slip: 'One point was divided: its stress by its strain, counted from the zero of the travel.',
    advice: 'Slack lies before the line: take the slope over the straight part, a rise of stress over a rise of strain.',
    value: (test, symbol) => {
      const { curve, line } = walk(test, symbol === 'E' ? {} : { compliance: 0 });
      const at = Math.round((line.first + line.last) / 2);
      return curve.strain[at]! > 0 ? curve.stress[at]! / curve.strain[at]! : undefined;
    },
  },
  {
    key: 'fracture-for-maximum',
    symbols: ['Agt'],
    slip: 'The extension at fracture was given in place of that at maximum force.',
    advice: 'Read the extension at the highest force; beyond it the neck grows alone.',
    value: (test) => breakOf(walk(test)).extension,
  },
  {
    key: 'true-strain',
    symbols: ['Agt', 'A'],
    slip: 'The true strain was given.',
    advice: 'Extensions are engineering strains: do not take the logarithm.',
    value: (test, symbol) => Math.log1p(symbol === 'A' ? elongation(test) : maximumOf(walk(test)).extension),
  },
  {
    key: 'parallel-for-gauge-length',
    symbols: ['A'],
    slip: 'The growth of the gauge length was divided by the parallel length.',
    advice: 'A is (Lu − L0)/L0, both read between the marks.',
    value: (test) => (broken(test).length - test.piece.gaugeLength) / parallelLengthOf(test),
  },
  {
    key: 'parallel-length-taken-off',
    symbols: ['A'],
    slip: 'The parallel length was taken for the original gauge length.',
    advice: 'L0 is the distance of the marks before the test, not the length of the straight part.',
    value: (test) => broken(test).length / parallelLengthOf(test) - 1,
  },
  {
    key: 'final-length-as-base',
    symbols: ['A'],
    slip: 'The growth was divided by the final gauge length.',
    advice: 'Divide by the original gauge length L0.',
    value: (test) => 1 - test.piece.gaugeLength / broken(test).length,
  },
  {
    key: 'original-not-taken-off',
    symbols: ['A'],
    slip: 'The final length was divided by the original one, and 1 was not taken off.',
    advice: 'A is (Lu − L0)/L0.',
    value: (test) => 1 + elongation(test),
  },
  {
    key: 'curve-for-marks',
    symbols: ['A'],
    slip: 'The total extension at fracture was read from the curve.',
    advice: 'That is At over the parallel length, the elastic part included. A comes from the marks of the fitted pieces.',
    value: (test) => breakOf(walk(test)).extension,
  },
  {
    key: 'travel-for-marks',
    symbols: ['A'],
    slip: 'The whole travel at fracture was divided by the gauge length.',
    advice: 'Travel holds slack, frame and the length outside the marks. A comes from the marks of the fitted pieces.',
    value: (test) => test.record.travel![breakOf(walk(test)).index]! / test.piece.gaugeLength,
  },
  {
    key: 'maximum-for-fracture',
    symbols: ['A'],
    slip: 'The extension at maximum force was given.',
    advice: 'That is Agt. A comes from the marks of the broken piece.',
    value: (test) => maximumOf(walk(test)).extension,
  },
  {
    key: 'diameter-for-area',
    symbols: ['Z'],
    slip: 'The reduction of the diameter was given.',
    advice: 'Z compares areas: square the diameters first.',
    value: (test) => 1 - broken(test).diameter / Math.sqrt((4 * test.piece.section.area) / Math.PI),
  },
  {
    key: 'final-area-as-base',
    symbols: ['Z'],
    slip: 'The loss of area was divided by the area after fracture.',
    advice: 'Divide by the original area S0.',
    value: (test) => test.piece.section.area / broken(test).area - 1,
  },
  {
    key: 'remaining-area',
    symbols: ['Z'],
    slip: 'The share of the area that is left was given.',
    advice: 'Z is the share that is lost: (S0 − Su)/S0.',
    value: (test) => broken(test).area / test.piece.section.area,
  },
  {
    key: 'elongation-for-reduction',
    symbols: ['Z'],
    slip: 'The elongation after fracture was given.',
    advice: 'Z compares the areas of the section before and after, not lengths.',
    value: elongation,
  },
];
