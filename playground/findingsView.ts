import type { Severity } from '../src/index.js';
import { button, choice, h, labelled } from './element.js';
import type { SpokenFinding } from './speech.js';
import { tongues, type Tongue } from './tongues.js';
import { fill, words } from './words.js';

/** Findings first: faults and cautions in full, notes behind a fold. */
export function findingsView(speak: (language: Tongue) => void) {
  const language = choice(tongues, { id: 'language' });
  language.addEventListener('change', () => {
    speak(language.value as Tongue);
  });
  const list = h('div', {}, h('p', { class: 'soft' }, words.findings.waiting));
  const element = h(
    'section',
    { 'aria-labelledby': 'findings-heading', id: 'findings', tabindex: -1 },
    h('h2', { id: 'findings-heading' }, words.findings.heading),
    h('div', { class: 'fields' }, labelled(words.findings.language, language)),
    list,
  );
  const item = ({ severity, message, remedy }: SpokenFinding): HTMLLIElement =>
    h(
      'li',
      { class: severity },
      h('strong', { class: 'severity' }, words.findings.severities[severity]),
      h('span', { lang: language.value }, message),
      h('span', { class: 'remedy', lang: language.value }, remedy),
    );
  const listOf = (found: readonly SpokenFinding[]): HTMLUListElement => h('ul', { class: 'findings' }, ...found.map(item));
  /** Shows findings, below what was assumed in place of a piece that nobody has described. */
  const update = (findings: readonly SpokenFinding[], spokenIn: Tongue, assumed: string): void => {
    language.value = spokenIn;
    const of = (severity: Severity): SpokenFinding[] => findings.filter((one) => one.severity === severity);
    const [faults, cautions, notes] = [of('fault'), of('caution'), of('note')];
    const open = list.querySelector('details')?.open === true;
    list.replaceChildren(
      ...(assumed === '' ? [] : [h('p', { class: 'assumed' }, assumed)]),
      h(
        'p',
        { class: 'soft' },
        findings.length === 0
          ? words.findings.none
          : fill(words.findings.count, { faults: faults.length, cautions: cautions.length, notes: notes.length }),
      ),
      ...(faults.length + cautions.length > 0 ? [listOf([...faults, ...cautions])] : []),
      ...(notes.length > 0
        ? [h('details', { open }, h('summary', {}, fill(words.findings.notes, { count: notes.length })), listOf(notes))]
        : []),
    );
  };
  /** Takes the findings of a record away, and says so; where a field is at fault, a button leads there. */
  const clear = (text: string, toField?: () => void): void => {
    list.replaceChildren(h('p', { class: 'soft' }, text), ...(toField ? [button(words.findings.toField, toField)] : []));
  };
  return { element, update, clear };
}
