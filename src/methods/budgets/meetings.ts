import type { Outcome, StressStrainCurve } from '../../base/index.js';
import type { CurvePoint } from '../../curve/index.js';
import { firstReaching } from '../../numeric/index.js';
import { PROPORTIONAL_OFFSET } from '../evaluation/tensionKernel.js';
import type { TensionSettings } from '../evaluation/tensionOptions.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';

/** A place of the record between two samples, with the extension (plastic or total) and the stress that they give there. */
interface Place {
  readonly before: number;
  readonly share: number;
  readonly extension: number;
  readonly stress: number;
}

/** Where a strength is read, and how the curve goes on there. */
interface Meeting {
  /** The extension that the strength is read at [mm/mm]. */
  readonly extension: number;
  readonly strength: number;
  readonly at: Place;
  /** d ln R / d ln e. */
  readonly exponent: number;
  /** Places to either side, as far as there are such, and how far their extensions lie apart. */
  readonly less: Place;
  readonly more: Place;
  readonly span: number;
}

/** @internal Meetings of the strengths of a test with their lines, in the order of its settings; undefined where the curve does not tell how it goes on. */
export interface Meetings {
  readonly proofs: readonly (Meeting | undefined)[];
  readonly totals: readonly (Meeting | undefined)[];
  readonly proportional: Meeting | undefined;
}

/**
 * So many times the extension, and as small a part of it, are looked at. Twice a plastic one: a power law is told exactly, a curve that goes on straight behind
 * a corner to (F − 1/F)/(2 ln F), 8 %; and noise of the extension has a stretch of one and a half offsets to be small against. A total one holds the
 * elastic part, whose end is no power law: an eighth of it, as far as the strength itself is read over.
 */
const PLASTIC = 2;
const TOTAL = 9 / 8;

type Strength = Outcome<CurvePoint, string>;
interface Evaluated {
  readonly numbers: TensionNumbers;
  readonly curve: StressStrainCurve;
}

const around = (extensions: readonly number[], factor: number): number[] => extensions.flatMap((one) => [one / factor, one, factor * one]);

const between = (column: Float64Array, before: number, share: number): number =>
  column[before]! + share * (column[before + 1]! - column[before]!);

/** Extension less its elastic part by a slope; the total one by an infinite slope. */
const extensionAt = ({ strain, stress }: StressStrainCurve, slope: number, before: number, share: number): number =>
  between(strain, before, share) - between(stress, before, share) / slope;

/** The place before a sample that an extension is first reached at. */
function placeOf(curve: StressStrainCurve, slope: number, sample: number, extension: number): Place | undefined {
  const before = sample - 1;
  if (before < 0 || sample >= curve.strain.length) return undefined;
  const [from, to] = [extensionAt(curve, slope, before, 0), extensionAt(curve, slope, before, 1)];
  const share = to > from ? Math.min(Math.max((extension - from) / (to - from), 0), 1) : 0;
  return { before, share, extension: extensionAt(curve, slope, before, share), stress: between(curve.stress, before, share) };
}

/** How a curve goes on, by its strengths at less, just so much, and more of an extension. */
function meetingOf(
  extension: number,
  factor: number,
  strengths: readonly (Strength | undefined)[],
  placeAt: (k: number) => Place | undefined,
): Meeting | undefined {
  const known = [0, 1, 2].map((k) => {
    const one = strengths[k];
    const place = one?.ok === true && one.stress > 0 ? placeAt(k) : undefined;
    return one?.ok === true && place ? { stress: one.stress, place, power: k - 1 } : undefined;
  });
  const at = known[1];
  const [less, more] = [known[0] ?? at, known[2] ?? at];
  if (!at || !less || !more || less === more) return undefined;
  const exponent = Math.log(more.stress / less.stress) / ((more.power - less.power) * Math.log(factor));
  const span = extension * (factor ** more.power - factor ** less.power);
  return { extension, strength: at.stress, at: at.place, exponent, less: less.place, more: more.place, span };
}

/** @internal Meetings of a test, by an evaluation with other extensions: its strengths at some less and some more of each. */
export function meetingsOf(settings: TensionSettings, evaluate: (settings: TensionSettings) => Evaluated): Meetings {
  const plastic = [...settings.offsets, PROPORTIONAL_OFFSET];
  const [offsets, totalExtensions] = [around(plastic, PLASTIC), around(settings.totalExtensions, TOTAL)];
  const { numbers, curve } = evaluate({ ...settings, offsets, totalExtensions });
  const { line, proofs, totals } = numbers;
  if (!line.ok) return { proofs: [], totals: [], proportional: undefined };
  const ofProofs = plastic.map((extension, i) => {
    const some = proofs.slice(3 * i, 3 * i + 3);
    const placeAt = (k: number): Place | undefined => {
      const one = some[k];
      return one?.ok === true ? placeOf(curve, line.slope, one.index, offsets[3 * i + k]!) : undefined;
    };
    return meetingOf(extension, PLASTIC, some, placeAt);
  });
  const placeOfTotal = (extension: number): Place | undefined =>
    placeOf(curve, Infinity, firstReaching(curve.strain, extension, 0, curve.strain.length), extension);
  return {
    proofs: ofProofs.slice(0, -1),
    totals: settings.totalExtensions.map((extension, i) =>
      meetingOf(extension, TOTAL, totals.slice(3 * i, 3 * i + 3), (k) => placeOfTotal(totalExtensions[3 * i + k]!)),
    ),
    proportional: ofProofs.at(-1),
  };
}

/** The strength of a changed test at a meeting. */
function strengthAt(curve: StressStrainCurve, slope: number, { extension, strength, at, exponent, less, more, span }: Meeting): number {
  const moved = (place: Place): number => extensionAt(curve, slope, place.before, place.share) - place.extension;
  const growth = (moved(more) - moved(less)) / span;
  const lifted = between(curve.stress, at.before, at.share) - at.stress;
  return (strength + lifted) * (1 - moved(at) / ((1 + growth) * extension)) ** exponent;
}

/**
 * @internal Numbers of a changed test, with its strengths by where the same places of the record now lie, and how the curve goes on from there.
 *
 * $$ R' = (R + \Delta\sigma) \left(1 - \frac{\Delta e}{(1 + g)\, e}\right)^{\nu}, \qquad \nu = \frac{\mathrm{d}\ln R}{\mathrm{d}\ln e}, \quad g = \frac{\mathrm{d}\,\Delta e}{\mathrm{d} e} $$
 *
 * What is changed moves a sample by Δσ, and its extension beside the line (e = ε − σ/m; of a total one e = ε) by Δe. Both are differences of one sample, in
 * which its noise cancels; a crossing that is searched anew is told by other samples, whose noise does not. The strength is where the extension is again e: of a curve
 * R ∝ e^ν that was moved, where it was e − Δe/(1 + g). To the first order that is implicit differentiation of σ(ε) = m (ε − ε₀ − e) by an input x,
 * with the local slope h, 1/h = 1/m + e/(ν R): dR/dx = (m (∂σ/∂x − h ∂ε/∂x) − h ∂/∂x[m (ε − ε₀ − e)])/(m − h); of a line that turns about the origin
 * −(λ/n) R dm/m with n = 1/ν, as in `proofStrengthBudget`.
 */
export function metAgain(numbers: TensionNumbers, curve: StressStrainCurve, meetings: Meetings): TensionNumbers {
  const { line, proofs, totals, proportional } = numbers;
  if (!line.ok) return numbers;
  const again = <Point extends CurvePoint, Reason extends string>(
    one: Outcome<Point, Reason>,
    meeting: Meeting | undefined,
    slope: number,
  ): Outcome<Point, Reason> => (one.ok && meeting ? { ...one, stress: strengthAt(curve, slope, meeting) } : one);
  return {
    ...numbers,
    proofs: proofs.map((one, k) => again(one, meetings.proofs[k], line.slope)),
    totals: totals.map((one, k) => again(one, meetings.totals[k], Infinity)),
    proportional: proportional?.offset
      ? { ...proportional, offset: again(proportional.offset, meetings.proportional, line.slope) }
      : proportional,
  };
}
