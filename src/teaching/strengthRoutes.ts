import { PROOF_OFFSET } from '../base/index.js';
import { proofStrength, totalExtensionStrength } from '../curve/index.js';
import { breakOf, broken, maximumOf, proofAt, walk } from './walk.js';
import type { WrongRoute } from './WrongRoute.js';

const RM = ['Rm'] as const;
const RP = ['Rp0.2'] as const;

/** @internal Slips on the way to Rm and Rp0.2 that are no mere factor. */
export const strengthRoutes: readonly WrongRoute[] = [
  {
    key: 'final-area',
    symbols: RM,
    slip: 'The maximum force was divided by the area after fracture.',
    advice: 'Rm rests on the original area S0: the neck forms only after the maximum.',
    value: (test) => (maximumOf(walk(test)).stress * test.piece.section.area) / broken(test).area,
  },
  {
    key: 'force-at-fracture',
    symbols: RM,
    slip: 'The force at fracture was taken in place of the maximum force.',
    advice: 'Look for the highest force of the record; a ductile piece breaks below it.',
    value: (test) => breakOf(walk(test)).stress,
  },
  {
    key: 'true-fracture-stress',
    symbols: RM,
    slip: 'The force at fracture was divided by the area after fracture.',
    advice: 'That is the mean true stress at fracture. Rm is the maximum force over the original area.',
    value: (test) => (breakOf(walk(test)).stress * test.piece.section.area) / broken(test).area,
  },
  {
    key: 'true-stress',
    symbols: RM,
    slip: 'The true stress at maximum force was given.',
    advice: 'Rm is an engineering stress: do not multiply by 1 + e.',
    value: (test) => {
      const { stress, extension } = maximumOf(walk(test));
      return stress * (1 + extension);
    },
  },
  {
    key: 'force-for-stress',
    symbols: RM,
    slip: 'The maximum force in N was given.',
    advice: 'Divide the force by the original area.',
    value: (test) => maximumOf(walk(test)).stress * test.piece.section.area,
  },
  {
    key: 'proof-for-maximum',
    symbols: RM,
    slip: 'The proof strength was given in place of the tensile strength.',
    advice: 'Rm is the highest stress of the whole curve.',
    value: (test) => proofAt(walk(test), PROOF_OFFSET),
  },
  {
    key: 'maximum-for-proof',
    symbols: RP,
    slip: 'The tensile strength was given in place of the proof strength.',
    advice: 'Rp0.2 is where the line at 0.2 % offset meets the curve, near the knee.',
    value: (test) => maximumOf(walk(test)).stress,
  },
  {
    key: 'handbook-modulus-on-travel',
    symbols: RP,
    slip: 'The offset line was drawn with the modulus of a handbook on a curve of travel that still holds the frame.',
    advice: "Draw the line with the curve's own slope; then the frame drops out of the offset.",
    value: (test) => {
      const { curve, line } = walk(test, { compliance: 0 });
      const found = proofStrength(curve, { modulus: test.handbookModulus, strainShift: line.strainShift, offset: PROOF_OFFSET });
      return found.ok ? found.stress : undefined;
    },
  },
  {
    key: 'origin-not-moved',
    symbols: RP,
    slip: 'The offset was counted from the zero of the travel, with the slack in it.',
    advice: 'Carry the elastic line down to zero stress and count the offset from there.',
    value: (test) => {
      const { curve, line } = walk(test);
      const found = proofStrength(curve, { modulus: line.slope, strainShift: 0, offset: PROOF_OFFSET });
      return found.ok ? found.stress : undefined;
    },
  },
  {
    key: 'total-for-plastic',
    symbols: RP,
    slip: 'The stress at 0.2 % total extension was read.',
    advice: 'The 0.2 % are plastic: draw a line of the elastic slope through 0.2 % strain, not an upright one.',
    value: (test) => {
      const { curve, line } = walk(test);
      const found = totalExtensionStrength(curve, { totalExtension: 0.002, strainShift: line.strainShift });
      return found.ok ? found.stress : undefined;
    },
  },
  {
    key: 'offset-ten-times',
    symbols: RP,
    slip: 'The line was offset by 2 % in place of 0.2 %.',
    advice: '0.2 % is 0.002 as a ratio.',
    value: (test) => proofAt(walk(test), 0.02),
  },
  {
    key: 'offset-one-tenth',
    symbols: RP,
    slip: 'The line was offset by 0.02 % in place of 0.2 %.',
    advice: '0.2 % is 0.002 as a ratio.',
    value: (test) => proofAt(walk(test), 0.0002),
  },
];
