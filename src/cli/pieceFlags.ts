import type { Command } from 'commander';
import type { TestPiece } from '../base/index.js';
import { numberOption, some } from './flags.js';
import { sectionFromFlags, withSectionFlags, type SectionFlags } from './sectionOptions.js';

/** Flags of a tension piece. */
export interface PieceFlags extends SectionFlags {
  readonly gaugeLength?: number;
  readonly parallelLength?: number;
  readonly extensometerLength?: number;
  readonly effectiveLength?: number;
  readonly finalGaugeLength?: number;
  readonly finalArea?: number;
  readonly finalDiameter?: number;
}

/** Those that are read on one broken piece. */
export const ofBrokenPiece = ['finalGaugeLength', 'finalArea', 'finalDiameter'] as const;

/** The piece that the flags describe. */
export function pieceOf(flags: PieceFlags): TestPiece {
  const area = flags.finalArea ?? (flags.finalDiameter === undefined ? undefined : (Math.PI * flags.finalDiameter ** 2) / 4);
  return {
    section: sectionFromFlags(flags),
    gaugeLength: flags.gaugeLength as number,
    ...some('parallelLength', flags.parallelLength),
    ...some('extensometerLength', flags.extensometerLength),
    ...some('effectiveLength', flags.effectiveLength),
    ...(area === undefined && flags.finalGaugeLength === undefined
      ? {}
      : { afterFracture: { ...some('gaugeLength', flags.finalGaugeLength), ...some('area', area) } }),
  };
}

/** Adds the flags of a tension piece. */
export const withPieceFlags = (command: Command, mandatory: boolean): Command =>
  withSectionFlags(command, mandatory)
    .addOption(
      numberOption(
        '--gauge-length <L0>',
        `original gauge length [mm]; must be given${mandatory ? '' : ' with a section'}`,
      ).makeOptionMandatory(mandatory),
    )
    .addOption(numberOption('--parallel-length <Lc>', 'parallel length [mm]'))
    .addOption(numberOption('--extensometer-length <Le>', 'base of the extensometer [mm]; default the gauge length'))
    .addOption(numberOption('--effective-length <Leff>', 'length that stretches elastically, fillets included [mm]'))
    .addOption(numberOption('--final-gauge-length <Lu>', 'gauge length after fracture [mm]'))
    .addOption(numberOption('--final-area <Su>', 'least area after fracture [mm²]'))
    .addOption(numberOption('--final-diameter <du>', 'least diameter after fracture of a round piece [mm]').conflicts('finalArea'));
