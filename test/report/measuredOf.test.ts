/** A value that a strain from crosshead travel went into never passes barely, whatever the test; one by force or by hand alone does. */
import { describe, expect, test } from 'vitest';
import {
  analyseBending,
  analyseCompression,
  analyseTension,
  analyseUnloading,
  decide,
  rectangular,
  required,
  round,
  type BendingColumns,
  type TestResult,
} from '../../src/index.js';
import { measuredOf, summarise } from '../../src/report/index.js';
import { simulateBending, simulateCompression, simulateTension } from '../../src/simulate/index.js';
import { COMPLIANCE, mildSteel, roundPiece } from '../support/records.js';

const frame = { compliance: COMPLIANCE };
const logger = { rate: 100, extensometer: true };
const pulled = simulateTension({ material: mildSteel, piece: roundPiece, frame, logger });
const pressedPiece = { section: round({ diameter: 10 }), height: 15 };
const pressed = simulateCompression({
  material: { modulus: 70_000, yieldStress: 220, hardening: { law: 'swift', prestrain: 0.02, exponent: 0.2 } },
  piece: pressedPiece,
  frame,
  logger,
});
const bentPiece = { section: rectangular({ width: 10, thickness: 5 }), setup: { points: 3, span: 100 } } as const;
const bent = simulateBending({ material: { modulus: 3000 }, piece: bentPiece, frame, until: 0.02, logger: { ...logger, tail: 1 } });
const unloaded = simulateTension({
  material: { modulus: 70_000, hardening: { law: 'hollomon', strengthCoefficient: 420, exponent: 0.12 } },
  piece: roundPiece,
  frame,
  hand: { speed: 0.02, unloadings: [{ stress: 150 }, { stress: 230, to: 0.1, bow: 1e-4 }] },
  logger,
});
/** Force and travel alone. */
const byTravel = ({ record: { force, travel, time } }: { readonly record: BendingColumns }) => ({ force, travel: travel!, time: time! });
const afterFracture = { gaugeLength: 52, area: 25 };
const removed = { frameCompliance: COMPLIANCE };

/** The verdict on each value of a result, whose limits it keeps by far. */
function verdictsOf(result: TestResult): Readonly<Record<string, string>> {
  return Object.fromEntries(
    [...measuredOf(result)].map(([symbol, measured]) => {
      const limits = { lower: measured.value - 0.01 * Math.abs(measured.value), gaugeLength: 40 };
      return [symbol, required(decide({ ...measured, standardUncertainty: 1e-6 * Math.abs(measured.value) }, limits)).verdict];
    }),
  );
}
const passing = (result: TestResult) =>
  Object.entries(verdictsOf(result))
    .filter(([, verdict]) => verdict === 'pass')
    .map(([symbol]) => symbol);

describe.each([
  [
    'tension',
    analyseTension(byTravel(pulled), { ...roundPiece, afterFracture }, removed),
    ['ReH', 'ReL', 'Fm', 'Rm', 'A', 'Z'],
    ['mE', 'E', 'Rp0.2', 'Ae', 'Ag', 'Agt', 'At', 'U', 'n', 'K', 'εu'],
  ],
  ['compression', analyseCompression(byTravel(pressed), pressedPiece, removed), ['Fm', 'h0/d0'], ['mEc', 'Ec', 'Rpc0.2', 'Rtc5', 'n', 'K']],
  [
    'bending',
    analyseBending(byTravel(bent), bentPiece, removed),
    ['Fm', 'σfM', 'σfB', 'L/h', 'ss/sb', 'Mpl/My'],
    ['mf', 'Eb', 'Ef', 'εfM', 'εfB'],
  ],
  ['unloading', analyseUnloading(byTravel(unloaded), roundPiece, removed), [], ['Rr0.2', 'er 1', 'w 1']],
] as const)('%s by travel', (_, result, bare, conditional) => {
  test('only values by force or by hand pass barely, and just the others have their stamp', () => {
    expect(passing(result)).toEqual(bare);
    expect(Object.keys(verdictsOf(result))).toEqual(expect.arrayContaining([...conditional]));
    const unstamped = summarise(result).filter(({ stamp }) => stamp === undefined);
    expect(unstamped.map(({ symbol }) => symbol)).toEqual(bare);
  });
});

test('where travel carries on what an extensometer began, values from the maximum on pass conditionally', () => {
  const half = pulled.record.extension!.length >> 1;
  const ended = { ...pulled.record, extension: Array.from(pulled.record.extension!, (x, i) => (i < half ? x : NaN)) };
  const result = analyseTension(ended, { ...roundPiece, afterFracture });
  expect(result.extensionBasis).toBe('extensometer-then-travel');
  const verdicts = verdictsOf(result);
  for (const symbol of ['mE', 'E', 'Ae', 'Rm', 'Rp0.2']) expect(verdicts).toHaveProperty([symbol], 'pass');
  for (const symbol of ['Ag', 'Agt', 'At', 'U', 'n', 'K', 'εu']) expect(verdicts).toHaveProperty([symbol], 'conditional-pass');
});

test('by an extensometer every value passes', () => {
  const { force, extension, time } = pulled.record;
  const verdicts = Object.values(verdictsOf(analyseTension({ force, extension: extension!, time: time! }, roundPiece)));
  expect(verdicts.length).toBeGreaterThan(10);
  expect(new Set(verdicts)).toEqual(new Set(['pass']));
});

test.each(['Ae', 'Ur', 'mf', 'Rr0.2', 'σfp0.2', 'A at will', undefined])(
  'a value %s with the basis travel passes conditionally',
  (symbol) => {
    const measured = { value: 241, standardUncertainty: 1, extensionBasis: 'travel', ...(symbol === undefined ? {} : { symbol }) };
    expect(required(decide(measured, { lower: 200 })).verdict).toBe('conditional-pass');
  },
);
