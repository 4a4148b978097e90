import { dimensionOf } from './engine.js';
import { measures, type Dimension, type Unit } from './measures.js';

/** Spellings of loggers in lower case, spaces left out, squares as ². */
const spellings: Readonly<Record<string, Unit>> = {
  newton: 'N',
  newtons: 'N',
  kilonewton: 'kN',
  dekanewton: 'daN',
  decanewton: 'daN',
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
  mils: 'mil',
  thou: 'mil',
  sec: 's',
  secs: 's',
  second: 's',
  seconds: 's',
  sek: 's',
  sekunden: 's',
  secondes: 's',
  seg: 's',
  segundos: 's',
  msec: 'ms',
  minute: 'min',
  minutes: 'min',
  minuten: 'min',
  minutos: 'min',
  hr: 'h',
  hours: 'h',
  'mm/sec': 'mm/s',
  'in/sec': 'in/s',
  'nmm²': 'N/mm²',
  'n/m²': 'Pa',
  'kn/mm²': 'GPa',
  'kp/mm²': 'kgf/mm²',
  'kg/mm²': 'kgf/mm²',
  'kp/cm²': 'kgf/cm²',
  'kg/cm²': 'kgf/cm²',
  'lbf/in²': 'psi',
  'lb/in²': 'psi',
  kpsi: 'ksi',
  percent: '%',
  prozent: '%',
  pct: '%',
  '-': '1',
  '/': '1',
  '[]': '1',
  'm/m': '1',
  'in/in': 'mm/mm',
  'mm/m': '‰',
  'um/m': 'µm/m',
  ue: 'µε',
  microstrain: 'µε',
  ustrain: 'µε',
  µstrain: 'µε',
  degree: 'deg',
  degrees: 'deg',
  'n*mm': 'N·mm',
  nmm: 'N·mm',
};

/** Spellings that would be something else in other letters: Nm a work, nm a length; MN/m² and mN/m². */
const exactSpellings: Readonly<Record<string, Unit>> = { Nm: 'J', 'N·m': 'J', kNmm: 'J', 'kN·mm': 'J', 'MN/m²': 'MPa' };

/** Units that other letters would turn into another unit: MN and mN, MJ, Mbar. */
const ownLettersOnly: readonly string[] = ['MN', 'mN', 'mJ', 'mbar'];

/** Texts that are close to a unit but are another: 1e-9 of it, a bare prefix, siemens. */
const otherUnits: readonly string[] = ['mPa', 'M', 'S'];

const all = Object.values(measures).flatMap((factors) => Object.keys(factors)) as Unit[];

/** @internal Names of the units of a dimension, as a message lists them. */
export const unitNames = (dimension: Dimension): string => Object.keys(measures[dimension]).join(', ');

const lookUp = (table: Readonly<Record<string, Unit>>, text: string): Unit | undefined =>
  Object.hasOwn(table, text) ? table[text] : undefined;

/** @internal A unit as loggers write it, with its dimension; undefined where it is not known. */
export function parseUnit(text: string): { readonly unit: Unit; readonly dimension: Dimension } | undefined {
  const plain = text
    .replace(/\s+/g, '')
    .replace(/\u03bc/g, 'µ')
    .replace(/([a-z])(\^|\*\*)?2$/i, '$1²')
    .replace(/[*.](?=mm$|m$|lbf$)/g, '·')
    .replace(/([a-z])\.$/i, '$1');
  if (otherUnits.includes(plain)) return undefined;
  const lower = plain.toLowerCase();
  const unit =
    all.find((one) => one === plain) ??
    lookUp(exactSpellings, plain) ??
    lookUp(spellings, lower) ??
    all.find((one) => one.toLowerCase() === lower && !ownLettersOnly.includes(one));
  const dimension = unit && dimensionOf(unit);
  return unit && dimension ? { unit, dimension } : undefined;
}
