import { finding, InputError, requireOptions, requirePositive, type Finding, type Quantity, unitInWords } from '../../base/index.js';
import { comparedInputs, type InputDifference } from './comparedInputs.js';
import type { Provenance } from '../common/MethodResult.js';
import type { ComparisonOptions, PropertyDifference, ResultComparison } from './ResultComparison.js';
import { requireTestResult } from './requireTestResult.js';
import { resultQuantities } from './resultQuantities.js';
import { plainCopy } from '../common/plainCopy.js';
import type { TestResult } from './TestResult.js';

const FROM = 'compareResults';
const LIMIT = 2;
/** Relative difference up to which two numbers are the same: the last digits of double precision differ from machine to machine. */
const SAME = 1e-12;

/** Of one record the errors are shared, so the larger doubt counts; of two they add in quadrature. */
function doubtOf(first: Quantity, second: Quantity, sameRecord: boolean): number | undefined {
  const [a, b] = [first.standardUncertainty, second.standardUncertainty];
  if (sameRecord) return a === undefined && b === undefined ? undefined : Math.max(a ?? 0, b ?? 0);
  return a === undefined || b === undefined ? undefined : Math.hypot(a, b);
}

function compared(field: string, first: Quantity | undefined, second: Quantity | undefined, sameRecord: boolean): PropertyDifference {
  const { symbol, name, unit } = (first ?? second)!;
  const one = { field, symbol, name, unit };
  if (!first || !second) return first ? { ...one, first: first.value } : { ...one, second: second!.value };
  const both = {
    ...one,
    first: first.value,
    second: second.value,
    ...(first.atLeast ? { firstAtLeast: true as const } : {}),
    ...(second.atLeast ? { secondAtLeast: true as const } : {}),
  };
  // of one record it is what was reached there, which is known
  if (!sameRecord && (first.atLeast || second.atLeast)) return both;
  const difference = second.value - first.value;
  const doubt = doubtOf(first, second, sameRecord);
  return {
    ...both,
    difference,
    ...(first.value === 0 ? {} : { relativeDifference: difference / Math.abs(first.value) }),
    ...(doubt === undefined ? {} : { standardUncertainty: doubt }),
    ...(doubt === undefined || doubt === 0 ? {} : { inUncertainties: difference / doubt }),
  };
}

/** What is not the same, a finding each for record, piece, options and version. */
function inputFindings(differences: readonly InputDifference[], first: Provenance, second: Provenance): Finding[] {
  const namesOf = (of: InputDifference['of']) =>
    differences
      .filter((one) => one.of === of)
      .map(({ name }) => name)
      .join(', ');
  const [piece, options] = [namesOf('piece'), namesOf('options')];
  return [
    ...(namesOf('record') === '' ? [] : [finding('compared-record-differs', { first: first.hash, second: second.hash })]),
    ...(piece === '' ? [] : [finding('compared-piece-differs', { names: piece })]),
    ...(options === '' ? [] : [finding('compared-options-differ', { names: options })]),
    ...(namesOf('version') === '' ? [] : [finding('compared-version-differs', { first: first.version, second: second.version })]),
  ];
}

/** Properties without a difference, since a test ended before its maximum: a finding for each side. */
function boundFindings(properties: readonly PropertyDifference[]): Finding[] {
  const numbersOf = ({ firstAtLeast, secondAtLeast }: PropertyDifference): string =>
    [...(firstAtLeast ? [1] : []), ...(secondAtLeast ? [2] : [])].join(', ');
  const bounds = properties.filter((one) => one.difference === undefined && numbersOf(one) !== '');
  return [...new Set(bounds.map(numbersOf))].map((numbers) => {
    const symbols = bounds.filter((one) => numbersOf(one) === numbers).map(({ symbol }) => symbol);
    return finding('compared-at-least', { symbols: symbols.join(', '), numbers });
  });
}

/**
 * Two results property by property: difference, in standard uncertainties too, and whether record, piece, options or version differ.
 *
 * $$ d = x_2 - x_1, \qquad \zeta = \frac{d}{\sqrt{u_1^2 + u_2^2}} \text{ (two records)}, \qquad \zeta = \frac{d}{\max(u_1, u_2)} \text{ (one record)} $$
 *
 * @remarks
 * Two tests: their uncertainties add in quadrature, as if they were independent; errors of one frame that both share (scale of the force, compliance)
 * cancel in the difference, which is then more certain than stated. One record evaluated twice, by other options or another version: its errors
 * are the same in both, so the larger uncertainty alone is the measure. Where record, piece and options are the same, any value that
 * moved is a finding, a fault within one version. Where one of two tests ended before its maximum force, what is only at least so large has no difference, and a finding says so. The identity of the test is no difference. Quantities of a list are paired by symbol, indentations, blanks and loops by place.
 *
 * @param first - A result of any `analyse` function for one test.
 * @param second - Another of the same method.
 * @param options - Standard uncertainties that are a caution.
 * @returns Properties, differences of the inputs, findings.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` where the methods differ.
 *
 * @example
 * ```ts
 * const piece = { section: sectionFromArea({ area: 50 }), gaugeLength: 40 };
 * const options = { uncertainty: { force: 0.005 } };
 * const made = (R: number) => analyseTension({ force: [0, 25 * R, 50 * R, 0], strain: [0, 0.001, 0.1, 0.1] }, piece, options);
 * const { properties } = compareResults(made(400), made(404));
 * const strength = properties.find(({ symbol }) => symbol === 'Rm');
 * strength?.difference; // => 4
 * strength?.inUncertainties; // => 1.4
 * ```
 *
 * @see ISO 13528, zeta score; JCGM 100 (GUM), uncertainty of a difference. Checked in `test/methods/compareResults.test.ts`.
 */
export function compareResults(first: TestResult, second: TestResult, options: ComparisonOptions = {}): ResultComparison {
  requireTestResult(FROM, 'first', first);
  requireTestResult(FROM, 'second', second);
  if (first.method !== second.method)
    throw new InputError(FROM, 'second.method', 'out-of-range', `must be ${first.method}, as that of the first`, second.method);
  requireOptions(FROM, options, ['limit']);
  const limit = requirePositive(FROM, 'options.limit', options.limit ?? LIMIT);

  const differences = comparedInputs(first, second);
  const differs = (of: InputDifference['of']) => differences.some((one) => one.of === of);
  const keyed = (result: TestResult) =>
    new Map(resultQuantities(result).map(({ field, quantity }) => [`${field} ${quantity.symbol}`, { field, quantity }]));
  const [ours, theirs] = [keyed(first), keyed(second)];
  const properties = [...new Map([...ours, ...theirs])].map(([key, { field }]) =>
    compared(field, ours.get(key)?.quantity, theirs.get(key)?.quantity, !differs('record')),
  );

  const sameInput = differences.every(({ of }) => of === 'version');
  const versions = { firstVersion: first.provenance.version, secondVersion: second.provenance.version };
  const propertyFindings = ({
    field,
    symbol,
    unit,
    first: a,
    second: b,
    difference = 0,
    inUncertainties = 0,
  }: PropertyDifference): Finding[] => {
    if (a === undefined || b === undefined) return [finding('compared-one-lacks', { symbol, number: a === undefined ? 2 : 1 }, { field })];
    if (sameInput && Math.abs(difference) > SAME * Math.max(Math.abs(a), Math.abs(b)))
      return [
        finding(
          'compared-value-moved',
          { symbol, difference, unit: unitInWords(unit), first: a, ...versions },
          { field, severity: differs('version') ? 'caution' : 'fault' },
        ),
      ];
    const times = Math.abs(inUncertainties);
    return times > limit
      ? [finding('compared-beyond-uncertainty', { symbol, times, limit, first: a, second: b, unit: unitInWords(unit) }, { field })]
      : [];
  };
  return {
    comparisonOf: first.method,
    tests: [plainCopy(first.test), plainCopy(second.test)],
    properties,
    differences,
    findings: [
      ...inputFindings(differences, first.provenance, second.provenance),
      ...properties.flatMap(propertyFindings),
      ...boundFindings(properties),
    ],
  };
}
