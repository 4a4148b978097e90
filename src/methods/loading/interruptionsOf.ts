import type { PieceLengths, RecordedCurve } from '../../curve/index.js';
import type { Drop, Excursions, Pause } from '../../record/index.js';
import { byTravel } from './departures.js';
import type { Interruption } from './Interruption.js';

const kinds = { reversal: 'unloading', backlash: 'backlash', slip: 'slip' } as const;

/** What a record shows of its loading. */
interface Evidence {
  /** Excursions; undefined where none are looked for. */
  readonly found: Excursions | undefined;
  readonly pauses: readonly Pause[];
  /** Last sample before the drive let the force go for good. */
  readonly unloadedFrom: number | undefined;
  /** Stress of all samples [MPa]. */
  readonly stress: Float64Array;
}

/** What makes stress of force, and strain of travel. */
type Lengths = Pick<PieceLengths, 'area' | 'parallelLength'>;

/** A fall that the material made is no interruption. */
function ofDrop({ kind, range: [leaves, , back], fall, way }: Drop, recorded: RecordedCurve, lengths: Lengths): Interruption[] {
  if (kind === 'yield') return [];
  const counted = kind === 'slip' && way > 0 && byTravel(recorded, leaves);
  const strain = counted ? { strain: way / lengths.parallelLength } : {};
  return [{ kind: kinds[kind], range: [leaves, back], fall: fall / lengths.area, ...strain }];
}

/** @internal Where loading was interrupted, in the order of the record. */
export function interruptionsOf(
  { found, pauses, unloadedFrom, stress }: Evidence,
  recorded: RecordedCurve,
  lengths: Lengths,
): Interruption[] {
  const { area } = lengths;
  const last = stress.length - 1;
  const all: Interruption[] = [
    ...(found?.drops ?? []).flatMap((drop) => ofDrop(drop, recorded, lengths)),
    ...pauses.map(({ range, fall, duration }): Interruption => ({ kind: 'pause', range, fall: fall / area, duration })),
    ...(found?.zeroMoves ?? []).map(({ at, fall }): Interruption => ({ kind: 'zero-set', range: [at - 1, at], fall: fall / area })),
  ];
  if (unloadedFrom !== undefined)
    all.push({ kind: 'final-unloading', range: [unloadedFrom, last], fall: stress[unloadedFrom]! - stress[last]! });
  return all.sort((a, b) => a.range[0] - b.range[0]);
}
