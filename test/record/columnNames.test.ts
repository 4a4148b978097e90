import { describe, expect, test } from 'vitest';
import { isCounts, meaningOf, meaningOfName, splitName, type Meaning, type NamedColumn } from '../../src/record/reading/columnNames.js';
import { isUnitsRow, joinedNames } from '../../src/record/reading/headRows.js';
import { parseUnit } from '../../src/units/index.js';

describe('what a name says', () => {
  test.each([
    ['time', 't, Time, test time, Zeit, Uhrzeit, Prüfzeit, temps, Durée, tiempo, hora, tempo, timestamp, 时间, TestTime'],
    ['force', 'F, Force, load, Axial Load, Kraft, Prüfkraft, Last, effort, Charge, fuerza, forza, força, Loadcell, 载荷, 力, 试验力'],
    ['pressure', 'p, pressure, Öldruck, Hydraulikdruck, Druck, pression, presión, hydraulic, 压力'],
    ['extension', 'extension, Elongation, Verlängerung, Längenänderung, allongement, Wegaufnehmer, 伸长'],
    ['extension', 'extensometer, Extensometer 1, extensometers, AxialExtensometer1, extensomètre, clip gauge, clipgauge, clip-on, 引伸计'],
    ['travel', 'travel, Crosshead, cross head, Machine displacement, maschinenweg, Traverse, traversenweg, stroke, Kolbenweg, Hub'],
    ['travel', 'position, course, carrera, 横梁位移'],
    ['strain', 'e, eps, ε, strain, Dehnung, Bruchdehnung, déformation, deformación, 应变'],
    ['transverseStrain', 'transverse strain, transversal, transversale Dehnung, lateral, width, Querdehnung, Gesamtquerdehnung'],
    ['transverseStrain', 'quer, Querkontraktion, Breiten, Breitenmessung, Breitenänderung, 横向应变'],
    ['displacement', 'x, s, displacement, Weg, Messweg, déplacement, Verschiebung, LVDT, dial, 位移'],
    [
      'ignored',
      'true strain, wahre Dehnung, wahrer Weg, vrai, vraie, deformación verdadera, alargamiento verdadero, deformação verdadeira',
    ],
    [
      'ignored',
      'real, reale, deformaciones reales, reales Weg, stress, Spannung, Zugspannung, Sollweg, Kraft max, max force, 应力, 真应变',
    ],
    ['ignored', 'Temp, temperatur, temperature, Status, Nr., set point, setpoint, rate, speed, energy'],
    ['unknown', 'a, channel, loads, forces, Krafttest, timer, tt, ff, pp, xs, ee, es, fe, px, te, xx, 力x, x力, Dehnungs, Wegmarke'],
    ['unknown', 'zeitlich, Prüfzeiten, hubraum, Mitkraftwerk, Spannungsart, realism'],
  ] as const)('%s: %s', (meaning, names) => {
    for (const name of names.split(', ')) expect(meaningOfName(name), name).toBe(meaning);
  });

  test('signs between words, case and accents do not count', () => {
    expect(meaningOfName(' t ')).toBe('time');
    expect(meaningOfName('')).toBe('unknown');
    for (const name of [
      'cross_head',
      'Cross-Head',
      'CROSS.HEAD',
      'cross/head',
      'cross:head',
      '[cross] (head)',
      '{cross}#"head\'',
      ' cross  head ',
    ])
      expect(meaningOfName(name), name).toBe('travel');
    expect(meaningOfName('GRÖSSE Kraft')).toBe('force');
    expect(meaningOfName('Weiß')).toBe('unknown');
  });
});

test('names of raw readings', () => {
  const raw =
    'counts, Count, ADC 1, raw force, digit, digits, Inkrement, Inkremente, tick, ticks, Rohwert, Rohwerte, Kraft mV, Kraft m V, mv';
  for (const name of `${raw}, volt, volts, mA, ma, cuentas, bit, bits, LSB`.split(', ')) expect(isCounts(name), name).toBe(true);
  for (const name of ['', 'Force', 'counter', 'account', 'mVa', 'drawn', 'bitsy']) expect(isCounts(name), name).toBe(false);
});

describe('a unit that stands with its name', () => {
  test.each([
    ['Force [kN]', 'Force', 'kN'],
    ['Force [ kN ] ', 'Force', 'kN'],
    ['Force(kN)', 'Force', 'kN'],
    ['Force {kN}', 'Force', 'kN'],
    ['Force <kN>', 'Force', 'kN'],
    ['Kraft in kN', 'Kraft', 'kN'],
    ['effort en kN', 'effort', 'kN'],
    ['força em kN', 'força', 'kN'],
    ['forza su kN', 'forza', 'kN'],
    ['Kraft  IN  kN', 'Kraft', 'kN'],
    ['Force / kN', 'Force', 'kN'],
    ['Force/kN', 'Force', 'kN'],
    ['stress / N/mm²', 'stress', 'N/mm²'],
    ['Force_kN', 'Force', 'kN'],
    ['Force, kN', 'Force', 'kN'],
    ['Force: kN', 'Force', 'kN'],
    ['Force - kN', 'Force', 'kN'],
    ['max_Force_kN', 'max_Force', 'kN'],
    ['Force.kN', 'Force', 'kN'],
    ['Force..kN.', 'Force', 'kN'],
    ['Force kN', 'Force', 'kN'],
    ['Force  kN', 'Force', 'kN'],
    ['Force , kN', 'Force', 'kN'],
    ['Axial force kN', 'Axial force', 'kN'],
  ])('%s', (text, name, unit) => {
    expect(splitName(text)).toEqual({ name, unit });
  });

  test('a bracket with a unit that is not known is one all the same, with a word of the trade it is none', () => {
    expect(splitName('Force [stone]')).toEqual({ name: 'Force', unit: 'stone' });
    expect(splitName('Force (crosshead)')).toEqual({ name: 'Force (crosshead)', unit: undefined });
    expect(splitName('Force()')).toEqual({ name: 'Force()', unit: undefined });
    expect(splitName('[stone]')).toEqual({ name: '[stone]', unit: undefined });
    expect(splitName('[kN]')).toEqual({ name: '[kN]', unit: undefined });
    expect(splitName('Force')).toEqual({ name: 'Force', unit: undefined });
    for (const text of ['Force [kN] x', 'Force in kN today', 'Force / kN peak', 'Force.kN peak', 'Force_kN peak', '/kN', ' kN'])
      expect(splitName(text)).toEqual({ name: text, unit: undefined });
  });
});

describe('what a column holds, by name and unit together', () => {
  const of = (name: string, unit?: string, kind: NamedColumn['kind'] = 'number'): Meaning => {
    const parsed = unit === undefined ? undefined : parseUnit(unit);
    return meaningOf({ index: 0, name, heading: name, unit: parsed?.unit, dimension: parsed?.dimension, blankUnit: false, kind }).meaning;
  };
  test.each([
    ['anything', undefined, 'clock', 'time'],
    ['channel 1', 'kN', 'number', 'force'],
    ['channel 1', 's', 'number', 'time'],
    ['channel 1', 'mm', 'number', 'unknown'],
    ['channel 1', undefined, 'number', 'unknown'],
    ['', 'kN', 'number', 'unknown'],
    ['Extensometer', '%', 'number', 'strain'],
    ['Extensometer', 'mm', 'number', 'extension'],
    ['Strain', 'mm', 'number', 'extension'],
    ['Strain', '%', 'number', 'strain'],
    ['Width change', 'mm', 'number', 'ignored'],
    ['Width change', '%', 'number', 'transverseStrain'],
    ['Crosshead', '%', 'number', 'ignored'],
    ['Crosshead', 'mm', 'number', 'travel'],
    ['Load', 'MPa', 'number', 'ignored'],
    ['Load', 'kN', 'number', 'force'],
    ['Pressure', 'kN', 'number', 'force'],
    ['Pressure', 'bar', 'number', 'pressure'],
    ['Pressure', undefined, 'number', 'pressure'],
  ] as const)('%s %s, cells of %s: %s', (name, unit, kind, meaning) => {
    expect(of(name, unit, kind)).toBe(meaning);
  });

  test('an extensometer by name is more than an extension', () => {
    const qualified = (name: string) =>
      meaningOf({ index: 0, name, heading: name, unit: undefined, dimension: undefined, blankUnit: false, kind: 'number' }).qualified;
    expect(qualified('Extensometer')).toBe(true);
    expect(qualified('Extension')).toBe(false);
    expect(qualified('Crosshead')).toBe(false);
    expect(
      meaningOf({ index: 0, name: 'Extensometer', heading: '', unit: undefined, dimension: undefined, blankUnit: false, kind: 'clock' })
        .qualified,
    ).toBe(false);
  });
});

describe('rows above the numbers', () => {
  test.each([
    [['s', 'kN', 'mm'], true],
    [['[s]', '(kN)', '{mm}', '<%>'], true],
    [['', 's', '', '', 'kN'], true],
    [['s', 'm[m', 'k(N', 'a'], false],
    [['s', 'm]m', 'k)N', 'a'], false],
    [['N/mm2', '1'], true],
    [['s', 'a', 'mm'], true],
    [['s', 'b', 'c'], false],
    [['s', 'b'], true],
    [['1', '1'], false],
    [['1', 'kN'], true],
    [['s', 'Force', 'mm'], false],
    [['', ''], false],
    [[], false],
    [['s', 'kN)x', 'mm'], true],
  ])('%j as units: %s', (row, is) => {
    expect(isUnitsRow(row)).toBe(is);
  });

  test('a unit in brackets stays with its name where a space separates', () => {
    expect(joinedNames(['Time', '[s]', 'Force', '(kN)'], 2)).toEqual(['Time [s]', 'Force (kN)']);
    expect(joinedNames(['Time', '[', 's', ']', 'Force'], 2)).toEqual(['Time [ s ]', 'Force']);
    expect(joinedNames(['Time', '[milli', 's]', 'Force'], 2)).toEqual(['Time [milli s]', 'Force']);
    expect(joinedNames(['[s]', 'Force'], 2)).toEqual(['[s]', 'Force']);
    expect(joinedNames(['[s]', 'Force', '(kN)'], 2)).toEqual(['[s]', 'Force (kN)']);
    expect(joinedNames(['Time', 'Force', 'kN'], 2)).toEqual([]);
    expect(joinedNames(['Time', '[s]'], 2)).toEqual(['Time', '[s]']);
    expect(joinedNames(['c', 'a[b]'], 1)).toEqual([]);
    expect(joinedNames(['a[b]', 'c', '(d)'], 2)).toEqual(['a[b]', 'c (d)']);
  });
});
