import { InputError, requireObject, requireOneOf, requireOptions, type Quantity } from '../base/index.js';
import type { TensionResult } from '../methods/index.js';
import { roundingStep, roundResult, type HalfRule, type RoundedValue, type RoundingKind, type RoundingRule } from '../statistics/index.js';

/** Options of {@link summarise}. */
export interface SummaryOptions {
  /** Whose steps of rounding: ISO 6892-1, or ASTM E8/E8M; default `iso`. */
  readonly rounding?: RoundingRule | undefined;
  /** Where a half goes: to the even step or away from 0; default `even`. */
  readonly half?: HalfRule | undefined;
}

/** One row of a results table. */
export interface SummaryRow {
  /** Field of the result. */
  readonly field: string;
  /** Symbol. */
  readonly symbol: string;
  /** Name. */
  readonly name: string;
  /** Rounded value as text, in `unit`. */
  readonly text: string;
  /** Unit as shown: MPa, GPa, %, kN, MJ/m³; empty for a number. */
  readonly unit: string;
  /** The value in that unit, unrounded. */
  readonly value: number;
  /** The value rounded, in that unit. */
  readonly rounded: number;
  /** Step of the rounding, in that unit. */
  readonly step: number;
  /** Standard uncertainty in that unit, where it is known. */
  readonly standardUncertainty?: number | undefined;
  /** Where the rule stands. */
  readonly source: string;
  /** What must be said beside the value: that its strain is of the crosshead. */
  readonly stamp?: string | undefined;
}

/** How a field is shown: unit, factor, step of rounding, whether strain is in it. */
interface Shown {
  readonly unit: string;
  readonly factor: number;
  readonly step: RoundingKind | number | { readonly figures: number };
  readonly strain?: true;
}

const strength: Shown = { unit: 'MPa', factor: 1, step: 'strength' };
const proof: Shown = { ...strength, strain: true };
const extension: Shown = { unit: '%', factor: 100, step: 'extension', strain: true };
const energy: Shown = { unit: 'MJ/m³', factor: 1, step: { figures: 3 }, strain: true };

/** What the standards round by kind, and steps of common practice for the rest. */
const shown = {
  elasticSlope: { unit: 'GPa', factor: 1e-3, step: { figures: 3 }, strain: true },
  modulus: { unit: 'GPa', factor: 1e-3, step: { figures: 3 }, strain: true },
  proportionalLimit: proof,
  upperYieldStrength: strength,
  lowerYieldStrength: strength,
  yieldPointExtension: { ...extension, step: 'yieldPointExtension' },
  proofStrengths: proof,
  totalExtensionStrengths: proof,
  maximumForce: { unit: 'kN', factor: 1e-3, step: 0.01 },
  tensileStrength: strength,
  uniformExtension: extension,
  totalExtensionAtMaximumForce: extension,
  elongationAfterFracture: { unit: '%', factor: 100, step: 'elongation' },
  totalExtensionAtFracture: extension,
  plasticExtensionAtFracture: extension,
  reductionOfArea: { unit: '%', factor: 100, step: 'reductionOfArea' },
  resilience: energy,
  toughness: energy,
  necking: { unit: '', factor: 1, step: 0.001, strain: true },
  hardeningExponent: { unit: '', factor: 1, step: 0.01, strain: true },
  strengthCoefficient: { ...proof, step: 1 },
} as const satisfies Readonly<Record<string, Shown>>;

type ShownField = keyof typeof shown;

/** What stands beside every value that a strain from travel went into. */
const STAMP = 'determined from crosshead displacement';

/** A value in the unit that is shown, rounded by the rule of its kind, or by a step or a number of figures. */
function rounded(value: number, { factor, step }: Shown, { rounding = 'iso', half }: SummaryOptions): RoundedValue {
  if (typeof step === 'string') return roundResult(value, { step: roundingStep(step, value / factor, rounding) * factor, half });
  if (typeof step === 'number') return roundResult(value, { step, half });
  const size = value === 0 ? 1 : 10 ** (Math.floor(Math.log10(Math.abs(value))) + 1 - step.figures);
  return roundResult(value, { step: size, half });
}

/** Where the extensometer still held, a value is its own, else the crosshead's. */
function stampOf(result: TensionResult, field: ShownField): string | undefined {
  if (!('strain' in shown[field])) return undefined;
  if (result.extensionBasis === 'travel') return STAMP;
  const beyond: readonly ShownField[] = [
    'uniformExtension',
    'totalExtensionAtMaximumForce',
    'totalExtensionAtFracture',
    'plasticExtensionAtFracture',
    'toughness',
    'necking',
    'hardeningExponent',
    'strengthCoefficient',
  ];
  return result.extensionBasis === 'extensometer-then-travel' && beyond.includes(field) ? `${STAMP} beyond the extensometer` : undefined;
}

/**
 * The results of a test as rows of a table, rounded by the standard, each with its source.
 *
 * @remarks
 * Each row carries the rounded value and the unrounded one: round once, and last ({@link roundResult}). Half is told by decimal digits. E has
 * three figures, two where a frame compliance was removed. Values whose strain came from the crosshead say so.
 *
 * @param result - A result of `analyseTension`.
 * @param options - Whose steps, and where a half goes.
 * @returns Rows in the order of the test: elastic, yield, strength, extensions, energies, hardening.
 * @throws {@link InputError} `wrong-type` for anything else; `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 2801 }, (_, i) => i / 10);
 * const record = { force: stress.map((R) => 50 * R), strain: stress.map((R) => R / 70000 + 0.002 * (R / 250) ** 20) };
 * const rows = summarise(analyseTension(record, { section: sectionFromArea({ area: 50 }), gaugeLength: 40 }));
 * rows.find(({ symbol }) => symbol === 'Rp0.2')?.text; // => '250'
 * ```
 *
 * @see ISO 6892-1:2019 and ASTM E8/E8M, rounding of results; ISO 80000-1, rounding of numbers. Checked in `test/report/report.test.ts`.
 */
export function summarise(result: TensionResult, options: SummaryOptions = {}): SummaryRow[] {
  const given: object = requireObject('summarise', 'result', result);
  if (!('method' in given) || given.method !== 'tension')
    throw new InputError('summarise', 'result.method', 'wrong-type', 'must be that of analyseTension', result);
  requireOptions('summarise', options, ['rounding', 'half']);
  requireOneOf('summarise', 'options.rounding', options.rounding ?? 'iso', ['iso', 'astm']);
  const frameRemoved = result.trail.some(({ step }) => step.startsWith('frame compliance removed'));
  return (Object.keys(shown) as ShownField[]).flatMap((field) => {
    const quantities: (Quantity | undefined)[] =
      field === 'hardeningExponent'
        ? [result.hardening?.exponent]
        : field === 'strengthCoefficient'
          ? [result.hardening?.strengthCoefficient]
          : field === 'proofStrengths' || field === 'totalExtensionStrengths'
            ? [...result[field]]
            : [result[field]];
    const stamp = stampOf(result, field);
    return quantities.flatMap((quantity): SummaryRow[] => {
      if (!quantity) return [];
      const how: Shown = field === 'modulus' && frameRemoved ? { ...shown[field], step: { figures: 2 } } : shown[field];
      const { unit, factor } = how;
      const value = quantity.value * factor;
      const { text, rounded: shownValue, step } = rounded(value, how, options);
      return [
        {
          field,
          symbol: quantity.symbol,
          name: quantity.name,
          text,
          unit,
          value,
          rounded: shownValue,
          step,
          ...(quantity.standardUncertainty === undefined ? {} : { standardUncertainty: quantity.standardUncertainty * factor }),
          source: quantity.source,
          ...(stamp === undefined ? {} : { stamp }),
        },
      ];
    });
  });
}
