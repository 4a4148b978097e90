import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings about a test that is still to be done. */
export const planningEntries = {
  'force-near-capacity': {
    severity: 'caution', about: 'frame',
    message: 'The greatest force to be expected, {force} N, is {share} % of the capacity of {capacity} N.',
    remedy: 'Take a smaller section or test force; a family of materials does not bound an unknown bar.',
  },
  'force-above-capacity': {
    severity: 'fault', about: 'frame',
    message: 'The greatest force to be expected, {force} N, is {share} % of the capacity of {capacity} N: this frame may not do the test.',
    remedy: 'Take a smaller section or test force, or another frame; never raise the relief valve.',
  },
  'force-unverified': {
    severity: 'caution', about: 'frame',
    message: 'No verified range of force was given for the frame.',
    remedy: 'Have the force verified, and give the lowest verified force and the error there.',
  },
  'force-below-verified': {
    severity: 'caution', about: 'frame',
    message: 'The least force that counts, {force} N ({what}), is below {limit} N, {why}.',
    remedy: 'Take a larger section or test force, or have the lower part of the range verified.',
  },
  'pressure-near-limit': {
    severity: 'caution', about: 'frame',
    message: 'The oil pressure would reach {pressure} MPa, {share} % of the {limit} MPa of the {device}.',
    remedy: 'Take a smaller section or test force; never raise the relief valve, and keep the transmitter within its range.',
  },
  'travel-near-stroke': {
    severity: 'caution', about: 'frame',
    message: 'The test needs about {travel} mm of travel, {share} % of the stroke of {stroke} mm.',
    remedy: 'Take up slack before the test begins, or make the piece shorter within its rules.',
  },
  'frame-compliance-unknown': {
    severity: 'caution', about: 'frame',
    message: 'The compliance of the frame is not known: speed, travel and stored energy are least values, and E cannot be had from travel.',
    remedy: 'Measure the compliance with a stiff block, a known bar or two lengths, or use an extensometer.',
  },
  'oil-volume-unknown': {
    severity: 'note', about: 'frame',
    message: 'The volume of oil under pressure is not known: strokes in the elastic part and stored energy are least values.',
    remedy: 'Estimate cylinder, lines and hoses; oil often takes more strokes than the piston.',
  },
  'elastic-speed-too-fast-for-yield': {
    severity: 'note', about: 'method',
    message: 'Held through yield, the speed of the elastic part would strain the piece at {rate} 1/s, {ratio} times the rate to aim at there.',
    remedy: 'Slow down before yield, where the pace sheet says so.',
  },
  'elastic-part-quick': {
    severity: 'note', about: 'method',
    message: 'At this rate the elastic part up to the change of speed lasts {time} s: hardly five readings of a dial.',
    remedy: 'Log it, or aim at the lower end of the rates that the standard allows.',
  },
  'ball-force-error': {
    severity: 'caution', about: 'frame',
    message: 'The force may be off by {error} %, the test force of a ball by {limit} % at most.',
    remedy: 'Have the frame verified to class 1 at this force, or choose a force where it is.',
  },
  'drive-too-fast': {
    severity: 'caution', about: 'frame',
    message: 'The drive would need {number} {what} a minute in the {stage} part: more than {limit} by hand is hard to keep even.',
    remedy: 'Aim at a lower rate that the standard allows, and state it.',
  },
  'drive-strokes-coarse': {
    severity: 'caution', about: 'frame',
    message: 'One stroke of the pump moves the crosshead by {travel} mm, {ratio} times the offset of Rp0.2: yield passes within one.',
    remedy: 'Move the handle slowly and only in part past the elastic range, or use a drive with finer steps.',
  },
  'planned-sampling-slow': {
    severity: 'caution', about: 'record',
    message: 'A sampling rate of {rate} per second is below the {least} that the stress rate of {stressRate} MPa/s needs: ReH may be low by up to {loss} MPa.',
    remedy: 'Log faster, or load slower around yield.',
  },
  'strain-not-in-accordance': {
    severity: 'caution', about: 'method',
    message: '{standard} asks for an extensometer: proof strengths and E would be determined from crosshead displacement, not in accordance with it.',
    remedy: 'Use an extensometer, or state the deviation beside every value.',
  },
  'structural-acceptance': {
    severity: 'fault', about: 'method',
    message: 'The values are to accept a part that carries load: this plan cannot do that.',
    remedy: 'Follow the governing code; a competent laboratory with a verified machine, and a licensed or otherwise authorised professional, decide.',
  },
  'planned-index-unusual': {
    severity: 'caution', about: 'method',
    message: 'The force-diameter index 0.102 F/D² = {index} is none of {usual}.',
    remedy: 'Take a force of the table for this ball.',
  },
  'planned-indentation-outside': {
    severity: 'caution', about: 'method',
    message: 'At {hardness} HBW the indentation would be {ratio} times the ball, outside 0.24 to 0.60.',
    remedy: 'Take another index of force over ball diameter squared.',
  },
  'planned-span-short': {
    severity: 'caution', about: 'piece',
    message: 'The span is {ratio} times the depth of the bar: below {limit} shear adds to the deflection.',
    remedy: 'Take a longer span, or do not determine E.',
  },
  'planned-buckling': {
    severity: 'caution', about: 'piece',
    message: 'With height over diameter {ratio} the piece may buckle from a strain of {strain} on, before the {planned} that is planned.',
    remedy: 'Take a shorter piece, up to 3 diameters, or stop earlier.',
  },
  'head-weak': {
    severity: 'caution', about: 'piece',
    message: '{what}: {stress} MPa at the greatest force, against {limit} MPa that the head may carry; {margin} times what is needed.',
    remedy: 'Make the head larger, or the section smaller; the piece must break within its parallel length.',
  },
  'head-too-small': {
    severity: 'caution', about: 'piece',
    message: 'The head is {ratio} times the section, below {least}.',
    remedy: 'Make the head wider; a piece that breaks in the head is lost.',
  },
  'grip-short': {
    severity: 'caution', about: 'piece',
    message: 'The grips hold {length} mm of the head, less than {least} mm.',
    remedy: 'Make the heads longer: two thirds of the faces of wedge grips should hold, a thread should be in by its diameter.',
  },
  'grip-may-slip': {
    severity: 'caution', about: 'piece',
    message: 'The grips hold {margin} times what is needed, below {least}.',
    remedy: 'Clean and sharpen the faces, grease the backs of the wedges, raise the clamping force or lengthen the head.',
  },
  'fillet-small': {
    severity: 'caution', about: 'piece',
    message: 'The radius of the fillets, {radius} mm, is below {least} mm.',
    remedy: 'Make it larger: a sharp shoulder starts the fracture there.',
  },
  'parallel-length-long': {
    severity: 'note', about: 'piece',
    message: 'The parallel length {length} mm is {ratio} times the gauge length {gauge} mm: the piece may break outside the marks.',
    remedy: 'Shorten the parallel length, or mark equal intervals along all of it.',
  },
  'piece-too-short': {
    severity: 'fault', about: 'piece',
    message: 'A total length of {length} mm does not hold parallel length, fillets and heads, which need {least} mm.',
    remedy: 'Make the blank longer, or the heads shorter within what the grips need.',
  },
  'shape-outside-tolerance': {
    severity: 'caution', about: 'piece',
    message: 'The {dimension} differs by {difference} mm along the piece, more than {limit} mm.',
    remedy: 'Machine the piece again, or measure it in more places and state the deviation.',
  },
  'size-outside-tolerance': {
    severity: 'note', about: 'piece',
    message: 'The {dimension} is {difference} mm off its nominal value, more than {limit} mm: the area must be measured, not taken as nominal.',
    remedy: 'Measure the piece and use its own area.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;
