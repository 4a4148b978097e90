import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  compareBatches,
  generalisedEsd,
  grubbsCriticalValue,
  grubbsTest,
  interlaboratoryStudy,
  leastPiecesForTolerance,
  piecesForInterval,
  required,
  roundResult,
  summariseReplicates,
  toleranceFactor,
  toleranceLimit,
  usualVariation,
} from '../../src/index.js';
import { refusal } from '../support/thrown.js';

describe('summariseReplicates', () => {
  test('two values give a range only, one value itself; a mean of 0 has no coefficient of variation', () => {
    expect(summariseReplicates([3, 5])).toEqual({ n: 2, mean: 4, median: 4, minimum: 3, maximum: 5, range: 2 });
    expect(summariseReplicates([3])).toMatchObject({ n: 1, mean: 3, range: 0 });
    expect(summariseReplicates([-1, 0, 1])).not.toHaveProperty('coefficientOfVariation');
  });

  test('does not depend on order or array type, and leaves the input alone', () => {
    const values = [5, 1, 4, 2];
    expect(summariseReplicates(Float64Array.from([1, 2, 4, 5]))).toEqual(summariseReplicates(values));
    expect(values).toEqual([5, 1, 4, 2]);
  });

  test('equal values have exactly no scatter', () => {
    expect(summariseReplicates([0.1, 0.1, 0.1])).toMatchObject({ mean: 0.1, standardDeviation: 0 });
  });

  test('wrong arguments', () => {
    expect(refusal(() => summariseReplicates([]))).toBe('empty values');
    expect(refusal(() => summariseReplicates([1, NaN]))).toBe('not-finite values[1]');
    expect(refusal(() => summariseReplicates([1, 2], { confidence: 1 }))).toBe('out-of-range options.confidence');
    expect(refusal(() => summariseReplicates([1, 2], { level: 1 } as never))).toBe('unknown-option options.level');
    expect(refusal(() => summariseReplicates(undefined as never))).toBe('missing values');
  });
});

describe('outliers', () => {
  test('below three values, or without scatter, there is no test', () => {
    expect(grubbsTest([1, 2])).toMatchObject({ ok: false, reason: 'too-few-values' });
    expect(grubbsTest([2, 2, 2])).toMatchObject({ ok: false, reason: 'no-scatter' });
    expect(generalisedEsd([1, 2])).toMatchObject({ ok: false, reason: 'too-few-values' });
    expect(generalisedEsd([2, 2, 2])).toMatchObject({ ok: false, reason: 'no-scatter' });
  });

  test('one step of Rosner is the test of Grubbs', () => {
    const values = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 3, maxLength: 20 });
    fc.assert(
      fc.property(values, (list) => {
        const one = grubbsTest(list);
        const esd = generalisedEsd(list, { most: 1 });
        expect(esd.ok).toBe(one.ok);
        if (!one.ok || !esd.ok) return;
        expect(esd.steps[0]).toMatchObject({ index: one.index, statistic: one.statistic, criticalValue: one.criticalValue });
        expect(esd.flagged).toEqual(one.flagged ? [one.index] : []);
      }),
    );
  });

  test('a pair that hides itself from Grubbs is found by Rosner; equal values that are left end the search', () => {
    const pair = [10, 10.1, 9.9, 10, 10.05, 9.95, 10, 10.1, 9.9, 14, 14.1];
    expect(required(grubbsTest(pair)).flagged).toBe(false);
    expect(required(generalisedEsd(pair, { most: 3 })).flagged).toEqual([10, 9]);
    expect(required(generalisedEsd([1, 1, 1, 1, 9], { most: 3 })).steps).toHaveLength(1);
  });

  test('the critical value never exceeds what a single value can reach, and three values at most just', () => {
    for (const n of [3, 4, 10]) expect(grubbsCriticalValue({ n, alpha: 1e-9 })).toBeLessThanOrEqual((n - 1) / Math.sqrt(n));
    expect(grubbsCriticalValue({ n: 3, alpha: 0.9999, side: 'largest' })).toBeGreaterThanOrEqual(0);
  });

  test('wrong arguments', () => {
    expect(refusal(() => grubbsTest([1, 2, 3], { side: 'left' as never }))).toBe('out-of-range options.side');
    expect(refusal(() => grubbsCriticalValue({ n: 2 }))).toBe('out-of-range n');
    expect(refusal(() => grubbsCriticalValue({ n: 4.5 }))).toBe('out-of-range n');
    const told = (n: number) =>
      required(generalisedEsd(Array.from({ length: n }, (_, i) => i))).findings.map(({ code, severity }) => `${severity} ${code}`);
    expect([5, 14, 15, 24, 25].map(told)).toEqual([
      ['caution esd-few-values'],
      ['caution esd-few-values'],
      ['note esd-few-values'],
      ['note esd-few-values'],
      [],
    ]);
    expect(refusal(() => generalisedEsd([1, 2, 3], { most: 2 }))).toBe('out-of-range options.most');
    expect(refusal(() => generalisedEsd([1, 2, 3], { most: 0 }))).toBe('out-of-range options.most');
  });
});

describe('tolerance', () => {
  test('the two-sided factor is wider than the one-sided of the same share, and both fall towards the normal quantile', () => {
    for (const n of [2, 5, 50]) expect(toleranceFactor({ n, sides: 2 })).toBeGreaterThan(toleranceFactor({ n }));
    expect(toleranceFactor({ n: 1_000_000 })).toBeCloseTo(1.2816, 2);
    expect(toleranceFactor({ n: 1_000_000, sides: 2 })).toBeCloseTo(1.6449, 2);
  });

  test('limits lie about the mean by the factor; the label says which, and B and A only as likeness', () => {
    const values = [10, 11, 12, 13];
    const both = required(toleranceLimit(values, { side: 'both' }));
    expect(both.upper! + both.lower!).toBeCloseTo(23, 12);
    const upper = required(toleranceLimit(values, { side: 'upper', content: 0.99 }));
    expect(upper).not.toHaveProperty('lower');
    expect(upper.label).toMatch(/^upper tolerance limit for 99 % of all pieces at 95 % confidence \(not a design value/);
    expect(required(toleranceLimit(values, { content: 0.99 })).label).toContain('A-like');
    expect(required(toleranceLimit(values, { content: 0.95 })).label).not.toMatch(/-like/);
    expect(both.label).toMatch(/^tolerance limits/);
  });

  test('one value, or no scatter, gives none', () => {
    expect(toleranceLimit([1])).toMatchObject({ ok: false, reason: 'too-few-values' });
    expect(toleranceLimit([1, 1])).toMatchObject({ ok: false, reason: 'no-scatter' });
  });

  test('wrong arguments', () => {
    expect(refusal(() => toleranceFactor({ n: 1 }))).toBe('out-of-range n');
    expect(refusal(() => toleranceFactor({ n: 5, sides: 3 as never }))).toBe('out-of-range sides');
    expect(refusal(() => toleranceFactor({ n: 5, content: 0 }))).toBe('out-of-range content');
    expect(refusal(() => leastPiecesForTolerance({ sides: 0 as never }))).toBe('out-of-range sides');
    expect(refusal(() => toleranceLimit([1, 2], { side: 'left' as never }))).toBe('out-of-range options.side');
  });
});

describe('batches and pieces', () => {
  test('too few values, no scatter', () => {
    expect(compareBatches([1], [1, 2])).toMatchObject({ ok: false, reason: 'too-few-values' });
    expect(compareBatches([1, 1], [2, 2])).toMatchObject({ ok: false, reason: 'no-scatter' });
  });

  test('exchanging the batches turns the difference about; one without scatter is allowed', () => {
    const there = required(compareBatches([1, 2, 3], [5, 5]));
    const back = required(compareBatches([5, 5], [1, 2, 3]));
    expect(back.difference).toBe(-there.difference);
    expect(back.interval.low).toBeCloseTo(-there.interval.high, 12);
    expect(there.freedom).toBe(2);
  });

  test('wrong arguments', () => {
    expect(refusal(() => compareBatches([1, 2], [1, 2], { margin: 0 }))).toBe('not-positive options.margin');
    expect(refusal(() => piecesForInterval({ standardDeviation: 1, halfWidth: 1e-9 }))).toBe('out-of-range halfWidth');
    expect(refusal(() => piecesForInterval({ standardDeviation: 0, halfWidth: 1 }))).toBe('not-positive standardDeviation');
    expect(piecesForInterval({ standardDeviation: 1e-9, halfWidth: 1 })).toBe(2);
  });

  test('usual variation is a table of shares', () => {
    for (const { within, between } of Object.values(usualVariation)) expect(between).toBeGreaterThan(within);
  });
});

describe('interlaboratoryStudy', () => {
  test('too few groups, no repeats, no scatter', () => {
    expect(interlaboratoryStudy([{ values: [1, 2] }, { values: [1, 3] }])).toMatchObject({ ok: false, reason: 'too-few-groups' });
    expect(interlaboratoryStudy([{ values: [1, 2] }, { values: [1] }, { values: [3] }])).toMatchObject({ reason: 'no-repeats' });
    expect(interlaboratoryStudy([{ values: [1, 1] }, { values: [2, 2] }, { values: [3, 3] }])).toMatchObject({ reason: 'no-scatter' });
  });

  test('a group off the mean and one that scatters are named, and stay in', () => {
    const values = [
      [10, 10.1, 9.9],
      [10, 10.05, 9.95],
      [10.02, 9.98, 10],
      [10.1, 9.9, 10],
      [10.05, 10, 9.95],
      [12, 12.1, 11.9],
    ];
    const study = required(interlaboratoryStudy(values.map((own, i) => ({ name: 'ABCDEF'[i], values: own }))));
    expect(study.findings.map(({ code, values: { group } }) => [code, group])).toEqual([['group-mean-outlying', 'F']]);
    // one finding of one fact, with the limit of 1 % that the verdict rests on
    expect(study.findings[0]).toMatchObject({ severity: 'caution', values: { limit: study.grubbs.criticalValue1, verdict: 'outlier' } });
    expect(study.grubbs.criticalValue1).toBeGreaterThan(study.grubbs.criticalValue5);
    // groups that Grubbs does not name keep theirs
    const two = required(
      interlaboratoryStudy(
        values.map((own, i) => ({ values: i === 0 ? own.map((x) => x - 2) : own })),
        { alpha: 0.2 },
      ),
    );
    expect(two.grubbs.verdict).toBe('none');
    expect(two.findings.filter(({ code }) => code === 'group-off-the-mean').map(({ values: { group } }) => group)).toEqual(['1', '6']);
    expect(study.reproducibility).toBeGreaterThan(study.repeatability);
    expect(study.groups).toHaveLength(6);
    const calm = values.slice(0, 5).map((own, i) => own.map((x) => x + (i % 2) / 10));
    const wild = required(interlaboratoryStudy([...calm, [9, 10, 11.2]].map((own) => ({ values: own }))));
    expect(wild.findings.map(({ code, severity }) => [code, severity])).toEqual([
      ['group-scatters', 'caution'],
      ['group-variance-outlying', 'caution'],
    ]);
    expect(wild.cochran).toMatchObject({ group: '6', verdict: 'outlier' });
    expect(wild.findings[1]!.values['limit']).toBe(wild.cochran.criticalValue1);
  });

  test('a straggler by the test of Cochran is a note', () => {
    const s = (a: number) => ({ values: [10 - a, 10, 10 + a] });
    const study = required(interlaboratoryStudy([s(8), s(10), s(7), s(8), s(27)]));
    expect(study.cochran.verdict).toBe('straggler');
    // equal means have no h to speak of
    expect(study.groups.map(({ h }) => h)).toEqual([0, 0, 0, 0, 0]);
    expect(study.findings.at(-1)).toMatchObject({
      code: 'group-variance-outlying',
      severity: 'note',
      values: { limit: study.cochran.criticalValue5 },
    });
  });

  test('wrong arguments', () => {
    expect(refusal(() => interlaboratoryStudy(undefined as never))).toBe('missing groups');
    expect(refusal(() => interlaboratoryStudy([{ values: [] }]))).toBe('empty groups[0].values');
    expect(refusal(() => interlaboratoryStudy([{ values: [1], name: 3 as never }]))).toBe('wrong-type groups[0].name');
    const twice = [
      { name: 'A', values: [1, 2] },
      { name: 'B', values: [1, 3] },
      { name: 'A', values: [2, 3] },
    ];
    expect(refusal(() => interlaboratoryStudy(twice))).toBe('ambiguous groups[2].name');
    expect(refusal(() => interlaboratoryStudy([{ values: [1, 2] }, { name: '1', values: [1, 3] }]))).toBe('ambiguous groups[1].name');
    expect(refusal(() => interlaboratoryStudy([{ values: [1], lab: 'x' } as never]))).toBe('unknown-option groups[0].lab');
  });
});

test('rounding: kind or step, and nothing else', () => {
  expect(refusal(() => roundResult(1, {}))).toBe('missing options.kind');
  expect(refusal(() => roundResult(1, { kind: 'strength', step: 1 }))).toBe('ambiguous options.kind');
  expect(refusal(() => roundResult(1, { step: 0 }))).toBe('not-positive options.step');
  expect(refusal(() => roundResult(NaN, { step: 1 }))).toBe('not-finite value');
  expect(refusal(() => roundResult(1, { kind: 'hardness' as never }))).toBe('out-of-range options.kind');
  expect(roundResult(612.4, { kind: 'strength', rule: 'astm' })).toMatchObject({
    value: 612.4,
    rounded: 610,
    rule: 'steps of ASTM E8/E8M, half to even (ISO 80000-1 rule A, ASTM E29)',
  });
  expect(roundResult(3.4, { step: 1, half: 'up' }).rule).toBe('a step of its own, half up (ISO 80000-1 rule B)');
});
