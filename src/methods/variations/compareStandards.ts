import { requireObject, InputError } from '../../base/index.js';
import { roundingStep, roundResult, type RoundingKind } from '../../statistics/index.js';
import { percent } from '../common/quantity.js';
import { plainPairs, rulePairs, type RulePair, type StandardRule } from './standardRules.js';
import type { CurveResult } from '../tension/analyseCurve.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** A property as one standard has it, with its value as that standard rounds it. */
export interface StandardValue extends StandardRule {
  /** Rounded value as text, in the unit of the row; absent where the result has none. */
  readonly text?: string | undefined;
}

/** One row of two standards side by side. */
export interface StandardsRow {
  /** Field of the result, or the topic of a rule that carries no value. */
  readonly topic: string;
  /** Unit of the texts: MPa or %; empty for a rule without a value. */
  readonly unit: '' | 'MPa' | '%';
  /** The value, unrounded, in that unit; absent where there is none. */
  readonly value?: number | undefined;
  /** ISO 6892-1:2019. */
  readonly iso: StandardValue;
  /** ASTM E8/E8M. */
  readonly astm: StandardValue;
  /** Where the two part. */
  readonly difference: string;
}

/** Steps of ISO 6892-1 (from memory). */
/** Unit of a kind in its own unit: MPa, or per cent of a ratio. */
const factorOf = (kind: RoundingKind): number => (kind === 'strength' ? 1 : 100);

/** A value in that unit, rounded by a standard. */
const rounded = (kind: RoundingKind, value: number, rule: 'iso' | 'astm'): string =>
  roundResult(value, { step: roundingStep(kind, value / factorOf(kind), rule) * factorOf(kind) }).text;

/** Values of a field: one, several (each with its extension as index), or none. */
function valuesOf(
  result: CurveResult & Partial<TensionResult>,
  { field, kind }: RulePair,
): { readonly value: number; readonly index: string }[] {
  if (field === 'proofStrengths' || field === 'totalExtensionStrengths')
    return result[field].map(({ value, extension }) => ({ value, index: percent(extension) }));
  const one = result[field];
  return typeof one === 'object' && 'symbol' in one && typeof one.value === 'number'
    ? [{ value: factorOf(kind) * one.value, index: '' }]
    : [];
}

/** One row of a property with its value. */
function rowOf(pair: RulePair, value: number, index: string): StandardsRow {
  const { field, kind, iso, astm, difference } = pair;
  return {
    topic: field,
    unit: kind === 'strength' ? 'MPa' : '%',
    value,
    iso: { ...iso, symbol: `${iso.symbol}${index}`, text: rounded(kind, value, 'iso') },
    astm: {
      ...astm,
      symbol: index === '' ? astm.symbol : astm.symbol.replace('(', `(${index} % `),
      ...(astm.symbol === '' ? {} : { text: rounded(kind, value, 'astm') }),
    },
    difference,
  };
}

/**
 * The properties of a tension test by two standards: what ISO 6892-1 and ASTM E8/E8M call each, their rules, the value as each rounds it, and where they part.
 *
 * @remarks
 * One evaluation stands behind both columns; the rules say where the other standard would evaluate otherwise. Rules in our own words, from memory of both
 * standards: read the standard that governs. Rules without a value (position of the fracture, rates, point of fracture, rounding) come last.
 *
 * @param result - A result of `analyseTension` or `analyseCurve`.
 * @returns Rows of the properties that the result has, then of the rules.
 * @throws {@link InputError} `missing`, `wrong-type` for anything but a tension result.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 6101 }, (_, i) => i / 10);
 * const record = { force: stress.map((R) => 50 * R), strain: stress.map((R) => R / 70000 + 0.002 * (R / 552.4) ** 20) };
 * const rows = compareStandards(analyseTension(record, { section: sectionFromArea({ area: 50 }), gaugeLength: 40 }));
 * rows[0]?.iso.symbol; // => 'Rp0.2'
 * rows[0]?.iso.text; // => '552'
 * rows[0]?.astm.text; // => '550'
 * ```
 *
 * @see ISO 6892-1:2019; ASTM E8/E8M (both from memory). Checked in `test/methods/compareStandards.test.ts`.
 */
export function compareStandards(result: TensionResult | CurveResult): StandardsRow[] {
  const from = 'compareStandards';
  const given: object = requireObject(from, 'result', result);
  if (!('method' in given) || given.method !== 'tension' || !('proofStrengths' in given))
    throw new InputError(
      from,
      'result.method',
      'wrong-type',
      'must be that of a tension test',
      'method' in given ? given.method : undefined,
    );
  return [
    ...rulePairs.flatMap((pair) => valuesOf(result, pair).map(({ value, index }) => rowOf(pair, value, index))),
    ...plainPairs.map(({ topic, iso, astm, difference }): StandardsRow => ({
      topic,
      unit: '',
      iso: { symbol: '', name: topic, rule: iso },
      astm: { symbol: '', name: topic, rule: astm },
      difference,
    })),
  ];
}
