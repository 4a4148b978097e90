import { Option, type Command } from 'commander';
import { lowerYieldRules, proportionalDefinitions, type LowerYieldRule, type ProportionalDefinition } from '../curve/index.js';
import type { MaterialFamilyKey } from '../materials/index.js';
import type { TensionOptions } from '../methods/index.js';
import { familyOption } from './familyFlag.js';
import { some, strainsOption } from './flags.js';
import { complianceOf, withComplianceFlags, type ComplianceFlags } from './complianceFlags.js';
import type { PieceFlags } from './pieceFlags.js';
import { withRepairFlags, type RepairFlags } from './repairFlags.js';
import { uncertaintyFromFlags, withUncertaintyFlags, type UncertaintyFlags } from './uncertaintyFlags.js';
import { usage } from './usage.js';
import { modulusOf, withWindowFlags, type WindowFlags } from './windowFlags.js';

/** Flags of the evaluation of a tension test. */
export interface TensionFlags extends ComplianceFlags, RepairFlags, UncertaintyFlags, WindowFlags {
  readonly offsets?: readonly number[];
  readonly totalExtensions?: readonly number[];
  readonly proportionalLimit?: ProportionalDefinition;
  readonly lowerYield?: LowerYieldRule;
  readonly family?: MaterialFamilyKey;
  readonly minimumElongation?: readonly number[];
}

/** Refuses a least elongation that would do nothing: it tells whether A is valid by the place of the fracture, and is no limit. */
function requirePlace({ minimumElongation, fractureDistance }: TensionFlags & Pick<PieceFlags, 'fractureDistance'>): void {
  if (minimumElongation !== undefined && fractureDistance === undefined)
    throw usage(
      '--minimum-elongation goes with --fracture-distance: it says whether A is valid where the piece broke near a mark; whether A reaches a limit says --limit A=20%-',
    );
}

/** The options that the flags name, but for who tested what. */
export async function tensionOptionsOf(flags: TensionFlags & Pick<PieceFlags, 'fractureDistance'>): Promise<TensionOptions> {
  requirePlace(flags);
  return {
    ...some('offsets', flags.offsets),
    ...some('totalExtensions', flags.totalExtensions),
    ...some('modulus', modulusOf(flags)),
    ...some('proportionalLimit', flags.proportionalLimit),
    ...some('lowerYield', flags.lowerYield),
    ...some('family', flags.family),
    ...some('minimumElongation', flags.minimumElongation?.[0]),
    ...some('frameCompliance', await complianceOf(flags)),
    ...some('repairs', flags.repair),
    ...some('uncertainty', await uncertaintyFromFlags(flags)),
  };
}

/** Adds the flags of the evaluation. */
export const withTensionFlags = (command: Command): Command =>
  withComplianceFlags(
    withUncertaintyFlags(
      withRepairFlags(
        withWindowFlags(
          command
            .optionsGroup('Evaluation:')
            .addOption(strainsOption('--offsets <list>', 'plastic extensions, for example 0.1%,0.2%'))
            .addOption(strainsOption('--total-extensions <list>', 'total extensions, for example 0.5%')),
        )
          .addOption(
            new Option('--proportional-limit <definition>', 'definition of the proportional limit; default offset').choices(
              proportionalDefinitions,
            ),
          )
          .addOption(
            new Option(
              '--lower-yield <rule>',
              'where ReL is looked for: over the whole of yielding, or within 0.25 % strain after ReH; default whole',
            ).choices(lowerYieldRules),
          )
          .addOption(familyOption('family of the metal, for its usual ranges'))
          .addOption(
            strainsOption(
              '--minimum-elongation <A>',
              'least elongation after fracture that is specified, for example 20%: whether A is valid with a fracture near a mark (--fracture-distance); a verdict on A is that of --limit A=20%-',
            ),
          ),
      ),
    ),
  );
