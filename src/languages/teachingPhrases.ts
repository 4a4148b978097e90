import { metalNames, questionNames } from '../teaching/index.js';

/** @internal What exercises and verdicts on answers say, in English. */
export const teachingPhrases = [
  'Invented tension test, recorded over crosshead travel. Metal: {material}. d0 = {diameter} mm, L0 = {gaugeLength} mm, Lc = {parallelLength} mm; after fracture Lu = {finalLength} mm, du = {finalDiameter} mm. Compliance of the frame: {compliance} mm/kN. Modulus by a handbook: E = {handbook} MPa.',
  '{symbol}: {name}, in MPa; right within {tolerance}.',
  '{symbol}: {name}, as a ratio; right within {tolerance}.',
  'Right.',
  'Not right. Just this number comes out so:',
  'Not right, and no known slip gives this number: it is {deviation} above the truth.',
  'Not right, and no known slip gives this number: it is {deviation} below the truth.',
  ...Object.values(questionNames),
  ...metalNames,
] as const;
