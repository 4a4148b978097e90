import { describe, expect, test } from 'vitest';
import { analyseCompression, analyseTension, round, testingRates, type TensionOptions } from '../../src/index.js';
import { renderHtml } from '../../src/report/index.js';
import { seeded } from '../support/random.js';

const section = round({ diameter: 10 });
const Le = 50;
const Lc = 60;
const piece = { section, gaugeLength: 50, extensometerLength: Le, parallelLength: Lc };

/** A stretch of the test at one strain rate, up to a strain. */
type Stretch = readonly [rate: number, upTo: number];
type Law = (strain: number) => number;

/** Swift's law above a modulus: stress by the plastic strain that leaves the rest elastic, and a neck from a strain on. */
const smooth =
  (modulus: number, strength: number): Law =>
  (e) => {
    const first = strength * 0.3;
    if (e <= first / modulus) return modulus * e;
    const at = Math.min(e, 0.2);
    let [low, high] = [0, at];
    for (let k = 0; k < 60; k += 1) {
      const plastic = (low + high) / 2;
      if (plastic + (first + 0.7 * strength * Math.sqrt(plastic / 0.2)) / modulus < at) low = plastic;
      else high = plastic;
    }
    const stress = first + 0.7 * strength * Math.sqrt(low / 0.2);
    return stress - (e > 0.2 ? 2 * strength * (e - 0.2) : 0);
  };

/** Mild steel: ReH 320, a dip, a level of 280 up to 1.8 %, then up to 420 MPa at 20 %. */
const yielding: Law = (e) => {
  const upper = 320 / 206_000;
  if (e <= upper) return 206_000 * e;
  const d = e - upper;
  if (d < 2e-4) return 320 - (50 * d) / 2e-4;
  if (d < 6e-4) return 270 + (10 * (d - 2e-4)) / 4e-4;
  if (e < 0.018) return 280;
  const x = Math.min(1, (e - 0.018) / 0.182);
  return 280 + 140 * (1 - (1 - x) ** 2.5) - (e > 0.2 ? 1000 * (e - 0.2) : 0);
};

interface Hold {
  readonly at: number;
  readonly seconds: number;
}

/** Strain over time, with exact rates; beyond the elastic part the stress relaxes by 1 % while the drive stands. */
function pulled(law: Law, stretches: readonly Stretch[], hertz: number, hold?: Hold) {
  const strain: number[] = [];
  const stress: number[] = [];
  let e = 0;
  let held = false;
  for (const [rate, upTo] of stretches)
    for (; e < upTo; e += rate / hertz) {
      strain.push(e);
      stress.push(law(e));
      if (!hold || held || e < hold.at) continue;
      held = true;
      const count = hold.seconds * hertz;
      for (let k = 1; k <= count; k += 1) {
        strain.push(e);
        stress.push(law(e) * (1 - ((e < 0.001 ? 0 : 0.01) * k) / count));
      }
    }
  return { strain, stress, time: strain.map((_, i) => i / hertz) };
}

/** The analysis of it by an extensometer. */
const tension = (
  law: Law,
  stretches: readonly Stretch[],
  { hertz = 20, hold, ...options }: TensionOptions & { hertz?: number; hold?: Hold } = {},
) => {
  const { strain, stress, time } = pulled(law, stretches, hertz, hold);
  return analyseTension({ force: stress.map((R) => R * section.area), extension: strain.map((e) => e * Le), time }, piece, options);
};

const shareOf = ({ loading }: ReturnType<typeof tension>, stage: string, control: string) =>
  loading!.controls.find((one) => one.stage === stage && one.control === control)!;
const codes = ({ findings }: ReturnType<typeof tension>) => findings.map(({ code }) => code).filter((code) => /-rate-/.test(code));

describe('stress rates bind method B only', () => {
  // ISO 6892-1, method A, range 2 (from memory): 0.00025 1/s is E times as many MPa/s
  test.each([70_000, 110_000, 120_000, 206_000])(
    'a test at 0.00025 1/s throughout of a metal of %i MPa is A222, and nothing is said',
    (modulus) => {
      const result = tension(smooth(modulus, 500), [[0.00025, 0.25]]);
      expect(result.loading!.stages[0]!.stressRate.median).toBeCloseTo(0.00025 * modulus, 1);
      expect(result.loading!.designations[0]).toBe('A222');
      expect(codes(result)).toEqual([]);
    },
  );

  test('outside both methods it is said', () => {
    // 0.00012 1/s lies between ranges 1 (to 0.000084) and 2 (from 0.0002); 1.08 MPa/s below 2
    const result = tension(smooth(9000, 300), [[0.00012, 0.25]]);
    expect(codes(result)).toContain('stress-rate-outside');
  });
});

test('a window of too few samples for local rates is judged by its rate as a whole, which is all that is said', () => {
  // a stage takes three stretches of five steps: at 0.001 1/s and 6 samples a second the 150 MPa up to where it bends hold 11
  const { strain, stress, time } = pulled(smooth(81_000, 500), [[0.001, 0.25]], 6);
  const { loading, findings, elasticSlope } = analyseTension({ force: stress.map((R) => R * section.area), strain, time }, piece);
  expect(loading!.stages.map(({ stage }) => stage)).not.toContain('elastic');
  const said = findings.filter(({ code }) => code.includes('stress-rate'));
  expect(said.map(({ code, severity }) => [code, severity])).toEqual([['mean-stress-rate-outside', 'caution']]);
  expect(Number(said[0]!.values['rate']) / (0.001 * elasticSlope!.value)).toBeCloseTo(1, 6);
  expect(said[0]!.message).not.toContain('%');
});

describe('the limits of the stress rate follow the metal', () => {
  const { soft, stiff } = testingRates.methodB;
  const limits = (modulus: number, options: TensionOptions = {}) =>
    shareOf(tension(smooth(modulus, 500), [[0.00015, 0.25]], options), 'elastic', 'ISO 6892-1 method B').limits;

  test('by the modulus of the piece where no family is given', () => {
    expect(limits(206_000)).toEqual(stiff);
    expect(limits(70_000)).toEqual(soft);
  });

  test('by the family before a slope that does not fit it', () => {
    // 81 GPa of a steel; 12 MPa/s lie in both, 31 MPa/s (0.00038 1/s, in no range of method A) in that of steel alone
    expect(limits(81_000, { family: 'structural-steel' })).toEqual(stiff);
    const rate: readonly Stretch[] = [[0.00038, 0.25]];
    expect(codes(tension(smooth(81_000, 500), rate, { family: 'structural-steel' }))).toEqual([]);
    expect(codes(tension(smooth(81_000, 500), rate))).toEqual(['stress-rate-outside']);
  });

  test('by neither where the slope holds the frame: outside both alone is said, and no rate of method B is named', () => {
    const by = (rate: number, options: TensionOptions = {}) => {
      const { strain, stress, time } = pulled(smooth(81_000, 500), [[rate, 0.25]], 20);
      return analyseTension({ force: stress.map((R) => R * section.area), travel: strain.map((e) => e * Lc), time }, piece, options);
    };
    const between = by(0.00038);
    expect(shareOf(between, 'elastic', 'ISO 6892-1 method B').limits).toEqual([soft[0], stiff[1]]);
    expect(codes(between)).toEqual([]);
    expect(between.loading!.designations).toEqual([]);
    expect(by(0.00038, { family: 'structural-steel' }).loading!.designations).toEqual(['B31']);
    // 81 MPa/s
    expect(codes(by(0.001))).toEqual(['stress-rate-outside']);
    // 12 MPa/s are right for any metal
    expect(by(0.00015).loading!.designations).toEqual(['B12']);
  });
});

describe('for Rm ranges 2, 3 and 4 of method A', () => {
  test.each([0.005, 0.01, 0.015, 0.02])('range 2, then 4 from a strain of %d on, is A224', (at) => {
    const result = tension(smooth(206_000, 500), [
      [0.00025, at],
      [0.0067, 0.25],
    ]);
    expect(result.loading!.designations[0]).toBe('A224');
    expect(shareOf(result, 'hardening', 'ISO 6892-1 method A, range 2').met).toBe(false);
  });

  test('the last range is named; what lies in none counts against all', () => {
    const ending = (...more: readonly Stretch[]) => tension(smooth(206_000, 500), [[0.00025, 0.02], ...more]).loading!.designations[0];
    expect(ending([0.002, 0.25])).toBe('A223');
    expect(ending([0.002, 0.05], [0.0067, 0.25])).toBe('A224');
    expect(ending([0.0067, 0.05], [0.002, 0.25])).toBe('A223');
    // 0.001 1/s lies between ranges 2 and 3; the switch comes after Rp0.2
    expect(ending([0.001, 0.25])).toMatch(/^B/);
  });
});

test('noise of the readings does not hide the range of method A', () => {
  const random = seeded(7);
  const { strain, stress, time } = pulled(
    smooth(206_000, 500),
    [
      [0.00025, 0.008],
      [0.0067, 0.25],
    ],
    50,
  );
  // 0.2 µm on 50 mm: at 50 samples per second a slope of five of them is off by a quarter, one of fifteen by a twentieth
  const record = {
    force: stress.map((R) => R * section.area + 10 * random.normal()),
    extension: strain.map((e) => e * Le + 2e-4 * random.normal()),
    time,
  };
  const { loading } = analyseTension(record, piece);
  expect(loading!.designations[0]).toBe('A224');
  expect(loading!.stages[0]!.strainRate.lowest).toBeGreaterThan(0.8 * 0.00025);
});

describe('yielding', () => {
  test('by travel over the parallel length, where an extensometer sees the band late', () => {
    const { strain, stress, time } = pulled(yielding, [[0.00025, 0.25]], 20);
    const [from, to] = [0.003, 0.017];
    // a tenth of the motion until the band comes, then the rest
    const seen = strain.map((e) => {
      const x = (e - from) / (to - from);
      if (x <= 0 || x >= 1) return e;
      return from + (to - from) * (x < 0.5 ? 0.1 * x : 0.05 + 1.9 * (x - 0.5));
    });
    const record = { force: stress.map((R) => R * section.area), extension: seen.map((e) => e * Le), time };
    const alone = analyseTension(record, piece);
    const beside = analyseTension({ ...record, travel: strain.map((e) => e * Lc) }, piece);
    expect(beside.extensionBasis).toBe('extensometer');
    expect(shareOf(alone, 'yield', 'ISO 6892-1 method A, range 2').met).toBe(false);
    expect(shareOf(beside, 'yield', 'ISO 6892-1 method A, range 2').share).toBe(1);
    expect(beside.loading!.stages[1]!.strainRate.median).toBeCloseTo(0.00025, 9);
    expect(beside.loading!.designations[0]).toBe('A222');
    expect(codes(beside)).toEqual([]);
  });

  test.each([
    // 0.0001 lies below method B (0.00025) and range 2 (0.0002); 0.00022 in range 2; 0.0005 in method B
    [0.0001, ['strain-rate-low']],
    [0.00022, []],
    [0.0005, []],
  ])('at %d 1/s with ReL reported gives %j', (rate, expected) => {
    const result = tension(yielding, [
      [0.00025, 0.0014],
      [rate, 0.0182],
      [0.0067, 0.25],
    ]);
    expect(result.lowerYieldStrength).toBeDefined();
    expect(codes(result)).toEqual(expected);
    const found = result.findings.find(({ code }) => code === 'strain-rate-low');
    if (!found) return;
    expect(found.severity).toBe('caution');
    expect(Number(found.values['rate'])).toBeCloseTo(rate, 5);
    expect(found.values['lowest']).toBe(testingRates.methodB.lowerYield[0]);
  });
});

describe('a hold', () => {
  // in the elastic window, then between it and Rp0.2
  test.each([0.0006, 0.002])('at a strain of %d is no part of a rate', (at) => {
    const law = smooth(206_000, 500);
    const rates = ({ loading }: ReturnType<typeof tension>) =>
      loading!.stages.map(({ strainRate, stressRate }) => [strainRate.median, stressRate.median]);
    const through = tension(law, [[0.00025, 0.25]], { hertz: 50 });
    const held = tension(law, [[0.00025, 0.25]], { hertz: 50, hold: { at, seconds: 30 } });
    expect(held.findings.map(({ code }) => code)).toContain('pause');
    expect(held.loading!.designations).toEqual(through.loading!.designations);
    expect(codes(held)).toEqual([]);
    rates(held).forEach(([strain, stress], k) => {
      expect(strain).toBeCloseTo(rates(through)[k]![0]!, 8);
      // the line may end elsewhere beside a hold, and with it a stage whose stress rate changes along it
      if (k === 0) expect(stress! / rates(through)[k]![1]!).toBeCloseTo(1, 2);
    });
  });
});

describe('a page says which control is nearest, and how much of the stage keeps to it', () => {
  test('tension', () => {
    // begun too fast for any control, then in range 2
    const result = tension(smooth(110_000, 500), [
      [0.0004, 0.0005],
      [0.00025, 0.25],
    ]);
    const { share } = shareOf(result, 'elastic', 'ISO 6892-1 method A, range 2');
    expect(share).toBeGreaterThan(0.4);
    expect(share).toBeLessThan(0.9);
    const page = renderHtml(result);
    const told = /nearest is ISO 6892-1 method A, range 2, which ([\d.]+)\s% of it keep to, where 90\s% are wanted\./.exec(page);
    expect(Number(told?.[1]) / 100).toBeCloseTo(share, 2);
  });

  test('compression by its own control', () => {
    const { strain, stress, time } = pulled((e) => (e < 0.004 ? 70_000 * e : 280 + 1400 * (e - 0.004)), [[0.01, 0.03]], 500);
    const result = analyseCompression(
      { force: stress.map((R) => -R * section.area), extension: strain.map((e) => -15 * e), time },
      { section, height: 15 },
    );
    const page = renderHtml(result);
    expect(page).toContain('nothing of it is within ASTM E9.');
    expect(page).not.toContain('ISO 6892-1 method');
  });
});
