import { PROOF_OFFSET } from '../base/index.js';
import { proofStrength, totalExtensionStrength } from '../curve/index.js';
import { breakOf, broken, maximumOf, proofAt, walk } from './walk.js';
import type { SlipRoute } from './WrongRoute.js';

const RM = ['Rm'] as const;
const RP = ['Rp0.2'] as const;

/** @internal Slips on the way to Rm and Rp0.2 that are no mere factor. */
export const strengthRoutes: readonly SlipRoute[] = [
  {
    key: 'final-area',
    symbols: RM,
    value: (test) => (maximumOf(walk(test)).stress * test.piece.section.area) / broken(test).area,
  },
  {
    key: 'force-at-fracture',
    symbols: RM,
    value: (test) => breakOf(walk(test)).stress,
  },
  {
    key: 'true-fracture-stress',
    symbols: RM,
    value: (test) => (breakOf(walk(test)).stress * test.piece.section.area) / broken(test).area,
  },
  {
    key: 'true-stress',
    symbols: RM,
    value: (test) => {
      const { stress, extension } = maximumOf(walk(test));
      return stress * (1 + extension);
    },
  },
  {
    key: 'force-for-stress',
    symbols: RM,
    value: (test) => maximumOf(walk(test)).stress * test.piece.section.area,
  },
  {
    key: 'proof-for-maximum',
    symbols: RM,
    value: (test) => proofAt(walk(test), PROOF_OFFSET),
  },
  {
    key: 'maximum-for-proof',
    symbols: RP,
    value: (test) => maximumOf(walk(test)).stress,
  },
  {
    key: 'handbook-modulus-on-travel',
    symbols: RP,
    value: (test) => {
      const { curve, line } = walk(test, { compliance: 0 });
      const found = proofStrength(curve, { modulus: test.handbookModulus, strainShift: line.strainShift, offset: PROOF_OFFSET });
      return found.ok ? found.stress : undefined;
    },
  },
  {
    key: 'origin-not-moved',
    symbols: RP,
    value: (test) => {
      const { curve, line } = walk(test);
      const found = proofStrength(curve, { modulus: line.slope, strainShift: 0, offset: PROOF_OFFSET });
      return found.ok ? found.stress : undefined;
    },
  },
  {
    key: 'total-for-plastic',
    symbols: RP,
    value: (test) => {
      const { curve, line } = walk(test);
      const found = totalExtensionStrength(curve, { totalExtension: 0.002, strainShift: line.strainShift });
      return found.ok ? found.stress : undefined;
    },
  },
  {
    key: 'offset-ten-times',
    symbols: RP,
    value: (test) => proofAt(walk(test), 0.02),
  },
  {
    key: 'offset-one-tenth',
    symbols: RP,
    value: (test) => proofAt(walk(test), 0.0002),
  },
];
