import type { Command } from 'commander';
import type { Section } from '../base/index.js';
import { hexagon, rectangular, round, sectionFromArea, sectionFromMass, square, tube, tubeStrip } from '../geometry/index.js';
import { readingsOf } from './readingsOf.js';
import { usage } from './usage.js';

/** What the command knows of the section; each as it was typed. */
export interface SectionFlags {
  readonly round?: string;
  readonly rectangular?: string;
  readonly square?: string;
  readonly hexagon?: string;
  readonly tube?: string;
  readonly tubeStrip?: string;
  readonly mass?: string;
  readonly area?: string;
}

/** Readings separated by commas, dimensions by x: `12.5,12.4x3`. */
function dimensions(flag: string, text: string, count: number): number[][] {
  const parts = text.split('x');
  if (parts.length !== count) throw usage(`${flag} must have ${count} dimension${count > 1 ? 's with x between them' : ''}, got ${text}`);
  return parts.map((part) => readingsOf(flag, part));
}

const makers: Readonly<Record<keyof SectionFlags, (text: string) => Section>> = {
  round: (text) => {
    const [diameter] = dimensions('--round', text, 1);
    return round({ diameter: diameter! });
  },
  rectangular: (text) => {
    const [width, thickness] = dimensions('--rectangular', text, 2);
    return rectangular({ width: width!, thickness: thickness! });
  },
  square: (text) => {
    const [side] = dimensions('--square', text, 1);
    return square({ side: side! });
  },
  hexagon: (text) => {
    const [acrossFlats] = dimensions('--hexagon', text, 1);
    return hexagon({ acrossFlats: acrossFlats! });
  },
  tube: (text) => {
    const [outerDiameter, wallThickness] = dimensions('--tube', text, 2);
    return tube({ outerDiameter: outerDiameter!, wallThickness: wallThickness! });
  },
  tubeStrip: (text) => {
    const [width, outerDiameter, wallThickness] = dimensions('--tube-strip', text, 3);
    return tubeStrip({ width: width!, outerDiameter: outerDiameter!, wallThickness: wallThickness! });
  },
  mass: (text) => {
    const [mass, length, density] = dimensions('--mass', text, 3);
    return sectionFromMass({ mass: mass!, length: length!, density: density! });
  },
  area: (text) => {
    const [area] = dimensions('--area', text, 1);
    if (area!.length > 1) throw usage(`--area must be one number in mm², with a decimal point, got ${text}`);
    return sectionFromArea({ area: area![0]! });
  },
};

/** The section flags that were given. */
export const givenSections = (flags: SectionFlags): (keyof SectionFlags)[] =>
  (Object.keys(makers) as (keyof SectionFlags)[]).filter((name) => flags[name] !== undefined);

/** The one section that the flags name. */
export function sectionOf(flags: SectionFlags): Section {
  const given = givenSections(flags);
  const [name] = given;
  if (name === undefined || given.length > 1)
    throw usage(
      `one section must be given (--round, --rectangular, --square, --hexagon, --tube, --tube-strip, --mass or --area), got ${given.join(' and ') || 'none'}`,
    );
  return makers[name](flags[name]!);
}

/** Adds the flags of the section. */
export const withSectionFlags = (command: Command): Command =>
  command
    .optionsGroup('Piece:')
    .option('--round <d>', 'diameter [mm]; several readings as 8.01,8.00,7.99')
    .option('--rectangular <bxa>', 'width x thickness [mm], for example 12.5x3')
    .option('--square <a>', 'side [mm]')
    .option('--hexagon <f>', 'width across flats [mm]')
    .option('--tube <Dxa>', 'outer diameter x wall [mm]')
    .option('--tube-strip <bxDxa>', 'width x outer diameter x wall of a strip cut from a tube [mm]')
    .option('--mass <mxLxrho>', 'mass [g] x length [mm] x density [g/cm³]')
    .option('--area <S0>', 'area of the section [mm²]');
