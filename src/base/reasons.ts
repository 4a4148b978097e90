/** Why a fit, a search or a property step gave no result, and what can be done. */
export interface ReasonEntry {
  /** What it means. */
  readonly meaning: string;
  /** What can be done about it. */
  readonly remedy: string;
}

const entries = {
  'after-slip': {
    meaning: 'The piece slipped in the grips before the point, and the strain counts the slip.',
    remedy: 'Take the slip out of the travel, or test with an extensometer.',
  },
  'beyond-maximum': {
    meaning: 'The range of a fit reaches beyond the maximum force, where strain is no longer even.',
    remedy: 'End the range at the uniform strain.',
  },
  'contracts-too-much': {
    meaning: "Poisson's ratio would lie above 0.5, where no isotropic metal has it.",
    remedy: 'Check gauge factor, unit and place of both strains.',
  },
  'ends-after-fall': {
    meaning: 'The stress fell from a peak, but the curve ends, or is over at its fracture, before the fall is long enough.',
    remedy: 'Log on past the fall; what the peak was cannot be told.',
  },
  'extension-ends': {
    meaning: 'The force tells where the piece broke, but the extensometer ends before, and no travel carries the curve on.',
    remedy: 'Log the travel as well, or leave the extensometer on; strength is not concerned.',
  },
  'fall-in-pause': {
    meaning: 'The stress fell only while the crosshead stood still: relaxation, no yield.',
    remedy: 'Report the proof strength; load through yield without a rest.',
  },
  'fall-within-noise': {
    meaning: 'A fall of stress is there, but no larger than the noise explains.',
    remedy: 'Report the proof strength, or test with a calmer signal.',
  },
  'hardness-outside': { meaning: 'The hardness lies outside the range of the estimate.', remedy: 'Test the strength itself.' },
  'laws-agree': {
    meaning: 'Both laws give the same stress at the point, so any weight would do.',
    remedy: 'Measure a point farther past the neck.',
  },
  'maximum-at-end': {
    meaning: 'The force does not fall after its highest sample.',
    remedy: 'Log until fracture; without a fall there is no onset of necking.',
  },
  'motion-not-reversed': {
    meaning: 'The force fell, but the motion did not go back: a pause, no unloading.',
    remedy: 'Unload by the drive, not by waiting.',
  },
  'no-contraction': {
    meaning: 'The width would grow while the piece is pulled.',
    remedy: 'Give the strain across with its sign, negative in tension, and check its channel.',
  },
  'no-crossing': {
    meaning: 'Hardening rate and stress of the law do not cross.',
    remedy: 'The law has no onset of necking; use another law or the curve itself.',
  },
  'no-fall': { meaning: 'The stress never falls on the way up: there is no yield point.', remedy: 'Report the proof strength.' },
  'no-hardening': {
    meaning: 'The stress does not rise with strain in the range.',
    remedy: 'Choose the range between the end of yielding and the maximum.',
  },
  'no-hardening-after': {
    meaning: 'After its highest point the curve only falls: that is the maximum, no yield point.',
    remedy: 'Report the tensile strength.',
  },
  'no-line': { meaning: 'No straight line could be found.', remedy: 'Look at the elastic detail; give the window yourself.' },
  'no-maximum': {
    meaning: 'The samples around the maximum do not make one.',
    remedy: 'Take more samples around the maximum, and repair spikes first.',
  },
  'no-plastic-part': {
    meaning: 'The curve does not bend away from its elastic line.',
    remedy: 'Fit a curve that goes beyond the proof strength.',
  },
  'no-plastic-strain': {
    meaning: 'Nothing is left after the elastic part is taken off.',
    remedy: 'Choose a range at larger strains, and give the modulus in MPa.',
  },
  'no-repeats': {
    meaning: 'No group holds more than one value, so there is no repeatability.',
    remedy: 'Test at least two pieces in each group.',
  },
  'no-rise': { meaning: 'The stress does not rise over the window.', remedy: 'Check the columns and their signs, and the window.' },
  'no-scatter': { meaning: 'All values are equal, so nothing can be said about scatter.', remedy: 'Give values that are not rounded.' },
  'no-single-factor': { meaning: 'No single factor turns hardness into strength for this material.', remedy: 'Test the strength itself.' },
  'no-slope': { meaning: 'The strain does not rise with stress in the window.', remedy: 'Check the columns and the window.' },
  'no-start': { meaning: 'The law or its derivatives are no numbers at the start values.', remedy: 'Give other start values.' },
  'no-unloading': {
    meaning: 'The force never falls by enough to be an unloading.',
    remedy: 'Unload to a few per cent of the force before loading on.',
  },
  'not-between': {
    meaning: 'The point lies outside the stresses of both laws.',
    remedy: 'Fit the laws over another range, or measure the point again.',
  },
  'not-determined': { meaning: 'A value that the step needs was not determined.', remedy: 'See the finding of that value.' },
  'not-fractured': { meaning: 'The record ends before the piece broke.', remedy: 'Log until fracture.' },
  'not-held': { meaning: 'The force was not held.', remedy: 'Hold the force for the time that the standard asks.' },
  'not-increasing': { meaning: 'The strain does not increase over the range.', remedy: 'Check the column, and the range of the fit.' },
  'not-monotonic': { meaning: 'The calibration turns within the span of its readings.', remedy: 'Choose a lower degree.' },
  'not-reached': {
    meaning: 'The curve does not reach the point that was asked for.',
    remedy: 'Ask for a smaller extension, or leave the value out.',
  },
  'not-resolved': {
    meaning: 'By the noise of the record the point cannot be told well enough to mean anything.',
    remedy: 'Take another definition, or test with a calmer signal or an extensometer.',
  },
  'not-rising': { meaning: 'The values do not rise as they must.', remedy: 'Check the readings and their order.' },
  'other-gauge-length': {
    meaning: 'Elongations on different gauge lengths are not comparable.',
    remedy: 'Convert by ISO 2566 within its limits.',
  },
  'only-at-least': {
    meaning: 'The test ended before its maximum force: the value is at least so large, and may keep or break the limit.',
    remedy: 'Test another piece up to its maximum force.',
  },
  'other-quantity': {
    meaning: 'Two different quantities are not comparable.',
    remedy: 'Compare the quantity that the specification names.',
  },
  'starts-beyond': {
    meaning: 'The curve lies beyond the offset line from its first sample on.',
    remedy: 'Record from zero force on, and check the window.',
  },
  'too-few-groups': { meaning: 'There are fewer groups than a study needs.', remedy: 'Add groups.' },
  'too-few-points': { meaning: 'Fewer samples lie in the range than the step needs.', remedy: 'Log faster or choose a wider range.' },
  'too-few-trials': { meaning: 'Too few trials gave a value.', remedy: 'Run more trials.' },
  'too-few-values': { meaning: 'Fewer values are there than the statistic needs.', remedy: 'Test more pieces.' },
  'too-short': { meaning: 'The record is too short for the step.', remedy: 'Record for longer.' },
  unloaded: {
    meaning: 'The drive let the force go before the piece broke, and the strain went back elastically.',
    remedy: 'Load until fracture; the elongation after fracture belongs to a broken piece.',
  },
  'uncertainty-unknown': {
    meaning: 'The uncertainty that the rule needs is not known.',
    remedy: 'Give the uncertainty, or agree on another rule.',
  },
  undetermined: { meaning: 'The samples do not determine all parameters.', remedy: 'Fix a parameter, or fit a wider range.' },
  'within-doubt': {
    meaning: 'What should be described is no larger than its own doubt.',
    remedy: 'Nothing to do: a piece that did not flow has no hardening law.',
  },
} as const satisfies Readonly<Record<string, ReasonEntry>>;

/** Every reason for which an {@link Outcome} holds no result, by its code; codes are never renamed. */
export const reasons: Readonly<Record<keyof typeof entries, ReasonEntry>> = entries;
