import type { TensionColumns } from '../base/index.js';

/** @internal A column of motion. */
export type MotionColumn = 'extension' | 'strain' | 'travel';

/**
 * @internal Two questions, two orders. What the drive did: travel tells it from first to last, where an extensometer may be taken off, slip or stand
 * while the frame runs; pauses, jumps, slips and the shape of the whole are looked for in it.
 */
export const ofDrive = ['travel', 'extension', 'strain'] as const satisfies readonly MotionColumn[];
/** @internal What the piece did: an extensometer tells it, and the strain of a result is by it; travel holds frame and grips too. */
export const ofPiece = ['extension', 'strain', 'travel'] as const satisfies readonly MotionColumn[];

/** @internal The first column of motion, in one of these orders, that a record has; the last of the order where it has none. */
export const motionOf = (record: TensionColumns, order: typeof ofDrive | typeof ofPiece): MotionColumn =>
  order.find((column) => record[column]) ?? order[2];
