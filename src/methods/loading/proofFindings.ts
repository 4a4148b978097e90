import { finding, type Finding, type StressStrainCurve } from '../../base/index.js';
import { offsetLeverage, sustainedCrossing } from '../../curve/index.js';
import type { TensionNumbers } from './TensionNumbers.js';
import type { LineThresholds } from '../common/thresholds.js';
import { percent } from '../common/quantity.js';

/** Samples between the end of the elastic window and the proof point that are wanted (common practice). */
const POINTS_BEFORE_PROOF = 5;
/** The doubt of the offset at which a proof strength is worth a fault. */
const DOUBT_FAULT = 0.2;

/** What the proof strengths were asked with. */
interface ProofSettings {
  readonly offsets: readonly number[];
  readonly totalExtensions: readonly number[];
  readonly thresholds: LineThresholds;
}

/** @internal Doubts about proof strengths and strengths at total extensions, which need the piece's own strain; `stepShare` is what steps leave open of the slope, `symbols` are without their index. */
export function proofFindings(
  numbers: Pick<TensionNumbers, 'line' | 'proofs' | 'totals' | 'highest'>,
  curve: StressStrainCurve,
  settings: ProofSettings,
  stepShare = 0,
  strainOfPiece = true,
  symbols: readonly [string, string] = ['Rp', 'Rt'],
): Finding[] {
  const { line } = numbers;
  if (!line.ok) return [];
  const found: Finding[] = [];
  const field = 'proofStrengths';
  numbers.proofs.forEach((proof, k) => {
    const offset = settings.offsets[k]!;
    const symbol = `${symbols[0]}${percent(offset)}`;
    if (!proof.ok) {
      if (proof.reason === 'after-slip') return; // told with what else is withheld
      found.push(
        proof.reason === 'not-reached'
          ? finding('proof-strength-not-reached', { symbol }, { field })
          : finding('not-determined', { symbol, why: proof.message }, { field }),
      );
      return;
    }
    // a line through noise may cross below zero
    if (proof.stress <= 0) return;
    const leverage = offsetLeverage({ stress: proof.stress, modulus: line.slope, offset });
    const share = leverage * Math.max(line.relativeStandardError, stepShare);
    if (share > settings.thresholds.offsetDoubt)
      found.push(
        finding(
          'offset-leverage',
          { leverage, symbol, share: 100 * share },
          { field, severity: share > DOUBT_FAULT ? 'fault' : 'caution' },
        ),
      );
    const between = proof.index - line.last - 1;
    if (between < POINTS_BEFORE_PROOF) found.push(finding('few-points-before-proof', { points: Math.max(between, 0), symbol }, { field }));
    // back above the line and below it again: a yield point, or a slip
    let count = 1;
    const last = Math.min(numbers.highest, curve.stress.length - 1);
    // so far out that even the highest stress lies below the line
    const out = 2 * offset + curve.stress[last]! / line.slope;
    for (let i = proof.index + 1; i <= last && curve.strain[i]! <= out; i += 1) {
      if (curve.stress[i]! <= line.slope * (curve.strain[i]! - offset) + 3 * line.residualStandardDeviation) continue;
      i = sustainedCrossing(curve.strain, curve.stress, line.slope, offset, i, last + 1);
      if (i < 0) break;
      count += 1;
    }
    if (count > 1) found.push(finding('several-crossings', { symbol, count }, { field }));
  });
  numbers.totals.forEach((total, k) => {
    const symbol = `${symbols[1]}${percent(settings.totalExtensions[k]!)}`;
    const at = { field: 'totalExtensionStrengths' };
    if (!strainOfPiece) found.push(finding('not-determined', { symbol, why: 'its extension would be of frame and piece together' }, at));
    else if (!total.ok && total.reason !== 'after-slip') found.push(finding('total-extension-not-reached', { symbol }, at));
  });
  return found;
}
