import { finding, type Finding, type Quantity } from '../../base/index.js';
import { stillRising } from '../../curve/index.js';

/** @internal Force or stress of a test up to its end, and what tells of that end. */
export interface TestEnd {
  /** What the force is held against: strain or motion; undefined, or shorter than the force: samples are counted. */
  readonly along: Float64Array | undefined;
  readonly force: Float64Array;
  /** One past the last sample of the test: at the end of the record, or where the drive let the force go. */
  readonly end: number;
  /** First and last sample of each pause. */
  readonly pauses: readonly (readonly [number, number])[];
  /** Whether the piece broke, by the force or as it was measured afterwards. */
  readonly broke: boolean;
}

/**
 * @internal True where the force of a piece that did not break still rises where its test ends, beyond its noise: then its highest force is one that it bears at least. A piece
 * that broke there had its maximum there.
 */
export function endsRising({ along, force, end, pauses, broke }: TestEnd): boolean {
  if (broke) return false;
  const resting = new Uint8Array(end);
  for (const [first, last] of pauses) resting.fill(1, first + 1, last + 1);
  // strain that ends before the force tells nothing of the end
  const x = along && along.length >= end ? along : Float64Array.from({ length: end }, (_, i) => i);
  return stillRising(x, force, end, resting);
}

/** @internal A quantity at the highest force: at least so large where the force still rose at the end. */
export const atHighest = (one: Quantity, rises: boolean): Quantity => (rises ? { ...one, atLeast: true } : one);

/** @internal What is said of a test in which the piece did not break; `field` holds its strength, `share` is its last force over the highest. */
export function endFindings(
  { rises, letGo, share }: { readonly rises: boolean; readonly letGo: boolean; readonly share: number },
  field: string,
): Finding[] {
  if (rises && !letGo) return [finding('maximum-at-end', {}, { field })];
  return [finding('stopped-before-fracture', { share: Math.min(100, 100 * share) }, { field: 'fracture' })];
}
