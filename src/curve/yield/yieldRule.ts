/** @internal So much the stress falls, as a share of it, after an upper yield point; a later minimum or rise stands out by as much. */
export const STANDS_OUT = 0.005;

/** @internal The standard's rule for ReH: a fall of so much, as a share, and no higher stress over so much strain. */
export const yieldRule = { minimumFall: STANDS_OUT, minimumStrain: 0.0005 };

/** @internal A level of yielding, or hardening that stays below ReH, lasts over so much strain [mm/mm] at least: a wave in a neck is sooner over. */
export const LONGER_THAN_WAVE = 0.002;

/** @internal A first dip after ReH is a transient, and no part of the level, where it is over within so much strain [mm/mm]: as far as the short rule for ReL looks (ISO 6892-1, from memory). */
export const TRANSIENT_STRAIN = 0.0025;

/** @internal Below ReH a rise that does not stand out of noise and waves by this share of ReH is no hardening: the level goes on (common practice). */
export const LITTLE = 0.001;
