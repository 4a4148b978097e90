import { fQuantile } from '../numeric/index.js';
import { greatestDeviation } from './grubbsCriticalValue.js';

/** @internal Most that Mandel's h of one of p groups reaches by chance but for a share α, either way. */
export const criticalH = (groups: number, alpha: number): number => greatestDeviation(alpha / 2, groups);

/** @internal Most that Mandel's k of a group reaches by chance but for a share α: own degrees of freedom, and those of all groups. */
export function criticalK(own: number, all: number, alpha: number): number {
  return Math.sqrt(all / (own + (all - own) / fQuantile(1 - alpha, own, all - own)));
}

/**
 * @internal Most that a group's share of all squares (Cochran's C where all groups are as large) reaches by chance but for a share α: its
 * own degrees of freedom, those of all groups, number of groups.
 */
export function criticalShare(own: number, all: number, groups: number, alpha: number): number {
  return 1 / (1 + (all / own - 1) / fQuantile(1 - alpha / groups, own, all - own));
}
