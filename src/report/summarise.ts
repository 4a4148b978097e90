import { InputError, requireObject, type Quantity } from '../base/index.js';
import { roundToStep } from '../numeric/index.js';
import type { TensionResult } from '../methods/index.js';

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
  readonly step: number | { readonly figures: number };
  readonly strain?: true;
}

const strength: Shown = { unit: 'MPa', factor: 1, step: 1 };
const proof: Shown = { ...strength, strain: true };
const extension: Shown = { unit: '%', factor: 100, step: 0.5, strain: true };
const energy: Shown = { unit: 'MJ/m³', factor: 1, step: { figures: 3 }, strain: true };

/** Rounding steps of ISO 6892-1 (from memory): strengths 1 MPa, Ae 0.1 %, other extensions and A 0.5 %, Z 1 %. */
const shown = {
  elasticSlope: { unit: 'GPa', factor: 1e-3, step: { figures: 3 }, strain: true },
  modulus: { unit: 'GPa', factor: 1e-3, step: { figures: 3 }, strain: true },
  proportionalLimit: proof,
  upperYieldStrength: strength,
  lowerYieldStrength: strength,
  yieldPointExtension: { ...extension, step: 0.1 },
  proofStrengths: proof,
  totalExtensionStrengths: proof,
  maximumForce: { unit: 'kN', factor: 1e-3, step: 0.01 },
  tensileStrength: strength,
  uniformExtension: extension,
  totalExtensionAtMaximumForce: extension,
  elongationAfterFracture: { unit: '%', factor: 100, step: 0.5 },
  totalExtensionAtFracture: extension,
  plasticExtensionAtFracture: extension,
  reductionOfArea: { unit: '%', factor: 100, step: 1 },
  resilience: energy,
  toughness: energy,
  necking: { unit: '', factor: 1, step: 0.001, strain: true },
  hardeningExponent: { unit: '', factor: 1, step: 0.01, strain: true },
  strengthCoefficient: proof,
} as const satisfies Readonly<Record<string, Shown>>;

type ShownField = keyof typeof shown;

/** What stands beside every value that a strain from travel went into. */
const STAMP = 'determined from crosshead displacement';

/** Rounded text with as many decimals as the step has. */
function rounded(value: number, step: Shown['step']): string {
  if (typeof step === 'number') return roundToStep(value, step).toFixed(Math.max(0, -Math.floor(Math.log10(step))));
  if (value === 0) return '0';
  const size = 10 ** (Math.floor(Math.log10(Math.abs(value))) + 1 - step.figures);
  return roundToStep(value, size).toFixed(Math.max(0, -Math.round(Math.log10(size))));
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
 * Each row carries the rounded text and the unrounded value: round once, and last. Half is rounded to even, by decimal digits. E has
 * three figures, two where a frame compliance was removed. Values whose strain came from the crosshead say so.
 *
 * @param result - A result of `analyseTension`.
 * @returns Rows in the order of the test: elastic, yield, strength, extensions, energies, hardening.
 * @throws {@link InputError} `wrong-type` for anything else.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 2801 }, (_, i) => i / 10);
 * const record = { force: stress.map((R) => 50 * R), strain: stress.map((R) => R / 70000 + 0.002 * (R / 250) ** 20) };
 * const rows = summarise(analyseTension(record, { section: sectionFromArea({ area: 50 }), gaugeLength: 40 }));
 * rows.find(({ symbol }) => symbol === 'Rp0.2')?.text; // => '250'
 * ```
 *
 * @see ISO 6892-1:2019, rounding of the results; ISO 80000-1, rounding of numbers. Checked in `test/report/report.test.ts`.
 */
export function summarise(result: TensionResult): SummaryRow[] {
  const given: object = requireObject('summarise', 'result', result);
  if (!('method' in given) || given.method !== 'tension')
    throw new InputError('summarise', 'result.method', 'wrong-type', 'must be that of analyseTension', result);
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
      const { unit, factor, step }: Shown = shown[field];
      const value = quantity.value * factor;
      return [
        {
          field,
          symbol: quantity.symbol,
          name: quantity.name,
          text: rounded(value, field === 'modulus' && frameRemoved ? { figures: 2 } : step),
          unit,
          value,
          ...(quantity.standardUncertainty === undefined ? {} : { standardUncertainty: quantity.standardUncertainty * factor }),
          source: quantity.source,
          ...(stamp === undefined ? {} : { stamp }),
        },
      ];
    });
  });
}
