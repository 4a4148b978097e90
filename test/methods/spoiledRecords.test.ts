import { describe, expect, test } from 'vitest';
import {
  analyseBending,
  analyseCompression,
  analyseCupping,
  analyseCurve,
  analyseShear,
  analyseTension,
  sectionFromArea,
  analyseUnloading,
  isInputError,
  rectangular,
  round,
  type TensionOptions,
} from '../../src/index.js';
import { summarise } from '../../src/report/index.js';
import { simulateBending, simulateCompression, simulateCupping, simulateShear, simulateTension } from '../../src/simulate/index.js';
import { seeded } from '../support/random.js';
import { roundPiece } from '../support/records.js';
import { notFinite } from '../support/walk.js';

type Columns = Record<string, Float64Array>;

/** Every column that is there, as a copy. */
const columnsOf = (record: object): Columns =>
  Object.fromEntries(
    Object.entries(record)
      .filter(([, column]) => column instanceof Float64Array)
      .map(([name, column]) => [name, (column as Float64Array).slice()]),
  );

/** One to three things that no logger should do, to some column. */
function spoiled(record: object, { uniform }: ReturnType<typeof seeded>): never {
  const columns = columnsOf(record);
  const names = Object.keys(columns);
  const one = <T>(list: readonly T[]): T => list[Math.floor(uniform() * list.length)]!;
  for (let k = Math.floor(3 * uniform()); k >= 0; k -= 1) {
    const name = one(names);
    const n = columns[name]!.length;
    const change = (made: (value: number, i: number) => number): void => {
      columns[name] = columns[name]!.map(made);
    };
    const all = (made: (column: Float64Array) => Float64Array): void => {
      for (const each of names) columns[each] = made(columns[each]!);
    };
    one([
      () => {
        const other = one(names);
        [columns[name], columns[other]] = [columns[other]!, columns[name]!];
      },
      () => {
        const factor = one([-1, 1e-3, 1e3, 1e6, 1e-9, 25.4, 1 / 25.4, 100, 1e12, 1e-200, 1e25, 1e150]);
        change((value) => value * factor);
      },
      () => {
        const offset = (uniform() - 0.5) * one([1, 100, 1e4, 1e8]);
        change((value) => value + offset);
      },
      () => {
        const constant = one([0, 1, -5, 1e5]);
        change(() => constant);
      },
      () => columns[name]!.reverse(),
      () => {
        change(() => 1e4 * (uniform() - 0.5));
      },
      () => {
        const [from, length] = [uniform() * n, (uniform() * n) / 2];
        change((value, i) => (i >= from && i < from + length ? 0 : value));
      },
      () => {
        const end = 1 + Math.floor(uniform() * n);
        all((column) => column.slice(0, end));
      },
      () => {
        const stride = 1 + Math.floor((uniform() * n) / 3);
        all((column) => column.filter((_, i) => i % stride === 0));
      },
      () => {
        change((value) => 50 * Math.round(value / 50));
      },
      () => {
        change(Math.abs);
      },
      () => {
        const [at, value] = [Math.floor(uniform() * n), one([1e9, -1e9, 0, 1e300])];
        change((before, i) => (i === at ? value : before));
      },
      () => {
        change((_, i) => Math.exp(i / 20));
      },
    ])();
  }
  return columns as never;
}

const beam = { section: rectangular({ width: 10, thickness: 5 }), setup: { points: 3 as const, span: 100 } };
const cylinder = { section: round({ diameter: 10 }), height: 15 };
const pulled = simulateTension({
  material: { modulus: 70_000, hardening: { law: 'hollomon', strengthCoefficient: 420, exponent: 0.12 } },
  piece: roundPiece,
  hand: { speed: 0.05 },
  logger: { rate: 10 },
}).record;
const bent = simulateBending({ material: { modulus: 200_000, yieldStress: 300 }, piece: beam, until: 0.1 }).record;
const pressed = simulateCompression({
  material: { modulus: 70_000, yieldStress: 200, hardening: { law: 'swift', prestrain: 0.01, exponent: 0.2 } },
  piece: cylinder,
  until: 0.3,
}).record;
const sheared = simulateShear({ strength: 300, diameter: 8, planes: 2 }).record;
const cupped = simulateCupping({ depth: 10.4, force: 9000 }).record;
const options: readonly TensionOptions[] = [{}, { frameCompliance: 2e-5 }, { uncertainty: { forceClass: 1 } }];

const methods = {
  analyseTension: (random: ReturnType<typeof seeded>) =>
    analyseTension(spoiled(pulled, random), roundPiece, options[Math.floor(3 * random.uniform())]),
  analyseUnloading: (random: ReturnType<typeof seeded>) => analyseUnloading(spoiled(pulled, random), roundPiece),
  analyseCurve: (random: ReturnType<typeof seeded>) => {
    const { travel, force } = spoiled(pulled, random) as Columns;
    return analyseCurve({ strain: travel!.map((x) => x / 48), stress: force!.map((F) => F / 50) });
  },
  analyseBending: (random: ReturnType<typeof seeded>) => analyseBending(spoiled(bent, random), beam),
  analyseCompression: (random: ReturnType<typeof seeded>) => analyseCompression(spoiled(pressed, random), cylinder),
  analyseShear: (random: ReturnType<typeof seeded>) => analyseShear(spoiled(sheared, random), { diameter: 8, planes: 2 }),
  analyseCupping: (random: ReturnType<typeof seeded>) => analyseCupping(spoiled(cupped, random), { thickness: 0.8 }),
};

test.each(Object.entries(methods))(
  '%s of 80 spoiled records: a result of numbers, whose rows can be read, or a refusal in its own name',
  (name, method) => {
    let results = 0;
    for (let number = 1; number <= 80; number += 1)
      try {
        const result = method(seeded(number));
        expect(notFinite(result), `record ${number}`).toEqual([]);
        if (result.method !== 'unloading') expect(summarise(result).length, `record ${number}`).toBeGreaterThan(0);
        results += 1;
      } catch (error) {
        if (!isInputError(error)) throw error;
        expect(error.message, `record ${number}`).toMatch(new RegExp(`^${name}: `));
      }
    expect(results).toBeGreaterThan(20);
  },
);

describe('what is scaled to the edge of the numbers', () => {
  const scaled = (column: ArrayLike<number>, by: number) => Array.from(column, (one) => one * by);
  const outcome = (call: () => object) => {
    try {
      return notFinite(call());
    } catch (error) {
      if (!isInputError(error)) throw error;
      return [];
    }
  };

  test.each([1e20, 1e30, 1e40, 1e60, 1e80, 1e99, 1e-20, 1e-40, 1e-60, 1e-80, 1e-99])('by %d: numbers, or a refusal', (by) => {
    const { force, time } = pulled;
    const motion = pulled.extension ?? pulled.travel!;
    const { setup, section } = beam;
    const calls = [
      () => analyseTension({ ...pulled, force: scaled(force, by) }, roundPiece),
      () => analyseTension({ force, time: time!, extension: scaled(motion, by) }, roundPiece),
      () => analyseTension(pulled, { ...roundPiece, gaugeLength: 40 * by, parallelLength: 40 * by, effectiveLength: 40 * by }),
      () => analyseTension(pulled, { ...roundPiece, section: sectionFromArea({ area: 50 * by }) }),
      () => analyseBending({ ...bent, force: scaled(bent.force, by) }, beam),
      () => analyseBending({ ...bent, deflection: scaled(bent.deflection ?? bent.travel!, by) }, beam),
      () => analyseBending(bent, { section, setup: { ...setup, span: setup.span * by } }),
    ];
    for (const call of calls) expect(outcome(call)).toEqual([]);
  });

  test('a beam whose stress would be beyond the numbers is refused by its name', () => {
    expect(() => analyseBending(bent, { ...beam, setup: { points: 3, span: 1e20 } })).toThrow(
      /^analyseBending: piece\.setup\.span must be nearer to the size of the section, got 100000000000000000000$/,
    );
  });
});

test("force and extension in each other's place give findings, not an error from within", () => {
  const { force, travel, time } = pulled;
  const { findings, necking, modulus } = analyseTension({ force: travel!, extension: force, time: time! }, roundPiece);
  expect(necking).toBeUndefined();
  expect(modulus).toBeUndefined();
  // their curve has no linear part, so there is no modulus to be implausible
  expect(findings.map(({ code }) => code)).toEqual(expect.arrayContaining(['no-linear-part', 'force-looks-like-kilonewton']));
});
