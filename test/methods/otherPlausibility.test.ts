import { describe, expect, test } from 'vitest';
import { analyseBending, analyseCompression, analyseShear, rectangular, round, type Finding } from '../../src/index.js';

/** Ramberg and Osgood of a steel: E 200 000, 300 MPa at a plastic strain of 0.002. */
const stress = Array.from({ length: 801 }, (_, i) => 0.5 * i);
const strain = stress.map((R) => R / 200_000 + 0.002 * (R / 300) ** 12);
const time = stress.map((_, i) => i / 10);
const told = (findings: readonly Finding[]) => findings.filter(({ code }) => /looks|implausible|unlike-family/.test(code));
const codes = (findings: readonly Finding[]) => told(findings).map(({ code, severity }) => `${severity} ${code}`);

describe('compression', () => {
  const puck = { section: round({ diameter: 10 }), height: 15 };
  const of = (perForce: number, perStrain: number) =>
    analyseCompression({ force: stress.map((R) => R * puck.section.area * perForce), strain: strain.map((e) => e * perStrain), time }, puck)
      .findings;

  test('a sound test is plausible; strain in per cent and force in kN are named', () => {
    expect(told(of(1, 1))).toEqual([]);
    expect(codes(of(1, 100))).toEqual(['fault strain-looks-like-percent']);
    expect(codes(of(0.001, 1))).toEqual(['fault force-looks-like-kilonewton']);
  });
});

describe('bending', () => {
  const [b, h, L] = [12.5, 2.4, 80];
  const right = { section: rectangular({ width: b, thickness: h }), setup: { points: 3 as const, span: L } };
  const deflection = Array.from({ length: 400 }, (_, i) => 0.01 * i);
  const of = (modulus: number, perForce = 1, piece = right) => {
    const stiffness = (48 * modulus * b * h ** 3) / 12 / L ** 3;
    return analyseBending({ force: deflection.map((s) => perForce * stiffness * s), deflection, time: deflection }, piece).findings;
  };

  test('metals are plausible; of a plastic a note', () => {
    expect(told(of(200_000))).toEqual([]);
    expect(codes(of(3000))).toEqual(['note slope-implausible']);
  });

  test('force in kN: no beam is so weak', () => {
    // 36 MPa and 0.06 MPa where 36 GPa and 65 MPa are true
    expect(codes(of(35_926, 0.001))).toEqual(['fault force-looks-like-kilonewton']);
    expect(codes(of(200_000, 0.001))).toEqual(['fault force-looks-like-kilonewton']);
  });

  test('width and thickness swapped: 7373 where 200 000 is true, and that is said', () => {
    const [found, ...others] = told(of(200_000, 1, { ...right, section: rectangular({ width: h, thickness: b }) }));
    expect(others).toEqual([]);
    expect(found).toMatchObject({ code: 'dimension-looks-wrong', severity: 'caution', field: 'modulus' });
    expect(found!.values['value']).toBeCloseTo(7372.8, 1);
    expect(found!.values['why']).toBe(
      'If width and thickness were swapped, the slope of the elastic line would fit: the reading is 1/27.1 of the true one.',
    );
  });
});

test('shear: 12 for 12 kN is a stress that no metal has', () => {
  const of = (maximumForce: number) => analyseShear({ maximumForce }, { diameter: 5, planes: 1 }).findings;
  expect(told(of(12_000))).toEqual([]);
  const [found] = told(of(12));
  expect(found).toMatchObject({ code: 'force-looks-like-kilonewton', severity: 'fault', field: 'shearStrength' });
  expect(found!.values['stress']).toBeCloseTo(0.611, 3);
});
