import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings about shear, Brinell hardness, cupping, unloading loops and the broken piece. */
export const otherTestsEntries = {
  'shear-clearance': {
    severity: 'caution', about: 'frame',
    message: 'A clearance of {clearance} mm is {share} % of the {dimension} mm that is sheared: bending and tension mix into the shear.',
    remedy: 'Use closely fitting, sharp tools; state the clearance with the value.',
  },
  'shear-bending': {
    severity: 'caution', about: 'piece',
    message: 'The piece was bent: its shear strength is not that of pure shear.',
    remedy: 'Support the piece up to the shear plane, use a closer tool, and repeat the test.',
  },
  // limits from memory
  'shear-ratio-unusual': {
    severity: 'caution', about: 'method',
    message: 'The shear strength is {ratio} of the tensile strength; {least} to {most} is usual for {family}.',
    remedy: 'Check the area, the number of shear planes and the tensile strength given.',
  },
  'no-shear-modulus': {
    severity: 'note', about: 'method',
    message: 'No shear modulus is derived: the travel holds bending, indentation and the tool besides the shear.',
    remedy: 'A torsion test gives the shear modulus.',
  },
  'brinell-indentation-outside': {
    severity: 'fault', about: 'method',
    message: 'Indentation {number}: its diameter is {ratio} of the ball, outside 0.24 to 0.60; it does not count.',
    remedy: 'Take another force for this ball: a smaller index for a soft metal, a larger one for a hard metal.',
  },
  'brinell-diameters-differ': {
    severity: 'caution', about: 'piece',
    message: 'Indentation {number}: its two diameters differ by {share} %.',
    remedy: 'Look for a tilted surface or a grain direction; above 1 % say so with the value (common practice).',
  },
  'brinell-one-diameter': {
    severity: 'note', about: 'method',
    message: 'Indentation {number}: only one diameter was read.',
    remedy: 'Read two at right angles; one per cent of the diameter is two of the hardness.',
  },
  'brinell-force-not-nominal': {
    severity: 'caution', about: 'frame',
    message: 'Indentation {number}: the force {force} N is {share} % off {nominal} N, the force of {designation}; 1 % is allowed.',
    remedy: 'Bring the force to its nominal value within 1 %; the hardness was computed with the force as it was.',
  },
  'brinell-indentation-off-scale': {
    severity: 'note', about: 'method',
    message: 'Indentation {number} does not count in the mean: its force is {share} % off that of {designation}, which others keep within 1 %.',
    remedy: 'Make the indentation again with the force of the scale.',
  },
  'brinell-force-in-kgf': {
    severity: 'fault', about: 'method',
    message: 'Indentation {number}: the force {force} N is the number of {designation} in kgf, which is {nominal} N.',
    remedy: 'Give the force in newtons: the hardness was computed with the number as it was given.',
  },
  'brinell-index-unusual': {
    severity: 'caution', about: 'method',
    message: 'Indentation {number}: a ball of {ball} mm with {force} N (force-diameter index {index}) is no pair of the standard.',
    remedy: 'Take a ball of 1, 2.5, 5 or 10 mm and a force that the standard has for it; values of other pairs do not compare.',
  },
  // limits from memory
  'brinell-too-hard': {
    severity: 'caution', about: 'method',
    message: '{hardness} HBW is above 650 HBW, where the scale ends: the ball itself gives way.',
    remedy: 'Take another hardness test, such as Vickers or Rockwell C.',
  },
  'brinell-ball-unsuited': {
    severity: 'caution', about: 'method',
    message: 'A ball of {ball} mm is too small for {material}; its smallest is {least} mm.',
    remedy: 'Repeat with a larger ball: the indentation must take in many grains.',
  },
  // limits from memory
  'brinell-index-unsuited': {
    severity: 'caution', about: 'method',
    message: 'The force-diameter index {index} is not one for {material} of {hardness} HBW (usual: {usual}).',
    remedy: 'Repeat with a force of a usual index.',
  },
  'brinell-force-unsteady': {
    severity: 'caution', about: 'frame',
    message: 'Indentation {number}: the force changed by {share} % while it was held; the highest, {force} N, counts.',
    remedy: 'Hold the force within 1 %: follow up gently, never beyond it.',
  },
  'brinell-dwell-outside': {
    severity: 'caution', about: 'method',
    message: 'Indentation {number}: the force was held for {duration} s, not 10 to 15 s.',
    remedy: 'Hold for 10 to 15 s, or state the time: soft metals creep.',
  },
  'brinell-rise-outside': {
    severity: 'caution', about: 'method',
    message: 'Indentation {number}: the force rose within {duration} s, not within 2 to 8 s.',
    remedy: 'Bring the force on in 2 to 8 s without a blow.',
  },
  'brinell-dwell-not-found': {
    severity: 'caution', about: 'record',
    message: 'Indentation {number}: no stretch of held force stands out in the record.',
    remedy: 'Log from before the rise until after the release.',
  },
  'brinell-piece-thin': {
    severity: 'caution', about: 'piece',
    message: 'The piece is {thickness} mm thick, less than 8 times the depth of indentation ({least} mm).',
    remedy: 'Take a smaller ball and force; the far side must show no mark.',
  },
  'brinell-near-edge': {
    severity: 'caution', about: 'piece',
    message: 'Indentation {number} lies {distance} mm from the edge, less than 2.5 times its diameter ({least} mm).',
    remedy: 'Test farther from the edge.',
  },
  'brinell-near-neighbour': {
    severity: 'caution', about: 'piece',
    message: 'Indentation {number} lies {distance} mm from the next, less than 3 times its diameter ({least} mm).',
    remedy: 'Test farther from other indentations: the metal there is work-hardened.',
  },
  'strength-estimated': {
    severity: 'caution', about: 'method',
    message: 'A tensile strength of {strength} MPa is an estimate from hardness, good to about 10 %.',
    remedy: 'Never accept a part by it: make a tension test where strength decides.',
  },
  'strength-not-estimated': {
    severity: 'note', about: 'method',
    message: 'No tensile strength is estimated: {why}.',
    remedy: 'Make a tension test.',
  },
  'cupping-crack-not-recorded': {
    severity: 'fault', about: 'record',
    message: 'Blank {number}: the force does not fall by {share} % after its maximum; no crack is in the record, and no depth is given.',
    remedy: 'Load until the crack goes through the sheet, and log on beyond it.',
  },
  'cupping-fall-gradual': {
    severity: 'caution', about: 'record',
    message: 'Blank {number}: the force falls gradually, over {depth} mm; the moment of the crack is uncertain by so much.',
    remedy: 'Watch the cup in a mirror or by a camera, through the closed guard and never from the line of loading, and stop when light passes; load more slowly near the maximum.',
  },
  'cupping-contact-uncertain': {
    severity: 'caution', about: 'record',
    message: 'Blank {number}: the force rises gradually; the ball touches somewhere from {earliest} to {latest} mm of the travel. The depth counts from the middle and is uncertain by {doubt} mm.',
    remedy: 'Read the travel at the first touch by eye or at a small known force, or measure the cup with a depth gauge.',
  },
  'readings-differ': {
    severity: 'caution', about: 'piece',
    message: 'The values of {symbol} lie from {lowest} to {highest} {unit}: {share} % of their mean, where {limit} % is much for one material (common practice).',
    remedy: 'Look at the one that lies farthest off: its readings, its place on the piece, its record. Leave none out without a cause.',
  },
  'cupping-displacement-coarse': {
    severity: 'caution', about: 'frame',
    message: 'Blank {number}: one step of the displacement reading is {step} mm; 0.1 mm is wanted.',
    remedy: 'Use a finer displacement sensor.',
  },
  'cupping-frame-included': {
    severity: 'caution', about: 'frame',
    message: 'The depth holds the motion of the frame, which was not given.',
    remedy: 'Measure the compliance of the frame, or the depth of the cup with a gauge.',
  },
  'cupping-sheet-outside': {
    severity: 'caution', about: 'piece',
    message: 'A sheet thickness of {thickness} mm is outside 0.1 to 2 mm, where the index IE is defined.',
    remedy: 'Thicker or narrow sheet has tools and symbols of its own; do not compare with IE.',
  },
  'cupping-blank-narrow': {
    severity: 'caution', about: 'piece',
    message: 'The blank is {width} mm wide; 90 mm or more is wanted.',
    remedy: 'Cut wider blanks, so that the clamp holds all around.',
  },
  // limits from memory
  'cupping-holding-force': {
    severity: 'caution', about: 'frame',
    message: 'The blank was held by {force} N, not by about 10 kN.',
    remedy: 'Set the clamp to about 10 kN: a loose blank is drawn in and gives too great a depth.',
  },
  'cupping-tools-other': {
    severity: 'caution', about: 'frame',
    message: 'A ball of {ball} mm and a die of {die} mm are not the 20 and 27 mm of the index IE.',
    remedy: 'State the tools with the depth; it does not compare with IE.',
  },
  'cupping-few-blanks': {
    severity: 'note', about: 'piece',
    message: 'Blanks that the depth rests on: {blanks}; three or more are wanted.',
    remedy: 'Test at least three blanks and give the mean.',
  },
  'unloading-refused': {
    severity: 'fault', about: 'frame',
    message: 'Reversibility {reversibility} % is above 1.5 %: the force holds while rising only, so nothing is taken from unloading.',
    remedy: 'Verify the force while falling, or measure it at the piece instead of in the oil.',
  },
  'reversibility-unknown': {
    severity: 'caution', about: 'frame',
    message: 'The reversibility of the force is not known: friction of the cylinder bends and widens the loops.',
    remedy: 'Verify the force rising and falling, and give its reversibility.',
  },
  'unloading-none': {
    severity: 'fault', about: 'record',
    message: 'No unloading is in the record: {why}.',
    remedy: 'Turn the drive back until the force has fallen well, and load again; log all of it.',
  },
  'unloading-not-to-zero': {
    severity: 'note', about: 'method',
    message: 'Loop {number} goes down to {share} % of its top only; its permanent set is read where its line meets zero stress.',
    remedy: 'Unload close to zero where the permanent set decides.',
  },
  'permanent-set-not-bracketed': {
    severity: 'note', about: 'method',
    message: '{symbol} is not determined: the sets of the loops go from {least} to {most} %.',
    remedy: 'Unload from a lower and from a higher stress, so that one set lies below the limit and one above.',
  },
  'fracture-outside-middle': {
    severity: 'caution', about: 'piece',
    message: 'The fracture lies {distance} mm from the nearest mark, less than a third of the gauge length ({least} mm).',
    remedy: 'A is still valid where it reaches its least value; else measure by subdivision, or test another piece.',
  },
  'fracture-at-mark': {
    severity: 'caution', about: 'piece',
    message: 'The piece broke at a gauge mark.',
    remedy: 'Mark more lightly; A is doubtful, and the strength may be low.',
  },
  'fracture-outside-parallel': {
    severity: 'fault', about: 'piece',
    message: 'The piece broke {place}: A and Z are not those of the parallel length, and the strength is a lower limit.',
    remedy: 'Check fillets, grips and alignment, and test another piece.',
  },
  'elongation-small': {
    severity: 'caution', about: 'piece',
    message: 'A = {elongation} % is below 5 %: two ordinary marks are too coarse for it.',
    remedy: 'Measure by fine marks: scribed arcs, read under a microscope.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;
