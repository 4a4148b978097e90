import { describe, expect, test } from 'vitest';
import { loopEnergy, turningPoints, unloadingLine } from '../../src/curve/modulus/unloadingLoop.js';

const of = (points: readonly (readonly [strain: number, stress: number])[]) => ({
  strain: Float64Array.from(points, ([e]) => e),
  stress: Float64Array.from(points, ([, R]) => R),
});

describe('turning points', () => {
  const turns = (...stress: number[]) => turningPoints(of(stress.map((R, i) => [i, R])), 0.1);

  test('a fall counts from the share on, and ends where the stress has risen by as much', () => {
    expect(turns(0, 100, 90, 100)).toEqual([{ top: 1, bottom: 2, end: 3 }]);
    expect(turns(0, 100, 90.1, 100)).toEqual([]);
    expect(turns(0, 100, 50, 59.9, 40, 50, 70)).toEqual([{ top: 1, bottom: 4, end: 6 }]);
    expect(turns(0, 100, 50, 60, 40, 70)).toEqual([
      { top: 1, bottom: 2, end: 3 },
      { top: 3, bottom: 4, end: 5 },
    ]);
  });

  test('each rise goes up to the next top, the last one to the end; where nothing rises again it ends with the lowest', () => {
    expect(turns(0, 100, 50, 80, 120, 60, 130, 140)).toEqual([
      { top: 1, bottom: 2, end: 4 },
      { top: 4, bottom: 5, end: 7 },
    ]);
    expect(turns(0, 100, 50, 120, 60, 30)).toEqual([
      { top: 1, bottom: 2, end: 3 },
      { top: 3, bottom: 5, end: 5 },
    ]);
  });

  test('of equal tops the last counts, of equal lowest the first, and the bottom is within 0.3 % of the fall', () => {
    expect(turns(0, 100, 100, 50, 100)).toEqual([{ top: 2, bottom: 3, end: 4 }]);
    expect(turns(0, 100, 50, 0.4, 0.3, 0, 0, 0)).toEqual([{ top: 1, bottom: 4, end: 5 }]);
  });

  test('below a twentieth of the highest stress a fall is seating', () => {
    expect(turns(0, 5, 1, 100)).toEqual([]);
    expect(turns(0, 5.1, 1, 100)).toEqual([{ top: 1, bottom: 2, end: 3 }]);
    expect(turns(0, -1, -2, 0)).toEqual([]);
  });
});

describe('the line of an unloading', () => {
  // after a rise of three samples 100 MPa go in ten steps, by 1 GPa but for the first and the last
  const fall = Array.from({ length: 11 }, (_, i) => [0.1 - 0.01 * i + (i === 0 ? -0.005 : i === 10 ? 0.005 : 0), 100 - 10 * i] as const);
  const curve = of([[0, 0], [0.04, 30], [0.08, 60], ...fall]);

  test('of a part of the fall, its ends included', () => {
    expect(unloadingLine(curve, 3, 13, { from: 0.1, to: 0.9 })).toMatchObject({ slope: expect.closeTo(1000, 9) as number, range: [4, 12] });
    expect(unloadingLine(curve, 3, 13, { from: 0.11, to: 0.89 })!.range).toEqual([5, 11]);
    expect(unloadingLine(curve, 3, 13, { from: 0, to: 1 })).toMatchObject({ range: [3, 13] });
    expect(unloadingLine(curve, 3, 13, { from: 0, to: 1 })!.slope).toBeGreaterThan(1010);
  });

  test('none where no two samples lie in the part, or the strain goes on while the stress falls', () => {
    expect(unloadingLine(curve, 3, 13, { from: 0.41, to: 0.49 })).toBeUndefined();
    expect(unloadingLine(curve, 3, 13, { from: 0.4, to: 0.45 })).toBeUndefined();
    expect(
      unloadingLine(
        of([
          [0, 100],
          [0.1, 50],
          [0.2, 0],
        ]),
        0,
        2,
        { from: 0, to: 1 },
      ),
    ).toBeUndefined();
  });

  test('a search finds the straight part, counted by samples of the record', () => {
    // the first tenth stands still, then 1 GPa
    const late = Array.from({ length: 61 }, (_, i) => [0.2 - 0.002 * Math.max(0, i - 6), 120 - 2 * i] as const);
    const found = unloadingLine(of([[0, 0], [0.1, 50], ...late]), 2, 62, 'search')!;
    expect(found.slope).toBeCloseTo(1000, 6);
    expect(found.range[0]).toBeGreaterThanOrEqual(2 + 6);
    expect(found.range[1]).toBe(62);
    expect(unloadingLine(curve, 3, 5, 'search')).toBeUndefined();
  });
});

describe('the energy of a loop', () => {
  const [rise, top, bottom] = [[0, 0] as const, [0.01, 100] as const, [0.005, 0] as const];

  test('up to the strain of the top: a step beyond it counts up to there', () => {
    // at 0.010 the reloading line from (0.006, 50) to (0.012, 110) has 90 MPa
    const curve = of([rise, top, bottom, [0.006, 50], [0.012, 110], [0.02, 120]]);
    const below = 0.005 * 50;
    const above = 0.001 * 25 + 0.004 * 70;
    expect(loopEnergy(curve, { top: 1, bottom: 2, end: 5 })).toBeCloseTo(above - below, 12);
  });

  test('up to the strain that the reloading reaches: the unloading above it does not count', () => {
    // the unloading has 60 MPa at 0.008
    const area = (0.003 * 80) / 2 - (0.003 * 60) / 2;
    expect(loopEnergy(of([rise, top, bottom, [0.008, 80]]), { top: 1, bottom: 2, end: 3 })).toBeCloseTo(area, 12);
    const fine = of([rise, top, [0.0095, 90], bottom, [0.008, 80]]);
    expect(loopEnergy(fine, { top: 1, bottom: 3, end: 4 })).toBeCloseTo(area, 12);
  });

  test('of a piece that is not loaded again there is none', () => {
    expect(loopEnergy(of([rise, top, bottom]), { top: 1, bottom: 2, end: 2 })).toBeUndefined();
  });
});
