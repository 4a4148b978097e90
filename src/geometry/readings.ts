import { InputError, requirePositive, type Section, type SectionShape } from '../base/index.js';

/** One reading, or repeated readings of one dimension in order along the piece. */
export type Readings = number | ArrayLike<number>;

/** What follows from the dimensions of a section. */
type Properties = Pick<Section, 'area' | 'secondMoment' | 'sectionModulus' | 'sectionModulusCorner'>;

/** Readings of one dimension as checked numbers. */
function readingsOf(from: string, name: string, value: Readings): number[] {
  if (typeof value !== 'object') return [requirePositive(from, name, value)];
  const list = Array.from(value, (one, i) => requirePositive(from, `${name}[${i}]`, one));
  if (list.length < 1) throw new InputError(from, name, 'empty', 'must hold a reading', 0);
  return list;
}

const mean = (list: readonly number[]): number => list.reduce((sum, one) => sum + one) / list.length;
const larger = (a: number, b: number): number => (Math.abs(b) > Math.abs(a) ? b : a);

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
  const lists = names.map((name) => readingsOf(from, name, given[name]));
  const counts = lists.map((list) => list.length);
  const places = Math.max(...counts);
  const pick = (one: (list: readonly number[]) => number) =>
    Object.fromEntries(names.map((name, k) => [name, one(lists[k]!)])) as Record<Name, number>;
  const dimensions = pick(mean);
  const whole = { shape, dimensions, ...properties(dimensions), readings: Math.min(...counts) };
  if (places < 2) return whole;
  const at = (place: number) => pick((list) => (list.length < places ? mean(list) : list[place]!));
  return {
    ...whole,
    area: mean(Array.from({ length: places }, (_, place) => properties(at(place)).area)),
    spread: lists.map((list) => (Math.max(...list) - Math.min(...list)) / mean(list)).reduce(larger),
    taper: lists.map((list) => (list.at(-1)! - list[0]!) / mean(list)).reduce(larger),
  };
}
