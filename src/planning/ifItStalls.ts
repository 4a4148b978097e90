import type { TestFrame } from './TestFrame.js';

/** @internal What to do where the frame reaches its limit first: the piece did not give way, or an indentation is not that of its scale. */
export function ifItStalls(frame: TestFrame, next: string, left: 'piece' | 'indentation' = 'piece'): string[] {
  return [
    `Stop at the capacity of ${frame.capacity} N, or where the relief valve opens. Release the pressure or turn the drive back, and do not approach the piece before the force is gone.`,
    'Never raise the relief valve, lengthen the handle or push together: the frame and the guard are made for the capacity, not for more.',
    left === 'piece'
      ? `The piece has been loaded and is no test piece any more: write down the force that it stood, and ${next}.`
      : `The test force was not reached, and the indentation does not count: ${next}.`,
  ];
}
