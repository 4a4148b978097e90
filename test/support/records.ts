/** The end-to-end cases of the handbook tests, made densely from their formulas. */
import { round, type TensionRecord, type TestPiece } from '../../src/index.js';
import type { SimulatedMaterial } from '../../src/simulate/index.js';

/** Steel with a yield point: ReH 305, ReL 280 MPa, Ae 1.4 % plastic. */
export const mildSteel = {
  modulus: 206_000,
  yieldStress: 280,
  yieldPoint: { upper: 305, plateau: 0.014 },
  hardening: { law: 'swift', prestrain: 0.03, exponent: 0.25 },
  fracture: { extension: 0.35, share: 0.7 },
} as const satisfies SimulatedMaterial;

/** Round 8 mm, L0 40 mm, Lc 48 mm, as in the synthetic cases T1 and T3. */
export const roundPiece: TestPiece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
/** The same, measured broken without a neck, as long as T1 is at its end: a record of it that ends at its highest force ended with the fracture. */
export const brokenPiece: TestPiece = { ...roundPiece, afterFracture: { area: 49.3 } };
export const AREA = 50.26548245743669;
export const COMPLIANCE = 2e-5;

/** T1: Ramberg-Osgood, 70 GPa, Rp0.2 250 MPa, exponent 20, frame 20 µm/kN, toe shift 0.15 mm. */
export function caseT1(samples = 2801, top = 280): TensionRecord {
  const stress = Float64Array.from({ length: samples }, (_, i) => (i * top) / (samples - 1));
  const strain = stress.map((R) => R / 70_000 + 0.002 * (R / 250) ** 20);
  return { force: stress.map((R) => R * AREA), travel: strain.map((e, i) => 0.15 + 48 * e + COMPLIANCE * stress[i]! * AREA) };
}

const cornersT3 = [
  [0, 0],
  [(100 * 300) / 210_000, 300],
  [0.2, 268],
  [0.3, 282],
  [0.8, 280],
  [1.2, 283],
  [1.6, 281],
  [3, 309],
  [6, 350],
  [12, 400],
  [20, 430],
  [26, 400],
  [30, 300],
] as const;

/** T3 as a curve: piecewise straight, with a yield point; `step` in % strain. */
export function curveT3(step = 0.0025): { strain: Float64Array; stress: Float64Array } {
  const strain: number[] = [];
  const stress: number[] = [];
  for (let k = 0; k + 1 < cornersT3.length; k += 1) {
    const [a, b] = cornersT3[k]!;
    const [p, q] = cornersT3[k + 1]!;
    const pieces = Math.round((p - a) / step);
    for (let i = 0; i < pieces; i += 1) {
      strain.push((a + ((p - a) * i) / pieces) / 100);
      stress.push(b + ((q - b) * i) / pieces);
    }
  }
  strain.push(0.3);
  stress.push(300);
  return { strain: Float64Array.from(strain), stress: Float64Array.from(stress) };
}

/** T3 as the frame would record it. */
export function caseT3(step = 0.0025): TensionRecord {
  const { strain, stress } = curveT3(step);
  return { force: stress.map((R) => R * AREA), travel: strain.map((e, i) => 0.15 + 48 * e + COMPLIANCE * stress[i]! * AREA) };
}

/** T2: true stress 500 ε^0.2, no elastic line; engineering strain in steps of 5e-6. */
export function curveT2(): { strain: Float64Array; stress: Float64Array } {
  const strain = Float64Array.from({ length: 80_000 }, (_, i) => (i + 1) * 5e-6);
  return { strain, stress: strain.map((e) => (500 * Math.log1p(e) ** 0.2) / (1 + e)) };
}
