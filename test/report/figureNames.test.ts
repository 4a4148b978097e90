import { expect, test } from 'vitest';
import { analyseTension, testingRates, type TensionResult } from '../../src/index.js';
import { figures, type Figure } from '../../src/report/index.js';
import { simulateTension } from '../../src/simulate/index.js';
import { results, tensionResult } from '../support/pages.js';
import { roundPiece } from '../support/records.js';

type Layer = {
  readonly mark: { readonly type: string; readonly strokeDash?: readonly number[]; readonly dy?: number; readonly align?: string };
  readonly data: { readonly values: readonly { readonly x: number; readonly y: number; readonly text?: string }[] };
};
const layersOf = (figure: Figure | undefined): readonly Layer[] => (figure as unknown as { readonly layer: readonly Layer[] }).layer;
const namesOf = (figure: Figure | undefined) =>
  layersOf(figure).flatMap(({ mark, data }) => (mark.type === 'text' ? data.values.map((one) => ({ ...one, mark })) : []));

/** Twice the limits all along, by an extensometer, twenty samples a second. */
function pulledTooFast(yieldPoint?: { readonly upper: number; readonly plateau: number }) {
  const speed = 2 * 48 * testingRates.methodB.upToProof;
  const { record } = simulateTension({
    material: { modulus: 206_000, yieldStress: 280, yieldPoint, hardening: { law: 'swift', prestrain: 0.03, exponent: 0.25 } },
    piece: roundPiece,
    hand: { speed, speedAfterYield: speed },
    logger: { rate: 20, extensometer: true },
  });
  const result = analyseTension({ force: record.force, extension: record.extension!, time: record.time! }, roundPiece);
  const figure = figures(result).rates;
  const [dashed] = layersOf(figure).filter(({ mark }) => mark.strokeDash !== undefined);
  const timeAt = (strain: number): number => record.time![result.curve.strain.findIndex((one) => one >= strain)]!;
  return { result, limit: dashed!.data.values, names: namesOf(figure).map(({ text }) => text), timeAt };
}

test('a limit of the strain rate is named, and holds to the proof strength', () => {
  const { upToProof, afterYield } = testingRates.methodB;
  // the other limit lies above the plot
  expect(afterYield).toBeGreaterThan(2.2 * upToProof);
  const { result, limit, names, timeAt } = pulledTooFast();
  expect(limit.map(({ y }) => y)).toEqual([1e3 * upToProof, 1e3 * upToProof]);
  // a sample each 0.05 s: the crossing lies between two
  expect(Math.abs(limit[1]!.x - timeAt(result.proofStrengths[0]!.strain))).toBeLessThan(0.051);
  expect(names).toEqual(['limit up to the proof strength']);
});

test('with a yield point that limit holds until hardening begins', () => {
  const { result, limit, names, timeAt } = pulledTooFast({ upper: 305, plateau: 0.014 });
  const { upperYieldStrength: upper, yieldPointExtension: extension } = result;
  expect(Math.abs(limit[1]!.x - timeAt(upper!.strain + extension!.value))).toBeLessThan(0.051);
  expect(names).toEqual(['limit to the end of yield']);
});

test('lines of a flow curve in compression are named, and a law has its power as a power', () => {
  expect(
    namesOf(figures(results()['compression']!).compressionFlow)
      .map(({ text }) => text)
      .sort(),
  ).toEqual(['flow curve, plastic strain', 'law', 'with friction, total strain']);
  const named = namesOf(figures(tensionResult()).trueCurve).map(({ text }) => text!);
  expect(named.find((text) => text.startsWith('σ'))).toMatch(/^σ = K εpⁿ, K = \d+\u00a0MPa, n = 0\.\d+$/);
});

test('names stand off the curve and off the numbers of the axis', () => {
  const result: TensionResult = tensionResult();
  const window = namesOf(figures(result).elasticDetail).find(({ text }) => text === 'window')!;
  const { strainLimits } = result.modulusWindow!;
  expect(window.x).toBeCloseTo(50 * (strainLimits[0] + strainLimits[1]), 9);
  expect(window.mark.align).toBe('right');
  const fracture = namesOf(figures(result).stressStrain).find(({ text }) => text === 'fracture')!;
  expect([fracture.mark.align, Math.sign(fracture.mark.dy!)]).toEqual(['right', 1]);
  // a strength below 0, as a wrong zero makes one, is no point of the plot; one just above it stands over its point
  const low = (value: number) =>
    namesOf(figures({ ...result, proofStrengths: [{ ...result.proofStrengths[0]!, value }] }).stressStrain).find(
      ({ text }) => text === 'Rp0.2',
    );
  expect(low(-5)).toBeUndefined();
  expect(low(5)!.mark.dy).toBeLessThan(0);
  expect(low(200)!.mark.dy).toBeGreaterThan(0);
});
