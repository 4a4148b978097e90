import { dimensionOf } from './engine.js';
import type { Dimension, Unit } from './measures.js';

/** Spellings of loggers that differ from the unit's own by more than signs and case. */
const spellings: Readonly<Record<string, Unit>> = {
  newton: 'N',
  newtons: 'N',
  kilonewton: 'kN',
  kp: 'kgf',
  kg: 'kgf',
  'kg-f': 'kgf',
  lb: 'lbf',
  lbs: 'lbf',
  klbf: 'kip',
  kips: 'kip',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  zoll: 'in',
  millimeter: 'mm',
  millimetre: 'mm',
  um: 'µm',
  mic: 'µm',
  mikrometer: 'µm',
  micron: 'µm',
  feet: 'ft',
  sec: 's',
  secs: 's',
  second: 's',
  seconds: 's',
  sek: 's',
  sekunden: 's',
  msec: 'ms',
  minute: 'min',
  minutes: 'min',
  hr: 'h',
  hours: 'h',
  'n/mm2': 'N/mm²',
  'n/mm^2': 'N/mm²',
  nmm2: 'N/mm²',
  'mn/m2': 'MPa',
  'kgf/mm2': 'kgf/mm²',
  'kgf/cm2': 'kgf/cm²',
  'kp/mm²': 'kgf/mm²',
  'kg/mm2': 'kgf/mm²',
  mm2: 'mm²',
  'mm^2': 'mm²',
  cm2: 'cm²',
  in2: 'in²',
  percent: '%',
  prozent: '%',
  pct: '%',
  '-': '1',
  '/': '1',
  '[]': '1',
  'm/m': '1',
  'in/in': 'mm/mm',
  'um/m': 'µm/m',
  ue: 'µε',
  microstrain: 'µε',
  ustrain: 'µε',
  degree: 'deg',
  degrees: 'deg',
  nm: 'J',
  'n·m': 'J',
  'n*mm': 'N·mm',
  nmm: 'N·mm',
};

/** Units whose letters differ by case alone would be confused without it: MPa and mPa, MN and mN. */
const exactOnly = new Set(['mN', 'mPa', 'M', 'S']);

/** @internal A unit as loggers write it, with its dimension; undefined where it is not known. */
export function parseUnit(text: string): { readonly unit: Unit; readonly dimension: Dimension } | undefined {
  const plain = text
    .trim()
    .replace(/\u03bc/g, 'µ')
    .replace(/\s+/g, '')
    .replace(/\*\*2/g, '²')
    .replace(/([*.])(?=mm|m$|lbf)/g, '·');
  const own = dimensionOf(plain);
  if (own) return { unit: plain as Unit, dimension: own };
  if (exactOnly.has(plain)) return undefined;
  const lower = plain.toLowerCase();
  const spelling = Object.hasOwn(spellings, lower) ? spellings[lower] : undefined;
  const unit = spelling ?? caseless().get(lower);
  const dimension = unit && dimensionOf(unit);
  return unit && dimension ? { unit, dimension } : undefined;
}

/** Units by their lower-case letters. */
function caseless(): Map<string, Unit> {
  const names: readonly Unit[] = [
    'N',
    'kN',
    'kgf',
    'lbf',
    'kip',
    'mm',
    'cm',
    'm',
    'µm',
    'in',
    'ft',
    's',
    'ms',
    'min',
    'h',
    'MPa',
    'kPa',
    'GPa',
    'Pa',
    'bar',
    'mbar',
    'psi',
    'ksi',
    'N/mm²',
    'kgf/mm²',
    'kgf/cm²',
    'mm/s',
    'mm/min',
    'in/min',
    'J',
    'kJ',
    'mm/mm',
    'µm/m',
    'deg',
    'rad',
    'mm²',
  ];
  return new Map(names.map((name) => [name.toLowerCase(), name]));
}
