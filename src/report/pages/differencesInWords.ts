import type { Section } from '../../base/index.js';
import type { Phrase } from '../../languages/index.js';
import type { ResultComparison } from '../../methods/index.js';
import { sectionInWords } from '../words/lineInWords.js';
import type { Presentation } from '../words/presentation.js';

type Difference = ResultComparison['differences'][number];

/** Names of what may differ; an option without one is told by its own name. */
const labels: Readonly<Record<string, Phrase>> = {
  hash: 'Hash of the columns',
  section: 'Section',
  gaugeLength: 'Gauge length L0',
  parallelLength: 'Parallel length Lc',
  extensometerLength: 'Base of the extensometer Le',
  effectiveLength: 'Effective length Leff',
  'afterFracture.gaugeLength': 'Gauge length after fracture Lu',
  'afterFracture.area': 'Area after fracture Su',
  'afterFracture.diameters': 'Diameters after fracture du',
  thickness: 'Thickness',
  ballDiameter: 'Ball',
  frameCompliance: 'compliance of the frame',
  family: 'Family of the metal',
  offsets: 'Plastic extensions of the proof strengths',
};

/** More numbers than these are counted, not listed. */
const LISTED = 6;

const isPlain = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isSection = (value: unknown): value is Section => isPlain(value) && 'shape' in value && 'dimensions' in value && 'area' in value;

function valueInWords(value: unknown, show: Presentation): string {
  if (value === undefined) return show.say('not given');
  if (typeof value === 'number') return show.number(value, 5);
  if (isSection(value)) return sectionInWords(value, show);
  if (Array.isArray(value))
    return value.length > LISTED
      ? show.say('{count} values', { count: value.length })
      : show.listed(value.map((one: unknown) => valueInWords(one, show)));
  if (isPlain(value)) return show.listed(Object.entries(value).map(([name, one]) => `${name} ${valueInWords(one, show)}`));
  return typeof value === 'string' ? value : JSON.stringify(value);
}

/** What two values differ in, down to single numbers and words, each by its path. */
function leaves(path: string, first: unknown, second: unknown): [path: string, first: unknown, second: unknown][] {
  const inner = [first, second].filter((one) => one !== undefined);
  if (!inner.every(isPlain) || inner.some(isSection))
    return JSON.stringify(first) === JSON.stringify(second) ? [] : [[path, first, second]];
  const names = [...new Set(inner.flatMap((one) => Object.keys(one)))];
  const of = (value: unknown, name: string): unknown => (isPlain(value) ? value[name] : undefined);
  return names.flatMap((name) => leaves(`${path}.${name}`, of(first, name), of(second, name)));
}

const parsed = (text: string | undefined): unknown => (text === undefined ? undefined : JSON.parse(text));

/** @internal What differs of record, piece, options and version as rows: where, what, and both values in words and figures for a reader. */
export function differencesInWords(differences: readonly Difference[], show: Presentation): string[][] {
  const { say } = show;
  const places = { record: say('Record'), piece: say('Test piece'), options: say('Options'), version: say('Version') } as const;
  return differences.flatMap(({ of, name, first, second }) =>
    leaves(name, parsed(first), parsed(second)).map(([path, one, other]) => {
      const label = labels[path];
      const what = of === 'version' ? '' : label === undefined ? path : say(label);
      return [places[of], what, valueInWords(one, show), valueInWords(other, show)];
    }),
  );
}
