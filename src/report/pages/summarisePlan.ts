import { requireOptions } from '../../base/index.js';
import type { BendingPlan, BrinellPlan, CompressionPlan, CuppingPlan, ShearPlan, TensionPlan, TestPlan } from '../../planning/index.js';
import { forceRows, rowMaker, type PlanRow, type RowMaker } from '../words/planRows.js';
import { presentation, presentationOptions, type Presentation, type PresentationOptions } from '../words/presentation.js';
import { requirePlan } from '../words/requirePlan.js';
import { FORCE_RATE, SPEED } from '../words/shownUnit.js';
import { tensionPlanRows } from '../words/tensionPlanRows.js';

const brinellRows = (plan: BrinellPlan, { under, one, span, words }: RowMaker): PlanRow[] =>
  under('Test', [
    one('ball', plan.ballDiameter, 'mm'),
    one('index 0.102 F/D²', plan.index, ''),
    span('hardness to be expected', plan.hardness, 'HBW'),
    span('diameter of the indentation', plan.indentation, 'mm', 3),
    one('least thickness', plan.leastThickness, 'mm', 3),
    one('least distance from an edge', plan.leastEdge, 'mm', 3),
    one('least distance of centres', plan.leastSpacing, 'mm', 3),
    span('hold the force', plan.dwell, 's'),
    words('this frame also reaches', plan.possible.map(({ designation }) => designation).join(', ') || undefined),
  ]);
const shearRows = (plan: ShearPlan, { under, one, span }: RowMaker): PlanRow[] =>
  under('Test', [one('planes', plan.planes, ''), span('shear strength to be expected', plan.shearStrength, 'MPa')]);
const bendingRows = (plan: BendingPlan, { under, one }: RowMaker): PlanRow[] =>
  under('Test', [
    one('span between the supports', plan.span, 'mm'),
    one('deflection where the strongest bar yields', plan.deflectionAtYield, 'mm', 3),
    one('speed of the crosshead', plan.speed, SPEED, 3),
  ]);
const compressionRows = (plan: CompressionPlan, { under, one, share }: RowMaker): PlanRow[] =>
  under('Test', [
    one('height h0', plan.height, 'mm'),
    one('height over diameter', plan.heightRatio, '', 3),
    share('strain at which to stop', plan.toStrain),
    share('strain from which it may buckle', plan.bucklingStrain),
    share('share of friction in the greatest force', plan.frictionShare),
    one('loss of height when stopped', plan.shortening, 'mm', 3),
    one('travel needed', plan.travel, 'mm', 3),
    one('speed of the crosshead', plan.speed, SPEED, 3),
  ]);
const cuppingRows = (plan: CuppingPlan, { under, one, span }: RowMaker): PlanRow[] =>
  under('Test', [
    one('thickness of the sheet', plan.thickness, 'mm', 3),
    one('ball', plan.ballDiameter, 'mm'),
    one('bore of the die', plan.dieDiameter, 'mm'),
    one('greatest depth to be expected', plan.depth, 'mm', 3),
    one('travel needed', plan.travel, 'mm', 3),
    span('speed of the ball', plan.speed, SPEED, 3),
  ]);
const loadingRows = (plan: Exclude<TestPlan, TensionPlan>, { under, one, span }: RowMaker, { say }: Presentation): PlanRow[] => {
  const { time, forceRate, driveNumber } = plan.loading;
  const drive = say(plan.frame.drive?.kind === 'pump' ? 'strokes' : 'turns');
  // compression goes on far beyond yield, and the rate holds up to there alone
  if (plan.planOf === 'compression')
    return under('Loading', [
      span('time to yield', time, 's', 3),
      span('force rate up to yield', forceRate, FORCE_RATE),
      one('time to the strain at which to stop', plan.duration, 's', 3),
      one('drive, at least', plan.driveNumber, drive, 2),
    ]);
  return under('Loading', [
    span('time to full force', time, 's', 3),
    span('force rate', forceRate, FORCE_RATE),
    one('drive, at least', driveNumber, drive, 2),
  ]);
};

/**
 * A plan as rows of a table, in the units of the workshop: kN, bar, mm a minute, J.
 *
 * @remarks
 * Rounded for reading: the plan itself keeps every digit. Energies say "at least".
 *
 * @param plan - A plan of any test.
 * @param options - Language and units.
 * @returns Rows in the order of the work, each under its part.
 * @throws {@link InputError} `missing`, `wrong-type`, `out-of-range` for anything else; `unknown-option`.
 *
 * @example
 * ```ts
 * const plan = planTension({ family: 'structural-steel', section: round({ diameter: 5 }), frame: { capacity: 25000 } });
 * summarisePlan(plan).find(({ name }) => name === 'share of the capacity')?.text; // => '56.5\u00a0%'
 * ```
 *
 * @see Common practice. Checked in `test/report/plan.test.ts`.
 */
export function summarisePlan(plan: TestPlan, options: PresentationOptions = {}): PlanRow[] {
  requirePlan('summarisePlan', plan);
  requireOptions('summarisePlan', options, presentationOptions);
  const show = presentation('summarisePlan', options);
  const make = rowMaker(show);
  const common = (own: PlanRow[], other: Exclude<TestPlan, TensionPlan>): PlanRow[] => [
    ...own,
    ...forceRows(other, make),
    ...loadingRows(other, make, show),
  ];
  switch (plan.planOf) {
    case 'tension':
      return tensionPlanRows(plan, make, show);
    case 'brinell':
      return common(brinellRows(plan, make), plan);
    case 'shear':
      return common(shearRows(plan, make), plan);
    case 'bending':
      return common(bendingRows(plan, make), plan);
    case 'compression':
      return common(compressionRows(plan, make), plan);
    case 'cupping':
      return common(cuppingRows(plan, make), plan);
  }
}
