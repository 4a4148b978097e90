import {
  PROOF_OFFSET,
  requireBetween,
  requireBoolean,
  requireExtensions,
  requireObject,
  requireOptions,
  requirePositive,
  requireSection,
} from '../../base/index.js';
import {
  requireFrameCompliance,
  requireModulusOptions,
  type Compliance,
  type ModulusOptions,
  type PieceLengths,
} from '../../curve/index.js';
import type { CompressionPiece } from './CompressionResult.js';
import type { TestInfo } from '../common/MethodResult.js';
import { requireSpikeRepair, type SpikeRepair } from '../common/spikeRepair.js';
import type { TensionThresholds } from '../evaluation/tensionOptions.js';
import { requireTest } from '../common/testInfo.js';
import { lineThresholds, requireThresholds, type LineThresholdName } from '../common/thresholds.js';

/** Thresholds of findings of a compression test: common practice where no standard is named. */
export interface CompressionThresholds extends Pick<TensionThresholds, LineThresholdName> {
  /** Least height over diameter; default 0.8. */
  readonly leastRatio?: number | undefined;
  /** Height over diameter above which buckling is watched; default 3. */
  readonly bucklingRatio?: number | undefined;
  /** Largest height over diameter; default 10. */
  readonly mostRatio?: number | undefined;
  /** Share of the tangent-modulus load that is a caution; default 0.5. */
  readonly bucklingShare?: number | undefined;
  /** Diameter in the middle over that at the ends that is a caution; default 1.05. */
  readonly bulge?: number | undefined;
  /** Strain from which barrelling should be measured; default 0.1. */
  readonly barrelStrain?: number | undefined;
  /** Difference of the loss of height by record and by measurement, as a share, that is a caution; default 0.1. */
  readonly heightDifference?: number | undefined;
}

/** Options of {@link analyseCompression}. */
export interface CompressionOptions {
  /** Plastic strains of the yield strengths [mm/mm], each 0.05 at most; default `[0.002]`. */
  readonly offsets?: ArrayLike<number> | undefined;
  /** Total strains at which the stress is given [mm/mm], each 1 at most; default `[0.05, 0.1]`. */
  readonly strains?: ArrayLike<number> | undefined;
  /** How the elastic window is chosen. */
  readonly modulus?: ModulusOptions | undefined;
  /** Compliance of frame and plates, in compression (a number [mm/N], a table or a power law), taken out of travel; default none. */
  readonly frameCompliance?: Compliance | undefined;
  /** Coefficient of friction at the ends μ, 0 to 0.577, taken off the flow stress by Siebel; default: not taken off. */
  readonly friction?: number | undefined;
  /** Repairs of the record before anything else; default spikes. */
  readonly repairs?: SpikeRepair | undefined;
  /** Who tested what. */
  readonly test?: TestInfo | undefined;
  /** Thresholds of findings. */
  readonly thresholds?: CompressionThresholds | undefined;
}

/** @internal Height over diameter: the least, the one up to which friction holds the ends, the most (ASTM E9, common practice). */
export const heightRatios = { leastRatio: 0.8, bucklingRatio: 3, mostRatio: 10 };

const ownThresholds = {
  ...heightRatios,
  bucklingShare: 0.5,
  bulge: 1.05,
  barrelStrain: 0.1,
  heightDifference: 0.1,
};

/** @internal Options after the checks, with defaults. */
export type CompressionSettings = ReturnType<typeof requireCompressionOptions>;

/** @internal Checks the options before any work, and fills in defaults. */
export function requireCompressionOptions(from: string, options: CompressionOptions) {
  requireOptions(from, options, ['offsets', 'strains', 'modulus', 'frameCompliance', 'friction', 'repairs', 'test', 'thresholds']);
  return {
    offsets: requireExtensions(from, 'options.offsets', options.offsets, [PROOF_OFFSET]),
    totalExtensions: requireExtensions(from, 'options.strains', options.strains, [0.05, 0.1], 1),
    window: requireModulusOptions(from, options.modulus ?? {}, 'options.modulus'),
    frameCompliance: requireFrameCompliance(from, 'options.frameCompliance', options.frameCompliance),
    friction: options.friction === undefined ? undefined : requireBetween(from, 'options.friction', options.friction, 0, 0.577),
    repairs: requireSpikeRepair(from, options.repairs),
    test: requireTest(from, options.test ?? {}),
    thresholds: requireThresholds(from, options.thresholds, { ...lineThresholds, ...ownThresholds }),
  };
}

/** @internal A checked piece: lengths as the curve needs them, and what buckling needs. */
export interface CompressionLengths extends PieceLengths {
  /** Diameter, or least width [mm]. */
  readonly width: number;
  /** Diameter of the circle of the same area [mm]. */
  readonly diameter: number;
  /** Least second moment of area [mm⁴], where the shape has one. */
  readonly secondMoment: number | undefined;
  readonly endFactor: number;
}

/** @internal Checks a piece before any work. */
export function requireCompressionPiece(from: string, piece: CompressionPiece): CompressionLengths {
  requireOptions(from, piece, ['section', 'height', 'extensometerLength', 'endFactor', 'afterTest'], 'piece');
  const section = requireSection(from, 'piece.section', piece.section);
  const height = requirePositive(from, 'piece.height', piece.height);
  const after = requireObject(from, 'piece.afterTest', piece.afterTest ?? {}) as NonNullable<CompressionPiece['afterTest']>;
  requireOptions(from, after, ['height', 'middleDiameter', 'endDiameter', 'broken'], 'piece.afterTest');
  for (const name of ['height', 'middleDiameter', 'endDiameter'] as const)
    if (after[name] !== undefined) requirePositive(from, `piece.afterTest.${name}`, after[name]);
  if (after.broken !== undefined) requireBoolean(from, 'piece.afterTest.broken', after.broken);
  const { area, dimensions } = section;
  const { diameter, width, thickness, side, acrossFlats, outerDiameter } = dimensions;
  const circle = Math.sqrt((4 * area) / Math.PI);
  const lateral = [diameter, width, thickness, side, acrossFlats, outerDiameter].filter((one) => one !== undefined);
  const flat = section.shape === 'rectangular' && width !== undefined && thickness !== undefined && width < thickness;
  return {
    area,
    gaugeLength: height,
    parallelLength: height,
    effectiveLength: height,
    extensometerLength:
      piece.extensometerLength === undefined ? height : requirePositive(from, 'piece.extensometerLength', piece.extensometerLength),
    width: section.shape === 'tube-strip' || lateral.length === 0 ? circle : Math.min(...lateral),
    diameter: circle,
    // the second moment of a section is for bending in the direction of its thickness; a piece buckles where it is thinnest
    secondMoment: section.secondMoment === undefined ? undefined : section.secondMoment * (flat ? (width / thickness) ** 2 : 1),
    endFactor: requireBetween(from, 'piece.endFactor', piece.endFactor ?? 0.5, 0.5, 2),
  };
}
