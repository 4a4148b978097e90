import { describe, expect, test } from 'vitest';
import {
  analyseBending,
  analyseCompression,
  analyseTension,
  rectangular,
  round,
  type TensionColumns,
  type TensionOptions,
  type TensionResult,
} from '../../src/index.js';
import { knownCurve } from '../../bench/scenarios.js';
import { randomNumbers } from '../../src/numeric/index.js';

const section = round({ diameter: 8 });
const piece = { section, gaugeLength: 40, extensometerLength: 25, parallelLength: 48 };

/** An invented metal by Ramberg and Osgood, 70 GPa and 270 MPa, with a toe, noise of the stress [MPa] and steps of the strain. */
function record({ samples = 800, exponent = 20, toe = [0, 1] as readonly [number, number], noise = 0, step = 0, proof = 270 } = {}) {
  const { normal } = randomNumbers(7);
  const stress = Array.from({ length: samples }, (_, i) => (1.08 * proof * i) / samples);
  const strain = stress.map((R) => R / 70_000 + 0.002 * (R / proof) ** exponent + toe[0] * (1 - Math.exp(-R / (toe[1] * proof))));
  return {
    force: stress.map((R) => section.area * (R + noise * normal())),
    extension: strain.map((e) => 25 * (step > 0 ? Math.round(e / step) * step : e)),
  };
}

const travel = ({ force, extension }: ReturnType<typeof record>, frame = 2e-5): TensionColumns => ({
  force,
  travel: extension.map((x, i) => (48 / 25) * x + frame * force[i]!),
});

/** An extensometer that slips back by 5 µm at 150 MPa. */
function slipped(): TensionColumns {
  const { strain, stress } = knownCurve('steel', 2000, 1);
  const at = stress.findIndex((R) => R >= 150);
  return { force: stress.map((R) => section.area * R), extension: strain.map((e, i) => 25 * e - (i >= at ? 0.0025 : 0)) };
}

const copper = { exponent: 3.5, proof: 60 };

describe('wherever E is withheld, a finding of the modulus says so', () => {
  test.each<[string, string, TensionColumns, TensionOptions?, string?]>([
    ['fewer samples than asked for', 'modulus-of-few-points', record(), { thresholds: { leastElasticPoints: 9999 } }],
    ['fewer samples than eight', 'modulus-of-few-points', record({ samples: 5 })],
    ['nothing tells of a bend', 'linear-part-unknown', record({ samples: 5 }), { thresholds: { leastElasticPoints: 3 } }],
    ['a slope that scatters', 'modulus-of-scatter', record({ samples: 60, noise: 60 })],
    ['few steps of the strain', 'strain-steps-few', record({ step: 1e-3 })],
    ['travel with the frame in it', 'modulus-includes-frame-compliance', travel(record())],
    ['a compliance that leaves nothing of the piece', 'modulus-includes-frame-compliance', travel(record()), { frameCompliance: 20 }],
    ['a compliance that takes nothing out', 'compliance-vanishing', travel(record()), { frameCompliance: 2e-11 }],
    ['a slip of the extensometer', 'slope-over-slip', slipped()],
    ['the slope falls', 'no-linear-part', record(copper), {}, 'slope-falls'],
    ['windows lie apart', 'no-linear-part', record({ ...copper, noise: 3, samples: 300 }), {}, 'windows-apart'],
    ['a toe reaches up', 'no-linear-part', record({ toe: [3e-2, 0.5], exponent: 14 }), {}, 'toe-reaches-up'],
    ['a bent window of eight', 'no-linear-part', record({ samples: 10, exponent: 8 }), {}, 'window-bent'],
    ['yielding and toe balance', 'no-linear-part', record({ exponent: 5, proof: 60, toe: [3e-4, 0.1] }), {}, 'yields-early'],
    ['a given window in yielding', 'window-not-linear', record(), { modulus: { window: { by: 'stress', from: 200, to: 265 } } }],
  ])('%s: %s', (_, code, columns, options, why) => {
    const result: TensionResult = analyseTension(columns, piece, options);
    expect(result.elasticSlope).toBeDefined();
    expect(result.modulus).toBeUndefined();
    if (why !== undefined) expect(result.modulusWindow!.linearPart!.why).toBe(why);
    const said = result.findings.filter(({ field, message }) => field === 'modulus' && message.includes('E is withheld'));
    expect(said.map((one) => one.code)).toContain(code);
  });

  test('without a line: E is named with mE, and Ec and Eb in their tests', () => {
    const falling = { force: [50, 40, 30, 20, 10], extension: [0, 1, 2, 3, 4] };
    const named = ({ findings }: Pick<TensionResult, 'findings'>) =>
      findings.filter(({ field, code }) => field === 'modulus' && code === 'not-determined').map(({ message }) => message);
    expect(named(analyseTension(falling, piece))).toEqual(['Not determined: E; there is no elastic line.']);
    expect(named(analyseCompression(falling, { section, height: 20, extensometerLength: 15 }))).toEqual([
      'Not determined: Ec; there is no elastic line.',
    ]);
    const beam = { section: rectangular({ width: 10, thickness: 4 }), setup: { points: 3 as const, span: 64 } };
    expect(named(analyseBending({ force: falling.force, deflection: falling.extension }, beam))).toEqual([
      'Not determined: Eb; there is no elastic line.',
    ]);
  });

  test('what is wanted and what is least are said as asked for', () => {
    const of = (options: TensionOptions, code: string) =>
      analyseTension(record(), piece, options).findings.find((one) => one.code === code);
    const { points } = analyseTension(record(), piece).modulusWindow!;
    expect(of({ thresholds: { elasticPoints: 2000 } }, 'few-points-in-elastic-part')).toMatchObject({
      severity: 'caution',
      message: `The elastic line rests on few samples: ${points} where 2000 are wanted.`,
    });
    expect(of({ thresholds: { leastElasticPoints: 9999 } }, 'modulus-of-few-points')).toMatchObject({
      severity: 'fault',
      values: { points, least: 9999 },
    });
    // of two things that say the same, the heavier is said
    expect(of({ thresholds: { elasticPoints: 2000, leastElasticPoints: 9999 } }, 'few-points-in-elastic-part')).toBeUndefined();
  });
});
