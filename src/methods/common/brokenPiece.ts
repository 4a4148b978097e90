import {
  InputError,
  requireNonNegative,
  requireOneOf,
  requireOptions,
  requirePositive,
  type AfterFracture,
  type SubdividedLengths,
  type TestPiece,
} from '../../base/index.js';
import { neckArea, subdividedElongation } from '../../piece/index.js';

/** @internal Standard uncertainty of A by hand where none is stated: ±1.2 points at k = 2 (common practice). */
export const ELONGATION_DOUBT = 0.006;
/** @internal The same of Z: ±2 points. */
export const REDUCTION_DOUBT = 0.01;

/** How the elongation after fracture was measured. */
export type ElongationMethod = 'marks' | 'subdivision' | 'fine-marks';

/** @internal What was measured on the broken piece, checked: one final length with its method, one area, the place. */
export interface BrokenPiece {
  /** Lu [mm], or what stands for it. */
  readonly length?: number | undefined;
  readonly method?: ElongationMethod | undefined;
  /** Su [mm²]. */
  readonly area?: number | undefined;
  readonly distance?: number | undefined;
  readonly place?: AfterFracture['fracturePlace'];
}

const names = [
  'gaugeLength',
  'subdivision',
  'fineMarksExtension',
  'area',
  'diameters',
  'width',
  'thickness',
  'fractureDistance',
  'fracturePlace',
];

/** A from lengths over marks that divided the gauge length. */
function dividedElongation(from: string, path: string, lengths: SubdividedLengths, gaugeLength: number): number {
  requireOptions(from, lengths, ['intervals', 'between', 'xToY', 'beyondY'], path);
  return subdividedElongation(from, `${path}.`, gaugeLength, lengths);
}

/** The length that counts: fine marks, else subdivision, else the gauge marks. */
function lengthOf(from: string, path: string, after: AfterFracture, gaugeLength: number): Pick<BrokenPiece, 'length' | 'method'> {
  const { gaugeLength: final, subdivision, fineMarksExtension: fine } = after;
  const own = final === undefined ? undefined : requirePositive(from, `${path}.gaugeLength`, final);
  const extension = fine === undefined ? undefined : requireNonNegative(from, `${path}.fineMarksExtension`, fine);
  const elongation = subdivision === undefined ? undefined : dividedElongation(from, `${path}.subdivision`, subdivision, gaugeLength);
  if (extension !== undefined) return { length: gaugeLength + extension, method: 'fine-marks' };
  if (elongation !== undefined) return { length: gaugeLength * (1 + elongation), method: 'subdivision' };
  return own === undefined ? {} : { length: own, method: 'marks' };
}

/** @internal Checks what was measured on the broken piece, before any work. */
export function requireBrokenPiece(from: string, { afterFracture: after, gaugeLength }: TestPiece): BrokenPiece {
  if (after === undefined) return {};
  const path = 'testPiece.afterFracture';
  requireOptions(from, after, names, path);
  const { area, diameters, width, thickness, fractureDistance: distance, fracturePlace: place } = after;
  const read = diameters !== undefined || width !== undefined || thickness !== undefined;
  if (read && area !== undefined)
    throw new InputError(from, `${path}.area`, 'ambiguous', 'must not stand beside readings of the neck', area);
  return {
    ...lengthOf(from, path, after, gaugeLength),
    ...(area === undefined ? {} : { area: requirePositive(from, `${path}.area`, area) }),
    ...(read ? { area: neckArea(from, `${path}.`, { diameters, width, thickness }) } : {}),
    ...(distance === undefined ? {} : { distance: requireNonNegative(from, `${path}.fractureDistance`, distance) }),
    ...(place === undefined
      ? {}
      : { place: requireOneOf(from, `${path}.fracturePlace`, place, ['at-mark', 'in-fillet', 'in-grip'] as const) }),
  };
}
