/** Four significant digits are enough for a sentence; the data keeps them all. */
const digits = (value: number | string): string =>
  typeof value === 'string' || Number.isInteger(value) ? String(value) : String(Number(value.toPrecision(4)));

/**
 * @internal An English sentence with its gaps filled; a gap without a value stays, as it shows itself, and an empty value (the unit of a bare
 * number) takes the space before it along.
 */
export const shown = (sentence: string, values: Readonly<Record<string, number | string>>): string =>
  sentence.replace(/( ?)\{(\w+)\}/g, (gap, space: string, name: string) =>
    !Object.hasOwn(values, name) ? gap : values[name] === '' ? '' : `${space}${digits(values[name]!)}`,
  );
