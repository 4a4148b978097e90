import { describe, expect, test } from 'vitest';
import {
  analyseCurve,
  analyseTension,
  energyDensity,
  fitModulus,
  fracture,
  maximumStress,
  proofStrength,
  removeCompliance,
  required,
  stressStrain,
  totalExtensionStrength,
  yieldPoints,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { caseT1, caseT3, COMPLIANCE, curveT3, roundPiece } from '../support/records.js';
import { checkVectors } from '../support/vectors.js';

checkVectors(
  'tension',
  'maximumStress',
  'fracture',
  'energyDensity',
  'stressStrain',
  'fitModulus',
  'yieldPoints',
  'proofStrength',
  'totalExtensionStrength',
);

// Callister and Rethwisch, Materials Science and Engineering, problem on an aluminium test piece (data from the book)
describe('aluminium test piece of 12.8 mm', () => {
  const load = [0, 7330, 15100, 23100, 30400, 34400, 38400, 41300, 44800, 46200, 47300, 47500, 46100, 44800, 42600, 36400];
  const length = [
    50.8, 50.851, 50.902, 50.952, 51.003, 51.054, 51.308, 51.816, 52.832, 53.848, 54.864, 55.88, 56.896, 57.658, 58.42, 59.182,
  ];
  const area = (Math.PI * 12.8 ** 2) / 4;
  const curve = { strain: length.map((l) => (l - 50.8) / 50.8), stress: load.map((F) => F / area) };
  const line = required(fitModulus(curve, { window: { by: 'samples', first: 0, last: 3 } }));

  test('Ag 9.382 %', () => {
    const top = maximumStress(curve);
    expectPrinted(100 * (top.strain - line.strainShift - top.stress / line.slope), '9.382');
  });

  test('strain at fracture less the elastic part: 16.03 %', () => {
    const end = required(fracture(curve));
    expectPrinted(100 * (end.strain - end.stress / line.slope), '16.03');
    expect(end.how).toBe('end-of-record');
  });
});

describe('T1: Ramberg-Osgood, 70 GPa, frame 20 µm/kN, toe 0.15 mm', () => {
  const curve = stressStrain(caseT1(), roundPiece);
  const slopes = (share: readonly [number, number]) =>
    required(fitModulus(curve, { window: { by: 'stress', from: 250 * share[0], to: 250 * share[1] } }));
  const proof = (line: { slope: number; strainShift: number }, offset: number) =>
    required(proofStrength(curve, { modulus: line.slope, strainShift: line.strainShift, offset })).stress;

  test('window 10 to 50 %: slope 28 385.2, Rp0.1 241.484, Rp0.2 250.000, Rp1 270.950', () => {
    const line = slopes([0.1, 0.5]);
    expectPrinted(line.slope, '28385.2');
    expectPrinted(proof(line, 0.001), '241.484');
    expectPrinted(proof(line, 0.002), '250.000');
    expectPrinted(proof(line, 0.01), '270.950');
    // the definition itself: a linear frame cancels, so the proof strength is that of the material
    expectPrinted(250 * (0.001 / 0.002) ** (1 / 20), '241.484');
    expectPrinted(250 * (0.01 / 0.002) ** (1 / 20), '270.950');
  });

  test('the searched window gives the same', () => {
    const line = required(fitModulus(curve));
    expect(Math.abs(line.slope / 28_385.169 - 1)).toBeLessThan(1e-4);
    expectPrinted(proof(line, 0.002), '250.00');
  });

  test('window 40 to 80 %: slope -0.31 %, Rp0.2 250.08; 50 to 90 %: -3.53 %, 250.75', () => {
    const middle = slopes([0.4, 0.8]);
    expectPrinted(100 * (middle.slope / 28_385.169 - 1), '-0.31');
    expectPrinted(proof(middle, 0.002), '250.08');
    const high = slopes([0.5, 0.9]);
    // curved up to the end: the last sample inside the window moves the last digit
    expectPrinted(100 * (high.slope / 28_385.169 - 1), '-3.53', 2);
    expectPrinted(proof(high, 0.002), '250.75');
  });

  test('slope off by 2 % with the origin kept: Rp0.2 -0.448 and +0.433 %', () => {
    const { slope, strainShift } = slopes([0.1, 0.5]);
    expectPrinted(100 * (proof({ slope: 1.02 * slope, strainShift }, 0.002) / 250 - 1), '-0.448');
    expectPrinted(100 * (proof({ slope: 0.98 * slope, strainShift }, 0.002) / 250 - 1), '0.433');
  });

  test('what must not be done: the handbook modulus on raw travel gives 95.5, L0 for Lc 247.73', () => {
    const { strainShift, slope } = slopes([0.1, 0.5]);
    expectPrinted(proof({ slope: 70_000, strainShift }, 0.002), '95.5');
    const overGauge = stressStrain(caseT1(), { ...roundPiece, parallelLength: 40 });
    const line = required(fitModulus(overGauge, { window: { by: 'stress', from: 25, to: 125 } }));
    expectPrinted(required(proofStrength(overGauge, { modulus: line.slope, strainShift: line.strainShift })).stress, '247.73');
    expect(slope).toBeLessThan(70_000);
  });

  test('as a whole: E is withheld on raw travel and found with the frame removed, the proof strength the same in both', () => {
    const raw = analyseTension(caseT1(), roundPiece);
    expect(raw.modulus).toBeUndefined();
    expect(raw.findings.map(({ code }) => code)).toContain('modulus-includes-frame-compliance');
    const corrected = analyseTension(caseT1(), roundPiece, { frameCompliance: COMPLIANCE });
    expect(Math.abs(corrected.modulus!.value / 70_000 - 1)).toBeLessThan(1e-4);
    expectPrinted(raw.proofStrengths[0]!.value, '250.00');
    expectPrinted(corrected.proofStrengths[0]!.value, '250.00');
    expectPrinted(corrected.modulusWindow!.strainShift * 48, '0.150');
  });
});

describe('T3: piecewise straight, with a yield point', () => {
  const curve = curveT3();

  test.each([0.0025, 0.001])('ReH 300, ReL 280 over the whole range, 281.6 by the short rule, Ae 1.457 % (steps of %f %)', (step) => {
    const dense = curveT3(step);
    const points = required(yieldPoints(dense));
    expect(points.upper.stress).toBeCloseTo(300, 9);
    expect(points.lower.stress).toBeCloseTo(280, 9);
    expectPrinted(100 * points.extension!, '1.457');
    expectPrinted(required(yieldPoints(dense, { lowerYield: 'short' })).lower.stress, '281.6');
  });

  test('offset-line value 281.86, Rt0.5 281.2, area 112.926 MJ/m³', () => {
    expectPrinted(required(proofStrength(curve, { modulus: 210_000 })).stress, '281.86');
    expectPrinted(required(totalExtensionStrength(curve)).stress, '281.2');
    expectPrinted(energyDensity(curve), '112.926');
    // by hand: the trapezoids between the corners
    const corners = [
      [0, 0],
      [0.142857142857, 300],
      [0.2, 268],
      [0.3, 282],
      [0.8, 280],
      [1.2, 283],
      [1.6, 281],
      [3, 309],
      [6, 350],
      [12, 400],
      [20, 430],
      [26, 400],
      [30, 300],
    ];
    const byHand = corners.slice(1).reduce((sum, [e, R], k) => sum + ((e! - corners[k]![0]!) / 200) * (R! + corners[k]![1]!), 0);
    expectPrinted(byHand, '112.926');
  });

  test('from the frame record, with the compliance removed: all of it again', () => {
    // the record of the case ends with the fracture: a sample without force says so, at a travel that the frame sprang back by
    const { travel, force } = caseT3();
    const broken = { travel: [...travel!, travel![travel!.length - 1]! - COMPLIANCE * force[force.length - 1]!], force: [...force, 0] };
    const result = analyseTension(broken, roundPiece, { frameCompliance: COMPLIANCE });
    expect(result.upperYieldStrength!.value).toBeCloseTo(300, 6);
    expect(result.lowerYieldStrength!.value).toBeCloseTo(280, 6);
    expectPrinted(100 * result.yieldPointExtension!.value, '1.457');
    expect(result.tensileStrength!.value).toBeCloseTo(430, 6);
    expectPrinted(100 * result.totalExtensionAtMaximumForce!.value, '20.000');
    expectPrinted(100 * result.uniformExtension!.value, '19.795');
    expectPrinted(100 * result.plasticExtensionAtFracture!.value, '29.857');
    expectPrinted(result.proofStrengths[0]!.value, '281.86');
    expectPrinted(result.toughness!.value, '112.926');
    expect(result.modulus!.value).toBeCloseTo(210_000, 2);
  });

  test('the record runs back after ReH: x 0.52016 to 0.51542; at Fm 10.18228, at fracture 14.85159', () => {
    const { travel, force } = caseT3();
    const peak = force.indexOf(Math.max(...force.slice(0, 100)));
    expectPrinted(travel![peak]!, '0.52016');
    const dip = force.indexOf(Math.min(...force.slice(peak, peak + 30)));
    expectPrinted(travel![dip]!, '0.51542');
    expectPrinted(travel![force.indexOf(Math.max(...force))]!, '10.18228');
    expectPrinted(travel![travel!.length - 1]!, '14.85159');
  });

  test('work: 272.46 J of the piece, 274.73 J with the frame', () => {
    const record = caseT3();
    const work = (x: Float64Array): number =>
      x.slice(1).reduce((sum, one, k) => sum + ((one - x[k]!) * (record.force[k]! + record.force[k + 1]!)) / 2000, 0);
    expectPrinted(work(removeCompliance(record, COMPLIANCE).travel!), '272.46');
    expectPrinted(work(record.travel!), '274.73');
  });
});

// manual reading of Agt where only Ag is known: Agt = Ag + Rm/2000 in % for steel (common practice), from 100 R/E with E 200 GPa
test('Rm 600: Agt - Ag = 0.30 %', () => {
  const stress = Array.from({ length: 400 }, (_, i) => (i < 300 ? 2 * i : 600 * (1 - ((i - 350) / 1000) ** 2)));
  const strain = stress.map((R, i) => R / 200_000 + (i < 300 ? 0 : (i - 299) * 0.001));
  const result = analyseCurve({ strain, stress });
  expectPrinted(100 * (result.totalExtensionAtMaximumForce!.value - result.uniformExtension!.value), '0.30');
  expectPrinted(600 / 2000, '0.30');
});

test('energy: a triangle of 10 kN and 0.5 mm is 2.5 J', () => {
  expectPrinted(energyDensity({ strain: [0, 0.5], stress: [0, 10_000] }) / 1000, '2.5');
});

// second derivation: the record of the synthetic aluminium case in time, with what loggers and hands do to it
describe('a stop of 3 s at 200 MPa, coarse digits, a spike, a gap, repeated samples and a tail', () => {
  const AREA = roundPiece.section.area;
  const [DT, SPEED, TOP] = [0.05, 0.01, 272];
  const wayOf = (R: number): number => 0.15 + 48 * (R / 70_000 + 0.002 * (R / 250) ** 20) + COMPLIANCE * R * AREA;
  const stressAt = (x: number): number => {
    let [low, high] = [0, 300];
    for (let k = 0; k < 60; k += 1) {
      const middle = (low + high) / 2;
      if (wayOf(middle) < x) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };

  /** The test in time: slack, loading, the stop with a fall of 2 % and its making good, and what follows the fracture. */
  function recordInTime(): { force: number[]; travel: number[]; time: number[] } {
    const [force, travel, time]: number[][] = [[], [], []];
    const put = (F: number, x: number): void => {
      time!.push(time!.length * DT);
      force!.push(F);
      travel!.push(x);
    };
    for (let k = 0; k < 40; k += 1) put(0, (0.15 * k) / 40);
    let behind = 0;
    let stopped = false;
    for (let x = 0.15; x < wayOf(TOP); x += SPEED * DT) {
      const F = stressAt(x) * AREA;
      if (!stopped && F >= 200 * AREA) {
        stopped = true;
        for (let k = 0; k < 60; k += 1) put(F * (1 - 0.02 * (1 - Math.exp((-k * DT) / 0.6))), x);
        behind = 0.02 * F;
      }
      put(F - behind, x);
      behind = Math.max(0, behind - 40_737 * SPEED * DT);
    }
    for (let k = 0; k < 60; k += 1) put(0, wayOf(TOP) + SPEED * DT * k);
    return { force: force!, travel: travel!, time: time! };
  }

  const { force, travel, time } = recordInTime();
  const gap = Math.floor(0.3 * force.length);
  const kept = force.map((_, i) => i).filter((i) => i < gap || i >= gap + 20);
  const coarse = {
    force: kept.map((i) => Math.round(force[i]! / 6.105) * 6.105),
    travel: kept.map((i) => Math.round(travel[i]! / 0.0122) * 0.0122),
    time: kept.map((i) => time[i]!),
  };
  for (let k = 0; k < 40; k += 1) {
    const i = 100 + 17 * k;
    coarse.force[i] = coarse.force[i - 1]!;
    coarse.travel[i] = coarse.travel[i - 1]!;
  }

  test.each([0.2, 0.6, 0.9])(
    'the spike at %d of the record: no ReH, one pause, Rp0.2 within 1 %, the highest force within 0.3 %',
    (place) => {
      const spiked = { ...coarse, force: coarse.force.map((F, i) => (i === Math.floor(place * coarse.force.length) ? 1.3 * F : F)) };
      const result = analyseTension(spiked, roundPiece);
      const codes = result.findings.map(({ code }) => code);
      expect(result.upperYieldStrength).toBeUndefined();
      expect(codes.filter((code) => code === 'pause')).toHaveLength(1);
      expect(codes).toEqual(expect.arrayContaining(['pause', 'spikes', 'time-gap', 'tail-after-fracture']));
      expect(codes).not.toContain('grip-slip');
      expect(Math.abs(result.proofStrengths[0]!.value / 250 - 1)).toBeLessThan(0.01);
      expect(Math.abs(result.maximumForce!.value / (TOP * AREA) - 1)).toBeLessThan(0.003);
    },
  );
});
