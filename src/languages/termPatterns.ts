/** @internal Words that come with the data and hold numbers or other terms, in English. */
export const termPatterns = [
  'limit of proportionality ({definition})',
  'cupping index, mean of {count}',
  'permanent set from {stress} MPa',
  'flexural modulus, chord from {from} to {to} % strain',
  'ISO 6892-1 method A, range {range}',
  'ASTM E8/E8M control {letter}',
  '{criterion}, within {gap} % of the highest',
  '{criterion}, from {start} of the 0.2 % offset stress on and over {span} of it',
  'highest slope less {z} standard errors',
  'Stop at the capacity of {capacity} N, or where the relief valve opens. Release the pressure or turn the drive back, and do not approach the piece before the force is gone.',
  'The piece has been strained and is no test piece any more: write down the force that it stood, and {next}.',
  'only {count} samples lie below the maximum',
  'the tangent does not fall to {share} of the slope',
  'the record does not pass a strain of {total}',
  'table of {count} points from {from} N to {to} N',
  '{coefficient} mm times the force in N to the power of {exponent}',
] as const;
