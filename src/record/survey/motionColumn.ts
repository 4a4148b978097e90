import { soundLength, type TensionRecord } from '../../base/index.js';

/** @internal A column of motion. */
export type MotionColumn = 'extension' | 'strain' | 'travel';

/**
 * @internal Two questions, two orders. What the drive did: travel shows it from first to last, where an extensometer may be taken off, slip or stand
 * while the frame runs; pauses, jumps, slips and the shape of the whole are looked for in it.
 */
export const ofDrive = ['travel', 'extension', 'strain'] as const satisfies readonly MotionColumn[];
/** @internal What the piece did: an extensometer shows it, and the strain of a result is by it; travel holds frame and grips too. */
export const ofPiece = ['extension', 'strain', 'travel'] as const satisfies readonly MotionColumn[];

/** @internal Fewer readings are no motion: a channel that was logged but not connected, or died at once. */
export const LEAST_READINGS = 2;

/**
 * @internal The first column of motion of a checked record, in one of these orders, that holds enough readings; where none does, the first that
 * there is, and the last of the order where there is none.
 */
export function motionColumn(record: TensionRecord, order: typeof ofDrive | typeof ofPiece): MotionColumn {
  const sound = (column: MotionColumn): boolean => {
    const values = record[column];
    return values !== undefined && soundLength(values) >= LEAST_READINGS;
  };
  return order.find(sound) ?? order.find((column) => record[column]) ?? order[2];
}
