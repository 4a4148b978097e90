import type { PieceLengths, RecordedCurve } from '../../curve/index.js';
import type { Drop, Excursions, Pause } from '../../record/index.js';
import type { Interruption } from './Interruption.js';
import type { Ranges } from './loadingRanges.js';

/** @internal A slip of the piece in the grips that the strain counts. */
export interface StrainSlip {
  /** The last sample before it. */
  readonly at: number;
  /** Strain that was not the piece's [mm/mm]. */
  readonly strain: number;
}

/** @internal A sudden fall of the force during yielding that may be a slip, with the way of the travel [mm] and what strain counts of it. */
export interface PossibleSlip {
  /** Samples where the force leaves, is lowest and is back. */
  readonly range: readonly [number, number, number];
  readonly way: number;
  readonly strain: number;
}

/** @internal Where a record leaves its loading curve, as an evaluation must know it. */
export interface Departures {
  /** Excursions that are not loading, each by the samples where it leaves and where it is back. */
  readonly excursions: Ranges;
  readonly pauses: Ranges;
  readonly slips: readonly StrainSlip[];
  /** First samples that count from a zero set under load. */
  readonly zeroMoves: readonly number[];
  /** Last sample before the drive let the force go, where the test was stopped and unloaded. */
  readonly unloadedFrom: number | undefined;
}

/** @internal True of a pause that is none: a drive that went back and came again within a moment stood nowhere. */
export const isTurnOfDrive = ({ range: [first, last] }: Pause, drops: readonly Drop[]): boolean =>
  drops.some(({ range: [leaves, , back] }) => 2 * leaves <= first + last && first + last <= 2 * back);

/** @internal True where the strain goes on from a sample by travel, as it does from the last reading of an extensometer, which does not see the jaws. */
export const byTravel = ({ basis, extensometerEnd = 0 }: Pick<RecordedCurve, 'basis' | 'extensometerEnd'>, sample: number): boolean =>
  basis === 'travel' || (basis === 'extensometer-then-travel' && sample >= extensometerEnd - 1);

/** @internal What may be slips, or the material: evaluated as it is recorded. */
export const possibleSlips = (
  found: Pick<Excursions, 'leaps'> | undefined,
  recorded: RecordedCurve,
  { parallelLength }: Pick<PieceLengths, 'parallelLength'>,
): PossibleSlip[] =>
  (found?.leaps ?? []).map(({ range, way }) => ({ range, way, strain: byTravel(recorded, range[0]) ? way / parallelLength : 0 }));

/** @internal What an evaluation takes of the interruptions, which stand in the result: excursions of the drive and of slips are no loading, and left out. */
export function departuresOf(interruptions: readonly Interruption[]): Departures {
  const rangesOf = (...kinds: readonly Interruption['kind'][]) =>
    interruptions.filter(({ kind }) => kinds.includes(kind)).map(({ range }) => range);
  return {
    excursions: rangesOf('unloading', 'backlash', 'slip'),
    pauses: rangesOf('pause'),
    slips: interruptions.flatMap(({ range: [at], strain }) => (strain === undefined ? [] : [{ at, strain }])),
    zeroMoves: rangesOf('zero-set').map(([, first]) => first),
    unloadedFrom: rangesOf('final-unloading')[0]?.[0],
  };
}
