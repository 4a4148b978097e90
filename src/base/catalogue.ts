/** One entry of the catalogue of findings: what it weighs by default, what it speaks of, its sentence and its remedy. */
export interface FindingEntry {
  /** Weight unless the numbers make it another. */
  readonly severity: 'note' | 'caution' | 'fault';
  /** What it speaks of. */
  readonly about: 'record' | 'piece' | 'frame' | 'method';
  /** The sentence; `{name}` stands for a value of the finding. */
  readonly message: string;
  /** What can be done about it. */
  readonly remedy: string;
}

const entries = {
  // what the logger wrote
  'time-missing': {
    severity: 'caution', about: 'record',
    message: 'The record has no time column, so rates, pauses and the evenness of loading are unknown.',
    remedy: 'Log time with every sample; no time step is assumed.',
  },
  'time-not-increasing': {
    severity: 'caution', about: 'record',
    message: 'Time goes back {count} times, first at sample {first}; rates are withheld.',
    remedy: 'Check the clock of the logger, or whether two tests are in one file.',
  },
  'time-gap': {
    severity: 'caution', about: 'record',
    message: '{count} gaps in time, the longest {longest} s at sample {first}, where samples come every {usual} s.',
    remedy: 'Check that no gap lies in yielding, at the maximum or at fracture; a pause of the logger there loses the event.',
  },
  'samples-repeated': {
    severity: 'note', about: 'record',
    message: '{share} % of the samples repeat the one before: the logger was faster than the sensor.',
    remedy: 'Repeated samples flatter the scatter of a slope; log at the rate of the slowest sensor.',
  },
  'force-saturated': {
    severity: 'fault', about: 'record',
    message: 'The force stands at its highest value {force} N for {count} samples: the channel was probably at its end.',
    remedy: 'Check the range of transmitter and logger; the true maximum may be higher.',
  },
  'force-does-not-rise': {
    severity: 'fault', about: 'record',
    message: 'The force never rises: from {first} N at the start to at most {highest} N.',
    remedy: 'Check the sign and the column of the force, and that the file holds a loading part.',
  },
  'force-looks-like-kilonewton': {
    severity: 'fault', about: 'record',
    message: 'A highest stress of {stress} MPa is too low for a metal: the force may be in kN where N was expected.',
    remedy: 'Name the unit of the force when reading the file.',
  },
  'strain-looks-like-percent': {
    severity: 'fault', about: 'record',
    message: 'A strain of {strain} with a slope of {slope} MPa does not fit a metal: the strain may be in % where a ratio was expected.',
    remedy: 'Name the unit of the strain when reading the file.',
  },
  'record-starts-late': {
    severity: 'caution', about: 'record',
    message: 'The first sample already carries {share} % of the maximum force: the start of loading is missing.',
    remedy: 'Start the logger before loading; the zero of the force cannot be checked.',
  },
  'zero-drift': {
    severity: 'caution', about: 'record',
    message: 'The force after fracture reads {force} N ({share} % of the maximum) away from the zero before the test.',
    remedy: 'Check the zero of the force channel before and after each test; every force carries this doubt.',
  },
  'tail-after-fracture': {
    severity: 'note', about: 'record',
    message: '{count} samples after the fracture were left out; they served to check the zero.',
    remedy: 'Nothing to do.',
  },
  'fracture-not-recorded': {
    severity: 'caution', about: 'record',
    message: 'No sudden fall of force is in the record; its last sample is taken as the fracture.',
    remedy: 'Log until the piece has broken; a record cut short gives too small an extension at fracture.',
  },
  'stopped-before-fracture': {
    severity: 'caution', about: 'record',
    message: 'The record ends at {share} % of the maximum force, before the piece broke.',
    remedy: 'Log until fracture; strength may still be valid if the maximum was passed.',
  },
  'maximum-at-end': {
    severity: 'caution', about: 'record',
    message: 'The highest force is the last sample: the test was stopped early, or the piece broke without a neck.',
    remedy: 'State which; strength holds only for a piece that broke.',
  },
  'maximum-is-spike': {
    severity: 'caution', about: 'record',
    message: 'The maximum is a single sample {excess} MPa above its neighbours.',
    remedy: 'Check the signal for a spike before strength is reported.',
  },
  'few-points-in-elastic-part': {
    severity: 'caution', about: 'record',
    message: 'The elastic line rests on {points} samples.',
    remedy: 'Log faster or load slower; 50 samples in the elastic part are wanted, and below 8 no modulus is given.',
  },
  'sampling-slow-for-yield': {
    severity: 'caution', about: 'record',
    message: '{frequency} samples a second at a stress rate of {rate} MPa/s: the upper yield strength may be low by up to {loss} MPa.',
    remedy: 'Log faster or load slower around yield.',
  },
  'extension-goes-back': {
    severity: 'note', about: 'record',
    message: 'The extension goes back in {count} places, by {largest} at most.',
    remedy: 'Backlash, a reversal of the drive or an unloading frame does this; the line and the crossings allow for it.',
  },
  'extensometer-taken-off': {
    severity: 'note', about: 'record',
    message: 'The extensometer ends at sample {sample}, at a strain of {strain}.',
    remedy: 'Nothing to do; beyond it the strain has another basis.',
  },
  'travel-carries-on': {
    severity: 'caution', about: 'record',
    message: 'Beyond a strain of {strain} the curve is carried on by crosshead travel over {length} mm.',
    remedy: 'From necking on the two bases differ; extensions beyond here are estimates.',
  },
  pause: {
    severity: 'note', about: 'record',
    message: 'The crosshead stood still for {duration} s at a strain of {strain}; the stress fell by {fall} MPa.',
    remedy: 'A fall of force while the crosshead stands still is relaxation, never yield.',
  },
  'pause-near-yield': {
    severity: 'caution', about: 'record',
    message: 'A pause of {duration} s lies within 0.2 % strain of {symbol}.',
    remedy: 'Load through yield without stopping; repeat the test if this value decides.',
  },
  'uneven-loading': {
    severity: 'note', about: 'record',
    message: 'The speed in the elastic window varies by {variation} % (standard deviation over mean).',
    remedy: 'Load in even strokes or turns; see the figure of rate over time.',
  },
  // the test piece
  'gauge-length-not-proportional': {
    severity: 'caution', about: 'piece',
    message: 'The gauge length {length} mm is {deviation} % off 5.65√S0 = {proportional} mm: A must be written with its length.',
    remedy: 'Write A with the gauge length as index, or convert by ISO 2566 within its limits.',
  },
  'parallel-length-assumed': {
    severity: 'caution', about: 'piece',
    message: 'No parallel length was given; the gauge length {length} mm stands for it.',
    remedy: 'Give the parallel length: all plastic strain from travel is over that length.',
  },
  'parallel-length-short': {
    severity: 'caution', about: 'piece',
    message: 'The parallel length {length} mm is shorter than the least {least} mm for this section and gauge length.',
    remedy: 'Make the parallel length at least that long.',
  },
  'section-small': {
    severity: 'note', about: 'piece',
    message: 'A {dimension} of {value} mm is below {limit} mm: another annex of the standard applies.',
    remedy: 'Follow the annex for thin products or wire.',
  },
  'section-wide': {
    severity: 'note', about: 'piece',
    message: 'Width over thickness is {ratio}, above 8.',
    remedy: 'Narrow pieces neck more evenly; state the dimensions with A and Z.',
  },
  'section-spread': {
    severity: 'caution', about: 'piece',
    message: 'The readings of the section spread by {spread} % of their mean.',
    remedy: 'Measure again; above 0.5 % the piece is uneven or the readings are.',
  },
  'section-taper': {
    severity: 'caution', about: 'piece',
    message: 'The section changes by {taper} % from one end to the other.',
    remedy: 'Check the machining; the piece breaks at its smallest section.',
  },
  'few-section-readings': {
    severity: 'note', about: 'piece',
    message: 'The section rests on {readings} readings of each dimension.',
    remedy: 'Measure at three places or more, a round in two directions.',
  },
  'after-fracture-missing': {
    severity: 'note', about: 'piece',
    message: '{symbol} was not determined: {missing} was not given.',
    remedy: 'Fit the broken pieces together and measure the gauge length; measure the neck in two directions.',
  },
  'after-fracture-larger': {
    severity: 'fault', about: 'piece',
    message: '{what} after fracture ({after}) does not fit the original ({before}).',
    remedy: 'Check the readings: the gauge length grows and the section shrinks.',
  },
  'reduction-unusual': {
    severity: 'caution', about: 'piece',
    message: 'Z = {reduction} % is unusual beside A = {elongation} %.',
    remedy: 'Check the readings after fracture; only pure metals and lead neck down to nothing.',
  },
  'elongation-unlike-travel': {
    severity: 'caution', about: 'piece',
    message: 'A = {elongation} % by the marks and {travel} % by the curve do not go together.',
    remedy: 'Look for a wrong length, slip in the grips or a wrong unit.',
  },
  // the frame
  'extension-from-travel': {
    severity: 'caution', about: 'frame',
    message: 'Strains are determined from crosshead displacement, not by an extensometer as the standards ask.',
    remedy: 'State it beside every strain-based value; use an extensometer where the value decides.',
  },
  'frame-compliance-removed': {
    severity: 'note', about: 'frame',
    message: 'A frame compliance of {compliance} mm/N was removed; it was {share} % of the motion in the elastic part.',
    remedy: 'State where the compliance comes from; its doubt carries into E.',
  },
  'frame-stretches-more-than-piece': {
    severity: 'caution', about: 'frame',
    message: 'The frame stretches {ratio} times as much as the piece: E carries at least {ratio} times the relative doubt of the compliance.',
    remedy: 'Use an extensometer for E.',
  },
  'modulus-includes-frame-compliance': {
    severity: 'fault', about: 'frame',
    message: 'E is withheld: the slope {slope} MPa is that of frame and piece together.',
    remedy: 'Give the frame compliance, or use an extensometer. Rp by the curve\'s own slope is still right.',
  },
  'displacement-steps-coarse': {
    severity: 'caution', about: 'frame',
    message: 'One step of the displacement reading is {share} % of the offset of {symbol}.',
    remedy: 'Use a finer displacement sensor: a tenth of the offset is wanted.',
  },
  // the evaluation
  'window-bound-eased': {
    severity: 'caution', about: 'method',
    message: 'The record has too few samples between the bounds of the elastic window; {bound} was eased.',
    remedy: 'Log faster in the elastic part, or choose the window yourself.',
  },
  'no-linear-part': {
    severity: 'fault', about: 'method',
    message: 'The curve has no linear part (the slope falls by {fall} % within the window): E is withheld.',
    remedy: 'Take E from an unloading line or from another method; the offset line uses the steepest slope.',
  },
  'slope-scatter': {
    severity: 'caution', about: 'method',
    message: 'The slope has a relative standard error of {error} %.',
    remedy: 'Reduce noise or log more samples; up to 1 % is wanted.',
  },
  'windows-disagree': {
    severity: 'caution', about: 'method',
    message: 'The elastic line is fragile: {windows} other windows give slopes from {lowest} to {highest} MPa and Rp0.2 from {low} to {high} MPa.',
    remedy: 'Look at the elastic detail; report the range, or state the window.',
  },
  'window-slopes-disagree': {
    severity: 'caution', about: 'method',
    message: 'The elastic line is fragile: {windows} other windows give slopes from {lowest} to {highest} MPa.',
    remedy: 'Look at the elastic detail; report the range, or state the window.',
  },
  'residuals-alike': {
    severity: 'note', about: 'method',
    message: 'Neighbouring residuals of the elastic line are alike ({runs} runs, {expected} expected of random ones): its standard error is too small.',
    remedy: 'A filter or the rate of the logger correlates samples, or the window is bent; read the standard error as a lower limit.',
  },
  'window-bent': {
    severity: 'caution', about: 'method',
    message: 'A parabola through the elastic window changes its slope by {change} % from end to end.',
    remedy: 'Look at the elastic detail: a toe or yielding reaches into the window.',
  },
  'slope-implausible': {
    severity: 'caution', about: 'method',
    message: 'A modulus of {slope} MPa is outside {lowest} to {highest} MPa, where metals lie.',
    remedy: 'Check units, the area (radius for diameter?), the length and the frame compliance.',
  },
  'offset-leverage': {
    severity: 'caution', about: 'method',
    message: 'With leverage {leverage} the doubt of the slope moves the offset of {symbol} by {share} %.',
    remedy: 'Use an extensometer or a steadier record: the slope decides this value.',
  },
  'toe-long': {
    severity: 'caution', about: 'method',
    message: 'The toe takes a strain of {shift}, {share} % of the elastic strain at the top of the window.',
    remedy: 'Preload to seat the grips; the origin was moved to where the line meets zero stress.',
  },
  'toe-outside-record': {
    severity: 'caution', about: 'method',
    message: 'The line meets zero stress at a strain of {shift}, before the record begins.',
    remedy: 'The record starts late or starts steeper than the line; check zero and preload.',
  },
  'no-yield-point': {
    severity: 'note', about: 'method',
    message: 'No upper yield strength: {why}.',
    remedy: 'Report the proof strength.',
  },
  'yield-fall-in-pause': {
    severity: 'caution', about: 'method',
    message: 'The stress fell only while the crosshead stood still: that is relaxation, not yield.',
    remedy: 'Load without stopping through yield.',
  },
  'few-points-before-proof': {
    severity: 'caution', about: 'method',
    message: 'Only {points} samples lie between the end of the elastic window and {symbol}.',
    remedy: 'Log faster: between distant samples the chord runs below the curve.',
  },
  'several-crossings': {
    severity: 'caution', about: 'method',
    message: 'The curve crosses the line of {symbol} {count} times; the first lasting crossing counts.',
    remedy: 'Look at the elastic detail; with a yield point report ReH and ReL first.',
  },
  'proof-strength-not-reached': {
    severity: 'fault', about: 'method',
    message: '{symbol} was not reached before the maximum: brittle, or stopped early.',
    remedy: 'Report strength only.',
  },
  'total-extension-not-reached': {
    severity: 'note', about: 'method',
    message: '{symbol} was not reached in the record.',
    remedy: 'Leave it out of the report.',
  },
  'maximum-wide': {
    severity: 'caution', about: 'method',
    message: 'The force stays within 0.1 % of its maximum over {width} strain: Agt is uncertain by half of it.',
    remedy: 'Give Agt with this doubt.',
  },
  'maximum-below-upper-yield': {
    severity: 'note', about: 'method',
    message: 'The maximum after the start of hardening, {strength} MPa, is below the upper yield strength {upper} MPa.',
    remedy: 'State which is meant by the strength.',
  },
  'proportional-limit-by-definition': {
    severity: 'note', about: 'method',
    message: 'The proportional limit is {lowest} to {highest} MPa, depending on the definition.',
    remedy: 'Name the definition with the value.',
  },
  'stress-rate-outside': {
    severity: 'caution', about: 'method',
    message: 'The stress rate in the elastic window, {rate} MPa/s, is outside {lowest} to {highest} MPa/s (ISO 6892-1 method B, from memory).',
    remedy: 'Load at a rate within the range; see the figure of rate over time.',
  },
  'strain-rate-high': {
    severity: 'caution', about: 'method',
    message: 'The strain rate {where} is {rate} 1/s, above {highest} 1/s (ISO 6892-1, from memory).',
    remedy: 'Load more slowly there; a high rate raises the yield values.',
  },
  'hardening-correlation-low': {
    severity: 'caution', about: 'method',
    message: 'The hardening law fits with R² = {correlation} only.',
    remedy: 'Another law may fit better; look at the true curve.',
  },
  'hardening-range-outside-uniform': {
    severity: 'caution', about: 'method',
    message: 'The fit from {from} to {to} true plastic strain reaches beyond uniform deformation.',
    remedy: 'Fit from the end of yielding to the maximum force only.',
  },
  'necking-answers-differ': {
    severity: 'note', about: 'method',
    message: 'A neck begins at a true strain of {curve} (u = {uncertainty}) by the curve, and at {law} by the hardening law.',
    remedy: 'Another law may follow this curve better; compare laws before extrapolating.',
  },
  'necking-unlike-exponent': {
    severity: 'caution', about: 'method',
    message: 'The exponent n = {exponent} and the true uniform strain {strain} do not agree as Considère asks.',
    remedy: 'The law does not hold up to necking; state the range of the fit with n.',
  },
  'not-determined': {
    severity: 'note', about: 'method',
    message: '{symbol} was not determined: {why}.',
    remedy: 'See the reason; the record cannot support this value as it is.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;

/** Codes of findings. */
export type FindingCode = keyof typeof entries;

/**
 * Every finding by its code, in the order of the job: record, piece, frame, method.
 *
 * @remarks
 * Codes are never renamed. Thresholds behind the findings are options of the functions that make them; their defaults are common
 * practice where no standard is named.
 */
export const catalogue: Readonly<Record<FindingCode, FindingEntry>> = entries;
