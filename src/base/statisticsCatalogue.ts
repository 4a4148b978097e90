import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings about several tests beside each other, decisions, and values that check each other. */
export const statisticsEntries = {
  'few-replicates': {
    severity: 'note', about: 'method',
    message: 'Of two results only the range is given: {symbols}.',
    remedy: 'Test three pieces at least; a standard deviation of two says nothing.',
  },
  'variation-above-usual': {
    severity: 'caution', about: 'method',
    message: '{symbol} varies by {variation} %, more than three times the usual {usual} % within a laboratory.',
    remedy: 'Look for a cause in machining, gripping, measuring or force before the metal is blamed.',
  },
  'replicate-outlying': {
    severity: 'caution', about: 'method',
    message: '{symbol} of test {test} ({value} {unit}) lies farther out than chance explains: G = {statistic} above {limit}.',
    remedy: 'Look for a physical cause and write it down; without one the value stays.',
  },
  'replicate-odd': {
    severity: 'caution', about: 'method',
    message: 'Test {test} lies farther out than chance explains in several quantities: {symbols}; farthest in {symbol}, {value} {unit} (G = {statistic} above {limit}).',
    remedy: 'Several quantities together point to what they share: area, force or gauge length of that piece. Write the cause down; without one the values stay.',
  },
  'replicates-mixed': {
    severity: 'caution', about: 'method',
    message: 'The tests differ in {what} ({values}) and were pooled all the same.',
    remedy: 'Their scatter holds that difference as well; pool like with like where it decides.',
  },
  'replicates-not-pooled': {
    severity: 'fault', about: 'method',
    message: 'Not pooled: {symbols}, since the tests differ in {what} ({values}).',
    remedy: 'Pool like with like; convert elongations by ISO 2566 first, or ask for pooling in the options.',
  },
  'group-off-the-mean': {
    severity: 'caution', about: 'method',
    message: 'The mean of group {group} is off: h = {h}, beyond {limit}.',
    remedy: 'Compare its frame, lengths, units and readings with the others; keep its results.',
  },
  'group-scatters': {
    severity: 'caution', about: 'method',
    message: 'Group {group} scatters more than the others: k = {k}, above {limit}.',
    remedy: 'Look at its gripping, reading and machining; keep its results.',
  },
  'group-variance-outlying': {
    severity: 'note', about: 'method',
    message: 'Group {group} holds {share} of all squares (limit {limit}); verdict of the test of Cochran: {verdict}.',
    remedy: 'Look for a cause; leave it out only where one is found and written down.',
  },
  'limit-within-uncertainty': {
    severity: 'caution', about: 'method',
    message: '{symbol} is {distance} {unit} from its limit, within its expanded uncertainty {uncertainty} {unit}: by the uncertainty alone it may lie on either side.',
    remedy: 'Name the decision rule with the verdict; test more pieces or measure better where it decides.',
  },
  'decision-without-uncertainty': {
    severity: 'caution', about: 'method',
    message: 'The decision on {symbol} was made without its uncertainty: the risk of being wrong is unknown.',
    remedy: 'Determine the uncertainty; without it only simple acceptance is possible.',
  },
  'decision-on-travel': {
    severity: 'caution', about: 'method',
    message: '{symbol} rests on crosshead travel: the verdict holds on the condition that an extensometer confirms it.',
    remedy: 'Repeat with an extensometer before the value serves for acceptance.',
  },
  'decision-for-structure': {
    severity: 'caution', about: 'method',
    message: '{symbol} is meant for structural use: the verdict holds on the condition that a qualified laboratory and the responsible engineer confirm it.',
    remedy: 'Follow local codes and licensed practice; a class test is no certificate.',
  },
  'gauge-length-unstated': {
    severity: 'caution', about: 'method',
    message: 'The gauge length of {symbol} is not known, so the limit may be stated for another one.',
    remedy: 'Give gauge length and area with the value.',
  },
  'values-disagree': {
    severity: 'caution', about: 'method',
    message: '{link}: {left} = {leftValue} {leftUnit} and {right} = {rightValue} {rightUnit} do not go together (tolerance {tolerance} {leftUnit}).',
    remedy: 'See the likely causes of the link; one of the two readings, or the rule itself, does not hold here.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;
