import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings about two results held against each other. */
export const comparisonEntries = {
  'compared-record-differs': {
    severity: 'note', about: 'record',
    message: 'The two results come from different records ({first} and {second}).',
    remedy: 'Nothing to do where two tests are compared; where one record was meant, look for the file that changed.',
  },
  'compared-piece-differs': {
    severity: 'note', about: 'piece',
    message: 'The pieces differ in: {names}.',
    remedy: 'Compare the readings of the piece first; they move every value that holds them.',
  },
  'compared-options-differ': {
    severity: 'note', about: 'method',
    message: 'The options of the two results differ in: {names}.',
    remedy: 'Evaluate both with the same options where the tests are to be compared.',
  },
  'compared-version-differs': {
    severity: 'note', about: 'method',
    message: 'The two results were made by versions {first} and {second}.',
    remedy: 'The changelog says where numbers moved from version to version.',
  },
  'compared-value-moved': {
    severity: 'caution', about: 'method',
    message: '{symbol} moved by {difference} {unit} from {first} {unit} though record, piece and options are the same (versions {firstVersion} and {secondVersion}).',
    remedy: 'The changelog should name the change; within one version the same input gives the same number, so one of the two was altered.',
  },
  'compared-beyond-uncertainty': {
    severity: 'caution', about: 'method',
    message: '{symbol} differs by {times} standard uncertainties, more than {limit}: {first} and {second} {unit}.',
    remedy: 'Look for a cause in piece, frame or options, or for a source that the uncertainty leaves out.',
  },
  'compared-one-lacks': {
    severity: 'note', about: 'method',
    message: 'Only result {number} of the two carries {symbol}.',
    remedy: 'The findings of the other result say why it is absent there, or it was not asked for.',
  },
  'compared-at-least': {
    severity: 'note', about: 'method',
    message: 'No difference is given of {symbols}: where a test ended before its maximum force (result {numbers}), the value is only at least so large.',
    remedy: 'Compare tests that passed their maximum; a bound tells one side only.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;
