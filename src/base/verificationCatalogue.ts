import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings about the force channel, the displacement channel, the alignment and the compliance of a frame, as they are verified. */
export const verificationEntries = {
  'force-class-not-reached': {
    severity: 'caution', about: 'frame',
    message: 'Steps that do not reach class 1: {count} of {steps}, the first at {force} N by its {term}.',
    remedy: 'Claim no conformity with ISO 6892-1 for forces there; find the cause, adjust, and verify again.',
  },
  'rising-force-only': {
    severity: 'caution', about: 'frame',
    message: 'The reversibility of {reversibility} % is beyond that of class 1: the channel serves rising forces only.',
    remedy: 'Take no modulus from unloading and no hysteresis loop from this channel; look at seals and friction.',
  },
  'falling-above-rising': {
    severity: 'caution', about: 'frame',
    message: 'At {force} N the falling run indicates more than the rising one, by {excess} N; friction of a cylinder does the opposite.',
    remedy: 'Check whether the runs were exchanged, whether the reference drifted, and whether sensor or reference has hysteresis of its own.',
  },
  'zero-not-verified': {
    severity: 'note', about: 'frame',
    message: 'No zero readings were given, so the zero error is unknown and the class is by the other terms alone.',
    remedy: 'Read the indicator without force after each run.',
  },
  'displacement-steps-few': {
    severity: 'caution', about: 'frame',
    message: 'Displacements verified: {steps}; fewest readings from below at one of them: {runs}. Ten displacements in two runs are wanted.',
    remedy: 'Verify at some ten displacements over the range that is used, twice each.',
  },
  'verification-steps-few': {
    severity: 'caution', about: 'frame',
    message: 'Steps between 20 % and 100 % of the range: {count}; five are wanted.',
    remedy: 'Verify at about 20, 40, 60, 80 and 100 % of the range, and below 20 % at 10, 5, 2 and 1 % where forces are used there.',
  },
  'range-not-reached': {
    severity: 'caution', about: 'frame',
    message: 'The highest step is {force} N, {share} % of the range; above it nothing is verified.',
    remedy: 'Verify up to the end of the range, or name the highest step as its end.',
  },
  'class-range-starts-high': {
    severity: 'caution', about: 'frame',
    message: 'Class 1 holds only from {force} N, {share} % of the range; {term} stops it below.',
    remedy: 'Plan tests so that yield lies above this force.',
  },
  'friction-negative': {
    severity: 'caution', about: 'frame',
    message: 'Steps at which the friction comes out below zero: {count}, the lowest {friction} N; friction never helps.',
    remedy: 'Check whether rising and falling runs were exchanged, and whether the zero of pressure drifted.',
  },
  'pointer-above-record': {
    severity: 'caution', about: 'frame',
    message: 'The pointer shows {pointer} N, the record {recorded} N: {share} % more. {cause}.',
    remedy: 'Report the verified channel and print the other beside it; look at the record around its maximum.',
  },
  'pointer-below-record': {
    severity: 'caution', about: 'frame',
    message: 'The pointer shows {pointer} N, the record {recorded} N: {share} % less. {cause}.',
    remedy: 'Report the verified channel and print the other beside it; check the pointer for a free run over its whole scale.',
  },
  'idle-friction-changed': {
    severity: 'caution', about: 'frame',
    message: 'The idle stroke takes {force} N; it took {before} N, a change of {share} %.',
    remedy: 'Look at seals, guides and oil; the tare of the force is no longer what it was.',
  },
  'idle-friction-uneven': {
    severity: 'caution', about: 'frame',
    message: 'Over the idle stroke the friction varies by {spread} N about {force} N.',
    remedy: 'Look for a scored bore, a bent rod or air in the oil; a tare over travel can be given to `pressureToForce`.',
  },
  'leak-down-fast': {
    severity: 'caution', about: 'frame',
    message: 'At standstill the force falls by {share} % a minute.',
    remedy: 'Look for a leaking valve, seal or fitting before tests with dwell times.',
  },
  'leak-down-settles': {
    severity: 'note', about: 'frame',
    message: 'The pressure fell by {early} MPa a minute in the first half and by {late} MPa in the second: oil, hose or piece were still settling.',
    remedy: 'Wait before the leak is read, or read the second half alone (`from`).',
  },
  'check-out-of-limits': {
    severity: 'fault', about: 'frame',
    message: 'Check {index} reads {value}, beyond the limits {lower} to {upper}.',
    remedy: 'Repeat the check once; if it stays outside, stop testing and find the cause before results are issued.',
  },
  'check-jumped': {
    severity: 'caution', about: 'frame',
    message: 'Between checks {before} and {index} the reading moved by {range}, more than {limit}.',
    remedy: 'Look for what was changed between the two: operator, piece, oil, sensor.',
  },
  'check-on-one-side': {
    severity: 'caution', about: 'frame',
    message: '{count} checks in a row, up to number {index}, lie {side} the centre.',
    remedy: 'The level has moved: look for the cause, and verify the force if none is found.',
  },
  'check-trend': {
    severity: 'caution', about: 'frame',
    message: '{count} checks in a row, up to number {index}, go {direction}.',
    remedy: 'Something drifts: verify the force before the limits are reached.',
  },
  'check-few': {
    severity: 'note', about: 'frame',
    message: 'The limits rest on few checks: {count}; they are provisional below 20.',
    remedy: 'Keep checking at even intervals and fix the limits from about 20.',
  },
  'force-drifted': {
    severity: 'caution', about: 'frame',
    message: 'As found, the error reaches {error} % at {force} N (it was {before} % as left on {date}); results touched since then: {count}.',
    remedy: 'When it happened is unknown: look at each of them again and tell whoever uses them.',
  },
  'force-outside-certificate': {
    severity: 'caution', about: 'frame',
    message: 'The result {identity} at {force} N lies outside the forces that were checked ({low} to {high} N).',
    remedy: 'Judge it by itself; the drift there is not known.',
  },
  'displacement-class-not-reached': {
    severity: 'caution', about: 'frame',
    message: 'Steps that do not reach class 1: {count} of {steps}, the first at {travel} mm by its {term}.',
    remedy: 'Use the channel for what it can do: say its class beside each strain, and take Rp from a finer sensor.',
  },
  'displacement-reversal': {
    severity: 'note', about: 'frame',
    message: 'Rising and falling readings differ by up to {difference} mm, at {travel} mm: play or friction in the sensor.',
    remedy: 'Approach every position from the same side; leave reversals out of strain loops.',
  },
  'gauges-disagree': {
    severity: 'caution', about: 'frame',
    message: 'The four gauges depart from a plane by {share} % of the mean strain.',
    remedy: 'Check the wiring, the factor and the place of each gauge before the bending is believed.',
  },
  'bending-large': {
    severity: 'caution', about: 'frame',
    message: 'Bending is {bending} % of the mean strain: the surface yields at {share} % of the mean stress that a straight pull needs.',
    remedy: 'Align grips and piece, use spherical seats, and straighten by a small preload; ReH and the proportional limit are too low.',
  },
  'compliance-runs-differ': {
    severity: 'caution', about: 'frame',
    message: 'The runs differ: at the top their compliances spread by {share} % of the mean, more than their scatter explains.',
    remedy: 'Grips, direction or friction changed between the runs; measure again, and give rising and falling forces a compliance each.',
  },
  'compliance-curved': {
    severity: 'caution', about: 'frame',
    message: 'One number does not fit this frame: its motion goes with the power {exponent} of the force, at a fifth of the highest force {share} % more than in proportion.',
    remedy: 'Take a table or a power law, or measure between the forces that are used.',
  },
  'compliance-poorly-determined': {
    severity: 'caution', about: 'frame',
    message: 'The standard uncertainty of the compliance is {uncertainty} % of it.',
    remedy: 'Use a stiffer blank or a greater difference of lengths, more samples, and a range up to the forces of the tests.',
  },
  'force-beyond-compliance': {
    severity: 'caution', about: 'frame',
    message: 'Samples above {limit} N, where the compliance of the frame was not measured: {count}; it was carried on to {force} N as at its end.',
    remedy: 'Measure the compliance up to the forces of the tests.',
  },
  'window-below-compliance': {
    severity: 'caution', about: 'frame',
    message: 'The elastic window begins at {force} N, below {limit} N, where the compliance of the frame was not measured.',
    remedy: 'Frames are softer at low force: measure the compliance from there, or set the window above.',
  },
  'modulus-carries-compliance': {
    severity: 'caution', about: 'frame',
    message: 'The compliance of the frame alone gives E a standard uncertainty of {uncertainty} %.',
    remedy: 'Use an extensometer, a longer or thinner piece, or measure the compliance better.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;
