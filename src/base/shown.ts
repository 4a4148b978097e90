/** Four significant digits are enough for a sentence; the data keeps them all. */
const digits = (value: number | string): string =>
  typeof value === 'string' || Number.isInteger(value) ? String(value) : String(Number(value.toPrecision(4)));

/**
 * @internal An English sentence with its gaps filled; a gap without a value stays, as it shows itself, and an empty value (the unit of a bare
 * number) takes the space before it along.
 */
export function shown(sentence: string, values: Readonly<Record<string, number | string>>): string {
  let text = '';
  let done = 0;
  for (let from = sentence.indexOf('{'); from >= 0; from = sentence.indexOf('{', done)) {
    const to = sentence.indexOf('}', from) + 1;
    if (to === 0) break;
    const name = sentence.slice(from + 1, to - 1);
    const value = Object.hasOwn(values, name) ? digits(values[name]!) : sentence.slice(from, to);
    text += sentence.slice(done, value === '' && sentence[from - 1] === ' ' ? from - 1 : from) + value;
    done = to;
  }
  return text + sentence.slice(done);
}
