import {
  compareLaws,
  considere,
  flowCurve,
  hardeningPicture,
  trueCurve,
  type NeckingOnset,
  type StressStrainCurve,
  type TensionResult,
} from '../src/index.js';

/** Points of a line. */
export interface Points {
  readonly x: ArrayLike<number>;
  readonly y: ArrayLike<number>;
}

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

/** So many points are enough for a line. */
const POINTS = 600;
const LAW_POINTS = 80;

/** Means of as many stretches, so that noise does not fill the figure. */
function thinned({ strain, stress }: StressStrainCurve): Points {
  const stretch = Math.max(1, Math.floor(strain.length / POINTS));
  const mean = (column: Float64Array) =>
    Array.from({ length: Math.floor(column.length / stretch) }, (_, k) => {
      let sum = 0;
      for (let i = k * stretch; i < (k + 1) * stretch; i += 1) sum += column[i]!;
      return sum / stretch;
    });
  return { x: mean(strain), y: mean(stress) };
}

/** Considère's construction and the laws of a result. */
export function hardeningOf({ curve, maximumIndex, elasticSlope, hardening }: TensionResult): HardeningView {
  const to = Math.min(maximumIndex, curve.strain.length - 1);
  let from = to;
  // from where the stress last lay below half of its maximum: slack and elastic line have no hardening
  while (from > 0 && curve.stress[from]! > 0.5 * curve.stress[to]!) from -= 1;
  if (to - from < 20 || !elasticSlope) return { ok: false, message: '' };
  const whole = trueCurve(curve, { from });
  const rising = trueCurve(curve, { from, to });
  const flow = flowCurve(rising, { modulus: elasticSlope.value });
  if (flow.strain.length < 20) return { ok: false, message: '' };
  const picture = hardeningPicture(rising);
  const found = considere(whole);
  // the stretch that the analysis gives its own law: beyond the knee, up to maximum force
  const { ranked, failed } = compareLaws(flow, hardening ? { from: hardening.range[0], to: hardening.range[1] } : {});
  const knee = Math.max(
    0,
    flow.strain.findIndex((one) => one >= (hardening?.range[0] ?? 0)),
  );
  const shownFlow = { strain: flow.strain.subarray(knee), stress: flow.stress.subarray(knee) };
  const farthest = 1.8 * flow.strain[flow.strain.length - 1]!;
  const plastic = Array.from({ length: LAW_POINTS }, (_, k) => (farthest * (k + 1)) / LAW_POINTS);
  return {
    ok: true,
    curve: thinned(rising),
    rate: thinned({ strain: picture.strain, stress: picture.rate }),
    neck: found.ok ? found : { message: found.message },
    flow: thinned(shownFlow),
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
