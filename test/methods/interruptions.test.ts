import { describe, expect, test } from 'vitest';
import {
  stressStrain,
  analyseCurve,
  analyseTension,
  findPauses,
  fromJson,
  toJson,
  whatIf,
  type TensionColumns,
  type TensionRecord,
  type TensionResult,
} from '../../src/index.js';
import { byTravel as goesOnByTravel } from '../../src/methods/loading/departures.js';
import { evaluateAgain } from '../../src/methods/variations/evaluateAgain.js';
import { recordedCurve } from '../../src/methods/variations/recordedCurve.js';
import { requireTensionOptions, tensionOptionNames } from '../../src/methods/evaluation/tensionOptions.js';
import { simulateTension } from '../../src/simulate/index.js';
import { reversed } from '../../src/simulate/spoil.js';
import { AREA, caseT3, COMPLIANCE, mildSteel, roundPiece } from '../support/records.js';

const LENGTH = 48;
const SLIP = 0.1;
const { modulus, hardening, fracture } = mildSteel;
const made = simulateTension({
  material: { modulus, yieldStress: 280, hardening, fracture },
  piece: roundPiece,
  frame: { compliance: COMPLIANCE, slack: 0.2 },
  hand: { speed: 0.05, speedAfterYield: 0.1, unloadings: [{ stress: 180 }], pauses: [{ stress: 330, duration: 3 }] },
  logger: { rate: 30, extensometer: true, lead: 1, tail: 1, forceNoise: 0, motionNoise: 0 },
});
const reaching = (force: ArrayLike<number>, stress: number) => Array.from(force).findIndex((F) => F / AREA > stress);

/** Motion of frame and piece that goes elastically with a force [mm/N]. */
const PER_FORCE = COMPLIANCE + LENGTH / (modulus * AREA);
const FALL = 20;
/** The piece slips after a sample: the force falls at once by a fifth, and comes back along the elastic line of frame and piece in so many samples. */
function slipped({ force, travel, extension }: TensionRecord, at: number): TensionRecord {
  const lost = Array.from({ length: FALL }, (_, k) => (0.2 * force[at]! * (FALL - k)) / FALL);
  const put = (column: Float64Array, row: (lost: number) => number, later = 0) =>
    Float64Array.from([...column.subarray(0, at + 1), ...lost.map(row), ...column.subarray(at + 1).map((value) => value + later)]);
  const found = put(force, (one) => force[at]! - one);
  return {
    force: found,
    travel: put(travel!, (one) => travel![at]! + SLIP - PER_FORCE * one, SLIP),
    extension: put(extension!, (one) => extension![at]! - (roundPiece.gaugeLength * one) / (modulus * AREA)),
    time: found.map((_, i) => i / 30),
  };
}

/** An unloading and a pause of the simulator, with a slip between them, then a stroke in which the drive goes back by 0.15 mm and comes again. */
const slipAt = reaching(made.record.force, 250);
const afterSlip = slipped(made.record, slipAt);
const strokeAt = reaching(afterSlip.force, 350);
const STROKE = 0.15;
const whole = reversed(afterSlip, strokeAt, STROKE, 40_000);
const byTravel: TensionColumns = { force: whole.force, travel: whole.travel, time: whole.time };

/** What the record shows, found by the forces and the travel alone. */
const { force } = whole;
const travel = whole.travel!;
const [top] = made.truth.unloadings!.map(({ index }) => index);
const next = (from: number, is: (i: number) => boolean) => Array.from(force).findIndex((_, i) => i > from && is(i));
const turned = next(top!, (i) => force[i]! < force[top!]!);
const expected = [
  ['unloading', [top, next(turned, (i) => force[i]! >= force[top!]!)]],
  ['slip', [slipAt, slipAt + FALL + 1]],
  ['pause', findPauses(byTravel)[0]?.range],
  ['unloading', [strokeAt, next(strokeAt + 1, (i) => travel[i]! >= travel[strokeAt]!)]],
] as const;

const result = analyseTension(byTravel, roundPiece);
const named = ({ interruptions = [] }: Pick<TensionResult, 'interruptions'>) => interruptions.map(({ kind, range }) => [kind, range]);

describe('an unloading, a pause, a slip and a stroke of the drive', () => {
  test('stand in the result with just their samples, in the order of the record', () => {
    expect(expected.map(([, range]) => range)).not.toContain(undefined);
    expect(named(result)).toEqual(expected);
    // a pause is told to a sample
    const paused = made.truth.pauses[0]!.map((sample) => sample + FALL);
    result.interruptions![2]!.range.forEach((sample, k) => {
      expect(Math.abs(sample - paused[k]!)).toBeLessThanOrEqual(1);
    });
  });

  test('each with its fall, the pause with its time, the slip with what it adds to strain', () => {
    const [loop, slip, pause, stroke] = result.interruptions!;
    expect(loop!.fall).toBeCloseTo((force[top!]! * 0.98) / AREA, 6);
    expect(pause!.duration).toBeCloseTo(3, 1);
    expect(pause!.fall).toBeCloseTo((0.02 * force[pause!.range[0]]!) / AREA, 0);
    expect(slip!.fall).toBeCloseTo((0.2 * force[slipAt]!) / AREA, 9);
    expect(slip!.strain).toBeCloseTo(SLIP / LENGTH, 5);
    expect(stroke!.fall).toBeCloseTo((STROKE * 40_000) / AREA, 9);
    for (const one of [loop, pause, stroke]) expect(one).not.toHaveProperty('strain');
    for (const one of [loop, slip, stroke]) expect(one).not.toHaveProperty('duration');
  });

  test('on an extensometer, which does not see the jaws, no strain counts a slip', () => {
    const seen = analyseTension(whole, roundPiece).interruptions!;
    expect(seen.filter(({ kind }) => kind === 'slip')).toHaveLength(1);
    expect(seen.every(({ strain }) => strain === undefined)).toBe(true);
  });

  test('the record evaluated again by them, with no change, is the analysis to the bit', () => {
    const settings = requireTensionOptions('test', {}, tensionOptionNames);
    const { lengths, elasticLengthRatio } = recordedCurve('test', result, settings);
    const again = evaluateAgain(result, { ...stressStrain(byTravel, roundPiece), lengths, elasticLengthRatio }, settings)({});
    expect(again.elasticSlope?.value).toBe(result.elasticSlope!.value);
    for (const name of [
      'uniformExtension',
      'totalExtensionAtMaximumForce',
      'totalExtensionAtFracture',
      'plasticExtensionAtFracture',
    ] as const)
      expect(again[name]?.value, name).toBe(result[name]!.value);
    // what counts small strains is withheld after the slip, and n with it: again too
    expect([again.proofStrengths, again.hardening]).toEqual([[], undefined]);
    expect([result.proofStrengths, result.hardening]).toEqual([[], undefined]);
  });

  test('the same without the slip, with a proof strength and a hardening exponent', () => {
    const sound = reversed(made.record, reaching(made.record.force, 350), STROKE, 40_000);
    const own = { force: sound.force, extension: sound.extension, time: sound.time };
    const found = analyseTension(own, roundPiece);
    expect(named(found).map(([kind]) => kind)).toEqual(['unloading', 'pause', 'unloading']);
    const settings = requireTensionOptions('test', {}, tensionOptionNames);
    const { lengths, elasticLengthRatio } = recordedCurve('test', found, settings);
    const again = evaluateAgain(found, { ...stressStrain(own, roundPiece), lengths, elasticLengthRatio }, settings)({});
    expect(again.proofStrengths.map(({ value }) => value)).toEqual(found.proofStrengths.map(({ value }) => value));
    expect(found.proofStrengths).toHaveLength(1);
    expect(again.hardening?.exponent.value).toBe(found.hardening!.exponent.value);
  });

  test('come back from JSON', () => {
    expect(fromJson(toJson(result), 'tension').interruptions).toEqual(result.interruptions);
  });
});

describe('what a reader does to findings and trail', () => {
  const refused = analyseTension(caseT3(), roundPiece, { frameCompliance: 1.5 * COMPLIANCE });
  const clipped = simulateTension({
    material: mildSteel,
    piece: roundPiece,
    frame: { compliance: COMPLIANCE },
    logger: { rate: 20, extensometer: { offAt: 0.06 } },
  }).record;
  test.each([
    ['interrupted', result],
    ['with a frame and fillets', analyseTension(byTravel, { ...roundPiece, effectiveLength: 52 }, { frameCompliance: COMPLIANCE })],
    ['carried on by travel', analyseTension(clipped, roundPiece, { frameCompliance: COMPLIANCE })],
    ['with a compliance that was refused', refused],
  ])('is nothing to its other evaluations: %s', (_, one) => {
    const rows = whatIf(one);
    expect(rows.length).toBeGreaterThan(3);
    expect(whatIf({ ...one, findings: [], trail: [] })).toEqual(rows);
    const translated = {
      ...one,
      findings: one.findings.map(({ code, severity, about }) => ({
        code,
        severity,
        about,
        values: {},
        message: 'Anders gesagt.',
        remedy: '',
      })),
      trail: one.trail.map(({ code }) => ({ code, step: 'Anders gesagt.', values: { ranges: '1 bis 2' } })),
    };
    expect(whatIf(translated)).toEqual(rows);
  });

  test('the interruptions are what they go by', () => {
    const { interruptions, ...without } = result;
    expect(interruptions).toHaveLength(4);
    expect(whatIf(without)).not.toEqual(whatIf(result));
  });
});

test('a zero set under load, and a test that was stopped and unloaded', () => {
  const zeroAt = reaching(made.record.force, 200);
  const fall = made.record.force[zeroAt]!;
  const { interruptions } = analyseTension(
    { time: made.record.time, travel: made.record.travel, force: made.record.force.map((F, i) => (i > zeroAt ? F - fall : F)) },
    roundPiece,
  );
  expect(interruptions!.find(({ kind }) => kind === 'zero-set')).toMatchObject({ range: [zeroAt, zeroAt + 1] });

  // up to the middle of the test, then down along the elastic line of frame and piece, in 60 steps
  const stop = reaching(made.record.force, 340);
  const down = Array.from({ length: 60 }, (_, k) => (made.record.force[stop]! * (k + 1)) / 60);
  const force = [...made.record.force.slice(0, stop + 1), ...down.map((part) => made.record.force[stop]! - part)];
  const travel = [...made.record.travel!.slice(0, stop + 1), ...down.map((part) => made.record.travel![stop]! - PER_FORCE * part)];
  const stopped = analyseTension({ force, travel }, roundPiece);
  expect(named(stopped).at(-1)).toEqual(['final-unloading', [stop, stop + 60]]);
  expect(stopped.interruptions!.at(-1)!.fall).toBeCloseTo(force[stop]! / AREA, 9);
  expect(stopped).not.toHaveProperty('fracture');
});

test('a slip beyond the extensometer counts over the length of travel, whatever the base of the extensometer', () => {
  const off = reaching(made.record.force, 200);
  const clipped = { ...whole, extension: whole.extension!.map((x, i) => (i < off ? x : NaN)) };
  const found = analyseTension(clipped, { ...roundPiece, extensometerLength: 25 });
  expect([found.extensionBasis, found.extensometerEnd]).toEqual(['extensometer-then-travel', off]);
  expect(found.interruptions!.find(({ kind }) => kind === 'slip')!.strain).toBeCloseTo(SLIP / LENGTH, 5);
});

test('a leap of the travel in which the force does not fall is no slip of the evaluation, and of no other evaluation', () => {
  const { travel, time } = made.record;
  const at = reaching(made.record.force, 320);
  const leapt = analyseTension({ time, force: made.record.force, travel: travel!.map((x, i) => (i < at ? x : x + 0.5)) }, roundPiece);
  expect(leapt.findings.map(({ code }) => code)).toContain('grip-slip');
  expect(named(leapt).map(([kind]) => kind)).not.toContain('slip');
  expect(leapt.hardening).toBeDefined();
  for (const { change, values } of whatIf(leapt, { offsets: [] }))
    if (change.kind === 'parallel-length') expect(values.map(({ field }) => field)).toContain('hardeningExponent');
});

test('a test that was loaded without a stop has none; a curve alone has its loops', () => {
  expect(analyseTension(caseT3(), roundPiece)).not.toHaveProperty('interruptions');
  const { strain, stress } = analyseTension({ force, extension: whole.extension, time: whole.time }, roundPiece).curve;
  const curve = analyseCurve({ strain, stress });
  expect(named(curve)[0]).toEqual(expected[0]);
  expect(curve.interruptions![0]!.fall).toBeCloseTo((force[top!]! * 0.98) / AREA, 6);
});

test('a slip right after the last reading of an extensometer is in the strain: travel goes on from that reading', () => {
  const basis = 'extensometer-then-travel' as const;
  // readings up to sample 4; the travel leaps by 1 mm on 40 mm between samples 4 and 5
  const { strain, ...recorded } = stressStrain(
    {
      force: [0, 1, 2, 3, 4, 5, 6],
      extension: [0, 1, 2, 3, 4, NaN, NaN].map((x) => x / 1000),
      travel: [0, 1, 2, 3, 4, 1005, 1006].map((x) => x / 1000),
    },
    { ...roundPiece, parallelLength: 40 },
  );
  expect(recorded).toMatchObject({ basis, extensometerEnd: 5 });
  expect(strain[5]! - strain[4]!).toBeCloseTo(1.001 / 40, 12);
  expect([2, 3, 4, 5].map((leaves) => goesOnByTravel(recorded, leaves))).toEqual([false, false, true, true]);
});
