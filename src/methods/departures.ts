import type { RecordedCurve } from '../curve/index.js';
import type { Excursions, Pause } from '../record/index.js';
import type { TensionResult } from './TensionResult.js';

/** @internal A slip of the piece in the grips that the strain counts. */
export interface StrainSlip {
  /** The last sample before it. */
  readonly at: number;
  /** Strain that was not the piece's [mm/mm]. */
  readonly strain: number;
}

/** @internal A sudden fall of the force during yielding that may be a slip, with the way of the travel [mm] and what strain counts of it. */
export interface PossibleSlip {
  readonly range: readonly [number, number, number];
  readonly way: number;
  readonly strain: number;
}

/** @internal Where a record leaves its loading curve, as far as an evaluation must know. */
export interface Departures {
  /** Excursions that are not loading, each by the samples where it leaves, of its lowest force, and where it is back. */
  readonly excursions: readonly (readonly [number, number, number])[];
  readonly slips: readonly StrainSlip[];
  /** What may be slips, or the material: evaluated as it is recorded. */
  readonly leaps: readonly PossibleSlip[];
  /** First samples that count from a zero set under load. */
  readonly zeroMoves: readonly number[];
}

/** @internal A drive that went back and came again within a moment stood nowhere. */
export const isExcursion = ({ range: [first, last] }: Pause, excursions: Departures['excursions']): boolean =>
  excursions.some(([leaves, , back]) => 2 * leaves <= first + last && first + last <= 2 * back);

/** @internal None: a curve without a record. */
export const noDepartures: Departures = { excursions: [], slips: [], leaps: [], zeroMoves: [] };

/**
 * @internal Excursions of the drive and of slips are no loading. An extensometer does not see the jaws: the strain counts a slip only where it is
 * travel. A fall that the material made stays.
 */
export function departuresOf(
  found: Pick<Excursions, 'drops' | 'leaps' | 'zeroMoves'> | undefined,
  { basis, strainLength, extensometerEnd = 0 }: Pick<RecordedCurve, 'basis' | 'strainLength' | 'extensometerEnd'>,
): Departures {
  if (!found) return noDepartures;
  const away = found.drops.filter(({ kind }) => kind !== 'yield');
  const byTravel = (sample: number): boolean => basis === 'travel' || (basis === 'extensometer-then-travel' && sample >= extensometerEnd);
  return {
    excursions: away.map(({ range }) => range),
    slips: away.flatMap(({ kind, range: [at], way }) =>
      kind === 'slip' && way > 0 && byTravel(at) ? [{ at, strain: way / strainLength }] : [],
    ),
    leaps: found.leaps.map(({ range, way }) => ({ range, way, strain: byTravel(range[0]) ? way / strainLength : 0 })),
    zeroMoves: found.zeroMoves.map(({ at }) => at),
  };
}

/** @internal The same, read back from a result: its trail names what was left out, its findings the slips and the zeros. */
export function departuresFrom({ trail, findings, extensionBasis, strainLength }: TensionResult): Omit<Departures, 'leaps'> {
  const left = trail.find(({ code }) => code === 'excursions-not-evaluated')?.values['ranges'];
  const splice = trail.find(({ code }) => code === 'carried-on-by-travel')?.values['fromSample'];
  const from = extensionBasis === 'travel' ? 0 : typeof splice === 'number' ? splice : Infinity;
  return {
    excursions: Array.from(String(left ?? '').matchAll(/(\d+)-(\d+)/g), ([, first, last]) => {
      const [leaves, back] = [Number(first) - 1, Number(last) + 1];
      return [leaves, leaves, back] as const;
    }),
    slips: findings.flatMap(({ code, range, values: { way } }) =>
      code === 'grip-slip' && range && range[0] >= from && typeof way === 'number' && way > 0
        ? [{ at: range[0], strain: way / strainLength }]
        : [],
    ),
    zeroMoves: findings.flatMap(({ code, range }) => (code === 'force-zero-moved' && range ? [range[1]] : [])),
  };
}
