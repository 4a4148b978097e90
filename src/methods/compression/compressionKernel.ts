import type { StressStrainCurve } from '../../base/index.js';
import { eulerLoad } from '../../curve/index.js';
import { uniformDiameter } from '../../piece/index.js';
import { compressiveTrueCurve, siebelCorrection } from '../../hardening/index.js';
import { cellMeans, firstReaching, lineFit, maximumIndex } from '../../numeric/index.js';
import type { CompressionLengths } from './compressionOptions.js';
import type { LineNumbers } from '../loading/lineKernel.js';

/** About so many means stand for the curve where its tangent is taken, and a tangent rests on so many of them to either side. */
const PLACES = 150;
const REACH = 2;
/** A flat curve has no tangent load: the share of it ends here. */
const MOST = 1000;

/** @internal The force over the tangent-modulus buckling load along the curve; undefined where the shape has no second moment. */
export function bucklingOf(
  { line, highest, fracture }: Pick<LineNumbers, 'line' | 'highest' | 'fracture'>,
  { strain, stress }: StressStrainCurve,
  { area, secondMoment, gaugeLength, endFactor }: CompressionLengths,
  watched: number,
  broken: boolean,
) {
  if (!line.ok || secondMoment === undefined) return undefined;
  const elasticLoad = eulerLoad({ modulus: line.slope, secondMoment, length: gaugeLength, endFactor });
  // a force that falls while the piece is pressed on has no tangent load at all; what springs back is no loading
  const end = broken && fracture.ok ? fracture.index : Math.max(highest, maximumIndex(strain));
  const { x, y } = cellMeans(strain, stress, line.first, end, PLACES);
  let largestShare = (stress[line.last]! * area) / elasticLoad;
  let halfAt: number | undefined;
  let reachedAt: { readonly strain: number; readonly stress: number } | undefined;
  for (let k = REACH; k + REACH < x.length; k += 1) {
    const tangent = lineFit(x, y, k - REACH, k + REACH)?.slope ?? line.slope;
    // a piece stiffens no further than its elastic line, whatever noise says
    const load = (elasticLoad * Math.min(Math.max(tangent, 0), line.slope)) / line.slope;
    const force = y[k]! * area;
    const share = force > 0 ? Math.min(MOST, force / load) : 0;
    largestShare = Math.max(largestShare, share);
    if (share >= watched) halfAt ??= x[k]!;
    if (share < 1 || reachedAt) continue;
    reachedAt = { strain: x[k]!, stress: y[k]! };
  }
  return { slenderness: (endFactor * gaugeLength) / Math.sqrt(secondMoment / area), elasticLoad, largestShare, halfAt, reachedAt };
}

/** @internal True curve from the origin to the last sample of the highest force; it ends before a strain of 1. */
export function trueCurveOf(curve: StressStrainCurve, last: number): StressStrainCurve | undefined {
  const first = firstReaching(curve.strain, 0, 0, last);
  const end = firstReaching(curve.strain, 1, 0, last + 1);
  return end - first < 2 ? undefined : compressiveTrueCurve(curve, { from: first, to: end - 1 });
}

/**
 * @internal Flow curve: the plastic part of the compression alone keeps the volume, so a linear frame in the strain does no harm.
 * Friction is taken off with the present diameter and height.
 */
export function flowCurveOf(
  { strain, stress }: StressStrainCurve,
  { line, plateauEnd }: Pick<LineNumbers, 'line' | 'plateauEnd'>,
  { diameter, gaugeLength: height }: CompressionLengths,
  friction: number | undefined,
): (StressStrainCurve & { readonly largestShare: number }) | undefined {
  if (!line.ok) return undefined;
  const plastic: number[] = [];
  const pressure: number[] = [];
  for (let i = line.last; i <= plateauEnd; i += 1) {
    const p = strain[i]! - stress[i]! / line.slope;
    // at the elastic line itself only rounding is left of the difference
    if (p <= 1e-9 || p >= 1 || stress[i]! <= 0) continue;
    plastic.push(p);
    pressure.push(stress[i]!);
  }
  if (plastic.length < 2) return undefined;
  const flow = compressiveTrueCurve({ strain: plastic, stress: pressure });
  let least = 1;
  if (friction !== undefined)
    plastic.forEach((p, k) => {
      const present = height * (1 - p);
      const d = uniformDiameter({ originalDiameter: diameter, originalHeight: height, height: present });
      const factor = siebelCorrection({ friction, diameter: d, height: present });
      least = Math.min(least, factor);
      flow.stress[k]! *= factor;
    });
  return { ...flow, largestShare: 1 - least };
}
