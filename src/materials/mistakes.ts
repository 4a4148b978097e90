import type { Subject } from '../base/index.js';
import { unitFactor } from '../units/index.js';
import type { Measurement } from './measuredProperties.js';

/** Measured over true stress, measured over true strain, how common it is (0 to 1, common practice), and what happened. */
type Row = readonly [stress: number, strain: number, weight: number, clause: string];

/** @internal A mistake that multiplies stresses or strains by numbers known beforehand. */
export interface Mistake {
  readonly key: MistakeKey;
  readonly about: Subject;
  readonly stress: number;
  readonly strain: number;
  readonly weight: number;
  readonly clause: string;
  readonly check: string;
}

const INCH = unitFactor('in', 'mm');
const POUND = unitFactor('lbf', 'N');
const KILOGRAM = unitFactor('kgf', 'N');
const BAR = unitFactor('bar', 'psi');
const MEGAPASCAL = unitFactor('MPa', 'psi');

const ofRounds = {
  'radius-for-diameter': [4, 1, 0.7, 'the radius was entered as the diameter'],
  'diameter-doubled': [1 / 4, 1, 0.5, 'twice the diameter was entered'],
} as const satisfies Record<string, Row>;
const ofSections = {
  'section-a-tenth': [100, 1, 0.7, 'a tenth of each dimension of the section was entered'],
  'section-tenfold': [1 / 100, 1, 0.7, 'ten times each dimension of the section was entered'],
  'section-in-inches': [INCH ** 2, 1, 0.5, 'the section was entered in inches'],
  'section-converted-twice': [INCH ** -2, 1, 0.3, 'the section in mm was taken as inches and converted'],
  'piece-in-inches': [INCH ** 2, INCH, 0.6, 'section and lengths were entered in inches'],
} as const satisfies Record<string, Row>;
const ofLengths = {
  'lengths-in-inches': [1, INCH, 0.6, 'the lengths of the piece were entered in inches'],
} as const satisfies Record<string, Row>;
const ofForces = {
  'force-in-kilonewtons': [1 / 1000, 1, 1, 'the force is in kN and was read as N'],
  'newtons-as-kilonewtons': [1000, 1, 1, 'the force is in N and was read as kN'],
  'force-in-kilograms-force': [1 / KILOGRAM, 1, 0.5, 'the force is in kgf and was read as N'],
  'newtons-as-kilograms-force': [KILOGRAM, 1, 0.3, 'the force is in N and was read as kgf'],
  'force-in-pounds-force': [1 / POUND, 1, 0.5, 'the force is in lbf and was read as N'],
  'newtons-as-pounds-force': [POUND, 1, 0.3, 'the force is in N and was read as lbf'],
} as const satisfies Record<string, Row>;
const ofPressures = {
  'bar-as-megapascals': [10, 1, 0.9, 'the pressure is in bar and was read as MPa'],
  'megapascals-as-bar': [1 / 10, 1, 0.9, 'the pressure is in MPa and was read as bar'],
  'psi-as-megapascals': [MEGAPASCAL, 1, 0.4, 'the pressure is in psi and was read as MPa'],
  'megapascals-as-psi': [1 / MEGAPASCAL, 1, 0.4, 'the pressure is in MPa and was read as psi'],
  'psi-as-bar': [BAR, 1, 0.4, 'the pressure is in psi and was read as bar'],
  'bar-as-psi': [1 / BAR, 1, 0.4, 'the pressure is in bar and was read as psi'],
} as const satisfies Record<string, Row>;
const ofStrains = {
  'strain-in-percent': [1, 100, 0.9, 'the strain is in % and was read as a ratio'],
  'ratio-as-percent': [1, 1 / 100, 0.7, 'the strain is a ratio and was read as %'],
  'strain-in-microstrain': [1, 1e6, 0.6, 'the strain is in µm/m and was read as a ratio'],
} as const satisfies Record<string, Row>;
const ofExtensions = {
  'extension-in-inches': [1, 1 / INCH, 0.6, 'the extension is in inches and was read as mm'],
  'extension-in-micrometres': [1, 1000, 0.6, 'the extension is in µm and was read as mm'],
} as const satisfies Record<string, Row>;

/** Mistakes whose factor is known beforehand. */
export type MistakeKey =
  | keyof typeof ofRounds
  | keyof typeof ofSections
  | keyof typeof ofLengths
  | keyof typeof ofForces
  | keyof typeof ofPressures
  | keyof typeof ofStrains
  | keyof typeof ofExtensions;

const dimensions = 'Measure the section again, and compare it with what was entered and in which unit.';

/** @internal The mistakes that this measurement leaves possible. */
export function mistakesOf({ shape, forceFrom, strainFrom }: Measurement): Mistake[] {
  const group = (rows: Partial<Record<MistakeKey, Row>>, about: Subject, check: string, possible = true): Mistake[] =>
    possible
      ? Object.entries(rows).map(([key, [stress, strain, weight, clause]]) => ({
          key: key as MistakeKey,
          about,
          stress,
          strain,
          weight,
          clause,
          check,
        }))
      : [];
  const measured = shape !== 'from-mass' && shape !== 'from-area';
  return [
    ...group(ofRounds, 'piece', dimensions, shape === undefined || shape === 'round'),
    ...group(ofSections, 'piece', dimensions, measured),
    ...group(ofLengths, 'piece', 'Compare the lengths that were entered with the piece, and their unit.'),
    ...group(ofForces, 'record', 'Read the unit of the force column, and compare one force with the display.', forceFrom !== 'pressure'),
    ...group(ofPressures, 'record', 'Read the unit of the pressure column, and compare one with the gauge.', forceFrom !== 'force'),
    ...group(ofStrains, 'record', 'Read the unit of the strain column in the file.', strainFrom !== 'travel'),
    ...group(ofExtensions, 'record', 'Read the unit of the extension or travel column, and compare its last value with the piece.'),
  ];
}
