import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings about the test piece. */
export const pieceEntries = {
  'gauge-length-not-proportional': {
    severity: 'caution', about: 'piece',
    message: 'The gauge length {length} mm is {deviation} % off 5.65√S0 = {proportional} mm: A must be written with an index.',
    remedy: 'Write A with the gauge length as index (A80mm), of 11.3√S0 with the coefficient (A11.3), or convert by ISO 2566 within its limits.',
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
  // from memory
  'extensometer-length-unsuited': {
    severity: 'caution', about: 'piece',
    message: 'An extensometer base of {length} mm is not from {least} to {most} mm, half the gauge length to nine tenths of the parallel length.',
    remedy: 'Take a base within; for the extensions at and after the maximum force, one of about the gauge length.',
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
    message: 'The section rests on few readings of each dimension: {readings}.',
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
} as const satisfies Readonly<Record<string, FindingEntry>>;
