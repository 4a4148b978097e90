import { finding, type Finding } from '../../base/index.js';
import { LARGE_DOUBT } from '../../uncertainty/index.js';
import { budgetFindings } from './budgetFindings.js';
import { fieldsBySymbol, quantitiesOf, type TensionBudgets } from './statedResult.js';
import { missingDoubts, tensionBudgets } from './tensionBudgets.js';
import type { TensionTask } from './tensionModel.js';
import { tensionNoise } from './tensionNoise.js';
import type { MissedPeak } from '../evaluation/missedPeak.js';
import type { TensionDoubts } from '../evaluation/tensionUncertainty.js';

/** The zero has no value of its own that its doubt could be held against: the highest force stands for it. */
function zeroFindings({ record: { force }, top }: TensionTask, { inputs }: TensionDoubts): readonly Finding[] {
  const zero = inputs.find(({ name }) => name === 'forceZero');
  const share = zero ? zero.standardUncertainty / force[top]! : 0;
  return share > LARGE_DOUBT ? [finding('zero-uncertainty-large', { share: 100 * share })] : [];
}

/** @internal Budgets of the quantities of a test, what was left out of them, and what they say against themselves. */
export function uncertaintyOf(
  task: TensionTask,
  doubts: TensionDoubts,
  quantities: object,
  missed: MissedPeak | undefined,
): TensionBudgets & { readonly findings: readonly Finding[] } {
  const missing = missingDoubts(task, doubts);
  const noise = tensionNoise(task, doubts.noise);
  const found = tensionBudgets(task, doubts, noise, quantitiesOf(quantities), missed?.loss);
  return {
    ...found,
    findings: [
      ...(missing.length > 0 ? [finding('uncertainty-incomplete', { missing: missing.join(', ') })] : []),
      ...(noise.correlation > 0 ? [finding('noise-correlated', { correlation: noise.correlation }, { field: 'elasticSlope' })] : []),
      ...zeroFindings(task, doubts),
      ...budgetFindings(found, fieldsBySymbol(quantities)),
    ],
  };
}
