import type { ReplicateDifference } from './ReplicatesResult.js';
import type { TensionResult } from './TensionResult.js';

/** Coefficients and areas within this share count as alike: a gauge length may be rounded to 5 mm (ISO 6892-1). */
const ALIKE = 0.1;
/** Strain rates within this factor count as alike (common practice). */
const RATE_ALIKE = 3;

/** @internal In what the tests differ, and how that is said. */
export interface FoundDifference {
  readonly difference: ReplicateDifference;
  readonly what: string;
  readonly values: string;
}

const distinct = (list: readonly (string | undefined)[]): string[] => [...new Set(list.flatMap((one) => one ?? []))];

/** Smallest and largest, where they are farther apart than a factor. */
function spread(list: readonly number[], factor: number, digits: number): string | undefined {
  const sound = list.filter((one) => one > 0);
  if (sound.length < 2) return undefined;
  const [low, high] = [Math.min(...sound), Math.max(...sound)];
  return high / low > factor ? `${Number(low.toPrecision(digits))} to ${Number(high.toPrecision(digits))}` : undefined;
}

/** What others wrote stands in quotation marks: it is no word of ours, whatever it says. */
const quoted = (text: string | undefined): string | undefined => text && `"${text}"`;

const inArea = (values: string | undefined): string | undefined => values && `${values} mm²`;

/** Mean strain rate while the piece was loaded. */
function rateOf({ rates }: TensionResult): number {
  if (!rates || rates.strainRate.length === 0) return 0;
  return rates.strainRate.reduce((sum, one) => sum + one, 0) / rates.strainRate.length;
}

/** @internal Gauge lengths count by their coefficient, sections by shape and area, the others by their words or numbers. */
export function replicateDifferences(results: readonly TensionResult[]): FoundDifference[] {
  const found: FoundDifference[] = [];
  const add = (difference: ReplicateDifference, what: string, values: string | undefined) => {
    if (values !== undefined) found.push({ difference, what, values });
  };
  const words = (list: readonly (string | undefined)[]) => {
    const different = distinct(list);
    return different.length > 1 ? different.join(', ') : undefined;
  };
  const pieces = results.map(({ testPiece }) => testPiece);
  const coefficients = pieces.map(({ gaugeLength, section }) => gaugeLength / Math.sqrt(section.area));
  add('gaugeLength', 'the gauge length over √S0', spread(coefficients, 1 + ALIKE, 3));
  add(
    'section',
    'the section',
    words(pieces.map(({ section }) => section.shape)) ??
      inArea(
        spread(
          pieces.map(({ section }) => section.area),
          1 + ALIKE,
          4,
        ),
      ),
  );
  add('extensionBasis', 'the source of the strain', words(results.map(({ extensionBasis }) => extensionBasis)));
  add('material', 'the material', words(results.map(({ test }) => quoted(test.material))));
  add('operator', 'the operator', words(results.map(({ test }) => quoted(test.operator))));
  add('rate', 'the mean strain rate', spread(results.map(rateOf), RATE_ALIKE, 2));
  return found;
}
