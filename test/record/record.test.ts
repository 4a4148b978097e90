import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  alignChannels,
  checkRecord,
  findPauses,
  joinJumps,
  joinSlips,
  readRecord,
  removeZeroDrift,
  replaceSpikes,
  restoreZero,
  stressStrain,
  tare,
  type TensionRecord,
} from '../../src/index.js';
import { resolution } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';
import { refusal, thrown } from '../support/thrown.js';

const rows = (separator: string, decimal: string, n = 6): string =>
  Array.from({ length: n }, (_, i) => [i / 10, 1.5 * i, 0.125 * i].map((one) => one.toFixed(3).replace('.', decimal)).join(separator)).join(
    '\n',
  );
const utf16 = (text: string, mark = true): Uint8Array => {
  const bytes = new Uint8Array(2 * text.length + (mark ? 2 : 0));
  if (mark) bytes.set([0xff, 0xfe]);
  for (let i = 0; i < text.length; i += 1) bytes.set([text.charCodeAt(i) & 255, text.charCodeAt(i) >> 8], 2 * i + (mark ? 2 : 0));
  return bytes;
};

describe('layouts as loggers write them', () => {
  test.each([
    [';', ','],
    [';', '.'],
    ['\t', ','],
    ['\t', '.'],
    [',', '.'],
    ['|', ','],
    [' ', '.'],
    [' ', ','],
  ])('separator %j, decimal sign %j', (separator, decimal) => {
    const names = separator === ' ' ? 'Time[s] Force[kN] Travel[mm]' : ['Time [s]', 'Force [kN]', 'Travel [mm]'].join(separator);
    const { record, reading } = readRecord(`${names}\n${rows(separator, decimal)}\n`);
    expect(reading).toMatchObject({ separator, decimal, rows: 6, leftOut: [] });
    expect([...(record as TensionRecord).force]).toEqual([0, 1500, 3000, 4500, 6000, 7500]);
    expect(record.travel![5]).toBeCloseTo(0.625, 12);
  });

  test.each([
    ['Zeit;Kraft;Verlängerung\ns;kN;mm', 'extension'],
    ['Temps (s);Effort (kN);Allongement (mm)', 'extension'],
    ['Tiempo en s;Fuerza en kN;Desplazamiento en mm', 'travel'],
    ['t_s;Prüfkraft_kN;Traversenweg_mm', 'travel'],
    ['Temps / s;Force / kN;Course / mm', 'travel'],
    ['time, s;LOAD, kN;CROSSHEAD, mm', 'travel'],
  ])('names in four languages: %s', (names, quantity) => {
    const { record, reading } = readRecord(`${names}\n${rows(';', ',')}`);
    expect(Object.keys(record).sort()).toEqual(['force', 'time', quantity].sort());
    expect(reading.columns.find((one) => one.quantity === 'force')?.factor).toBe(1000);
  });

  test('preamble, names, units: the block above becomes metadata', () => {
    const text = `Piece:\tA7\nGauge length:\t25\tmm\nsome words\n\nTime\tDisplacement\tForce\tMachine Displacement\tEngineering Strain\tTrue Stress\ns\tmm\tkN\tmm\t\tMPa\n${Array.from({ length: 8 }, (_, i) => `${i}\t${i / 100}\t${i}\t${i / 10}\t${i / 2500}\tnan`).join('\n')}\n`;
    const { record, metadata, reading } = readRecord(text);
    expect(metadata).toMatchObject({ Piece: { value: 'A7' }, 'Gauge length': { value: '25', unit: 'mm' } });
    expect(record.extension![7]).toBeCloseTo(0.07, 12);
    expect(record.travel![7]).toBeCloseTo(0.7, 12);
    expect(record.strain).toBeUndefined();
    expect(reading.ignored.map(({ name }) => name)).toEqual(expect.arrayContaining(['Engineering Strain', 'True Stress']));
  });

  test('a strain in per cent becomes a ratio, empty where the extensometer was taken off', () => {
    const text = `Time;Crosshead separation;Load;Extensometer elongation\n(sec);(mm);(kN);(%)\n0;0;0,1;-0,05\n0,1;0,1;0,2;0,05\n0,2;0,2;0,3;0,1\n0,3;0,3;0,4;\n0,4;0,4;0,5;\n0,5;0,5;0,6;\n`;
    const { record } = readRecord(text);
    expect([...record.strain!]).toEqual([
      expect.closeTo(-0.0005, 15),
      expect.closeTo(0.0005, 15),
      expect.closeTo(0.001, 15),
      NaN,
      NaN,
      NaN,
    ]);
  });

  test('pressure instead of force, in MPa', () => {
    const { record } = readRecord(`Druck bar;Weg mm;Zeit s\n${rows(';', ',')}`);
    expect('pressure' in record && [...record.pressure].map((p) => Math.round(1e6 * p))).toEqual([
      0, 10_000, 20_000, 30_000, 40_000, 50_000,
    ]);
  });

  test('encodings: UTF-8 with mark, UTF-16 with and without, Latin-1; every line ending', () => {
    const text = `Zeit [s];Kraft [kN];Längenänderung [µm]\n${rows(';', ',')}\n`;
    const expected = readRecord(text).record;
    const latin = Uint8Array.from(text, (sign) => sign.charCodeAt(0));
    for (const file of [
      new TextEncoder().encode(`\ufeff${text}`),
      new TextEncoder().encode(text).buffer,
      utf16(text),
      utf16(text, false),
      latin,
      `\ufeff${text}`,
    ])
      expect(readRecord(file).record).toEqual(expected);
    expect(readRecord(latin).reading.encoding).toBe('windows-1252');
    expect(readRecord(utf16(text, false)).reading.encoding).toBe('utf-16le');
    for (const end of ['\r\n', '\r']) expect(readRecord(text.replaceAll('\n', end)).record).toEqual(expected);
  });

  test('thousands, quotes, exponents, many digits, footers, repeated heads and short rows', () => {
    expect(
      (readRecord('t s;F N;x mm\n0;1.234,5;1\n1;2.234,5;2\n2;12.234,5;3\n3;112.234,5;4\n4;5,5;5\n').record as TensionRecord).force[2],
    ).toBe(12_234.5);
    expect(
      (readRecord('"t, s","F, N","x, mm"\n"0","1.5","1"\n"1","2.5","2"\n"2","3","3"\n"3","4","4"\n"4","5","5"\n').record as TensionRecord)
        .force[1],
    ).toBe(2.5);
    const odd = readRecord(
      't s;F N;x mm\n0;1e3;1\n1;0.12345678901234567;2\n2;+3;3\n3;4;4\n4;5;5\nt s;F N;x mm\n5;6\n6;;6\n7;8;7\n\nend of test\n',
    );
    expect([...(odd.record as TensionRecord).force]).toEqual([1000, Number('0.12345678901234567'), 3, 4, 5, 8]);
    expect(odd.reading.leftOut.map(({ line }) => line)).toEqual([7, 8, 9, 12]);
  });
});

test('numbers are read to the last bit', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: -1e9, max: 1e9, noNaN: true }), { minLength: 6, maxLength: 20 }), (values) => {
      const text = `t s;F N;x mm\n${values.map((value, i) => `${i};${String(value)};${i}`).join('\n')}\n`;
      expect([...(readRecord(text).record as TensionRecord).force].map((one) => one + 0)).toEqual(
        values.map((value) => (value === 0 ? 0 : value)),
      );
    }),
    { numRuns: 60 },
  );
});

describe('what cannot be read is an error that says what decides', () => {
  const head = 't s;F kN;x mm\n';
  test.each([
    ['empty file', '', {}],
    ['empty file', ' \n \n', {}],
    ['not-text file', new Uint8Array(200).fill(0).map((_, i) => (i * 37) % 251), {}],
    ['not-text file', `a\u0001\u0002\u0003;b\n1;2\n`, {}],
    ['no-numbers file', 'nothing here\nbut words\n', {}],
    ['too-few file', `${head}0;1;2\n`, {}],
    ['ambiguous options.decimal', 'F N;x mm\n1,234;5,678\n2,345;6,789\n3,456;7,891\n', {}],
    ['ambiguous options.columns.travel', `t s;F kN;Travel mm;Position mm\n${rows(';', '.').replaceAll('\n', ';1\n')};1`, {}],
    ['missing options.columns.force', `t s;x mm\n${rows(';', '.')}`, {}],
    ['missing options.columns.travel', `t s;F kN\n${rows(';', '.')}`, {}],
    ['missing options.units.force', `t s;F;x mm\n${rows(';', '.')}`, {}],
    ['missing options.units.force', `t s;F [stone];x mm\n${rows(';', '.')}`, {}],
    ['unknown-unit options.units.travel', `t s;F kN;Travel kN\n${rows(';', '.')}`, {}],
    ['not-finite line 4', `${head}0;1;2\n1;2;3\n2;3;\n3;4;5\n4;5;6\n5;6;7\n`, {}],
    ['unknown-option options.sep', `${head}${rows(';', '.')}`, { sep: ';' }],
    ['unknown-option options.units.weight', `${head}${rows(';', '.')}`, { units: { weight: 'N' } }],
    ['unknown-unit options.units.force', `${head}${rows(';', '.')}`, { units: { force: 'mm' } }],
    ['out-of-range options.separator', head, { separator: '#' }],
    ['out-of-range options.decimal', head, { decimal: ';' }],
    ['out-of-range options.encoding', head, { encoding: 'ebcdic' }],
    ['not-positive options.length', head, { length: 0 }],
    ['out-of-range options.columns.force', `${head}${rows(';', '.')}`, { columns: { force: 'Load' } }],
  ] as const)('%s', (expected, file, options) => {
    expect(refusal(() => readRecord(file, options as never))).toBe(expected);
  });

  test('a list of numbers or nothing at all is no file', () => {
    expect(refusal(() => readRecord([1, 2] as never))).toBe('wrong-type file');
    expect(refusal(() => readRecord(undefined as never))).toBe('wrong-type file');
  });

  test('the ambiguous name both candidates', () => {
    const text = `t s;F kN;Travel mm;Position mm\n${rows(';', '.').replaceAll('\n', ';1\n')};1`;
    expect(thrown(() => readRecord(text)).message).toMatch(/'Travel', 'Position'/);
  });

  test('strain times the length must be the extension', () => {
    const text = `t s;F kN;Extension mm;Strain %\n${Array.from({ length: 8 }, (_, i) => `${i};${i};${i / 100};${i / 25}`).join('\n')}\n`;
    expect(readRecord(text, { length: 25 }).record.extension![7]).toBeCloseTo(0.07, 12);
    expect(refusal(() => readRecord(text, { length: 50 }))).toBe('ambiguous options.length');
  });

  test('options decide', () => {
    const ambiguous = 'F N;x mm\n1,234;5,678\n2,345;6,789\n3,456;7,891\n';
    expect((readRecord(ambiguous, { decimal: ',' }).record as TensionRecord).force[0]).toBe(1.234);
    expect((readRecord(ambiguous, { decimal: '.' }).record as TensionRecord).force[0]).toBe(1234);
    const bare = `a;b;c\n${rows(';', '.')}`;
    const options = { columns: { force: 'b', travel: 2, time: 0 }, units: { force: 'kN', travel: 'mm', time: 's' } } as const;
    expect((readRecord(bare, options).record as TensionRecord).force[1]).toBe(1500);
    expect(readRecord(`${head}0;1;2\n1;2;3\n2;3;\n3;4;5\n4;5;6\n5;6;7\n`, { leaveOutHoles: true }).reading.leftOut).toHaveLength(1);
    expect(
      readRecord(`${head}${rows(';', '.')}`, { separator: ';', encoding: 'utf-8', units: { force: 'N' }, length: 50 }).record.travel,
    ).toHaveLength(6);
  });
});

describe('tare', () => {
  test('by samples, by number, and one of both must be given', () => {
    const record = { force: [10, 12, 1011], travel: [0, 0, 1], extension: [0, 1, NaN] };
    expect([...tare(record, { samples: [0, 1] }).record.force]).toEqual([-1, 1, 1000]);
    expect(tare(record, { force: 11 }).record.force[2]).toBe(1000);
    expect(record.force[0]).toBe(10);
    expect(refusal(() => tare(record, {}))).toBe('missing options');
    expect(refusal(() => tare(record, { samples: [0, 3] }))).toBe('out-of-range options.samples[1]');
  });

  test('the mean of both ends and all between; one sample; other columns as they were', () => {
    const record = { force: [7, 10, 12, 17, 1000], travel: [0, 1, 2, 3, 4], time: [0, 1, 2, 3, 4], strain: [0, 0.1, NaN, NaN, NaN] };
    const found = tare(record, { samples: [1, 3] });
    expect(found.tareForce).toBe(13);
    expect([...found.record.force]).toEqual([-6, -3, -1, 4, 987]);
    expect([...found.record.travel!, ...found.record.time!]).toEqual([...record.travel, ...record.time]);
    expect([...found.record.strain!]).toEqual(record.strain);
    expect(Object.keys(found.record)).toEqual(['force', 'travel', 'time', 'strain']);
    expect(tare(record, { samples: [4, 4] }).tareForce).toBe(1000);
    expect(tare(record, { force: 0, samples: [0, 1] }).tareForce).toBe(0);
  });

  test.each([
    ['out-of-range options.samples[0]', { samples: [-1, 2] }],
    ['out-of-range options.samples[1]', { samples: [2, 1] }],
    ['out-of-range options.samples[0]', { samples: [3, 3] }],
    ['out-of-range options.samples', { samples: [0.5, 2] }],
    ['out-of-range options.samples', { samples: [0, 1.5] }],
    ['not-finite options.force', { force: NaN }],
  ])('%s', (expected, options) => {
    expect(refusal(() => tare({ force: [1, 2, 3], travel: [0, 0, 0] }, options as never))).toBe(expected);
  });

  test('only a motion may end early', () => {
    const force = [1, 2];
    expect(refusal(() => tare({ force, travel: [0, NaN] }, { force: 0 }))).toBe('not-finite record.travel[1]');
    expect(refusal(() => tare({ force, travel: [0, 1], time: [0, NaN] }, { force: 0 }))).toBe('not-finite record.time[1]');
  });
});

describe('findPauses', () => {
  const time = Array.from({ length: 400 }, (_, i) => i / 20);
  const travel = time.map((t) => (t < 8 ? 0.1 * t : t <= 11 ? 0.8 : 0.1 * (t - 3)));
  const force = time.map((t, i) => (t < 8 ? 100 * t : t <= 11 ? 800 - 5 * (t - 8) : 100 * (t - 3)) + (i % 2) * 0.01);

  test('a stop of the hand is found, with its fall', () => {
    const [pause, ...more] = findPauses({ force, travel, time });
    expect(more).toEqual([]);
    expect(pause!.duration).toBeCloseTo(3, 0);
    expect(pause!.fall).toBeCloseTo(15, 0);
    expect(pause!.range[0]).toBeGreaterThan(157);
  });

  test('loading slowly is no pause', () => {
    expect(findPauses({ force: time.map((t) => 100 * t), travel: time.map((t) => (t < 10 ? 0.002 * t : 0.1 * t)), time })).toEqual([]);
    expect(findPauses({ force: time.map(() => 5), travel: time.map(() => 1), time })).toEqual([]);
  });

  test('without time, or with time that goes back, it cannot be asked', () => {
    expect(refusal(() => findPauses({ force, travel }))).toBe('missing record.time');
    expect(refusal(() => findPauses({ force, travel, time: time.map((t, i) => (i === 9 ? -1 : t)) }))).toBe(
      'not-increasing record.time[9]',
    );
  });
});

test('one step of a stepped column; none of a smooth one', () => {
  const { normal, uniform } = seeded(2);
  const smooth = Float64Array.from({ length: 2000 }, (_, i) => i + normal());
  expect(resolution(smooth)).toBe(0);
  expect(resolution(smooth.map((one) => Math.round(one / 0.25) * 0.25))).toBeCloseTo(0.25, 12);
  expect(resolution(new Float64Array(20))).toBe(0);
  expect(resolution(Float64Array.from({ length: 3 }, uniform))).toBe(0);
});

describe('checkRecord', () => {
  const n = 1000;
  const { normal } = seeded(9);
  const time = Array.from({ length: n }, (_, i) => i / 20);
  const clean = {
    force: time.map((t, i) => (i < 40 ? 0 : i > 960 ? 0 : 10_000 * Math.sin(((t - 2) / 46) * 2)) + 0.5 * normal()),
    travel: time.map((t) => 0.1 * t),
    time,
  };
  const codes = (change: object = {}): string[] => checkRecord({ ...clean, ...change }).map(({ code }) => code);

  test('a clean record has a tail and nothing else', () => {
    expect(codes()).toEqual(['tail-after-fracture']);
  });

  test.each([
    ['time-missing', { time: undefined }],
    ['time-not-increasing', { time: time.map((t, i) => (i === 500 ? 0 : t)) }],
    ['time-gap', { time: time.map((t, i) => (i > 500 ? t + 3 : t)) }],
    ['force-saturated', { force: clean.force.map((F) => Math.min(F, 8000)) }],
    ['force-does-not-rise', { force: clean.force.map(() => 5) }],
    ['force-does-not-rise', { force: clean.force.map((_, i) => -i) }],
    ['record-starts-late', { force: clean.force.slice(200), travel: clean.travel.slice(200), time: time.slice(200) }],
    ['zero-drift', { force: clean.force.map((F, i) => (i > 960 ? F + 80 : F)) }],
    ['extension-goes-back', { travel: clean.travel.map((x, i) => (i > 300 && i < 320 ? x - 0.05 * (10 - Math.abs(i - 310)) : x)) }],
    ['signal-strays', { travel: clean.travel.map((x, i) => (i > 300 && i < 320 ? x - 0.5 : x)) }],
    ['extensometer-taken-off', { extension: clean.travel.map((x, i) => (i > 700 ? NaN : x)) }],
    [
      'samples-repeated',
      { force: clean.force.map((_, i) => clean.force[i - (i % 2)]!), travel: clean.travel.map((_, i) => clean.travel[i - (i % 2)]!) },
    ],
  ])('%s', (code, change) => {
    expect(codes(change)).toContain(code);
  });

  test('an extension without numbers beside travel is said; alone it is refused', () => {
    const extension = clean.travel.map(() => NaN);
    expect(codes({ extension })).toContain('channel-empty');
    const { force, time: clock } = clean;
    const piece = { section: { shape: 'round' as const, dimensions: { diameter: 8 }, area: 50, readings: 1 }, gaugeLength: 40 };
    expect(refusal(() => stressStrain({ force, extension, time: clock }, piece))).toBe('too-few record.extension');
  });

  test('wrong arguments', () => {
    expect(refusal(() => checkRecord({ force: [], travel: [] }))).toBe('empty record.force');
    expect(refusal(() => checkRecord(clean, { gaps: 1 } as object))).toBe('unknown-option thresholds.gaps');
    expect(refusal(() => checkRecord({ force: [1, NaN] }))).toBe('not-finite record.force[1]');
  });
});

test('a drive that goes back more often than can be listed is told once, with the largest fall', () => {
  const pumped = (strokes: number) => {
    const travel: number[] = [];
    for (let k = 0; k < strokes; k += 1) for (let i = 0; i < 30; i += 1) travel.push(0.1 * k + 0.01 * (i < 20 ? i : 38 - i));
    travel.push(0.1 * strokes + 0.2);
    return checkRecord({ force: travel.map((x) => 1000 * x), travel });
  };
  const found = pumped(60).filter(({ code }) => code === 'falls-many' || code === 'drive-reversed');
  expect(found).toMatchObject([{ code: 'falls-many', severity: 'caution' }]);
  // each stroke goes from 0.19 back to 0.09 mm
  expect(found[0]!.values['fall']).toBeCloseTo(100, 9);
  expect(found[0]!.values['count']).toBeGreaterThan(50);
  expect(pumped(20).filter(({ code }) => code === 'drive-reversed').length).toBeGreaterThan(15);
  expect(pumped(20).some(({ code }) => code === 'falls-many')).toBe(false);
});

describe('repairs of a straight record, exactly', () => {
  // at rest for 40 samples, up by 100 N and 0.01 mm a sample to 20 kN, gone after sample 240, at rest for 40 more
  const n = 281;
  const pull = Float64Array.from({ length: n }, (_, i) => (i <= 40 || i > 240 ? 0 : 100 * (i - 40)));
  const travel = Float64Array.from({ length: n }, (_, i) => 0.01 * Math.min(240, Math.max(40, i)) - 0.4);
  const changed = (column: Float64Array, by: (i: number) => number) => column.map((one, i) => one + by(i));
  const close = (one: ArrayLike<number>, other: ArrayLike<number>, within = 1e-9) => {
    expect(one).toHaveLength(other.length);
    Array.from(one).forEach((value, i) => {
      expect(Math.abs(value - other[i]!), `sample ${i}`).toBeLessThan(within);
    });
  };

  test('spikes lie on the line between their neighbours again, however long', () => {
    for (const [length, height] of [
      [1, 3000],
      [2, -3000],
      [3, 3000],
      [4, 3000],
      [12, -3000],
    ] as const) {
      const before = Array.from({ length }, (_, k) => 8000 + 100 * k);
      const force = changed(pull, (i) => (i >= 120 && i < 120 + length ? height : 0));
      const { record, trail } = replaceSpikes({ force, travel });
      close(record.force, pull);
      expect(trail).toHaveLength(1);
      expect(trail[0]!.values['samples']).toBe(before.map((_, k) => 120 + k).join(' '));
      expect(trail[0]!.values['before']).toBe(before.map((F) => F + height).join(' '));
      expect(trail[0]!.values['after']).toBe(before.join(' '));
    }
  });

  test('spikes of an extension up to where it was taken off', () => {
    const extension = travel.map((x, i) => (i > 150 ? NaN : i === 100 ? x + 1 : x));
    const { record, trail } = replaceSpikes({ force: pull, travel, extension });
    expect(trail.map(({ change }) => change)).toMatchObject([{ kind: 'set', column: 'extension', samples: [100] }]);
    close(record.extension!.subarray(0, 151), travel.subarray(0, 151));
    expect(record.extension![151]).toBeNaN();
  });

  test('the force before a late tare is counted from the zero after it', () => {
    const { record, trail } = restoreZero({ force: changed(pull, (i) => (i < 20 ? 350 : 0)), travel });
    expect(trail.map(({ change }) => change)).toEqual([{ kind: 'add', column: 'force', range: [0, 19], amount: -350 }]);
    expect(trail[0]!.values).toEqual({ sample: 20, step: -350 });
    close(record.force, pull);
  });

  test('a zero set under load is put back with the step that the loading made meanwhile', () => {
    const force = pull.map((F, i) => (i >= 100 && i <= 240 ? F - 6000 : F));
    const { record, trail } = restoreZero({ force, travel });
    expect(trail).toHaveLength(1);
    expect(trail[0]!.values).toEqual({ sample: 100, fall: 5900, amount: 6000 });
    close(record.force.subarray(0, 241), pull.subarray(0, 241));
  });

  test('a drift of the zero is straight from the first to the last sample', () => {
    const drift = (i: number): number => 30 + i;
    const { record, trail } = removeZeroDrift({ force: changed(pull, drift), travel });
    close(record.force, pull, 1e-6);
    expect(trail[0]!.change).toEqual({
      kind: 'ramp',
      column: 'force',
      amounts: [expect.closeTo(-30, 6) as number, expect.closeTo(-310, 6) as number],
    });
    const { before, after, beforeAt, afterAt } = trail[0]!.values as Record<string, number>;
    expect(before).toBeCloseTo(drift(beforeAt!), 9);
    expect(after).toBeCloseTo(drift(afterAt!), 9);
    // a record that begins under load, or ends with the fracture, does not tell
    const drifting = { force: changed(pull, drift), travel };
    for (const [from, to] of [
      [60, n],
      [0, 241],
    ] as const)
      expect(removeZeroDrift({ force: drifting.force.slice(from, to), travel: travel.slice(from, to) }).trail).toEqual([]);
    // zeros of 25 readings with a noise of 20 N tell apart 100 N, not nothing
    const { normal } = seeded(4);
    const noisy = pull.map((F) => F + 20 * normal());
    expect(removeZeroDrift({ force: noisy, travel }).trail).toEqual([]);
    expect(removeZeroDrift({ force: changed(noisy, (i) => (120 * i) / n), travel }).trail).toHaveLength(1);
    // below 0.05 % of the highest force it is left alone
    expect(removeZeroDrift({ force: changed(pull, (i) => (9 * i) / n), travel }).trail).toEqual([]);
    expect(removeZeroDrift({ force: changed(pull, (i) => (20 * i) / n), travel }).trail).toHaveLength(1);
  });

  test.each([-2, 0.5])('a motion that jumps by %d mm goes on as before', (jump) => {
    for (const column of ['travel', 'extension', 'strain'] as const) {
      const { record, trail } = joinJumps({ force: pull, [column]: changed(travel, (i) => (i >= 140 ? jump : 0)) });
      close(record[column]!, travel);
      expect(trail[0]!.values['sample']).toBe(140);
      expect(trail[0]!.values['size']).toBeCloseTo(jump + 0.01, 12);
      expect(trail[0]!.values['amount']).toBeCloseTo(-jump, 12);
    }
  });

  test('a travel that runs ahead within a sample: that way is taken out of all that follows', () => {
    const { record, trail } = joinSlips({ force: pull, travel: changed(travel, (i) => (i >= 140 ? 0.5 : 0)) });
    expect(trail.map(({ change }) => change)).toMatchObject([{ kind: 'add', column: 'travel', range: [140, n - 1] }]);
    expect(trail[0]!.values).toEqual({ column: 'travel', sample: 140, way: expect.closeTo(0.51, 9) as number, unit: 'mm' });
    // what the piece itself did in that sample is taken for way in the grips too
    close(
      record.travel!,
      changed(travel, (i) => (i >= 140 ? -0.01 : 0)),
    );
  });

  test('a slip with a fall of the force: the excursion is left out, and what stays lies on the elastic line', () => {
    // 10 kN/mm; at 10 kN the force falls by 4 kN within a sample and 0.02 mm, and is back after 0.4 mm more
    const places = [...Array<number>(40).fill(0), ...Array.from({ length: 101 }, (_, i) => 0.01 * i)];
    const forces = places.map((x) => 10_000 * x);
    for (let k = 0; k <= 140; k += 1) {
      places.push(1.02 + 0.01 * k);
      forces.push(6000 + 100 * k);
    }
    const { record, trail } = joinSlips({ force: forces, travel: places });
    expect(trail).toHaveLength(2);
    expect(trail[0]!.values).toEqual({ fromSample: 141, toSample: 180, samples: 40 });
    expect(trail[1]!.values).toEqual({ column: 'travel', sample: 141, way: expect.closeTo(0.42, 9) as number, unit: 'mm' });
    expect(record.force).toHaveLength(forces.length - 40);
    close(
      record.travel!,
      record.force.map((F) => F / 10_000),
    );
  });

  test('two slips: the samples of both excursions are left out; a yield drop and a travel set back are no slips', () => {
    const places = [...Array<number>(40).fill(0), ...Array.from({ length: 101 }, (_, i) => 0.01 * i)];
    const forces = places.map((x) => 10_000 * x);
    const up = (from: number, F: number, samples: number) => {
      for (let k = 0; k <= samples; k += 1) {
        places.push(from + 0.01 * k);
        forces.push(F + 100 * k);
      }
    };
    up(1.02, 6000, 80);
    // at 14 kN another one, of 5 kN: 0.02 + 0.5 mm more
    up(1.84, 9000, 110);
    const { record, trail } = joinSlips({ force: forces, travel: places });
    expect(trail.map(({ values }) => values['way'] ?? values['samples'])).toEqual([
      50,
      expect.closeTo(0.52, 9) as number,
      40,
      expect.closeTo(0.42, 9) as number,
    ]);
    close(
      record.travel!,
      record.force.map((F) => F / 10_000),
    );
    // the force falls by 1 kN and stays there for 2 mm before it rises slowly
    const drop = (x: number): number => (x < 1 ? 10_000 * x : x < 1.05 ? 10_000 - 20_000 * (x - 1) : 9000 + 2000 * Math.max(0, x - 3));
    const yielding = Array.from({ length: 600 }, (_, i) => 0.01 * i);
    expect(joinSlips({ force: yielding.map(drop), travel: yielding }).trail).toEqual([]);
    expect(joinSlips({ force: pull, travel: changed(travel, (i) => (i >= 140 ? -2 : 0)) }).trail).toEqual([]);
  });

  test('a lag that is given moves the force alone, its ends held', () => {
    const record = { force: [1, 2, 3, 4], travel: [5, 6, 7, 8], time: [0, 1, 2, 3] };
    expect([...alignChannels(record, { lag: 2 }).record.force]).toEqual([3, 4, 4, 4]);
    expect([...alignChannels(record, { lag: -1 }).record.force]).toEqual([1, 1, 2, 3]);
    expect([...alignChannels(record, { lag: 2 }).record.travel!]).toEqual(record.travel);
    expect(alignChannels(record, { lag: 2 }).trail[0]!.values).toEqual({ samples: 2 });
    expect(alignChannels(record, { lag: 0 }).trail).toEqual([]);
    expect(refusal(() => alignChannels(record, { lag: 0.5 }))).toBe('out-of-range options.lag');
    expect(refusal(() => alignChannels(record, { lag: NaN }))).toBe('not-finite options.lag');
  });

  test('a record whose force never rises is left as it is', () => {
    const record = { force: [0, -1, -2, -3, -2, -1, 0, 0, -5, 0], travel: [0, 1, 2, 3, 4, 5, 9, 10, 11, 12] };
    for (const repair of [restoreZero, removeZeroDrift, joinJumps, joinSlips, alignChannels]) expect(repair(record).trail).toEqual([]);
  });
});

describe('steps of a reading', () => {
  const of = (column: readonly number[]) => resolution(Float64Array.from(column));
  // 0, 0, 1, 2, 2, 4 and so on: stops, single steps and double ones
  const stepped = Array.from({ length: 40 }, (_, i) => Math.floor(i / 2) + (i % 5 === 4 ? 1 : 0));

  test('its least digit, whatever its size and sign', () => {
    expect(of(stepped)).toBe(1);
    expect(of(stepped.map((one) => 0.01 * one))).toBeCloseTo(0.01, 12);
    expect(of(stepped.map((one) => -50 * one))).toBe(50);
    expect(of(stepped.map((one) => 1e6 + one))).toBe(1);
  });

  test('an even motion has none: it changes by the same each time, standing or not', () => {
    expect(of(stepped.map((_, i) => 0.3 * i))).toBe(0);
    expect(of(stepped.map((_, i) => 0.3 * Math.max(0, i - 20)))).toBe(0);
  });

  test('fewer than ten changes, or five of several steps, say nothing; one change in a hundred may be off', () => {
    expect(of([0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 7, 7, 8, 8, 9, 9])).toBe(0);
    expect(of([0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 7, 7, 8, 8, 9, 9, 10, 10])).toBe(1);
    const long = Array.from({ length: 400 }, (_, i) => Math.floor(i / 2));
    expect(of(long)).toBe(1);
    expect(of(long.map((one, i) => (i === 201 ? one + 0.5 : one)))).toBe(0.5);
    // one of the 199 changes is 1.3 steps; three of them are too many
    expect(of(long.map((one, i) => one + (i >= 202 ? 0.3 : 0)))).toBe(1);
    expect(of(long.map((one, i) => one + (i >= 202 ? 0.3 : 0) + (i >= 204 ? 0.3 : 0) + (i >= 206 ? 0.3 : 0)))).toBe(0);
  });
});

test('a pause by hand: its samples, its duration, and its fall to the lowest force', () => {
  const time = Array.from({ length: 301 }, (_, i) => i / 10);
  // loaded at 0.1 mm/s; still from 10 s to 12 s while the force relaxes by 60 N and comes back by 10 N
  const moved = time.map((t) => 0.1 * Math.min(t, 10) + 0.1 * Math.max(0, t - 12));
  const force = time.map((t, i) => 1000 * moved[i]! - (t > 10 && t <= 12 ? 40 * Math.min(t - 10, 1.5) - 20 * Math.max(0, t - 11.5) : 0));
  for (const motion of [{ travel: moved }, { extension: moved }, { strain: moved }]) {
    const pauses = findPauses({ force, time, ...motion });
    expect(pauses).toHaveLength(1);
    expect(pauses[0]!.range).toEqual([100, 120]);
    expect(pauses[0]!.duration).toBeCloseTo(2, 9);
    expect(pauses[0]!.fall).toBeCloseTo(60, 9);
  }
  expect(findPauses({ force, time, travel: moved }, { duration: 2 })).toHaveLength(1);
  expect(findPauses({ force, time, travel: moved }, { duration: 2.5 })).toEqual([]);
  expect(refusal(() => findPauses({ force, time, travel: moved }, { duration: -1 }))).toBe('out-of-range options.duration');
  expect(refusal(() => findPauses({ force, time, travel: moved }, { share: 1.1 }))).toBe('out-of-range options.share');
  expect(refusal(() => findPauses({ force, time, travel: moved, strain: [1] }))).toBe('unequal-lengths record.strain');
});
