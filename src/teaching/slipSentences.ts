const dimensions = 'Measure the section again, and compare it with what was entered and in which unit.';
const forceUnit = 'Read the unit of the force column, and compare one force with the display.';
const strainUnit = 'Read the unit of the strain column in the file.';
const extensionUnit = 'Read the unit of the extension or travel column, and compare its last value with the piece.';

const sentences = {
  // mistakes that explain properties as well, in their words
  'radius-for-diameter': { slip: 'The radius was entered as the diameter.', advice: dimensions },
  'diameter-doubled': { slip: 'Twice the diameter was entered.', advice: dimensions },
  'section-a-tenth': { slip: 'A tenth of each dimension of the section was entered.', advice: dimensions },
  'section-tenfold': { slip: 'Ten times each dimension of the section was entered.', advice: dimensions },
  'section-in-inches': { slip: 'The section was entered in inches.', advice: dimensions },
  'section-converted-twice': { slip: 'The section in mm was taken as inches and converted.', advice: dimensions },
  'piece-in-inches': { slip: 'Section and lengths were entered in inches.', advice: dimensions },
  'lengths-in-inches': {
    slip: 'The lengths of the piece were entered in inches.',
    advice: 'Compare the lengths that were entered with the piece, and their unit.',
  },
  'force-in-kilonewtons': { slip: 'The force is in kN and was read as N.', advice: forceUnit },
  'newtons-as-kilonewtons': { slip: 'The force is in N and was read as kN.', advice: forceUnit },
  'force-in-kilograms-force': { slip: 'The force is in kgf and was read as N.', advice: forceUnit },
  'newtons-as-kilograms-force': { slip: 'The force is in N and was read as kgf.', advice: forceUnit },
  'force-in-pounds-force': { slip: 'The force is in lbf and was read as N.', advice: forceUnit },
  'newtons-as-pounds-force': { slip: 'The force is in N and was read as lbf.', advice: forceUnit },
  'strain-in-percent': { slip: 'The strain is in % and was read as a ratio.', advice: strainUnit },
  'ratio-as-percent': { slip: 'The strain is a ratio and was read as %.', advice: strainUnit },
  'strain-in-microstrain': { slip: 'The strain is in µm/m and was read as a ratio.', advice: strainUnit },
  'extension-in-inches': { slip: 'The extension is in inches and was read as mm.', advice: extensionUnit },
  'extension-in-micrometres': { slip: 'The extension is in µm and was read as mm.', advice: extensionUnit },
  // someone who computes by hand
  'square-for-circle': {
    slip: 'The area was taken as the square of the diameter.',
    advice: 'A round section has the area π d²/4: the factor π/4 is missing.',
  },
  'area-in-square-centimetres': {
    slip: 'The area was entered in cm², so the answer is in N/cm².',
    advice: 'Take the area in mm²: N/mm² is MPa, and 1 cm² is 100 mm².',
  },
  'area-in-square-metres': {
    slip: 'The area was entered in m², so the answer is in Pa.',
    advice: 'Take the area in mm², or divide pascals by a million.',
  },
  'answer-in-psi': { slip: 'The answer is in pounds-force per square inch.', advice: 'Give the answer in MPa: 1 MPa is 145.04 psi.' },
  'answer-in-gigapascals': { slip: 'The answer is in GPa.', advice: 'Give the answer in MPa: 1 GPa is 1000 MPa.' },
  'percent-for-ratio': {
    slip: 'A number of per cent was given where a ratio is asked.',
    advice: 'A ratio is a hundredth of the number of per cent.',
  },
  'ratio-for-percent': { slip: 'A ratio was given where per cent are asked.', advice: 'Multiply the ratio by 100 for per cent.' },
  // on the way to Rm and Rp0.2
  'final-area': {
    slip: 'The maximum force was divided by the area after fracture.',
    advice: 'Rm rests on the original area S0: the neck forms only after the maximum.',
  },
  'force-at-fracture': {
    slip: 'The force at fracture was taken in place of the maximum force.',
    advice: 'Look for the highest force of the record; a ductile piece breaks below it.',
  },
  'true-fracture-stress': {
    slip: 'The force at fracture was divided by the area after fracture.',
    advice: 'That is the mean true stress at fracture. Rm is the maximum force over the original area.',
  },
  'true-stress': { slip: 'The true stress at maximum force was given.', advice: 'Rm is an engineering stress: do not multiply by 1 + e.' },
  'force-for-stress': { slip: 'The maximum force in N was given.', advice: 'Divide the force by the original area.' },
  'proof-for-maximum': {
    slip: 'The proof strength was given in place of the tensile strength.',
    advice: 'Rm is the highest stress of the whole curve.',
  },
  'maximum-for-proof': {
    slip: 'The tensile strength was given in place of the proof strength.',
    advice: 'Rp0.2 is where the line at 0.2 % offset meets the curve, near the knee.',
  },
  'handbook-modulus-on-travel': {
    slip: 'The offset line was drawn with the modulus of a handbook on a curve of travel that still holds the frame.',
    advice: "Draw the line with the curve's own slope; then the frame drops out of the offset.",
  },
  'origin-not-moved': {
    slip: 'The offset was counted from the zero of the travel, with the slack in it.',
    advice: 'Carry the elastic line down to zero stress and count the offset from there.',
  },
  'total-for-plastic': {
    slip: 'The stress at 0.2 % total extension was read.',
    advice: 'The 0.2 % are plastic: draw a line of the elastic slope through 0.2 % strain, not an upright one.',
  },
  'offset-ten-times': { slip: 'The line was offset by 2 % in place of 0.2 %.', advice: '0.2 % is 0.002 as a ratio.' },
  'offset-one-tenth': { slip: 'The line was offset by 0.02 % in place of 0.2 %.', advice: '0.2 % is 0.002 as a ratio.' },
  // on the way to slopes, extensions and readings of the broken piece
  'frame-left-in': {
    slip: 'The travel still holds the motion of the frame.',
    advice: 'Take the compliance times the force off the travel before the strain is made.',
  },
  'frame-taken-out': {
    slip: 'The frame was taken out of the travel.',
    advice: 'The slope mE is asked of the curve as it was recorded; without the frame the slope is E.',
  },
  'gauge-for-parallel-length': {
    slip: 'Strain was counted over the gauge length L0.',
    advice: 'Travel is spread over the parallel length Lc: divide by that.',
  },
  'secant-to-proof': {
    slip: 'The slope was taken from the origin to the proof strength.',
    advice: 'Plastic extension is in that secant: fit the straight part alone.',
  },
  'one-point-for-slope': {
    slip: 'One point was divided: its stress by its strain, counted from the zero of the travel.',
    advice: 'Slack lies before the line: take the slope over the straight part, a rise of stress over a rise of strain.',
  },
  'fracture-for-maximum': {
    slip: 'The extension at fracture was given in place of that at maximum force.',
    advice: 'Read the extension at the highest force; beyond it the neck grows alone.',
  },
  'true-strain': { slip: 'The true strain was given.', advice: 'Extensions are engineering strains: do not take the logarithm.' },
  'parallel-for-gauge-length': {
    slip: 'The growth of the gauge length was divided by the parallel length.',
    advice: 'A is (Lu − L0)/L0, both read between the marks.',
  },
  'parallel-length-taken-off': {
    slip: 'The parallel length was taken for the original gauge length.',
    advice: 'L0 is the distance of the marks before the test, not the length of the straight part.',
  },
  'final-length-as-base': { slip: 'The growth was divided by the final gauge length.', advice: 'Divide by the original gauge length L0.' },
  'original-not-taken-off': {
    slip: 'The final length was divided by the original one, and 1 was not taken off.',
    advice: 'A is (Lu − L0)/L0.',
  },
  'curve-for-marks': {
    slip: 'The total extension at fracture was read from the curve.',
    advice: 'That is At over the parallel length, the elastic part included. A comes from the marks of the fitted pieces.',
  },
  'travel-for-marks': {
    slip: 'The whole travel at fracture was divided by the gauge length.',
    advice: 'Travel holds slack, frame and the length outside the marks. A comes from the marks of the fitted pieces.',
  },
  'maximum-for-fracture': {
    slip: 'The extension at maximum force was given.',
    advice: 'That is Agt. A comes from the marks of the broken piece.',
  },
  'diameter-for-area': { slip: 'The reduction of the diameter was given.', advice: 'Z compares areas: square the diameters first.' },
  'final-area-as-base': { slip: 'The loss of area was divided by the area after fracture.', advice: 'Divide by the original area S0.' },
  'remaining-area': { slip: 'The share of the area that is left was given.', advice: 'Z is the share that is lost: (S0 − Su)/S0.' },
  'elongation-for-reduction': {
    slip: 'The elongation after fracture was given.',
    advice: 'Z compares the areas of the section before and after, not lengths.',
  },
} as const;

/** Which slip gives a number of its own; never renamed. */
export type SlipKey = keyof typeof sentences;

/** @internal What was done and what to do instead, in English, by the key of the slip. */
export const slipSentences: Readonly<Record<SlipKey, { readonly slip: string; readonly advice: string }>> = sentences;
