import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cylinderFriction, verifyDisplacement, verifyForce, type ForceStep, type ForceVerification } from '../../src/force/index.js';
import { refusal } from '../support/thrown.js';

/** A frame without any error, verified at a few shares of 20 kN. */
const shares = [0.02, 0.05, 0.1, 0.2, 0.4, 0.6, 0.8, 1];
const perfect = (change: (step: ForceStep, share: number) => ForceStep = (step) => step): ForceVerification => ({
  steps: shares.map((share) => {
    const force = 20_000 * share;
    return change({ force, rising: [force, force, force], falling: [force] }, share);
  }),
  range: 20_000,
  resolution: 1,
  zeros: [0, 0, 0],
});
const codes = (verification: ForceVerification): string[] => verifyForce(verification).findings.map(({ code }) => code);

describe('over which forces a class holds', () => {
  test('a frame without error is class 0.5 from 400 steps of its reading', () => {
    const found = verifyForce(perfect());
    expect(found.forceClass).toBe(0.5);
    expect(found.ranges).toEqual([{ forceClass: 0.5, from: 400, to: 20_000, stoppedBelowBy: 'steps' }]);
    expect(found.fallingVerified).toBe(true);
    expect(found.findings).toEqual([]);
  });

  test('a coarse reading lets each better class begin higher; between two steps at what the resolution allows', () => {
    const found = verifyForce({ ...perfect(), resolution: 6 });
    // 400 r = 2400, 200 r = 1200, 100 r = 600, 67 r = 402
    expect(found.ranges).toEqual([
      { forceClass: 0.5, from: 4000, to: 20_000, stoppedBelowBy: 'resolution' },
      { forceClass: 1, from: 2000, to: 20_000, stoppedBelowBy: 'resolution' },
      { forceClass: 2, from: 1000, to: 20_000, stoppedBelowBy: 'resolution' },
      { forceClass: 3, from: 402, to: 20_000, stoppedBelowBy: 'resolution' },
    ]);
    expect(found.forceClass).toBe(3);
    expect(found.steps[0]!.limitedBy).toBe('resolution');
  });

  test('a wandering reading counts half its range and one step', () => {
    expect(verifyForce({ ...perfect(), fluctuation: 8 }).resolution).toBe(5);
    expect(verifyForce({ ...perfect(), fluctuation: 0.5 }).resolution).toBe(1);
  });

  test('a bad step in the middle leaves the wider stretch', () => {
    const found = verifyForce(perfect((step, share) => (share === 0.1 ? { ...step, rising: step.rising, falling: [1900] } : step)));
    // v = -5 % at 2000 N is beyond every class
    expect(found.forceClass).toBeUndefined();
    expect(found.ranges).toEqual([{ forceClass: 0.5, from: 4000, to: 20_000, stoppedBelowBy: 'reversibility' }]);
    expect(found.steps[2]).toMatchObject({ limitedBy: 'reversibility' });
    expect(found.steps[2]).not.toHaveProperty('forceClass');
  });

  test('nothing holds where no step does', () => {
    const found = verifyForce(perfect((step) => ({ ...step, rising: [...Array.from(step.rising)].map((F) => 1.1 * F) })));
    expect(found.ranges).toEqual([]);
  });
});

describe('findings', () => {
  const low = (share: number) => (step: ForceStep) => ({ ...step, falling: [step.force * share] });
  test.each([
    ['force-class-not-reached', perfect((step) => ({ ...step, rising: Array.from(step.rising, (F) => 1.015 * F) }))],
    ['rising-force-only', perfect(low(0.98))],
    ['falling-above-rising', perfect(low(1.001))],
    ['zero-not-verified', { ...perfect(), zeros: undefined }],
    ['verification-steps-few', { ...perfect(), steps: perfect().steps.slice(0, 6) }],
    ['range-not-reached', { ...perfect(), steps: perfect().steps.slice(0, 7) }],
    ['class-range-starts-high', perfect((step, share) => (share < 0.3 ? low(0.97)(step) : step))],
  ] as const)('%s', (code, verification) => {
    expect(codes(verification)).toContain(code);
  });

  test('falling above rising by less than one step of the reading is none', () => {
    const above = (excess: number) => codes({ ...perfect((step) => ({ ...step, falling: [step.force + excess] })) });
    expect(above(1)).toEqual([]);
    expect(above(1.1)).toContain('falling-above-rising');
  });

  test('a reversibility of 1.5 % is still class 1, and no finding', () => {
    expect(codes(perfect(low(0.985)))).toEqual([]);
  });

  test('the numbers of a sentence', () => {
    const [found] = verifyForce(perfect((step) => ({ ...step, rising: Array.from(step.rising, (F) => 1.015 * F) }))).findings;
    expect(found!.message).toBe('Steps that do not reach class 1: 8 of 8, the first at 400 N by its indication error.');
  });
});

test('falling runs pair with their own rising runs; the largest reversibility counts', () => {
  const steps = [{ force: 1000, rising: [1000, 1004, 1002], falling: [995, 990] }];
  const step = verifyForce({ steps, range: 1000, resolution: 0.1 }).steps[0]!;
  expect(step.reversibility).toBeCloseTo(-0.014, 12);
  expect(step.friction).toBeCloseTo((5 + 14) / 4, 12);
});

test('forces in any unit give the same classes, and typed arrays the same as lists; nothing given is changed', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.001, max: 1000, noNaN: true }),
      fc.array(fc.double({ min: 0.97, max: 1.03, noNaN: true }), { minLength: 3, maxLength: 5 }),
      (unit, runs) => {
        const of = (scale: number) =>
          verifyForce({
            steps: [{ force: 1000 * scale, rising: runs.map((r) => 1000 * scale * r) }],
            range: 1000 * scale,
            resolution: scale,
          }).steps[0]!;
        const [a, b] = [of(1), of(unit)];
        expect(b.indicationError).toBeCloseTo(a.indicationError, 12);
        expect(b.repeatability).toBeCloseTo(a.repeatability, 12);
      },
    ),
  );
  const rising = Object.freeze([1000, 1001, 1002]);
  expect(verifyForce({ steps: [{ force: 1000, rising: Float64Array.from(rising) }], range: 1000, resolution: 1 })).toEqual(
    verifyForce({ steps: [{ force: 1000, rising }], range: 1000, resolution: 1 }),
  );
});

test.each<[string, object]>([
  ['missing verification.steps', { range: 1, resolution: 1 }],
  ['wrong-type verification.steps', { steps: 3, range: 1, resolution: 1 }],
  ['empty verification.steps', { steps: [], range: 1, resolution: 1 }],
  ['wrong-type verification.steps[0]', { steps: [7], range: 1, resolution: 1 }],
  ['unknown-option verification.steps[0].down', { steps: [{ force: 1, rising: [1, 1, 1], down: [1] }], range: 1, resolution: 1 }],
  ['not-positive verification.steps[0].force', { steps: [{ force: 0, rising: [1, 1, 1] }], range: 1, resolution: 1 }],
  ['not-finite verification.steps[0].force', { steps: [{ force: NaN, rising: [1, 1, 1] }], range: 1, resolution: 1 }],
  ['too-few verification.steps[0].rising', { steps: [{ force: 1, rising: [1, 1] }], range: 1, resolution: 1 }],
  ['not-finite verification.steps[0].rising[1]', { steps: [{ force: 1, rising: [1, NaN, 1] }], range: 1, resolution: 1 }],
  [
    'unequal-lengths verification.steps[0].falling',
    { steps: [{ force: 1, rising: [1, 1, 1], falling: [1, 1, 1, 1] }], range: 1, resolution: 1 },
  ],
  [
    'unequal-lengths verification.steps[1].rising',
    {
      steps: [
        { force: 1, rising: [1, 1, 1] },
        { force: 2, rising: [2, 2, 2, 2] },
      ],
      range: 2,
      resolution: 1,
    },
  ],
  [
    'not-increasing verification.steps[1].force',
    {
      steps: [
        { force: 1, rising: [1, 1, 1] },
        { force: 1, rising: [1, 1, 1] },
      ],
      range: 2,
      resolution: 1,
    },
  ],
  ['not-positive verification.range', { steps: [{ force: 1, rising: [1, 1, 1] }], range: 0, resolution: 1 }],
  ['not-positive verification.resolution', { steps: [{ force: 1, rising: [1, 1, 1] }], range: 1, resolution: 0 }],
  ['out-of-range verification.fluctuation', { steps: [{ force: 1, rising: [1, 1, 1] }], range: 1, resolution: 1, fluctuation: -1 }],
  ['not-finite verification.zeros[0]', { steps: [{ force: 1, rising: [1, 1, 1] }], range: 1, resolution: 1, zeros: [NaN] }],
  ['out-of-range verification.held', { steps: [{ force: 1, rising: [1, 1, 1] }], range: 1, resolution: 1, held: 'both' }],
  // 0.2 % in per cent
  ['out-of-range verification.reference', { steps: [{ force: 1, rising: [1, 1, 1] }], range: 1, resolution: 1, reference: 0.2 }],
  ['unknown-option verification.convention', { steps: [{ force: 1, rising: [1, 1, 1] }], range: 1, resolution: 1, convention: 'x' }],
])('verifyForce refuses: %s', (expected, verification) => {
  expect(refusal(() => verifyForce(verification as never))).toBe(expected);
});

describe('cylinderFriction', () => {
  test('exchanged runs are a finding; two steps give no line', () => {
    const found = cylinderFriction({ pressure: [5, 10], risingForce: [6300, 12_700], fallingForce: [6100, 12_300] }, { bore: 40 });
    expect(found.findings.map(({ code }) => code)).toEqual(['friction-negative']);
    expect(found.findings[0]!.values).toEqual({ count: 2, friction: -200 });
    expect(found).not.toHaveProperty('constantPart');
  });

  test.each<[string, object, object]>([
    ['out-of-range rod', { force: [1], risingPressure: [1], fallingPressure: [1] }, { bore: 40, rod: 50 }],
    ['unequal-lengths runs.fallingForce', { pressure: [1, 2], risingForce: [1, 2], fallingForce: [1] }, { bore: 40 }],
    ['unknown-option runs.force', { pressure: [1], risingForce: [1], fallingForce: [1], force: [1] }, { bore: 40 }],
    ['missing runs.force', {}, { bore: 40 }],
    ['not-positive runs.pressure[0]', { pressure: [0], risingForce: [1], fallingForce: [1] }, { bore: 40 }],
  ])('refuses: %s', (expected, runs, cylinder) => {
    expect(refusal(() => cylinderFriction(runs as never, cylinder as never))).toBe(expected);
  });
});

test('steps beyond the range are refused: kN beside N', () => {
  const step = { force: 10_000, rising: [10_000, 10_000, 10_000] };
  expect(() => verifyForce({ steps: [step], range: 25, resolution: 6 })).toThrow(
    'verifyForce: verification.steps[0].force must be in N and lie within the range (25 N), got 10000',
  );
  // a weight that is a little too heavy for the last step is not
  expect(verifyForce({ steps: [step], range: 9900, resolution: 6 }).forceClass).toBeDefined();
});

test('uncertainty of the indication error: runs, one step of the reading and the reference instrument', () => {
  const steps = [{ force: 10_000, rising: [10_050, 10_070, 10_020] }];
  const { standardUncertainty } = verifyForce({ steps, range: 25_000, resolution: 6, reference: 0.0012 }).steps[0]!;
  // deviations 3.33, 23.33 and -26.67 N: s² = 1266.67/2 = 633.33, of the mean of three 211.11 N²; r²/12 = 3 N²; 12 N of the reference
  expect(standardUncertainty).toBeCloseTo(Math.sqrt(211.111111 + 3 + 144) / 10_000, 9);
  expect(verifyForce({ steps, range: 25_000, resolution: 6 }).steps[0]).not.toHaveProperty('standardUncertainty');
});

describe('verifyDisplacement', () => {
  const steps = [1, 5, 10].map((reference) => ({ reference, rising: [reference, reference], falling: [reference] }));

  test('a sensor without error is as good as its reading', () => {
    const found = verifyDisplacement({ steps, resolution: 0.001 });
    expect(found.steps.map(({ displacementClass }) => displacementClass)).toEqual([0.2, 0.2, 0.2]);
    expect(found.displacementClass).toBe(0.2);
    expect(found.leastOffset).toBeCloseTo(0.01, 15);
    expect(found.findings.map(({ code }) => code)).toEqual(['displacement-steps-few']);
    const coarse = verifyDisplacement({ steps, resolution: 0.012 }).steps;
    expect(coarse.map(({ displacementClass }) => displacementClass)).toEqual([undefined, 0.5, 0.5]);
    expect(coarse[0]!.limitedBy).toBe('resolution');
  });

  test('play and poor steps are findings', () => {
    const worn = verifyDisplacement({ steps: [{ reference: 1, rising: [0.98], falling: [1.01, 1.02] }], resolution: 0.001 });
    expect(worn.steps[0]!.reversibility).toBeCloseTo(0.035, 12);
    expect(worn.steps[0]!.error).toBeCloseTo(-0.02, 12);
    expect(worn.findings.map(({ code }) => code)).toEqual([
      'displacement-class-not-reached',
      'displacement-reversal',
      'displacement-steps-few',
    ]);
  });

  test('few displacements, or one run, are told; ten in two runs are not', () => {
    const ten = Array.from({ length: 10 }, (_, k) => ({ reference: k + 1, rising: [k + 1, k + 1] }));
    expect(verifyDisplacement({ steps: ten, resolution: 0.001 }).findings).toEqual([]);
    const [few] = verifyDisplacement({ steps: ten.slice(1), resolution: 0.001 }).findings;
    expect(few!.message).toBe(
      'Displacements verified: 9; fewest readings from below at one of them: 2. Ten displacements in two runs are wanted.',
    );
    const once = ten.map((step, k) => (k === 4 ? { ...step, rising: [5] } : step));
    expect(verifyDisplacement({ steps: once, resolution: 0.001 }).findings.map(({ values }) => values)).toEqual([{ steps: 10, runs: 1 }]);
  });

  test('the base of an extensometer limits it as well', () => {
    const found = verifyDisplacement({ steps, resolution: 0.001, gaugeLength: { nominal: 50, measured: 50.5 } });
    expect(found.gaugeLengthError).toBeCloseTo(0.01, 12);
    expect(found.displacementClass).toBe(1);
    expect(found.steps[0]!.limitedBy).toBe('gaugeLength');
    const none = verifyDisplacement({ steps, resolution: 0.001, gaugeLength: { nominal: 50, measured: 55 } });
    expect(none).not.toHaveProperty('displacementClass');
  });

  test.each<[string, object]>([
    ['missing verification.steps', { resolution: 1 }],
    ['not-positive verification.steps[0].reference', { steps: [{ reference: 0, rising: [0] }], resolution: 1 }],
    [
      'not-increasing verification.steps[1].reference',
      {
        steps: [
          { reference: 1, rising: [1] },
          { reference: 1, rising: [1] },
        ],
        resolution: 1,
      },
    ],
    ['empty verification.steps[0].rising', { steps: [{ reference: 1, rising: [] }], resolution: 1 }],
    ['not-positive verification.resolution', { steps: [{ reference: 1, rising: [1] }], resolution: 0 }],
    [
      'not-positive verification.gaugeLength.measured',
      { steps: [{ reference: 1, rising: [1] }], resolution: 1, gaugeLength: { nominal: 50, measured: 0 } },
    ],
    ['unknown-option verification.range', { steps: [{ reference: 1, rising: [1] }], resolution: 1, range: 1 }],
  ])('refuses: %s', (expected, verification) => {
    expect(refusal(() => verifyDisplacement(verification as never))).toBe(expected);
  });
});
