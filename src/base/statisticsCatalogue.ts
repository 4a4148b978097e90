import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings about several tests beside each other, decisions, and values that check each other. */
export const statisticsEntries = {
  'few-replicates': {
    severity: 'note', about: 'method',
    message: 'Of two results only the range is given: {symbols}.',
    remedy: 'Test three pieces at least; a standard deviation of two says nothing.',
  },
  'esd-few-values': {
    severity: 'note', about: 'method',
    message: '{n} values: the limits of this test of several outliers are good from 25 values on and fair from 15.',
    remedy: 'Look for one outlier by Grubbs, or test more pieces.',
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
    remedy: 'Several quantities together point to what they share: area, force or a length of that piece. Write the cause down; without one the values stay.',
  },
  'replicates-repeated': {
    severity: 'caution', about: 'record',
    message: 'One record is given as several tests: {tests}. It counts {count} times, so n is too large and the scatter too small.',
    remedy: 'Leave the copies out; evaluations of one record are no replicates.',
  },
  'replicates-read-alike': {
    severity: 'note', about: 'record',
    message: 'Tests {tests} have the same readings, {count} times: alike by chance, which readings of few digits may be, or one test given several times.',
    remedy: 'Leave out what is a copy; readings of different pieces stay.',
  },
  'replicates-mixed': {
    severity: 'caution', about: 'method',
    message: 'The tests differ in {what} ({values}) and were pooled all the same.',
    remedy: 'Their scatter holds that difference as well; pool like with like where it decides.',
  },
  'replicates-not-pooled': {
    severity: 'fault', about: 'method',
    message: 'Not pooled: {symbols}, since the tests differ in {what} ({values}).',
    remedy: 'Pool like with like (elongations after conversion by ISO 2566), or ask for pooling in the options.',
  },
  'replicates-at-least': {
    severity: 'caution', about: 'method',
    message: '{symbols}: left out of {count} of the {total} tests ({tests}), which ended before their maximum force; their values are only at least so large.',
    remedy: 'Test further pieces until they break; a mean without these tests is not that of all, and tells nothing of how all scatter.',
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
  'group-mean-outlying': {
    severity: 'note', about: 'method',
    message: 'The mean of group {group} is the farthest off: G = {statistic} (limit {limit}); verdict of the test of Grubbs: {verdict}.',
    remedy: 'Look for a cause; leave it out only where one is found and written down.',
  },
  'limit-within-uncertainty': {
    severity: 'caution', about: 'method',
    message: '{symbol} is {distance} {unit} from its limit, within its expanded uncertainty {uncertainty} {unit}: by the uncertainty alone it may lie on either side.',
    remedy: 'Name the decision rule with the verdict; test more pieces or measure better where it decides.',
  },
  'limit-of-other-size': {
    severity: 'caution', about: 'method',
    message: '{symbol} is {value} {unit}, its limit {limit} {unit}: one is {ratio} times the other, as where they stand in different units.',
    remedy: 'Give the limit in the unit of the value: N, mm, MPa, and shares as ratios (0.22 or 22%, not 22).',
  },
  'acceptance-zone-empty': {
    severity: 'caution', about: 'method',
    message: 'Guard bands of {guard} {unit} on both sides leave nothing between {lower} and {upper} {unit}: no value of {symbol} can pass.',
    remedy: 'Measure better or test more pieces until the guard bands fit between the limits, or agree on another rule before the test.',
  },
  'guard-of-two-limits': {
    severity: 'caution', about: 'method',
    message: '{symbol} passes, with a risk of {risk} %: the guard band keeps {one} % at each limit, and both limits are near.',
    remedy: 'Where the risk at one limit was agreed as the whole risk, ask for a wider guard band (guardFactor), or measure better.',
  },
  'rounding-decides': {
    severity: 'caution', about: 'method',
    message: 'The rounding decides: {symbol} was compared as {compared} {unit}; {value} {unit}, as measured, gives the other verdict.',
    remedy: 'Say so with the verdict: the rounding is part of the rule that was agreed, and the risk is that of the value as measured.',
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
  'decision-without-hardening': {
    severity: 'caution', about: 'method',
    message: '{symbol} is the highest stress of the level of yielding: no hardening follows it, and ISO 6892-1 defines no Rm there.',
    remedy: 'Agree on what stands for the strength of such a material before the value serves for acceptance.',
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
  'link-one-sided': {
    severity: 'note', about: 'method',
    message: '{link}: {symbol} is only at least so large, as the test ended before its maximum force; the link can show that it is too large, not that it is too small.',
    remedy: 'Test until the maximum force is passed; then both sides can be held against each other.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;
