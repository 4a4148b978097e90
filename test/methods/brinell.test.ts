import { describe, expect, test } from 'vitest';
import {
  analyseBrinell,
  brinellCombinations,
  brinellDwell,
  brinellHardness,
  brinellIndices,
  fromJson,
  required,
  strengthFromBrinell,
  toJson,
  type BrinellIndentation,
  type BrinellPiece,
} from '../../src/index.js';
import { figures, renderHtml, summarise } from '../../src/report/index.js';
import { simulateBrinell, type SimulatedHold } from '../../src/simulate/index.js';
import { refusal } from '../support/thrown.js';

const FORCE = 9806.65;
const hard = (hold: SimulatedHold, count = 1) => simulateBrinell({ hardness: 100, ballDiameter: 10, force: FORCE, hold, count });
const codes = (one: BrinellIndentation, piece: BrinellPiece = {}, force = FORCE) =>
  analyseBrinell({ ballDiameter: 10, force, indentations: [one] }, piece).findings.map(({ code }) => code);
const held = (hold: SimulatedHold) => analyseBrinell(hard(hold).readings).findings.map(({ code }) => code);

describe('brinellDwell', () => {
  test.each([
    { rise: 3, dwell: 14, rate: 20, forceNoise: 0 },
    { rise: 6, dwell: 11, rate: 100, forceNoise: 10 },
    { rise: 2.5, dwell: 12, rate: 5, forceNoise: 5 },
  ])('finds rise $rise s and dwell $dwell s, logged $rate times a second with $forceNoise N of noise', (hold) => {
    const { record } = hard(hold).readings.indentations[0]!;
    const found = required(brinellDwell(record));
    expect(Math.abs(found.duration - hold.dwell)).toBeLessThan(0.2 + 1 / hold.rate);
    expect(Math.abs(found.rise - hold.rise)).toBeLessThan(0.2 + 2 / hold.rate);
    expect(Math.abs(found.force / FORCE - 1)).toBeLessThan(0.002);
    expect(found.change).toBeLessThan(0.004);
  });

  test('what is never held is a reason, and time that stands still is refused', () => {
    expect(brinellDwell({ force: [0, 0, 1, 0, 0], time: [0, 1, 2, 3, 4] })).toMatchObject({ ok: false, reason: 'not-held' });
    expect(brinellDwell({ force: [0, 0, 0, 0], time: [0, 1, 2, 3] })).toMatchObject({ ok: false, reason: 'not-held' });
    expect(refusal(() => brinellDwell({ force: [0, 1], time: [0, 0] }))).toBe('not-increasing record.time[1]');
    expect(refusal(() => brinellDwell({ force: [0, 1] }))).toBe('missing record.time');
  });
});

describe('brinellHardness', () => {
  test('the limits of the diameter belong to the range', () => {
    const valid = (diameters: number) => brinellHardness({ force: 1, ballDiameter: 10, diameters }).valid;
    expect([2.4, 6].map(valid)).toEqual([true, true]);
    expect([2.399, 6.001].map(valid)).toEqual([false, false]);
  });

  test('twice the force, twice the hardness; readings count by their mean', () => {
    const of = (force: number, diameters: number | number[]) => brinellHardness({ force, ballDiameter: 5, diameters }).hardness;
    expect(of(2000, 2)).toBeCloseTo(2 * of(1000, 2), 12);
    expect(of(2000, [1.9, 2.1])).toBe(of(2000, 2));
  });

  test('wrong arguments are refused', () => {
    const call = (input: object) => refusal(() => brinellHardness({ force: 1, ballDiameter: 10, diameters: 4, ...input }));
    expect(call({ force: 0 })).toBe('not-positive force');
    expect(call({ ballDiameter: NaN })).toBe('not-finite ballDiameter');
    expect(call({ diameters: 10 })).toBe('out-of-range diameters');
    expect(call({ diameters: [] })).toBe('empty diameters');
    expect(call({ diameters: [4, -4] })).toBe('not-positive diameters[1]');
    expect(call({ depth: 1 })).toBe('unknown-option input.depth');
  });
});

describe('brinellCombinations', () => {
  const all = brinellCombinations({ capacity: 25_000, verifiedFrom: 2000, verifiedTo: 20_000 });

  test('those of the frame, largest first, with the verified range', () => {
    expect(all[0]!.designation).toBe('HBW 10/1500');
    expect(all.map(({ designation }) => designation)).not.toContain('HBW 10/3000');
    const verified = (designation: string) => all.find((one) => one.designation === designation)!.verified;
    expect(['HBW 10/250', 'HBW 5/125', 'HBW 2.5/62.5', 'HBW 5/250'].map(verified)).toEqual([true, false, false, true]);
    expect(brinellCombinations({ capacity: 25_000 })[0]).not.toHaveProperty('verified');
    expect(brinellCombinations({ capacity: 5 })).toEqual([]);
  });

  test('every index is 0.102 F/D² within the rounding of 0.102, and its hardness range is that of 0.60 and 0.24 of the ball', () => {
    for (const { ballDiameter, force, forceIndex, hardness } of all) {
      expect((0.102 * force) / ballDiameter ** 2 / forceIndex).toBeCloseTo(1, 3);
      expect(brinellHardness({ force, ballDiameter, diameters: 0.6 * ballDiameter }).hardness).toBeCloseTo(hardness[0], 9);
      expect(hardness[1]).toBeLessThanOrEqual(650);
    }
  });

  test('each says what it serves for', () => {
    const uses = (designation: string) => all.find((one) => one.designation === designation)!.uses.map(({ material }) => material);
    expect(uses('HBW 5/750')).toEqual(['steel, nickel and titanium alloys', 'cast iron', 'copper alloys']);
    expect(uses('HBW 10/100')).toEqual(['lead and tin']);
    expect(uses('HBW 10/1500')).toEqual(['light metals', 'light metals']);
  });

  test('wrong arguments are refused', () => {
    expect(refusal(() => brinellCombinations({ capacity: 0 }))).toBe('not-positive frame.capacity');
    expect(refusal(() => brinellCombinations({ capacity: 1, verifiedFrom: -1 }))).toBe('out-of-range frame.verifiedFrom');
    expect(refusal(() => brinellCombinations({ capacity: 1, verifiedTo: 0 }))).toBe('not-positive frame.verifiedTo');
  });
});

test('brinellIndices: by material and hardness, both where two ranges meet', () => {
  expect(brinellIndices('cast iron', 139)).toEqual([10]);
  expect(brinellIndices('cast iron', 140)).toEqual([10, 30]);
  expect(brinellIndices('copper alloys', 250)).toEqual([30]);
  expect(brinellIndices('lead and tin', 5)).toEqual([1]);
  expect(refusal(() => brinellIndices('wood' as never, 5))).toBe('out-of-range material');
  expect(refusal(() => brinellIndices('cast iron', -5))).toBe('out-of-range hardness');
});

test('strengthFromBrinell: steels between 80 and 450 HBW only', () => {
  const reason = (hardness: number, material: Parameters<typeof strengthFromBrinell>[0]['material']) => {
    const estimate = strengthFromBrinell({ hardness, material });
    return estimate.ok ? 'ok' : estimate.reason;
  };
  expect([79, 80, 450, 451].map((one) => reason(one, 'steel'))).toEqual(['hardness-outside', 'ok', 'ok', 'hardness-outside']);
  for (const material of ['cold-worked steel', 'austenitic steel', 'cast iron', 'aluminium', 'copper', 'other'] as const)
    expect(reason(200, material)).toBe('no-single-factor');
  expect(refusal(() => strengthFromBrinell({ hardness: 200, material: 'glass' as never }))).toBe('out-of-range material');
});

describe('analyseBrinell', () => {
  test('finds the truth of a simulated test within its readings', () => {
    const { readings, truth } = simulateBrinell({
      hardness: 163,
      ballDiameter: 5,
      force: 7354.99,
      count: 5,
      readingNoise: 0.005,
      readingStep: 0.01,
      hold: { forceNoise: 10 },
      seed: 7,
    });
    const result = analyseBrinell(readings, { material: 'steel, nickel and titanium alloys', thickness: 5 });
    // two readings of 0.005 mm (and steps of 0.01) on each of five: 0.0018 mm of 2.35 mm, doubled in the hardness; three times that
    expect(Math.abs(result.hardness!.value / truth.hardness - 1)).toBeLessThan(0.006);
    expect(result.designation).toBe('HBW 5/750');
    expect(result.findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(result.indentations[0]!.depth.value).toBeCloseTo(truth.depth, 2);
  });

  test('the highest force held governs, whether it rises or falls meanwhile', () => {
    for (const drift of [-0.03, 0.03]) {
      const { readings, truth } = hard({ drift });
      const result = analyseBrinell(readings);
      // means over half a second of a force that changes by 3 % in 12 s
      expect(Math.abs(result.indentations[0]!.force.value / truth.force - 1)).toBeLessThan(0.002);
      expect(Math.abs(result.hardness!.value - 100)).toBeLessThan(0.3);
      expect(result.findings.map(({ code }) => code)).toContain('brinell-force-unsteady');
    }
  });

  test('how the force was brought on and held', () => {
    expect(held({})).toEqual([]);
    expect(held({ drift: 0.008, forceNoise: 10 })).toEqual([]);
    expect(held({ dwell: 6 })).toEqual(['brinell-dwell-outside']);
    expect(held({ dwell: 10 })).toEqual([]);
    expect(held({ dwell: 15 })).toEqual([]);
    expect(held({ dwell: 20 })).toEqual(['brinell-dwell-outside']);
    expect(held({ rise: 1 })).toEqual(['brinell-rise-outside']);
    expect(held({ rise: 12 })).toEqual(['brinell-rise-outside']);
    expect(codes({ diameters: [4, 4], record: { force: [0, 0, FORCE, 0, 0], time: [0, 1, 2, 3, 4] } })).toEqual([
      'brinell-dwell-not-found',
    ]);
  });

  test('diameters: one reading, two that differ, outside the range', () => {
    expect(codes({ diameters: 4 })).toEqual(['brinell-one-diameter']);
    expect(codes({ diameters: [3.98, 4.02] })).toEqual([]);
    expect(codes({ diameters: [3.97, 4.03] })).toEqual(['brinell-diameters-differ']);
    expect(codes({ diameters: [2.2, 2.2] })).toEqual(['brinell-indentation-outside']);
  });

  test('an indentation outside does not count in the mean; where none counts there is no mean', () => {
    const result = analyseBrinell({ ballDiameter: 10, force: FORCE, indentations: [{ diameters: [2.2, 2.2] }, { diameters: [4, 4] }] });
    expect(result.hardness!.value).toBe(result.indentations[1]!.hardness.value);
    const none = analyseBrinell(
      { ballDiameter: 10, force: FORCE, indentations: [{ diameters: [2.2, 2.2] }] },
      { material: 'copper alloys' },
      { strengthOf: 'steel' },
    );
    expect(none).not.toHaveProperty('hardness');
    expect(none).not.toHaveProperty('estimatedStrength');
  });

  test('an indentation outside says nothing about the thickness either, and stands marked in the table', () => {
    // 3 mm is more than 8 times the depth of the first (2.16 mm) and less than that of the second (5.7 mm)
    const readings = { ballDiameter: 5, force: 7355, indentations: [{ diameters: [2.26, 2.26] }, { diameters: [3.5, 3.5] }] };
    const result = analyseBrinell(readings, { thickness: 3 });
    expect(result.findings.map(({ code }) => code)).toEqual(['brinell-indentation-outside']);
    expect(analyseBrinell(readings, { thickness: 2 }).findings.map(({ code }) => code)).toContain('brinell-piece-thin');
    const stamps = summarise(result).flatMap(({ symbol, stamp }) => (stamp === undefined ? [] : [[symbol, stamp]]));
    expect(stamps).toEqual([['HBW 2', 'outside 0.24 to 0.60 of the ball: it does not count']]);
  });

  test('indentations that lie apart are a doubt about their mean', () => {
    const of = (...diameters: number[]) =>
      analyseBrinell({ ballDiameter: 5, force: 7355, indentations: diameters.map((d) => ({ diameters: [d, d] })) });
    // 177, 177 and 255 HBW
    const found = of(2.26, 2.26, 1.9).findings.find(({ code }) => code === 'readings-differ')!;
    expect(found).toMatchObject({ severity: 'caution', field: 'hardness' });
    expect(found.values['share']).toBeCloseTo(38.3, 1);
    expect(of(2.26, 2.28, 2.22).findings.some(({ code }) => code === 'readings-differ')).toBe(false);
    // one that does not count does not scatter
    expect(of(2.26, 2.26, 3.5).findings.some(({ code }) => code === 'readings-differ')).toBe(false);
  });

  test('text in the place of a number is refused when a result is read', () => {
    const result = analyseBrinell({ ballDiameter: 5, force: 7355, indentations: [{ diameters: [2.26, 2.26] }] });
    const changed = (
      change: (parsed: { hardness: Record<string, unknown>; indentations: { depth: Record<string, unknown> }[] }) => void,
    ) => {
      const parsed = JSON.parse(toJson(result)) as Parameters<typeof change>[0];
      change(parsed);
      return refusal(() => fromJson(JSON.stringify(parsed), 'brinell'));
    };
    expect(changed(({ hardness }) => (hardness['value'] = '178'))).toBe('wrong-type hardness.value');
    expect(changed(({ hardness }) => (hardness['standardUncertainty'] = null))).toBe('wrong-type hardness.standardUncertainty');
    expect(changed(({ indentations }) => (indentations[0]!.depth['value'] = [1]))).toBe('wrong-type indentations[0].depth.value');
  });

  test('force: off its nominal value, of no index, unsuited to the material', () => {
    expect(codes({ diameters: [4, 4], force: 1.01 * FORCE })).toEqual([]);
    expect(codes({ diameters: [4, 4], force: 1.03 * FORCE })).toEqual(['brinell-force-not-nominal']);
    expect(codes({ diameters: [4, 4], force: 2 * FORCE })).toEqual(['brinell-index-unusual']);
    expect(codes({ diameters: [4, 4] }, { material: 'copper alloys' })).toEqual([]);
    expect(codes({ diameters: [4, 4] }, { material: 'steel, nickel and titanium alloys' })).toEqual(['brinell-index-unsuited']);
    const odd = analyseBrinell({ ballDiameter: 8, force: FORCE, indentations: [{ diameters: [3, 3] }] }, { material: 'copper alloys' });
    expect(odd.designation).toBe('HBW 8/1000');
    expect(odd.findings.map(({ code }) => code)).toEqual(['brinell-index-unusual', 'brinell-index-unsuited']);
  });

  test('a ball and a force that are no pair, each of the standard for itself: the sentence names both', () => {
    const odd = analyseBrinell({ ballDiameter: 5, force: 375 * 9.80665, indentations: [{ diameters: [1.8, 1.8] }] });
    expect(odd.findings.map(({ code, values }) => [code, values['ball'], Math.round(Number(values['index']))])).toEqual([
      ['brinell-index-unusual', 5, 15],
    ]);
    expect(odd.findings[0]!.message).toContain('a ball of 5 mm with 3677 N');
  });

  test('hardness above the end of the scale, and a ball too small for cast iron', () => {
    const hard = (diameter: number) =>
      analyseBrinell({ ballDiameter: 10, force: 29420, indentations: [{ diameters: [diameter, diameter] }] });
    // tables of the standard, from memory: 653 HBW at 2.40 mm, 647 at 2.41 mm
    expect(hard(2.4).findings.map(({ code }) => code)).toEqual(['brinell-too-hard']);
    expect(hard(2.41).findings).toEqual([]);
    const iron = (ballDiameter: number) =>
      analyseBrinell(
        { ballDiameter, force: 30 * 9.80665 * ballDiameter ** 2, indentations: [{ diameters: [0.4 * ballDiameter, 0.4 * ballDiameter] }] },
        { material: 'cast iron' },
      ).findings.map(({ code }) => code);
    expect(iron(1)).toEqual(['brinell-ball-unsuited']);
    expect(iron(2.5)).toEqual([]);
    const small = brinellCombinations({ capacity: 30000 }).filter(({ ballDiameter }) => ballDiameter === 1);
    expect(small.length).toBeGreaterThan(0);
    expect(small.flatMap(({ uses }) => uses).map(({ material }) => material)).not.toContain('cast iron');
  });

  test('the scale is that of most forces; one beyond 1 % of it is told and does not count', () => {
    // 750 kgf on a ball of 5 mm, the last 4.1 % off
    const indentations = [1, 1.004, 1.041].map((share, k) => ({ diameters: [2.5, 2.52, 2.6][k]!, force: share * 750 * 9.80665 }));
    const result = analyseBrinell({ ballDiameter: 5, indentations });
    expect(result.designation).toBe('HBW 5/750');
    expect(result.indentations.map(({ offScale }) => offScale)).toEqual([undefined, undefined, true]);
    const [first, second] = result.indentations.map(({ hardness }) => hardness.value);
    expect(result.hardness!.value).toBeCloseTo((first! + second!) / 2, 9);
    expect(result.findings.find(({ code }) => code === 'brinell-indentation-off-scale')!.values).toEqual({
      number: 3,
      share: expect.closeTo(4.1, 9) as number,
      designation: 'HBW 5/750',
    });
    const page = renderHtml(result);
    expect(page).toContain('the force is not that of the scale: it does not count');
    expect(page).toContain('3, of which 2 count');
    // none of a scale of the standard: all count, under their mean
    const own = analyseBrinell({ ballDiameter: 5, indentations: [5000, 5100].map((force) => ({ diameters: 2, force })) });
    expect(own.designation).toBe('HBW 5/515');
    expect(own.indentations.some(({ offScale }) => offScale)).toBe(false);
  });

  test.each([
    ['goes without saying from 10 to 15 s', 12, 'HBW 10/1000', []],
    ['is written else', 30, 'HBW 10/1000/30', ['brinell-dwell-outside']],
  ])('a time that was stated %s', (_, holdingTime, designation, found) => {
    const result = analyseBrinell({ ballDiameter: 10, force: FORCE, holdingTime, indentations: [{ diameters: [4, 4] }] });
    expect(result.designation).toBe(designation);
    expect(result.findings.map(({ code }) => code)).toEqual(found);
    expect(renderHtml(result)).toMatch(new RegExp(`Time held, as stated</dt>\\s*<dd><bdi>${holdingTime}\u00a0s`));
  });

  test('piece: thickness, edge and neighbours, each at its limit', () => {
    const { leastThickness } = brinellHardness({ force: FORCE, ballDiameter: 10, diameters: 4 });
    expect(codes({ diameters: [4, 4], edgeDistance: 10, spacing: 12 }, { thickness: leastThickness })).toEqual([]);
    expect(codes({ diameters: [4, 4], edgeDistance: 9.9, spacing: 11.9 }, { thickness: 3 })).toEqual([
      'brinell-near-edge',
      'brinell-near-neighbour',
      'brinell-piece-thin',
    ]);
  });

  test('strength is estimated where a steel is named, else refused in words', () => {
    const of = (strengthOf: 'steel' | 'copper') =>
      analyseBrinell({ ballDiameter: 10, force: 29_419.95, indentations: [{ diameters: [4, 4] }] }, {}, { strengthOf });
    expect(of('steel').findings.map(({ code }) => code)).toEqual(['strength-estimated']);
    expect(of('copper').findings.map(({ code }) => code)).toEqual(['strength-not-estimated']);
    expect(of('copper')).not.toHaveProperty('estimatedStrength');
    expect(of('steel').estimatedStrength!.standardUncertainty).toBeCloseTo(789.5 / 10 / Math.sqrt(3), 1);
  });

  test('wrong arguments are refused, each by its path', () => {
    const call = (readings: object, piece: object = {}, options: object = {}) =>
      refusal(() => analyseBrinell({ ballDiameter: 10, force: 1, indentations: [{ diameters: 4 }], ...readings }, piece, options));
    expect(call({ ballDiameter: 0 })).toBe('not-positive readings.ballDiameter');
    expect(call({ holdingTime: 0 })).toBe('not-positive readings.holdingTime');
    expect(call({ indentations: undefined })).toBe('missing readings.indentations');
    expect(call({ indentations: {} })).toBe('wrong-type readings.indentations');
    expect(call({ indentations: [] })).toBe('empty readings.indentations');
    expect(call({ force: undefined })).toBe('missing readings.indentations[0].force');
    expect(call({ indentations: [{ diameters: 11 }] })).toBe('out-of-range readings.indentations[0].diameters');
    expect(call({ indentations: [{ diameters: 4, depth: 1 }] })).toBe('unknown-option readings.indentations[0].depth');
    expect(call({ indentations: [{ diameters: 4, record: { force: [0, 0], time: [0, 1] } }] })).toBe(
      'not-positive readings.indentations[0].record.force',
    );
    expect(call({}, { thickness: -1 })).toBe('not-positive piece.thickness');
    expect(call({}, { material: 'wood' })).toBe('out-of-range piece.material');
    expect(call({}, {}, { strengthOf: 'wood' })).toBe('out-of-range options.strengthOf');
    expect(call({}, {}, { scale: 1 })).toBe('unknown-option options.scale');
    expect(refusal(() => simulateBrinell({ hardness: 1, ballDiameter: 1, force: 1000 }))).toBe('out-of-range hardness');
  });

  test('has a page of its own', () => {
    const result = analyseBrinell(
      hard({}, 3).readings,
      { thickness: 10, material: 'copper alloys' },
      { test: { invented: true }, strengthOf: 'steel' },
    );
    expect(summarise(result).map(({ symbol, text }) => `${symbol} ${text}`)).toEqual([
      'HBW 100',
      'HBW 1 100',
      'HBW 2 100',
      'HBW 3 100',
      'Rm(HBW) 340',
    ]);
    expect(Object.keys(figures(result))).toEqual(['force', 'indentations']);
    const page = renderHtml(result);
    for (const words of [
      'Brinell hardness test',
      'HBW 10/1000<',
      'held 12',
      'Balls and hard pieces can shatter',
      'an estimate, ± 10\u00a0%',
      'not design values',
    ])
      expect(page).toContain(words);
    const single = analyseBrinell({ ballDiameter: 10, force: FORCE, indentations: [{ diameters: [2.2, 2.2] }] });
    expect(figures(single)).toEqual({});
    expect(renderHtml(single)).toContain('does not count');
  });
});
