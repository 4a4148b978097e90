import { describe, expect, test } from 'vitest';
import {
  analyseBending,
  analyseBrinell,
  analyseCompression,
  analyseCupping,
  analyseShear,
  analyseUnloading,
  rectangular,
  round,
  type Finding,
  type SpikeRepair,
  type TrailStep,
} from '../../src/index.js';
import { refusal } from '../support/thrown.js';

/** A rise to a maximum, and what is left after the fracture: 600 samples up, 30 of nothing. */
const rising = Array.from({ length: 601 }, (_, i) => i / 600);
const rise = (top: number): number[] => [...rising.map((u) => top * u), ...Array<number>(30).fill(0)];
const way = (top: number): number[] => [...rising.map((u) => top * u), ...Array.from({ length: 30 }, (_, k) => top * (1 + 0.001 * k))];
const time = Array.from({ length: 631 }, (_, i) => i / 10);
const spiked = (force: readonly number[], at: number, by: number): number[] => force.map((F, i) => (i === at ? F + by : F));

/** Held for 12 s, 5 samples a second. */
const held = Array.from({ length: 100 }, (_, i) => 7355 * Math.max(0, Math.min(i / 20, 1, (85 - i) / 4)));
const seconds = Array.from({ length: 100 }, (_, i) => i / 5);

type Told = { readonly findings: readonly Finding[]; readonly trail: readonly TrailStep[] };
const section = rectangular({ width: 10, thickness: 5 });
const loop = [...rising.map((u) => 300 * u), ...rising.map((u) => 300 * (1 - u)), ...rising.map((u) => 320 * u)];
const loopStrain = loop.map((R, i) => R / 2e5 + (i < 601 ? 1e-3 * (R / 300) ** 20 : 1e-3));

/** Each method: what it gives for a force with or without a spike of a single sample. */
const methods: readonly (readonly [string, (by: number, repairs?: SpikeRepair) => Told & { readonly value: number | undefined }])[] = [
  [
    'bending',
    (by, repairs) => {
      const record = { force: spiked(rise(500), 300, by), deflection: way(1.5), time };
      const result = analyseBending(record, { section, setup: { points: 3, span: 100 } }, { repairs });
      return { ...result, value: result.flexuralStrength.value };
    },
  ],
  [
    'compression',
    (by, repairs) => {
      const record = { force: spiked(rise(-20_000), 300, -by), extension: way(-0.02), time };
      const result = analyseCompression(record, { section: round({ diameter: 10 }), height: 15 }, { repairs });
      return { ...result, value: result.compressiveStrength?.value };
    },
  ],
  [
    'shear',
    (by, repairs) => {
      const result = analyseShear({ force: spiked(rise(12_000), 300, by), travel: way(2), time }, { diameter: 5, planes: 1 }, { repairs });
      return { ...result, value: result.shearStrength.value };
    },
  ],
  [
    'cupping',
    (by, repairs) => {
      const result = analyseCupping({ force: spiked(rise(9000), 300, by), travel: way(10), time }, { thickness: 1 }, { repairs });
      return { ...result, value: result.cuppingIndex?.value };
    },
  ],
  [
    'brinell',
    (by, repairs) => {
      const record = { time: seconds, force: spiked(held, 60, by) };
      const result = analyseBrinell({ ballDiameter: 5, indentations: [{ diameters: [2.26, 2.26], record }] }, {}, { repairs });
      return { ...result, value: result.hardness?.value };
    },
  ],
  [
    'unloading',
    (by, repairs) => {
      const record = { force: spiked(loop, 900, by / 100).map((R) => 50 * R), strain: loopStrain };
      const result = analyseUnloading(record, { section: round({ diameter: 8 }), gaugeLength: 40 }, { repairs });
      return { ...result, value: result.loops[0]?.slope.value };
    },
  ],
];

describe.each(methods)('a force with one sample far off: %s', (_, analyse) => {
  const sound = analyse(0);
  const repaired = analyse(50_000);

  test('gives what it gives without, and says so in a finding and in the trail', () => {
    expect(sound.value).toBeGreaterThan(0);
    expect(repaired.value! / sound.value!).toBeCloseTo(1, 9);
    expect(sound.findings.some(({ code }) => code === 'spikes')).toBe(false);
    expect(repaired.findings.filter(({ code }) => code === 'spikes')).toHaveLength(1);
    expect(sound.trail.some(({ code }) => code === 'spikes-replaced')).toBe(false);
    expect(repaired.trail.find(({ code }) => code === 'spikes-replaced')!.change).toMatchObject({ kind: 'set', column: 'force' });
  });

  test('is left as it is where that is asked for, and the finding stays', () => {
    const left = analyse(50_000, { spikes: false });
    expect(left.value).not.toBe(repaired.value);
    expect(left.findings.some(({ code }) => code === 'spikes')).toBe(true);
    expect(left.trail.some(({ code }) => code === 'spikes-replaced')).toBe(false);
  });

  test('another repair is refused by name', () => {
    expect(refusal(() => analyse(0, { drift: true } as never))).toBe('unknown-option options.repairs.drift');
  });
});

test('the trail tells which blank, and which indentation', () => {
  const blank = (by: number) => ({ force: spiked(rise(9000), 300, by), travel: way(10), time });
  const { trail } = analyseCupping([blank(0), blank(50_000)], { thickness: 1 });
  expect(trail.find(({ code }) => code === 'spikes-replaced')!.values['blank']).toBe(2);
  const one = (by: number) => ({ diameters: [2.26, 2.26], record: { time: seconds, force: spiked(held, 60, by) } });
  const brinell = analyseBrinell({ ballDiameter: 5, indentations: [one(0), one(0), one(9000)] });
  expect(brinell.trail.find(({ code }) => code === 'spikes-replaced')!.values['indentation']).toBe(3);
});
