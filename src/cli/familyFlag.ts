import type { Option } from 'commander';
import { materialFamilies } from '../materials/index.js';
import { choiceOption } from './flags.js';

const all = materialFamilies.map(({ key }) => key);

/** Families that a grade or a metal may mean: structural grades begin with S and their yield strength. */
function familiesMeant(text: string, keys: readonly string[]): readonly string[] {
  if (/^S\d{3}/i.test(text)) return ['structural-steel'];
  const word = text.toLowerCase().replace('aluminum', 'aluminium');
  return keys.filter((key) => key.includes(word));
}

/** The flag of the family of the metal, of all or of some. */
export const familyOption = (description: string, keys: readonly string[] = all): Option =>
  choiceOption('--family <key>', description, keys, (text) => familiesMeant(text, keys));
