import { requireOptions } from '../../base/index.js';
import type { TestPlan } from '../../planning/index.js';
import type { Figure } from './Figure.js';
import { paceFigure } from './paceFigure.js';
import { pieceFigure } from './pieceFigure.js';
import { figureOptions, presentation, type FigureOptions } from '../words/presentation.js';
import { requirePlan } from '../words/requirePlan.js';

/** Names of the figures of a plan. */
export type PlanFigureName = 'piece' | 'pace';

/**
 * The figures of a plan as plain Vega-Lite JSON.
 *
 * @remarks
 * Of a tension test the piece with its lengths (round, square or flat; with the least fillets, and heads as a sketch) and the pace sheet; other tests have none.
 *
 * @param plan - A plan of any test.
 * @param options - Language, units, ground.
 * @returns The figures by name.
 * @throws {@link InputError} `missing`, `wrong-type`, `out-of-range` for anything else; `unknown-option`.
 *
 * @example
 * ```ts
 * const plan = planTension({ family: 'brass', section: round({ diameter: 5 }), frame: { capacity: 25000 } });
 * planFigures(plan).pace?.title; // => 'Pace of the test'
 * ```
 *
 * @see Vega-Lite, a grammar of graphics (open specification). Checked in `test/report/plan.test.ts`.
 */
export function planFigures(plan: TestPlan, options: FigureOptions = {}): Partial<Record<PlanFigureName, Figure>> {
  requirePlan('planFigures', plan);
  requireOptions('planFigures', options, figureOptions);
  const show = presentation('planFigures', options);
  if (plan.planOf !== 'tension') return {};
  const { section, lengths } = plan;
  const drawn = ['round', 'rectangular', 'square'].includes(section.shape);
  return {
    ...(drawn
      ? {
          piece: pieceFigure(
            {
              section,
              gaugeLength: lengths.gaugeLength,
              parallelLength: lengths.parallelLength,
              filletRadius: lengths.leastFilletRadius,
            },
            options,
          ),
        }
      : {}),
    pace: paceFigure(plan, show),
  };
}
