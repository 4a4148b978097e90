import { describe, expect, test } from 'vitest';
import { decide, required } from '../../src/index.js';
import { refusal } from '../support/thrown.js';

const codes = (decision: ReturnType<typeof decide>) => required(decision).findings.map(({ code }) => code);

describe('a limit in another unit', () => {
  const verdict = (...given: Parameters<typeof decide>) => [
    required(decide(...given)).verdict,
    codes(decide(...given)).includes('limit-of-other-size'),
  ];

  test('percent, GPa and kN are named, and a pass is never bare', () => {
    expect(verdict({ value: 0.24, symbol: 'A' }, { lower: 22 })).toEqual(['fail', true]);
    expect(verdict({ value: 24, symbol: 'A' }, { lower: 0.22 })).toEqual(['conditional-pass', true]);
    expect(verdict({ value: 205_000, symbol: 'E' }, { lower: 190, upper: 220 })).toEqual(['fail', true]);
    expect(verdict({ value: 452, symbol: 'Rm' }, { lower: 0.3 })).toEqual(['conditional-pass', true]);
    expect(verdict({ value: -5600 }, { lower: -6 })).toEqual(['fail', true]);
    const one = required(decide({ value: 452, standardUncertainty: 3, symbol: 'Rm', unit: 'MPa' }, { lower: 0.4 }));
    expect(one.findings.map(({ message }) => message)).toEqual([
      'Rm is 452 MPa, its limit 0.4 MPa: one is 1130 times the other, as where they stand in different units.',
    ]);
  });

  test('honest limits are not doubted', () => {
    expect(verdict({ value: 0.005, symbol: 'A' }, { lower: 0.22 })).toEqual(['fail', false]); // a brittle bar
    expect(verdict({ value: 452, symbol: 'Rm' }, { lower: 20 })).toEqual(['pass', false]);
    expect(verdict({ value: 1000 }, { lower: 1, upper: 1e6 })).toEqual(['pass', false]);
    expect(verdict({ value: 300 }, { lower: 0 })).toEqual(['pass', false]);
    expect(verdict({ value: 0 }, { upper: 300 })).toEqual(['pass', false]);
  });
});

test('guard bands that cross leave nothing that passes, and a finding says so', () => {
  const crossed = required(
    decide({ value: 240, standardUncertainty: 30, symbol: 'ReH', unit: 'MPa' }, { lower: 235, upper: 245, rule: 'guarded' }),
  );
  expect(crossed.verdict).toBe('conditional-pass');
  expect(crossed.acceptance.lower).toBeGreaterThan(crossed.acceptance.upper!);
  expect(crossed.findings.map(({ code }) => code)).toEqual(['limit-within-uncertainty', 'acceptance-zone-empty']);
  expect(crossed.findings[1]!.message).toBe(
    'Guard bands of 49.35 MPa on both sides leave nothing between 235 and 245 MPa: no value of ReH can pass.',
  );
  const fits = { lower: 235, upper: 245, rule: 'guarded', guardFactor: 2 } as const;
  expect(codes(decide({ value: 240, standardUncertainty: 2.5 }, fits))).not.toContain('acceptance-zone-empty');
});

describe('simple acceptance', () => {
  test('a limit exactly hit is kept; both limits are looked at', () => {
    expect(required(decide({ value: 235 }, { lower: 235 })).verdict).toBe('pass');
    expect(required(decide({ value: 234.999 }, { lower: 235 })).verdict).toBe('fail');
    expect(required(decide({ value: 300 }, { upper: 300 })).verdict).toBe('pass');
    expect(required(decide({ value: 301 }, { lower: 200, upper: 300 })).verdict).toBe('fail');
  });

  test('without uncertainty there is no probability, and a finding says so', () => {
    const decision = required(decide({ value: 241, symbol: 'ReH' }, { lower: 235 }));
    expect(codes(decide({ value: 241, symbol: 'ReH' }, { lower: 235 }))).toEqual(['decision-without-uncertainty']);
    expect(decision).not.toHaveProperty('probabilityOfConformity');
    expect(decision.acceptance).toEqual({ lower: 235 });
    expect(decision.rule).toBe('simple acceptance (JCGM 106)');
  });

  test('within U of a limit they cannot be told apart; at U they can', () => {
    const close = decide({ value: 240, standardUncertainty: 3 }, { lower: 235 });
    expect(required(close).toldApart).toBe(false);
    expect(codes(close)).toEqual(['limit-within-uncertainty']);
    expect(codes(decide({ value: 241, standardUncertainty: 3 }, { lower: 235 }))).toEqual([]);
    expect(codes(decide({ value: 241, standardUncertainty: 3 }, { lower: 235, coverageFactor: 2.1 }))).toEqual([
      'limit-within-uncertainty',
    ]);
  });

  test('a verdict that the agreed guard band gives is not doubted by another factor', () => {
    const beside = { value: 240, standardUncertainty: 3, symbol: 'ReH', unit: 'MPa' };
    // 1.667 u from the limit: beyond the band of 1.645 u, within U = 2 u
    expect(required(decide(beside, { lower: 235, rule: 'guarded' }))).toMatchObject({ verdict: 'pass', toldApart: true, findings: [] });
    expect(required(decide({ ...beside, value: 230 }, { lower: 235, rule: 'guarded' }))).toMatchObject({ verdict: 'fail', findings: [] });
    const within = required(decide({ ...beside, value: 236 }, { lower: 235, rule: 'guarded' }));
    expect(within).toMatchObject({ verdict: 'conditional-pass', toldApart: false });
    expect(within.findings[0]!.message).toBe(
      'ReH is 1 MPa from its limit, within its expanded uncertainty 6 MPa: by the uncertainty alone it may lie on either side.',
    );
  });

  test('compares the rounded value when asked, and keeps both', () => {
    const rounded = required(decide({ value: 234.6 }, { lower: 235, rounding: { kind: 'strength' } }));
    expect(rounded).toMatchObject({ verdict: 'pass', compared: 235, rounding: { value: 234.6, rounded: 235 } });
    expect(rounded.rule).toContain('value rounded before: steps of ISO 6892-1');
    expect(required(decide({ value: 234.6 }, { lower: 235 })).verdict).toBe('fail');
  });

  test('a step of rounding does not take up the guard band: against it the value stays as measured', () => {
    const measured = { value: 612.6, standardUncertainty: 1, symbol: 'Rm', unit: 'MPa' };
    const rounding = { kind: 'strength', rule: 'astm' } as const;
    const guarded = required(decide(measured, { lower: 613, rule: 'guarded', rounding }));
    expect(guarded).toMatchObject({ verdict: 'conditional-fail', compared: 612.6, toldApart: false, rounding: { rounded: 615 } });
    expect(guarded.rule).not.toContain('rounded');
  });

  test('says where the rounding alone decides', () => {
    const measured = { value: 612.6, standardUncertainty: 1, symbol: 'Rm', unit: 'MPa' };
    const rounding = { kind: 'strength', rule: 'astm' } as const;
    const decided = required(decide(measured, { lower: 615, rounding }));
    expect(decided).toMatchObject({ verdict: 'pass', compared: 615 });
    expect(decided.findings.map(({ message }) => message)).toEqual([
      'The rounding decides: Rm was compared as 615 MPa; 612.6 MPa, as measured, gives the other verdict.',
    ]);
    expect(codes(decide({ ...measured, value: 618 }, { lower: 615, rounding }))).toEqual([]);
  });

  test('few degrees of freedom: guard band, U and risk by Student, whose distribution has a closed form for 2', () => {
    // P(T > t) = 1/2 − t / (2 √(2 + t²)) for ν = 2, and its quantile t = (2p − 1) √(2 / (1 − (2p − 1)²))
    const t = (p: number) => (2 * p - 1) * Math.sqrt(2 / (1 - (2 * p - 1) ** 2));
    const few = { value: 100 + 1.8, standardUncertainty: 1, degreesOfFreedom: 2.9 };
    const decided = required(decide(few, { lower: 100, rule: 'guarded' }));
    expect(decided.verdict).toBe('conditional-pass');
    expect(decided.consumersRisk).toBeCloseTo(0.5 - 1.8 / (2 * Math.sqrt(2 + 1.8 ** 2)), 12);
    expect(decided.acceptance.lower).toBeCloseTo(100 + t(0.95), 10);
    expect(decided.guardFactor).toBeCloseTo(t(0.95), 10);
    // U = 4.53 u by 2 degrees of freedom (JCGM 100, table G.2)
    expect(required(decide({ ...few, value: 104.52 }, { lower: 100 })).toldApart).toBe(false);
    expect(required(decide({ ...few, value: 104.53 }, { lower: 100 })).toldApart).toBe(true);
    expect(() => decide({ ...few, degreesOfFreedom: 0 }, { lower: 100 })).toThrow('measured.degreesOfFreedom');
  });

  test('says where a second limit adds to the risk that the guard band keeps at one', () => {
    const between = required(decide({ value: 370, standardUncertainty: 6, symbol: 'Rm' }, { lower: 360, upper: 380, rule: 'guarded' }));
    expect(between.verdict).toBe('pass');
    // twice the normal tail beyond 10 / 6
    expect(between.consumersRisk).toBeCloseTo(2 * 0.0477903, 6);
    expect(between.findings.map(({ message }) => message)).toEqual([
      'Rm passes, with a risk of 9.558 %: the guard band keeps 5 % at each limit, and both limits are near.',
    ]);
    expect(codes(decide({ value: 370, standardUncertainty: 6 }, { lower: 360, upper: 480, rule: 'guarded' }))).toEqual([]);
  });

  test('the two risks of one value add up to 1', () => {
    const measured = { value: 236, standardUncertainty: 3 };
    const accepted = required(decide(measured, { lower: 235 }));
    const rejected = required(decide(measured, { upper: 235 }));
    expect(accepted.consumersRisk! + accepted.probabilityOfConformity!).toBeCloseTo(1, 14);
    expect(rejected.producersRisk).toBeCloseTo(accepted.consumersRisk!, 14);
  });
});

describe('never a bare pass', () => {
  test('of a proof strength from crosshead travel', () => {
    const measured = { value: 300, standardUncertainty: 3, symbol: 'Rp0.2', extensionBasis: 'travel' };
    expect(required(decide(measured, { lower: 235 })).verdict).toBe('conditional-pass');
    expect(codes(decide(measured, { lower: 235 }))).toEqual(['decision-on-travel']);
    expect(required(decide({ ...measured, symbol: 'ReH' }, { lower: 235 })).verdict).toBe('pass');
    const failed = required(decide({ ...measured, value: 200 }, { lower: 235 }));
    expect(failed.verdict).toBe('fail');
    expect(failed.findings.map(({ message }) => message)).toEqual([
      'Rp0.2 rests on crosshead travel: the verdict holds on the condition that an extensometer confirms it.',
    ]);
  });

  test('of anything that a structure depends on', () => {
    const decision = decide({ value: 500, standardUncertainty: 3, symbol: 'Rm' }, { lower: 360, structuralUse: true });
    expect(required(decision).verdict).toBe('conditional-pass');
    expect(codes(decision)).toEqual(['decision-for-structure']);
  });
});

describe('refuses what does not compare, with a remedy', () => {
  test('ReH against a limit for Rp0.2, and Rm against one for A', () => {
    const yields = decide({ value: 300, symbol: 'ReH' }, { lower: 235, symbol: 'Rp0.2' });
    expect(yields).toMatchObject({ ok: false, reason: 'other-quantity' });
    expect(!yields.ok && yields.message).toContain('determine Rp0.2 itself');
    const others = decide({ value: 300, symbol: 'Rm' }, { lower: 0.2, symbol: 'A' });
    expect(!others.ok && others.message).toContain('give the A that was measured');
  });

  test('the index of an elongation says its gauge length, in the limit and in the value', () => {
    const measured = { value: 0.24, standardUncertainty: 0.006, symbol: 'A', gaugeLength: 80, area: 40 };
    expect(required(decide(measured, { lower: 0.2, symbol: 'A80mm' })).verdict).toBe('pass');
    expect(decide(measured, { lower: 0.2, symbol: 'A50mm' })).toMatchObject({ ok: false, reason: 'other-gauge-length' });
    // 80 mm are 12.6 √S0 of 40 mm²; 11.3 √S0 are 71.5 mm, and 80 mm 11.3 √S0 of 50.12 mm²
    expect(decide(measured, { lower: 0.2, symbol: 'A11.3' })).toMatchObject({ ok: false, reason: 'other-gauge-length' });
    expect(required(decide({ ...measured, area: 50.12 }, { lower: 0.2, symbol: 'A11.3' })).verdict).toBe('pass');
    const indexed = { value: 0.24, standardUncertainty: 0.006, symbol: 'A80mm' };
    expect(codes(decide(indexed, { lower: 0.2 }))).toEqual([]);
    expect(decide(indexed, { lower: 0.2, gaugeLength: 50 })).toMatchObject({ ok: false, reason: 'other-gauge-length' });
    expect(codes(decide({ ...measured, gaugeLength: undefined }, { lower: 0.2, symbol: 'A80mm' }))).toEqual(['gauge-length-unstated']);
    // Ag is no elongation after fracture
    expect(decide({ ...measured, symbol: 'Ag' }, { lower: 0.2, symbol: 'A80mm' })).toMatchObject({ ok: false, reason: 'other-quantity' });
  });

  test('an elongation on another gauge length', () => {
    const measured = { value: 0.24, standardUncertainty: 0.006, symbol: 'A', gaugeLength: 50 };
    const other = decide(measured, { lower: 0.2, gaugeLength: 80 });
    expect(other).toMatchObject({ ok: false, reason: 'other-gauge-length' });
    expect(!other.ok && other.message).toContain('ISO 2566');
    expect(decide({ ...measured, area: 50.27 }, { lower: 0.2 })).toMatchObject({ ok: false, reason: 'other-gauge-length' });
    expect(decide({ ...measured, area: 50.27 }, { lower: 0.2, coefficient: 7.05 }).ok).toBe(true);
    expect(codes(decide({ ...measured, area: 78.54 }, { lower: 0.2 }))).toEqual([]);
    expect(codes(decide(measured, { lower: 0.2, gaugeLength: 50 }))).toEqual([]);
    expect(codes(decide({ ...measured, gaugeLength: undefined }, { lower: 0.2 }))).toEqual(['gauge-length-unstated']);
  });

  test('a guard band without uncertainty', () => {
    expect(decide({ value: 300, standardUncertainty: 0 }, { lower: 235, rule: 'guarded' })).toMatchObject({
      reason: 'uncertainty-unknown',
    });
  });
});

describe('a value that is at least so large', () => {
  const of = (lower?: number, upper?: number, more: object = {}) =>
    decide(
      { value: 378, symbol: 'Rm', atLeast: true, ...more },
      { ...(lower === undefined ? {} : { lower }), ...(upper === undefined ? {} : { upper }) },
    );

  test('keeps a lower limit that it keeps, and breaks an upper one that it breaks', () => {
    expect(required(of(370)).verdict).toBe('pass');
    expect(required(of(undefined, 370)).verdict).toBe('fail');
    expect(required(of(300, 370)).verdict).toBe('fail');
  });

  test('of a level without hardening it passes no limit barely', () => {
    const level = { value: 430, symbol: 'Rm', withoutHardening: true };
    expect(required(decide(level, { lower: 360 })).verdict).toBe('conditional-pass');
    expect(codes(decide(level, { lower: 360 }))).toContain('decision-without-hardening');
    expect(required(decide(level, { lower: 440 })).verdict).toBe('fail');
  });

  test('leaves the rest open', () => {
    for (const open of [of(380), of(undefined, 380), of(370, 380), of(380, 510)])
      expect(open).toMatchObject({ ok: false, reason: 'only-at-least' });
  });

  test('also by a guard band of 1.645 u', () => {
    const guarded = (lower: number) =>
      decide({ value: 378, symbol: 'Rm', atLeast: true, standardUncertainty: 2 }, { lower, rule: 'guarded' });
    expect(required(guarded(374)).verdict).toBe('pass');
    expect(required(guarded(376)).verdict).toBe('conditional-pass');
    expect(guarded(379)).toMatchObject({ ok: false, reason: 'only-at-least' });
  });
});

test('wrong arguments', () => {
  expect(refusal(() => decide({ value: NaN }, { lower: 1 }))).toBe('not-finite measured.value');
  expect(refusal(() => decide({ value: 1 }, {}))).toBe('missing specification.lower');
  expect(refusal(() => decide({ value: 1 }, { lower: 2, upper: 1 }))).toBe('out-of-range specification.upper');
  expect(refusal(() => decide({ value: 1 }, { lower: 0, rule: 'strict' as never }))).toBe('out-of-range specification.rule');
  expect(refusal(() => decide({ value: 1 }, { lower: 0, limit: 2 } as never))).toBe('unknown-option specification.limit');
  expect(refusal(() => decide({ value: 1, standardUncertainty: -1 }, { lower: 0 }))).toBe('out-of-range measured.standardUncertainty');
  expect(refusal(() => decide({ value: 1, area: 0 }, { lower: 0 }))).toBe('not-positive measured.area');
  expect(refusal(() => decide({ value: 1 }, { lower: 0, guardFactor: -1 }))).toBe('not-positive specification.guardFactor');
  expect(refusal(() => decide(undefined as never, { lower: 0 }))).toBe('missing measured');
});

test('null, which JSON has for nothing, is no limit and no uncertainty', () => {
  const nothing = null as unknown as undefined;
  const guarded = (u: number | undefined, upper: number | undefined) =>
    refusal(() => decide({ value: 235.1, standardUncertainty: u }, { lower: 235, upper, rule: 'guarded' }));
  expect(guarded(nothing, 260)).toBe('wrong-type measured.standardUncertainty');
  expect(guarded(0.5, nothing)).toBe('wrong-type specification.upper');
  expect(refusal(() => decide({ value: 235.1 }, { lower: nothing, upper: nothing }))).toBe('wrong-type specification.lower');
});
