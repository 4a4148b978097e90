import type { ColumnName } from '../../base/index.js';
import { parseUnit, type Dimension, type Unit } from '../../units/index.js';
import type { CellKind } from './cells.js';

/** @internal A column of a file: its name, and the unit that stands with it. */
export interface NamedColumn {
  readonly index: number;
  readonly name: string;
  /** The whole heading, unit included. */
  readonly heading: string;
  readonly unit: Unit | undefined;
  readonly dimension: Dimension | undefined;
  /** True where a units row has an empty cell: without dimension, that says. */
  readonly blankUnit: boolean;
  /** What its cells are, as far as was looked. */
  readonly kind: CellKind;
}

/** @internal What a name can say. */
export type Meaning = ColumnName | 'ignored' | 'displacement' | 'unknown';

/**
 * Words of the trade in English, German, French, Spanish, Italian, Portuguese, Chinese and Japanese, accents and case taken off; what
 * qualifies a word goes before the word.
 */
const words: readonly (readonly [Meaning, RegExp])[] = [
  [
    'ignored',
    /\b(true|wahre[rs]?|vraie?|verdadei?r[ao]|vero|vera|real(es)?|reale|stress|spannung|contrainte|tension mecanica|esfuerzo|sforzo|tensao|temp|temperature?|temperatura|status|index|nr|no|cycle|zyklus|peak|max|min|maximum|minimum|set ?point|target|command|demand|soll|sollwert|sollweg|consigne|rate|speed|velocity|geschwindigkeit|vitesse|velocidad|velocita|velocidade|energy|energie|work|arbeit)\b|spannung$|应力|応力|温度|速度|真/,
  ],
  ['time', /^t$|\b(time|zeit|uhrzeit|temps|tiempo|hora|heure|duree|duracion|tempo|durata|timestamp|zeitstempel)\b|\wzeit$|时间|時間/],
  [
    'transverseStrain',
    /\b(transverse|transversal\w*|lateral|latitudinal|width|quer\w*|breiten\w*|larghezza|trasversale)\b|querdehnung|breitenanderung|横向/,
  ],
  ['pressure', /^p$|\b(pressure|druck|pression|presion|pressione|pressao|hydraulic)\b|(ol|hydraulik)druck|压力|油压|圧力/],
  [
    'force',
    /^f$|\b(force|load|kraft|last|effort|charge|fuerza|carga|forza|carico|forca|loadcell|kraftaufnehmer)\b|kraft$|载荷|负荷|荷载|荷重|^力$|拉力|试验力/,
  ],
  [
    'extension',
    /\b(extensometre|extensometro|estensometro|dehnungsaufnehmer|ansetzaufnehmer|feinwegaufnehmer|feindehnungsmesser|dehnungsmesser|clip ?gauge|clip on)\b|extensometer|引伸计/,
  ],
  [
    'travel',
    /\b(travel|crosshead|cross head|machine|maschine\w*|traverse\w*|stroke|kolben\w*|hub|position|course|verin|piston|actuator|ram|carrera|recorrido|cruceta|cabezal|mordazas|grip|bewegung|traversa|corsa|travessa|curso|maquina|macchina)\b|横梁|行程|夹头/,
  ],
  [
    'extension',
    /\b(wegaufnehmer|extension|elongation|verlangerung|langenanderung|allongement|alargamiento|elongacion|allungamento|alongamento)\b|伸长|变形|伸び/,
  ],
  ['strain', /^(e|eps|epsilon|ε)$|\b(strain|dehnung|deformation|deformacion|deformazione|deformacao)\b|dehnung$|应变|ひずみ/],
  [
    'displacement',
    /^(x|s)$|\b(deflection|durchbiegung|fleche|flecha|freccia|compression|stauchung|ecrasement|compresion|compressione|compressao|displacement|weg|deplacement|desplazamiento|verschiebung|spostamento|deslocamento|lvdt|dial)\b|weg$|位移|変位|挠度|压缩量|たわみ|圧縮量/,
  ],
];
/** Words of raw readings: counts of a converter, of an encoder, of electric signals. */
const counts = /\b(counts?|adc|raw|digits?|inkremente?|ticks?|rohwert\w*|m ?v|volts?|m ?a|cuentas|bits?|lsb)\b/;

const plain = (name: string): string =>
  name
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .replace(/[_.\-/:[\](){}#"']/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** @internal What a name says by itself; the place of the word is how strongly it is qualified. */
function wordOf(name: string): { readonly meaning: Meaning; readonly qualified: boolean } {
  const text = plain(name);
  const at = words.findIndex(([, pattern]) => pattern.test(text));
  const meaning = words[at]?.[0] ?? 'unknown';
  return { meaning, qualified: at === words.findIndex(([one]) => one === 'extension') };
}

/** @internal What a name says by itself. */
export const meaningOfName = (name: string): Meaning => wordOf(name).meaning;

/** @internal True for a name of raw readings. */
export const isCounts = (name: string): boolean => counts.test(plain(name));

/** Where a unit stands in a name: [kN], (kN), "in kN", "/ kN", "_kN", ", kN", "..kN." or as the last word. */
const unitPlaces = [
  /^(.*?)\s*[[({<]\s*([^\])}>]*?)\s*[\])}>]\s*$/,
  /^(.+?)\s+(?:in|en|em|su)\s+(\S+)$/i,
  /^(.+?)\s*\/\s*(\S+)$/,
  /^(.+?)(?:[_,:]|\s-)\s*([^\s_,]+)$/,
  /^(.+?)\.+([^.\s]+)\.*$/,
  /^(.+?)\s(\S+)$/,
];

/** @internal The unit of a column: capitals too, and S (else siemens) where the name is of time. */
export const unitBeside = (name: string, unit: string): ReturnType<typeof parseUnit> =>
  parseUnit(unit) ?? (unit === 'S' && meaningOfName(name) === 'time' ? parseUnit('s') : undefined);

/** @internal Splits a name into name and unit. */
export function splitName(text: string): { readonly name: string; readonly unit: string | undefined } {
  for (const place of unitPlaces) {
    const [, name, unit] = place.exec(text) ?? [];
    if (name && unit && unitBeside(name, unit)) return { name: name.trim(), unit };
  }
  // a bracket that holds no unit that is known is still one, unless it holds a word of the trade
  const [, name, unit] = unitPlaces[0]!.exec(text) ?? [];
  return name && unit && meaningOfName(unit) === 'unknown' ? { name, unit } : { name: text, unit: undefined };
}

/** Meaning of a name that says nothing, where its unit leaves no choice. */
const byDimension: Partial<Record<Dimension, Meaning>> = { force: 'force', time: 'time' };

/** @internal What a column holds, by its name and the dimension of its unit. */
export function meaningOf({ name, dimension, kind }: NamedColumn): { readonly meaning: Meaning; readonly qualified: boolean } {
  if (kind === 'clock') return { meaning: 'time', qualified: false };
  const { meaning: found, qualified } = wordOf(name);
  const as = (meaning: Meaning) => ({ meaning, qualified });
  if (found === 'unknown' && name !== '') return as((dimension && byDimension[dimension]) ?? 'unknown');
  if (found === 'extension' && dimension === 'strain') return as('strain');
  if (found === 'strain' && dimension === 'length') return as('extension');
  // what a beam bends or a piece is pressed by is of the piece only where a gauge measured it: alone it counts as travel
  if (found === 'displacement' && dimension === 'strain' && /compress|stauchung/.test(plain(name))) return as('strain');
  if (found === 'transverseStrain' && dimension === 'length') return as('ignored');
  if (found === 'travel' && dimension === 'strain') return as('ignored');
  if (found === 'force' && dimension === 'stress') return as('ignored');
  if (found === 'pressure' && dimension === 'force') return as('force');
  return as(found);
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
