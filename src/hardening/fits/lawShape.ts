import type { Evaluate } from './residualSums.js';

/** @internal A law as least squares sees it: parameters in a fixed order. */
export interface LawShape<Name extends string> {
  readonly names: readonly Name[];
  /** Least value of each parameter. */
  readonly lowest: readonly number[];
  /** Stress at each sample of a stretch, and its derivatives by the parameters, one column for each. */
  readonly evaluate: Evaluate;
  /** Parameters to start from: for each of a scan of nonlinear ones, the best of the others, those that are held kept. */
  readonly starts: (points: LawPoints, held: Readonly<Partial<Record<Name, number>>> | undefined) => readonly (readonly number[])[];
  /** True where the parameters describe no hardening. */
  readonly flat: (parameters: readonly number[]) => boolean;
}

/** @internal Points of a flow curve, with weights where they were given. */
export interface LawPoints {
  readonly strain: Float64Array;
  /** Logarithms of the strain. */
  readonly logarithm: Float64Array;
  readonly stress: Float64Array;
  readonly weights: Float64Array | undefined;
}

/** @internal The points with the logarithms of their strain. */
export function lawPoints(strain: Float64Array, stress: Float64Array, weights: Float64Array | undefined): LawPoints {
  const logarithm = new Float64Array(strain.length);
  for (let i = 0; i < strain.length; i += 1) logarithm[i] = Math.log(strain[i]!);
  return { strain, logarithm, stress, weights };
}

/** @internal Best factor of a basis function: variable projection for a fixed nonlinear parameter. */
export function projected({ strain, stress, weights }: LawPoints, first: (e: number, k: number) => number): number {
  let vv = 0;
  let vy = 0;
  for (let i = 0; i < strain.length; i += 1) {
    const w = weights ? weights[i]! : 1;
    const v = first(strain[i]!, i);
    vv += w * v * v;
    vy += w * v * stress[i]!;
  }
  return vy / vv;
}

/** @internal Best constant and factor of a basis function. */
export function projectedLine({ strain, stress, weights }: LawPoints, basis: (e: number) => number): readonly [number, number] {
  let s = 0;
  let sv = 0;
  let sy = 0;
  for (let i = 0; i < strain.length; i += 1) {
    const w = weights ? weights[i]! : 1;
    s += w;
    sv += w * basis(strain[i]!);
    sy += w * stress[i]!;
  }
  const meanV = sv / s;
  const meanY = sy / s;
  let vv = 0;
  let vy = 0;
  for (let i = 0; i < strain.length; i += 1) {
    const w = weights ? weights[i]! : 1;
    const v = basis(strain[i]!) - meanV;
    vv += w * v * v;
    vy += w * v * (stress[i]! - meanY);
  }
  const factor = vy / vv;
  return [meanY - factor * meanV, factor];
}

/** @internal Geometric steps from one number to another. */
export const geometric = (from: number, to: number, steps: number): number[] =>
  Array.from({ length: steps }, (_, k) => from * (to / from) ** (k / (steps - 1)));
