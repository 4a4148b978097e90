import { describe, expect, test } from 'vitest';
import {
  alignChannels,
  analyseTension,
  checkRecord,
  collapseRepeats,
  joinJumps,
  joinSlips,
  loadingEnvelope,
  reapplySteps,
  rebuildTime,
  removeZeroDrift,
  repairRecord,
  replaceSpikes,
  restoreZero,
  reverseSign,
  splitTests,
  undoStep,
  type Repaired,
  type Repairs,
  type TensionRecord,
} from '../../src/index.js';
import { faultLibrary, simulateTension, soundTest, type FaultyTest } from '../../src/simulate/index.js';
import { refusal } from '../support/thrown.js';

const made = (name: string, seed = 3): FaultyTest => faultLibrary.find((one) => one.name === name)!.make(seed);
const codes = (record: TensionRecord): string[] => checkRecord(record).map(({ code }) => code);
const everything: Repairs = {
  spikes: true,
  zero: true,
  drift: true,
  lag: true,
  jumps: true,
  slips: true,
  envelope: true,
  repeats: true,
};

/** A repair, the fault it is for, and the finding that is gone afterwards. */
const repairs: readonly (readonly [string, (record: TensionRecord) => Repaired, string])[] = [
  ['spike', (record) => replaceSpikes(record), 'spikes'],
  ['loose plug', (record) => replaceSpikes(record), 'signal-drops-out'],
  ['late tare', (record) => restoreZero(record), 'late-tare'],
  ['zero pressed under load', (record) => restoreZero(record), 'force-zero-moved'],
  ['zero drifts', (record) => removeZeroDrift(record), 'zero-drift'],
  ['two clocks', (record) => alignChannels(record), 'channels-out-of-step'],
  ['travel set anew', (record) => joinJumps(record), 'motion-jumps'],
  ['extensometer slips', (record) => joinJumps(record), 'motion-jumps'],
  ['slip in the grips', (record) => joinSlips(record), 'grip-slip'],
  ['drive goes back', (record) => loadingEnvelope(record), 'drive-reversed'],
  ['play in the drive', (record) => loadingEnvelope(record), 'motion-backlash'],
  ['repeated samples', (record) => collapseRepeats(record), 'samples-repeated'],
  ['sign of the force', (record) => reverseSign(record, ['force']), 'force-sign-reversed'],
  ['sign of the travel', (record) => reverseSign(record, ['travel']), 'motion-sign-reversed'],
  ['clock restarted', (record) => rebuildTime(record), 'time-not-increasing'],
  ['milliseconds for seconds', (record) => rebuildTime(record, { rate: 25 }), 'time-unit-changes'],
  ['several tests', (record) => splitTests(record)[1]!, 'several-tests'],
];

describe('each repair', () => {
  test.each(repairs)(
    '%s: the finding is gone, raw record and trail give the same columns, and a step can be undone',
    (name, repair, code) => {
      const raw = made(name).record;
      const kept = structuredClone(raw);
      expect(codes(raw)).toContain(code);
      const { record, trail } = repair(raw);
      expect(trail.length).toBeGreaterThan(0);
      expect(codes(record)).not.toContain(code);
      expect(raw).toEqual(kept);
      expect(reapplySteps(raw, trail)).toEqual(record);
      // a step undone is the record before it; all undone, the raw one
      trail.forEach((_, k) => {
        expect(undoStep(raw, trail, k)).toEqual(reapplySteps(raw, trail.slice(0, k)));
      });
      expect(undoStep(raw, trail, 0)).toEqual(raw);
    },
  );

  test.each(repairs)('%s: does nothing to a sound record', (_, repair, code) => {
    if (['force-sign-reversed', 'motion-sign-reversed', 'time-not-increasing', 'time-unit-changes'].includes(code)) return;
    const { record } = soundTest(1);
    if (code === 'samples-repeated') return; // at rest before loading even a sound record repeats itself
    const done = repair.length === 1 && code === 'several-tests' ? splitTests(record)[0]! : repair(record);
    expect(done.trail).toEqual([]);
    expect(done.record).toEqual(record);
  });
});

describe('what a repair restores', () => {
  const clean = (seed: number, logger: object = {}): TensionRecord =>
    simulateTension({
      material: { modulus: 205_000, yieldStress: 320, hardening: { law: 'swift', prestrain: 0.02, exponent: 0.16 } },
      piece: made('spike').piece,
      frame: { compliance: 1.2e-5, slack: 0.15 },
      hand: { speed: 0.016, speedAfterYield: 0.1 },
      logger: { rate: 25, lead: 2, tail: 2, ...logger },
      seed,
    }).record;

  test('a spike: the line between its neighbours, the old value in the trail', () => {
    const raw = clean(1);
    const force = raw.force.slice();
    force[900]! += 4000;
    const { record, trail } = replaceSpikes({ ...raw, force });
    expect(record.force[900]).toBeCloseTo((raw.force[899]! + raw.force[901]!) / 2, 9);
    expect(trail[0]!.values['before']).toBe(String(force[900]));
    expect(replaceSpikes({ ...raw, force }, { columns: ['travel'] }).trail).toEqual([]);
  });

  test('a jump of the travel: back to within the change between two samples', () => {
    const raw = clean(1);
    const travel = raw.travel!.map((x, i) => (i < 1500 ? x : x - 2));
    const joined = joinJumps({ ...raw, travel }).record.travel!;
    const pace = raw.travel![1501]! - raw.travel![1500]!;
    joined.forEach((x, i) => {
      expect(Math.abs(x - raw.travel![i]!)).toBeLessThan(0.01 * pace);
    });
  });

  test('a slip: the way in the grips to its noise, and the proof strength with it', () => {
    const { record, piece, parameters } = made('slip in the grips', 5);
    const { trail } = joinSlips(record);
    const way = trail.find(({ change }) => change?.kind === 'add')!.values['way'] as number;
    expect(Math.abs(way - parameters['way']!)).toBeLessThan(0.01);
    const repaired = analyseTension(record, piece, { repairs: { slips: true } });
    const sound = analyseTension(clean(5, { forceNoise: 6, motionNoise: 3e-4 }), piece);
    expect(Math.abs(repaired.proofStrengths[0]!.value / sound.proofStrengths[0]!.value - 1)).toBeLessThan(0.01);
    expect(repaired.trail.some(({ step }) => step.includes('in the grips'))).toBe(true);
  });

  test('a zero pressed under load: the strength', () => {
    const { record, piece } = made('zero pressed under load', 4);
    const sound = analyseTension(clean(4, { forceNoise: 6, motionNoise: 3e-4 }), piece);
    const repaired = analyseTension(record, piece, { repairs: { zero: true } });
    expect(Math.abs(repaired.tensileStrength!.value / sound.tensileStrength!.value - 1)).toBeLessThan(0.005);
  });

  test('a lag: the samples by which the force was late', () => {
    for (const seed of [1, 2, 3]) {
      const { record, parameters } = made('two clocks', seed);
      const change = alignChannels(record).trail[0]!.change!;
      expect(change).toMatchObject({ kind: 'advance', column: 'force' });
      expect(Math.abs((change as { samples: number }).samples - parameters['late']!)).toBeLessThanOrEqual(1);
    }
  });

  test('drift of the zero: both ends at zero again', () => {
    const { record } = removeZeroDrift(made('zero drifts').record);
    const mean = (part: Float64Array): number => part.reduce((sum, one) => sum + one, 0) / part.length;
    expect(Math.abs(mean(record.force.subarray(0, 30)))).toBeLessThan(10);
    expect(Math.abs(mean(record.force.subarray(-30)))).toBeLessThan(10);
  });

  test('drift of the zero over long stretches before and after: level at the middle of both, nothing left between', () => {
    const n = 2000;
    const pull = Float64Array.from({ length: n }, (_, i) => (i < 200 || i > 1000 ? 0 : 25 * (i - 200)));
    const travel = pull.map((_, i) => 0.002 * i);
    const drift = (i: number): number => 50 + (200 * i) / n;
    const { record } = removeZeroDrift({ force: pull.map((F, i) => F + drift(i)), travel });
    record.force.forEach((F, i) => {
      expect(Math.abs(F - pull[i]!)).toBeLessThan(2);
    });
  });

  test('an extensometer that was taken off under load is no end of the test: no drift, nothing to repair', () => {
    const { force, extension } = simulateTension({
      material: { modulus: 205_000, yieldStress: 320, hardening: { law: 'swift', prestrain: 0.02, exponent: 0.16 } },
      piece: made('spike').piece,
      hand: { speed: 0.02, speedAfterYield: 0.1 },
      logger: { rate: 25, lead: 2, tail: 2, forceNoise: 5, extensometer: { offAt: 0.05 } },
    }).record;
    const record = { force, extension: extension! };
    expect(codes(record)).toEqual(expect.arrayContaining(['extensometer-taken-off', 'tail-after-fracture']));
    expect(codes(record)).not.toContain('zero-drift');
    expect(removeZeroDrift(record).trail).toEqual([]);
  });

  test('a travel that jumps ahead under load: the way in the grips is taken out', () => {
    const raw = clean(1);
    const at = 900;
    const travel = raw.travel!.map((x, i) => (i < at ? x : x + 0.4));
    expect(checkRecord({ ...raw, travel }).map(({ code }) => code)).toContain('grip-slip');
    const joined = joinSlips({ ...raw, travel }).record.travel!;
    expect(Math.abs(joined[2000]! - raw.travel![2000]!)).toBeLessThan(0.01);
  });

  test('two tests in one file: each as if it were alone', () => {
    const { record, piece } = made('several tests', 7);
    const parts = splitTests(record);
    expect(parts).toHaveLength(2);
    const alone = analyseTension(clean(8, { forceNoise: 6, motionNoise: 3e-4 }), piece);
    const second = analyseTension(parts[1]!.record, piece);
    expect(second.tensileStrength!.value).toBeCloseTo(alone.tensileStrength!.value, 3);
    expect(second.proofStrengths[0]!.value).toBeCloseTo(alone.proofStrengths[0]!.value, 2);
  });

  test('a record without a clock is given one only by its rate', () => {
    const { force, travel } = clean(1);
    expect(rebuildTime({ force, travel: travel! }, { rate: 20 }).record.time![20]).toBeCloseTo(1, 12);
    expect(refusal(() => rebuildTime({ force, travel: travel! }))).toBe('missing options.rate');
  });
});

describe('repairs of a record without faults', () => {
  const values = (record: TensionRecord, piece: FaultyTest['piece'], repairs: Repairs): (number | undefined)[] => {
    const result = analyseTension(record, piece, { repairs });
    return [result.upperYieldStrength?.value, result.proofStrengths[0]?.value, result.tensileStrength!.value];
  };

  test.each([0, 1, 2, 6])('without noise, sound material %i: moved by no more than 1e-9', (k) => {
    const { piece } = soundTest(k);
    const material = { modulus: 205_000, yieldStress: 300, hardening: { law: 'swift' as const, prestrain: 0.02, exponent: 0.18 } };
    const { record } = simulateTension({
      material: k === 0 ? { ...material, yieldPoint: { upper: 320 } } : material,
      piece,
      frame: { compliance: k * 1e-5, slack: 0.1 * k },
      hand: { speed: 0.02, speedAfterYield: 0.1, strokes: 10 * k, depth: 0.3 },
      logger: { rate: 20, lead: 1, tail: 1, extensometer: k === 6 },
    });
    const before = values(record, piece, { spikes: false });
    values(record, piece, everything).forEach((value, i) => {
      if (before[i] === undefined) expect(value).toBeUndefined();
      else expect(Math.abs(value! / before[i] - 1)).toBeLessThan(1e-9);
    });
  });

  test('with noise: moved by less than a tenth of the scatter of repeated tests', () => {
    const repeats = (k: number, repairs: Repairs): (number | undefined)[][] =>
      [1, 2, 3, 4, 5, 6].map((seed) => {
        const { piece } = soundTest(k);
        const { record } = simulateTension({
          material: {
            modulus: 205_000,
            yieldStress: 300,
            hardening: { law: 'swift', prestrain: 0.02, exponent: 0.18 },
            ...(k === 0 ? { yieldPoint: { upper: 320 } } : {}),
          },
          piece,
          frame: { compliance: 1.5e-5, slack: 0.1 },
          hand: { speed: 0.02, speedAfterYield: 0.1 },
          logger: { rate: 25, lead: 1, tail: 1, forceNoise: 8, motionNoise: 4e-4 },
          seed,
        });
        return values(record, piece, repairs);
      });
    for (const k of [0, 1]) {
      const [before, after] = [repeats(k, { spikes: false }), repeats(k, everything)];
      [0, 1, 2].forEach((column) => {
        const list = before.flatMap((row) => row[column] ?? []);
        if (list.length === 0) return;
        const mean = list.reduce((sum, one) => sum + one, 0) / list.length;
        const scatter = Math.sqrt(list.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (list.length - 1));
        before.forEach((row, i) => {
          expect(Math.abs(after[i]![column]! - row[column]!)).toBeLessThan(0.1 * scatter);
        });
      });
    }
  });
});

describe('the main road', () => {
  test('takes repairs as an option, and its trail makes them again', () => {
    const { record, piece } = made('spike');
    const result = analyseTension(record, piece, { repairs: { zero: true, drift: true, repeats: true } });
    const { record: repaired, trail } = repairRecord(record, { zero: true, drift: true, repeats: true });
    expect(result.trail.slice(0, trail.length)).toEqual(trail);
    expect(reapplySteps(record, result.trail)).toEqual(repaired);
    expect(result.curve.stress).toHaveLength(repaired.force.length);
    expect(analyseTension(record, piece, { repairs: { spikes: false } }).trail.some(({ change }) => change)).toBe(false);
  });

  test('wrong arguments', () => {
    const { record, piece } = soundTest(0);
    expect(refusal(() => repairRecord(record, { all: true } as object))).toBe('unknown-option repairs.all');
    expect(refusal(() => repairRecord(record, { zero: 1 } as object))).toBe('wrong-type repairs.zero');
    expect(refusal(() => repairRecord(record, { lag: 0.5 }))).toBe('out-of-range repairs.lag');
    expect(refusal(() => repairRecord(record, { rate: 0 }))).toBe('not-positive repairs.rate');
    expect(refusal(() => analyseTension(record, piece, { repairs: { slip: true } as object }))).toBe('unknown-option options.repairs.slip');
    expect(refusal(() => reverseSign(record, ['extension']))).toBe('missing columns[0]');
    expect(refusal(() => reverseSign(record, 'force' as never))).toBe('wrong-type columns');
    expect(refusal(() => reapplySteps(record, 'no' as never))).toBe('wrong-type trail');
    expect(refusal(() => undoStep(record, []))).toBe('out-of-range step');
    expect(refusal(() => undoStep(record, replaceSpikes(made('spike').record).trail, 0.5))).toBe('out-of-range step');
    expect(refusal(() => alignChannels(record, { lag: 1.5 }))).toBe('out-of-range options.lag');
    expect(refusal(() => replaceSpikes(record, { columns: ['time'] as never }))).toBe('out-of-range options.columns[0]');
  });
});
