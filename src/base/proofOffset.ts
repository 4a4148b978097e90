/** @internal Plastic extension of Rp0.2 [mm/mm]. */
export const PROOF_OFFSET = 0.002;
