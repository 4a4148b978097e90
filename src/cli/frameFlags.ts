import type { Command } from 'commander';
import type { HandDrive, TestFrame } from '../planning/index.js';
import { numberOption, some } from './flags.js';
import { jsonFile } from './jsonFile.js';

/** What the command knows of the frame: a file, and flags that count before it. */
export interface FrameFlags {
  readonly frame?: string;
  readonly capacity?: number;
  readonly stroke?: number;
  readonly slack?: number;
  readonly frameCompliance?: number;
  readonly bore?: number;
  readonly rod?: number;
  readonly efficiency?: number;
  readonly tareForce?: number;
  readonly reliefPressure?: number;
  readonly transmitterRange?: number;
  readonly verifiedFrom?: number;
  readonly forceError?: number;
  readonly forceStep?: number;
  readonly travelStep?: number;
  readonly oilVolume?: number;
  readonly hoseGrowth?: number;
  readonly strokeVolume?: number;
  readonly turnTravel?: number;
}

function driveOf({ strokeVolume, turnTravel }: FrameFlags): HandDrive | undefined {
  if (strokeVolume !== undefined) return { kind: 'pump', volumePerStroke: strokeVolume };
  return turnTravel === undefined ? undefined : { kind: 'screw', travelPerTurn: turnTravel };
}

/** The frame that file and flags name. */
export async function frameOf(flags: FrameFlags): Promise<TestFrame> {
  const names = [
    'capacity',
    'stroke',
    'slack',
    'bore',
    'rod',
    'efficiency',
    'tareForce',
    'reliefPressure',
    'transmitterRange',
    'verifiedFrom',
    'forceError',
    'forceStep',
    'travelStep',
    'oilVolume',
    'hoseGrowth',
  ] as const;
  const frame = {
    ...(flags.frame === undefined ? {} : await jsonFile('--frame', flags.frame)),
    ...Object.assign({}, ...names.map((name) => some(name, flags[name]))),
    ...some('compliance', flags.frameCompliance),
    ...some('drive', driveOf(flags)),
  } as TestFrame;
  return frame;
}

/** Adds the flags of the frame. */
export const withFrameFlags = (command: Command): Command =>
  command
    .optionsGroup('Frame:')
    .option('--frame <file>', 'the frame as JSON, with the names of the type TestFrame; a flag overrides the file')
    .addOption(numberOption('--capacity <F>', 'capacity [N]; must be given here or in the file'))
    .addOption(numberOption('--stroke <x>', 'stroke [mm]'))
    .addOption(numberOption('--slack <x>', 'slack before the train takes force [mm]'))
    .addOption(numberOption('--frame-compliance <C>', 'compliance of frame and grips [mm/N]'))
    .addOption(numberOption('--bore <D>', 'bore of the cylinder [mm]'))
    .addOption(numberOption('--rod <d>', 'rod [mm], where the rod side pulls'))
    .addOption(numberOption('--efficiency <eta>', 'force over pressure times area'))
    .addOption(numberOption('--tare-force <F>', 'force to be overcome besides [N]'))
    .addOption(numberOption('--relief-pressure <p>', 'setting of the relief valve [MPa]'))
    .addOption(numberOption('--transmitter-range <p>', 'range of the transmitter [MPa]'))
    .addOption(numberOption('--verified-from <F>', 'lowest verified force [N]'))
    .addOption(numberOption('--force-error <q>', 'greatest relative error of the force, 0.01 for class 1'))
    .addOption(numberOption('--force-step <r>', 'step of the force reading [N]'))
    .addOption(numberOption('--travel-step <r>', 'step of the travel reading [mm]'))
    .addOption(numberOption('--oil-volume <V>', 'oil under pressure [mm³]'))
    .addOption(numberOption('--hose-growth <c>', 'growth of the hoses with pressure [mm³/MPa]'))
    .addOption(numberOption('--stroke-volume <V>', 'oil of one stroke of the pump [mm³]').conflicts('turnTravel'))
    .addOption(numberOption('--turn-travel <x>', 'travel of the crosshead in one turn of the wheel [mm]'));
