import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings about the evaluation of a tension test. */
export const evaluationEntries = {
  'window-bound-eased': {
    severity: 'caution', about: 'method',
    message: 'No elastic window keeps all its bounds ({why}); {bound} was eased.',
    remedy: 'Where samples are few, log faster in the elastic part; else ask for lower shares, or choose the window yourself.',
  },
  'no-linear-part': {
    severity: 'fault', about: 'method',
    message: 'No linear part is found in the curve ({why}). E is withheld, and what rests on the line is in doubt: {symbols}.',
    remedy: 'Take E from an unloading line or from another method. Where the curve is bent, its line is too flat and a strength by an offset too high: report one at a total extension, and read extensions as estimates. Where it is noise that drives windows apart, use a calmer record.',
  },
  'window-not-linear': {
    severity: 'fault', about: 'method',
    message: 'The given window is no linear part ({why}), whatever the rest of the curve. E is withheld, and what rests on its line is in doubt: {symbols}.',
    remedy: 'Give another window, or leave its choice to the search.',
  },
  'linear-part-unknown': {
    severity: 'fault', about: 'method',
    message: 'Whether the elastic line rests on a linear part is not known: its {points} samples, at {strains} different strains, tell no bend, and there is no other window to compare. E is withheld.',
    remedy: 'Log more samples and finer strains in the elastic part.',
  },
  'slope-over-slip': {
    severity: 'fault', about: 'method',
    message: 'The extensometer slipped within the elastic window (at sample {sample}): joined there, the line would have {joined} MPa, so the slip changes its slope by {change} %; E is withheld.',
    remedy: 'Join the parts (`joinJumps`) or state a window clear of the slip; strengths by an offset from this line carry the same error.',
  },
  'slope-above-others': {
    severity: 'caution', about: 'method',
    message: 'The slope, {slope} MPa, lies above those of all other windows, {lowest} to {highest} MPa, by more than noise explains: either a knife edge crept back within the window, which makes it too steep, or the piece straightened below it, which makes the others too flat. The uncertainty of E holds both ({share} %).',
    remedy: 'Look at the elastic detail; clamp the extensometer afresh and repeat, or state a window clear of the creep. Gauges on both sides tell a bent piece.',
  },
  'slope-scatter': {
    severity: 'caution', about: 'method',
    message: 'The slope has a relative standard error of {error} %.',
    remedy: 'Reduce noise or log more samples; up to 1 % is wanted.',
  },
  'strain-noise-flattens': {
    severity: 'note', about: 'method',
    message: 'Noise of the strain ({noise}) makes the elastic line too flat, by about {share} %; the slope is left as it is, and its uncertainty holds this.',
    remedy: 'Calm the extensometer or its signal, or state a longer window: what noise takes off goes by the square of noise over window.',
  },
  'strain-steps-open': {
    severity: 'note', about: 'method',
    message: 'The elastic line rises over {steps} steps of the strain reading (one is {step}): they leave its slope open by {share} %, which its uncertainty holds.',
    remedy: 'Read the strain in finer steps, or state a longer window: three times the steps leave a fifth of this open.',
  },
  'strain-steps-few': {
    severity: 'fault', about: 'method',
    message: 'The elastic line rises over {steps} steps of the strain reading (one is {step}): they leave its slope open by {share} %, more than the {limit} % up to which E is given. E is withheld.',
    remedy: 'Read the strain in finer steps; strengths by an offset from this line carry the same doubt.',
  },
  'windows-disagree': {
    severity: 'caution', about: 'method',
    message: 'The elastic line, {slope} MPa, is fragile: other windows ({windows}) give slopes from {lowest} to {highest} MPa and stresses at the 0.2 % offset from {low} to {high} MPa; the doubt of the slope moves this offset by {share} %.',
    remedy: 'Look at the elastic detail; report the range, or state the window. Where the curve is bent, all these slopes are too low: the ranges do not bound the truth.',
  },
  'window-slopes-disagree': {
    severity: 'caution', about: 'method',
    message: 'The elastic line, {slope} MPa, is fragile: other windows ({windows}) give slopes from {lowest} to {highest} MPa.',
    remedy: 'Look at the elastic detail; report the range, or state the window. Where the curve is bent, all these slopes are too low: the ranges do not bound the truth.',
  },
  'windows-fall': {
    severity: 'caution', about: 'method',
    message: 'The elastic line, {slope} MPa, is fragile: other windows ({windows}) give slopes up to {highest} MPa, and some that are negative, for their strain goes back while the stress rises.',
    remedy: 'Look at the elastic detail and at the motion: its noise, its steps, or a compliance that takes out more than there is.',
  },
  'residuals-alike': {
    severity: 'note', about: 'method',
    message: 'Neighbouring residuals of the elastic line are alike (runs: {runs}, expected of random ones: {expected}): its standard error is too small.',
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
    message: 'With leverage {leverage} the doubt of the slope moves the offset of {symbol} by {share} %; lines so much flatter or steeper through the middle of the window meet the curve from {low} to {high} MPa.',
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
  'ends-before-hardening': {
    severity: 'caution', about: 'method',
    message: 'The test ended on the level of yielding, before hardening: ReL, {lower} MPa, is the lowest stress so far, and Rm, which ISO 6892-1 does not define there, at least the highest stress of the level, not ReH, {upper} MPa; Ae, Ag and Agt are withheld.',
    remedy: 'State ReL as a value before hardening; pull on to the maximum force for Rm, Ae and Agt.',
  },
  // ISO 6892-1:2019, note to maximum force, and its figure (from memory)
  'no-hardening': {
    severity: 'caution', about: 'method',
    message: 'No hardening follows the level of yielding, on which ReL is {lower} MPa: ISO 6892-1 defines no Rm there. What stands for it is the highest stress of the level, not ReH, {upper} MPa; Ae, Ag and Agt are withheld.',
    remedy: 'Report ReH and ReL; where a strength is asked for, agree on what stands for it.',
  },
  'lower-yield-in-dips': {
    severity: 'caution', about: 'method',
    message: 'ReL, {lowest} MPa, lies in one of {count} short falls of the force during yielding, from each of which it came back; the noise of the motion hides whether they are strokes of the drive or the metal: without them ReL is {level} MPa.',
    remedy: 'Say so with ReL and Ae; pull through yielding in one stroke, or log a motion that shows whether the drive goes back.',
  },
  'falls-slip-or-yield': {
    severity: 'fault', about: 'method',
    message: 'Sudden falls of the force during yielding ({count} in all) came back along the elastic line, together {way} mm of travel farther on: slips in the grips or bursts of the metal, which travel does not tell apart. With these falls ReL is {lowest} MPa, without them {level} MPa. Ae is withheld: {least} for slips, {most} for the metal.',
    remedy: 'Look for marks of the jaws on the heads: of a piece that slipped take the slips out (`repairs.slips`); else ReL stands. Strains by travel beyond the falls may hold that way. An extensometer over the parallel length tells it.',
  },
  'few-points-before-proof': {
    severity: 'caution', about: 'method',
    message: 'Few samples lie between the end of the elastic window and {symbol}: {points}.',
    remedy: 'Log faster: between distant samples the chord runs below the curve.',
  },
  'several-crossings': {
    severity: 'caution', about: 'method',
    message: 'The curve crosses the line of {symbol} {count} times; the first lasting crossing counts.',
    remedy: 'Look at the elastic detail; with a yield point report ReH and ReL first.',
  },
  'proof-strength-not-reached': {
    severity: 'caution', about: 'method',
    message: '{symbol} was not reached before the maximum: brittle, or stopped early.',
    remedy: 'Report strength only.',
  },
  'total-extension-not-reached': {
    severity: 'note', about: 'method',
    message: '{symbol} was not reached in the record.',
    remedy: 'Leave it out of the report.',
  },
  'maximum-wide': {
    severity: 'note', about: 'method',
    message: 'The force stays within {share} % of its maximum over {width} strain; noise, steps and the uncertainties given leave Agt a standard uncertainty of {uncertainty}.',
    remedy: 'Give Agt with its standard uncertainty; a drift of the force or another pace there moves it within that width.',
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
  // limits from memory
  'stress-rate-outside': {
    severity: 'caution', about: 'method',
    message: 'By its local rates {share} % of the elastic window was loaded at {lowest} to {highest} MPa/s (ISO 6892-1 method B), where 90 % are wanted; the median stress rate is {rate} MPa/s.',
    remedy: 'Load at a rate within the range; see the figure of rate over time.',
  },
  'mean-stress-rate-outside': {
    severity: 'caution', about: 'method',
    message: 'The stress rate over the elastic window is {rate} MPa/s, outside {lowest} to {highest} MPa/s (ISO 6892-1 method B); the window holds too few samples to tell its local rates.',
    remedy: 'Load at a rate within the range, and log faster.',
  },
  // limits from memory
  'strain-rate-high': {
    severity: 'caution', about: 'method',
    message: 'The strain rate {where} is {rate} 1/s, above {highest} 1/s (ISO 6892-1).',
    remedy: 'Load more slowly there; a high rate raises the yield values.',
  },
  // limit from memory
  'strain-rate-low': {
    severity: 'caution', about: 'method',
    message: 'By its local rates {share} % of the yielding went at {lowest} 1/s or faster (ISO 6892-1 method B, for ReL), where 90 % are wanted; the mean strain rate is {rate} 1/s.',
    remedy: 'Load faster through yielding; a low rate lowers ReL.',
  },
  'hardening-correlation-low': {
    severity: 'caution', about: 'method',
    message: 'The hardening law fits with R² = {correlation} only.',
    remedy: 'Another law may fit better; look at the true curve.',
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
  'withheld-after-slip': {
    severity: 'fault', about: 'method',
    message: 'Withheld: {symbols}; the piece slipped in the grips at sample {sample} before them, and their strain would hold up to {strain} of slip.',
    remedy: 'Take the slip out before the analysis (`repairs.slips`), or test with an extensometer.',
  },
  'extensions-hold-slip': {
    severity: 'caution', about: 'method',
    message: '{symbols}: the strain holds what the piece slipped in the grips at sample {sample}; the values are too large by up to {strain} of strain.',
    remedy: 'Take the slip out before the analysis (`repairs.slips`), or measure the elongation on the broken piece.',
  },
  'not-determined': {
    severity: 'note', about: 'method',
    message: 'Not determined: {symbol}; {why}.',
    remedy: 'See the reason: this record, with what was asked of it, cannot support the value.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;
