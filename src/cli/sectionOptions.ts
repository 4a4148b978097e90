import { Option, type Command } from 'commander';
import { isInputError, type Section } from '../base/index.js';
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

/** Names of the flags. */
export const sectionNames = Object.keys(makers) as (keyof SectionFlags)[];

const flagOf = (name: keyof SectionFlags): string => (name === 'tubeStrip' ? '--tube-strip' : `--${name}`);

/** All of them, of which a piece has one. */
export const ONE_SECTION = `one of ${sectionNames.map(flagOf).join(', ')}`;

/** The section flags that were given. */
export const givenSections = (flags: SectionFlags): (keyof SectionFlags)[] => sectionNames.filter((name) => flags[name] !== undefined);

/** The one section that the flags name. */
export function sectionFromFlags(flags: SectionFlags): Section {
  const given = givenSections(flags);
  const [name] = given;
  if (name === undefined || given.length > 1)
    throw usage(`must be given: ${ONE_SECTION}, got ${given.map(flagOf).join(' and ') || 'none'}`);
  try {
    return makers[name](flags[name]!);
  } catch (reason) {
    if (!isInputError(reason)) throw reason;
    throw usage(reason.message.replace(/^\w+:/, `${flagOf(name)}:`).replace(/^(\S+ \w+)\[\d+\]/, '$1'));
  }
}

/** Adds the flags of the section, one of which must be given where it is mandatory. */
export const withSectionFlags = (command: Command, mandatory: boolean): Command =>
  [
    ['--round <d>', 'diameter [mm]; several readings as 8.01,8.00,7.99'],
    ['--rectangular <bxa>', 'width x thickness [mm], for example 12.5x3'],
    ['--square <a>', 'side [mm]'],
    ['--hexagon <f>', 'width across flats [mm]'],
    ['--tube <Dxa>', 'outer diameter x wall [mm]'],
    ['--tube-strip <bxDxa>', 'width x outer diameter x wall of a strip cut from a tube [mm]'],
    ['--mass <mxLxrho>', 'mass [g] x length [mm] x density [g/cm³]'],
    ['--area <S0>', 'area of the section [mm²]'],
  ].reduce((all, [flag, what]) => all.addOption(new Option(flag!, what).makeOptionMandatory(mandatory)), command.optionsGroup('Piece:'));
