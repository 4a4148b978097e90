import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings about the frame. */
export const frameEntries = {
  'extension-from-travel': {
    severity: 'caution', about: 'frame',
    message: 'Strains are determined from crosshead displacement, not by an extensometer as the standards ask.',
    remedy: 'State it beside every strain-based value; use an extensometer where the value decides.',
  },
  'frame-compliance-removed': {
    severity: 'note', about: 'frame',
    message: 'A frame compliance of {compliance} mm/N was removed; it was {share} % of the motion in the elastic part.',
    remedy: 'State where the compliance comes from, and its uncertainty: where that is not given, the uncertainty of E leaves it out.',
  },
  'compliance-of-other-grips': {
    severity: 'caution', about: 'frame',
    message: 'The compliance of the frame was measured with the grips "{measured}"; this test was made with "{used}".',
    remedy: 'Measure the compliance with the grips of the test: grips are a large part of it.',
  },
  'compliance-of-other-direction': {
    severity: 'caution', about: 'frame',
    message: 'The compliance of the frame was measured in {measuredDirection}; this test loads the frame in {usedDirection}.',
    remedy: 'Measure the compliance in the direction of the test: other parts of the frame carry the force.',
  },
  'frame-stretches-more-than-piece': {
    severity: 'caution', about: 'frame',
    message: 'The frame gives {ratio} times as much as the piece: E carries at least {ratio} times the relative doubt of the compliance. Where that is not given, the uncertainty of E leaves it out.',
    remedy: 'Use an extensometer for E.',
  },
  'modulus-includes-frame-compliance': {
    severity: 'fault', about: 'frame',
    message: 'Strains are determined from crosshead displacement, not on the piece as the standards ask: the slope {slope} MPa is that of frame and piece together, and E is withheld. What counts total strain (in tension: Agt, At) holds the give of the frame too, what counts plastic strain does not.',
    remedy: 'Give the frame compliance, or use an extensometer; state the crosshead beside every strain-based value. A strength by an offset from the curve\'s own slope is still right.',
  },
  'compliance-too-large': {
    severity: 'fault', about: 'frame',
    message: 'The frame compliance given, {compliance} mm/N, is {share} % of the motion that travel shows: that leaves nothing for the piece. It was not removed; what rests on travel is of frame and piece together.',
    remedy: 'Give it in mm/N (20 µm/kN is 2e-5 mm/N), or measure it again with the grips of the test.',
  },
  'compliance-vanishing': {
    severity: 'fault', about: 'frame',
    message: 'The frame compliance given, {compliance} mm/N, takes out only {share} % of the motion in the elastic part: the slope is that of frame and piece together, and E is withheld.',
    remedy: 'Give it in mm/N (20 µm/kN is 2e-5 mm/N), or measure it with the grips of the test.',
  },
  'displacement-steps-coarse': {
    severity: 'caution', about: 'frame',
    message: 'One step of the displacement reading is {share} % of the offset of {symbol}.',
    remedy: 'Use a finer displacement sensor: a tenth of the offset is wanted.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;
