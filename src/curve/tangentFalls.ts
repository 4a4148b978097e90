import type { StressStrainCurve } from '../base/index.js';
import { cellMeans, noiseLevel, slidingLine } from '../numeric/index.js';
import type { CurvePoint } from './proofStrength.js';

/** The tangent is wanted to this share of the slope; noise widens the stretch that it is taken over. */
const TANGENT_ERROR = 0.02;
/** Of a long record tangents are taken on about so many means. */
const PLACES = 4000;

/** @internal The slope of the line that tangents are compared with [MPa], and between which samples. */
export interface TangentTask {
  readonly slope: number;
  readonly first: number;
  /** One past the highest stress. */
  readonly end: number;
}

/** @internal Where the local slope falls to each of some shares of the line's, for good, undefined where it does not: one walk for all of them. */
export function tangentFalls(curve: StressStrainCurve, task: TangentTask, shares: readonly number[]): (CurvePoint | undefined)[] {
  const { slope } = task;
  const long = task.end - task.first > 2 * PLACES;
  const means = long ? cellMeans(curve.strain, curve.stress, task.first, task.end - 1, PLACES) : undefined;
  const [strain, stress, first, end] = means ? [means.x, means.y, 0, means.x.length] : [curve.strain, curve.stress, task.first, task.end];
  // half-width in samples: narrow without noise, wide enough for the wanted error with it; that of
  // travel less the frame is mostly in the strain
  const noise = Math.hypot(noiseLevel(stress, first, end), slope * noiseLevel(strain, first, end));
  const high = 0.9 * stress[end - 1]!;
  let elastic = first + 1;
  while (elastic < end - 1 && stress[elastic]! <= high) elastic += 1;
  const step = Math.max((strain[elastic]! - strain[first]!) / (elastic - first), Number.MIN_VALUE);
  const half = Math.max(2, Math.ceil(0.5 * (12 * (noise / (TANGENT_ERROR * slope * step)) ** 2) ** (1 / 3)));
  const slopeAt = slidingLine(strain, stress, half);
  const falls = shares.map((share) => ({ level: share * slope, lasting: 0, point: undefined as CurvePoint | undefined }));
  let before = NaN;
  for (let i = Math.max(first, half), open = falls.length; open > 0 && i + half < end; i += 1) {
    const found = slopeAt(i);
    const tangent = Number.isNaN(found) ? before : found;
    for (const fall of falls) {
      if (fall.lasting > 2 * half) continue;
      if (tangent >= fall.level || Number.isNaN(before)) {
        fall.lasting = 0;
        fall.point = undefined;
        continue;
      }
      if (!fall.point) {
        const part = before > tangent ? (before - fall.level) / (before - tangent) : 1;
        const t = Math.min(1, Math.max(0, part));
        fall.point = {
          stress: stress[i - 1]! + t * (stress[i]! - stress[i - 1]!),
          strain: strain[i - 1]! + t * (strain[i]! - strain[i - 1]!),
        };
      }
      fall.lasting += 1;
      if (fall.lasting > 2 * half) open -= 1;
    }
    before = tangent;
  }
  return falls.map(({ point }) => point);
}
