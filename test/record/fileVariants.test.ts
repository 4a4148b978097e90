import { describe, expect, test } from 'vitest';
import { readChunks, readRecord, readRows, type ColumnName, type TensionRecord } from '../../src/index.js';
import { encoded } from '../support/encoded.js';

/** Samples as a logger counts them: decimals that every unit below holds exactly as text. */
const N = 12;
const values: Readonly<Record<string, (i: number) => string>> = {
  time: (i) => (0.25 * i).toFixed(2),
  force: (i) => (1.5 * i + 0.125).toFixed(3),
  extension: (i) => (0.004 * i).toFixed(4),
  travel: (i) => (0.031 * i).toFixed(3),
  strain: (i) => ((0.004 * i) / 25).toFixed(6),
  stress: (i) => (15 * i).toFixed(1),
};
const truth: Readonly<Record<string, { unit: string; factor: number }>> = {
  time: { unit: 's', factor: 1 },
  force: { unit: 'kN', factor: 1000 },
  extension: { unit: 'mm', factor: 1 },
  travel: { unit: 'mm', factor: 1 },
  strain: { unit: '-', factor: 1 },
  stress: { unit: 'MPa', factor: 1 },
};
const column = (quantity: string): number[] => Array.from({ length: N }, (_, i) => Number(values[quantity]!(i)) * truth[quantity]!.factor);

/** Names of one logger's columns in each language: plain displacement beside a qualified travel, as laboratories write them. */
const languages: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'English, displacement beside machine': {
    time: 'Time',
    force: 'Force',
    extension: 'Displacement',
    travel: 'Machine Displacement',
    strain: 'Engineering Strain',
    stress: 'Engineering Stress',
  },
  'English, extensometer and crosshead': {
    time: 'Test time',
    force: 'Load',
    extension: 'Extensometer',
    travel: 'Crosshead separation',
    strain: 'Strain',
    stress: 'Stress',
  },
  'English, extension and stroke': {
    time: 'Elapsed time',
    force: 'Load cell',
    extension: 'Extension',
    travel: 'Stroke',
    strain: 'Axial strain',
    stress: 'True stress',
  },
  'English, run together': {
    time: 'ElapsedTime',
    force: 'AxialForce',
    extension: 'ExtensometerTravel',
    travel: 'CrossheadTravel',
    strain: 'AxialStrain',
    stress: 'AxialStress',
  },
  'German, Weg beside Traverse': {
    time: 'Zeit',
    force: 'Kraft',
    extension: 'Weg',
    travel: 'Traversenweg',
    strain: 'Dehnung',
    stress: 'Spannung',
  },
  'German, Feinwegaufnehmer': {
    time: 'Prüfzeit',
    force: 'Prüfkraft',
    extension: 'Feinwegaufnehmer',
    travel: 'Maschinenweg',
    strain: 'Techn. Dehnung',
    stress: 'Zugspannung',
  },
  'German, Längenänderung': {
    time: 'Versuchszeit',
    force: 'Standardkraft',
    extension: 'Längenänderung',
    travel: 'Kolbenweg',
    strain: 'Dehnung',
    stress: 'Wahre Spannung',
  },
  French: {
    time: 'Temps',
    force: 'Effort',
    extension: 'Extensomètre',
    travel: 'Déplacement traverse',
    strain: 'Déformation',
    stress: 'Contrainte',
  },
  'French, allongement': {
    time: 'Durée',
    force: 'Charge',
    extension: 'Allongement',
    travel: 'Course',
    strain: 'Déformation vraie',
    stress: 'Contrainte vraie',
  },
  Spanish: {
    time: 'Tiempo',
    force: 'Fuerza',
    extension: 'Extensómetro',
    travel: 'Desplazamiento cruceta',
    strain: 'Deformación',
    stress: 'Esfuerzo',
  },
  'Spanish, alargamiento': {
    time: 'Tiempo',
    force: 'Carga',
    extension: 'Alargamiento',
    travel: 'Carrera',
    strain: 'Deformación',
    stress: 'Esfuerzo',
  },
  Italian: { time: 'Tempo', force: 'Forza', extension: 'Estensometro', travel: 'Traversa', strain: 'Deformazione', stress: 'Sforzo' },
  Portuguese: { time: 'Tempo', force: 'Força', extension: 'Extensômetro', travel: 'Travessa', strain: 'Deformação', stress: 'Tensão' },
};
const chinese = { time: '时间', force: '载荷', extension: '引伸计变形', travel: '横梁位移', strain: '应变', stress: '应力' };

const orders: readonly (readonly string[])[] = [
  ['time', 'extension', 'force', 'travel', 'strain', 'stress'],
  ['time', 'travel', 'force', 'extension'],
  ['stress', 'strain', 'travel', 'extension', 'force', 'time'],
  ['force', 'travel', 'time', 'strain', 'extension'],
];
const heads: Readonly<Record<string, (name: string, unit: string) => string>> = {
  below: (name) => name,
  'in square brackets': (name, unit) => `${name} [${unit}]`,
  'in brackets': (name, unit) => `${name} (${unit})`,
  'after a slash': (name, unit) => `${name} / ${unit}`,
  'after a line': (name, unit) => `${name}_${unit}`,
  'after in': (name, unit) => `${name} in ${unit}`,
};
const signs = [
  { separator: ';', decimal: ',' },
  { separator: ';', decimal: '.' },
  { separator: '\t', decimal: '.' },
  { separator: '\t', decimal: ',' },
  { separator: ',', decimal: '.' },
  { separator: '|', decimal: ',' },
] as const;
const encodings = [
  { encoding: 'utf-8', mark: false, end: '\n' },
  { encoding: 'utf-8', mark: true, end: '\r\n' },
  { encoding: 'windows-1252', mark: false, end: '\r\n' },
  { encoding: 'utf-16le', mark: true, end: '\r\n' },
  { encoding: 'utf-16be', mark: false, end: '\n' },
  { encoding: 'utf-16le', mark: false, end: '\r' },
] as const;

/** A file of one logger. */
function written(
  names: Readonly<Record<string, string>>,
  order: readonly string[],
  head: string,
  { separator, decimal }: (typeof signs)[number],
): string {
  const rows = Array.from({ length: N }, (_, i) => order.map((one) => values[one]!(i).replace('.', decimal)).join(separator));
  const titles = order.map((one) => heads[head]!(names[one]!, truth[one]!.unit));
  const units = head === 'below' ? [order.map((one) => (one === 'strain' ? '' : truth[one]!.unit)).join(separator)] : [];
  return [`Probe:${separator}Ä7`, `Gauge length:${separator}25${separator}mm`, titles.join(separator), ...units, ...rows, ''].join('\n');
}

/** Quantities that the columns of an order serve for. */
const served = (order: readonly string[]): string[] =>
  order.filter((one) => one !== 'stress' && !(one === 'strain' && order.includes('extension')));

describe('every name in every order, with every head, separator and encoding, reads to the same columns', () => {
  test.each(Object.entries(languages))('%s', (_, names) => {
    let k = 0;
    for (const order of orders)
      for (const head of Object.keys(heads))
        for (const sign of signs) {
          const { encoding, mark, end } = encodings[k % encodings.length]!;
          k += 1;
          const text = written(names, order, head, sign).replaceAll('\n', end);
          const { record, reading, metadata } = readRecord(encoded(text, encoding, mark), { length: 25 });
          const what = `${text.slice(0, 160)}\n${encoding}`;
          expect(Object.keys(record).sort(), what).toEqual(served(order).sort());
          for (const one of served(order)) expect([...record[one as 'time']!], `${one} of ${what}`).toEqual(column(one));
          expect(reading).toMatchObject({ ...sign, encoding, rows: N, leftOut: [] });
          expect(metadata['Probe']?.value).toBe('Ä7');
        }
  });

  test('Chinese, in UTF-8 and UTF-16', () => {
    for (const { encoding, mark, end } of encodings.filter((one) => one.encoding !== 'windows-1252')) {
      const text = written(chinese, orders[0]!, 'in square brackets', signs[2]).replaceAll('\n', end);
      const { record } = readRecord(encoded(text, encoding, mark));
      expect([...record.travel!]).toEqual(column('travel'));
      expect([...record.extension!]).toEqual(column('extension'));
      expect([...(record as TensionRecord).force]).toEqual(column('force'));
    }
  });

  test('text, pieces and rows give the same', async () => {
    const text = written(languages['French']!, orders[0]!, 'below', signs[0]);
    const whole = readRecord(encoded(text, 'utf-8'));
    expect(readRecord(text).record).toEqual(whole.record);
    expect((await readChunks([encoded(text, 'utf-8')])).record).toEqual(whole.record);
    expect(readRows(text.split('\n').map((line) => line.split(';'))).record).toEqual(whole.record);
  });
});

describe('two columns that are plain displacements', () => {
  const twice = (first: string, second: string): string =>
    [
      'Time s;Force kN;Weg 1 mm;Weg 2 mm;Strain 1',
      ...Array.from({ length: N }, (_, i) =>
        [values['time']!(i), values['force']!(i), values[first]!(i), values[second]!(i), values['strain']!(i)].join(';'),
      ),
    ]
      .join('\n')
      .replace('Strain 1', 'Strain [1]');

  test.each([
    ['extension', 'travel'],
    ['travel', 'extension'],
  ])('strain times length tells %s from %s', (first, second) => {
    const { record } = readRecord(twice(first, second), { length: 25 });
    expect([...record.extension!]).toEqual(column('extension'));
    expect([...record.travel!]).toEqual(column('travel'));
    expect('strain' in record).toBe(false);
  });
});

test.each<[string, ColumnName, number]>([
  ['F [kN]', 'force', 1000],
  ['Kraft in N', 'force', 1],
  ['Load (lbf)', 'force', 4.4482216152605],
  ['Last / kgf', 'force', 9.80665],
  ['Load, kip', 'force', 4448.2216152605],
  ['Force..kN.', 'force', 1000],
  ['P [kN]', 'force', 1000],
  ['Kanal 3 [kN]', 'force', 1000],
  ['Druck bar', 'pressure', 0.1],
  ['Oil pressure [psi]', 'pressure', 4.4482216152605 / 25.4 ** 2],
])('the load %j', (name, quantity, factor) => {
  const { record } = readRecord(`t s;${name};x mm\n${Array.from({ length: 6 }, (_, i) => `${i};${i + 0.5};${i}`).join('\n')}`);
  expect((record as unknown as Record<string, Float64Array>)[quantity]![3]! / 3.5).toBeCloseTo(factor, 12);
});

test.each<[string, ColumnName, number]>([
  ['Weg (mm)', 'travel', 1],
  ['Position [µm]', 'travel', 1e-3],
  ['Position [\u03bcm]', 'travel', 1e-3],
  ['Crosshead [inch]', 'travel', 25.4],
  ['Crosshead (in)', 'travel', 25.4],
  ['Extensometer elongation (%)', 'strain', 0.01],
  ['Dehnung [µm/m]', 'strain', 1e-6],
  ['Strain [-]', 'strain', 1],
])('the column %j', (name, quantity, factor) => {
  const { record } = readRecord(`t ms;F kN;${name}\n${Array.from({ length: 6 }, (_, i) => `${i};${i};${i + 0.5}`).join('\n')}`);
  expect(record[quantity as 'travel']![3]! / 3.5).toBeCloseTo(factor, 12);
  expect(record.time![5]).toBe(0.005);
});
