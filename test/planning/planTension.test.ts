import { describe, expect, test } from 'vitest';
import { planTension, rectangular, round, sectionFromArea, testingRates, type TensionPlanInput, type TestFrame } from '../../src/index.js';
import { refusal } from '../support/thrown.js';

const frame: TestFrame = {
  capacity: 25_000,
  stroke: 60,
  slack: 1,
  compliance: 2e-5,
  bore: 40,
  rod: 20,
  reliefPressure: 28,
  transmitterRange: 25,
  verifiedFrom: 2000,
  forceError: 0.01,
  forceStep: 6.1,
  travelStep: 0.001,
  oilVolume: 100e3,
  drive: { kind: 'screw', travelPerTurn: 0.5 },
};
const d8 = round({ diameter: 8 });
const soft = { modulus: 210_000, yieldStrength: [235, 265], tensileStrength: [360, 390], elongation: 0.3, exponent: 0.2 } as const;
const base: TensionPlanInput = { expected: soft, section: d8, frame, lengths: { gaugeLength: 40, parallelLength: 48 } };
const plan = (more: Partial<TensionPlanInput> = {}, frameMore: Partial<TestFrame> = {}) =>
  planTension({ ...base, ...more, frame: { ...frame, ...frameMore } });
const codes = (...given: Parameters<typeof plan>) => plan(...given).findings.map(({ code, severity }) => `${severity} ${code}`);

describe('force, travel, energy', () => {
  test('the upper strength counts for the frame, the lower yield for the bottom of its range', () => {
    const { force, yieldForce } = plan();
    expect(force.greatest).toBeCloseTo(390 * d8.area, 6);
    expect(force.least).toBeCloseTo(235 * d8.area, 6);
    expect(yieldForce).toEqual([force.least, 265 * d8.area]);
    expect(force.utilisation).toBeCloseTo((390 * d8.area) / 25_000, 12);
    const area = (Math.PI * (1600 - 400)) / 4;
    expect(force.pressure).toBeCloseTo((390 * d8.area) / area, 9);
    expect(force.shareOfRelief).toBeCloseTo(force.pressure! / 28, 12);
    expect(force.shareOfTransmitter).toBeCloseTo(force.pressure! / 25, 12);
  });

  test('25 kN on the annulus of 40 and 20 is beyond a transmitter of 250 bar', () => {
    const strong = plan({ expected: { ...soft, tensileStrength: 25_000 / d8.area } });
    expect(strong.force.pressure).toBeCloseTo(26.5, 1);
    expect(strong.findings.filter(({ code }) => code === 'pressure-near-limit').map(({ severity }) => severity)).toEqual([
      'caution',
      'fault',
    ]);
  });

  test('largest sections at 80 %; a flat of the given thickness', () => {
    const strength = plan({ expected: { ...soft, tensileStrength: 500 }, section: rectangular({ width: 12, thickness: 2 }), lengths: {} });
    expect(strength.largest.map(({ shape, dimension }) => [shape, dimension])).toEqual([
      ['round', 7.1],
      ['square', 6.3],
      ['flat', 20],
    ]);
  });

  test('travel holds slack, frame, stretching and neck; brittle metals form no neck', () => {
    const { travel } = plan();
    expect(travel.frame).toBeCloseTo(2e-5 * 390 * d8.area, 9);
    expect(travel.uniform).toBeCloseTo(48 * (Math.exp(0.2) - 1), 9);
    expect(travel.neck).toBeCloseTo(4, 9);
    const iron = planTension({ family: 'grey-iron', section: d8, frame });
    expect(iron.travel.neck).toBe(0);
    expect(iron.yieldForce).toBeUndefined();
    expect(iron.stages.map(({ stage }) => stage)).toEqual(['elastic', 'strength']);
    expect(iron.pace.at(-1)).toMatchObject({ action: 'maximum', stage: 'elastic' });
    expect(iron.answers.find(({ symbols }) => symbols.includes('Rp0.2'))?.verdict).toBe('not');
  });

  test('energy of frame and piece, and of the oil where its volume is known; at the capacity at most', () => {
    const { energy, force } = plan();
    const F = force.greatest;
    expect(energy.frameAndPiece).toBeCloseTo((F ** 2 / 2) * (2e-5 + 48 / (210_000 * d8.area)), 6);
    expect(energy.oil).toBeCloseTo((force.pressure! ** 2 * 100e3) / 2800, 6);
    expect(energy.total).toBeCloseTo(energy.frameAndPiece + energy.oil!, 9);
    expect(plan({}, { oilVolume: undefined }).energy.oil).toBeUndefined();
    const strong = plan({ expected: { ...soft, tensileStrength: 900 } });
    expect(strong.energy.frameAndPiece).toBeCloseTo((25_000 ** 2 / 2) * (2e-5 + 48 / (210_000 * d8.area)), 6);
  });
});

describe('where the frame stops', () => {
  // 540 MPa in the middle on 37.5 mm² are 20.25 kN; 506 mm² of piston make 10 kN of 19.77 MPa
  const flat: TensionPlanInput = {
    family: 'structural-steel',
    section: rectangular({ width: 12.5, thickness: 3 }),
    frame: { capacity: 10_000, compliance: 4e-5, bore: 30, rod: 16, reliefPressure: 20 },
  };
  const annulus = (Math.PI * (900 - 256)) / 4;

  test('the pace sheet ends at the capacity, on the line between its rows', () => {
    const { pace, force } = planTension(flat);
    const last = pace.at(-1)!;
    expect(last).toMatchObject({ action: 'stop', stage: 'yield', force: 10_000, pressure: 10_000 / annulus });
    expect([force.stop, force.stopPressure]).toEqual([10_000, 10_000 / annulus]);
    const [wide, before] = [planTension({ ...flat, frame: { ...flat.frame, capacity: 25_000, reliefPressure: 60 } }).pace, pace.at(-2)!];
    const next = wide[pace.length - 1]!;
    expect(pace.slice(0, -1)).toEqual(wide.slice(0, pace.length - 1));
    expect(wide.at(-1)!.action).toBe('maximum');
    expect((last.time - before.time) / (next.time - before.time)).toBeCloseTo((10_000 - before.force) / (next.force - before.force), 9);
  });

  test('or where the relief valve opens before', () => {
    const { pace, force } = planTension({ ...flat, frame: { ...flat.frame, reliefPressure: 10 } });
    expect(force.stop).toBeCloseTo(10 * annulus, 9);
    expect(pace.at(-1)).toMatchObject({ action: 'stop', stage: 'elastic', pressure: expect.closeTo(10, 9) as number });
    expect(Math.max(...pace.map((row) => row.force))).toBe(force.stop);
  });

  test('a maximum that is just the capacity is no stop; a valve that opens below the dead weight stops at once', () => {
    expect(planTension({ ...flat, frame: { capacity: 20_250 } }).pace.at(-1)).toMatchObject({ action: 'maximum', force: 20_250 });
    const heavy = planTension({ ...flat, frame: { ...flat.frame, tareForce: 20_000 } }).pace;
    expect(heavy.map(({ action, time, force }) => [action, time, force])).toEqual([
      ['start', 0, 0],
      ['stop', 0, 0],
    ]);
  });
});

describe('lengths', () => {
  test('what the standard asks for where nothing is given', () => {
    expect(plan({ lengths: undefined }).lengths).toEqual({
      proportionalLength: expect.closeTo(40.057, 3) as number,
      gaugeLength: 40,
      leastParallelLength: 44,
      parallelLength: 44,
      effectiveLength: 44,
      leastFilletRadius: 6,
    });
    expect(plan({ lengths: { arbitration: true } }).lengths.parallelLength).toBe(56);
    expect(plan({ lengths: { coefficient: 11.3 } }).lengths.gaugeLength).toBe(80);
  });
});

describe('speeds', () => {
  test('range 2 with the give of the frame, then without; range 4 after yield', () => {
    const [elastic, yielding, strength] = plan().stages;
    expect(elastic).toMatchObject({ stage: 'elastic', strainRate: 0.00025, speed: expect.closeTo(0.0647788, 7) as number });
    expect(elastic!.stressRate).toBeCloseTo(52.5, 9);
    expect(elastic!.forceRate).toBeCloseTo(52.5 * d8.area, 9);
    expect(elastic!.untilStress).toBeCloseTo(0.8 * 235, 9);
    expect(yielding).toMatchObject({ stage: 'yield', speed: expect.closeTo(0.012, 12) as number });
    expect(strength!.speed * 60).toBeCloseTo(19.296, 9);
    expect(plan({ strengthRange: 2 }).stages[2]!.strainRate).toBe(0.00025);
    // a screw: speed over the travel of a turn
    expect(elastic!.drivePerMinute).toBeCloseTo((60 * 0.0647788) / 0.5, 4);
  });

  test('a pump also fills the oil: the piston, and the volume over the bulk modulus', () => {
    const [elastic, yielding] = plan({}, { drive: { kind: 'pump', volumePerStroke: 500 } }).stages;
    const area = 300 * Math.PI;
    const pressureRate = (52.5 * d8.area) / area;
    expect(elastic!.pressureRate).toBeCloseTo(pressureRate, 9);
    expect(elastic!.oilFlow).toBeCloseTo(area * 0.0647788 + (100e3 / 1400) * pressureRate, 3);
    expect(elastic!.drivePerMinute).toBeCloseTo((60 * elastic!.oilFlow!) / 500, 9);
    expect(yielding!.oilFlow).toBeCloseTo(area * 0.012, 9);
  });

  test('fillets give way as the frame does', () => {
    const longer = plan({ lengths: { gaugeLength: 40, parallelLength: 48, effectiveLength: 54.3 } }).stages[0]!;
    expect(longer.speed).toBeCloseTo(0.0647788 + 0.00025 * 6.3, 6);
  });

  test('stress rates of method B by the modulus; its speed is held through yield up to 0.0025 per second', () => {
    const steel = plan({ control: 'iso-b' }).stages;
    expect(steel[0]!.stressRate).toBeCloseTo(Math.sqrt(6 * 60), 9);
    expect(steel[1]!.speed).toBeCloseTo(steel[0]!.speed, 12);
    expect(steel[1]!.limits).toEqual([0, 0.0025]);
    const soft70 = plan({ control: 'iso-b', expected: { ...soft, modulus: 70_000 } }).stages;
    expect(soft70[0]!.stressRate).toBeCloseTo(Math.sqrt(2 * 20), 9);
    // a very soft frame would strain the piece too fast
    const give = plan({ control: 'iso-b' }, { compliance: 2e-4 }).stages;
    expect(give[1]!.strainRate).toBe(0.0025);
    expect(give[1]!.speed).toBeLessThan(give[0]!.speed);
  });

  test('controls of E8', () => {
    const a = plan({ control: 'e8-a' }).stages;
    expect(a[0]!.stressRate).toBeCloseTo(Math.sqrt(1.15 * 11.5), 9);
    expect(a[2]!.limits).toBe(testingRates.e8.strength);
    const b = plan({ control: 'e8-b' }).stages;
    expect(b.map(({ strainRate }) => strainRate).slice(0, 2)).toEqual([expect.closeTo(0.00025, 12), expect.closeTo(0.00025, 12)]);
    const c = plan({ control: 'e8-c' }).stages;
    expect(c[0]!.speed).toBeCloseTo(0.00025 * 48, 12);
    expect(c[1]!.speed).toBeCloseTo(0.00025 * 48, 12);
    expect(c[0]!.strainRate).toBeCloseTo(4.631e-5, 8);
    expect(c[0]!.limits[0]).toBeCloseTo(0.8 * c[0]!.strainRate, 12);
  });
});

describe('pace sheet', () => {
  test('force, pressure and travel follow from the stress; time never goes back', () => {
    const { pace, stages } = plan({ control: 'iso-b' });
    pace.forEach((row, k) => {
      expect(row.force).toBeCloseTo(row.stress * d8.area, 9);
      expect(row.pressure).toBeCloseTo(row.force / (300 * Math.PI), 9);
      if (k > 0) expect(row.time).toBeGreaterThan(pace[k - 1]!.time);
      if (k > 0) expect(row.travel).toBeGreaterThan(pace[k - 1]!.travel);
    });
    // at a constant speed the travel is speed times time, up to the change
    const change = pace.find(({ action }) => action === 'hold-speed')!;
    expect(change.stress).toBeCloseTo(188, 9);
    expect(change.travel).toBeCloseTo(stages[0]!.speed * change.time, 9);
    const before = pace.filter(({ stage }) => stage === 'elastic');
    for (let k = 1; k < before.length; k += 1) expect(before[k]!.time - before[k - 1]!.time).toBeGreaterThanOrEqual(2);
  });

  test('through yield and beyond, too, each stage moves at its own speed', () => {
    const { pace, stages } = plan();
    const [slow, fast] = [pace.findIndex(({ action }) => action === 'slow-down'), pace.findIndex(({ action }) => action === 'speed-up')];
    expect((pace[fast]!.travel - pace[slow]!.travel) / (pace[fast]!.time - pace[slow]!.time)).toBeCloseTo(stages[1]!.speed, 9);
    expect(pace.map(({ action }) => action)).toEqual(
      expect.arrayContaining(['start', 'slow-down', 'watch-yield', 'read', 'speed-up', 'maximum']) as string[],
    );
    expect(pace.at(-1)).toMatchObject({ action: 'maximum', stress: 375 });
  });
});

describe('resolution and uncertainty', () => {
  test('steps in the offset: 12.2 µm are 7.9 of them in 0.2 % of 48 mm', () => {
    expect(plan({}, { travelStep: 0.0122 }).resolution.stepsInOffset).toBeCloseTo(7.87, 2);
    expect(plan({ extensometer: { length: 25, step: 0.001 } }).resolution.stepsInOffset).toBeCloseTo(50, 9);
  });

  test('the slope and leverage of the example frame', () => {
    const { resolution } = plan();
    expect(resolution.slope).toBeCloseTo(38_901.642, 3);
    expect(resolution.leverage).toBeCloseTo(3.2132, 4);
    expect(resolution.frameOverPiece).toBeCloseTo(2e-5 / 4.547284e-6, 5);
    expect(plan({ extensometer: { length: 25 } }).resolution.leverage).toBeCloseTo(0.5952, 4);
    expect(plan({}, { compliance: undefined }).resolution).not.toHaveProperty('leverage');
  });

  test('class 1 gives Rm to about 1.6 % (k = 2); A on 40 mm to about 1.2 points; E by the frame above all', () => {
    const { uncertainties } = plan();
    const of = (symbol: string) => uncertainties.find((one) => one.symbol === symbol)!;
    expect(of('Rm').standardUncertainty / of('Rm').expected).toBeCloseTo(Math.hypot(0.01 / Math.sqrt(3), 0.005 / Math.sqrt(3), 0.005), 4);
    expect(of('A').standardUncertainty).toBeCloseTo(Math.hypot(0.2, 1.3 * 0.1) / 40, 9);
    const { compliance, ...others } = of('E').terms;
    expect(compliance).toBeGreaterThan(Math.hypot(...Object.values(others)));
    expect(of('Rp0.2').terms['slope']).toBeCloseTo(0.00032132 * 10, 6);
    const measured = plan({ extensometer: { length: 25, step: 0.001 } }).uncertainties.find(({ symbol }) => symbol === 'E')!;
    expect(measured.terms).not.toHaveProperty('compliance');
  });

  test('without a known error of the force only A has one; without a compliance E and Rp0.2 have none', () => {
    expect(plan({}, { forceError: undefined }).uncertainties.map(({ symbol }) => symbol)).toEqual(['A']);
    expect(plan({}, { compliance: undefined }).uncertainties.map(({ symbol }) => symbol)).toEqual(['Rm', 'A']);
  });

  test('a smaller error makes a smaller uncertainty', () => {
    const rm = (errors: TensionPlanInput['errors']) => plan({ errors }).uncertainties[0]!.standardUncertainty;
    expect(rm({ section: 0.001 })).toBeLessThan(rm(undefined));
  });
});

describe('what the frame can answer', () => {
  const verdict = (symbol: string, ...given: Parameters<typeof plan>) =>
    plan(...given).answers.find(({ symbols }) => symbols.includes(symbol))?.verdict;
  const extensometer = { length: 25, step: 0.001 };

  test('by travel: strength and broken piece good, proof strength fair, small offsets and E for teaching', () => {
    expect(plan().answers.map(({ symbols, verdict: one }) => `${symbols[0]} ${one}`)).toEqual([
      'Rm good',
      'A good',
      'Z good',
      'ReH good',
      'Rp0.2 fair',
      'Ag fair',
      'proportional limit teaching only',
      'E teaching only',
    ]);
  });

  test.each<[string, string, ...Parameters<typeof plan>]>([
    ['Rm', 'not', { expected: { ...soft, tensileStrength: 600 } }],
    ['Rm', 'fair', { expected: { ...soft, tensileStrength: [360, 600] } }],
    ['Rm', 'fair', {}, { forceError: undefined }],
    ['Rm', 'fair', {}, { verifiedFrom: 20_000 }],
    ['Rm', 'fair', {}, { forceError: 0.02 }],
    ['A', 'not', { expected: { ...soft, tensileStrength: 600 } }],
    ['A', 'fair', { lengths: { gaugeLength: 50, parallelLength: 60 } }],
    ['ReH', 'not', { expected: { ...soft, yieldPoint: 'none' } }],
    ['ReH', 'fair', {}, { verifiedFrom: undefined }],
    ['Rp0.2', 'not', {}, { travelStep: 0.04 }],
    ['Rp0.2', 'teaching only', {}, { travelStep: 0.0122 }],
    ['Rp0.2', 'teaching only', {}, { compliance: 5e-5 }],
    ['Rp0.2', 'fair', {}, { compliance: 1e-6 }],
    ['Rp0.2', 'fair', {}, { compliance: undefined }],
    ['Rp0.2', 'good', { extensometer }],
    ['Agt', 'good', { extensometer }],
    ['Agt', 'teaching only', {}, { compliance: undefined }],
    ['Rp0.01', 'fair', { extensometer }],
    ['E', 'fair', { extensometer }],
    ['E', 'good', { extensometer: { ...extensometer, error: 0.005 } }],
    ['E', 'not', {}, { compliance: undefined }],
    ['E', 'fair', {}, { compliance: 1e-6 }],
  ])('%s: %s', (symbol, expected, more, frameMore) => {
    expect(verdict(symbol, more, frameMore)).toBe(expected);
  });
});

describe('findings', () => {
  test('the example has only what a soft frame brings', () => {
    expect(codes()).toEqual([
      'caution frame-stretches-more-than-piece',
      'note elastic-part-quick',
      'caution elastic-speed-too-fast-for-yield',
    ]);
  });

  test.each<[string, ...Parameters<typeof plan>]>([
    ['caution force-near-capacity', { expected: { ...soft, tensileStrength: 450 } }],
    ['fault force-above-capacity', { expected: { ...soft, tensileStrength: 600 } }],
    ['caution force-unverified', {}, { verifiedFrom: undefined }],
    ['caution force-below-verified', {}, { verifiedFrom: 12_000 }],
    ['caution force-below-verified', { section: round({ diameter: 3 }), lengths: {} }, { verifiedFrom: 100 }],
    ['caution pressure-near-limit', {}, { reliefPressure: 22 }],
    ['fault pressure-near-limit', {}, { transmitterRange: 20 }],
    ['caution travel-near-stroke', {}, { stroke: 18 }],
    ['fault travel-near-stroke', {}, { stroke: 10 }],
    ['caution gauge-length-not-proportional', { lengths: { gaugeLength: 50, parallelLength: 60 } }],
    ['note gauge-length-not-proportional', { lengths: { gaugeLength: 41, parallelLength: 60 } }],
    ['caution parallel-length-short', { lengths: { gaugeLength: 40, parallelLength: 42 } }],
    ['note section-small', { section: round({ diameter: 3.5 }), lengths: {} }],
    ['note section-wide', { section: rectangular({ width: 30, thickness: 3 }), lengths: {} }],
    ['caution frame-compliance-unknown', {}, { compliance: undefined }],
    ['note oil-volume-unknown', {}, { oilVolume: undefined }],
    ['caution displacement-steps-coarse', {}, { travelStep: 0.0122 }],
    ['fault displacement-steps-coarse', {}, { travelStep: 0.04 }],
    ['note elastic-speed-too-fast-for-yield', { control: 'iso-b' }, { compliance: 2e-4, travelStep: undefined }],
    ['caution drive-strokes-coarse', {}, { drive: { kind: 'pump', volumePerStroke: 1200 } }],
    ['caution drive-too-fast', {}, { drive: { kind: 'screw', travelPerTurn: 0.05 } }],
    ['caution planned-sampling-slow', { samplingRate: 10 }],
    ['caution strain-not-in-accordance', { claimsStandard: true }],
    ['caution strain-not-in-accordance', { use: 'acceptance', control: 'e8-b' }],
    ['fault structural-acceptance', { use: 'structural' }],
  ])('%s', (expected, more, frameMore) => {
    const found = codes(more, frameMore);
    expect(found).toContain(expected.startsWith('note elastic-speed') ? expected.replace('note', 'caution') : expected);
  });

  test('limits exactly hit are no finding; thresholds are options', () => {
    const full = { expected: { ...soft, tensileStrength: 20_000 / d8.area } };
    expect(codes(full)).not.toContain('caution force-near-capacity');
    expect(codes({ ...full, thresholds: { utilisation: 0.7 } })).toContain('caution force-near-capacity');
    expect(codes({ samplingRate: plan().leastSamplingRate })).not.toContain('caution planned-sampling-slow');
    expect(codes({ claimsStandard: true, extensometer: { length: 25 } })).not.toContain('caution strain-not-in-accordance');
    expect(codes({}, { verifiedFrom: 235 * d8.area })).not.toContain('caution force-below-verified');
  });

  test('every plan says what to do where the piece does not break, and the cautions', () => {
    const { ifItStalls, cautions } = plan();
    expect(ifItStalls.join(' ')).toMatch(/25000 N.*do not approach.*[Nn]ever raise/);
    expect(cautions.at(-1)).toMatch(/not design values/);
  });
});

test('a family gives what is not expected otherwise', () => {
  const family = planTension({
    family: 'brass',
    expected: { tensileStrength: 400 },
    section: sectionFromArea({ area: 20 }),
    frame: { capacity: 25_000 },
  });
  expect(family.material).toMatchObject({ modulus: [95_000, 115_000], tensileStrength: [400, 400] });
  expect(family.force).toEqual({ greatest: 8000, least: family.material.yieldStrength![0] * 20, utilisation: 0.32, stop: 25_000 });
});

test('refusals name the field', () => {
  const refused = (more: object, frameMore: object = {}) =>
    refusal(() => planTension({ ...base, ...more, frame: { ...frame, ...frameMore } }));
  expect(refused({ expected: {} })).toBe('missing expected.tensileStrength');
  expect(refused({ expected: { ...soft, yieldStrength: [500, 600] } })).toBe('out-of-range expected.yieldStrength');
  expect(refused({ expected: { ...soft, elongation: [0.3, 0.2] } })).toBe('out-of-range expected.elongation[1]');
  expect(refused({ expected: { ...soft, modulus: '210' } })).toBe('wrong-type expected.modulus');
  expect(refused({ expected: { ...soft, hardness: 1 } })).toBe('unknown-option expected.hardness');
  expect(refused({ expected: { ...soft, tensileStrength: [0, 390] } })).toBe('not-positive expected.tensileStrength[0]');
  expect(refused({ family: 'cheese' })).toBe('out-of-range family');
  expect(refused({ control: 'iso-c' })).toBe('out-of-range control');
  expect(refused({ strengthRange: 1 })).toBe('out-of-range strengthRange');
  expect(refused({ use: 'fun' })).toBe('out-of-range use');
  expect(refused({ samplingRate: 0 })).toBe('not-positive samplingRate');
  expect(refused({ extensometer: { length: -1 } })).toBe('not-positive extensometer.length');
  expect(refused({ lengths: { gaugeLength: 50, parallelLength: 40 } })).toBe('out-of-range lengths.parallelLength');
  expect(refused({ lengths: { parallelLength: 50, effectiveLength: 40 } })).toBe('out-of-range lengths.effectiveLength');
  expect(refused({ errors: { section: 0 } })).toBe('not-positive errors.section');
  expect(refused({ thresholds: { pressure: 2 } })).toBe('out-of-range thresholds.pressure');
  // a frame in kN, bar, µm/kN and cm³, a material in GPa and per cent
  expect(refused({}, { capacity: 25 })).toBe('out-of-range frame.capacity');
  for (const bar of [210, 250, 280]) expect(refused({}, { reliefPressure: bar })).toBe('out-of-range frame.reliefPressure');
  for (const bar of [250, 400, 600]) expect(refused({}, { transmitterRange: bar })).toBe('out-of-range frame.transmitterRange');
  // 1600 bar and 150 MPa are true values
  expect(() => planTension({ ...base, frame: { ...frame, transmitterRange: 160, reliefPressure: 150 } })).not.toThrow();
  expect(refused({}, { compliance: 20 })).toBe('out-of-range frame.compliance');
  expect(refused({}, { oilVolume: 100 })).toBe('out-of-range frame.oilVolume');
  expect(refused({ family: 'structural-steel', expected: { modulus: [200, 210] } })).toBe('out-of-range expected.modulus');
  expect(refused({ family: 'structural-steel', expected: { elongation: 20 } })).toBe('out-of-range expected.elongation');
  expect(refused({}, { capacity: NaN })).toBe('not-finite frame.capacity');
  expect(refused({}, { stroke: 0 })).toBe('not-positive frame.stroke');
  expect(refused({}, { compliance: -1 })).toBe('out-of-range frame.compliance');
  expect(refused({}, { bore: undefined })).toBe('missing frame.bore');
  expect(refusal(() => planTension({ ...base, frame: { capacity: 1000, drive: { kind: 'pump', volumePerStroke: 1 } } }))).toBe(
    'missing frame.bore',
  );
  expect(refused({}, { drive: { kind: 'motor' } })).toBe('out-of-range frame.drive.kind');
  expect(refused({}, { drive: { kind: 'screw', volumePerStroke: 1 } })).toBe('unknown-option frame.drive.volumePerStroke');
  expect(refused({}, { drive: { kind: 'pump', volumePerStroke: 0 } })).toBe('not-positive frame.drive.volumePerStroke');
  expect(refused({}, { forceError: 1 })).toBe('out-of-range frame.forceError');
  expect(refused({}, { colour: 1 })).toBe('unknown-option frame.colour');
});

test('the input stays as it was', () => {
  const before = JSON.stringify(base);
  planTension(base);
  expect(JSON.stringify(base)).toBe(before);
});

test('a share of nothing is refused by the plan itself; a sheet beyond the frame at any width has no largest one', () => {
  const frame = { capacity: 1000 };
  const section = rectangular({ width: 20, thickness: 12 });
  expect(refusal(() => planTension({ family: 'structural-steel', section, frame, thresholds: { utilisation: 0 } }))).toBe(
    'not-positive thresholds.utilisation',
  );
  const plan = planTension({ family: 'structural-steel', section, frame });
  expect(plan.findings.map(({ code }) => code)).toContain('force-above-capacity');
  expect(plan.largest.map(({ shape }) => shape)).not.toContain('flat');
});
