import { InvalidArgumentError, Option } from 'commander';
import { parseUnit, unitFactor } from '../units/index.js';

/** A number as it was typed. */
export const toNumber = (text: string): number => {
  const value = text.trim() === '' ? NaN : Number(text);
  if (!Number.isFinite(value)) throw new InvalidArgumentError('It must be a number with a decimal point.');
  return value;
};
/** A number above 0 as it was typed. */
export function toPositive(text: string): number {
  const value = toNumber(text);
  if (value <= 0) throw new InvalidArgumentError('It must be above 0.');
  return value;
}
/** A ratio as it was typed, also with a per cent sign; 0.7% is 0.007 to the last digit that was typed. */
export const toRatio = (text: string): number =>
  text.trim().endsWith('%') ? Number((toNumber(text.trim().slice(0, -1)) / 100).toPrecision(15)) : toNumber(text);
/** Strains as ratios or with a per cent sign, separated by commas; one between whole digits may have been meant as a decimal sign. */
export function toStrains(text: string): number[] {
  if (/(?:^|,)\d+,\d+%?(?:,|$)/.test(text))
    throw new InvalidArgumentError('A comma stands between two strains: write decimal points, and a per cent sign after each (0.1%,0.2%).');
  return text.split(',').map(toRatio);
}

/** Two strains. */
export function toTwoStrains(text: string): readonly [number, number] {
  const [first, second, ...more] = toStrains(text);
  if (first === undefined || second === undefined || more.length > 0)
    throw new InvalidArgumentError('It must be two strains with a comma between them, for example 0.05%,0.25%.');
  return [first, second];
}

/** `235`, `235-355`, or with per cent signs; a comma is refused, since it may have been meant as a decimal sign. */
export function toRange(text: string): readonly [number, number] {
  // a sign, also that of an exponent, is no hyphen between two numbers
  const ends = text.split(/(?<=[\d.%])-/);
  if (ends.length > 2 || text.includes(','))
    throw new InvalidArgumentError('It must be one number, or lowest-highest, with decimal points.');
  const [low, high = low] = ends.map(toRatio);
  return [low!, high!];
}

/** `force=kN` and the like, of a flag that may be repeated, as an object. */
export function withPair(text: string, before: Readonly<Record<string, string>> = {}): Record<string, string> {
  const at = text.indexOf('=');
  if (at < 1) throw new InvalidArgumentError('It must be of the form quantity=value, for example force=kN.');
  return { ...before, [text.slice(0, at)]: text.slice(at + 1) };
}

/** A flag that may be repeated, and that takes several values with commas between them. */
export const collected = (text: string, before: readonly string[] = []): string[] => [...before, ...text.split(',')];

/** A flag that is there, under another name. */
export const some = <Name extends string, Value>(name: Name, value: Value | undefined): Partial<Record<Name, Value>> =>
  (value === undefined ? {} : { [name]: value }) as Partial<Record<Name, Value>>;

/** What to say of a number with its unit, such as 25kN, where the description names the unit that is meant. */
function unitHint(text: string, description: string): string {
  const [, number = '', unit = ''] = /^\s*([\d.]+(?:e[+-]?\d+)?)\s*([^\d\s.,].*?)\s*$/i.exec(text) ?? [];
  const wanted = /\[([^\]]+)\]/.exec(description)?.[1];
  if (unit === '' || wanted === undefined) return '';
  const [own, other] = [parseUnit(wanted), parseUnit(unit)];
  const turned =
    own !== undefined && own.dimension === other?.dimension
      ? `: ${Number((Number(number) * unitFactor(other.unit, own.unit)).toPrecision(12))}`
      : '';
  return ` It is in ${wanted}, without the unit${turned}.`;
}

/** A flag that takes a number; one with a unit is told in the unit that the description names. */
export const numberOption = (flags: string, description: string): Option =>
  new Option(flags, description).argParser((text: string) => {
    try {
      return toNumber(text);
    } catch (reason) {
      throw new InvalidArgumentError(`${(reason as Error).message}${unitHint(text, description)}`);
    }
  });

/** A flag that takes a ratio, also with a per cent sign. */
export const ratioOption = (flags: string, description: string): Option => new Option(flags, description).argParser(toRatio);

const DAY_FIRST = /^\d{1,2}[./]\d{1,2}[./]\d{2,4}$/;

/** A day or a text; digits in another order than year-month-day may be read in two ways. */
export function toDate(text: string): string {
  if (DAY_FIRST.test(text.trim())) throw new InvalidArgumentError('It must be of the form 2026-03-31 (year-month-day).');
  return text;
}

/** A flag that takes one of some words, in capitals or not; `meant` are those that another word may mean. */
export const choiceOption = (
  flags: string,
  description: string,
  choices: readonly string[],
  meant: (text: string) => readonly string[] = () => [],
): Option => {
  const option = new Option(flags, description).choices(choices);
  return option.argParser((text: string) => {
    const own = choices.find((one) => one.toLowerCase() === text.trim().toLowerCase());
    if (own !== undefined) return own;
    const near = meant(text);
    const hint = near.length > 0 ? ` Did you mean ${near.join(' or ')}?` : '';
    throw new InvalidArgumentError(`Allowed choices are ${choices.join(', ')}.${hint}`);
  });
};
/** A flag that takes strains. */
export const strainsOption = (flags: string, description: string): Option => new Option(flags, description).argParser(toStrains);
/** A flag that takes a number or a range. */
export const rangeOption = (flags: string, description: string): Option => new Option(flags, description).argParser(toRange);
