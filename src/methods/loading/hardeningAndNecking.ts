import { failure, type StressStrainCurve } from '../../base/index.js';
import type { ElasticLine } from '../../curve/index.js';
import { flowKernel, hasTrueCurve, hollomonKernel, neckingByCurve, neckingKink, trueKernel, withinStrains } from '../../hardening/index.js';
import { cellMeans, stretchAbove } from '../../numeric/index.js';
import type { TensionNumbers } from './TensionNumbers.js';

/** Hollomon is fitted from 2 % true plastic strain where the curve reaches twice as far, else from the end of yielding. */
const FIT_FROM = 0.02;
/** The onset of necking is looked for where the stress is above this share of its maximum. */
const NECKING_SHARE = 0.96;

/** About so many means stand for the samples of a long record in hardening and necking. */
const PLACES = 150;

/** @internal The curve from one sample to another (included), by means. */
export function meansOf({ strain, stress }: StressStrainCurve, first: number, last: number): StressStrainCurve {
  const { x, y } = cellMeans(strain, stress, first, last, PLACES);
  return { strain: x, stress: y };
}

/** @internal Hollomon's law on a flow curve, from 2 % plastic strain on where it reaches twice as far. */
export function hollomonOf(flow: StressStrainCurve): TensionNumbers['hardening'] {
  const last = flow.strain.length - 1;
  if (last < 4) return undefined;
  const to = flow.strain[last]!;
  const from = to > 2 * FIT_FROM ? Math.max(FIT_FROM, flow.strain[0]!) : flow.strain[0]!;
  if (to <= from) return undefined; // noise on a curve without plastic strain
  return Object.assign(hollomonKernel(withinStrains(flow, from, to)), { range: [from, to] as const });
}

/** A plastic strain is told from none where it is so many times its standard doubt. */
const PLASTIC = 3;

/** Doubt of a plastic strain at a stress: by the slope of the line, and by the scatter of the samples about it [mm/mm]. */
const plasticDoubt = ({ slope, standardError, residualStandardDeviation }: ElasticLine, stress: number): number =>
  Math.hypot((stress * standardError) / slope, residualStandardDeviation) / slope;

/** @internal The hardening law between yielding and maximum; none where nothing flowed, so that only noise could be fitted. */
export function hardeningOf(curve: StressStrainCurve, line: ElasticLine, first: number, maximum: number): TensionNumbers['hardening'] {
  if (maximum - first < 5) return undefined;
  const plain = meansOf(curve, first, maximum);
  if (!hasTrueCurve(plain.strain)) return undefined;
  const means = trueKernel(plain, 1);
  const flow = flowKernel(means, line.slope, 0, means.strain.length - 1);
  const last = flow.strain.length - 1;
  if (last < 0) return undefined;
  const [from, to] = [flow.strain[0]!, flow.strain[last]!];
  const doubt = plasticDoubt(line, flow.stress[last]!);
  if (to - from < PLASTIC * doubt)
    return Object.assign(failure('within-doubt', 'the plastic strain up to the maximum is within its doubt: nothing hardened'), {
      range: [from, to] as const,
    });
  return hollomonOf(flow);
}

/** True strain and force over the original area around the maximum, by means; undefined where there is no such region. */
function aboutMaximum(
  { strain, stress }: StressStrainCurve,
  maximum: number,
  end: number,
): readonly [Float64Array, Float64Array] | undefined {
  const [first, last] = stretchAbove(stress, NECKING_SHARE * stress[maximum]!, maximum, end);
  if (last - first < 7) return undefined;
  const { strain: means, stress: force } = meansOf({ strain, stress }, first, last);
  if (!hasTrueCurve(means)) return undefined;
  const trueStrain = new Float64Array(means.length);
  for (let i = 0; i < means.length; i += 1) trueStrain[i] = Math.log1p(means[i]!);
  // the engineering stress is the force over the original area
  return [trueStrain, force];
}

/** @internal The onset of necking by Considère, from the samples around the maximum. */
export function neckingOf(curve: StressStrainCurve, maximum: number, end: number): TensionNumbers['necking'] {
  const about = aboutMaximum(curve, maximum, end);
  return about && neckingByCurve(...about);
}

/** @internal The true strain at which the force begins to fall with a kink, where it does. */
export function suddenNeckOf(curve: StressStrainCurve, maximum: number, end: number): number | undefined {
  const about = aboutMaximum(curve, maximum, end);
  return about && neckingKink(...about);
}
