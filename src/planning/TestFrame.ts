import {
  InputError,
  requireBetween,
  requireNonNegative,
  requireObject,
  requireOneOf,
  requireOptions,
  requirePositive,
} from '../base/index.js';
import { forceToPressure, pistonArea, pressureToForce } from '../force/index.js';
import { requireMeantUnit } from './meantUnits.js';

/** What moves the crosshead: a pump with a handle, or a screw with a wheel. */
export type HandDrive =
  | {
      /** A pump. */
      readonly kind: 'pump';
      /** Oil that one stroke delivers [mm³]. */
      readonly volumePerStroke: number;
    }
  | {
      /** A screw. */
      readonly kind: 'screw';
      /** Travel of the crosshead in one turn [mm]. */
      readonly travelPerTurn: number;
    };

/** A frame as its papers, its verification and its owner know it. */
export interface TestFrame {
  /** Capacity [N]. */
  readonly capacity: number;
  /** Stroke [mm]. */
  readonly stroke?: number | undefined;
  /** Slack of the train before it takes force [mm]; default 0. */
  readonly slack?: number | undefined;
  /** Compliance of frame and grips [mm/N]. */
  readonly compliance?: number | undefined;
  /** Bore of the cylinder [mm]; without it nothing is said of oil. */
  readonly bore?: number | undefined;
  /** Rod [mm], where the rod side pulls. */
  readonly rod?: number | undefined;
  /** Efficiency of the cylinder, above 0, at most 1; default 1. */
  readonly efficiency?: number | undefined;
  /** Force that must be overcome besides [N]; default 0. */
  readonly tareForce?: number | undefined;
  /** Setting of the relief valve [MPa]. */
  readonly reliefPressure?: number | undefined;
  /** Range of the pressure transmitter [MPa]. */
  readonly transmitterRange?: number | undefined;
  /** Lowest force at which the force is verified [N]. */
  readonly verifiedFrom?: number | undefined;
  /** Greatest relative error of the force in the verified range [1]: 0.01 for class 1. */
  readonly forceError?: number | undefined;
  /** Step of the force reading [N]. */
  readonly forceStep?: number | undefined;
  /** Step of the travel reading [mm]. */
  readonly travelStep?: number | undefined;
  /** Oil under pressure [mm³]. */
  readonly oilVolume?: number | undefined;
  /** Bulk modulus of the oil [MPa]; default 1400. */
  readonly oilBulkModulus?: number | undefined;
  /** Growth of the hoses with pressure [mm³/MPa]; default 0. */
  readonly hoseGrowth?: number | undefined;
  /** What moves the crosshead. */
  readonly drive?: HandDrive | undefined;
}

const positive = ['stroke', 'reliefPressure', 'transmitterRange', 'forceStep', 'travelStep', 'oilBulkModulus'] as const;
const notNegative = ['slack', 'compliance', 'verifiedFrom', 'oilVolume', 'hoseGrowth'] as const;
const others = ['capacity', 'bore', 'rod', 'efficiency', 'tareForce', 'forceError', 'drive'] as const;

function requireDrive(from: string, drive: HandDrive): void {
  requireObject(from, 'frame.drive', drive);
  if (requireOneOf(from, 'frame.drive.kind', drive.kind, ['pump', 'screw']) === 'pump') {
    requireOptions(from, drive, ['kind', 'volumePerStroke'], 'frame.drive');
    requirePositive(from, 'frame.drive.volumePerStroke', (drive as { volumePerStroke: unknown }).volumePerStroke);
  } else {
    requireOptions(from, drive, ['kind', 'travelPerTurn'], 'frame.drive');
    requirePositive(from, 'frame.drive.travelPerTurn', (drive as { travelPerTurn: unknown }).travelPerTurn);
  }
}

/** @internal A frame whose numbers can be used. */
export function requireFrame(from: string, frame: TestFrame): TestFrame {
  requireOptions(from, frame, [...others, ...positive, ...notNegative], 'frame');
  requirePositive(from, 'frame.capacity', frame.capacity);
  for (const name of positive) if (frame[name] !== undefined) requirePositive(from, `frame.${name}`, frame[name]);
  for (const name of notNegative) if (frame[name] !== undefined) requireNonNegative(from, `frame.${name}`, frame[name]);
  for (const name of ['capacity', ...positive, ...notNegative] as const) requireMeantUnit(from, `frame.${name}`, name, frame[name]);
  if (frame.forceError !== undefined) requireBetween(from, 'frame.forceError', frame.forceError, 0, 0.2);
  if (frame.bore === undefined) {
    const stray = (['rod', 'efficiency', 'tareForce', 'reliefPressure', 'transmitterRange', 'oilVolume', 'hoseGrowth'] as const).find(
      (name) => frame[name] !== undefined,
    );
    if (stray !== undefined) throw new InputError(from, 'frame.bore', 'missing', `must be given with ${stray}`, undefined);
    if (frame.drive?.kind === 'pump') throw new InputError(from, 'frame.bore', 'missing', 'must be given with a pump', undefined);
  } else {
    pressureOf(frame, 0);
  }
  if (frame.drive !== undefined) requireDrive(from, frame.drive);
  return frame;
}

/** @internal Oil pressure at a force on the piece [MPa]; undefined where there is no cylinder. */
export function pressureOf({ bore, rod, efficiency, tareForce }: TestFrame, force: number): number | undefined {
  return bore === undefined ? undefined : forceToPressure(force, { bore, rod, efficiency, tareForce });
}

/** @internal Force at which the frame stops [N]: its capacity, or where the relief valve opens before. */
export function stopForce({ capacity, bore, rod, efficiency, tareForce, reliefPressure }: TestFrame): number {
  if (bore === undefined || reliefPressure === undefined) return capacity;
  return Math.max(0, Math.min(capacity, pressureToForce(reliefPressure, { bore, rod, efficiency, tareForce })));
}

/** @internal Area that the pressure acts on [mm²]; undefined where there is no cylinder. */
export const cylinderArea = ({ bore, rod }: TestFrame): number | undefined => (bore === undefined ? undefined : pistonArea({ bore, rod }));
