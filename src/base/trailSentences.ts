const sentences = {
  // repairs of a record
  'sign-turned': 'The sign of the {column} was turned.',
  'clock-rebuilt': 'Time was counted anew from {start} s, in equal steps of 1/{rate} s.',
  'spikes-replaced': 'Spikes of the {column} were replaced by the line between their neighbours; samples: {samples}.',
  'late-tare-carried-back': 'Force before sample {sample}, where it was set to zero, was counted from that zero: {step} N were added.',
  'zero-put-back': 'The zero of the force that was set under load at sample {sample} was put back: {amount} N were added from there on.',
  'zero-drift-removed': 'The drift of the zero from {before} to {after} N was removed, straight over the record.',
  'channels-aligned': 'Force was moved against the other channels; samples: {samples}.',
  'jump-joined': 'A jump of the {column} by {size} {unit} at sample {sample} was joined.',
  'slip-left-out': 'The excursion of a slip in the grips was left out, from sample {fromSample} to {toSample}.',
  'slip-taken-out': 'A way of {way} {unit} in the grips was taken out of the {column} from sample {sample} on.',
  'excursions-left-out': 'Excursions of a drive that went back were left out: {count}; samples in them: {samples}.',
  'repeats-left-out': 'Samples that repeat the one before were left out: {samples}.',
  'one-test-taken': 'Test {test} of {of} was taken, from sample {fromSample} to {toSample}.',
  // from a record to a curve
  'force-by-calibration':
    'Force is by calibration from {low} to {high} N; idle readings below it went along its slope at {low} N, down to zero.',
  'force-by-calibration-from-zero': 'Force is by calibration, up to {high} N.',
  'force-by-bore': 'Force is oil pressure times {area} mm² (bore {bore} mm) times an efficiency of {efficiency}.',
  'force-by-annulus': 'Force is oil pressure times {area} mm² (bore {bore} mm, rod {rod} mm) times an efficiency of {efficiency}.',
  'tare-force-taken-off': '{tareForce} N were taken off the force.',
  'tare-over-travel-taken-off': 'A tare over travel was taken off the force, from {low} to {high} N.',
  'signs-turned': 'The sign was turned in {columns}: loading counts positive.',
  'frame-compliance-removed': 'The give of the frame was removed from travel, {largest} mm at the highest force.',
  'indentation-removed': 'The indentation at supports and noses was removed from travel, {largest} mm at the highest force.',
  'frame-and-indentation-removed': 'The give of the frame and the indentation were removed from travel, {largest} mm at the highest force.',
  'force-over-area': 'Force was divided by the original area of {area} mm².',
  'force-over-shear-planes': 'Force was divided by the area of all shear planes, {planes} × {area} mm².',
  'strain-by-parallel-length': 'Travel was divided by the parallel length of {length} mm.',
  'strain-by-height': 'Travel was divided by the height of {length} mm.',
  'strain-by-extensometer': 'Strain is that of the extensometer over {length} mm.',
  'carried-on-by-travel': 'From sample {fromSample} on the curve was carried on by travel over the parallel length of {length} mm.',
  'ended-with-extensometer': 'The curve was ended with the extensometer, before sample {samples}.',
  'excursions-not-evaluated': 'Excursions were left out of the evaluation, not of the curve: {count}; samples in them: {samples}.',
  'fillets-taken-off':
    'The elastic share of the fillets was taken off, by a slope of {slope} MPa: {effectiveLength} mm stretch, {parallelLength} mm count.',
  'outer-fibre-stress':
    'Force was turned into stress of the outer fibre, by moment arm over section modulus: {forcePerStress} N for each MPa.',
  'outer-fibre-strain-by-gauge': 'Strain is that of the gauge on the outer fibre.',
  'outer-fibre-strain-by-travel': 'Travel was divided by {length} mm, which gives the strain of the outer fibre.',
  'outer-fibre-strain-by-deflection': 'Deflection was divided by {length} mm, which gives the strain of the outer fibre.',
  'line-fitted': 'The elastic line was fitted from sample {first} to {last}; its slope is {slope} MPa.',
  'origin-moved': 'The origin of strain was moved by {shift}, to where the line meets zero stress.',
  'after-fracture-left-out': 'Samples after the fracture were left out, from sample {fromSample} on.',
  'end-friction-taken-off': 'Friction of the ends was taken off the flow stress by Siebel, with a coefficient of {friction}.',
  'depth-from-contact': 'The depth of blank {blank} was counted from its contact, at {contact} mm.',
  'travel-from-contact': 'Travel at the maximum force was counted from contact, at {contact} mm.',
  'held-force-taken': 'For indentation {indentation} the highest force held was taken, {force} N, from sample {first} to {last}.',
  // several tests
  'results-taken-together': 'Results were taken together; tests: {tests}.',
  'tests-differ': 'The tests differ in {what} ({values}).',
  'tests-differ-pooled': 'The tests differ in {what} ({values}) and were pooled all the same.',
  'outliers-flagged': 'Outliers were flagged at a level of {alpha}; none was removed.',
} as const;

/** Codes of the steps of a trail; never renamed. */
export type TrailCode = keyof typeof sentences;

/** The sentence of a code, to the letter. */
export type TrailSentence<Code extends TrailCode = TrailCode> = (typeof sentences)[Code];

/** What a step of a trail did, in a sentence, by its code; `{name}` stands for a value of the step. */
export const trailSentences: Readonly<Record<TrailCode, string>> = sentences;
