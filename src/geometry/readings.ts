import { InputError, requirePositive, type Section, type SectionShape } from '../base/index.js';

/** One reading, or repeated readings of one dimension in order along the piece. */
export type Readings = number | ArrayLike<number>;

/** What follows from the dimensions of a section. */
type Properties = Pick<Section, 'area' | 'secondMoment' | 'sectionModulus' | 'sectionModulusCorner'>;

/** Readings of one dimension as checked numbers. */
function readingsOf(from: string, name: string, value: unknown): number[] {
  if (Object(value) !== value) return [requirePositive(from, name, value)];
  const list = Array.from(value as ArrayLike<unknown>, (one, i) => requirePositive(from, `${name}[${i}]`, one));
  if (!list[0]) throw new InputError(from, name, 'empty', 'is empty', 0);
  return list;
}

/** That of `numeric` would make the smallest bundle, `round` alone, larger by a thirtieth. */
const mean = (list: readonly number[]): number => list.reduce((sum, one) => sum + one) / list.length;

/**
 * @internal A section from single or repeated readings.
 *
 * By ISO 6892-1 the area is the mean of the areas of the sections that were measured: readings are taken together place by place, and a
 * dimension that was read fewer times stands by its mean.
 */
export function section<Name extends string>(
  shape: SectionShape,
  from: string,
  given: Readonly<Record<Name, Readings>>,
  names: readonly Name[],
  properties: (dimensions: Readonly<Record<Name, number>>) => Properties,
): Section {
  for (const name in given)
    if (!names.includes(name)) throw new InputError(from, name, 'unknown-option', `is unknown (known: ${names.join(', ')})`, name);
  // what is no object has none of the names
  const lists = names.map((name) => readingsOf(from, name, (given as typeof given | undefined)?.[name]));
  const counts = lists.map((list) => list.length);
  const places = Math.max(...counts);
  const pick = (one: (list: readonly number[]) => number) =>
    Object.fromEntries(names.map((name, k) => [name, one(lists[k]!)])) as Record<Name, number>;
  const worst = (range: (list: readonly number[]) => number) =>
    lists.map((list) => range(list) / mean(list)).sort((a, b) => b * b - a * a)[0]!;
  const dimensions = pick(mean);
  return {
    shape,
    dimensions,
    ...properties(dimensions),
    area: mean(Array.from(Array(places), (_, place) => properties(pick((list) => (list[places - 1] ? list[place]! : mean(list)))).area)),
    readings: Math.min(...counts),
    ...(places > 1 && {
      spread: worst((list) => Math.max(...list) - Math.min(...list)),
      taper: worst((list) => list.at(-1)! - list[0]!),
    }),
  };
}
