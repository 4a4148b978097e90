import type { AfterFracture, UnbrokenPiece } from '../base/index.js';
import { integral } from './integral.js';
import type { MaterialCurve } from './materialCurve.js';
import type { SimulatedMaterial } from './SimulatedMaterial.js';
import type { TrueUnloading } from './unloadings.js';

/** A true proof strength. */
export interface TrueProofStrength {
  /** Plastic extension [mm/mm]. */
  readonly offset: number;
  /** Stress [MPa]. */
  readonly stress: number;
}

/** What is true of a simulated test, from the model itself. */
export interface SimulatedTruth {
  /** E [MPa]. */
  readonly modulus: number;
  /** ReH [MPa]. */
  readonly upperYieldStrength?: number | undefined;
  /** ReL [MPa]. */
  readonly lowerYieldStrength?: number | undefined;
  /** Ae [mm/mm]. */
  readonly yieldPointExtension?: number | undefined;
  /** Rp [MPa] for each offset asked for; absent where the piece breaks before. */
  readonly proofStrengths: readonly TrueProofStrength[];
  /** Rm [MPa]. */
  readonly tensileStrength: number;
  /** Fm [N]. */
  readonly maximumForce: number;
  /** Agt [mm/mm]. */
  readonly totalExtensionAtMaximumForce: number;
  /** Ag [mm/mm]. */
  readonly uniformExtension: number;
  /** At over the parallel length [mm/mm]. */
  readonly totalExtensionAtFracture: number;
  /** True strain where the neck begins [mm/mm]. */
  readonly necking: number;
  /** Energy per volume up to fracture [MPa]. */
  readonly toughness: number;
  /** A on the gauge length [mm/mm]. */
  readonly elongationAfterFracture: number;
  /** Z [1]. */
  readonly reductionOfArea: number;
  /** What a person would measure on the broken piece. */
  readonly afterFracture: Required<Pick<AfterFracture, 'gaugeLength' | 'area'>>;
  /** First and last sample of each pause of the hand. */
  readonly pauses: readonly (readonly [number, number])[];
  /** Unloadings of the hand, where there are any. */
  readonly unloadings?: readonly TrueUnloading[] | undefined;
}

/** @internal The truth of a material and a piece. */
export function truthOf(
  material: SimulatedMaterial,
  curve: MaterialCurve,
  piece: UnbrokenPiece,
  offsets: readonly number[],
  pauses: SimulatedTruth['pauses'],
): SimulatedTruth {
  const { modulus, stress, atMaximum, atFracture, start } = curve;
  // without hardening the piece breaks where it would yield
  const strength = Math.max(stress(atMaximum), atFracture === 0 ? start : 0);
  const parallel = piece.parallelLength ?? piece.gaugeLength;
  // plastic work in pieces that are smooth, then the elastic energy at fracture
  const marks = [0, curve.upper === undefined ? 0 : curve.drop, curve.plateau, atMaximum, atFracture];
  let work = stress(atFracture) ** 2 / (2 * modulus);
  // the elastic part of the strain is taken back where the stress falls, so the sum of both is exact
  for (let k = 0; k + 1 < marks.length; k += 1) {
    const [low, high] = [marks[k]!, marks[k + 1]!];
    if (high <= low) continue;
    // a power law is steep at its start: its variable is taken as a square
    work +=
      k === 2 && start === 0
        ? integral((t) => 4 * t ** 3 * stress(low + t ** 4), 0, (high - low) ** 0.25, 800)
        : integral(stress, low, high);
  }
  const elongation = atMaximum + ((atFracture - atMaximum) * parallel) / piece.gaugeLength;
  const reduction = material.reductionOfArea ?? 0.5;
  const total = (p: number): number => p + stress(p) / modulus;
  return {
    modulus,
    ...(curve.upper === undefined
      ? {}
      : {
          upperYieldStrength: curve.upper,
          lowerYieldStrength: curve.lower,
          yieldPointExtension: total(curve.plateau) - curve.upper / modulus,
        }),
    proofStrengths: offsets.flatMap((offset) => (offset <= atFracture ? [{ offset, stress: stress(offset) }] : [])),
    tensileStrength: strength,
    maximumForce: strength * piece.section.area,
    totalExtensionAtMaximumForce: atMaximum + strength / modulus,
    uniformExtension: atMaximum,
    totalExtensionAtFracture: atFracture === 0 ? start / modulus : total(atFracture),
    necking: Math.log1p(atMaximum + strength / modulus),
    toughness: atFracture === 0 ? start ** 2 / (2 * modulus) : work,
    elongationAfterFracture: elongation,
    reductionOfArea: reduction,
    afterFracture: { gaugeLength: piece.gaugeLength * (1 + elongation), area: piece.section.area * (1 - reduction) },
    pauses,
  };
}
