import { fitModulus, proofStrength, type StressStrainCurve, type TensionResult } from '../src/index.js';

/** What a window gives, by the small public steps alone: fast enough for every frame of a drag. */
export type Preview =
  | { readonly ok: false; readonly message: string }
  | {
      readonly ok: true;
      /** Slope on the curve [MPa], and where its line meets zero stress [mm/mm]. */
      readonly line: number;
      readonly origin: number;
      /** Slope as it is stated [MPa]. */
      readonly slope: number;
      readonly proof?: { readonly stress: number; readonly strain: number } | undefined;
    };

/** Stated over fitted slope of a result: what fillets and frame make of it. */
export function stated({ modulus, elasticSlope, modulusWindow }: TensionResult): number {
  const slope = (modulus ?? elasticSlope)?.value;
  return slope === undefined || !modulusWindow ? 1 : slope / modulusWindow.slope;
}

/** Line and proof strength of a window. */
export function preview(curve: StressStrainCurve, window: readonly [number, number], offset: number, factor: number): Preview {
  const fit = fitModulus(curve, { window: { by: 'samples', first: window[0], last: window[1] } });
  if (!fit.ok) return { ok: false, message: fit.message };
  const { slope, strainShift } = fit;
  const proof = proofStrength(curve, { modulus: slope, strainShift, offset });
  return {
    ok: true,
    line: slope,
    origin: strainShift,
    slope: slope * factor,
    ...(proof.ok ? { proof: { stress: proof.stress, strain: proof.strain + strainShift } } : {}),
  };
}
