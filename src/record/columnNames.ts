import { InputError, type ColumnName } from '../base/index.js';
import { parseUnit, type Dimension, type Unit } from '../units/index.js';

/** @internal A column of a file: its name, and the unit that stands with it. */
export interface NamedColumn {
  readonly index: number;
  readonly name: string;
  readonly unit: Unit | undefined;
  readonly dimension: Dimension | undefined;
  /** True where a units row has an empty cell: without dimension, that says. */
  readonly blankUnit: boolean;
}

/** Words of the trade in English, German, French and Spanish, accents and case taken off; whole words, longest meaning first. */
const words: readonly (readonly [ColumnName | 'ignored' | 'displacement', RegExp])[] = [
  [
    'ignored',
    /\b(true|wahre|wahrer|vraie?|verdadera?|real(es)?|stress|spannung|contrainte|tension mecanica|esfuerzo|temperature?|temperatur|temperatura|status|index|nr|no|cycle|zyklus)\b/,
  ],
  [
    'time',
    /^(t|time|zeit|temps|tiempo|elapsed time|test time|prufzeit|versuchszeit|laufzeit|messzeit|duree|duracion|total time)$|\b(time|zeit|temps|tiempo)\b|prufzeit|versuchszeit|laufzeit|messzeit/,
  ],
  ['transverseStrain', /\b(transverse|transversal\w*|lateral|width|quer\w*|breiten\w*|transversale)\b|querdehnung|breitenanderung/],
  ['pressure', /^p$|\b(pressure|oil pressure|druck|oldruck|pression|presion|hydraulic)\b|oldruck|hydraulikdruck/],
  ['force', /^f$|\b(force|load|kraft|last|prufkraft|standardkraft|zugkraft|effort|charge|fuerza|carga)\b|kraft$/],
  [
    'travel',
    /\b(travel|crosshead|cross head|machine|traverse|traversenweg|stroke|kolbenweg|kolben|hub|maschinenweg|position|course|vérin|verin|piston|actuator|ram|carrera|cruceta|cabezal|mordazas|grip separation|bewegung)\b|traversenweg|maschinenweg|kolbenweg/,
  ],
  [
    'extension',
    /\b(extension|extensometer|extensometre|extensometro|elongation|verlangerung|langenanderung|ansetzaufnehmer|feinwegaufnehmer|allongement|alargamiento|elongacion|wegaufnehmer)\b/,
  ],
  ['strain', /^(e|eps|epsilon|ε)$|\b(strain|dehnung|deformation|deformacion)\b/],
  ['displacement', /^(x|s)$|\b(displacement|weg|deplacement|desplazamiento|verschiebung)\b/],
];

const plain = (name: string): string =>
  name
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[_.\-/:]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** Where a unit stands in a name: [kN], (kN), "in kN", "/ kN", "_kN", ", kN" or as the last word. */
const unitPlaces = [
  /^(.*?)\s*[[({<]\s*([^\])}>]*)\s*[\])}>]\s*$/,
  /^(.+?)\s+(?:in|en)\s+(\S+)$/i,
  /^(.+?)\s*\/\s*(\S+(?:\/\S+)?)$/,
  /^(.+?)[_,]\s*([^\s_,]+)$/,
  /^(.+?)\s+(\S+)$/,
];

/** @internal Splits a name into name and unit. */
export function splitName(text: string): { readonly name: string; readonly unit: string | undefined } {
  for (const place of unitPlaces) {
    const [, name, unit] = place.exec(text) ?? [];
    if (name !== undefined && unit !== undefined && name !== '' && parseUnit(unit)) return { name: name.trim(), unit };
  }
  // a bracket that holds no unit that is known is still a unit
  const [, name, unit] = unitPlaces[0]!.exec(text) ?? [];
  return name !== undefined && unit !== undefined && name !== '' && unit !== '' ? { name, unit } : { name: text, unit: undefined };
}

/** @internal What a column holds, by its name and the dimension of its unit. */
export function meaningOf(column: NamedColumn): ColumnName | 'ignored' | 'displacement' | 'unknown' {
  const name = plain(column.name);
  const found = words.find(([, pattern]) => pattern.test(name))?.[0] ?? 'unknown';
  const { dimension } = column;
  if (found === 'extension' && dimension === 'strain') return 'strain';
  if ((found === 'strain' || found === 'transverseStrain') && dimension === 'length') return found === 'strain' ? 'extension' : 'ignored';
  if (found === 'travel' && dimension === 'strain') return 'ignored';
  if (found === 'force' && dimension === 'stress') return 'ignored';
  return found;
}

/** @internal Dimension that each column must have. */
export const dimensions: Readonly<Record<ColumnName, Dimension>> = {
  force: 'force',
  pressure: 'stress',
  extension: 'length',
  travel: 'length',
  strain: 'strain',
  transverseStrain: 'strain',
  time: 'time',
};

/** @internal Why a strain column is not in use. */
export const SERVES = 'the extension serves';

/** @internal Which column serves for what. `ignored` says why another does not. */
export interface Assignment {
  readonly used: ReadonlyMap<ColumnName, NamedColumn>;
  readonly ignored: readonly { readonly column: NamedColumn; readonly why: string }[];
}

/** @internal Assigns columns to quantities; `given` decides first. */
export function assignColumns(columns: readonly NamedColumn[], given: ReadonlyMap<ColumnName, NamedColumn>): Assignment {
  const used = new Map(given);
  const ignored: { column: NamedColumn; why: string }[] = [];
  const taken = new Set([...given.values()].map(({ index }) => index));
  const free = columns.filter(({ index }) => !taken.has(index)).map((column) => ({ column, meaning: meaningOf(column) }));
  // a plain displacement is the extensometer's beside a qualified travel, else the crosshead's
  const qualified = used.has('travel') || free.some(({ meaning }) => meaning === 'travel');
  const measured = used.has('extension') || free.some(({ meaning }) => meaning === 'extension');
  const candidates = new Map<ColumnName, NamedColumn[]>();
  for (const { column, meaning } of free) {
    const quantity = meaning === 'displacement' ? (qualified && !measured ? 'extension' : qualified ? 'ignored' : 'travel') : meaning;
    if (quantity === 'ignored' || quantity === 'unknown')
      ignored.push({ column, why: quantity === 'unknown' ? 'its name is not known' : 'it is not needed' });
    else if (used.has(quantity)) ignored.push({ column, why: `another column was chosen for ${quantity}` });
    else candidates.set(quantity, [...(candidates.get(quantity) ?? []), column]);
  }
  for (const [quantity, list] of candidates) {
    // of several, those whose unit is of the right kind
    const fitting = list.filter(({ dimension }) => dimension === dimensions[quantity]);
    const choice = fitting.length > 0 ? fitting : list;
    if (choice.length > 1)
      throw new InputError(
        'readRecord',
        `options.columns.${quantity}`,
        'ambiguous',
        `must name one of the columns ${choice.map(({ name }) => `'${name}'`).join(', ')}`,
        `${choice.length} candidates`,
      );
    used.set(quantity, choice[0]!);
  }
  const drop = (name: ColumnName, why: string): void => {
    const column = used.get(name);
    if (!column || given.has(name)) return;
    used.delete(name);
    ignored.push({ column, why });
  };
  if (used.has('force')) drop('pressure', 'the force serves');
  if (used.has('extension')) drop('strain', SERVES);
  return { used, ignored };
}
