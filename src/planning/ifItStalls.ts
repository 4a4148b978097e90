import type { TestFrame } from './TestFrame.js';

/** @internal What to do where the piece does not give way. */
export function ifItStalls(frame: TestFrame, next: string): string[] {
  return [
    `Stop at the capacity of ${frame.capacity} N, or where the relief valve opens. Release the pressure or turn the drive back, and do not approach the piece before the force is gone.`,
    'Never raise the relief valve, lengthen the handle or push together: the frame and the guard are made for the capacity, not for more.',
    `The piece has been strained and is no test piece any more: write down the force that it stood, and ${next}.`,
  ];
}
