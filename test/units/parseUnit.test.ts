import { describe, expect, test } from 'vitest';
import { parseUnit } from '../../src/units/index.js';
import { measures } from '../../src/units/measures.js';

test('every unit reads as itself, with its dimension', () => {
  for (const [dimension, factors] of Object.entries(measures))
    for (const unit of Object.keys(factors)) expect(parseUnit(unit)).toEqual({ unit, dimension });
});

describe('as loggers write them', () => {
  test.each([
    ['KN', 'kN'],
    ['kn', 'kN'],
    [' N ', 'N'],
    ['Newton', 'N'],
    ['kp', 'kgf'],
    ['lbs', 'lbf'],
    ['kips', 'kip'],
    ['MM', 'mm'],
    ['Inch', 'in'],
    ['"', 'in'],
    ['\u03bcm', 'µm'],
    ['um', 'µm'],
    ['mils', 'mil'],
    ['mm2', 'mm²'],
    ['mm^2', 'mm²'],
    ['mm**2', 'mm²'],
    ['in2', 'in²'],
    ['mpa', 'MPa'],
    ['N/mm2', 'N/mm²'],
    ['N / mm^2', 'N/mm²'],
    ['MN/m2', 'MPa'],
    ['kN/mm²', 'GPa'],
    ['BAR', 'bar'],
    ['lbf/in2', 'psi'],
    ['KSI', 'ksi'],
    ['kgf/mm2', 'kgf/mm²'],
    ['kg/cm2', 'kgf/cm²'],
    ['sec', 's'],
    ['Sek.', 's'],
    ['msec', 'ms'],
    ['Minuten', 'min'],
    ['minutes', 'min'],
    ['seg', 's'],
    ['mm/sec', 'mm/s'],
    ['mm/min', 'mm/min'],
    ['in/min', 'in/min'],
    ['Prozent', '%'],
    ['-', '1'],
    ['m/m', '1'],
    ['in/in', 'mm/mm'],
    ['mm/m', '‰'],
    ['\u03bcm/m', 'µm/m'],
    ['\u03bcε', 'µε'],
    ['microstrain', 'µε'],
    ['Nm', 'J'],
    ['N.m', 'J'],
    ['N*mm', 'N·mm'],
    ['N mm', 'N·mm'],
    ['ft*lbf', 'ft·lbf'],
    ['in.lbf', 'in·lbf'],
    ['degrees', 'deg'],
    ['DEG', 'deg'],
  ])('%s is %s', (text, unit) => {
    expect(parseUnit(text)?.unit).toBe(unit);
  });
});

test('what would be a guess is not read', () => {
  for (const text of [
    '',
    ' ',
    'V',
    'mA',
    '°C',
    'counts',
    'mn',
    'mn',
    'MJ',
    'mPa',
    'nm',
    'M',
    'S',
    'Mbar',
    'mN/m2',
    'toString',
    '__proto__',
    '2',
    'N2',
  ])
    expect(parseUnit(text), text).toBeUndefined();
});
