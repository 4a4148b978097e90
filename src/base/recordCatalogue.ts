import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings about what the logger wrote. */
export const recordEntries = {
  'time-missing': {
    severity: 'caution', about: 'record',
    message: 'The record has no time column, so rates, pauses and the evenness of loading are unknown.',
    remedy: 'Log time with every sample; no time step is assumed.',
  },
  'time-not-increasing': {
    severity: 'caution', about: 'record',
    message: 'Samples at which time goes back: {count}, the first is sample {first}; rates are withheld.',
    remedy: 'Check the clock of the logger, or whether two tests are in one file.',
  },
  'time-gap': {
    severity: 'caution', about: 'record',
    message: 'Gaps in time: {count}, the longest {longest} s at sample {first}, where samples come every {usual} s.',
    remedy: 'Check that no gap lies in yielding, at the maximum or at fracture; a pause of the logger there loses the event.',
  },
  'time-unit-changes': {
    severity: 'caution', about: 'record',
    message: 'From sample {sample} on the time steps are {factor} times what they were: two units of time, or a clock set anew.',
    remedy: 'Rebuild the time from the rate of the logger (`rebuildTime`), or leave time out; rates across the change mean nothing.',
  },
  'time-coarse': {
    severity: 'caution', about: 'record',
    message: '{share} % of the samples carry the time of the one before: the clock steps by {step} s, coarser than the logging.',
    remedy: 'Log time with more digits, or rebuild it from the rate of the logger (`rebuildTime`).',
  },
  'time-unit-unlikely': {
    severity: 'caution', about: 'record',
    message: '{samples} samples in {duration} s, one every {usual} s: unusually fast for a manual test; the unit of time may be another.',
    remedy: 'Name the unit of time when reading the file.',
  },
  'force-sign-reversed': {
    severity: 'fault', about: 'record',
    message: 'The force falls to {lowest} N and rises to {highest} N only: pull is probably counted as negative.',
    remedy: 'Turn the sign of the force (`reverseSign`), and check the wiring or the convention of the logger.',
  },
  'channels-exchanged': {
    severity: 'fault', about: 'record',
    message: 'The travel falls away at sample {sample}, from {highest} mm at its highest, while the force stays at {force} N: force and travel are probably exchanged.',
    remedy: 'Name the columns when reading the file (`columns`), and check the plugs of the logger.',
  },
  'motion-sign-reversed': {
    severity: 'fault', about: 'record',
    message: 'The {column} goes from {first} to {last} {unit} while the force rises: its sign is the other way.',
    remedy: 'Turn its sign (`reverseSign`), and check the convention of the logger.',
  },
  spikes: {
    severity: 'caution', about: 'record',
    message: 'Spikes in the {column}: {count}, the largest {largest} {unit} off its neighbours, at sample {first}.',
    remedy: 'They are replaced by the line between their neighbours unless that is switched off; look for a loose plug or a disturbance.',
  },
  'signal-drops-out': {
    severity: 'caution', about: 'record',
    message: 'The {column} reads nothing from sample {first} on and comes back; samples without a reading: {count}.',
    remedy: 'Check plug and cable; nothing is known of the test in between.',
  },
  'signal-strays': {
    severity: 'caution', about: 'record',
    message: 'The {column} jumps off its line by {height} {unit} at sample {first} and jumps back; samples that are off: {count}. Hardly any piece or drive does that.',
    remedy: 'A straight line takes their place unless that is switched off; nothing is known of the test in between. Look for a loose plug, a disturbance or a hand on the cable.',
  },
  'force-bulges': {
    severity: 'caution', about: 'record',
    message: 'The force leaves its curve by {height} N at sample {first} and comes back; samples that are off: {count}. While the motion goes on so, neither piece nor drive does that.',
    remedy: 'A straight line takes their place unless that is switched off; nothing is known of the test in between. Look for a knock against the frame, a hand on the cable or a disturbance of the transmitter.',
  },
  'signal-noisy': {
    severity: 'caution', about: 'record',
    message: 'The noise of the {column} is {noise} {unit}, {share} % of its range.',
    remedy: 'Screen and ground the signal; every value carries this scatter.',
  },
  'reading-coarse': {
    severity: 'note', about: 'record',
    message: 'The {column} was read in steps of {step} {unit}, {counts} over the test.',
    remedy: 'A finer range of the logger or a finer sensor gives more digits; below some hundred steps the resolution limits what is read from it: strengths from a force, strains and depths from a motion.',
  },
  'motion-saturated': {
    severity: 'caution', about: 'record',
    message: 'The {column} stands at its end {value} {unit} for the last {count} samples while the force goes on: the sensor was probably at its end.',
    remedy: 'Check the stroke of the sensor; strains from there on are too small.',
  },
  'late-tare': {
    severity: 'note', about: 'record',
    message: 'The force was set to zero at sample {sample}, by {step} N, while nothing moved; what stands before counts from another zero.',
    remedy: 'Nothing to do; zero belongs before the piece is gripped at both ends.',
  },
  'repair-without-effect': {
    severity: 'caution', about: 'record',
    message: 'The repair {repair} was asked for and changed nothing: {why}.',
    remedy: 'Leave it out, or see in the check of the record which repairs would do something.',
  },
  'zero-before-loading': {
    severity: 'caution', about: 'record',
    message: 'Before loading the force reads {force} N, {share} % of its maximum.',
    remedy: 'Take it off (`tare`) if the piece was held at one end only; zero belongs before the piece is gripped at both ends.',
  },
  'zero-after-fracture': {
    severity: 'caution', about: 'record',
    message: 'After fracture the force reads {force} N, {share} % of its maximum, and no stretch before loading tells the zero.',
    remedy: 'Record some seconds before loading; every force may carry this offset.',
  },
  'grip-slip': {
    severity: 'caution', about: 'record',
    message: 'The piece slipped in the grips at sample {sample}: {way} {unit} of {column} that the force does not explain (the force fell by {fall} N).',
    remedy: 'Clean or change the jaws; strains by travel beyond the slip are too large unless it is taken out (`joinSlips`). Rm, ReH and ReL are not touched; proof strengths and extensions beyond it are.',
  },
  'drive-reversed': {
    severity: 'caution', about: 'record',
    message: 'The drive went back by {way} {unit} of {column} at sample {sample} and the force with it, by {fall} N: the piece was unloaded and loaded again.',
    remedy: 'Load in one direction; the evaluation leaves the excursion out, the curve keeps it (`loadingEnvelope` takes it out of the record too).',
  },
  'motion-backlash': {
    severity: 'caution', about: 'record',
    message: 'The {column} went back by {way} {unit} at sample {sample}, far more than the force that fell by {fall} N asks for: play in the drive or the sensor.',
    remedy: 'Look for play in the screw, the pins or the sensor; strains near there are in doubt.',
  },
  'force-zero-moved': {
    severity: 'fault', about: 'record',
    message: 'The force drops by {fall} N at once at sample {sample} and goes on from there: its zero was moved during the test.',
    remedy: 'Join the force (`restoreZero`) only if that is what happened; never press zero on a loaded piece.',
  },
  'motion-jumps': {
    severity: 'caution', about: 'record',
    message: 'Jumps of the {column} while the force goes on: {count}, the largest by {largest} {unit}, at sample {sample}; the sensor slipped or was set anew.',
    remedy: 'Join the parts (`joinJumps`) if the piece was not touched; extensions across a jump are in doubt.',
  },
  'extensometer-slipped': {
    severity: 'caution', about: 'record',
    message: 'The {column} goes back at once while the force goes on along the elastic line: {count} times, the most by {largest} {unit}, at sample {sample}; the extensometer slipped.',
    remedy: 'Clean and press on its knife edges; join the parts (`joinJumps`), or keep the elastic window clear of it: a slip back makes the slope too steep.',
  },
  'channels-out-of-step': {
    severity: 'caution', about: 'record',
    message: 'The lag between force and motion, counted in samples, is {samples}: their rates agree to {correlation} so shifted, and to {without} as recorded.',
    remedy: 'Log both with one clock, or align them (`alignChannels`); a lag bends the elastic line.',
  },
  'several-tests': {
    severity: 'fault', about: 'record',
    message: 'The record holds {count} tests, the second from sample {second} on.',
    remedy: 'Make a file of each, or split the record (`splitTests`), and evaluate each by itself.',
  },
  'file-cut-off': {
    severity: 'caution', about: 'record',
    message: 'The file ends within line {line} ({text}): no line end follows, and it has fewer cells or digits than the lines above. It was left out; what the logger wrote after it is not known.',
    remedy: 'Copy the file from the logger again; whether the piece broke is not in this one.',
  },
  'channel-empty': {
    severity: 'caution', about: 'record',
    message: 'The {column} holds no two numbers: the sensor was not on, or not recorded.',
    remedy: 'Check the column; the test is evaluated as if it were not there.',
  },
  'samples-repeated': {
    severity: 'note', about: 'record',
    message: '{share} % of the samples repeat the one before: the logger was faster than the sensor.',
    remedy: 'Repeated samples flatter the scatter of a slope; log at the rate of the slowest sensor.',
  },
  'force-saturated': {
    severity: 'fault', about: 'record',
    message: 'The force stands at its highest value {force} N for {count} samples: the channel was at its end, or the piece yields at this force.',
    remedy: 'Check the range of transmitter and logger; the true maximum, and a strength that lies on the flat top, may be higher.',
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
    message: 'Samples after the fracture were left out ({count} in number); they served to check the zero.',
    remedy: 'Nothing to do.',
  },
  'fracture-not-recorded': {
    severity: 'caution', about: 'record',
    message: 'No sudden fall of force is in the record; its last sample is taken as the fracture.',
    remedy: 'Log until the piece has broken; a record cut short gives too small an extension at fracture, and too small a maximum where the force still rose.',
  },
  'stopped-before-fracture': {
    severity: 'caution', about: 'record',
    message: 'The record ends before the piece broke, with the force at {share} % of its maximum.',
    remedy: 'Log until fracture; strength may still be valid if the maximum was passed.',
  },
  'maximum-at-end': {
    severity: 'caution', about: 'record',
    message: 'The highest force is at the end of the record: the test or its record was stopped early, or the piece broke at its highest force.',
    remedy: 'State which (of a tension piece Lu and Su tell it); of one that did not break there the strength is only at least so large, and extensions at maximum force are unknown.',
  },
  'maximum-is-spike': {
    severity: 'caution', about: 'record',
    message: 'The maximum is a single sample {excess} MPa above its neighbours.',
    remedy: 'Check the signal for a spike before strength is reported.',
  },
  'few-points-in-elastic-part': {
    severity: 'caution', about: 'record',
    message: 'The elastic line rests on few samples: {points} where {wanted} are wanted.',
    remedy: 'Log faster or load slower.',
  },
  'modulus-of-few-points': {
    severity: 'fault', about: 'record',
    message: 'The elastic line rests on {points} samples, fewer than the {least} that a modulus takes: E is withheld.',
    remedy: 'Log faster or load slower in the elastic part.',
  },
  'modulus-of-scatter': {
    severity: 'fault', about: 'record',
    message: 'The slope has a relative standard error of {error} %, more than the {limit} % that a modulus may have: E is withheld.',
    remedy: 'Reduce noise or log more samples in the elastic part; up to 1 % is wanted. What is counted from the line, origin and strengths by an offset, is as doubtful.',
  },
  'sampling-slow-for-yield': {
    severity: 'caution', about: 'record',
    message: 'At a sampling rate of {frequency} per second and a stress rate of {rate} MPa/s the upper yield strength may be low by up to {loss} MPa.',
    remedy: 'Log faster or load slower around yield.',
  },
  'extension-goes-back': {
    severity: 'note', about: 'record',
    message: 'Times that the {column} goes back: {count}, by {largest} {unit} at most.',
    remedy: 'Backlash, a reversal of the drive or an unloading frame does this; the line and the crossings allow for it.',
  },
  'extensometer-taken-off': {
    severity: 'note', about: 'record',
    message: 'The {column} of the extensometer ends at sample {sample}, at {reading} {unit}.',
    remedy: 'Nothing to do; beyond it the strain has another basis.',
  },
  'extensometer-stands': {
    severity: 'caution', about: 'record',
    message: 'The {column} of the extensometer stands from sample {sample} on, near {reading} {unit}, while the test goes on: it was taken off or came to its end, and counts up to there only.',
    remedy: 'Mark in the log when it is taken off; beyond it the strain is by travel, or absent where there is none.',
  },
  'extensometer-falls-back': {
    severity: 'caution', about: 'record',
    message: 'The {column} of the extensometer falls back at sample {sample}, from {reading} {unit}, by more than the piece can, and stays below: it was taken off, slipped or was set anew, and counts up to there only.',
    remedy: 'Set no zero during a test; beyond it the strain is by travel, or absent where there is none. Join the parts (`joinJumps`) only if that is what happened.',
  },
  'travel-carries-on': {
    severity: 'caution', about: 'record',
    message: 'Beyond a strain of {strain} the curve is carried on by crosshead travel over {length} mm.',
    remedy: 'From necking on the two bases differ; extensions beyond here are estimates.',
  },
  pause: {
    severity: 'note', about: 'record',
    message: 'The crosshead stood still for {duration} s at a strain of {strain}; the stress went from {from} to {to} MPa.',
    remedy: 'A fall of force while the crosshead stands still is relaxation, never yield.',
  },
  'pauses-many': {
    severity: 'note', about: 'record',
    message: 'The crosshead stood still {count} times, {total} s in all, from sample {first} to {last}; the longest pause is {duration} s at a strain of {strain}.',
    remedy: 'Strokes of a hand pump make pauses; load through yield in one stroke, or pump more evenly.',
  },
  'falls-many': {
    severity: 'caution', about: 'record',
    message: 'On the way up the drive goes back with the force {count} times; the largest fall is {fall} N, at sample {sample}.',
    remedy: 'Pump without letting the ram go back; look at valve and pump. The evaluation leaves these loops out.',
  },
  'pause-in-elastic-window': {
    severity: 'caution', about: 'record',
    message: 'Pauses of the drive within the window of the elastic line: {count}, the longest {duration} s at {strain} mm/mm.',
    remedy: 'Set the window above or below the pause, or load the elastic part without stopping: what relaxes there bends the line.',
  },
  'pause-near-yield': {
    severity: 'caution', about: 'record',
    message: 'Pauses within 0.2 % strain of {symbol}: {count}, the longest {duration} s.',
    remedy: 'Load through yield without stopping; repeat the test if this value decides.',
  },
  'uneven-loading': {
    severity: 'note', about: 'record',
    message: 'The speed in the elastic window varies by {variation} % (standard deviation over mean).',
    remedy: 'Load in even strokes or turns; see the figure of rate over time.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;
