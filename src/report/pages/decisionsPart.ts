import { InputError, requireList, requireObject, type BaseUnit, type Finding } from '../../base/index.js';
import type { Phrase } from '../../languages/index.js';
import { decide, type Decision, type DecisionReason, type Measured, type Specification } from '../../statistics/index.js';
import { figuresApart } from '../figures/figuresApart.js';
import { findingsList } from './findingsList.js';
import type { Html } from './html.js';
import type { PageTable, ShownQuantity } from './MethodPage.js';
import { tableOf } from './pageParts.js';
import type { Presentation } from '../words/presentation.js';
import { shownUnit, type MetricUnit } from '../words/shownUnit.js';

/** A measured value that may carry its unit, as a quantity of a result does. */
export interface MeasuredQuantity extends Measured {
  /** Its unit; default that of the property in the report. */
  readonly unit?: BaseUnit | undefined;
}

/** A value and what was asked of it: the two arguments of `decide`. */
export interface AskedDecision {
  /** The value: a quantity of the result, with what an elongation needs beside it. */
  readonly measured: MeasuredQuantity;
  /** The limits and the rule. */
  readonly specification: Specification;
}

const verdicts: Readonly<Record<Decision['verdict'], Phrase>> = {
  pass: 'passes',
  'conditional-pass': 'passes conditionally',
  'conditional-fail': 'fails conditionally',
  fail: 'fails',
};

const reasons: Readonly<Record<DecisionReason, Phrase>> = {
  'other-quantity': 'No decision: the limit speaks of another quantity.',
  'other-gauge-length': 'No decision: the limit is stated for another gauge length.',
  'only-at-least': 'No decision: the test shows only that the value is at least so large.',
  'uncertainty-unknown': 'No decision: a guard band needs the uncertainty of the value.',
};

/** A probability that is neither 0 nor 1 is never shown as one of them. */
const SURE = 1e-4;
const chance = (p: number, { percent }: Presentation): string =>
  p < SURE ? `<\u00a0${percent(SURE, 1)}` : p > 1 - SURE ? `>\u00a0${percent(1 - SURE, 4)}` : percent(p, p > 0.99 ? 4 : 2);

/** One or two edges. */
interface Edges {
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
}

/** A number, or those of the edges that are given. */
const edges = (one: number | Edges): number[] =>
  (typeof one === 'number' ? [one] : [one.lower, one.upper]).filter((edge): edge is number => edge !== undefined);

/** How a value is shown: as the property in the report where its unit is no other, else by its symbol and unit. */
function wayOf({ symbol = '', unit }: MeasuredQuantity, shown: readonly ShownQuantity[]): MetricUnit {
  const own = shown.find(
    (one) => [one.quantity.symbol, one.written].includes(symbol) && (unit === undefined || one.quantity.unit === unit),
  );
  // a share without a unit is known by its symbol
  return own ?? shownUnit(symbol, unit ?? '1');
}

function limits({ lower, upper }: Edges, text: (value: number) => string) {
  return [...(lower === undefined ? [] : [`≥\u00a0${text(lower)}`]), ...(upper === undefined ? [] : [`≤\u00a0${text(upper)}`])].join(', ');
}

/** Guard bands that cross leave nothing that passes. */
const isEmpty = ({ lower = -Infinity, upper = Infinity }: Edges): boolean => lower > upper;

function ruleInWords({ rule = 'simple', guardFactor, rounding }: Specification, { say, number }: Presentation): string {
  // against a guard band the value stays as measured
  if (rule === 'guarded')
    return say('guard band of {factor} u (JCGM 106, ILAC-G8)', { factor: guardFactor === undefined ? '–' : number(guardFactor, 4) });
  const words = say('simple acceptance (JCGM 106)');
  return rounding === undefined ? words : say('{rule}; rounded before it is compared', { rule: words });
}

function verdictInWords({ verdict, toldApart }: Decision, { say }: Presentation): string {
  const words = verdicts[verdict];
  return toldApart === false ? say('{verdict}; cannot be told apart from the limit', { verdict: say(words) }) : say(words);
}

function riskInWords({ consumersRisk, producersRisk, probabilityOfConformity: p }: Decision, show: Presentation): string {
  if (p === undefined) return show.say('unknown: no uncertainty was given');
  const conforms = { chance: chance(p, show) };
  if (consumersRisk !== undefined)
    return show.say('probability of conformity {chance}; risk of a wrong acceptance {risk}', {
      ...conforms,
      risk: chance(consumersRisk, show),
    });
  return show.say('probability of conformity {chance}; risk of a wrong rejection {risk}', {
    ...conforms,
    risk: chance(producersRisk ?? p, show),
  });
}

/** @internal Checks what is to be decided: each has a value and a specification; `decide` checks these. */
export function requireDecisions(from: string, decisions: readonly AskedDecision[] | undefined): readonly AskedDecision[] {
  return requireList(from, 'options.decisions', decisions ?? [], 0).map((one, i) => {
    const path = `options.decisions[${i}]`;
    requireObject(from, path, one);
    requireObject(from, `${path}.measured`, one.measured);
    requireObject(from, `${path}.specification`, one.specification);
    if (one.measured.symbol === undefined)
      throw new InputError(from, `${path}.measured.symbol`, 'missing', 'must name the property', one.measured.symbol);
    return one;
  });
}

/** @internal Decisions as rows of text, each by its rule and with its risk, and what stands against them. */
export interface DecisionsTable {
  readonly table: PageTable & { readonly rows: readonly (readonly string[])[] };
  readonly findings: readonly Finding[];
}

/** @internal Makes them for one reader. */
export function decisionsTable(decisions: readonly AskedDecision[], shown: readonly ShownQuantity[], show: Presentation): DecisionsTable {
  const { say, number, doubt, unitAfter } = show;
  const made = decisions.map(({ measured, specification }) => {
    const symbol = measured.symbol ?? '';
    const { unit, factor } = show.unit(wayOf(measured, shown));
    const decision = decide(measured, specification);
    const value = decision.ok ? decision.compared : measured.value;
    const acceptance = decision.ok ? decision.acceptance : {};
    // a value that lies beside a limit is not to be read as that limit
    const figures = figuresApart([value, specification, acceptance].flatMap(edges).map((one) => one * factor));
    const withUnit = (text: string): string => `${text}${unitAfter(unit)}`;
    const text = (one: number): string => withUnit(number(one * factor, figures));
    const u = measured.standardUncertainty;
    const cells = [
      text(value),
      u === undefined || u === 0 ? '' : withUnit(doubt(u * factor)),
      limits(specification, text),
      isEmpty(acceptance) ? say('no value') : limits(acceptance, text),
      ruleInWords({ ...specification, ...(decision.ok ? { guardFactor: decision.guardFactor } : {}) }, show),
      ...(decision.ok ? [verdictInWords(decision, show), riskInWords(decision, show)] : [say(reasons[decision.reason]), '']),
    ];
    return { row: [symbol, ...cells], findings: decision.ok ? decision.findings : [] };
  });
  const table = {
    caption: say('Each value against its limits, by the rule agreed on; no verdict replaces local codes and licensed practice.'),
    columns: [say('Symbol'), say('Value'), 'u', say('Limit'), say('Accepted'), say('Rule'), say('Verdict'), say('Probability and risk')],
    kinds: ['short', 'number', 'number'] as const,
    rows: made.map(({ row }) => row),
  };
  return { table, findings: made.flatMap((one) => one.findings) };
}

/** @internal Decisions as a part of a page. */
export function decisionsPart(decisions: readonly AskedDecision[], shown: readonly ShownQuantity[], show: Presentation): Html[] {
  if (decisions.length === 0) return [];
  const { table, findings } = decisionsTable(decisions, shown, show);
  return [tableOf(table), ...(findings.length > 0 ? [findingsList(findings, show)] : [])];
}
