import { describe, expect, test } from 'vitest';
import { pauseFindings } from '../../src/methods/loading/paceFindings.js';
import { analyseBending, analyseCompression, analyseTension, rectangular, round, testingRates } from '../../src/index.js';
import { renderHtml } from '../../src/report/index.js';
import { simulateTension, type SimulatedHand } from '../../src/simulate/index.js';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const material = { modulus: 205_000, yieldStress: 320, hardening: { law: 'swift' as const, prestrain: 0.02, exponent: 0.16 } };
/** A test on a stiff frame with an extensometer: the crosshead's speed is the piece's, over its parallel length. */
const pulled = (hand: SimulatedHand, clock = true) => {
  const { record } = simulateTension({ material, piece, hand, logger: { rate: 50, extensometer: true } });
  const { time, ...rest } = record;
  return analyseTension(clock && time ? { ...rest, time } : rest, { ...piece, extensometerLength: 40 });
};

describe('how a piece was loaded', () => {
  test('by strain rate in range 2 up to yield and range 4 beyond: the local rates are those of the hand', () => {
    const { loading } = pulled({ speed: 48 * 0.00025, speedAfterYield: 48 * 0.0067 });
    const [elastic, yielding, hardening] = loading!.stages;
    expect(elastic!.strainRate.median).toBeCloseTo(0.00025, 7);
    expect(elastic!.stressRate.median).toBeCloseTo(205_000 * 0.00025, 1);
    expect(yielding!.stage).toBe('yield');
    expect(hardening!.strainRate.median).toBeCloseTo(0.0067, 5);
    // 50 samples a second, the first of them at 0 s
    for (const { range, time } of loading!.stages)
      range.forEach((sample, k) => {
        expect(time[k]).toBeCloseTo(sample / 50, 9);
      });
    expect(loading!.designations[0]).toBe('A224');
    // 51 MPa/s is within method B for a stiff material too
    expect(loading!.designations[1]).toBe('B51');
    const met = loading!.controls.filter((one) => one.met).map(({ control, stage }) => `${stage}: ${control}`);
    expect(met).toContain('elastic: ISO 6892-1 method A, range 2');
    expect(met).toContain('elastic: ASTM E8/E8M control B');
    expect(met).not.toContain('elastic: ASTM E8/E8M control A');
  });

  test('too fast for any control', () => {
    const { loading, findings } = pulled({ speed: 48 * 0.01, speedAfterYield: 48 * 0.05 });
    expect(loading!.controls.filter((one) => one.met)).toEqual([]);
    expect(loading!.designations).toEqual([]);
    const told = findings.filter(({ code }) => /-rate-/.test(code)).map(({ code, values }) => [code, values['where']]);
    // by strain, which says by stress
    expect(told).toEqual([
      ['strain-rate-high', 'up to yield'],
      ['strain-rate-high', 'after yield'],
    ]);
  });

  test('a rate exactly at a limit is within; without a clock nothing is said', () => {
    const [low, high] = testingRates.strainRanges[1]!.limits;
    expect([low, high]).toEqual([0.0002, 0.0003]);
    expect(pulled({ speed: 0.012 }, false).loading).toBeUndefined();
  });
});

/** Elastic to 300 MPa, then along a gentle line; by the hand's own clock, which may stand and may pump. */
const bent = (slope: number, strain: number) => (strain < 300 / slope ? slope * strain : 300 + 0.02 * slope * (strain - 300 / slope));
interface Hand {
  /** [1/s] */
  readonly rate: number;
  /** Strain at which the drive stands, and for how long [s]. */
  readonly pause?: { readonly at: number; readonly seconds: number };
  /** Depth of the strokes. */
  readonly strokes?: number;
}
const byHand = (slope: number, until: number, { rate, pause, strokes = 0 }: Hand, samples = 2000) => {
  const strain = Array.from({ length: samples }, (_, i) => (i * until) / (samples - 1));
  const time: number[] = [];
  const places: number[] = [];
  let t = 0;
  strain.forEach((e, i) => {
    if (i > 0) t += (e - strain[i - 1]!) / (rate * (1 + strokes * Math.sin(i / 13)));
    places.push(e);
    time.push(t);
    if (pause && e >= pause.at && strain[i - 1]! < pause.at)
      for (let k = 0; k < 50; k += 1) {
        t += pause.seconds / 50;
        places.push(e);
        time.push(t);
      }
  });
  return { time, strain: places, stress: places.map((e) => bent(slope, e)) };
};
const codesOf = ({ findings }: { readonly findings: readonly { readonly code: string }[] }) => findings.map(({ code }) => code);

describe('compression', () => {
  const compressed = (hand: Hand) => {
    const { time, strain, stress } = byHand(70_000, 0.02, hand);
    const { area } = round({ diameter: 10 });
    return analyseCompression(
      { force: stress.map((R) => -R * area), extension: strain.map((e) => -15 * e), time },
      { section: round({ diameter: 10 }), height: 15 },
    );
  };

  test('at the rate of ASTM E9, in all three stages; the page says so', () => {
    const result = compressed({ rate: 0.005 / 60 });
    const { stages, controls, designations } = result.loading!;
    expect(stages.map(({ stage }) => stage)).toEqual(['elastic', 'yield', 'hardening']);
    expect(stages[0]!.strainRate.median).toBeCloseTo(0.005 / 60, 9);
    expect(stages[0]!.stressRate.median).toBeCloseTo((70_000 * 0.005) / 60, 5);
    expect(stages[2]!.stressRate.median).toBeCloseTo((0.02 * 70_000 * 0.005) / 60, 5);
    expect(stages[2]!.range[1]).toBe(1999);
    expect(controls.map(({ control, met, share }) => [control, met, share])).toEqual(Array(3).fill(['ASTM E9', true, 1]));
    expect(designations).toEqual([]);
    expect(renderHtml(result)).toContain('within ASTM E9');
    expect(codesOf(result)).not.toContain('uneven-loading');
  });

  test('too fast; and without a clock nothing is said', () => {
    expect(compressed({ rate: 0.01 / 60 }).loading!.controls.some(({ met }) => met)).toBe(false);
    const { force, extension } = { force: [0, 1, 2].map((one) => 1000 * one), extension: [0, 1e-4, 2e-4] };
    expect(analyseCompression({ force, extension }, { section: round({ diameter: 10 }), height: 15 }).loading).toBeUndefined();
  });

  test('a pause within the elastic window, one at yield, one later', () => {
    const elastic = compressed({ rate: 1e-4, pause: { at: 0.002, seconds: 5 } });
    expect(codesOf(elastic).filter((code) => code.startsWith('pause'))).toEqual(['pause', 'pause-in-elastic-window']);
    // what stood is told as a pause; before and after it moved evenly
    expect(codesOf(elastic)).not.toContain('uneven-loading');
    expect(elastic.findings.find(({ code }) => code === 'pause-in-elastic-window')!.values['duration']).toBeCloseTo(5, 6);
    const yielding = compressed({ rate: 1e-4, pause: { at: 0.0065, seconds: 5 } });
    expect(codesOf(yielding).filter((code) => code.startsWith('pause'))).toEqual(['pause', 'pause-near-yield']);
    const late = compressed({ rate: 1e-4, pause: { at: 0.015, seconds: 5 } });
    expect(codesOf(late).filter((code) => code.startsWith('pause'))).toEqual(['pause']);
  });

  test('a hand that pumps unevenly', () => {
    const found = compressed({ rate: 1e-4, strokes: 0.9 }).findings.find(({ code }) => code === 'uneven-loading');
    expect(found!.severity).toBe('caution');
    // and so it is with a pause between its strokes
    expect(codesOf(compressed({ rate: 1e-4, strokes: 0.9, pause: { at: 0.002, seconds: 5 } }))).toContain('uneven-loading');
    expect(compressed({ rate: 1e-4, strokes: 0.4 }).findings.find(({ code }) => code === 'uneven-loading')!.severity).toBe('note');
  });
});

describe('bending', () => {
  const piece = { section: rectangular({ width: 10, thickness: 4 }), setup: { points: 3 as const, span: 64 } };
  // three points: motion over strain of the outer fibre is span² / (6 thickness), force over stress 2 b h² / (3 span)
  const length = 64 ** 2 / (6 * 4);
  const perStress = (2 * 10 * 4 ** 2) / (3 * 64);
  const beam = (hand: Hand, column: 'deflection' | 'strain' = 'deflection') => {
    const { time, strain, stress } = byHand(70_000, 0.02, hand);
    return analyseBending(
      { force: stress.map((R) => R * perStress), [column]: column === 'strain' ? strain : strain.map((e) => e * length), time },
      piece,
    );
  };

  test('at a strain of the outer fibre of 1 % a minute, and at the speed of a bend test', () => {
    const slow = beam({ rate: 0.01 / 60 });
    expect(slow.loading!.stages[0]!.strainRate.median).toBeCloseTo(0.01 / 60, 9);
    expect(new Set(slow.loading!.controls.filter(({ met }) => met).map(({ control }) => control))).toEqual(
      new Set(['ISO 178; ASTM D790 procedure A']),
    );
    const fast = beam({ rate: 1 / length }).loading!.controls.filter(({ met }) => met);
    expect(new Set(fast.map(({ control }) => control))).toEqual(new Set(['ISO 7438, in dispute']));
    expect(fast[0]!.limits[0] * length).toBeCloseTo(0.8, 12);
    expect(renderHtml(slow)).toContain('within ISO 178');
  });

  test('a strain gauge tells no speed of the former', () => {
    const { controls } = beam({ rate: 0.01 / 60 }, 'strain').loading!;
    expect(new Set(controls.map(({ control }) => control))).toEqual(new Set(['ISO 178; ASTM D790 procedure A']));
  });

  test('pauses and strokes', () => {
    const paused = beam({ rate: 1e-4, pause: { at: 0.002, seconds: 5 } });
    expect(codesOf(paused).filter((code) => code.startsWith('pause'))).toEqual(['pause', 'pause-in-elastic-window']);
    expect(codesOf(paused)).not.toContain('uneven-loading');
    const yielding = beam({ rate: 1e-4, pause: { at: 0.0065, seconds: 5 } });
    expect(codesOf(yielding)).toContain('pause-near-yield');
    expect(codesOf(beam({ rate: 1e-4, strokes: 0.9 }))).toContain('uneven-loading');
  });
});

describe('pauses of a hand that pumps', () => {
  const curve = { strain: Float64Array.from({ length: 200 }, (_, i) => i / 1e4), stress: Float64Array.from({ length: 200 }, (_, i) => i) };
  const none = { ok: false } as never;
  const pausesAt = (count: number) =>
    Array.from({ length: count }, (_, k) => ({ range: [10 * k, 10 * k + 4] as const, duration: 1 + (k % 7), fall: 0 }));
  const at = (strain: number) => [{ symbol: 'Rp0.2', strain, value: 1e4 * strain } as never];

  test('a few are told one by one, with the stress before and after', () => {
    const found = pauseFindings(pausesAt(5), curve, [], none);
    expect(found.map(({ code }) => code)).toEqual(Array(5).fill('pause'));
    expect(found[1]!.message).toBe('The crosshead stood still for 2 s at a strain of 0.001; the stress went from 10 to 14 MPa.');
  });

  test('many are one finding with their number and the longest, and those near a yield value another', () => {
    const found = pauseFindings(pausesAt(18), curve, at(0.01), { ok: true, first: 0, last: 50 } as never);
    expect(found.map(({ code }) => code)).toEqual(['pauses-many', 'pause-in-elastic-window', 'pause-near-yield']);
    expect(found[0]!.message).toBe(
      'The crosshead stood still 18 times, 66 s in all, from sample 0 to 174; the longest pause is 7 s at a strain of 0.006.',
    );
    expect(found[1]!.values).toMatchObject({ count: 5, duration: 5 });
    expect(found[2]!.values).toMatchObject({ count: 5, duration: 6, symbol: 'Rp0.2' });
  });
});
