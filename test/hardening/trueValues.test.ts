import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flowCurve, trueCurve, trueFractureStrain, trueFractureStress, trueStrain, trueStress } from '../../src/hardening/index.js';
import { thrown } from '../support/thrown.js';

const strain = [0, 0.001, 0.02, 0.05, 0.1];
const stress = [0, 200, 300, 350, 380];

describe('true values of a sample', () => {
  test('force over the actual area, elongation over the actual length', () => {
    // 10 mm of 100 mm² stretched to 12 mm at 40 kN: constant volume leaves 100/1.2 mm²
    expect(trueStress(400, 0.2)).toBeCloseTo(40_000 / (100 / 1.2), 9);
    // ∫ dL/L in 100 000 steps
    let sum = 0;
    for (let i = 0; i < 100_000; i += 1) sum += 2e-5 / (10 + 2e-5 * (i + 0.5));
    expect(trueStrain(0.2)).toBeCloseTo(sum, 9);
    // ε = e − e²/2 where e is small: no digit is lost to 1 + e
    expect(trueStrain(1e-10) / (1e-10 - 5e-21)).toBeCloseTo(1, 14);
  });

  test('true strains add up, engineering strains do not', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.5, max: 2, noNaN: true }), fc.double({ min: -0.5, max: 2, noNaN: true }), (a, b) => {
        expect(trueStrain((1 + a) * (1 + b) - 1)).toBeCloseTo(trueStrain(a) + trueStrain(b), 12);
      }),
    );
  });

  test.each([-1, -2])('a strain of %d is refused', (e) => {
    expect(thrown(() => trueStrain(e)).code).toBe('out-of-range');
    expect(thrown(() => trueStress(100, e)).code).toBe('out-of-range');
  });
  test.each([NaN, Infinity])('%d is refused', (bad) => {
    expect(thrown(() => trueStrain(bad)).code).toBe('not-finite');
    expect(thrown(() => trueStress(bad, 0.1)).path).toBe('stress');
    expect(thrown(() => trueStress(100, bad)).path).toBe('strain');
  });
});

describe('at fracture', () => {
  test('areas that grow, are zero or missing are refused', () => {
    expect(thrown(() => trueFractureStrain({ originalArea: 50, finalArea: 51 })).path).toBe('finalArea');
    expect(thrown(() => trueFractureStrain({ originalArea: 0, finalArea: 51 })).code).toBe('not-positive');
    expect(thrown(() => trueFractureStress({ force: -1, finalArea: 51 })).code).toBe('not-positive');
    // @ts-expect-error: a field is missing
    expect(thrown(() => trueFractureStress({ force: 1 })).code).toBe('missing');
    // @ts-expect-error: an unknown name
    expect(thrown(() => trueFractureStress({ force: 1, finalArea: 1, area: 1 })).code).toBe('unknown-option');
  });
  test('no necking, no strain', () => {
    expect(trueFractureStrain({ originalArea: 50, finalArea: 50 })).toBe(0);
  });
});

describe('trueCurve', () => {
  test('is the two formulas, sample by sample, and leaves its input alone', () => {
    const given = { strain: Float64Array.from(strain), stress: Float64Array.from(stress) };
    const curve = trueCurve(given);
    strain.forEach((e, i) => {
      expect(curve.strain[i]).toBe(trueStrain(e));
      expect(curve.stress[i]).toBe(trueStress(stress[i]!, e));
    });
    expect([...given.strain]).toEqual(strain);
    expect(trueCurve({ strain, stress })).toEqual(curve);
  });

  test('from and to are the first and last sample', () => {
    const curve = trueCurve({ strain, stress }, { from: 1, to: 3 });
    expect(curve.strain).toHaveLength(3);
    expect(curve.stress[2]).toBe(trueStress(350, 0.05));
    // a sample outside the range may be what it likes
    expect(trueCurve({ strain: [-3, 0.1], stress: [1, 380] }, { from: 1 }).strain).toHaveLength(1);
  });

  test.each([
    [{ from: 0.5 }, 'options.from', 'out-of-range'],
    [{ to: 1.5 }, 'options.to', 'out-of-range'],
    [{ to: 5 }, 'options.to', 'out-of-range'],
    [{ from: 3, to: 2 }, 'options.from', 'out-of-range'],
    [{ from: NaN }, 'options.from', 'not-finite'],
    [{ from: 0, last: 2 }, 'options.last', 'unknown-option'],
  ])('%o is refused', (options, path, code) => {
    expect(thrown(() => trueCurve({ strain, stress }, options))).toMatchObject({ path, code });
  });

  test('columns of unequal length, without samples, with NaN, with a strain of -1 are refused', () => {
    expect(thrown(() => trueCurve({ strain, stress: [1] })).code).toBe('unequal-lengths');
    expect(thrown(() => trueCurve({ strain: [], stress: [] })).code).toBe('empty');
    expect(thrown(() => trueCurve({ strain: [0, NaN], stress: [1, 2] })).path).toBe('curve.strain[1]');
    expect(thrown(() => trueCurve({ strain: [0, -1], stress: [1, 2] }))).toMatchObject({ code: 'out-of-range', path: 'curve.strain[1]' });
  });
});

describe('flowCurve', () => {
  const total = { strain: [0, 0.001, 0.0015, 0.052, 0.05, 0.103], stress: [0, 200, 280, 400, 410, 600] };

  test('takes the elastic part off and says what stayed', () => {
    const flow = flowCurve(total, { modulus: 200_000 });
    expect([...flow.strain]).toEqual([0.0015 - 0.0014, 0.052 - 0.002, 0.05 - 0.00205, 0.103 - 0.003]);
    expect([...flow.stress]).toEqual([280, 400, 410, 600]);
    // the origin and the sample on the elastic line carry no flow; the one that goes back stays
    expect(flow).toMatchObject({ leftOut: 2, first: 2 });
  });

  test('a stress below or at 0 carries no flow', () => {
    expect(flowCurve({ strain: [0.01, 0.02], stress: [-5, 300] }, { modulus: 200_000 })).toMatchObject({ leftOut: 1, first: 1 });
    expect(flowCurve({ strain: [0.01, 0.02], stress: [0, 300] }, { modulus: 200_000 })).toMatchObject({ leftOut: 1, first: 1 });
  });

  test('a range of samples; first counts in the given curve', () => {
    const flow = flowCurve(total, { modulus: 200_000, from: 3, to: 4 });
    expect(flow).toMatchObject({ leftOut: 0, first: 3 });
    expect([...flow.stress]).toEqual([400, 410]);
  });

  test('nothing stays of an elastic curve', () => {
    const flow = flowCurve({ strain: [0.0005, 0.001], stress: [100, 200] }, { modulus: 200_000 });
    expect(flow.strain).toHaveLength(0);
    expect(flow.leftOut).toBe(2);
    expect('first' in flow).toBe(false);
  });

  test.each([
    [{ modulus: 0 }, 'not-positive'],
    [{ modulus: NaN }, 'not-finite'],
    [{ modulus: 2e5, from: 0.5 }, 'out-of-range'],
    [{ modulus: 2e5, offset: 1 }, 'unknown-option'],
  ])('%o is refused', (options, code) => {
    expect(thrown(() => flowCurve(total, options)).code).toBe(code);
  });
});
