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

test('a limit of the strain rate is named, and holds to yield or from it on', () => {
  // twice the limits, up to the proof strength and after it
  const { upToProof, afterYield } = testingRates.methodB;
  const { record } = simulateTension({
    material: { modulus: 206_000, yieldStress: 280, hardening: { law: 'swift', prestrain: 0.03, exponent: 0.25 } },
    piece: roundPiece,
    hand: { speed: 2 * 48 * upToProof, speedAfterYield: 2 * 48 * upToProof },
    logger: { rate: 20, extensometer: true },
  });
  const result = analyseTension({ force: record.force, extension: record.extension!, time: record.time! }, roundPiece);
  const figure = figures(result).rates;
  const [dashed] = layersOf(figure).filter(({ mark }) => mark.strokeDash !== undefined);
  const yields = record.time![result.curve.strain.findIndex((strain) => strain >= result.proofStrengths[0]!.strain)]!;
  expect(afterYield).toBeGreaterThan(2.2 * upToProof);
  expect(dashed!.data.values.map(({ y }) => y)).toEqual([1e3 * upToProof, 1e3 * upToProof]);
  // the figure knows the time as closely as its rates stand
  const [first, second] = result.rates!.time;
  expect(Math.abs(dashed!.data.values[1]!.x - yields)).toBeLessThanOrEqual(second! - first!);
  expect(namesOf(figure).map(({ text }) => text)).toEqual(['limit up to the proof strength']);
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
