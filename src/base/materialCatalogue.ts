import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings of properties that do not fit a family of metals, or one another. */
export const materialEntries = {
  'dimension-looks-wrong': {
    severity: 'caution', about: 'piece',
    message: '{symbol} = {value} {unit} lies outside the {low} to {high} {unit} that is usual for {family}. {why}',
    remedy: 'Measure the piece again, compare it with what was entered, and evaluate anew; nothing was corrected.',
  },
  'unit-looks-wrong': {
    severity: 'caution', about: 'record',
    message: '{symbol} = {value} {unit} lies outside the {low} to {high} {unit} that is usual for {family}. {why}',
    remedy: 'Name the units of the columns when reading the file, and evaluate anew; nothing was corrected.',
  },
  'strain-looks-wrong': {
    severity: 'caution', about: 'frame',
    message: '{symbol} = {value} {unit} lies outside the {low} to {high} {unit} that is usual for {family}. {why}',
    remedy: 'Look at what the strain holds beside the piece: frame, grips, seat of the extensometer.',
  },
  'unlike-family': {
    severity: 'caution', about: 'method',
    message: '{symbol} = {value} {unit} lies outside the {low} to {high} {unit} that is usual for {family}. {why}',
    remedy: 'Check the material and its condition. Usual ranges are no limits of a specification.',
  },
  'properties-contradict': {
    severity: 'caution', about: 'method',
    message: '{left} = {leftValue} {leftUnit} and {right} = {rightValue} {rightUnit} contradict each other: {rule}.',
    remedy: 'Look at how both were found; at least one of them, or a reading behind it, is wrong.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;
