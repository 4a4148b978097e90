import { finding, isSameExtension, PROOF_OFFSET, type Finding, type StressStrainCurve } from '../../base/index.js';
import { countCrossings, offsetLeverage, slopeInDoubt, type LineExplanation } from '../../curve/index.js';
import { offsetWeight, turnedStrengths } from './offsetWeight.js';
import type { TensionNumbers } from './TensionNumbers.js';
import type { LineThresholds } from '../common/thresholds.js';
import { percent } from '../common/quantity.js';

/** Samples between the end of the elastic window and the proof point that are wanted (common practice). */
const POINTS_BEFORE_PROOF = 5;

/** What the proof strengths were asked with. */
interface ProofSettings {
  readonly offsets: readonly number[];
  readonly totalExtensions: readonly number[];
  readonly thresholds: LineThresholds;
}

type Numbers = Pick<TensionNumbers, 'line' | 'proofs' | 'totals' | 'highest'>;
type Line = Extract<Numbers['line'], { readonly ok: true }>;

const field = 'proofStrengths';

/** What the doubt of the slope moves an offset by, and the stress at it, which decides what it weighs: of 0.2 % it is the trust that the line itself states. */
function leverageFindings(
  { line, curve, highest }: { readonly line: Line; readonly curve: StressStrainCurve; readonly highest: number },
  { stress, offset, symbol }: { readonly stress: number; readonly offset: number; readonly symbol: string },
  { trust, linearPart, envelope, strainSteps }: LineExplanation,
  least: number,
): Finding[] {
  const ownOffset = trust && isSameExtension(offset, PROOF_OFFSET);
  const leverage = ownOffset ? trust.leverage : offsetLeverage({ stress, modulus: line.slope, offset });
  const share = ownOffset ? trust.offsetDoubt : leverage * slopeInDoubt(line, linearPart, envelope, strainSteps?.slopeShare);
  if (share <= least) return [];
  const [low, high] = turnedStrengths(curve, line, { stress, offset, highest, doubt: share / leverage });
  return [
    finding('offset-leverage', { leverage, symbol, share: 100 * share, low, high }, { field, severity: offsetWeight(share, [low, high]) }),
  ];
}

/** @internal Doubts about proof strengths and strengths at total extensions, which need the piece's own strain; `explained` is what explains the line, `symbols` are without their index. */
export function proofFindings(
  numbers: Numbers,
  curve: StressStrainCurve,
  settings: ProofSettings,
  explained: LineExplanation = {},
  strainOfPiece = true,
  symbols: readonly [string, string] = ['Rp', 'Rt'],
): Finding[] {
  const { line } = numbers;
  if (!line.ok) return [];
  const found: Finding[] = [];
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
    const top = Math.min(numbers.highest, curve.stress.length - 1);
    found.push(
      ...leverageFindings(
        { line, curve, highest: top },
        { stress: proof.stress, offset, symbol },
        explained,
        settings.thresholds.offsetDoubt,
      ),
    );
    const between = proof.index - line.last - 1;
    if (between < POINTS_BEFORE_PROOF) found.push(finding('few-points-before-proof', { points: Math.max(between, 0), symbol }, { field }));
    const count = countCrossings(curve, line, offset, proof.index, numbers.highest);
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
