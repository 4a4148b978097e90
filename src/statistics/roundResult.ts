import { InputError, requireFinite, requireOneOf, requireOptions, requirePositive } from '../base/index.js';
import { roundToStep, type HalfRule } from '../numeric/index.js';

/** Kinds of results that the standards round differently; strengths in MPa, the others as ratios. */
export type RoundingKind = 'strength' | 'yieldPointExtension' | 'extension' | 'elongation' | 'reductionOfArea';

/** Whose steps: ISO 6892-1, or ASTM E8/E8M. */
export type RoundingRule = 'iso' | 'astm';

/** How to round: by kind and rule, or by a step of your own. */
export interface RoundingOptions {
  /** Kind of result. */
  readonly kind?: RoundingKind | undefined;
  /** Whose steps; default `iso`. */
  readonly rule?: RoundingRule | undefined;
  /** Step in the unit of the value, above 0, instead of kind and rule. */
  readonly step?: number | undefined;
  /** Where a half goes: to the even step or away from 0; default `even`. */
  readonly half?: HalfRule | undefined;
}

/** A value before and after rounding. */
export interface RoundedValue {
  /** The value as it was. */
  readonly value: number;
  /** The value rounded. */
  readonly rounded: number;
  /** The rounded value as text, with the decimals of the step. */
  readonly text: string;
  /** Step, in the unit of the value. */
  readonly step: number;
  /** By which rule, in words. */
  readonly rule: string;
}

const FROM = 'roundResult';
const KINDS = ['strength', 'yieldPointExtension', 'extension', 'elongation', 'reductionOfArea'] as const;
const ISO_STEPS = { strength: 1, yieldPointExtension: 0.001, extension: 0.005, elongation: 0.005, reductionOfArea: 0.01 } as const;
const RULES = { iso: 'ISO 6892-1', astm: 'ASTM E8/E8M' } as const;

/** @internal Step of a kind of result, in its unit: MPa, or a ratio. */
export function roundingStep(kind: RoundingKind, value: number, rule: RoundingRule): number {
  if (rule === 'iso') return ISO_STEPS[kind];
  const size = Math.abs(value);
  if (kind === 'strength') return size <= 500 ? 1 : size <= 1000 ? 5 : 10;
  return size < 0.1 ? 0.005 : 0.01;
}

/** Decimals that a step is written with. */
function decimalsOf(step: number): number {
  const [mantissa = '', exponent = '0'] = step.toExponential().split('e');
  return Math.min(100, Math.max(0, mantissa.replace(/^\d\.?/, '').length - Number(exponent)));
}

/**
 * Rounds a result once and last, by the steps of a standard, and keeps the value beside it.
 *
 * $$ x_r = q \left\lfloor \frac{x}{q} + \frac12 \right\rfloor \text{ (at a half: to the even multiple of } q\text{)} $$
 *
 * @remarks
 * ISO 6892-1 (from memory): strengths 1 MPa, Ae 0.1 %, other extensions and A 0.5 %, Z 1 %. ASTM E8/E8M (from memory): strengths 1 MPa
 * to 500 MPa, 5 MPa to 1000, 10 MPa above; elongation and reduction of area 0.5 % below 10 %, 1 % from there on. A half is told by
 * the decimal digits of the value: 2.675 is a half of 0.01 although its binary form lies below. Half to even is rule A of ISO 80000-1
 * and the rule of ASTM E29; half up (away from 0) is rule B. Never round what was rounded before.
 *
 * @param value - The value, unrounded: MPa for strengths, a ratio for extensions and Z.
 * @param options - Kind and rule, or a step; where a half goes.
 * @returns Both values, the text, step and rule.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * roundResult(0.2425, { kind: 'elongation' }).rounded; // => 0.24
 * roundResult(613, { kind: 'strength', rule: 'astm' }).text; // => '615'
 * roundResult(2.665, { step: 0.01, half: 'up' }).text; // => '2.67'
 * ```
 *
 * @see ISO 6892-1:2019 and ASTM E8/E8M, rounding of results; ISO 80000-1; ASTM E29. Checked in `test/handbook/rounding.test.ts`.
 */
export function roundResult(value: number, options: RoundingOptions): RoundedValue {
  requireFinite(FROM, 'value', value);
  requireOptions(FROM, options, ['kind', 'rule', 'step', 'half']);
  const half = requireOneOf(FROM, 'options.half', options.half ?? 'even', ['even', 'up']);
  const rule = requireOneOf(FROM, 'options.rule', options.rule ?? 'iso', ['iso', 'astm']);
  if ((options.kind === undefined) === (options.step === undefined))
    throw new InputError(
      FROM,
      'options.kind',
      options.kind === undefined ? 'missing' : 'ambiguous',
      'or step must be given, not both',
      options.kind,
    );
  const step =
    options.step === undefined
      ? roundingStep(requireOneOf(FROM, 'options.kind', options.kind, KINDS), value, rule)
      : requirePositive(FROM, 'options.step', options.step);
  const rounded = roundToStep(value, step, half);
  const whose = options.step === undefined ? `steps of ${RULES[rule]}` : 'a step of its own';
  return {
    value,
    rounded,
    text: rounded.toFixed(decimalsOf(step)),
    step,
    rule: `${whose}, half ${half === 'even' ? 'to even (ISO 80000-1 rule A, ASTM E29)' : 'up (ISO 80000-1 rule B)'}`,
  };
}
