import { describe, expect, test } from 'vitest';
import {
  analyseBending,
  analyseCompression,
  rectangular,
  round,
  type BendingPiece,
  type CompressionColumns,
  type CompressionPiece,
} from '../../src/index.js';
import { simulateBending, simulateCompression, type CompressionScenario } from '../../src/simulate/index.js';
import { withLoops, type PutLoop } from '../support/loops.js';

interface Told {
  readonly findings: readonly { readonly code: string }[];
  readonly trail: readonly { readonly code: string; readonly values: Readonly<Record<string, number | string>> }[];
}
const codes = ({ findings }: Told) => findings.map(({ code }) => code);
const leftOut = ({ trail }: Told) => trail.find(({ code }) => code === 'excursions-not-evaluated')?.values;
const near = (value: number | undefined, known: number | undefined, share = 1e-6) => {
  expect(Math.abs(value! / known! - 1)).toBeLessThan(share);
};

const piece: CompressionPiece = { section: round({ diameter: 10 }), height: 15 };
const COMPLIANCE = 4e-6;
const YIELD = 220;
const MODULUS = 70_000;
const aluminium: CompressionScenario = {
  material: { modulus: MODULUS, yieldStress: YIELD, hardening: { law: 'swift', prestrain: 0.02, exponent: 0.2 } },
  piece,
  friction: 0.1,
  frame: { compliance: COMPLIANCE, slack: 0.05 },
  logger: { rate: 50, extensometer: true, forceNoise: 0, motionNoise: 0 },
};
/** Loops at these shares of the force at which the piece yields. */
const pressed = (of: CompressionScenario, shares: readonly number[], to = 0.05): CompressionColumns => {
  const { area } = of.piece.section;
  const loops: PutLoop[] = shares.map((share) => ({ force: share * YIELD * area, to }));
  const ofPiece = of.piece.height / MODULUS / area;
  return withLoops(simulateCompression(of).record, loops, { extension: ofPiece, travel: ofPiece + COMPLIANCE });
};

describe('an unloading loop in a compression test', () => {
  const { truth } = simulateCompression(aluminium);
  const options = { friction: 0.1, strains: [0.01, 0.1], frameCompliance: COMPLIANCE };
  const by = (column: 'extension' | 'travel', { force, time, ...motion }: CompressionColumns) =>
    analyseCompression({ force, time, [column]: motion[column] }, piece, options);

  test.each([
    ['extension', 'on the elastic line', [0.3]],
    ['extension', 'at the yield strength', [1.04]],
    ['travel', 'at the yield strength', [1.04]],
    ['extension', 'in the plastic part', [1.15]],
    ['travel', 'all along', [0.4, 0.7, 0.99, 1.1, 1.3]],
  ] as const)('by %s, %s: every property is that of the record without it', (column, _, shares) => {
    const without = by(column, pressed(aluminium, []));
    const record = pressed(aluminium, shares);
    const found = by(column, record);
    near(found.modulus?.value, MODULUS);
    near(found.proofStrengths[0]?.value, truth.proofStrengths[1]?.stress);
    found.stressesAtStrain.forEach(({ value }, k) => {
      near(value, without.stressesAtStrain[k]!.value);
    });
    near(found.hardening?.exponent.value, without.hardening?.exponent.value);
    near(found.buckling?.largestShare, without.buckling?.largestShare);
    near(found.flowCurve?.stress.at(-1), truth.flowStress);
    found.flowCurve!.strain.forEach((p, i) => {
      near(found.flowCurve!.stress[i], YIELD * (1 + p / 0.02) ** 0.2);
    });
    // the curve keeps it, and it is told
    expect(found.curve.stress).toHaveLength(record.force.length);
    expect(found.curve.stress[found.modulusWindow!.last]).toBe(found.modulusWindow!.stressLimits[1]);
    expect(found.curve.strain[found.modulusWindow!.first]).toBe(found.modulusWindow!.strainLimits[0]);
    expect(codes(found).filter((code) => code === 'drive-reversed')).toHaveLength(shares.length);
    expect(codes(found)).not.toContain('uneven-loading');
    expect(leftOut(found)).toMatchObject({ count: shares.length, samples: 59 * shares.length });
    expect(leftOut(without)).toBeUndefined();
  });

  test('it is no buckling of a slender piece', () => {
    const slender: CompressionPiece = { section: round({ diameter: 10 }), height: 35 };
    const hardening = { law: 'swift', prestrain: 0.004, exponent: 0.2 } as const;
    const of = { ...aluminium, material: { ...aluminium.material, hardening }, piece: slender, until: 0.004 };
    const analysed = (shares: readonly number[]) => {
      const { force, extension, time } = pressed(of, shares);
      return analyseCompression({ force, extension, time }, slender);
    };
    const found = analysed([1.15]);
    expect(leftOut(found)).toMatchObject({ count: 1 });
    expect(codes(found)).not.toContain('buckled');
    near(found.buckling?.largestShare, analysed([]).buckling?.largestShare);
  });

  test('a window that is given by its samples counts those of the record', () => {
    const record = pressed(aluminium, [0.3]);
    const { force, extension, time } = record;
    const found = analyseCompression({ force, extension, time }, piece, { modulus: { window: { by: 'samples', first: 60, last: 220 } } });
    expect([found.modulusWindow!.first, found.modulusWindow!.last]).toEqual([60, 220]);
    expect(found.modulusWindow!.points).toBe(161 - 59);
    near(found.modulus?.value, MODULUS);
  });

  test('a fall in which the drive did not go back is a crack or a fold of the piece: it stays', () => {
    const { force, extension, time } = pressed(aluminium, []);
    const at = force.length >> 1;
    // the force falls by a tenth at once and comes back while the piece is pressed on
    const fallen = Float64Array.from(force, (F, i) => (i > at && i < at + 200 ? F * (0.9 + (0.1 * (i - at)) / 200) : F));
    const found = analyseCompression({ force: fallen, extension, time }, piece);
    expect(leftOut(found)).toBeUndefined();
    expect(Math.min(...found.flowCurve!.stress.slice(-3000))).toBeLessThan(0.95 * found.flowCurve!.stress.at(-1)!);
  });
});

describe('an unloading loop in a bending test', () => {
  const beam: BendingPiece = { section: rectangular({ width: 10, thickness: 5 }), setup: { points: 3, span: 100 } };
  const { record, truth } = simulateBending({
    material: { modulus: 200_000, yieldStress: 600, tangentModulus: 2000 },
    piece: beam,
    frame: { compliance: 2e-5, indentation: 1e-5, slack: 0.1 },
    logger: { rate: 20, extensometer: true, forceNoise: 0, motionNoise: 0 },
  });
  // F = 2 σ b h² / 3 L, and s = F L³ / 48 E I
  const yields = (2 * 600 * 10 * 5 ** 2) / (3 * 100);
  const way = 100 ** 3 / (48 * 200_000 * ((10 * 5 ** 3) / 12));
  const options = { frameCompliance: 2e-5, indentationCompliance: 1e-5 };
  const bent = (column: 'deflection' | 'travel', shares: readonly number[]) => {
    const loops = shares.map((share) => ({ force: share * yields, to: 0.05 }));
    const columns = { force: record.force, time: record.time!, [column]: record[column]! };
    return analyseBending(withLoops(columns, loops, { deflection: way, travel: way + 3e-5 }), beam, options);
  };

  test.each([
    ['deflection', 'on the elastic line', [0.3]],
    ['deflection', 'where it has yielded', [1.04]],
    ['travel', 'at the chord', [0.7, 0.95]],
    ['deflection', 'all along', [0.4, 0.7, 0.99, 1.1, 1.3]],
    ['travel', 'all along', [0.4, 0.7, 0.99, 1.1, 1.3]],
  ] as const)('by %s, %s: moduli, proof strength and strain at maximum are those of the record without it', (column, _, shares) => {
    const found = bent(column, shares);
    const without = bent(column, []);
    near(found.modulus?.value, 200_000);
    near(found.chordModulus?.value, 200_000);
    const known = column === 'travel' ? truth.proofStrengths : truth.proofStrengthsAtMidSpan;
    near(found.proofStrengths[0]?.value, known[1]?.stress);
    near(found.flexuralStrength.value, without.flexuralStrength.value);
    near(found.strainAtMaximum.value, without.strainAtMaximum.value);
    expect(codes(found).filter((code) => code === 'drive-reversed')).toHaveLength(shares.length);
    expect(codes(found)).not.toContain('uneven-loading');
    expect(leftOut(found)).toMatchObject({ count: shares.length });
    expect(leftOut(without)).toBeUndefined();
  });
});
