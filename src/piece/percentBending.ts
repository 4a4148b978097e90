import { finding, InputError, requireColumn, requireOneOf, requireOptions, type Finding } from '../base/index.js';

/** Strains around a section, at equal angles. */
export interface BendingStrains {
  /** Two (opposite), three (120° apart) or four (90° apart) strains in order around the section [mm/mm]. */
  readonly strains: ArrayLike<number>;
  /** Section: the strain is greatest anywhere on a round one, at a corner of a rectangular one with gauges on its faces; default `round`. */
  readonly section?: 'round' | 'rectangular' | undefined;
}

/** Bending of a piece, and what it does to yield. */
export interface PercentBending {
  /** Mean strain [mm/mm]. */
  readonly axialStrain: number;
  /** Greatest strain by bending at the surface [mm/mm]; with two gauges, that in their plane. */
  readonly bendingStrain: number;
  /** Bending strain over mean strain [1]. */
  readonly bending: number;
  /** Angle of the greatest strain from the first gauge, towards the second [rad]. */
  readonly direction: number;
  /** Stress at which the surface yields, or leaves proportionality, over that of a straight pull [1]. */
  readonly yieldShare: number;
  /** Departure of four gauges from a plane over mean strain [1]. */
  readonly unevenness?: number | undefined;
  /** Doubts. */
  readonly findings: readonly Finding[];
}

const FROM = 'percentBending';
/** Common practice: what tension tests put up with. */
const LARGE = 0.1;
const UNEVEN = 0.02;

/**
 * Percent bending of a test piece from strain gauges around it, and what it does to ReH and the proportional limit.
 *
 * $$ e_k = a + b \cos(\theta_k - \varphi), \qquad PB = \frac{b}{|a|}, \qquad \frac{R_{apparent}}{R} = \frac{1}{1 + PB} $$
 *
 * @remarks
 * A plane through the strains. Two gauges show the bending in their own plane alone. On a rectangular section with a gauge on each face the two parts
 * add up at the corner. The surface yields first, at the mean stress $R/(1 + PB)$: the proportional limit falls by that, and ReH by up to that (less
 * where the yield spreads before it shows). Rp0.2, Rm and A hardly feel it. Bending in per cent falls as the force rises and straightens the piece:
 * measure it at the force that counts, and turn the piece by 180° to tell the frame from the piece.
 *
 * @param gauges - `strains` [mm/mm], two to four, with a mean other than 0; four for a rectangular section.
 * @returns Strains [mm/mm], bending [1], direction [rad] and the share of the yield stress that is left [1].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `too-few`, `unknown-option`; `out-of-range` for more than four strains, a mean of 0, or a
 * rectangular section without four gauges.
 *
 * @example
 * ```ts
 * percentBending({ strains: [0.0011, 0.0009] }).bending; // => 0.1000
 * ```
 *
 * @see ASTM E1012, verification of alignment (from memory). Checked in `test/handbook/verification.test.ts`.
 */
export function percentBending(gauges: BendingStrains): PercentBending {
  requireOptions(FROM, gauges, ['strains', 'section'], 'gauges');
  const e = requireColumn(FROM, 'strains', gauges.strains, { least: 2 });
  const n = e.length;
  if (n > 4) throw new InputError(FROM, 'strains', 'out-of-range', 'must be two, three or four', n);
  const section = requireOneOf(FROM, 'section', gauges.section ?? 'round', ['round', 'rectangular']);
  if (section === 'rectangular' && n < 4)
    throw new InputError(FROM, 'strains', 'too-few', 'must be four, one on each face of a rectangular section', n);
  const a = e.reduce((sum, one) => sum + one, 0) / n;
  if (a === 0) throw new InputError(FROM, 'strains', 'out-of-range', 'must have a mean other than 0', 0);
  let along = 0;
  let across = 0;
  e.forEach((one, k) => {
    const angle = (2 * Math.PI * k) / n;
    along += ((n === 2 ? 1 : 2) / n) * one * Math.cos(angle);
    across += n === 2 ? 0 : (2 / n) * one * Math.sin(angle);
  });
  const bendingStrain = section === 'rectangular' ? Math.abs(along) + Math.abs(across) : Math.hypot(along, across);
  const bending = bendingStrain / Math.abs(a);
  const unevenness = n === 4 ? Math.abs((e[0]! - e[1]! + e[2]! - e[3]!) / 4 / a) : undefined;
  const yieldShare = 1 / (1 + bending);
  const findings: Finding[] = [];
  if (bending > LARGE * (1 + 1e-9)) findings.push(finding('bending-large', { bending: 100 * bending, share: 100 * yieldShare }));
  if (unevenness !== undefined && unevenness > UNEVEN) findings.push(finding('gauges-disagree', { share: 100 * unevenness }));
  return {
    axialStrain: a,
    bendingStrain,
    bending,
    direction: Math.atan2(across, along),
    yieldShare,
    ...(unevenness === undefined ? {} : { unevenness }),
    findings,
  };
}
