import type { ExerciseSymbol } from './Exercise.js';

/** @internal What an exercise asks for, in English, in the order of the test. */
export const questionNames = {
  mE: 'slope of the elastic line, the frame in it',
  E: 'modulus of elasticity, the frame taken out',
  'Rp0.2': 'proof strength, 0.2 % plastic extension',
  Rm: 'tensile strength',
  Agt: 'total extension at maximum force',
  A: 'elongation after fracture',
  Z: 'reduction of area',
} as const satisfies Readonly<Record<ExerciseSymbol, string>>;

/** @internal Kinds of metal that exercises are made of, in English. */
export const metalNames = [
  'cold-drawn steel',
  'quenched and tempered steel',
  'age-hardened aluminium',
  'titanium',
  'half-hard brass',
] as const;
