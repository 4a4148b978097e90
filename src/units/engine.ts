import configureMeasurements, { type Unit as EngineUnit } from 'convert-units';
import { measures, otherSpellings, type Dimension, type Unit } from './measures.js';

/** One system for each measure: the engine then only multiplies by one exact factor and divides by another. */
const systems = Object.fromEntries(
  Object.entries(measures).map(([dimension, factors]) => [
    dimension,
    {
      systems: {
        SI: Object.fromEntries(
          Object.entries(factors).map(([unit, factor]): [string, EngineUnit] => [
            unit,
            { name: { singular: unit, plural: unit }, to_anchor: factor },
          ]),
        ),
      },
    },
  ]),
);

const engine = configureMeasurements<string, 'SI', string>(systems);

/** The engine's spelling of a unit. */
const own = (unit: string): string => (Object.hasOwn(otherSpellings, unit) ? otherSpellings[unit as keyof typeof otherSpellings] : unit);

/** @internal Dimension of a unit, or undefined where the unit is not known. */
export function dimensionOf(unit: unknown): Dimension | undefined {
  if (typeof unit !== 'string') return undefined;
  const plain = own(unit);
  for (const dimension of Object.keys(measures) as Dimension[]) if (Object.hasOwn(measures[dimension], plain)) return dimension;
  return undefined;
}

/** @internal What a value in `from` is multiplied by to be in `to`; both of one dimension. */
export function unitFactor(from: Unit, to: Unit): number {
  // the engine turns a signed zero and NaN into 0, so it only ever sees a 1
  return engine(1).from(own(from)).to(own(to));
}
