import { failure, type Outcome, type StressStrainCurve } from '../../base/index.js';
import {
  BROKEN_SHARE,
  endOfPlateau,
  fitModulusKernel,
  fractureKernel,
  proofStrengthKernel,
  totalExtensionStrengthKernel,
  type ElasticLine,
  type ModulusReason,
  type WindowChoice,
} from '../../curve/index.js';
import { maximumIndex } from '../../numeric/index.js';
import { endsRising } from '../common/endOfTest.js';
import { moveOrigin } from './moveCurve.js';
import type { Ranges } from './loadingRanges.js';
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
  /** One past the last sample of the test: where the drive let the force go, or at the end of the record. */
  readonly end: number;
  /** Whether the force still rose there, of a piece that did not break: its highest is no maximum. */
  readonly rises: boolean;
}

/** @internal What a record shows beside its curve: one step of the stress reading [MPa], the pauses, and the last sample before the drive let the force go for good. */
export interface LineEvidence {
  readonly resolution: number;
  readonly pauses: Ranges;
  readonly unloadedFrom: number | undefined;
}

/** Where the piece broke, or the drive let the force go: then what follows is no fracture. */
function endOf(curve: StressStrainCurve, highest: number, line: LineNumbers['line'], { pauses, unloadedFrom }: LineEvidence) {
  const { strain, stress } = curve;
  const fracture: LineNumbers['fracture'] =
    unloadedFrom === undefined
      ? fractureKernel(curve, highest, BROKEN_SHARE)
      : failure('unloaded', 'the drive let the force go, and the strain went back elastically with it');
  const broke = fracture.ok && fracture.how !== 'end-of-record' && !sprangBack({ line, fracture }, curve);
  const last = fracture.ok && !broke ? fracture.index : unloadedFrom;
  const end = (last ?? stress.length - 1) + 1;
  return { fracture, end, rises: endsRising({ along: strain, force: stress, end, pauses, broke }) };
}

/** @internal What compression and bending have in common: the origin of the curve is moved in place. */
export function lineKernel(curve: StressStrainCurve, settings: LineSettings, evidence: LineEvidence): LineNumbers {
  const { resolution } = evidence;
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
    ...endOf(curve, highest, line, evidence),
  };
}

/** True of a sudden fall of the force with which the piece sprang back, as it does when the drive lets go. */
function sprangBack({ line, fracture }: Pick<LineNumbers, 'line' | 'fracture'>, { strain, stress }: StressStrainCurve): boolean {
  if (!fracture.ok || fracture.how !== 'sudden-fall') return false;
  const after = strain[Math.min(fracture.index + 1, strain.length - 1)]!;
  const elastic = line.ok ? (fracture.stress - stress[Math.min(fracture.index + 1, stress.length - 1)]!) / line.slope : 0;
  return after <= fracture.strain - elastic / 4;
}

/** @internal True where the force fell suddenly and the piece did not spring back with it. */
export const brokeSuddenly = (numbers: Pick<LineNumbers, 'line' | 'fracture'>, curve: StressStrainCurve): boolean =>
  numbers.fracture.ok && numbers.fracture.how === 'sudden-fall' && !sprangBack(numbers, curve);
