import { requireNonNegative, requireOptions, requirePositive } from '../../base/index.js';

/** What a modulus from corrected travel rests on. */
export interface CorrectedModulus {
  /** Modulus E [MPa]. */
  readonly modulus: number;
  /** Length that stretches elastically L_eff [mm]. */
  readonly effectiveLength: number;
  /** Area S_0 [mm²]. */
  readonly area: number;
  /** Compliance of the frame that was taken out C_f [mm/N]; default 0, an extensometer. */
  readonly compliance?: number | undefined;
}

/** Relative standard uncertainties of what goes in [1]; default 0 each. */
export interface ModulusDoubts {
  /** Of the area. */
  readonly area?: number | undefined;
  /** Of the effective length. */
  readonly effectiveLength?: number | undefined;
  /** Of the compliance of the frame. */
  readonly compliance?: number | undefined;
  /** Of the slope as recorded, frame and piece together: S_m(rel). */
  readonly slope?: number | undefined;
  /** Of the force. */
  readonly force?: number | undefined;
}

/** Budget of a modulus. */
export interface ModulusUncertainty {
  /** Standard uncertainty over modulus [1]. */
  readonly relativeStandardUncertainty: number;
  /** Standard uncertainty [MPa]. */
  readonly standardUncertainty: number;
  /** What each term alone makes of it [1]. */
  readonly contributions: Readonly<Record<keyof ModulusDoubts, number>>;
}

const names = ['area', 'effectiveLength', 'compliance', 'slope', 'force'] as const;

/** @internal What each relative doubt makes of E, where the frame stretches `ratio` times as much as the piece; 0 with an extensometer. */
export const modulusContributions = (ratio: number, doubts: ModulusDoubts): ModulusUncertainty['contributions'] => ({
  area: doubts.area ?? 0,
  effectiveLength: doubts.effectiveLength ?? 0,
  compliance: ratio * (doubts.compliance ?? 0),
  slope: (1 + ratio) * (doubts.slope ?? 0),
  force: (1 + ratio) * (doubts.force ?? 0),
});

/**
 * Uncertainty of a modulus from travel whose frame compliance was taken out, term by term.
 *
 * $$ \left( \frac{u_E}{E} \right)^2 = u_S^2 + u_L^2 + \left( \frac{C_f}{c} u_{C_f} \right)^2 + \left( \frac{c + C_f}{c} \right)^2 \left( S_{m(rel)}^2 + u_F^2 \right), \qquad c = \frac{L_{eff}}{E S_0} $$
 *
 * @remarks
 * First order; all u relative. Where the frame stretches several times as much as the piece, the term of the compliance rules, and the distribution of E is
 * skewed upwards: repeat by a Monte Carlo run where it decides. Without a frame it is the budget of an extensometer, its base taken as `effectiveLength`.
 *
 * @param modulus - `modulus` [MPa], `effectiveLength` [mm], `area` [mm²] above 0; `compliance` [mm/N] of 0 or more.
 * @param doubts - Relative standard uncertainties [1], 0 or more.
 * @returns Relative [1] and absolute [MPa] standard uncertainty, and the contributions.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const modulus = { modulus: 210000, effectiveLength: 48, area: 50.26548, compliance: 2e-5 };
 * modulusUncertainty(modulus, { compliance: 0.03 }).relativeStandardUncertainty; // => 0.1319
 * ```
 *
 * @see JCGM 100:2008, law of propagation. Checked in `test/handbook/compliance.test.ts`.
 */
export function modulusUncertainty(modulus: CorrectedModulus, doubts: ModulusDoubts): ModulusUncertainty {
  const from = 'modulusUncertainty';
  requireOptions(from, modulus, ['modulus', 'effectiveLength', 'area', 'compliance'], 'modulus');
  requireOptions(from, doubts, names, 'doubts');
  const E = requirePositive(from, 'modulus.modulus', modulus.modulus);
  const length = requirePositive(from, 'modulus.effectiveLength', modulus.effectiveLength);
  const piece = length / (E * requirePositive(from, 'modulus.area', modulus.area));
  const ratio = requireNonNegative(from, 'modulus.compliance', modulus.compliance ?? 0) / piece;
  for (const name of names) if (doubts[name] !== undefined) requireNonNegative(from, `doubts.${name}`, doubts[name]);
  const contributions = modulusContributions(ratio, doubts);
  const relativeStandardUncertainty = Math.hypot(...Object.values(contributions));
  return { relativeStandardUncertainty, standardUncertainty: E * relativeStandardUncertainty, contributions };
}
