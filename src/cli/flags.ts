import { Option } from 'commander';
import { InputError } from '../base/index.js';

/** A number as it was typed. */
export const toNumber = (text: string): number => {
  const value = text.trim() === '' ? NaN : Number(text);
  if (!Number.isFinite(value)) throw new InputError('report', 'option', 'not-finite', 'must be a number with a decimal point', text);
  return value;
};
/** Strains as ratios or with a per cent sign, separated by commas. */
export const toStrains = (text: string): number[] =>
  text.split(',').map((one) => (one.trim().endsWith('%') ? toNumber(one.trim().slice(0, -1)) / 100 : toNumber(one)));
/** A flag that may be repeated. */
export const collected = (text: string, before: readonly string[]): string[] => [...before, text];

/** `force=kN` and the like as an object. */
export function pairs(flag: string, given: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    given.map((text) => {
      const at = text.indexOf('=');
      if (at < 1) throw new InputError('report', flag, 'wrong-type', 'must be of the form quantity=value, for example force=kN', text);
      return [text.slice(0, at), text.slice(at + 1)];
    }),
  );
}

/** A flag that is there, under another name. */
export const some = <Name extends string, Value>(name: Name, value: Value | undefined): Partial<Record<Name, Value>> =>
  (value === undefined ? {} : { [name]: value }) as Partial<Record<Name, Value>>;

/** A flag that takes a number. */
export const numberOption = (flags: string, description: string): Option => new Option(flags, description).argParser(toNumber);
/** A flag that takes strains. */
export const strainsOption = (flags: string, description: string): Option => new Option(flags, description).argParser(toStrains);
