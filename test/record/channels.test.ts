import { describe, expect, test } from 'vitest';
import { checkRecord } from '../../src/index.js';
import { randomNumbers } from '../../src/numeric/index.js';
import { channelFindings } from '../../src/record/checks/channelFindings.js';
import { channelLag } from '../../src/record/checks/channelLag.js';
import { findJumps } from '../../src/record/checks/jumps.js';
import { motionFindings } from '../../src/record/checks/motionFindings.js';
import { saturationFindings } from '../../src/record/checks/saturationFindings.js';
import { spikedColumns, type SpikeColumn } from '../../src/record/checks/spikedColumns.js';
import { spikeFindings } from '../../src/record/checks/spikeFindings.js';
import { findSpikes } from '../../src/record/checks/spikes.js';
import type { MotionSurvey } from '../../src/record/survey/surveyRecord.js';
import { outlineOf } from '../support/outlines.js';

/** Spikes of one column of a record. */
const spikesOfColumn = (record: Parameters<typeof spikedColumns>[0], name: SpikeColumn) =>
  spikedColumns(record, [name]).flatMap(({ spikes }) => spikes);

const of = (count: number, value: (i: number) => number) => Array.from({ length: count }, (_, i) => value(i));
type Given = Parameters<typeof outlineOf>[2];

describe('a force at the end of its channel', () => {
  const saturated = (force: readonly number[], given: Given = {}, least = 5) =>
    saturationFindings(outlineOf(force, undefined, given), least).filter(({ code }) => code === 'force-saturated');
  /** Up by 100 N a sample to 1 kN, so many samples there, down again. */
  const cut = (samples: number, top = 1000) => [...of(10, (i) => 100 * i), ...of(samples, () => top), ...of(10, (i) => 900 - 100 * i)];

  test('five equal samples at the highest value, run into at the pace of the loading', () => {
    expect(saturated(cut(5))).toMatchObject([{ values: { force: 1000, count: 5 }, range: [10, 14] }]);
    expect(saturated(cut(4))).toEqual([]);
    expect(saturated(cut(3), {}, 3)).toHaveLength(1);
  });

  test('twice as long as at any other value', () => {
    const stepped = (samples: number) => [0, ...of(samples, () => 500), ...cut(8).slice(6)];
    expect(saturated(stepped(4))).toHaveLength(1);
    expect(saturated(stepped(5))).toEqual([]);
    // in the loaded part alone
    expect(saturated(stepped(5), { first: 3 })).toHaveLength(1);
    expect(saturated([...cut(8), ...of(5, () => -5)], { last: 20 })).toHaveLength(1);
    expect(saturated([...cut(8), ...of(5, () => -5)])).toEqual([]);
  });

  test('the longest of several stretches', () => {
    expect(saturated([...cut(5), ...cut(7)])[0]).toMatchObject({ values: { count: 7 }, range: [35, 41] });
    expect(saturated([...cut(7), ...cut(5)])[0]).toMatchObject({ values: { count: 7 }, range: [10, 16] });
    expect(saturated([...cut(7), ...cut(7)])[0]).toMatchObject({ range: [10, 16] });
  });

  test('a true maximum is approached by ever smaller steps', () => {
    const round = [...of(10, (i) => 100 * i), 995, ...of(5, () => 1000), 996, 900];
    const habit = (noise: number, step: number) => ({ habit: { noise, step, usual: () => 0 } });
    expect(saturated(round, habit(2, 0))).toEqual([]);
    expect(saturated(round, habit(1.6, 0))).toHaveLength(1);
    expect(saturated(round, habit(0, 1.7))).toEqual([]);
    expect(saturated(round, habit(0, 1.6))).toHaveLength(1);
    // left at once is cut too, where it was reached from below
    const left = [...of(10, (i) => 100 * i), 995, ...of(5, () => 1000), 990, 900];
    expect(saturated(left, habit(2, 0))).toHaveLength(1);
    expect(saturated(left, habit(4, 0))).toEqual([]);
    expect(saturated([...of(5, () => 1000), 0], habit(2, 0))).toHaveLength(1);
    // four times as long as asked for, where noise would show
    const long = (samples: number) => [...of(10, (i) => 100 * i), 999, ...of(samples, () => 1000), 999, 900];
    expect(saturated(long(20), habit(1, 0))).toHaveLength(1);
    expect(saturated(long(19), habit(1, 0))).toEqual([]);
    expect(saturated(long(20), habit(1, 2))).toEqual([]);
  });

  describe('that flickers, or is read in coarse steps', () => {
    /** Up to a round maximum and down again while the travel goes on evenly; the channel ends at so many newtons. */
    const flickering = (end: number, { noise = 0, step = 0, standing = false } = {}) => {
      const { normal } = randomNumbers(3);
      const force = of(1500, (i) => {
        const F = Math.min(end, 10_000 - 0.01 * (i - 1000) ** 2) + noise * normal();
        return step > 0 ? step * Math.round(F / step) : F;
      });
      const travel = of(1500, (i) => (standing && i > 600 ? 6 : 0.01 * i));
      const outline = outlineOf(force, travel, { first: 10, habit: { noise, step, usual: () => 10 } });
      return saturationFindings(outline, 5).filter(({ code }) => code === 'force-saturated').length;
    };
    const readings = [{ noise: 1 }, { noise: 10 }, { step: 10 }, { step: 40 }, { noise: 4, step: 10 }, { noise: 10, step: 10 }];

    test('is at its end where it stays within noise and steps of the highest and hardly within as much again below', () => {
      expect(readings.map((reading) => flickering(9300, reading))).toEqual(readings.map(() => 1));
    });

    test('a round maximum is none', () => {
      expect(readings.map((reading) => flickering(Infinity, reading))).toEqual(readings.map(() => 0));
    });

    test('nor one that is held', () => {
      expect(readings.map((reading) => flickering(9300, { ...reading, standing: true }))).toEqual(readings.map(() => 0));
    });
  });

  test('a record that ends there', () => {
    expect(saturated(cut(5).slice(0, 15))).toHaveLength(1);
    expect(saturated([...of(10, (i) => 100 * i), 995, ...of(5, () => 1000)], { habit: { noise: 2, step: 0, usual: () => 0 } })).toEqual([]);
  });
});

describe('a motion at the end of its sensor', () => {
  /** The travel stands for the last samples, over which the force changes by so much. */
  const stands = (samples: number, by: number, given: Given = {}) =>
    saturationFindings(
      outlineOf(
        [...of(50, (i) => 20 * i), ...of(samples, (i) => 1000 + (by * i) / (samples - 1))],
        [...of(50, (i) => i / 50), ...of(samples, () => 1)],
        { highest: 1000, ...given },
      ),
      99,
    ).filter(({ code }) => code === 'motion-saturated');
  test('more than twenty samples while the force goes on by a twentieth of the highest', () => {
    expect(stands(21, 60)).toMatchObject([{ values: { column: 'travel', value: 1, count: 21 }, range: [50, 70] }]);
    expect(stands(20, 60)).toEqual([]);
    // up to the sample before the last: 20 of 21
    expect(stands(22, (50 * 21) / 20 + 0.1)).toHaveLength(1);
    expect(stands(22, (50 * 21) / 20 - 0.1)).toEqual([]);
    expect(stands(22, -(50 * 21) / 20 - 0.1)).toHaveLength(1);
    expect(stands(22, 60, { habit: { noise: 9, step: 0, usual: () => 0 } })).toHaveLength(1);
    expect(stands(22, 60, { habit: { noise: 10, step: 0, usual: () => 0 } })).toEqual([]);
  });

  test('up to where the piece is loaded, and where the extensometer ends', () => {
    expect(stands(40, 200, { last: 69 })).toEqual([]);
    expect(stands(40, 200, { last: 70 })).toMatchObject([{ values: { count: 21 } }]);
    const values = Float64Array.from([...of(50, (i) => i), ...of(22, () => 50), ...of(10, () => NaN)]);
    expect(stands(32, 200, { motion: { column: 'extension', values } })).toMatchObject([{ values: { column: 'extension', count: 22 } }]);
    // a force that rises and comes back went on
    const hump = [...of(50, (i) => 20 * i), ...of(31, (i) => 1000 - 10 * (15 - Math.abs(15 - i)))];
    const found = saturationFindings(outlineOf(hump, [...of(50, (i) => i), ...of(31, () => 50)], { highest: 1000 }), 99);
    expect(found.map(({ code }) => code)).toContain('motion-saturated');
    expect(
      saturationFindings(
        outlineOf(
          hump,
          of(81, () => 1),
        ),
        99,
      ).find(({ code }) => code === 'motion-saturated')!.range,
    ).toEqual([0, 80]);
  });
});

describe('steps and noise of a channel', () => {
  const of_ = (given: Given, samples = 300) =>
    channelFindings(
      outlineOf(
        of(samples, (i) => i),
        of(samples, (i) => i / 100),
        { highest: 1000, ...given },
      ),
    );
  const habit = (noise: number, step: number) => ({ habit: { noise, step, usual: () => 0 } });
  test('fewer than two thousand steps are a note, fewer than two hundred of the force a caution', () => {
    expect(of_(habit(0, 0.5))).toEqual([]);
    expect(of_(habit(0, 0.501))).toMatchObject([
      { code: 'reading-coarse', severity: 'note', values: { column: 'force', step: 0.501, counts: 1996 } },
    ]);
    expect(of_(habit(0, 5))[0]!.severity).toBe('note');
    expect(of_(habit(0, 5.1))[0]!.severity).toBe('caution');
    expect(of_(habit(0, 5.1), 201)[0]!.severity).toBe('caution');
    expect(of_(habit(0, 5.1), 200)[0]!.severity).toBe('note');
    // of a motion always a note; it went from 0.1 to 2.5 mm
    expect(of_({ motion: { step: 0.1 }, first: 10, last: 250 })).toMatchObject([
      { code: 'reading-coarse', severity: 'note', values: { column: 'travel', step: 0.1, counts: 24 } },
    ]);
    expect(of_({ motion: { step: 0.1, end: 200 }, first: 10, last: 250 })[0]!.values['counts']).toBe(19);
    expect(of_({ motion: { step: 0.1, values: Float64Array.from(of(300, (i) => -Math.abs(i - 150) / 100)) } })[0]!.values['counts']).toBe(
      15,
    );
  });

  test('noise of more than half a per cent of the range, and of one step', () => {
    expect(of_(habit(5.1, 0))).toMatchObject([
      { code: 'signal-noisy', severity: 'caution', values: { column: 'force', noise: 5.1, share: expect.closeTo(0.51, 9) as number } },
    ]);
    expect(of_(habit(5, 0))).toEqual([]);
    expect(of_(habit(5.1, 5.2)).map(({ code }) => code)).toEqual(['reading-coarse']);
    expect(of_({ motion: { noise: 0.03 } })).toMatchObject([{ code: 'signal-noisy', values: { column: 'travel', noise: 0.03 } }]);
  });
});

test('third differences of a few samples of a smooth curve are its bend, and no noise', () => {
  const noisy = (n: number, noise = 0) => {
    const { normal } = randomNumbers(5);
    // 70 GPa, 270 MPa, exponent 20, up to 1.12 of it
    const force = Array.from({ length: n }, (_, i) => (15_000 * i) / (n - 1));
    const extension = force.map((F) => 25 * (F / 50 / 70_000 + 0.002 * (F / 50 / 270) ** 20) + noise * normal());
    return checkRecord({ force, extension }).filter(({ code }) => code === 'signal-noisy').length;
  };
  for (const n of [5, 8, 12, 20, 25, 30, 100]) expect(noisy(n)).toBe(0);
  // 5 % of the way is noise
  expect(noisy(30, 0.05)).toBe(1);
});

describe('spikes', () => {
  const spike = (first: number, last: number, height: number, nothing?: true) => ({
    range: [first, last] as const,
    height,
    ...(nothing ? { nothing } : {}),
  });
  test('up to three samples are spikes, told together; longer ones are told each', () => {
    expect(
      spikeFindings('force', [spike(5, 5, 10), spike(20, 22, 30), spike(30, 33, 99), spike(40, 40, 30), spike(60, 70, 5, true)]),
    ).toMatchObject([
      { code: 'spikes', values: { column: 'force', count: 3, largest: 30, first: 20 }, range: [20, 22] },
      { code: 'signal-strays', values: { column: 'force', count: 4, first: 30, height: 99, unit: 'N' }, range: [30, 33] },
      { code: 'signal-drops-out', values: { column: 'force', count: 11, first: 60 }, range: [60, 70] },
    ]);
    expect(spikeFindings('force', [])).toEqual([]);
  });

  const line = (change: Readonly<Record<number, number>>, n = 200, slope = 1) =>
    Float64Array.from(of(n, (i) => slope * i + (change[i] ?? 0)));
  test('the height is that over the line between the neighbours', () => {
    expect(findSpikes(line({ 100: 50 }))).toEqual([{ range: [100, 100], height: 50 }]);
    expect(findSpikes(line({ 100: -50, 101: -60, 102: -55 }))).toEqual([{ range: [100, 102], height: 60 }]);
    expect(findSpikes(line({ 50: 30, 100: -50, 101: -50 }))).toEqual([
      { range: [50, 50], height: 30 },
      { range: [100, 101], height: 50 },
    ]);
    expect(findSpikes(line({ 100: 50, 101: 50 }), 101)).toEqual([]);
    expect(findSpikes(line({ 1: 50 }))).toEqual([{ range: [1, 1], height: 50 }]);
    expect(findSpikes(line({ 198: 50 }))).toEqual([{ range: [198, 198], height: 50 }]);
    expect(findSpikes(line({ 199: 50 }))).toEqual([]);
    expect(findSpikes(line({ 1: 50 }, 8))).toHaveLength(1);
    expect(findSpikes(line({ 1: 50 }, 7))).toEqual([]);
  });

  describe('a column that jumps off and back by as much', () => {
    /** A column that rises, off by so much over some samples. */
    const box = (samples: number, height: number, rest = 0, inside: Readonly<Record<number, number>> = {}) =>
      Float64Array.from(
        of(600, (i) => i + (i >= 100 && i < 100 + samples ? height : 0) + (i >= 100 + samples ? rest : 0) + (inside[i] ?? 0)),
      );
    const found = (...given: Parameters<typeof box>) => findSpikes(box(...given)).map(({ range, height }) => [...range, height]);

    test('for four to two hundred samples, whatever way the column went meanwhile', () => {
      for (const samples of [4, 5, 20, 100, 200])
        for (const height of [50, -50]) expect(found(samples, height)).toEqual([[100, 99 + samples, Math.abs(height)]]);
      expect(found(201, 50)).toEqual([]);
    });

    test('within a quarter of its height; a level that moves stays', () => {
      // it jumps off by 51, back by 49 less what stays; a quarter of 51 is 12.75
      expect([found(20, 50, 10).length, found(20, 50, 11).length, found(20, 50, -14).length, found(20, 50, -15).length]).toEqual([
        1, 0, 1, 0,
      ]);
    });

    test('without a third of it between', () => {
      const step = (by: number) => found(20, 50, 0, { 110: by, 111: by, 112: by, 113: by, 114: by });
      // else what is off between is told alone
      expect([step(15), step(17)]).toEqual([[[100, 119, 65]], [[110, 114, 17]]]);
    });

    test('neither a fall that is made good by and by, nor one that is run into', () => {
      const shaped = (shape: (k: number) => number) =>
        findSpikes(Float64Array.from(of(600, (i) => i + (i >= 100 && i < 130 ? shape(i - 100) : 0))));
      expect(shaped((k) => (k - 30) * 2)).toEqual([]);
      expect(shaped((k) => k * 2)).toEqual([]);
      expect(shaped(() => 60)).toHaveLength(1);
    });

    test('but for a drive that goes off and back: the other columns jump with it', () => {
      const at = (shape: (inside: boolean, i: number) => number) => Float64Array.from(of(600, (i) => shape(i >= 100 && i < 120, i)));
      const force = at((inside, i) => 10 * i - (inside ? 800 : 0));
      const even = at((_, i) => 0.01 * i);
      const back = at((inside, i) => 0.01 * i - (inside ? 0.5 : 0));
      expect(spikesOfColumn({ force, travel: even }, 'force')).toHaveLength(1);
      expect(spikesOfColumn({ force, travel: back }, 'force')).toEqual([]);
      expect(spikesOfColumn({ force, travel: back }, 'travel')).toEqual([]);
      expect(spikesOfColumn({ force: at((_, i) => 10 * i), travel: back }, 'travel')).toHaveLength(1);
      expect(spikesOfColumn({ force }, 'travel')).toEqual([]);
    });

    test('nor where the channels are read one after the other, or the force is let off to next to nothing', () => {
      const at = (from: number, shape: (inside: boolean, i: number) => number) =>
        Float64Array.from(of(600, (i) => shape(i >= from && i < from + 20, i)));
      const travel = (late: number) => at(100 + late, (inside, i) => 0.01 * i - (inside ? 0.5 : 0));
      for (const share of [0.3, 0.02]) {
        const force = at(100, (inside, i) => 10 * i * (inside ? share : 1));
        for (const late of [0, 1, 2]) expect(spikesOfColumn({ force, travel: travel(late) }, 'force')).toEqual([]);
        expect(spikesOfColumn({ force, travel: travel(9) }, 'force')).toHaveLength(1);
        // one plug for both
        const dead = at(100, (inside, i) => (inside ? 0 : 0.01 * i));
        expect(spikesOfColumn({ force, travel: dead }, 'force')).toHaveLength(share === 0.02 ? 1 : 0);
      }
    });

    test('a motion by a five hundredth of its range: no material makes it go back', () => {
      const off = (height: number) => at0((i) => 0.001 * i + (i >= 100 && i < 106 ? height : 0));
      const at0 = (value: (i: number) => number) => Float64Array.from(of(6000, value));
      const force = at0((i) => 10 * i);
      const count = (height: number) => spikesOfColumn({ force, extension: off(height) }, 'extension').length;
      // of 6 mm, less four places in a hundred: 11.5 µm, one of which it goes on by
      expect([count(0.012), count(0.01), count(-0.014)]).toEqual([1, 0, 1]);
    });
  });

  test('it leaves by more than six usual changes and a fiftieth of the range', () => {
    // 150 of 250 samples rise by 1 each; the spike stands on the flat part behind
    const usual = (height: number) => findSpikes(Float64Array.from(of(250, (i) => Math.min(i, 150) + (i === 200 ? height : 0))));
    expect(usual(6.1)).toHaveLength(1);
    expect(usual(5.9)).toEqual([]);
    const bent = (height: number) => Float64Array.from(of(2000, (i) => Math.max(0, i - 1200) + (i === 600 ? height : 0)));
    // the range from 0 to 758 (21 samples at the end left out), of which a fiftieth are 15.16 to 15.2
    expect(findSpikes(bent(15.5))).toHaveLength(1);
    expect(findSpikes(bent(14.9))).toEqual([]);
  });

  test('and by three times the changes beside it; it comes back to a quarter', () => {
    // a jump of 40 with one change of so much beside it
    const beside = (at: number, by: number) =>
      findSpikes(Float64Array.from(of(200, (i) => i + (i === 100 ? 40 : 0) + (i >= at ? by : 0)))).length;
    expect([
      beside(98, 11.9),
      beside(98, 13),
      beside(103, 11),
      beside(103, 13),
      beside(97, 13),
      beside(96, 13),
      beside(104, 13),
      beside(105, 13),
    ]).toEqual([1, 0, 1, 0, 0, 1, 0, 1]);
    const back = (rest: number) => findSpikes(Float64Array.from(of(200, (i) => (i < 100 ? 0 : i === 100 ? 40 : rest)))).length;
    expect([back(10), back(10.1), back(-10), back(-10.1)]).toEqual([1, 0, 1, 0]);
  });

  test('but for changes to and from another sample that is off alone', () => {
    for (const gap of [2, 3, 4, 5])
      for (const heights of [
        [50, 51],
        [50, 500],
        [500, 50],
        [-50, 50],
        [50, -500],
      ] as const)
        expect(findSpikes(line({ 100: heights[0], [100 + gap]: heights[1] }))).toEqual([
          { range: [100, 100], height: Math.abs(heights[0]) },
          { range: [100 + gap, 100 + gap], height: Math.abs(heights[1]) },
        ]);
    expect(findSpikes(line({ 100: 50, 105: 60, 109: 70 })).map(({ range }) => range[0])).toEqual([100, 105, 109]);
    // one such sample a side: a force that swings from sample to sample, as after fracture, has no spikes
    expect(findSpikes(Float64Array.from(of(200, (i) => (i < 150 ? i : 150 * (-0.8) ** (i - 150)))))).toEqual([]);
    expect(findSpikes(line({ 1: 50, 3: 50, 196: 50, 198: 50 })).map(({ range }) => range[0])).toEqual([1, 3, 196, 198]);
    // a step that stays is no such sample, nor one that comes back by less than three quarters
    expect(findSpikes(Float64Array.from(of(200, (i) => i + (i === 100 ? 50 : 0) + (i >= 103 ? 50 : 0))))).toEqual([]);
    expect(findSpikes(Float64Array.from(of(200, (i) => (i === 100 ? 40 : i === 103 ? 40 : i > 103 ? 11 : 0))))).toEqual([]);
  });

  test('three single samples two to four apart are all found, whatever their heights', () => {
    const missed: string[] = [];
    for (const first of [2, 3, 4])
      for (const second of [2, 3, 4])
        for (const heights of [
          [50, 50, 50],
          [50, 60, 70],
          [50, 500, 50],
          [500, 50, 500],
          [-50, 50, -50],
          [-50, -500, 50],
        ] as const) {
          const places = [100, 100 + first, 100 + first + second] as const;
          const found = findSpikes(line({ [places[0]]: heights[0], [places[1]]: heights[1], [places[2]]: heights[2] }));
          const told = found.map(({ range, height }) => `${range.join('-')} ${height}`).join(', ');
          if (told !== places.map((at, k) => `${at}-${at} ${Math.abs(heights[k]!)}`).join(', '))
            missed.push(`${places.join(' ')}: ${told}`);
        }
    expect(missed).toEqual([]);
    // four in a row two apart may be a swinging; what touches a spike is no other one
    expect(findSpikes(line({ 100: 50, 102: 50, 104: 50, 106: 50 }))).toEqual([]);
    expect(findSpikes(line({ 100: 50, 101: 51, 102: 50, 104: 50 })).map(({ range }) => range)).toEqual([
      [100, 102],
      [104, 104],
    ]);
  });

  test('more than ten, and than one sample in a hundred, are none', () => {
    const many = (count: number, n: number) =>
      findSpikes(Float64Array.from(of(n, (i) => i + (i % 20 === 10 && i < 20 * count ? 500 : 0)))).length;
    expect([many(10, 400), many(11, 400), many(20, 2000), many(21, 2000)]).toEqual([10, 0, 20, 0]);
  });

  test('a signal that drops out reads next to nothing for any time, and is back within two samples', () => {
    const out = (
      samples: number,
      { level = 0, back = 1000, before = 1000, then }: { level?: number; back?: number; before?: number; then?: number } = {},
    ) =>
      findSpikes(
        Float64Array.from(of(600, (i) => (i < 100 ? before : i < 100 + samples ? level : i === 100 + samples ? back : (then ?? before)))),
      );
    expect(out(4)).toEqual([{ range: [100, 103], height: 1000, nothing: true }]);
    expect(out(200)).toEqual([{ range: [100, 299], height: 1000, nothing: true }]);
    expect(out(201)).toEqual([{ range: [100, 300], height: 1000, nothing: true }]);
    expect(out(10, { level: 50 })).toHaveLength(1);
    // what reads more than a twentieth strays
    expect(out(10, { level: 51 })).toEqual([{ range: [100, 109], height: 949 }]);
    expect(out(10, { level: -50 })).toHaveLength(1);
    expect(out(10, { back: 701, then: 701 })).toHaveLength(1);
    expect(out(10, { back: 699, then: 699 })).toHaveLength(0);
    expect(out(10, { back: 1999, then: 1999 })).toHaveLength(1);
    expect(out(10, { back: 2001, then: 2001 })).toHaveLength(0);
    // on its way back for a sample
    expect(out(10, { back: 400 })).toEqual([{ range: [100, 110], height: 1000, nothing: true }]);
    expect(out(10, { before: -1000, back: -1000 })).toHaveLength(1);
    // one that is near nothing before does not drop out
    const noisy = (before: number) =>
      findSpikes(Float64Array.from(of(600, (i) => (i >= 100 && i < 110 ? 0 : before) + (i % 2 === 0 ? 5 : 0)))).map(
        ({ nothing }) => nothing,
      );
    expect(noisy(1000)).toEqual([true]);
    expect(noisy(100)).toEqual([undefined]);
  });
});

describe('a motion that jumps', () => {
  /** A hundred samples by 0.01 mm each; from a sample on farther by a jump. */
  const jumped = (by: number, at = 50, n = 101) => Float64Array.from(of(n, (i) => 0.01 * i + (i >= at ? by : 0)));
  const outline = (given: Given = {}, n = 101) =>
    outlineOf(
      of(n, (i) => 100 * i),
      of(n, (i) => 0.01 * i),
      { habit: { noise: 0, step: 0, usual: () => 100 }, ...given },
    );
  const jumps = (motion: Float64Array, given: Given = {}) => findJumps(outline(given, motion.length), motion);

  test('its sample and size', () => {
    expect(jumps(jumped(0.5))).toEqual([{ at: 50, size: expect.closeTo(0.51, 12) as number }]);
    expect(jumps(jumped(-0.5))).toEqual([{ at: 50, size: expect.closeTo(-0.49, 12) as number }]);
    expect(jumps(jumped(0))).toEqual([]);
  });

  test('ten times the pace around, and five times any change within five samples', () => {
    expect([jumps(jumped(0.0881)).length, jumps(jumped(0.0879)).length]).toEqual([1, 0]);
    const beside = (at: number, by: number) => jumps(jumped(0.49).map((x, i) => (i >= at ? x + by : x))).length;
    // a change of 0.1 mm is a fifth of 0.5 mm
    expect([45, 55].map((at) => beside(at, 0.089))).toEqual([1, 1]);
    expect([44, 45, 49, 51, 55, 56].map((at) => beside(at, 0.091))).toEqual([1, 0, 0, 0, 0, 1]);
  });

  test('within the loaded part, two samples from its ends', () => {
    const at = (place: number, given: Given = {}) => jumps(jumped(0.5, place), given).length;
    expect([at(1), at(2), at(98), at(99)]).toEqual([0, 1, 1, 0]);
    expect([at(50, { first: 48 }), at(50, { first: 49 })]).toEqual([1, 0]);
    expect([at(50, { last: 52 }), at(50, { last: 51 })]).toEqual([1, 0]);
    expect(
      findJumps(
        outline(),
        jumped(0.5).map((x, i) => (i > 52 ? NaN : x)),
      ),
    ).toHaveLength(1);
    expect(
      findJumps(
        outline(),
        jumped(0.5).map((x, i) => (i > 51 ? NaN : x)),
      ),
    ).toHaveLength(0);
  });

  test('at least three thousandths of the whole way, and five steps', () => {
    // ten thousandths of a millimetre a sample around, far more elsewhere
    const way = (total: number) =>
      jumps(Float64Array.from(of(200, (i) => (i < 100 ? 1e-6 * i : 1e-6 * i + 0.02 + (i > 150 ? (total * (i - 150)) / 49 : 0))))).length;
    expect([way(6.6), way(6.7)]).toEqual([1, 0]);
    // 40 samples to and fro between steps of 0.01 mm
    const stepped = (steps: number) => jumps(Float64Array.from(of(200, (i) => 0.01 * (Math.floor(i / 8) + (i >= 101 ? steps : 0))))).length;
    expect([stepped(5), stepped(40)]).toEqual([0, 1]);
  });

  test('a gap in time explains it', () => {
    const gap = (step: number, beside = 1) =>
      jumps(jumped(0.5), { time: Float64Array.from(of(101, (i) => i + (i >= 50 ? step - 1 : 0) + (i >= 51 ? beside - 1 : 0))) }).length;
    expect([gap(4), gap(4.1), gap(8, 2), gap(8.1, 2)]).toEqual([1, 0, 1, 0]);
    const before = jumps(jumped(0.5), { time: Float64Array.from(of(101, (i) => i + (i >= 49 ? 1 : 0) + (i >= 50 ? 7 : 0))) });
    expect(before).toHaveLength(1);
  });

  test('the force went on as before', () => {
    const with_ = (rise: number, habit: object, highest = 100) => {
      const force = of(101, (i) => (i >= 50 ? rise : 0));
      return findJumps(
        outlineOf(
          force,
          of(101, (i) => i),
          { highest, habit: { noise: 0, step: 0, usual: () => 0, ...habit } },
        ),
        jumped(0.5),
      ).length;
    };
    expect([with_(60, { noise: 10 }), with_(61, { noise: 10 })]).toEqual([1, 0]);
    expect([with_(30, { step: 10 }), with_(-31, { step: 10 })]).toEqual([1, 0]);
    expect([with_(-60, { usual: () => 10 }), with_(61, { usual: () => 10 })]).toEqual([1, 0]);
    expect([with_(10, {}, 1000), with_(11, {}, 1000)]).toEqual([1, 0]);
  });

  test('a logger that repeats samples catches up by as much as it missed', () => {
    // four samples stand, then their way and a little more
    const caught = (by: number) => jumps(jumped(0).map((x, i) => (i > 45 && i < 50 ? 0.45 : i >= 50 ? x + by : x))).length;
    expect([caught(0.1), caught(0.5)]).toEqual([0, 1]);
  });

  test('more than twenty are none', () => {
    const many = (count: number) => jumps(Float64Array.from(of(40 * count + 40, (i) => 0.01 * i + Math.floor((i + 20) / 40)))).length;
    expect([many(19), many(20)]).toEqual([20, 0]);
  });
});

describe('a lag between force and motion', () => {
  // pulses of the hand every 40 samples; the force is the motion, so many samples later
  const way = (i: number): number => i + 5 * Math.sin((2 * Math.PI * i) / 40) + 3 * Math.sin((2 * Math.PI * i) / 97);
  const late = (lag: number, n = 1001, pulse = way) =>
    outlineOf(
      of(n, (i) => 100 * pulse(i - lag)),
      of(n, pulse),
      { first: 1 },
    );
  test.each([3, -3, 10, -10])('of %i samples', (lag) => {
    const found = channelLag(late(lag))!;
    expect(found.samples).toBe(lag);
    // but for the few samples at the ends of the stretch the rates are the same
    expect(found.correlation).toBeGreaterThan(0.99);
    expect(found.without).toBeLessThan(0.9);
  });

  test('none where both run together, where the drive is even, without motion, and of a short record', () => {
    expect(channelLag(late(0))).toBeUndefined();
    expect(channelLag(late(5, 1001, (i) => i))).toBeUndefined();
    expect(channelLag(outlineOf(of(1001, way), undefined))).toBeUndefined();
    // from a tenth to six tenths of the highest force are half of the samples
    expect(channelLag(late(10, 230))?.samples).toBe(10);
    expect(channelLag(late(10, 180))).toBeUndefined();
  });

  test('pulses within noise and steps of the motion are none', () => {
    const within = (motion: object) => channelLag({ ...late(10), motion: { ...late(10).motion!, ...motion } });
    expect(within({ noise: 0.1 })?.samples).toBe(10);
    expect(within({ noise: 100 })).toBeUndefined();
    expect(within({ step: 0.1 })?.samples).toBe(10);
    expect(within({ step: 300 })).toBeUndefined();
    expect(within({ end: 150 })).toBeUndefined();
  });

  test('a force that does not pulse with the motion', () => {
    const other = outlineOf(
      of(1001, (i) => 100 * (i + 5 * Math.sin((2 * Math.PI * i) / 13))),
      of(1001, way),
    );
    expect(channelLag(other)).toBeUndefined();
  });
});

describe('doubts about the motion', () => {
  const survey: MotionSurvey = { column: 'travel', end: 101, step: 0, repeated: 0, backward: 0, largest: 0 };
  const n = 101;
  const force = Float64Array.from(of(n, (i) => 100 * i));
  const straight = Float64Array.from(of(n, (i) => 0.01 * i));
  const found = (record: object, given: Partial<MotionSurvey> = {}) =>
    motionFindings(
      { force, ...record },
      outlineOf(force, straight, { habit: { noise: 0, step: 0, usual: () => 100 } }),
      { ...survey, ...given },
      [],
      0.05,
    ).map(({ code, values, range }) => ({ code, values, range }));
  const jumped = (...steps: readonly (readonly [number, number])[]) =>
    straight.map((x, i) => x + steps.reduce((sum, [at, by]) => sum + (i >= at ? by : 0), 0));

  test('nothing of a straight one, nothing without one', () => {
    expect(found({ travel: straight })).toEqual([]);
    expect(motionFindings({ force, travel: jumped([50, 1]) }, outlineOf(force, straight), undefined, [], 0.05)).toEqual([]);
  });

  test('a travel that only jumps ahead slipped in the grips, each time', () => {
    const size = (by: number) => expect.closeTo(by + 0.01, 9) as number;
    expect(found({ travel: jumped([30, 0.5], [60, 0.7]) })).toEqual([
      { code: 'grip-slip', values: { column: 'travel', sample: 29, fall: 0, way: size(0.5), unit: 'mm' }, range: [29, 30] },
      { code: 'grip-slip', values: { column: 'travel', sample: 59, fall: 0, way: size(0.7), unit: 'mm' }, range: [59, 60] },
    ]);
    expect(found({ travel: jumped([30, 0.5], [60, -0.7]) })).toEqual([
      { code: 'motion-jumps', values: { column: 'travel', count: 2, largest: size(-0.7), unit: 'mm', sample: 60 }, range: [59, 60] },
    ]);
  });

  test('an extension or strain that jumps was set anew; the largest jump is told', () => {
    for (const column of ['extension', 'strain'])
      expect(found({ [column]: jumped([30, -0.8], [60, 0.7]) })).toEqual([
        {
          code: 'motion-jumps',
          values: { column, count: 2, largest: expect.closeTo(-0.79, 9) as number, unit: column === 'strain' ? 'mm/mm' : 'mm', sample: 30 },
          range: [29, 30],
        },
      ]);
  });

  test('samples that repeat, a motion that goes back, an extensometer that was taken off or is empty', () => {
    // a twentieth of 101 samples
    expect(found({}, { repeated: 5 })).toEqual([]);
    expect(found({}, { repeated: 6 })).toEqual([{ code: 'samples-repeated', values: { share: 600 / 101 }, range: undefined }]);
    expect(found({}, { backward: 2, largest: 0.3 })).toEqual([
      { code: 'extension-goes-back', values: { column: 'travel', count: 2, largest: 0.3, unit: 'mm' }, range: undefined },
    ]);
    expect(found({ extension: straight }, { column: 'extension', end: 60 })).toEqual([
      { code: 'extensometer-taken-off', values: { column: 'extension', sample: 60, reading: 0.59, unit: 'mm' }, range: [60, 100] },
    ]);
    expect(found({ travel: straight }, { end: 60 })).toEqual([]);
    for (const column of ['extension', 'strain'])
      for (const end of [0, 1])
        expect(found({ travel: straight, [column]: straight.map((x, i) => (i < end ? x : NaN)) })).toEqual([
          { code: 'channel-empty', values: { column }, range: [0, 100] },
        ]);
    const none = straight.map(() => NaN);
    expect(found({ extension: none, strain: none }, { column: 'extension', end: 0 }).map(({ values }) => values)).toEqual([
      { column: 'extension' },
      { column: 'strain' },
    ]);
    expect(found({ extension: straight }, { column: 'extension', end: 2 }).map(({ code }) => code)).toEqual(['extensometer-taken-off']);
  });
});
