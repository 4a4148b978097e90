import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings about compression and bending tests. */
export const compressionAndBendingEntries = {
  'signs-turned': {
    severity: 'note', about: 'record',
    message: 'Loading was recorded as negative in {columns}; the signs were turned, so that it counts positive.',
    remedy: 'Nothing to do; the columns themselves were not changed.',
  },
  // limits from memory
  'piece-squat': {
    severity: 'caution', about: 'piece',
    message: 'Height over diameter is {ratio}, below {least}: friction at the ends is in every stress.',
    remedy: 'Use a piece of 0.8 to 2 diameters for bearing materials, 3 for general use (ASTM E9).',
  },
  // limits from memory
  'piece-slender': {
    severity: 'caution', about: 'piece',
    message: 'Height over diameter is {ratio}, above {most}: beyond what compression pieces are made to.',
    remedy: 'Use a piece of 8 to 10 diameters for the modulus only, 3 for strengths (ASTM E9).',
  },
  'buckling-near': {
    severity: 'caution', about: 'piece',
    message: 'With height over diameter {ratio} the force reached {share} of the tangent-modulus buckling load, at a strain of {strain}.',
    remedy: 'Use a shorter piece, or take from this one only what lies below half of that load.',
  },
  'buckled': {
    severity: 'fault', about: 'piece',
    message: 'At a strain of {strain} ({stress} MPa) the force exceeded the tangent-modulus buckling load of a straight piece with end factor {endFactor}: beyond it the piece bends.',
    remedy: 'Values beyond that strain must not be used; a buckling piece can shoot out sideways. Use a shorter piece.',
  },
  'barrelled': {
    severity: 'caution', about: 'piece',
    message: 'The middle is {ratio} times as wide as the ends: stresses at large strains hold friction.',
    remedy: 'Lubricate better, or load in steps and lubricate anew; give stresses at small strains.',
  },
  'ends-wider-than-middle': {
    severity: 'caution', about: 'piece',
    message: 'The ends are wider than the middle, which is {ratio} times as wide: pressed between plates a piece bulges.',
    remedy: 'Look whether the two diameters are swapped; a pocket of lubricant that widens the ends is rare.',
  },
  'volume-not-kept': {
    severity: 'caution', about: 'piece',
    message: 'By the diameters after the test the piece has {ratio} times the volume it began with.',
    remedy: 'Check diameters and heights, and their units: plastic compression keeps the volume.',
  },
  'barrelling-not-measured': {
    severity: 'note', about: 'piece',
    message: 'The strain reached {strain}, and the diameters after the test were not given: barrelling is unknown.',
    remedy: 'Measure the diameter in the middle and at the ends after the test.',
  },
  'height-unlike-record': {
    severity: 'caution', about: 'piece',
    message: 'By the record the piece lost {recorded} mm of height for good, by measurement {measured} mm.',
    remedy: 'Check the frame compliance, the height and the zero of the displacement.',
  },
  'end-friction-not-removed': {
    severity: 'note', about: 'method',
    message: 'No coefficient of friction was given: the flow curve holds the friction of the ends.',
    remedy: 'Give the friction of the lubricant, or test two heights and extrapolate.',
  },
  'end-friction-removed': {
    severity: 'note', about: 'method',
    message: 'Friction of {friction} was taken off the flow stress by Siebel: {share} % at the largest strain.',
    remedy: 'State the friction and where it comes from; its doubt carries into the flow stress.',
  },
  'compressive-strength-without-strain': {
    severity: 'note', about: 'method',
    message: 'The piece did not break: a ductile metal has no compressive strength, only stresses at stated strains.',
    remedy: 'Report the yield strength, and stresses with their strains.',
  },
  'span-short': {
    severity: 'caution', about: 'piece',
    message: 'Span over height is {ratio}, below {least}: shear adds {share} % to the deflection, and the modulus is too low by as much.',
    remedy: 'Use a longer span (16 times the height), or state the share of shear with the modulus.',
  },
  'large-deflection': {
    severity: 'caution', about: 'method',
    message: 'From a stress of {stress} MPa on the deflection is more than {share} % of the span: the formulas of small deflections fail, and friction at the supports grows.',
    remedy: 'Take no stress or strain from beyond there, or use a shorter span.',
  },
  'flexural-stress-nominal': {
    severity: 'note', about: 'method',
    message: 'Beyond yielding the flexural stress is nominal: of this section it overstates the stress of the outer fibre by up to {factor} times.',
    remedy: 'Compare with other bending tests on the same section only; not with tension.',
  },
  'indentation-not-removed': {
    severity: 'note', about: 'frame',
    message: 'The indentation at supports and noses was not given and is still in the deflection.',
    remedy: 'Measure it with the piece on a flat plate, or give 0 where the compliance of the frame already holds it.',
  },
  'chord-unlike-slope': {
    severity: 'caution', about: 'method',
    message: 'The chord gives {chord} MPa, the straightest part {slope} MPa.',
    remedy: 'Look at the curve: slack or yielding lies between the strains of the chord; of a metal take the slope.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;
