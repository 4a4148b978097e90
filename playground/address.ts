import type { ReadOptions } from '../src/index.js';
import { rows, type AssumptionKey, type Assumptions } from './assumptions.js';
import type { Source } from './protocol.js';
import { seeds, usualScenario, type Scenario } from './scenario.js';
import { emptyState, type State } from './state.js';
import { tongueOf, type Tongue } from './tongues.js';

/** What a source is, as entries of the address; of a file only that it was one. */
function sourceEntries(source: Source): [string, string][] {
  if (source.from === 'made')
    return [['from', 'made'], ...Object.entries(source.scenario).map(([key, value]): [string, string] => [key, String(value)])];
  if (source.from === 'exercise')
    return [
      ['from', 'exercise'],
      ['name', source.name],
    ];
  return [['from', source.from]];
}

/** The state as the part of an address behind the #. */
export function encode({ source, assumptions, basis, read, language }: State): string {
  const entries = sourceEntries(source);
  entries.push(['language', language]);
  entries.push(['shape', assumptions.shape], ['limits', assumptions.limits]);
  if (basis.shape !== assumptions.shape) entries.push(['b.shape', basis.shape]);
  if (basis.limits !== assumptions.limits) entries.push(['b.limits', basis.limits]);
  for (const { key } of rows) {
    const [now, before] = [assumptions.values[key], basis.values[key]];
    if (now !== undefined) entries.push([key, String(now)]);
    if (before !== now) entries.push([`b.${key}`, before === undefined ? '' : String(before)]);
  }
  if (Object.keys(read).length > 0) entries.push(['read', JSON.stringify(read)]);
  return new URLSearchParams(entries).toString();
}

const oneOf = <Word extends string>(given: string | null, words: readonly Word[], otherwise: Word): Word =>
  words.find((word) => word === given) ?? otherwise;

function scenarioOf(entries: URLSearchParams): Scenario {
  const seed = Number(entries.get('seed') ?? NaN);
  return {
    material: entries.get('material') ?? usualScenario.material,
    frame: oneOf(entries.get('frame'), ['soft', 'stiff', 'extensometer'], usualScenario.frame),
    hand: oneOf(entries.get('hand'), ['even', 'strokes', 'rest'], usualScenario.hand),
    samples: oneOf(entries.get('samples'), ['few', 'usual', 'many'], usualScenario.samples),
    seed: Number.isInteger(seed) && seed >= seeds.least && seed <= seeds.most ? seed : usualScenario.seed,
  };
}

function sourceOf(entries: URLSearchParams): Source {
  switch (entries.get('from')) {
    case 'made':
      return { from: 'made', scenario: scenarioOf(entries) };
    case 'exercise':
      return { from: 'exercise', name: entries.get('name') ?? '' };
    case 'file':
      return { from: 'file', name: '' };
    default:
      return { from: 'nothing' };
  }
}

function assumptionsOf(entries: URLSearchParams, before: boolean): Assumptions {
  const get = (key: string): string | null => (before ? entries.get(`b.${key}`) : null) ?? entries.get(key);
  const values: Partial<Record<AssumptionKey, number>> = {};
  for (const { key } of rows) {
    const text = get(key);
    if (text !== null && text !== '' && Number.isFinite(Number(text))) values[key] = Number(text);
  }
  return {
    shape: oneOf(get('shape'), ['round', 'flat'], 'round'),
    limits: oneOf(get('limits'), ['samples', 'stress'], 'samples'),
    values,
  };
}

/** Options of reading from an address: what is no object of them is left out. */
function readOf(text: string | null): ReadOptions {
  try {
    const given: unknown = JSON.parse(text ?? '{}');
    return typeof given === 'object' && given !== null ? given : {};
  } catch {
    return {};
  }
}

/** The state of an address, in a language where it names none; `settings` tells whether it holds assumptions, or a source alone. */
export function decode(hash: string, otherwise: Tongue = 'en'): { readonly state: State; readonly settings: boolean } {
  const entries = new URLSearchParams(hash.replace(/^#/, ''));
  const source = sourceOf(entries);
  const settings = entries.has('shape');
  const language = tongueOf([entries.get('language') ?? '']) ?? otherwise;
  if (!settings) return { state: { ...emptyState, source, language }, settings };
  const [assumptions, basis] = [assumptionsOf(entries, false), assumptionsOf(entries, true)];
  return { state: { source, assumptions, basis, read: readOf(entries.get('read')), language }, settings };
}
