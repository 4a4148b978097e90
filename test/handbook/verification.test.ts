import { describe, expect, test } from 'vitest';
import {
  checkPieceChart,
  cylinderFriction,
  forceClasses,
  percentBending,
  pressureToForce,
  verifyDisplacement,
  verifyForce,
  type ForceStep,
  type ForceTerm,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('verification', 'verifyForce', 'checkPieceChart');

// computed by hand from the definitions: mean 10 046.67, so q 46.67/10 000; b 50/10 000; v (9930 − 10 050)/10 000; friction 120/2
test('true 10.00 kN, rising 10.05, 10.07, 10.02, falling 9.93: class 1, limited by reversibility', () => {
  const steps = [{ force: 10_000, rising: [10_050, 10_070, 10_020], falling: [9930] }];
  const step = verifyForce({ steps, range: 25_000, resolution: 6.105 }).steps[0]!;
  expect(step.limitedBy).toBe('reversibility');
  // without the falling run the same readings are class 0.5
  const rising = verifyForce({ steps: [{ force: 10_000, rising: steps[0]!.rising }], range: 25_000, resolution: 6.105 }).steps[0]!;
  expect(rising.forceClass).toBe(0.5);
  expect(rising.limitedBy).toBe('repeatability');
});

// the same frame with the indicated force held: 10 kN indicated, the reference reads what the piece gets
test('the indicated force held: reference 9.95, 9.93, 9.98 rising, 10.07 falling', () => {
  const steps = [{ force: 10_000, rising: [9950, 9930, 9980], falling: [10_070] }];
  const step = verifyForce({ steps, range: 25_000, resolution: 6, held: 'indicated' }).steps[0]!;
  const mean = (9950 + 9930 + 9980) / 3;
  expect(step.indicationError).toBeCloseTo(10_000 / mean - 1, 12);
  expect(step.repeatability).toBeCloseTo(50 / mean, 12);
  expect(step.reversibility).toBeCloseTo(-120 / mean, 12);
  expect(step.friction).toBeCloseTo(60, 9);
  expect(step.forceClass).toBe(1);
});

// ISO 7500-1, table of classes, from memory: the values as they are printed, in per cent
test.each([
  { forceClass: 0.5, printed: ['0.5', '0.5', '0.75', '0.05', '0.25', '400'] },
  { forceClass: 1, printed: ['1.0', '1.0', '1.5', '0.1', '0.5', '200'] },
  { forceClass: 2, printed: ['2.0', '2.0', '3.0', '0.2', '1.0', '100'] },
  { forceClass: 3, printed: ['3.0', '3.0', '4.5', '0.3', '1.5', '67'] },
])('limits of class $forceClass', ({ forceClass, printed }) => {
  const limits = forceClasses.find((one) => one.forceClass === forceClass)!;
  const values = [limits.indicationError, limits.repeatability, limits.reversibility, limits.zeroError, limits.resolution].map(
    (x) => 100 * x,
  );
  [...values, limits.leastSteps].forEach((value, k) => {
    expectPrinted(value, printed[k]!);
  });
});

describe('each term limits the class, and a value on its limit is in', () => {
  /** One step at 1000 N of a range of 1000 N, in which one term stands at a share of a limit (all decimal readings). */
  const at = (term: ForceTerm, percent: number) => {
    const step: ForceStep = {
      force: 1000,
      rising:
        term === 'indicationError'
          ? [1000 + 10 * percent, 1000 + 10 * percent, 1000 + 10 * percent]
          : term === 'repeatability'
            ? [1000 - 5 * percent, 1000, 1000 + 5 * percent]
            : [1000, 1000, 1000],
      ...(term === 'reversibility' ? { falling: [1000 - 10 * percent] } : {}),
    };
    const zeros = [0, term === 'zeroError' ? -10 * percent : 0];
    return verifyForce({ steps: [step], range: 1000, resolution: term === 'resolution' ? 10 * percent : 0.1, zeros }).steps[0]!;
  };
  const rows: readonly (readonly [ForceTerm, readonly number[]])[] = [
    ['indicationError', [0.5, 1, 2, 3]],
    ['repeatability', [0.5, 1, 2, 3]],
    ['reversibility', [0.75, 1.5, 3, 4.5]],
    ['zeroError', [0.05, 0.1, 0.2, 0.3]],
    ['resolution', [0.25, 0.5, 1, 1.5]],
  ];
  test.each(rows)('%s', (term, limits) => {
    const classes = [0.5, 1, 2, 3, undefined];
    limits.forEach((limit, k) => {
      expect(at(term, limit)).toMatchObject({ limitedBy: term, forceClass: classes[k] });
      const beyond = at(term, limit * 1.0001);
      expect(beyond.limitedBy).toBe(term);
      expect(beyond.forceClass).toBe(classes[k + 1]);
    });
  });

  test('an error of 1 % that binary rounding makes 1.0000000000000002 % is class 1', () => {
    // 0.101 / 0.1 and the like: decimal readings in kN that are not exact
    for (const force of [0.1, 0.3, 0.7, 1.1, 2.3]) {
      const read = force * 1.01;
      const [step] = verifyForce({ steps: [{ force, rising: [read, read, read] }], range: 10, resolution: 1e-6 }).steps;
      expect(step!.forceClass).toBe(1);
    }
  });
});

// balance of forces: with friction f the piece gets pA − f rising and pA + f falling
test('friction of a cylinder at equal pressure and at equal force, by runs made of it', () => {
  const cylinder = { bore: 40, rod: 20 };
  const pressure = [4, 8, 12, 16];
  const full = pressure.map((p) => pressureToForce(p, cylinder));
  const friction = [70, 90, 110, 130];
  const byPressure = cylinderFriction(
    { pressure, risingForce: full.map((F, i) => F - friction[i]!), fallingForce: full.map((F, i) => F + friction[i]!) },
    cylinder,
  );
  byPressure.friction.forEach((one, i) => {
    expect(one).toBeCloseTo(friction[i]!, 9);
  });
  expect(byPressure.efficiency[1]).toBeCloseTo(1 - 90 / full[1]!, 12);
  expect(byPressure.hysteresis[1]).toBeCloseTo(180 / full[1]!, 12);
  // 20 N more for each 4 MPa · 942.478 mm² = 3769.91 N
  expectPrinted(byPressure.constantPart!, '50.0000');
  expect(byPressure.proportionalPart).toBeCloseTo(20 / 3769.9112, 8);
  const area = full[0]! / 4;
  const byForce = cylinderFriction(
    {
      force: full,
      risingPressure: full.map((F, i) => (F + friction[i]!) / area),
      fallingPressure: full.map((F, i) => (F - friction[i]!) / area),
    },
    cylinder,
  );
  byForce.friction.forEach((one, i) => {
    expect(one).toBeCloseTo(friction[i]!, 9);
  });
  expect(byForce.efficiency[2]).toBeCloseTo(full[2]! / (full[2]! + 110), 12);
});

// NIST/SEMATECH e-Handbook of Statistical Methods, individuals control charts, flow rates: from memory, limits with 3/1.128
test('chart of individuals: flow rates', () => {
  const chart = checkPieceChart([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]);
  expectPrinted((chart.upper - chart.centre) / chart.meanRange, '2.66', 2);
  expect([...chart.ranges].map((one) => Number(one.toFixed(6)))).toEqual([2, 2.3, 1.4, 3.5, 3.4, 1.4, 0.2, 1.2, 1.5]);
  expect(chart.outside).toEqual([]);
});

// ISO 9513, classes of extensometer systems, from memory: errors of 0.5 % or 1.5 µm, 1 % or 3 µm, 2 % or 6 µm, whichever is more
test.each([
  [0.05, 0.0015, 0.5],
  [0.05, 0.003, 1],
  [0.05, 0.006, 2],
  [0.05, 0.0061, undefined],
  [10, 0.05, 0.5],
  [10, -0.1, 1],
  [10, 0.2, 2],
  [10, 0.0006, 0.2],
  [10, -0.21, undefined],
])('displacement of %f mm with an error of %f mm: class %s', (reference, error, displacementClass) => {
  const steps = [{ reference, rising: [reference + error] }];
  const [step] = verifyDisplacement({ steps, resolution: 0.0001 }).steps;
  expect(step!.displacementClass).toBe(displacementClass);
  expect(step!.error).toBeCloseTo(error, 12);
});

describe('percent bending of a plane of strains', () => {
  // the strains of a round piece loaded off its axis: 8 e/d of the mean, at an angle
  const plane = (n: number, bending: number, angle: number) =>
    Array.from({ length: n }, (_, k) => 0.001 * (1 + bending * Math.cos((2 * Math.PI * k) / n - angle)));

  test.each([
    [3, 0.1],
    [4, 0.1],
    [4, 0.03],
  ])('%i gauges find %f', (n, bending) => {
    for (const angle of [0, 0.7, 2, -1.3]) {
      const found = percentBending({ strains: plane(n, bending, angle) });
      expect(found.bending).toBeCloseTo(bending, 12);
      expect(found.direction).toBeCloseTo(angle, 10);
      expect(found.axialStrain).toBeCloseTo(0.001, 15);
      expect(found.yieldShare).toBeCloseTo(1 / (1 + bending), 12);
    }
  });

  // ASTM B557, note on eccentric loading: 0.001 in. on 0.357 in. is 2.24 %
  test('0.001 in. off the axis of 0.357 in.: 2.24 % by two gauges in its plane', () => {
    const bending = (8 * 0.001) / 0.357;
    expectPrinted(100 * percentBending({ strains: plane(2, bending, 0) }).bending, '2.24');
  });

  test('two gauges miss what is across them; a rectangular section adds both at its corner', () => {
    expect(percentBending({ strains: plane(2, 0.1, Math.PI / 2) }).bending).toBeCloseTo(0, 12);
    const faces = [1.05, 1.02, 0.95, 0.98].map((one) => 0.001 * one);
    expect(percentBending({ strains: faces, section: 'rectangular' }).bending).toBeCloseTo(0.07, 12);
    expect(percentBending({ strains: faces }).bending).toBeCloseTo(Math.hypot(0.05, 0.02), 12);
  });
});
