/** @internal Words that come with the data and hold numbers or other terms, in English. */
export const termPatterns = [
  'limit of proportionality ({definition})',
  'cupping index, mean of {count}',
  'permanent set from {stress} MPa',
  'flexural modulus, chord from {from} to {to} % strain',
  'highest force held for indentation {number}',
  'depth of blank {number} counted from contact',
  'tests differ: {difference}',
  'jump of {column} joined',
  'way in the grips taken out of {column}',
  'sign of {column} turned',
  'spikes of {column} replaced by the line between their neighbours',
  'ISO 6892-1 method A, range {range}',
  'ASTM E8/E8M control {letter}',
  'highest slope less {z} standard errors',
  'Stop at the capacity of {capacity} N, or where the relief valve opens. Release the pressure or turn the drive back, and do not approach the piece before the force is gone.',
  'The piece has been strained and is no test piece any more: write down the force that it stood, and {next}.',
] as const;
