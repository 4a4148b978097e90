import type { StressStrainCurve } from '../../base/index.js';
import { testingRates } from '../../curve/index.js';
import type { LineNumbers } from './lineKernel.js';
import { control, loadingOf, type ControlOf, type Loading, type LoadingStage } from './loadingOf.js';
import type { Pause } from '../../record/index.js';

type Controls = (stage: LoadingStage['stage']) => readonly ControlOf[];

/** @internal The control of a compression test: one strain rate from start to end. */
export const compressionControls: Controls = (stage) => [control('ASTM E9', stage, 'strain', testingRates.e9.strainRate)];

/** @internal Controls of a bending test: strain of the outer fibre, and a speed, which a strain gauge does not tell (`length`: motion over strain [mm], or 1). */
export const bendingControls =
  (length: number): Controls =>
  (stage) => {
    const { outerFibre, bendSpeed } = testingRates.bending;
    const [slow, fast] = bendSpeed;
    return [
      control('ISO 178; ASTM D790 procedure A', stage, 'strain', outerFibre),
      ...(length === 1 ? [] : [control('ISO 7438, in dispute', stage, 'strain', [slow / length, fast / length])]),
    ];
  };

/** @internal How a piece was loaded whose line, proof strengths and plateau of the highest force are known, against the controls of its test. */
export function lineLoading(
  curve: StressStrainCurve,
  time: Float64Array | undefined,
  { line, proofs, plateauEnd }: LineNumbers,
  { pauses, controlsOf }: { readonly pauses: readonly Pick<Pause, 'range'>[]; readonly controlsOf: Controls },
): Loading | undefined {
  if (!line.ok) return undefined;
  const proof = proofs.find((one) => one.ok);
  const stages = { line, yielded: proof?.index ?? line.last, end: plateauEnd, pauses: pauses.map(({ range }) => range) };
  return loadingOf(curve, time, { ...stages, controlsOf });
}
