import { required, type StressStrainCurve } from '../base/index.js';
import { fitModulus, fracture, maximumStress, proofStrength, removeCompliance, type ModulusFit } from '../curve/index.js';
import { round } from '../geometry/index.js';
import type { ExerciseTest } from './Exercise.js';

/** What a student does otherwise than asked. */
export interface Detour {
  /** Compliance that is taken out of the travel [mm/N]; default the frame's. */
  readonly compliance?: number;
  /** Length that strain is counted over [mm]; default the parallel length. */
  readonly length?: number;
}

/** A curve with its line. */
export interface Walked {
  readonly curve: StressStrainCurve;
  readonly line: ModulusFit;
}

/** @internal Lc [mm]. */
export const parallelLengthOf = ({ piece }: ExerciseTest): number => piece.parallelLength ?? piece.gaugeLength;

/** @internal The way from record to line, by the public steps. */
export function walk(test: ExerciseTest, { compliance = test.frameCompliance, length = parallelLengthOf(test) }: Detour = {}): Walked {
  const { force, travel } = removeCompliance(test.record, compliance);
  const { area } = test.piece.section;
  const curve = { strain: travel!.map((x) => x / length), stress: force.map((F) => F / area) };
  return { curve, line: required(fitModulus(curve)) };
}

/** @internal Rp at a plastic extension, by the curve's own line. */
export function proofAt({ curve, line }: Walked, offset: number): number | undefined {
  const found = proofStrength(curve, { modulus: line.slope, strainShift: line.strainShift, offset });
  return found.ok ? found.stress : undefined;
}

/** @internal Rm, and the total extension there. */
export function maximumOf({ curve, line }: Walked): { readonly stress: number; readonly extension: number } {
  const { stress, strain } = maximumStress(curve);
  return { stress, extension: strain - line.strainShift };
}

/** @internal The last sample before the piece broke, and the total extension there. */
export function breakOf({ curve, line }: Walked): { readonly index: number; readonly stress: number; readonly extension: number } {
  const { index, stress, strain } = required(fracture(curve));
  return { index, stress, extension: strain - line.strainShift };
}

/** @internal What was read on the broken piece: Lu [mm], Su [mm²] and its diameter [mm]. */
export function broken({ piece }: ExerciseTest): { readonly length: number; readonly area: number; readonly diameter: number } {
  const { gaugeLength = piece.gaugeLength, diameters, area } = piece.afterFracture ?? {};
  const neck = diameters ? round({ diameter: diameters }).area : (area ?? piece.section.area);
  return { length: gaugeLength, area: neck, diameter: Math.sqrt((4 * neck) / Math.PI) };
}
