import { describe, expect, test } from 'vitest';
import {
  checkPiece,
  leastFilletRadius,
  rectangular,
  round,
  shapeTolerance,
  square,
  threadStressArea,
  type PieceCheckInput,
  type PieceHead,
} from '../../src/index.js';
import { refusal } from '../support/thrown.js';

const d8 = round({ diameter: 8 });
const thread: PieceHead = { kind: 'thread', size: 14, pitch: 2, gripped: 16 };
const base: PieceCheckInput = {
  expected: { modulus: 210_000, yieldStrength: 300, tensileStrength: 420, elongation: 0.3 },
  section: d8,
  gaugeLength: 40,
  parallelLength: 48,
  filletRadius: 8,
  totalLength: 100,
  head: thread,
};
const F = 420 * d8.area;
const codes = (more: Partial<PieceCheckInput> = {}) =>
  checkPiece({ ...base, ...more }).findings.map(({ code, severity }) => `${severity} ${code}`);
const heads = (head: PieceHead, more: Partial<PieceCheckInput> = {}) => checkPiece({ ...base, ...more, head }).heads;

test('a sound piece has no findings', () => {
  const check = checkPiece(base);
  expect(check.findings).toEqual([]);
  expect(check.force).toBeCloseTo(F, 6);
  expect(check.leastParallelLength).toBe(44);
  expect(check.leastFilletRadius).toBe(6);
  // a fillet of 8 up to 3 mm of rise runs √(64 - 25)
  expect(check.leastTotalLength).toBeCloseTo(48 + 2 * (16 + Math.sqrt(39)), 9);
});

describe('heads', () => {
  test('a thread carries by its stress area and should be in by its diameter', () => {
    const [core, held] = heads(thread);
    expect(core).toMatchObject({
      kind: 'stress',
      value: expect.closeTo(F / threadStressArea({ diameter: 14, pitch: 2 }), 9) as number,
      limit: 300,
      sound: true,
    });
    expect(held).toMatchObject({ kind: 'length', value: 16, limit: 14, sound: true });
    expect(codes({ head: { ...thread, gripped: 13 } })).toEqual(['caution grip-short']);
    // 36.6 mm² against the 50.3 of the section
    expect(codes({ head: { kind: 'thread', size: 8, pitch: 1.25, gripped: 10 } })).toEqual(['fault head-weak', 'caution head-too-small']);
    expect(codes({ head: { kind: 'thread', size: 10, pitch: 1.5, gripped: 10 } })).toEqual(['caution head-weak']);
  });

  test('wedges hold by friction whatever the force, and press the head', () => {
    const wedge: PieceHead = { kind: 'wedge', size: 12, gripped: 30, angle: 0.1 };
    const [hold, pressure, held] = heads(wedge);
    const needed = Math.tan(0.1 + Math.atan(0.1));
    expect(hold!.margin).toBeCloseTo(0.3 / needed, 9);
    expect(pressure!.value).toBeCloseTo(F / (2 * needed) / (12 * 30), 9);
    expect(pressure!.limit).toBeCloseTo(450, 9);
    expect(held!.limit).toBeCloseTo(20, 9);
    expect(codes({ head: { ...wedge, faceFriction: 0.22 }, totalLength: undefined })).toEqual(['caution grip-may-slip']);
    expect(codes({ head: { ...wedge, faceLength: 50 }, totalLength: undefined })).toEqual(['caution grip-short']);
    expect(codes({ head: { ...wedge, gripped: 8 } })).toEqual(['caution head-weak']);
  });

  test('clamps hold by their own force on two sides', () => {
    const clamp: PieceHead = { kind: 'clamp', size: 12, gripped: 30, clampForce: 50_000 };
    expect(heads(clamp)[0]!.margin).toBeCloseTo((2 * 0.3 * 50_000) / F, 9);
    expect(heads(clamp)[1]!.value).toBeCloseTo(50_000 / 360, 9);
    expect(codes({ head: { ...clamp, clampForce: 40_000 }, totalLength: undefined })).toEqual(['caution grip-may-slip']);
  });

  test('a shoulder bears on its seat and shears at it', () => {
    const shoulder: PieceHead = { kind: 'shoulder', size: 14, gripped: 8, seat: 10 };
    const [seat, shear] = heads(shoulder);
    expect(seat!.value).toBeCloseTo(F / ((Math.PI / 4) * (14 ** 2 - 10 ** 2)), 9);
    expect(shear!.value).toBeCloseTo(F / (Math.PI * 10 * 8), 9);
    expect(shear!.limit).toBeCloseTo(300 / Math.sqrt(3), 9);
    expect(codes({ head: { ...shoulder, gripped: 3 } })).toEqual(['caution head-weak']);
    expect(refusal(() => checkPiece({ ...base, head: { ...shoulder, seat: 14 } }))).toBe('out-of-range head.seat');
  });

  test('a pin: section beside it, bearing, shear behind it, and the pin itself', () => {
    const flat = {
      section: rectangular({ width: 12.5, thickness: 3 }),
      gaugeLength: 35,
      parallelLength: 50,
      filletRadius: 20,
      totalLength: undefined,
    };
    const pin: PieceHead = { kind: 'pin', size: 40, gripped: 40, pinDiameter: 16, edge: 25, pinStrength: 400 };
    const G = 420 * 37.5;
    const rows = heads(pin, flat);
    expect(rows.map(({ value }) => value)).toEqual([
      expect.closeTo(G / (24 * 3), 9),
      expect.closeTo(G / (16 * 3), 9),
      expect.closeTo(G / (2 * 3 * 17), 9),
      expect.closeTo(G / (2 * Math.PI * 64), 9),
    ]);
    expect(codes({ ...flat, head: pin })).toEqual(['note gauge-length-not-proportional']);
    expect(heads({ ...pin, pinStrength: undefined }, flat)).toHaveLength(3);
    expect(refusal(() => checkPiece({ ...base, head: { ...pin, edge: 8 } }))).toBe('out-of-range head.edge');
    expect(refusal(() => checkPiece({ ...base, head: { ...pin, size: 16 } }))).toBe('out-of-range head.pinDiameter');
  });

  test('a metal without a yield may be loaded to two thirds of its strength', () => {
    const expected = { modulus: 110_000, tensileStrength: 300, elongation: 0.005 };
    expect(heads(thread, { expected })[0]!.limit).toBeCloseTo(200, 9);
  });
});

describe('proportions', () => {
  test.each<[string, Partial<PieceCheckInput>]>([
    ['caution parallel-length-short', { parallelLength: 43 }],
    ['note parallel-length-long', { parallelLength: 70, totalLength: 150 }],
    ['caution fillet-small', { filletRadius: 5 }],
    ['fault piece-too-short', { totalLength: 85 }],
    ['caution head-too-small', { head: { kind: 'clamp', size: 9, gripped: 60, clampForce: 60_000 }, totalLength: undefined }],
    ['note section-small', { section: round({ diameter: 3.5 }) }],
  ])('%s', (code, more) => {
    expect(codes(more)).toContain(code);
  });

  test('fillets of thin and thick flats', () => {
    const of = (thickness: number) =>
      checkPiece({
        ...base,
        section: rectangular({ width: 12.5, thickness }),
        gaugeLength: 50,
        parallelLength: 60,
        head: undefined,
        totalLength: undefined,
      }).leastFilletRadius;
    expect(of(2)).toBe(20);
    expect(of(3)).toBe(12);
    expect(leastFilletRadius({ section: d8 })).toBe(6);
    expect(refusal(() => leastFilletRadius({} as never))).toBe('missing section');
    expect(checkPiece({ ...base, section: square({ side: 6 }), filletRadius: undefined, head: undefined })).not.toHaveProperty(
      'leastFilletRadius',
    );
  });
});

describe('tolerances', () => {
  // ISO 6892-1, Annex D (from memory)
  test.each([
    [3, 0.02, 0.03],
    [6, 0.02, 0.03],
    [8, 0.03, 0.04],
    [18, 0.05, 0.04],
    [20, 0.1, 0.05],
  ])('%d mm machined all round', (size, tolerance, shape) => {
    expect(shapeTolerance({ size })).toEqual({ size: tolerance, shape });
  });

  test('two sides machined; outside the table', () => {
    expect(shapeTolerance({ size: 12.5, machined: 'two-sides' })).toEqual({ size: 0.05, shape: 0.06 });
    expect(shapeTolerance({ size: 40, machined: 'two-sides' })).toEqual({ size: 0.15, shape: 0.15 });
    expect(refusal(() => shapeTolerance({ size: 40 }))).toBe('out-of-range size');
    expect(refusal(() => shapeTolerance({ size: 2.9 }))).toBe('out-of-range size');
    expect(refusal(() => shapeTolerance({ size: 8, machined: 'none' as never }))).toBe('out-of-range machined');
  });

  test('readings against them, the limit included', () => {
    const shape = { dimension: 'diameter', nominal: 8, largest: 8.03, smallest: 7.99 } as const;
    expect(codes({ shape })).toEqual([]);
    expect(codes({ shape: { ...shape, smallest: 7.98 } })).toEqual(['caution shape-outside-tolerance']);
    expect(codes({ shape: { ...shape, largest: 8.06, smallest: 8.04 } })).toEqual(['note size-outside-tolerance']);
    expect(codes({ shape: { ...shape, nominal: 2, largest: 2.5, smallest: 2 } })).toEqual([]);
    expect(refusal(() => checkPiece({ ...base, shape: { ...shape, largest: 7 } }))).toBe('out-of-range shape.largest');
  });
});

test('refusals', () => {
  expect(refusal(() => checkPiece({ ...base, head: { kind: 'glue' } as never }))).toBe('out-of-range head.kind');
  expect(refusal(() => checkPiece({ ...base, head: { kind: 'thread', size: 12, gripped: 10 } as never }))).toBe('missing head.pitch');
  expect(refusal(() => checkPiece({ ...base, head: { ...thread, seat: 1 } as never }))).toBe('unknown-option head.seat');
  expect(refusal(() => checkPiece({ ...base, filletRadius: -1 }))).toBe('not-positive filletRadius');
  expect(refusal(() => checkPiece({ ...base, gaugeLength: 0 }))).toBe('not-positive gaugeLength');
});
