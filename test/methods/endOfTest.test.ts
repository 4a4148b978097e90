/** How a test ended decides what its highest force is worth: one rule for tension, bending and shear. */
import { describe, expect, test } from 'vitest';
import {
  analyseBending,
  analyseCompression,
  analyseShear,
  analyseTension,
  rectangular,
  round,
  type Finding,
  type TestPiece,
} from '../../src/index.js';
import { seeded } from '../support/random.js';

const codes = ({ findings }: { readonly findings: readonly Finding[] }) => findings.map(({ code }) => code);

/** A metal of E 100 GPa whose plastic strain is 0.2 % at 450 MPa: the stress at a strain, by halving. */
function stressAt(strain: number): number {
  let [low, high] = [0, 2000];
  for (let k = 0; k < 60; k += 1) {
    const R = (low + high) / 2;
    if (R / 100_000 + 0.002 * (R / 450) ** 6 < strain) low = R;
    else high = R;
  }
  return low;
}

/** The loading up to a strain in so many samples, and what follows it. */
const SAMPLES = 400;
const FARTHEST = 0.006;
const strains = Array.from({ length: SAMPLES }, (_, i) => (i * FARTHEST) / (SAMPLES - 1));
const stresses = strains.map(stressAt);
const TOP = stresses[SAMPLES - 1]!;
/** The drive lets the force go over 60 samples, and the strain goes back with it. */
const back = Array.from({ length: 60 }, (_, i) => (0.97 * (i + 1)) / 60);
const unloadedStrains = [...strains, ...back.map((share) => FARTHEST - (share * TOP) / 100_000)];
const unloadedStresses = [...stresses, ...back.map((share) => TOP * (1 - share))];

describe('tension', () => {
  const section = round({ diameter: 10 });
  const whole: TestPiece = { section, gaugeLength: 50 };
  const broken: TestPiece = { ...whole, afterFracture: { gaugeLength: 50.08, area: 78.4 } };
  const pulled = (piece: TestPiece, strain = strains, stress = stresses) =>
    analyseTension({ force: stress.map((R) => R * section.area), strain }, piece);

  test('a piece that broke at its highest force: Rm is known, its last sample is the fracture, and nothing is called open', () => {
    const result = pulled(broken);
    expect(result.tensileStrength.value).toBeCloseTo(TOP, 9);
    expect([result.tensileStrength.atLeast, result.maximumForce.atLeast]).toEqual([undefined, undefined]);
    expect(result.fracture).toMatchObject({ index: SAMPLES - 1, how: 'end-of-record' });
    // what is plastic there is the same at maximum and at fracture
    expect(result.totalExtensionAtFracture!.value).toBe(result.totalExtensionAtMaximumForce!.value);
    expect(result.plasticExtensionAtFracture!.value).toBe(result.uniformExtension!.value);
    expect(result.uniformExtension!.value).toBeCloseTo(result.totalExtensionAtMaximumForce!.value - TOP / result.elasticSlope!.value, 12);
    expect(result.toughness).toBeDefined();
    expect(codes(result)).toContain('fracture-not-recorded');
    for (const code of ['maximum-at-end', 'stopped-before-fracture', 'not-determined']) expect(codes(result)).not.toContain(code);
  });

  test.each([
    ['longer', { gaugeLength: 60 }],
    ['thinner', { area: 40 }],
    // a ductile bar cut off while it rose: half as long again as the record shows it
    ['longer by half', { gaugeLength: 50 * (1 + 1.5 * FARTHEST + 0.0121) }],
  ])('a broken piece that is much %s than the record shows: the record was cut short, and Rm is at least so large', (_, afterFracture) => {
    const result = pulled({ ...whole, afterFracture });
    expect([result.tensileStrength.atLeast, result.fracture]).toEqual([true, undefined]);
    expect(codes(result)).toContain('maximum-at-end');
  });

  test('of a piece that was not measured, and of one whose drive let go before it was broken, Rm is at least so large', () => {
    const open = pulled(whole);
    const letGo = pulled(broken, unloadedStrains, unloadedStresses);
    for (const result of [open, letGo]) {
      expect(result.tensileStrength.atLeast).toBe(true);
      expect([result.uniformExtension, result.totalExtensionAtMaximumForce, result.fracture]).toEqual([undefined, undefined, undefined]);
      expect(codes(result)).not.toContain('fracture-not-recorded');
    }
    expect(codes(open)).toContain('maximum-at-end');
    expect(codes(letGo)).toContain('stopped-before-fracture');
  });

  test('all that is withheld with the maximum and the fracture is named', () => {
    const result = pulled(whole);
    const named = result.findings
      .filter(({ code, field }) => code === 'not-determined' && field?.startsWith('totalExtensionAt'))
      .flatMap(({ values }) => String(values['symbol']).split(', '));
    expect(named).toEqual(['Ag', 'Agt', 'εu', 'At', 'At − R/mE', 'U']);
    const there = Object.values(result).flatMap((one: unknown) =>
      typeof one === 'object' && one !== null && 'symbol' in one ? [one.symbol] : [],
    );
    expect(there.filter((symbol) => named.includes(symbol as string))).toEqual([]);
  });
});

describe('bending', () => {
  const piece = { section: rectangular({ width: 10, thickness: 4 }), setup: { points: 3 as const, span: 64 } };
  // F = 2 b h² σ/(3 L), s = L² ε/(6 h)
  const bent = (strain: readonly number[], stress: readonly number[]) =>
    analyseBending({ force: stress.map((R) => (2 * 10 * 16 * R) / (3 * 64)), deflection: strain.map((e) => (64 ** 2 * e) / 24) }, piece);

  test('stopped while the force rose, by its record or by its drive: at least so large', () => {
    const [stopped, letGo] = [bent(strains, stresses), bent(unloadedStrains, unloadedStresses)];
    for (const result of [stopped, letGo]) {
      expect(result.flexuralStrength.value).toBeCloseTo(TOP, 6);
      expect([result.flexuralStrength, result.maximumForce, result.strainAtMaximum].map(({ atLeast }) => atLeast)).toEqual([
        true,
        true,
        true,
      ]);
      expect([result.fracture, result.stressAtBreak]).toEqual([undefined, undefined]);
    }
    expect(codes(stopped)).toContain('maximum-at-end');
    expect(codes(letGo)).toContain('stopped-before-fracture');
    expect(codes(letGo)).not.toContain('maximum-at-end');
  });

  test.each([0, 10, 30])('a way of %i mm to the beam before it is loaded changes nothing', (way) => {
    const approach = Array.from({ length: 200 }, (_, i) => (i * way) / 200);
    const at = (strain: readonly number[], stress: readonly number[]) =>
      analyseBending(
        {
          force: [...approach.map(() => 0), ...stress.map((R) => (2 * 10 * 16 * R) / (3 * 64))],
          travel: [...approach, ...strain.map((e) => way + (64 ** 2 * e) / 24)],
        },
        { ...piece },
      );
    expect(at(strains, stresses).flexuralStrength.atLeast).toBe(true);
    // past its maximum, in a parabola down to 84 %
    const falling = Array.from({ length: 400 }, (_, i) => (i + 1) / 400);
    const past = at(
      [...strains, ...falling.map((share) => FARTHEST * (1 + share))],
      [...stresses, ...falling.map((share) => TOP * (1 - 0.16 * share ** 2))],
    );
    expect(past.flexuralStrength.atLeast).toBeUndefined();
    expect(codes(past)).toContain('stopped-before-fracture');
  });

  test('let go at once, the beam springing back: at least so large', () => {
    const result = bent([...strains, FARTHEST - TOP / 100_000], [...stresses, 0]);
    expect([result.flexuralStrength.atLeast, result.fracture]).toEqual([true, undefined]);
    expect(codes(result)).toContain('stopped-before-fracture');
  });

  test('broken at its highest force, or held there until the record ends', () => {
    const broke = bent([...strains, FARTHEST], [...stresses, 0]);
    expect([broke.flexuralStrength.atLeast, broke.fracture?.index]).toEqual([undefined, SAMPLES - 1]);
    expect(codes(broke)).not.toContain('maximum-at-end');
    const level = [...strains, ...Array.from({ length: 200 }, (_, i) => FARTHEST + (i + 1) * 1e-5)];
    const flat = bent(level, [...stresses, ...Array.from({ length: 200 }, () => TOP)]);
    expect(flat.flexuralStrength.atLeast).toBeUndefined();
    expect(codes(flat)).toContain('stopped-before-fracture');
  });
});

test('compression: a piece that does not break has no strength, so its highest force is the one that was applied', () => {
  const section = round({ diameter: 10 });
  const result = analyseCompression({ force: stresses.map((R) => R * section.area), strain: strains }, { section, height: 15 });
  expect([result.maximumForce.atLeast, result.compressiveStrength]).toEqual([undefined, undefined]);
  expect(codes(result)).toContain('compressive-strength-without-strain');
});

describe('shear', () => {
  const pin = { diameter: 8, planes: 2 as const };
  // the way begins where it was left, and the force runs into the maximum as a sine
  const ways = Array.from({ length: SAMPLES }, (_, i) => 12 + i / 200);
  const way = (i: number) => i / (1.4 * SAMPLES);
  const forces = (noise: number, seed = 1) => {
    const { normal } = seeded(seed);
    return ways.map((_, i) => 30_000 * Math.sin((Math.PI * way(i)) / 2) + noise * normal());
  };
  const marks = ({ maximumForce, shearStrength, ratioToTensileStrength, travelAtMaximumForce }: ReturnType<typeof analyseShear>) =>
    [maximumForce, shearStrength, ratioToTensileStrength, travelAtMaximumForce].map((one) => one?.atLeast);

  test.each([1, 2, 3, 4, 5])(
    'stopped while the force rose in noise (seed %i): at least so large, whichever sample is the highest',
    (seed) => {
      const force = forces(100, seed);
      for (const record of [{ force, travel: ways }, { force }]) {
        const result = analyseShear(record, pin, { tensileStrength: 400 });
        expect(marks(result)).toEqual([true, true, true, 'travel' in record ? true : undefined]);
        expect(codes(result)).toContain('maximum-at-end');
      }
    },
  );

  test.each([0, 10, 60])(
    'a way of %i mm to the pin, without force, does not count: past its maximum, at about half of it, it is known',
    (approach) => {
      const free = Array.from({ length: 500 }, (_, i) => (i * approach) / 500);
      const loaded = ways.map((_, i) => i / 200);
      const force = [...free.map(() => 0), ...loaded.map((_, i) => 30_000 * Math.sin((1.65 * (Math.PI / 2) * i) / (SAMPLES - 1)))];
      const result = analyseShear({ force, travel: [...free, ...loaded.map((one) => approach + one)] }, pin);
      expect(marks(result).slice(0, 2)).toEqual([undefined, undefined]);
      expect(codes(result)).not.toContain('maximum-at-end');
    },
  );

  test('a ratio that is at least so large is not unusually low', () => {
    const force = forces(0);
    expect(codes(analyseShear({ force, travel: ways }, pin, { tensileStrength: 900 }))).not.toContain('shear-ratio-unusual');
    expect(codes(analyseShear({ force: [...force, 0], travel: [...ways, 14] }, pin, { tensileStrength: 900 }))).toContain(
      'shear-ratio-unusual',
    );
  });

  test('let go by the drive: at least so large, and the test was stopped', () => {
    const force = forces(0);
    const top = force[SAMPLES - 1]!;
    const slope = (force[20]! - force[0]!) / (ways[20]! - ways[0]!);
    const result = analyseShear(
      {
        force: [...force, ...back.map((share) => top * (1 - share))],
        travel: [...ways, ...back.map((share) => ways[SAMPLES - 1]! - (share * top) / slope)],
      },
      pin,
      { tensileStrength: 400 },
    );
    expect(marks(result)).toEqual([true, true, true, true]);
    expect(codes(result)).toContain('stopped-before-fracture');
  });

  test('parted after its highest force, or at it: known', () => {
    const force = forces(0);
    for (const fall of [[0], back.map((share) => force[SAMPLES - 1]! * (1 - share)).concat(0)]) {
      const result = analyseShear({ force: [...force, ...fall], travel: [...ways, ...fall.map((_, i) => 14 + i / 200)] }, pin);
      expect(marks(result)).toEqual([undefined, undefined, undefined, undefined]);
      expect(codes(result).filter((code) => code === 'maximum-at-end' || code === 'stopped-before-fracture')).toEqual([]);
    }
  });
});
