import { hasTrueCurve, hardeningPicture, trueCurve, type HardeningPicture } from '../../hardening/index.js';
import type { TensionOrCurve } from '../words/TensionOrCurve.js';

/** The curve is drawn a little beyond the maximum, to this share of it, so that the crossing can be seen. */
const BEYOND = 0.985;
const FEWEST = 20;
/** A force below this share of the highest so far is falling. */
const STEADY = 0.998;

type TrueCurve = ReturnType<typeof trueCurve>;

/**
 * The part that hardens, without the falls of the force in pauses, nor the yield point and its plateau: a rate of them says nothing of the metal.
 * The true curve begins at sample `from`.
 */
function steadyPart({ upperYieldStrength: upper, maximumIndex }: TensionOrCurve, { strain, stress }: TrueCurve, from: number) {
  const kept: number[] = [];
  let highest = 0;
  for (let i = upper ? Math.max(0, upper.index - from) : 0; i < stress.length; i += 1) {
    const nominal = stress[i]! / Math.exp(strain[i]!);
    highest = Math.max(highest, nominal);
    if (i + from >= maximumIndex || nominal > STEADY * highest) kept.push(i);
  }
  // a few samples of the yield point itself lie before a plateau
  const first = upper ? kept.findIndex((i, k) => k > 0 && i > kept[k - 1]! + 1) : 0;
  const part = kept.slice(Math.max(0, first));
  return { strain: Float64Array.from(part, (i) => strain[i]!), stress: Float64Array.from(part, (i) => stress[i]!) };
}

/** @internal True curve up to a little beyond maximum force, and the hardening rates of its steady part; none where it is too short. */
export function hardeningPart(result: TensionOrCurve): { readonly curve: TrueCurve; readonly picture: HardeningPicture } | undefined {
  const { curve, maximumIndex, fracture } = result;
  const end = (fracture?.index ?? curve.stress.length - 1) + 1;
  let to = Math.min(maximumIndex, end - 1);
  const top = curve.stress[to]!;
  while (to + 1 < end && curve.stress[to + 1]! > BEYOND * top) to += 1;
  let from = 0;
  while (from < to && curve.strain[from]! <= 0) from += 1;
  if (to - from < FEWEST || !hasTrueCurve(curve.strain, from, to)) return undefined;
  const whole = trueCurve(curve, { from, to });
  return { curve: whole, picture: hardeningPicture(steadyPart(result, whole, from)) };
}
