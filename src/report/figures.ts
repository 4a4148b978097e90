import { requireObject } from '../base/index.js';
import type { TensionResult } from '../methods/index.js';
import { elasticDetailFigure } from './elasticDetailFigure.js';
import type { Figure } from './figureParts.js';
import { loadExtensionFigure } from './loadExtensionFigure.js';
import { ratesFigure } from './ratesFigure.js';
import { stressStrainFigure } from './stressStrainFigure.js';
import { trueCurveFigure } from './trueCurveFigure.js';

/** Names of the figures of a tension test. */
export type FigureName = 'loadExtension' | 'stressStrain' | 'elasticDetail' | 'trueCurve' | 'rates';

/**
 * The figures of a test as plain Vega-Lite JSON.
 *
 * @remarks
 * Force against extension, stress against strain, the elastic part with window and offset line, the true curve with its law and the
 * onset of necking, strain rate over time; those that the result supports. At most about a thousand points a line however long the
 * record, peaks kept. `testpiece/render` draws them.
 *
 * @param result - A result of `analyseTension`.
 * @returns The figures by name.
 * @throws {@link InputError} `wrong-type`, `missing`.
 *
 * @example
 * ```ts
 * const record = { force: [0, 1000, 2000, 3000, 3100, 2500], strain: [0, 0.001, 0.002, 0.003, 0.05, 0.06] };
 * const result = analyseTension(record, { section: round({ diameter: 8 }), gaugeLength: 40 });
 * figures(result).stressStrain?.title; // => 'Stress against strain'
 * ```
 *
 * @see Vega-Lite, a grammar of graphics (open specification). Checked in `test/report/report.test.ts`.
 */
export function figures(result: TensionResult): Partial<Record<FigureName, Figure>> {
  requireObject('figures', 'result', result);
  const made: Readonly<Record<FigureName, Figure | undefined>> = {
    loadExtension: loadExtensionFigure(result),
    stressStrain: stressStrainFigure(result),
    elasticDetail: elasticDetailFigure(result),
    trueCurve: trueCurveFigure(result),
    rates: ratesFigure(result),
  };
  return Object.fromEntries(Object.entries(made).filter(([, one]) => one !== undefined));
}
