import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings about the verification of the force that a test names, and about the pairs of a calibration. */
export const calibrationEntries = {
  'calibration-date-missing': {
    severity: 'caution', about: 'frame',
    message: 'The day of the last verification of the force is not stated, so its age is unknown.',
    remedy: 'Give the day of the certificate as year-month-day.',
  },
  'calibration-age-unknown': {
    severity: 'note', about: 'frame',
    message: 'The force was verified on {date}; the day of the test is not stated as year-month-day, so the age of the verification is unknown.',
    remedy: 'Give the day of the test as year-month-day.',
  },
  'calibration-expired': {
    severity: 'caution', about: 'frame',
    message: 'The force was verified on {date}, {months} months before the test; its interval is {interval} months.',
    remedy: 'Verify the force before the next test, and judge this one by the errors as found.',
  },
  'calibration-after-test': {
    severity: 'caution', about: 'frame',
    message: 'The force was verified on {date}, after the test of {test}: a later verification shows what the force reads now.',
    remedy: 'Name the verification that held on the day of the test; with the errors as found of the later one judge what may have drifted.',
  },
  'force-outside-verified': {
    severity: 'caution', about: 'frame',
    message: '{symbol} lies at {force} N; the force was verified from {low} to {high} N.',
    remedy: 'Verify the force where it is used, or take a larger or smaller piece; claim no class for this value.',
  },
  'force-outside-calibration': {
    severity: 'caution', about: 'frame',
    message: '{symbol} lies at {force} N; the channel is calibrated from {low} to {high} N only.',
    remedy: 'Calibrate where the force is used: from below the elastic window up to the maximum.',
  },
  'calibration-hardly-used': {
    severity: 'caution', about: 'frame',
    message: 'The highest force, {force} N, is {share} % of what the channel is calibrated up to ({high} N): the test needs little of the calibration, or the two are in different units (bar for MPa is a tenth, kN for N a thousandth).',
    remedy: 'Compare the units of record and calibration. If they agree, calibrate up to the force that is used: doubts about the calibration are shares of its highest force.',
  },
  'force-class-coarse': {
    severity: 'caution', about: 'frame',
    message: 'The force is verified to class {forceClass}; the usual standards of testing ask for class 1 or better.',
    remedy: 'Claim no conformity with them; find what limits the class.',
  },
  'force-class-not-in-uncertainty': {
    severity: 'note', about: 'frame',
    message: 'The force is verified to class {forceClass}: every force and stress may be {share} % off, and no stated uncertainty holds that.',
    remedy: 'Give the class or the uncertainty of the force among the doubts of the test, or add it to the budget of the result.',
  },
  'force-class-unlike': {
    severity: 'caution', about: 'frame',
    message: 'The uncertainties count the force as of class {counted}; it is verified to class {forceClass}.',
    remedy: 'Count the class of the certificate.',
  },
  'calibration-outlier': {
    severity: 'caution', about: 'frame',
    message: 'Pair {pair} of the calibration, at {force} N, lies {off} N off the calibration of all others (of degree {without}; with it degree {degree}): it is an outlier, and was not taken out.',
    remedy: 'Look for a slip of the pen or of the reading, and measure the pair again; take it out only for a cause that is known.',
  },
  'calibration-degree-by-one': {
    severity: 'caution', about: 'frame',
    message: 'Degree {degree} of the calibration rests on pair {pair}, at {force} N: without it degree {without} is enough.',
    remedy: 'Measure that pair again, and others near it; one pair tells a curved channel from a slip by nothing.',
  },
  'calibration-hysteresis': {
    severity: 'caution', about: 'frame',
    message: 'On the way down the reference reads {difference} N more than on the way up at the same reading, {share} % of the highest force and beyond the scatter.',
    remedy: 'Calibrate with rising force only, as tests are run, or count the difference among the uncertainties; look for friction in the seals.',
  },
  'calibration-points-few': {
    severity: 'caution', about: 'frame',
    message: '{points} pairs at {readings} readings leave {freedom} degrees of freedom beside degree {degree}: the scatter of the calibration, and an outlier among its pairs, are hardly known.',
    remedy: 'Calibrate at five forces at least, each of them three times.',
  },
  'calibration-scatter': {
    severity: 'caution', about: 'frame',
    message: 'At {force} N the calibration lies {share} % off its pair; a channel of class 1 may be {allowed} % off.',
    remedy: 'Look for what scatters (reading, friction, the reference), and measure again; claim no better class.',
  },
  'force-nominal': {
    severity: 'caution', about: 'frame',
    message: 'Force is oil pressure times the nominal area of {area} mm²: what the seals and guides hold back, commonly some per cent, counts as force of the piece, and every stress is too high by it.',
    remedy: 'Calibrate against a force-proving instrument; until then give an efficiency together with the uncertainty of the force, or the class of a force that was verified.',
  },
  'force-efficiency-doubt': {
    severity: 'caution', about: 'frame',
    message: 'Force is oil pressure times the nominal area of {area} mm² and an efficiency of {efficiency}, whose uncertainty is not stated; friction of seals changes with pressure, wear and temperature.',
    remedy: 'Calibrate against a force-proving instrument, or give the uncertainty of the force or the class of a force that was verified.',
  },
  'channel-calibration-old': {
    severity: 'caution', about: 'frame',
    message: 'The channel of the force was calibrated on {date}, {months} months before the test; a year is usual at most.',
    remedy: 'Calibrate it again, or name a verification of the force that held on the day of the test.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;
