import { requireOptions } from '../../base/index.js';
import type { CurveResult, TestResult } from '../../methods/index.js';
import type { Figure } from '../figures/Figure.js';
import { pageOf } from './pageOf.js';
import { figureOptions, presentation, type FigureOptions } from '../words/presentation.js';

/** Names of the figures, of all methods. */
export type FigureName =
  | 'loadExtension'
  | 'stressStrain'
  | 'elasticDetail'
  | 'yieldDetail'
  | 'trueCurve'
  | 'necking'
  | 'rates'
  | 'compressionCurve'
  | 'compressionFlow'
  | 'bendingCurve'
  | 'force'
  | 'indentations'
  | 'unloadingSlopes';

/**
 * The figures of a test as plain Vega-Lite JSON.
 *
 * @remarks
 * Force against extension, stress against strain, the elastic part with window and offset line, the yield point from near, the true curve with its law,
 * Considère's construction of the neck, strain rate over time; those that the result supports; other methods have figures of their own. At most about a thousand points a line however long the
 * record, peaks kept. `testpiece/render` draws them.
 *
 * @param result - A result of any `analyse` function.
 * @param options - Language, units, ground.
 * @returns The figures by name.
 * @throws {@link InputError} `wrong-type`, `missing`, `out-of-range`, `unknown-option`.
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
export function figures(result: TestResult | CurveResult, options: FigureOptions = {}): Partial<Record<FigureName, Figure>> {
  const page = pageOf('figures', result);
  requireOptions('figures', options, figureOptions);
  const made = Object.entries(page.figures(result, presentation('figures', options)));
  return Object.fromEntries(made.filter(([, one]) => one !== undefined));
}
