import type { UsualRange } from '../materials/index.js';
import { oilGive } from './oilEnergy.js';
import { cylinderArea, pressureOf, type TestFrame } from './TestFrame.js';

/** Bringing a force on by hand. */
export interface HandLoading {
  /** Time from first force to full force, from least to most [s]. */
  readonly time: UsualRange;
  /** Force rate, from least to most [N/s]. */
  readonly forceRate: UsualRange;
  /** Strokes or turns of the drive for the give of frame, oil and piece; absent where the drive is not known. */
  readonly driveNumber?: number | undefined;
}

/** @internal How a force comes on by hand within a time; `deflection` is what the piece itself gives [mm]. */
export function handLoading(frame: TestFrame, force: number, time: UsualRange, deflection = 0): HandLoading {
  const { drive, compliance = 0, oilVolume = 0, oilBulkModulus, hoseGrowth } = frame;
  const forceRate: UsualRange = [force / time[1], force / time[0]];
  if (drive === undefined) return { time, forceRate };
  const travel = compliance * force + deflection;
  if (drive.kind === 'screw') return { time, forceRate, driveNumber: travel / drive.travelPerTurn };
  // a pump without a cylinder was refused with the frame
  const rise = pressureOf(frame, force)! - pressureOf(frame, 0)!;
  const oil = cylinderArea(frame)! * travel + oilGive('handLoading', { volume: oilVolume, bulkModulus: oilBulkModulus, hoseGrowth }) * rise;
  return { time, forceRate, driveNumber: oil / drive.volumePerStroke };
}
