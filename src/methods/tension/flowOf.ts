import { failure, InputError, requireObject, requireWhole, success, type Outcome, type StressStrainCurve } from '../../base/index.js';
import { requireCurve } from '../../curve/index.js';
import { flowCurve, trueCurve } from '../../hardening/index.js';
import { departuresOf } from '../loading/departures.js';
import { loadingRanges, pickCurve } from '../loading/loadingRanges.js';
import type { CurveResult } from './analyseCurve.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/**
 * The flow curve of a tension test, for laws and for the onset of necking: true stress over true plastic strain, up to the maximum force.
 *
 * $$ \varepsilon_p = \ln(1 + e) - \frac{\sigma}{m_E}, \qquad \sigma = R\,(1 + e) $$
 *
 * @remarks
 * Made of what the evaluation took as loading: unloadings, strokes and slips that `interruptions` names are left out, which `trueCurve` of the whole
 * `curve` would fit as flow. The elastic part goes by the slope of the curve's own line. It begins with the first sample beyond that line; fit laws from
 * `hardening.range[0]` of the result, or from where your standard says.
 *
 * @param result - Of `analyseTension` or `analyseCurve`, also one read by `fromJson`.
 * @returns True plastic strain [mm/mm] and true stress [MPa]; `no-line` without an elastic line, `after-slip` where the strain counts a slip before the maximum.
 * @throws {@link InputError} `missing`, `wrong-type`.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 2801 }, (_, i) => i / 10);
 * const record = { force: stress.map((R) => 50 * R), strain: stress.map((R) => R / 70000 + 0.002 * (R / 250) ** 20) };
 * const result = analyseTension(record, { section: sectionFromArea({ area: 50 }), gaugeLength: 40 });
 * const flow = required(flowOf(result));
 * required(fitHollomon(flow, { from: 0.002 })).exponent; // => 0.06
 * ```
 *
 * @see ISO 10275; ASTM E646. Checked in `test/methods/flowOf.test.ts`.
 */
export function flowOf(result: TensionResult | CurveResult): Outcome<StressStrainCurve, 'no-line' | 'after-slip'> {
  const from = 'flowOf';
  const given: object = requireObject(from, 'result', result);
  if (!('method' in given) || given.method !== 'tension')
    throw new InputError(
      from,
      'result.method',
      'wrong-type',
      'must be that of analyseTension or analyseCurve',
      'method' in given ? given.method : undefined,
    );
  const { interruptions = [], maximumIndex, elasticSlope } = result;
  // columns are lists where a result was read without fromJson
  requireObject(from, 'result.curve', result.curve);
  const curve = requireCurve(from, result.curve, 1);
  requireWhole(from, 'result.maximumIndex', maximumIndex, 0);
  if (!elasticSlope) return failure('no-line', 'the result has no elastic line to take the elastic part off by');
  const { excursions, slips } = departuresOf(interruptions);
  if (slips.some(({ at }) => at < maximumIndex)) return failure('after-slip', 'strain counts a slip before the maximum force');
  const samples = Math.min(maximumIndex + 1, curve.strain.length);
  const ranges = loadingRanges(excursions, samples) ?? [[0, samples - 1]];
  const { strain, stress } = flowCurve(trueCurve(pickCurve(curve, ranges)), { modulus: elasticSlope.value });
  return success({ strain, stress });
}
