import { failure, type Failure } from '../base/index.js';
import { SAME_LENGTH, USUAL_COEFFICIENT } from '../geometry/index.js';
import type { DecisionReason, Measured, Specification } from './Decision.js';

/** An elongation after fracture: A, with its gauge length as A80mm, or with the coefficient of a proportional one as A11.3 (ISO 6892-1). */
const ELONGATION = /^A(?:(?<length>\d+(?:\.\d+)?)mm|(?<coefficient>\d+(?:\.\d+)?))?$/;

/** @internal True for an elongation after fracture, which means nothing without its gauge length. */
export const isElongation = (symbol: string | undefined): boolean => symbol !== undefined && ELONGATION.test(symbol);

/** What the index of an elongation says of its gauge length. */
function indexOf(symbol: string | undefined): { readonly gaugeLength?: number; readonly coefficient?: number } {
  const { length, coefficient } = ELONGATION.exec(symbol ?? '')?.groups ?? {};
  if (length !== undefined) return { gaugeLength: Number(length) };
  return coefficient === undefined ? {} : { coefficient: Number(coefficient) };
}

/** @internal Gauge length of an elongation, as given or by its index [mm]. */
export const gaugeLengthOf = ({ symbol, gaugeLength }: Pick<Measured, 'symbol' | 'gaugeLength'>): number | undefined =>
  gaugeLength ?? indexOf(symbol).gaugeLength;

/**
 * Limits are of the size of the values that they bound; neighbouring units differ by 100 or 1000. Where both are below 1 (a share that is small
 * in earnest) no unit explains it (common practice).
 */
const OTHER_SIZE = 30;

/** @internal The limit that the value is nearest to, and how many times one is the other; nothing where no unit need be doubted. */
export function otherSize(
  { value }: Measured,
  { lower = -Infinity, upper = Infinity }: Specification,
): { readonly limit: number; readonly ratio: number } | undefined {
  const size = Math.abs(value);
  // between two limits it keeps both, however wide they are
  if (size === 0 || (Number.isFinite(lower) && Number.isFinite(upper) && value >= lower && value <= upper)) return undefined;
  const [nearest] = [lower, upper]
    .filter((limit) => limit !== 0 && Number.isFinite(limit))
    .map((limit) => ({ limit, ratio: Math.max(size / Math.abs(limit), Math.abs(limit) / size) }))
    .sort((a, b) => a.ratio - b.ratio);
  return nearest !== undefined && nearest.ratio > OTHER_SIZE && Math.max(size, Math.abs(nearest.limit)) > 1 ? nearest : undefined;
}

/** @internal Why the value cannot be held against the limit at all, with what to do instead; nothing where it can. */
export function withoutGrounds(measured: Measured, specification: Specification): Failure<DecisionReason> | undefined {
  const { symbol, area } = measured;
  const asked = specification.symbol ?? symbol;
  const elongations = isElongation(symbol) && isElongation(asked);
  if (symbol !== undefined && asked !== undefined && symbol !== asked && !elongations) {
    const yields = [symbol, asked].every((one) => /^(Re|Rp|Rt)/.test(one));
    const remedy = yields
      ? `determine ${asked} itself from the record, or have the limit stated for ${symbol}`
      : `give the ${asked} that was measured`;
    return failure('other-quantity', `A limit for ${asked} says nothing of ${symbol}: ${remedy}.`);
  }
  const gaugeLength = gaugeLengthOf(measured);
  if (!elongations || gaugeLength === undefined) return undefined;
  const differ = (own: number, wanted: number) => Math.abs(own / wanted - 1) > SAME_LENGTH;
  const remedy = 'convert the elongation with convertElongation (ISO 2566) where its limits allow, and say so';
  const stated = gaugeLengthOf({ symbol: asked, gaugeLength: specification.gaugeLength });
  if (stated !== undefined)
    return differ(gaugeLength, stated)
      ? failure('other-gauge-length', `A on ${gaugeLength} mm does not compare with a limit on ${stated} mm: ${remedy}.`)
      : undefined;
  const wanted = specification.coefficient ?? indexOf(asked).coefficient ?? USUAL_COEFFICIENT;
  const own = area === undefined ? undefined : gaugeLength / Math.sqrt(area);
  return own !== undefined && differ(own, wanted)
    ? failure('other-gauge-length', `A on ${own.toFixed(2)}√S0 does not compare with a limit on ${wanted}√S0: ${remedy}.`)
    : undefined;
}
