import { describe, expect, test } from 'vitest';
import { analyseTension, type Repairs, type TensionRecord } from '../../src/index.js';
import { simulateTension } from '../../src/simulate/index.js';
import { COMPLIANCE, mildSteel, roundPiece } from '../support/records.js';
import { withLoops } from '../support/loops.js';

const RATE = 30;
const AREA = roundPiece.section.area;
const { record } = simulateTension({
  material: mildSteel,
  piece: roundPiece,
  frame: { compliance: COMPLIANCE, slack: 0.2 },
  hand: { speed: 0.05, pauses: [{ stress: 330, duration: 2 }] },
  logger: { rate: RATE, lead: 1, tail: 1, forceNoise: 0, motionNoise: 0 },
  seed: 3,
});
const sound: TensionRecord = { time: record.time!, force: record.force, travel: record.travel! };
const upper = sound.force.findIndex((F) => F > 304.9 * AREA);
// on the elastic line, on the plateau, where the force does not rise over the loop, and in the hardening range; 2 s each
const looped = withLoops(
  sound,
  [
    { force: 150 * AREA, to: 0.2 },
    { force: 0, from: upper + 100, to: 0.2 },
    { force: 0, from: upper + 200, to: 0.2 },
    { force: 320 * AREA, to: 0.2 },
    { force: 340 * AREA, to: 0.2 },
  ],
  { travel: 48 / 206_000 / AREA + COMPLIANCE },
);
const of = (given: TensionRecord, repairs: Repairs = {}) => analyseTension(given, roundPiece, { frameCompliance: COMPLIANCE, repairs });
const told = (result: ReturnType<typeof of>, pattern = /pause|time-gap/) => result.findings.filter(({ code }) => pattern.test(code));

describe('where excursions are left out of the record', () => {
  const without = of(sound);
  const pause = told(without);

  test('neither does the drive stand there, nor does the logger miss anything: the one true pause is told, as of the record without them', () => {
    expect(pause.map(({ code }) => code)).toEqual(['pause']);
    expect(Number(pause[0]!.values['duration'])).toBeCloseTo(2, 1);
    const repaired = of(looped, { envelope: true });
    expect(repaired.trail.find(({ code }) => code === 'excursions-left-out')!.values).toMatchObject({ count: 5 });
    expect(told(repaired).map(({ code, values }) => [code, values['duration']])).toEqual([
      ['pause', expect.closeTo(Number(pause[0]!.values['duration']), 6)],
    ]);
    // and the piece was loaded as fast
    const fastness = (result: typeof repaired) => result.loading!.stages.map(({ strainRate }) => strainRate.median);
    fastness(repaired).forEach((rate, k) => {
      expect(rate / fastness(without)[k]!).toBeCloseTo(1, 2);
    });
    expect(repaired.rates!.time.at(-1)).toBeCloseTo(without.rates!.time.at(-1)!, 6);
  });

  test('where they stay in the curve, rate and evenness over the elastic window are those of the loading', () => {
    const of10 = (record: TensionRecord) => ({ ...record, time: Float64Array.from(record.time!, (t) => 10 * t) });
    const rates = (given: TensionRecord) => told(of(given), /stress-rate|uneven/).map(({ code, values }) => [code, values['rate']]);
    const [one, ...others] = rates(of10(sound));
    expect([one![0], others]).toEqual(['stress-rate-outside', []]);
    expect(rates(of10(looped))).toEqual([[one![0], expect.closeTo(Number(one![1]), 6)]]);
  });

  test('a gap of the logger elsewhere is told, and one that another repair leaves', () => {
    const missing = Uint8Array.from(looped.force, (_, i) => (i > 1500 && i < 1560 ? 0 : 1));
    const picked = (column: ArrayLike<number>) => Float64Array.from(column).filter((_, i) => missing[i] === 1);
    const holed = { time: picked(looped.time!), force: picked(looped.force), travel: picked(looped.travel!) };
    const gaps = (repairs: Repairs) => told(of(holed, repairs), /time-gap/).map(({ values }) => [values['count'], values['longest']]);
    expect(gaps({ envelope: true })).toEqual([[1, expect.closeTo(60 / RATE, 6)]]);
    // the drive does not move in the lead before the test: repeated samples are a time without news
    expect(gaps({ envelope: true, repeats: true })).toEqual([[2, expect.closeTo(60 / RATE, 6)]]);
  });

  test('a slip that is taken out is no gap', () => {
    const at = sound.force.findIndex((F) => F > 315 * AREA);
    const way = 0.3;
    const back = Array.from({ length: 30 }, (_, k) => (0.2 * (30 - k)) / 30);
    const put = (column: Float64Array, rows: (part: number) => number, later: (value: number) => number) =>
      Float64Array.from([...column.subarray(0, at + 1), ...back.map(rows), ...Array.from(column.subarray(at + 1), later)]);
    const F = sound.force[at]!;
    const x = sound.travel![at]! + way;
    const elastic = 48 / 206_000 / AREA + COMPLIANCE;
    const slipped = {
      force: put(
        sound.force,
        (part) => F * (1 - part),
        (value) => value,
      ),
      travel: put(
        sound.travel!,
        (part) => x - part * F * elastic,
        (value) => value + way,
      ),
      time: Float64Array.from({ length: sound.force.length + back.length }, (_, i) => i / RATE),
    };
    const repaired = of(slipped, { slips: true });
    expect(repaired.trail.map(({ code }) => code)).toContain('slip-left-out');
    expect(told(repaired).map(({ code }) => code)).toEqual(['pause']);
  });
});
