import {
  failure,
  finding,
  InputError,
  requireFinite,
  requireNonNegative,
  requireObject,
  requireOneOf,
  requireOptions,
  requirePositive,
  success,
  unitInWords,
  type Finding,
  type Outcome,
} from '../base/index.js';
import { normalCdf, normalQuantile, studentCdf, studentQuantile } from '../numeric/index.js';
import type { Decision, DecisionReason, Measured, Specification } from './Decision.js';
import { gaugeLengthOf, isElongation, otherSize, withoutGrounds } from './decisionGrounds.js';
import { restsOnTravel } from './restsOnTravel.js';
import { roundResult } from './roundResult.js';

const FROM = 'decide';
const positiveFields = ['gaugeLength', 'area', 'coefficient', 'guardFactor', 'coverageFactor', 'degreesOfFreedom'] as const;
/** Risks of one limit and of two that differ by less are one risk (a second limit five standard uncertainties off adds less). */
const ALIKE = 1e-3;
/** Share of a distribution that a guard band keeps on its side of one limit. */
const GUARDED = 0.95;

function requireArguments(measured: Measured, specification: Specification): void {
  requireObject(FROM, 'measured', measured);
  requireFinite(FROM, 'measured.value', measured.value);
  const { standardUncertainty: u } = measured;
  if (u !== undefined) requireNonNegative(FROM, 'measured.standardUncertainty', u);
  const known = [
    'lower',
    'upper',
    'symbol',
    'gaugeLength',
    'coefficient',
    'rule',
    'guardFactor',
    'coverageFactor',
    'rounding',
    'structuralUse',
  ];
  requireOptions(FROM, specification, known, 'specification');
  for (const [path, given] of [
    ['measured', measured],
    ['specification', specification],
  ] as const)
    for (const name of positiveFields)
      if (name in given) {
        const value = (given as Readonly<Record<string, unknown>>)[name];
        if (value !== undefined) requirePositive(FROM, `${path}.${name}`, value);
      }
  const { lower, upper } = specification;
  if (lower === undefined && upper === undefined)
    throw new InputError(FROM, 'specification.lower', 'missing', 'or upper must be given', lower);
  if (lower !== undefined) requireFinite(FROM, 'specification.lower', lower);
  if (upper !== undefined) requireFinite(FROM, 'specification.upper', upper);
  if (lower !== undefined && upper !== undefined && lower > upper)
    throw new InputError(FROM, 'specification.upper', 'out-of-range', 'must not be below lower', upper);
}

/** Where a value may lie about its estimate, in standard uncertainties: normal, or by the degrees of freedom of a u from few readings, cut to a whole number (JCGM 100, G.4.2). */
function spreadOf({ degreesOfFreedom = Infinity }: Measured): {
  readonly cdf: (z: number) => number;
  readonly quantile: (p: number) => number;
  readonly twoSigma: number;
} {
  const whole = Math.max(1, Math.floor(degreesOfFreedom * (1 + 1e-12)));
  if (whole === Infinity) return { cdf: normalCdf, quantile: normalQuantile, twoSigma: 2 };
  return {
    cdf: (z) => studentCdf(z, whole),
    quantile: (p) => studentQuantile(p, whole),
    twoSigma: studentQuantile(normalCdf(2), whole),
  };
}

/** By the limits alone: of the guard band, then of the specification, then those drawn out by the guard. */
function verdictOf(value: number, lower: number, upper: number, guard: number): Decision['verdict'] {
  const within = (low: number, high: number) => value >= low && value <= high;
  if (within(lower + guard, upper - guard)) return 'pass';
  if (within(lower, upper)) return 'conditional-pass';
  return within(lower - guard, upper + guard) ? 'conditional-fail' : 'fail';
}

/** Doubts that a pass cannot be bare with. */
const conditions: ReadonlySet<string> = new Set([
  'decision-on-travel',
  'decision-without-hardening',
  'decision-for-structure',
  'limit-of-other-size',
]);

/** What stands against a bare pass, or beside any verdict. */
function doubts(measured: Measured, specification: Specification, u: number, reach: number, distance: number, clear: boolean): Finding[] {
  const { symbol = 'the value' } = measured;
  const unit = unitInWords(measured.unit ?? '1');
  const found: Finding[] = [];
  const other = otherSize(measured, specification);
  if (other) found.push(finding('limit-of-other-size', { symbol, unit, value: measured.value, ...other }));
  if (u === 0) found.push(finding('decision-without-uncertainty', { symbol }));
  // where the agreed guard band decides, its own risk has been kept: a second answer by another factor would unsettle it
  else if (distance < reach && !clear) found.push(finding('limit-within-uncertainty', { symbol, distance, uncertainty: reach, unit }));
  if (restsOnTravel(measured.symbol, measured.extensionBasis, measured.beyondExtensometer))
    found.push(finding('decision-on-travel', { symbol }));
  if (measured.withoutHardening === true) found.push(finding('decision-without-hardening', { symbol }));
  if (specification.structuralUse === true) found.push(finding('decision-for-structure', { symbol }));
  if (
    isElongation(measured.symbol) &&
    (gaugeLengthOf(measured) === undefined ||
      (measured.area === undefined && gaugeLengthOf({ ...specification, symbol: specification.symbol ?? measured.symbol }) === undefined))
  )
    found.push(finding('gauge-length-unstated', { symbol }));
  return found;
}

/**
 * Whether a value keeps its limits, by a rule that is named, with the risk of being wrong.
 *
 * $$ p_c = \Phi\left( \frac{T_U - y}{u} \right) - \Phi\left( \frac{T_L - y}{u} \right), \qquad A_L = T_L + g u, \quad A_U = T_U - g u $$
 *
 * @remarks
 * `simple`: the value passes within the limits, rounded before where that was agreed. `guarded`: the value as measured passes within limits drawn in by a guard band g u, fails beyond limits
 * drawn out by as much, and between passes or fails conditionally; it is not rounded before, since a step of rounding would take up the guard band. A limit exactly hit is kept. The probability of conformity is that
 * of a normal distribution about the unrounded value, of Student's where `degreesOfFreedom` are given (JCGM 100, G.3), by which g and k then go too; the risk of the consumer is 1 − p of a value accepted, the risk of the producer
 * p of a value rejected. A value from crosshead strain (by its symbol, `extensionBasis` and `beyondExtensometer`), a strength of a level without hardening, one that a structure depends on, and one more
 * than 30 times off its limit, as where the limit is meant in another unit, never pass barely: the verdict is conditional and a finding says on what. No verdict replaces local codes and licensed practice.
 *
 * @param measured - The value with its uncertainty and symbol, as in a result; of an elongation also `gaugeLength` [mm] and `area` [mm²].
 * @param specification - Limits in the same unit, rule, rounding.
 * @returns Verdict, rule, probability and risks; fails with `other-quantity` or `other-gauge-length` where the value and the limit do
 * not speak of the same, with `only-at-least` where a value that is at least so large leaves the verdict open, and with `uncertainty-unknown` where a guard band has nothing to go by.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const decision = required(decide({ value: 241, standardUncertainty: 3, symbol: 'ReH' }, { lower: 235, rule: 'guarded' }));
 * decision.verdict; // => 'pass'
 * decision.acceptance.lower; // => 239.93
 * decision.probabilityOfConformity; // => 0.97725
 * ```
 *
 * @see JCGM 106:2012, conformity assessment; ILAC-G8:09/2019, decision rules. Checked in `test/handbook/decisions.test.ts`.
 */
export function decide(measured: Measured, specification: Specification): Outcome<Decision, DecisionReason> {
  requireArguments(measured, specification);
  const rule = requireOneOf(FROM, 'specification.rule', specification.rule ?? 'simple', ['simple', 'guarded']);
  const { lower = -Infinity, upper = Infinity } = specification;
  const { value, standardUncertainty: u = 0 } = measured;
  const rounding = specification.rounding && roundResult(value, specification.rounding);
  const compared = rule === 'simple' && rounding ? rounding.rounded : value;
  const refused = withoutGrounds(measured, specification);
  if (refused) return refused;
  if (rule === 'guarded' && u === 0)
    return failure(
      'uncertainty-unknown',
      'A guard band needs the standard uncertainty of the value: give it, or agree on simple acceptance.',
    );

  const { cdf, quantile, twoSigma } = spreadOf(measured);
  const factor = specification.guardFactor ?? quantile(GUARDED);
  const guard = rule === 'guarded' ? factor * u : 0;
  const plain = verdictOf(compared, lower, upper, guard);
  // the true value may be anything above: it keeps a lower limit that this one keeps, and breaks an upper one that this one breaks
  const settled = compared > upper ? plain === 'fail' : upper === Infinity && plain !== 'fail' && plain !== 'conditional-fail';
  if (measured.atLeast === true && !settled)
    return failure(
      'only-at-least',
      'The value is at least so large, as the test ended before its maximum: it neither fails a lower limit nor keeps an upper one.',
    );

  const clear = rule === 'guarded' && (plain === 'pass' || plain === 'fail');
  const coverageFactor = specification.coverageFactor ?? twoSigma;
  const reach = coverageFactor * u;
  const distance = Math.min(Math.abs(value - lower), Math.abs(value - upper));
  const findings = doubts(measured, specification, u, reach, distance, clear);
  if (lower + guard > upper - guard)
    findings.push(
      finding('acceptance-zone-empty', {
        symbol: measured.symbol ?? 'the value',
        unit: unitInWords(measured.unit ?? '1'),
        guard,
        lower,
        upper,
      }),
    );
  // of two tails the smaller is subtracted from 1, so that a small risk keeps its digits
  const risk = u === 0 ? 0 : cdf((value - upper) / u) + cdf((lower - value) / u);
  const symbol = measured.symbol ?? 'the value';
  if (plain === 'pass' && rule === 'guarded' && risk > (1 + ALIKE) * cdf(-factor))
    findings.push(finding('guard-of-two-limits', { symbol, risk: 100 * risk, one: 100 * cdf(-factor) }));
  if (rule === 'simple' && verdictOf(value, lower, upper, 0) !== plain)
    findings.push(finding('rounding-decides', { symbol, compared, value, unit: unitInWords(measured.unit ?? '1') }));
  const held = findings.some(({ code }) => conditions.has(code));
  const verdict = plain === 'pass' && held ? 'conditional-pass' : plain;
  const passes = plain === 'pass' || plain === 'conditional-pass';
  return success({
    verdict,
    rule:
      (rule === 'simple' ? 'simple acceptance (JCGM 106)' : `guard band of ${Number(factor.toPrecision(4))} u (JCGM 106, ILAC-G8)`) +
      (rounding && rule === 'simple' ? `, value rounded before: ${rounding.rule}` : ''),
    compared,
    ...(rounding ? { rounding } : {}),
    ...(rule === 'guarded' ? { guardFactor: factor } : {}),
    ...(u === 0 ? {} : { coverageFactor }),
    acceptance: {
      ...(lower === -Infinity ? {} : { lower: lower + guard }),
      ...(upper === Infinity ? {} : { upper: upper - guard }),
    },
    ...(u === 0
      ? {}
      : {
          probabilityOfConformity: 1 - risk,
          ...(passes ? { consumersRisk: risk } : { producersRisk: 1 - risk }),
          toldApart: clear || distance >= reach,
        }),
    findings,
  });
}
