import { describe, expect, test } from 'vitest';
import { analyseTension, joinSlips, type TensionRecord } from '../../src/index.js';
import { simulateTension, type TensionScenario } from '../../src/simulate/index.js';
import { AREA, COMPLIANCE, mildSteel, roundPiece } from '../support/records.js';

const {
  modulus: MODULUS,
  yieldPoint: { plateau: PLATEAU },
} = mildSteel;
const scenario: TensionScenario = {
  material: mildSteel,
  piece: roundPiece,
  frame: { compliance: COMPLIANCE, slack: 0.2 },
  hand: { speed: 0.05, speedAfterYield: 0.1 },
  logger: { rate: 30, extensometer: true, lead: 1, tail: 1, forceNoise: 0, motionNoise: 0 },
  seed: 3,
};
const STIFFNESS = 1 / (COMPLIANCE + roundPiece.parallelLength! / (MODULUS * AREA));
const sound = simulateTension(scenario).record;
const noisy = simulateTension({ ...scenario, logger: { ...scenario.logger, forceNoise: 6, motionNoise: 0.001 } }).record;
const upper = sound.force.findIndex((F) => F / AREA > 300);
const hardening = sound.force.findIndex((F, i) => i > upper + 30 && F / AREA > 290);
/** Sample at a share of the plateau. */
const onPlateau = (share: number): number => Math.round(upper + share * (hardening - upper));
const byTravel = ({ time, force, travel }: TensionRecord): TensionRecord => ({ time, force, travel });

/** After some samples the force falls by a share within one sample while the travel leaps ahead, and comes back elastically; `own`: share that the extensometer sees. */
function leaping({ force, travel, extension }: TensionRecord, at: readonly number[], share: number, leap: number, own = 0): TensionRecord {
  const [F, x, e]: [number[], number[], number[]] = [[], [], []];
  let [ahead, lengthened] = [0, 0];
  for (let i = 0; i < force.length; i += 1) {
    F.push(force[i]!);
    x.push(travel![i]! + ahead);
    e.push(extension![i]! + lengthened);
    if (!at.includes(i)) continue;
    const fall = share * force[i]!;
    ahead += leap + fall / STIFFNESS;
    lengthened += own * (leap + fall / STIFFNESS);
    for (let k = 0; k < 10; k += 1) {
      const left = fall * (1 - k / 10);
      F.push(force[i]! - left);
      x.push(travel![i]! + ahead - left / STIFFNESS);
      e.push(extension![i]! + lengthened - (left * roundPiece.gaugeLength) / (MODULUS * AREA));
    }
  }
  const of = (column: number[]) => Float64Array.from(column);
  return { time: of(F.map((_, i) => i / 30)), force: of(F), travel: of(x), extension: of(e) };
}

const analysed = (record: TensionRecord, options: object = {}) =>
  analyseTension(record, roundPiece, { frameCompliance: COMPLIANCE, ...options });
const codes = ({ findings }: { findings: readonly { code: string }[] }) => findings.map(({ code }) => code);

describe('a sudden fall on the plateau over which the travel leaps ahead', () => {
  const cases = [
    [0.05, 0.1],
    [0.1, 0.15],
    [0.15, 0.2],
  ].flatMap(([share, leap]) => [0.3, 0.7].map((where) => [share!, leap!, where] as const));

  test.each(cases)('of %s, %s mm, at %s of it: ReL stands with its doubt, and both readings are said', (share, leap, where) => {
    for (const record of [sound, noisy]) {
      const found = analysed(byTravel(leaping(record, [onPlateau(where)], share, leap)));
      const said = found.findings.find(({ code }) => code === 'falls-slip-or-yield')!;
      expect(said.severity).toBe('fault');
      const { count, way, lowest, level, least, most } = said.values as Record<string, number>;
      const slipped = leap + (share * 280 * AREA) / STIFFNESS;
      expect(count).toBe(1);
      // one sample of the plateau lies within it
      expect(Math.abs(way! - slipped)).toBeLessThan(0.015);
      const ReL = found.lowerYieldStrength!;
      expect(ReL.value / 280).toBeCloseTo(1 - share, 2);
      expect(lowest).toBe(ReL.value);
      expect(Math.abs(level! - 280)).toBeLessThan(1);
      expect(ReL.standardUncertainty).toBeCloseTo((level! - lowest!) / Math.sqrt(3), 9);
      expect(Math.abs(ReL.value - 280)).toBeLessThan(2 * ReL.standardUncertainty!);
      expect(found.yieldPointExtension).toBeUndefined();
      expect(Math.abs(least! - PLATEAU)).toBeLessThan(0.0008);
      expect(most! - least!).toBeCloseTo(way! / roundPiece.parallelLength!, 9);
      expect(Math.abs(most! - PLATEAU - slipped / roundPiece.parallelLength!)).toBeLessThan(0.0008);
      expect(codes(found)).not.toContain('grip-slip');
    }
  });

  test('the doubt stands in the budget of ReL', () => {
    const { uncertainty, lowerYieldStrength } = analysed(byTravel(leaping(sound, [onPlateau(0.5)], 0.1, 0.15)), { uncertainty: {} });
    const line = uncertainty!['ReL']!.lines.find(({ input }) => input === 'falls that may be strokes or slips')!;
    expect(line.standardUncertainty).toBeCloseTo((280 - lowerYieldStrength!.value) / Math.sqrt(3), 6);
    expect(uncertainty!['Ae']).toBeUndefined();
  });

  test('with slips taken out ReL and Ae are those of the material', () => {
    const record = byTravel(leaping(sound, [onPlateau(0.3), onPlateau(0.7)], 0.1, 0.15));
    expect(analysed(record).findings.find(({ code }) => code === 'falls-slip-or-yield')!.values['count']).toBe(2);
    expect(joinSlips(record).trail.map(({ code }) => code)).toEqual(['slip-left-out', 'slip-taken-out', 'slip-left-out', 'slip-taken-out']);
    const found = analysed(record, { repairs: { slips: true } });
    expect(found.lowerYieldStrength!.value).toBeCloseTo(280, 6);
    expect(Math.abs(found.yieldPointExtension!.value - PLATEAU)).toBeLessThan(0.0008);
    expect(codes(found)).not.toContain('falls-slip-or-yield');
    expect(analysed(byTravel(sound), { repairs: { slips: true } }).trail.map(({ code }) => code)).not.toContain('slip-left-out');
  });

  test('more than five are serrations of the material', () => {
    const at = (count: number) => Array.from({ length: count }, (_, k) => onPlateau(0.2 + 0.1 * k));
    const withLeaps = (count: number) => byTravel(leaping(sound, at(count), 0.05, 0.1));
    expect(codes(analysed(withLeaps(5)))).toContain('falls-slip-or-yield');
    expect(joinSlips(withLeaps(6)).trail).toEqual([]);
    const found = analysed(withLeaps(6));
    expect(codes(found)).not.toContain('falls-slip-or-yield');
    expect(found.lowerYieldStrength!.value / 280).toBeCloseTo(0.95, 6);
    expect(found.yieldPointExtension).toBeDefined();
  });

  test('what does not leap is a serration: its travel goes on by what the fall gives elastically', () => {
    const found = analysed(byTravel(leaping(sound, [onPlateau(0.5)], 0.1, 0)));
    expect(codes(found)).not.toContain('falls-slip-or-yield');
    expect(found.lowerYieldStrength!.value / 280).toBeCloseTo(0.9, 6);
  });

  test('an extensometer that lengthens with it tells that the piece yielded; one that does not may stand beside', () => {
    const leaps = (own: number) => codes(analysed(leaping(sound, [onPlateau(0.5)], 0.1, 0.15, own)));
    expect(leaps(0.9)).not.toContain('falls-slip-or-yield');
    expect(leaps(0)).toContain('falls-slip-or-yield');
  });

  test('a fall far below the yield drop is a slip of its own way, not of all the way since ReH', () => {
    for (const where of [0.3, 0.7]) {
      const record = byTravel(leaping(sound, [onPlateau(where)], 0.4, 0.21));
      const found = analysed(record);
      const slip = found.findings.find(({ code }) => code === 'grip-slip')!;
      expect(slip.values['way'] as number).toBeCloseTo(0.21 + (0.4 * 280 * AREA) / STIFFNESS, 1);
      expect(slip.values['fall'] as number).toBeCloseTo(0.4 * 280 * AREA, 0);
      expect(slip.range![0]).toBe(onPlateau(where));
      expect(found.upperYieldStrength!.value).toBeCloseTo(analysed(byTravel(sound)).upperYieldStrength!.value, 6);
      expect(found.lowerYieldStrength!.value).toBeCloseTo(280, 6);
      expect(found.yieldPointExtension).toBeUndefined();
      const repaired = analysed(record, { repairs: { slips: true } });
      expect(Math.abs(repaired.yieldPointExtension!.value - PLATEAU)).toBeLessThan(0.0008);
    }
  });
});
