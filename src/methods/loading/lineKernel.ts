import type { Outcome, StressStrainCurve } from '../../base/index.js';
import {
  BROKEN_SHARE,
  endOfPlateau,
  fitModulusKernel,
  fractureKernel,
  proofStrengthKernel,
  stillRising,
  totalExtensionStrengthKernel,
  type ElasticLine,
  type ModulusReason,
  type WindowChoice,
} from '../../curve/index.js';
import { maximumIndex } from '../../numeric/index.js';
import { moveOrigin } from './moveCurve.js';
import type { TensionNumbers } from './TensionNumbers.js';

/** @internal What is asked of a curve that has an elastic line. */
export interface LineSettings {
  readonly offsets: readonly number[];
  readonly totalExtensions: readonly number[];
  readonly window: WindowChoice;
}

/** @internal Elastic line, strengths, maximum and fracture of a curve; strains from the shifted origin. */
export interface LineNumbers {
  readonly line: Outcome<ElasticLine, ModulusReason>;
  /** Origin of strain in the strain as recorded. */
  readonly shift: number;
  /** Sample of the highest stress. */
  readonly highest: number;
  /** Last sample after it that equals it within one step of the reading: an ideally plastic piece reaches its strengths there. */
  readonly plateauEnd: number;
  readonly proofs: TensionNumbers['proofs'];
  readonly totals: TensionNumbers['totals'];
  readonly fracture: TensionNumbers['fracture'];
}

/** @internal What compression and bending have in common, of a curve whose stress was read in such steps [MPa]: its origin is moved in place. */
export function lineKernel(curve: StressStrainCurve, settings: LineSettings, resolution: number): LineNumbers {
  const { strain, stress } = curve;
  const highest = maximumIndex(stress);
  const beyond = endOfPlateau(stress, highest, resolution);
  const line = fitModulusKernel(curve, settings.window, highest);
  // no shift is 0, never -0, which JSON does not know
  const shift = line.ok ? line.strainShift + 0 : 0;
  moveOrigin(strain, shift);
  const top = { peak: highest, resolution, end: stress.length };
  return {
    line,
    shift,
    highest,
    plateauEnd: beyond - 1,
    proofs: line.ok
      ? settings.offsets.map((offset) => proofStrengthKernel(curve, { slope: line.slope, shift: 0, offset }, { from: line.first, ...top }))
      : [],
    totals: settings.totalExtensions.map((total) => totalExtensionStrengthKernel(curve, total, 0, beyond)),
    fracture: fractureKernel(curve, highest, BROKEN_SHARE),
  };
}

/** @internal True where the force fell suddenly and the piece did not spring back with it, as it does when the drive lets go. */
export function brokeSuddenly({ line, fracture }: LineNumbers, { strain, stress }: StressStrainCurve): boolean {
  if (!fracture.ok || fracture.how !== 'sudden-fall') return false;
  const after = strain[Math.min(fracture.index + 1, strain.length - 1)]!;
  const elastic = line.ok ? (fracture.stress - stress[Math.min(fracture.index + 1, stress.length - 1)]!) / line.slope : 0;
  return after > fracture.strain - elastic / 4;
}

/** @internal True where the force still rises at the end of a record without a fracture: what was reached is not the maximum. */
export const endsRising = ({ fracture }: Pick<LineNumbers, 'fracture'>, { strain, stress }: StressStrainCurve): boolean =>
  !fracture.ok && stillRising(strain, stress, stress.length);
