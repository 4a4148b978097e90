import { describe, expect, test } from 'vitest';
import { analyseTension, checkRecord, round, type TensionColumns, type TensionOptions } from '../../src/index.js';
import { seeded } from '../support/random.js';

const piece = { section: round({ diameter: [8, 8, 8] }), gaugeLength: 40, extensometerLength: 50, parallelLength: 50 };
const AREA = Math.PI * 16;
const E = 205_000;
const YIELD = 300;
const K = 672;
const N = 0.2;
const UNIFORM = Math.exp(N) - 1;
const BREAKS = 0.34;

/** Stress over strain of an invented steel, by closed forms: a line, a plateau, Hollomon's law to its own maximum, a parabola in the neck. */
function stressAt(strain: number): number {
  if (strain < YIELD / E) return E * strain;
  const law = (e: number): number => (K * Math.log1p(e) ** N) / (1 + e);
  if (strain < UNIFORM) return Math.max(YIELD, law(strain));
  return law(UNIFORM) * (1 - 30 * (strain - UNIFORM) ** 2);
}

interface Pull {
  readonly to?: number;
  readonly reading?: (strain: number, k: number) => number;
  readonly noise?: number;
  readonly forceNoise?: number;
  readonly alone?: boolean;
  readonly unload?: number;
  readonly law?: (strain: number) => number;
  readonly tail?: boolean;
}

/** A test of known truth: extension and travel count the same strain, as far as the extensometer is asked. */
function pull({ to = BREAKS, reading = (e) => 50 * e, noise = 0.0003, forceNoise = 5, alone, unload, law = stressAt, tail = true }: Pull) {
  const { normal } = seeded(7);
  const strains: number[] = Array.from({ length: 40 }, () => 0);
  for (let e = 0; e <= to; e += e < 0.006 ? 0.00003 : 0.0003) strains.push(e);
  const top = strains.length;
  const force = strains.map((e) => law(e) * AREA);
  const [last, held] = [strains[top - 1]!, force[top - 1]!];
  for (let j = 1; unload !== undefined && j <= unload; j += 1) {
    force.push(held * (1 - j / unload));
    strains.push(last - (held - force[force.length - 1]!) / AREA / E);
  }
  const loaded = strains.length;
  for (let j = 0; tail && j < 30; j += 1) {
    strains.push(unload === undefined ? last : strains[loaded - 1]!);
    force.push(0);
  }
  return {
    time: force.map((_, i) => i / 20),
    force: force.map((F) => F + forceNoise * normal()),
    extension: strains.map((e, i) => reading(e, i) + noise * normal()),
    ...(alone ? {} : { travel: strains.map((e) => 50 * e) }),
    broke: top - 1,
  };
}

const columns = ({ time, force, extension, travel }: TensionColumns): TensionColumns => ({ time, force, extension, travel });
const analyse = (record: TensionColumns, options: TensionOptions = {}) => analyseTension(columns(record), piece, options);
const codes = (found: readonly { readonly code: string }[]) => found.map(({ code }) => code);
const at = 0.05;

/** Taken off by hand over so many samples, meanwhile moved by so much [mm]. */
const byHand = (by: number, samples: number) => (e: number) =>
  50 * Math.min(e, at) + by * Math.min(1, Math.max(0, e - at) / (0.0003 * samples));

describe('an extensometer that is left reading after it was taken off', () => {
  const ways: readonly [string, (strain: number) => number, string][] = [
    ['held at its reading', (e) => 50 * Math.min(e, at), 'extensometer-stands'],
    ['swung back', (e) => (e <= at ? 50 * e : -3.2), 'extensometer-stands'],
    ['sprung open', (e) => (e <= at ? 50 * e : 6), 'extensometer-stands'],
    ['set to zero while the test goes on', (e) => (e <= at ? 50 * e : 50 * (e - at)), 'extensometer-falls-back'],
  ];
  // the piece goes on by 0.015 mm a sample
  const slowly: typeof ways = [
    ['opened by 5 mm in 30 samples', byHand(5, 30), 'extensometer-stands'],
    ['opened by 4 mm in 45 samples', byHand(4, 45), 'extensometer-stands'],
    ['closed by 1 mm in 30 samples', byHand(-1, 30), 'extensometer-stands'],
    ['closed by 1 mm in 200 samples', byHand(-1, 200), 'extensometer-stands'],
    ['opened at once, then sinking', (e) => (e <= at ? 50 * e : 8.5 - 20 * (e - at)), 'extensometer-falls-back'],
  ];
  for (const noise of [0, 0.0003, 0.002])
    test.each([...ways, ...slowly])(`%s, noise ${noise} mm: travel carries on from there`, (_, reading, code) => {
      const result = analyse(pull({ reading, noise }));
      const found = result.findings.find((one) => one.code === code)!;
      expect(found.severity).toBe('caution');
      const sample = found.range![0];
      expect(result.curve.strain[sample - 1]).toBeGreaterThan(at - 0.002);
      expect(result.curve.strain[sample - 1]).toBeLessThan(at + 0.001);
      expect(codes(result.findings)).toContain('travel-carries-on');
      // a hand that is no faster than three times the piece passes for it, for one sample
      expect(Math.abs(result.totalExtensionAtFracture!.value - BREAKS)).toBeLessThan(3 * 0.0003);
      expect(Math.abs(result.totalExtensionAtMaximumForce!.value - UNIFORM)).toBeLessThan(0.015);
      expect(result.hardening!.exponent.value).toBeCloseTo(N, 1);
    });

  test.each(ways)('%s, without travel: what lies beyond is withheld', (_, reading, code) => {
    const result = analyse(pull({ reading, alone: true }));
    expect(result.findings.find((one) => one.code === code)!.severity).toBe('fault');
    expect(result.uniformExtension ?? result.totalExtensionAtFracture ?? result.toughness ?? result.hardening).toBeUndefined();
    expect(codes(result.findings)).not.toContain('maximum-at-end');
    const why = result.findings.flatMap(({ code: one, values }) => (one === 'not-determined' ? [values['why']] : []));
    expect(why).toContain('the extensometer ends before the fracture');
  });

  test('the checks of a record say so too', () => {
    const record = columns(pull({ reading: (e) => 50 * Math.min(e, at) }));
    expect(codes(checkRecord(record))).toContain('extensometer-stands');
    expect(codes(checkRecord(record))).not.toContain('extensometer-taken-off');
  });

  test('one that follows the piece is left alone: a neck outside its gauge length only springs back', () => {
    const outside = (e: number): number => 50 * (e <= UNIFORM ? e : UNIFORM - (stressAt(UNIFORM) - stressAt(e)) / E);
    for (const noise of [0, 0.0003, 0.002])
      expect(codes(analyse(pull({ reading: outside, noise })).findings).filter((code) => /extensometer-(stands|falls)/.test(code))).toEqual(
        [],
      );
  });

  test('one that counts the other way does not fall back: its sign is told', () => {
    for (const alone of [true, false]) {
      const result = analyse(pull({ reading: (e) => -50 * e, alone }));
      const sign = result.findings.find(({ code }) => code === 'motion-sign-reversed')!;
      expect(sign.values['column']).toBe('extension');
      // at the highest force
      expect(sign.values['last']).toBeCloseTo(-50 * UNIFORM, 0);
      expect(codes(result.findings).filter((code) => /extensometer-(stands|falls)|signal-noisy/.test(code))).toEqual([]);
    }
  });

  test('nor is a drop-out that comes back at once an end', () => {
    const result = analyse(pull({ reading: (e, k) => (k > 500 && k < 506 ? 0 : 50 * e) }));
    expect(codes(result.findings)).not.toContain('extensometer-falls-back');
  });
});

test('a travel set to zero under load makes no negative extension: it is withheld', () => {
  const { time, force, travel } = pull({});
  const result = analyseTension({ time, force, travel: travel!.map((x) => (x > 10 ? x - 17.5 : x)) }, piece);
  for (const one of [result.uniformExtension, result.totalExtensionAtMaximumForce, result.totalExtensionAtFracture, result.toughness])
    expect(one === undefined || one.value >= 0).toBe(true);
  expect(result.totalExtensionAtMaximumForce).toBeUndefined();
  expect(result.findings.flatMap(({ values }) => values['why'] ?? [])).toContain('it would be negative');
});

describe('fracture by the force of the whole record', () => {
  const empty = (record: ReturnType<typeof pull>) => ({
    ...record,
    extension: record.extension.map((x, i) => (i > record.broke ? NaN : x)),
  });

  test.each([true, false])('extensometer cells that are empty after the fracture are no end of the record (alone: %s)', (alone) => {
    const result = analyse(empty(pull({ alone })));
    expect(result.fracture!.how).toBe('sudden-fall');
    expect(result.totalExtensionAtFracture!.value).toBeCloseTo(BREAKS, 3);
    expect(result.extensionBasis).toBe('extensometer');
    expect(codes(result.findings)).not.toContain('fracture-not-recorded');
    expect(codes(result.findings)).not.toContain('travel-carries-on');
  });
});

describe('a test that was stopped and unloaded', () => {
  test.each([10, 60, 200])('over %d samples has no fracture, and its end no zero', (unload) => {
    const result = analyse(pull({ to: 0.12, unload, tail: false }));
    expect(result.fracture).toBeUndefined();
    expect(result.totalExtensionAtFracture).toBeUndefined();
    expect(result.toughness).toBeUndefined();
    expect(result.necking).toBeUndefined();
    const found = result.findings.find(({ code }) => code === 'stopped-before-fracture')!;
    expect(found.values['share']).toBeGreaterThan(99);
    // it was stopped at half of Agt
    expect(result.tensileStrength.atLeast).toBe(true);
    for (const code of ['zero-drift', 'tail-after-fracture', 'maximum-at-end', 'necking-unlike-exponent'])
      expect(codes(result.findings)).not.toContain(code);
  });
});

test('one that was unloaded beyond its maximum keeps Rm and Agt, and says how far the force had fallen', () => {
  const result = analyse(pull({ to: 0.26, unload: 60, tail: false }));
  expect(result.tensileStrength.atLeast).toBeUndefined();
  expect(result.totalExtensionAtMaximumForce).toBeDefined();
  const { share } = result.findings.find(({ code }) => code === 'stopped-before-fracture')!.values;
  expect(share).toBeLessThan(99);
  expect(share).toBeGreaterThan(90);
});

describe('how far the maximum is determined', () => {
  test.each([0, 5, 15])('by a noise of %d N: Agt states it, and lies that near', (forceNoise) => {
    // a share d below the maximum is reached within √(2 n d) before and √(d/30) after Agt: 0.02 to 0.06 for a thousandth
    const { maximumForce, totalExtensionAtMaximumForce: Agt } = analyse(pull({ forceNoise, noise: 0 }));
    if (forceNoise === 0) expect(Agt!.standardUncertainty ?? 0).toBeLessThan(1e-4);
    if (forceNoise > 0) {
      const u = Agt!.standardUncertainty!;
      expect(Math.abs(Agt!.value - UNIFORM)).toBeLessThan(4 * u);
      const share = (2 * forceNoise) / maximumForce.value;
      const width = Math.sqrt(2 * N * share) + Math.sqrt(share / 30);
      // the noise is known to 6 %, its root to 3 %, and means near its size below the maximum cross it early or late
      expect(Math.abs(u / (width / Math.sqrt(12)) - 1)).toBeLessThan(0.25);
    }
  });
});

describe('a wide maximum', () => {
  const wideOf = (forceNoise: number, options: TensionOptions = {}) => {
    const { findings, totalExtensionAtMaximumForce: Agt } = analyse(pull({ forceNoise, noise: 0 }), options);
    const { value, standardUncertainty } = Agt!;
    return { wide: findings.find(({ code }) => code === 'maximum-wide'), u: standardUncertainty!, value, away: value - UNIFORM };
  };

  test('of which nothing is said where Agt is known, a note where it is so to no more than 5 %, a caution from 10 % on', () => {
    const [calm, open, unknown] = [wideOf(1), wideOf(30), wideOf(150)];
    expect([calm.wide?.severity, open.wide?.severity, unknown.wide?.severity]).toEqual([undefined, 'note', 'caution']);
    for (const { u, away } of [calm, open, unknown]) expect(Math.abs(away)).toBeLessThan(3 * u);
    for (const { wide, u, value } of [open, unknown]) {
      expect(wide!.values['uncertainty']).toBe(u);
      expect(u / value).toBeGreaterThan(wide!.severity === 'note' ? 0.05 : 0.1);
    }
  });

  test('by the uncertainty that is stated, its budget where there is one', () => {
    const { wide, u, value } = wideOf(1, { uncertainty: { force: 0.001, displacement: 0.11, section: { diameter: 0.01 } } });
    // the strain, and Agt with it, is not known to 11 %
    expect(u).toBeGreaterThan(0.11 * value);
    expect(wide!.values['uncertainty']).toBe(u);
    expect(wide!.severity).toBe('caution');
  });
});

describe('a hardening law', () => {
  test('is none of a piece that broke while it was elastic', () => {
    const result = analyse(pull({ to: 0.003, law: (e) => 200_000 * e }));
    expect(result.hardening).toBeUndefined();
    expect(result.findings.flatMap(({ values }) => values['why'] ?? [])).toContain(
      'the plastic strain up to the maximum is within its doubt: nothing hardened',
    );
  });

  test('is not held against a neck that never came', () => {
    const result = analyse(pull({ to: 0.12, tail: false }));
    expect(result.hardening!.exponent.value).toBeCloseTo(N, 1);
    expect(codes(result.findings)).not.toContain('necking-unlike-exponent');
  });
});
