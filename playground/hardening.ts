import { compareLaws, considere, flowCurve, trueCurve, type NeckingOnset, type TensionResult } from '../src/index.js';
import { hardeningPart } from '../src/report/index.js';
import { pointsOf, type Points } from './points.js';

/** A fitted law as it is drawn and told. */
export interface LawView extends Points {
  readonly name: string;
  readonly weight: number;
  readonly necking: number;
  readonly parameters: Readonly<Record<string, number>>;
}

/** Necking and hardening, drawn; or why there is none. */
export type HardeningView =
  | { readonly ok: false; readonly message: string }
  | {
      readonly ok: true;
      readonly curve: Points;
      readonly rate: Points;
      readonly neck: NeckingOnset | { readonly message: string };
      readonly flow: Points;
      readonly laws: readonly LawView[];
      readonly failed: readonly string[];
    };

/** So many points are enough for a line, and for a law. */
const POINTS = 600;
const LAW_POINTS = 80;

/** Considère's construction and the laws of a result. */
export function hardeningOf(result: TensionResult): HardeningView {
  const { curve, maximumIndex, elasticSlope, hardening } = result;
  const to = Math.min(maximumIndex, curve.strain.length - 1);
  let from = to;
  // from where the stress last lay below half of its maximum: slack and elastic line have no hardening
  while (from > 0 && curve.stress[from]! > 0.5 * curve.stress[to]!) from -= 1;
  if (to - from < 20 || !elasticSlope) return { ok: false, message: '' };
  const whole = trueCurve(curve, { from });
  const rising = trueCurve(curve, { from, to });
  const flow = flowCurve(rising, { modulus: elasticSlope.value });
  if (flow.strain.length < 20) return { ok: false, message: '' };
  const part = hardeningPart(result);
  if (!part) return { ok: false, message: '' };
  const found = considere(whole);
  // the stretch that the analysis gives its own law: beyond the knee, up to maximum force
  const { ranked, failed } = compareLaws(flow, hardening ? { from: hardening.range[0], to: hardening.range[1] } : {});
  const knee = Math.max(
    0,
    flow.strain.findIndex((one) => one >= (hardening?.range[0] ?? 0)),
  );
  const farthest = 1.8 * flow.strain[flow.strain.length - 1]!;
  const plastic = Array.from({ length: LAW_POINTS }, (_, k) => (farthest * (k + 1)) / LAW_POINTS);
  return {
    ok: true,
    curve: pointsOf(part.curve.strain, part.curve.stress, POINTS),
    rate: pointsOf(part.picture.strain, part.picture.rate, POINTS),
    neck: found.ok ? found : { message: found.message },
    flow: pointsOf(flow.strain.subarray(knee), flow.stress.subarray(knee), POINTS),
    laws: ranked.map(({ name, law, weight, parameters }) => ({
      name,
      weight,
      necking: law.neckingStrain,
      parameters,
      x: plastic,
      y: plastic.map(law.stress),
    })),
    failed: failed.map(({ name }) => name),
  };
}
