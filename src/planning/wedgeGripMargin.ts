import { requireBetween, requireOptions, requirePositive } from '../base/index.js';

/** Wedge grips and the head between them. */
export interface WedgeGrip {
  /** Pull on the piece [N]. */
  readonly force: number;
  /** Angle of the wedge's back against the axis [rad], above 0, below π/4. */
  readonly angle: number;
  /** Friction between face and head [1]; default 0.3 (serrated faces on a clean head, common practice). */
  readonly faceFriction?: number | undefined;
  /** Friction on the greased back of the wedge [1]; default 0.1. */
  readonly backFriction?: number | undefined;
  /** Area of one side of the head under its face [mm²]. */
  readonly area: number;
}

/** Whether the head holds. */
export interface WedgeGripMargin {
  /** Friction that there is over friction that is needed [1]; below 1 the head slips. */
  readonly margin: number;
  /** Pressure of a face on the head [MPa]. */
  readonly pressure: number;
}

/**
 * Margin of wedge grips against slipping, and their pressure on the head.
 *
 * $$ N = \frac{F}{2 \tan(\alpha + \varphi)}, \quad \varphi = \arctan \mu_b, \qquad m = \frac{\mu_f}{\tan(\alpha + \varphi)}, \qquad p = \frac{N}{A} $$
 *
 * @remarks
 * Self-tightening wedges press in proportion to the pull, so that the margin does not depend on the force: a dirty or dry back and worn
 * faces do. Balance of one half wedge; friction values are common practice, never certain.
 *
 * @param grip - `force` [N], `angle` [rad], `faceFriction`, `backFriction` [1], `area` [mm²].
 * @returns Margin [1] and pressure [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * wedgeGripMargin({ force: 20000, angle: Math.atan(0.1), backFriction: 0.1, faceFriction: 0.3, area: 400 }).margin; // => 1.485
 * ```
 *
 * @see Elementary mechanics of the wedge. Checked in `test/handbook/planning.test.ts`.
 */
export function wedgeGripMargin(grip: WedgeGrip): WedgeGripMargin {
  const from = 'wedgeGripMargin';
  requireOptions(from, grip, ['force', 'angle', 'faceFriction', 'backFriction', 'area'], 'grip');
  const angle = requireBetween(from, 'angle', grip.angle, Number.MIN_VALUE, Math.PI / 4);
  const face = requireBetween(from, 'faceFriction', grip.faceFriction ?? 0.3, Number.MIN_VALUE, 2);
  const back = requireBetween(from, 'backFriction', grip.backFriction ?? 0.1, 0, 0.9);
  const needed = Math.tan(angle + Math.atan(back));
  const press = requirePositive(from, 'force', grip.force) / (2 * needed);
  return { margin: face / needed, pressure: press / requirePositive(from, 'area', grip.area) };
}
