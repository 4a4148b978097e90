import {
  InputError,
  requireObject,
  requireOneOf,
  requireOptions,
  requireProbability,
  trailStep,
  type Quantity,
  type Success,
} from '../../base/index.js';
import { grubbsTest, summariseReplicates, toleranceLimit } from '../../statistics/index.js';
import { replicateDifferences } from './replicateDifferences.js';
import { replicateFields, type ReplicateField } from './replicateFields.js';
import {
  boundFindings,
  differenceFinding,
  fewFindings,
  oddFinding,
  oddTests,
  propertyFindings,
  repeatedFindings,
  type RuledProperty,
} from './replicateFindings.js';
import type { PoolableDifference, ReplicateDifference, ReplicateProperty, ReplicatesResult } from '../results/ReplicatesResult.js';
import { requireTestResult } from '../results/requireTestResult.js';
import { plainCopy } from '../common/plainCopy.js';
import type { TestResult } from '../results/TestResult.js';
import { version } from '../common/version.js';

/** Options of {@link analyseReplicates}. */
export interface ReplicatesOptions {
  /** Confidence of intervals and of tolerance limits, above 0 and below 1; default 0.95. */
  readonly confidence?: number | undefined;
  /** Share of all pieces that a tolerance limit is to hold, above 0 and below 1; default 0.9. */
  readonly content?: number | undefined;
  /** Level of Grubbs's test, above 0 and below 1; default 0.05. */
  readonly alpha?: number | undefined;
  /** Differences to pool across all the same, with a finding; default none. */
  readonly pool?: readonly PoolableDifference[] | undefined;
}

const FROM = 'analyseReplicates';
const poolable: readonly PoolableDifference[] = [
  'extensionBasis',
  'frame',
  'friction',
  'gaugeLength',
  'height',
  'scale',
  'section',
  'setup',
  'shape',
  'span',
  'thickness',
];

type Settings = Required<{ [Name in keyof ReplicatesOptions]: NonNullable<ReplicatesOptions[Name]> }>;

function requireSettings(options: ReplicatesOptions): Settings {
  requireOptions(FROM, options, ['confidence', 'content', 'alpha', 'pool']);
  const probability = (name: 'confidence' | 'content' | 'alpha', usual: number) =>
    requireProbability(FROM, `options.${name}`, options[name] ?? usual);
  const pool: unknown = options.pool ?? [];
  if (!Array.isArray(pool)) throw new InputError(FROM, 'options.pool', 'wrong-type', 'must be an array', pool);
  return {
    confidence: probability('confidence', 0.95),
    content: probability('content', 0.9),
    alpha: probability('alpha', 0.05),
    pool: pool.map((one, i) => requireOneOf(FROM, `options.pool[${i}]`, one, poolable)),
  };
}

/** Field of the piece, which every result of a method has. */
const pieceOf = (method: TestResult['method']): string =>
  method === 'tension' || method === 'unloading' ? 'testPiece' : method === 'cupping' ? 'sheet' : 'piece';

/** Results of one method, which is that of the first. */
function requireResults(results: readonly TestResult[]): TestResult['method'] {
  const given: unknown = results;
  if (!Array.isArray(given))
    throw new InputError(FROM, 'results', given === undefined ? 'missing' : 'wrong-type', 'must be an array', given);
  if (given.length < 2)
    throw new InputError(FROM, 'results', given.length === 0 ? 'empty' : 'too-few', 'must hold at least 2 tests', given.length);
  const all = given.map((one: TestResult, i) => requireTestResult(FROM, `results[${i}]`, one));
  const { method } = all[0]!;
  const piece = pieceOf(method);
  all.forEach((one, i) => {
    if (one.method !== method)
      throw new InputError(FROM, `results[${i}].method`, 'out-of-range', `must be ${method}, as that of the first`, one.method);
    requireObject(FROM, `results[${i}].${piece}`, (one as unknown as Readonly<Record<string, unknown>>)[piece]);
  });
  return method;
}

/** A quantity of one of the tests. */
interface OfTest {
  readonly test: number;
  readonly quantity: Quantity;
}

/** The quantities of a field over all tests. */
const overTests = (results: readonly TestResult[], { of }: ReplicateField): OfTest[] =>
  results.flatMap((result, test) => of(result).flatMap((quantity) => (quantity ? [{ test, quantity }] : [])));

/** By symbol: Rp0.2 beside Rp0.2. What is only at least so large has no part in a mean. */
function bySymbol(found: readonly OfTest[]): Map<string, OfTest[]> {
  const groups = new Map<string, OfTest[]>();
  for (const one of found) if (!one.quantity.atLeast) groups.set(one.quantity.symbol, [...(groups.get(one.quantity.symbol) ?? []), one]);
  return groups;
}

/** What an outcome holds, without saying once more that there is one. */
function bare<T extends object>(outcome: Success<T>): T {
  const own: T & { ok?: true } = { ...outcome };
  delete own.ok;
  return own;
}

function propertyOf(field: ReplicateField, found: readonly OfTest[], settings: Settings): ReplicateProperty {
  const { symbol, name, unit } = found[0]!.quantity;
  const values = found.map(({ quantity }) => quantity.value);
  const outlier = grubbsTest(values, { alpha: settings.alpha });
  const tolerance =
    field.strength === true && values.length > 2
      ? toleranceLimit(values, { content: settings.content, confidence: settings.confidence })
      : undefined;
  return {
    field: field.field,
    symbol,
    name: field.name ?? name,
    unit,
    tests: found.map(({ test }) => test),
    values,
    summary: summariseReplicates(values, { confidence: settings.confidence }),
    ...(outlier.ok ? { outlier: bare(outlier) } : {}),
    ...(tolerance?.ok === true ? { tolerance: bare(tolerance) } : {}),
    ...(field.usual === undefined ? {} : { usualVariation: field.usual }),
  };
}

/**
 * Several tests of one method together: per property mean, scatter, interval, outliers and tolerance limit, with every doubt.
 *
 * $$ \bar x \pm t\,\frac{s}{\sqrt n}, \qquad G = \frac{\max |x_i - \bar x|}{s}, \qquad \bar x - k s $$
 *
 * @remarks
 * Outliers are flagged and stay in: removal needs a physical cause, written down. A flagged value within one step of rounding (ISO 6892-1)
 * of the mean makes no finding; a test that lies out in several quantities makes one, which lists them. Tests that differ in gauge length (over $\sqrt{S_0}$,
 * by more than 10 %), height, span, section, set-up, scale of hardness, source of strain and the like ({@link PoolableDifference}) are not pooled in the properties
 * that depend on it, unless the options ask for it; different materials, operators or rates are pooled with a finding. Two tests give a range only. A value that some tests lack is
 * summarised over the others; one that is only at least so large, of a test that ended before its maximum force, has no part in it, and a finding says so. A record that comes twice is a finding, by its hash. A Brinell or cupping test counts once, by the mean of its indentations or blanks: several
 * in one piece say how the piece scatters, several pieces how the material does.
 *
 * @param results - Results of any `analyse` function for one test, at least 2, all of one method.
 * @param options - Confidence, level, what to pool across.
 * @returns The result, as plain data; `JSON.stringify` keeps all of it.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `too-few`, `not-finite`, `out-of-range` (also where the methods differ), `unknown-option`.
 *
 * @example
 * ```ts
 * const piece = { section: sectionFromArea({ area: 50 }), gaugeLength: 40 };
 * const results = [400, 404, 402].map((R) => analyseTension({ force: [0, 25 * R, 50 * R, 0], strain: [0, 0.001, 0.1, 0.1] }, piece));
 * const { properties } = analyseReplicates(results);
 * properties.find(({ symbol }) => symbol === 'Rm')?.summary.mean; // => 402
 *
 * const pressed = [3.95, 4, 4.05].map((d) => analyseBrinell({ ballDiameter: 10, force: 29420, indentations: [{ diameters: d }] }));
 * analyseReplicates(pressed).properties[0]?.summary.standardError; // => 3.4546
 * ```
 *
 * @see ISO 2602; ASTM E178; ISO 16269-6; usual variation: ASTM E8/E8M. Checked in `test/methods/analyseReplicates.test.ts`.
 */
export function analyseReplicates(results: readonly TestResult[], options: ReplicatesOptions = {}): ReplicatesResult {
  const method = requireResults(results);
  const settings = requireSettings(options);
  // the fields under a method are those of its results
  const fields = replicateFields[method] as readonly ReplicateField[];
  const names = results.map(({ test }, i) => test.identity ?? String(i + 1));
  const differences = replicateDifferences(results);
  const pooled = (difference: ReplicateDifference) => (settings.pool as readonly string[]).includes(difference);
  const barred = ({ field }: RuledProperty) => differences.some(({ difference }) => field.bars.includes(difference) && !pooled(difference));

  const everything = fields.map((field) => ({ field, found: overTests(results, field) }));
  const all = everything.flatMap(({ field, found: own }) =>
    [...bySymbol(own).values()].map((found): RuledProperty => ({ field, property: propertyOf(field, found, settings) })),
  );
  const kept = all.filter((one) => !barred(one));
  const properties = kept.map(({ property }) => property);
  const odd = oddTests(kept);
  const told = new Set([...odd.values()].flat());
  return {
    method: 'replicates',
    replicatesOf: method,
    tests: results.map(({ test }) => plainCopy(test)),
    properties,
    differences: differences.map(({ difference }) => difference),
    findings: [
      ...repeatedFindings(results, names),
      ...differences.flatMap((one) => differenceFinding(one, all, pooled(one.difference))),
      ...[...odd].map(([test, list]) => oddFinding(list, names[test]!)),
      ...boundFindings(
        everything.flatMap(({ found }) => found),
        names,
      ),
      ...fewFindings(properties),
      ...kept.flatMap((one) => propertyFindings(one, names, told.has(one.property))),
    ],
    trail: [
      trailStep('results-taken-together', { tests: results.length }),
      ...differences.map(({ difference, what, values }) =>
        trailStep(pooled(difference) ? 'tests-differ-pooled' : 'tests-differ', { difference, what, values }),
      ),
      trailStep('outliers-flagged', { alpha: settings.alpha }),
    ],
    provenance: {
      package: 'testpiece',
      version,
      options: plainCopy({ ...options }),
      hashes: results.map(({ provenance }) => provenance.hash),
    },
  };
}
