import { describe, expect, test } from 'vitest';
import { findDrops as findFalls } from '../../src/record/checks/drops.js';
import { findTurns } from '../../src/record/checks/turns.js';
import { dropFindings } from '../../src/record/checks/motionFindings.js';
import { outlineOf } from '../support/outlines.js';

const findDrops = (...given: Parameters<typeof findFalls>) => findFalls(...given).drops;

/** Corners of a curve of force over motion [mm, N], ten samples from one to the next; 10 kN/mm is its stiffness. */
const STIFFNESS = 10_000;
function through(corners: readonly (readonly [number, number])[], given: Parameters<typeof outlineOf>[2] = {}) {
  const [x, F]: [number[], number[]] = [[corners[0]![0]], [corners[0]![1]]];
  for (let k = 1; k < corners.length; k += 1)
    for (let i = 1; i <= 10; i += 1) {
      x.push(corners[k - 1]![0] + ((corners[k]![0] - corners[k - 1]![0]) * i) / 10);
      F.push(corners[k - 1]![1] + ((corners[k]![1] - corners[k - 1]![1]) * i) / 10);
    }
  return outlineOf(F, x, { stiffness: STIFFNESS, ...given });
}
const drops = (corners: readonly (readonly [number, number])[], given: Parameters<typeof outlineOf>[2] = {}) =>
  findDrops(through(corners, given), [], 0);

// up to 10 kN at 1 mm, then what is told, then up to 20 kN
const slip = [
  [0, 0],
  [1, 10_000],
  [1.1, 8000],
  [1.3, 10_000],
  [2.3, 20_000],
] as const;
const reversal = [
  [0, 0],
  [1, 10_000],
  [0.8, 8000],
  [1, 10_000],
  [2, 20_000],
] as const;
const backlash = [
  [0, 0],
  [1, 10_000],
  [0.5, 8000],
  [1.2, 10_000],
  [2.2, 20_000],
] as const;
const yielding = [
  [0, 0],
  [1, 10_000],
  [1.5, 8000],
  [3, 10_000],
  [6, 20_000],
] as const;

describe('falls of the force by what they look like', () => {
  test('a slip comes back along the elastic slope, farther on; the way in the grips is what the force does not ask for', () => {
    expect(drops(slip)).toEqual([{ range: [10, 20, 30], fall: 2000, way: expect.closeTo(0.3, 9) as number, kind: 'slip' }]);
    // one sample later the force is a fifth above what it was: so much is the piece's own stretch
    const outline = through(slip);
    outline.force[30] = 10_100;
    expect(findDrops(outline, [], 0)[0]!.way).toBeCloseTo(0.3 - 0.01, 9);
  });

  test('a reversal goes back with the force, a backlash by far more', () => {
    expect(drops(reversal)).toEqual([{ range: [10, 20, 30], fall: 2000, way: expect.closeTo(0.2, 9) as number, kind: 'reversal' }]);
    expect(drops(backlash)).toEqual([{ range: [10, 20, 30], fall: 2000, way: expect.closeTo(0.5, 9) as number, kind: 'backlash' }]);
  });

  test('more than twice the elastic way is a backlash, less than half of it none that goes back', () => {
    // a fall of 2 kN is 0.2 mm
    const back = (way: number) =>
      drops([
        [0, 0],
        [1, 10_000],
        [1 - way, 8000],
        [1.1, 10_000],
        [2, 20_000],
      ]).map(({ kind }) => kind);
    expect(back(0.41)).toEqual(['backlash']);
    expect(back(0.39)).toEqual(['reversal']);
    expect(back(0.11)).toEqual(['reversal']);
    expect(back(0.09)).toEqual(['slip']);
  });

  test('a way back within steps and noise of the motion is none by itself', () => {
    const small = (way: number, motion: object) =>
      drops(
        [
          [0, 0],
          [1, 10_000],
          [1 - way, 8000],
          [1.2 - way, 10_000],
          [2, 20_000],
        ],
        { motion, time: new Float64Array(41) },
      ).map(({ kind }) => kind);
    // three steps of 0.06 mm, ten deviations of 0.018 mm: 0.18 mm
    const turnsOf = (way: number, motion: object) => {
      const outline = through(
        [
          [0, 0],
          [1, 10_000],
          [1 - way, 8000],
          [1.2 - way, 10_000],
          [2, 20_000],
        ],
        { motion },
      );
      return findTurns(outline, outline.motion!, 200, 0.18, 0).length;
    };
    expect(turnsOf(0.17, { step: 0.06 })).toBe(0);
    expect(turnsOf(0.19, { step: 0.06 })).toBe(1);
    // twenty samples of it tell it all the same: a line through them, four standard errors off
    expect(small(0.17, { noise: 0.018 })).toEqual(['reversal']);
    // where not even that tells it, no way in the grips stands out of the noise either: unloaded and loaded again it was
    expect(small(0.17, { noise: 0.1 })).toEqual(['reversal']);
    expect(small(0.19, { noise: 0.018 })).toEqual(['reversal']);
    // a backlash is farther by them
    expect(small(0.57, { noise: 0.018 })).toEqual(['reversal']);
    expect(small(0.59, { noise: 0.018 })).toEqual(['backlash']);
  });

  test('on a plateau an excursion ends where the motion is back, for the force before yielding is not', () => {
    // yield at 20 kN, a level of 18 kN, and on it a stroke of 0.1 mm
    const plateau = [
      [0, 0],
      [2, 20_000],
      [2.4, 18_000],
      [3, 18_000],
      [2.9, 17_000],
      [3, 18_000],
      [4, 18_000],
      [8, 24_000],
    ] as const;
    const found = drops(plateau).filter(({ kind }) => kind !== 'yield');
    expect(found).toEqual([{ range: [30, 40, 50], fall: 1000, way: expect.closeTo(0.1, 9) as number, kind: 'reversal' }]);
  });

  test('a motion that comes back without its force is no excursion: the piece yielded elsewhere', () => {
    // an extensometer beside the first band: it springs back with the yield drop and comes again at the lower force
    const beside = [
      [0, 0],
      [2, 20_000],
      [1.8, 18_000],
      [2.1, 18_000],
      [4, 18_000],
      [8, 24_000],
    ] as const;
    expect(drops(beside).map(({ kind }) => kind)).toEqual(['yield']);
  });

  test('an excursion after the maximum is found, the fall at fracture is none', () => {
    const necking = [
      [0, 0],
      [2, 20_000],
      [6, 24_000],
      [8, 22_000],
      [7.8, 20_000],
      [8, 22_000],
      [9, 20_000],
      [9, 100],
      [9.1, 0],
    ] as const;
    expect(drops(necking).map(({ kind, range }) => [kind, range[0]])).toEqual([['reversal', 30]]);
  });

  test('beyond yielding an extensometer reads strain, not a slip', () => {
    const serration = [
      [0, 0],
      [2, 20_000],
      [6, 24_000],
      [6.5, 22_000],
      [6.7, 24_000],
      [10, 26_000],
    ] as const;
    expect(drops(serration).map(({ kind }) => kind)).toEqual(['slip']);
    expect(drops(serration, { motion: { column: 'extension' } }).map(({ kind }) => kind)).toEqual(['yield']);
    // before yielding it may be the extensometer that slipped
    expect(drops(slip, { motion: { column: 'extension' } }).map(({ kind }) => kind)).toEqual(['slip']);
  });

  test('a rise of less than half the stiffness is the material', () => {
    expect(drops(yielding)).toEqual([{ range: [10, 20, 30], fall: 2000, way: expect.closeTo(0.5, 9) as number, kind: 'yield' }]);
    const rise = (slope: number) =>
      drops([
        [0, 0],
        [1, 10_000],
        [1.1, 8000],
        [1.1 + 2000 / slope, 10_000],
        [3, 20_000],
      ]).map(({ kind }) => kind);
    expect(rise(5100)).toEqual(['slip']);
    expect(rise(4900)).toEqual(['yield']);
  });

  test('the rise is that from a fifth to four fifths of the fall', () => {
    // slow at first, then elastic; elastic at first, then slow: both are elastic in between
    const bent = (corners: readonly (readonly [number, number])[]) =>
      drops([[0, 0], [1, 10_000], [1.1, 8000], ...corners, [4, 20_000]]).map(({ kind }) => kind);
    expect(
      bent([
        [1.6, 8390],
        [1.72, 9610],
        [2.2, 10_000],
      ]),
    ).toEqual(['slip']);
    expect(
      bent([
        [1.14, 8390],
        [1.9, 9610],
        [1.95, 10_000],
      ]),
    ).toEqual(['yield']);
    const bentLater = [
      [1.14, 8400],
      [1.17, 8700],
      [1.9, 9610],
      [1.95, 10_000],
    ] as const;
    expect(bent(bentLater)).toEqual(['yield']);
    const elasticLater = [
      [1.6, 8390],
      [1.64, 8450],
      [1.76, 9610],
      [1.9, 10_000],
    ] as const;
    expect(bent(elasticLater)).toEqual(['slip']);
    // a force that is back within a sample, and a motion that stands meanwhile
    const sudden = (x: readonly number[], F: readonly number[]) =>
      findDrops(outlineOf(F, x, { stiffness: STIFFNESS }), [], 0).map(({ kind }) => kind);
    expect(sudden([0, 1, 1.1, 1.2, 2.2], [0, 10_000, 8000, 10_000, 20_000])).toEqual(['slip']);
    expect(sudden([0, 1, 1.1, 1.1, 2.2], [0, 10_000, 8000, 10_000, 20_000])).toEqual(['slip']);
    expect(sudden([0, 1, 1.1, 1.09, 2.2], [0, 10_000, 8000, 10_000, 20_000])).toEqual(['slip']);
    expect(sudden([0, 1, 1.1, 1.5, 1.9, 2.05, 3], [0, 10_000, 8000, 8100, 8200, 9700, 20_000])).toEqual(['slip']);
    expect(sudden([0, 1, 1.1, 1.6, 2.2], [0, 10_000, 8000, 10_000, 20_000])).toEqual(['yield']);
  });

  test('a peak that one sample raised by more than the motion gives is off itself: its fall is no slip', () => {
    // along the elastic line, one sample higher by 3 kN and a later one by a little more
    const pair = (gap: number) => {
      const x = Array.from({ length: 41 }, (_, i) => 0.05 * i);
      const F = x.map((at, i) => 10_000 * at + (i === 20 ? 3000 : i === 20 + gap ? 3100 : 0));
      return findDrops(outlineOf(F, x, { stiffness: STIFFNESS }), [], 0);
    };
    for (const gap of [2, 3, 4]) expect(pair(gap)).toEqual([]);
    // by so much [N] in one sample before a fall of 2 kN; three quarters of it are 1500 N
    const raised = (by: number, step = 0) => {
      const F = [0, 10_000 - by, 10_000, 8000, 10_000, 20_000];
      return findDrops(outlineOf(F, [0, 1, 1, 1.1, 1.2, 2.2], { stiffness: STIFFNESS, motion: { step } }), [], 0).map(({ kind }) => kind);
    };
    expect([raised(1490), raised(1510)]).toEqual([['slip'], []]);
    // a motion read in steps of 0.01 mm may have moved by 100 N
    expect([raised(1590, 0.01), raised(1610, 0.01)]).toEqual([['slip'], []]);
  });

  test('without a clock a slow fall at a standstill may be a pause of the hand', () => {
    // the motion stands for ten samples while the force relaxes
    const pause = [
      [0, 0],
      [1, 10_000],
      [1.001, 9000],
      [1.101, 10_000],
      [2.1, 20_000],
    ] as const;
    expect(drops(pause, { motion: { step: 0.001 } })).toEqual([]);
    expect(drops(pause, { motion: { step: 0.0003 } }).map(({ kind }) => kind)).toEqual(['slip']);
    expect(drops(pause, { motion: { step: 0.001 }, time: new Float64Array(41) }).map(({ kind }) => kind)).toEqual(['slip']);
    const fast = (samples: number) => {
      const fall = Array.from({ length: samples }, (_, i) => 10_000 - (1000 * (i + 1)) / samples);
      const F = [0, 5000, 10_000, ...fall, 9500, 10_000, 20_000];
      const x = [0, 0.5, 1, ...fall.map(() => 1), 1.05, 1.1, 2.1];
      return findDrops(outlineOf(F, x, { stiffness: STIFFNESS }), [], 0).map(({ kind }) => kind);
    };
    expect(fast(3)).toEqual(['slip']);
    expect(fast(4)).toEqual([]);
  });
});

describe('which falls count', () => {
  const fallBy = (fall: number, habit: object, highest = 20_000) =>
    drops(
      [
        [0, 0],
        [1, 10_000],
        [1.1, 10_000 - fall],
        [1.1 + fall / STIFFNESS, 10_000],
        [2.1, highest],
      ],
      {
        habit: { noise: 0, step: 0, usual: () => 0, ...habit },
      },
    ).length;
  test('ten deviations, three steps, and a hundredth of the highest force', () => {
    expect([fallBy(201, {}), fallBy(199, {})]).toEqual([1, 0]);
    expect([fallBy(200, {}), fallBy(200, {}, 20_001)]).toEqual([1, 0]);
    expect([fallBy(501, { noise: 50 }), fallBy(499, { noise: 50 })]).toEqual([1, 0]);
    expect([fallBy(601, { step: 200 }), fallBy(599, { step: 200 })]).toEqual([1, 0]);
  });

  test('from a sample on, up to the highest force or the end of the motion', () => {
    const outline = through(slip);
    expect(findDrops(outline, [], 9)).toHaveLength(1);
    expect(findDrops(outline, [], 20)).toHaveLength(0);
    expect(findDrops({ ...outline, first: 20 }, [], 0)).toHaveLength(0);
    expect(findDrops({ ...outline, motion: { ...outline.motion!, end: 10 } }, [], 0)).toHaveLength(0);
    expect(findDrops({ ...outline, motion: { ...outline.motion!, end: 12 } }, [], 0)).toMatchObject([
      { range: [10, 12, 12], kind: 'yield' },
    ]);
    expect(findDrops({ ...outline, top: 25 }, [], 0)[0]!.range).toEqual([10, 20, 25]);
  });

  test('without motion or stiffness nothing can be told', () => {
    expect(findDrops(outlineOf([0, 2, 1, 2, 3], undefined, { stiffness: 1 }), [], 0)).toEqual([]);
    expect(drops(slip, { stiffness: 0 })).toEqual([]);
    expect(drops(slip, { stiffness: -1 })).toEqual([]);
  });

  test('what reaches from the valley to the peak explains a fall', () => {
    const outline = through(slip);
    expect(
      findDrops(
        outline,
        [
          [0, 9],
          [21, 40],
        ],
        0,
      ),
    ).toHaveLength(1);
    expect(findDrops(outline, [[0, 10]], 0)).toHaveLength(0);
    expect(findDrops(outline, [[20, 25]], 0)).toHaveLength(0);
    expect(
      findDrops(
        outline,
        [
          [0, 1],
          [12, 13],
        ],
        0,
      ),
    ).toHaveLength(0);
  });

  test('several falls, each from the peak before it', () => {
    const found = drops([
      [0, 0],
      [1, 10_000],
      [0.9, 9000],
      [1, 10_000],
      [1.5, 15_000],
      [1.4, 14_000],
      [1.5, 15_000],
      [2, 20_000],
    ]);
    expect(found.map(({ range, kind }) => [...range, kind])).toEqual([
      [10, 20, 30, 'reversal'],
      [40, 50, 60, 'reversal'],
    ]);
    // a fall that is not made good ends at the highest force
    expect(
      drops([
        [0, 0],
        [1, 10_000],
        [0.9, 9000],
        [0.95, 9500],
        [0.9, 9200],
        [2, 20_000],
      ])[0]!.range,
    ).toEqual([10, 20, 41]);
  });

  test('more than five falls that come back elastically are serrations of the material', () => {
    const serrated = (teeth: number) => {
      const corners: [number, number][] = [[0, 0]];
      for (let k = 1; k <= teeth; k += 1) {
        const [x, F] = [1.3 * k, 10_000 + 500 * k];
        corners.push([x, F], [x + 0.1, F - 1000], [x + 0.2, F]);
      }
      corners.push([1.3 * teeth + 1.2, 20_000]);
      return drops(corners).map(({ kind }) => kind);
    };
    expect(serrated(5)).toEqual(Array(5).fill('slip'));
    expect(serrated(6)).toEqual([]);
    // a reversal among them stays, and is not counted
    const both = (teeth: number) => {
      const corners: [number, number][] = [[0, 0]];
      for (let k = 1; k <= teeth; k += 1)
        corners.push([1.3 * k, 10_000 + 500 * k], [1.3 * k + 0.1, 9000 + 500 * k], [1.3 * k + 0.2, 10_000 + 500 * k]);
      corners.push([9, 14_000], [8.8, 12_000], [9, 14_000], [10, 20_000]);
      return drops(corners).map(({ kind }) => kind);
    };
    expect(both(6)).toEqual(['reversal']);
    expect(both(5)).toEqual([...Array<string>(5).fill('slip'), 'reversal']);
  });
});

describe('falls as findings', () => {
  const one = { range: [3, 5, 9] as const, fall: 700, way: 0.25 };
  test.each([
    ['slip', 'grip-slip'],
    ['reversal', 'drive-reversed'],
    ['backlash', 'motion-backlash'],
  ] as const)('%s: %s', (kind, code) => {
    expect(dropFindings([{ ...one, kind }], 'extension')).toMatchObject([
      { code, values: { column: 'extension', sample: 3, fall: 700, way: 0.25 }, range: [3, 9] },
    ]);
  });

  test('a yield is no doubt; the order is slips, reversals, backlash', () => {
    expect(dropFindings([{ ...one, kind: 'yield' }], 'travel')).toEqual([]);
    const kinds = ['backlash', 'reversal', 'slip'] as const;
    expect(
      dropFindings(
        kinds.map((kind) => ({ ...one, kind })),
        'travel',
      ).map(({ code }) => code),
    ).toEqual(['grip-slip', 'drive-reversed', 'motion-backlash']);
  });

  test('more than forty of a kind are told together, with the largest', () => {
    const many = Array.from({ length: 41 }, (_, k) => ({
      range: [10 * k, 10 * k + 3, 10 * k + 6] as const,
      fall: k === 17 ? 900 : 100 + k,
      way: 1,
      kind: 'reversal' as const,
    }));
    expect(dropFindings(many.slice(1), 'travel')).toHaveLength(40);
    expect(dropFindings(many, 'travel')).toMatchObject([
      { code: 'falls-many', values: { count: 41, fall: 900, sample: 170 }, range: [0, 406] },
    ]);
  });
});
