import type { Finding, Severity } from '../src/index.js';
import { h } from './element.js';
import { fill, words } from './words.js';

/** Findings first: faults and cautions in full, notes behind a fold. */
export function findingsView() {
  const list = h('div', {}, h('p', { class: 'soft' }, words.findings.waiting));
  const element = h(
    'section',
    { 'aria-labelledby': 'findings-heading', id: 'findings', tabindex: -1 },
    h('h2', { id: 'findings-heading' }, words.findings.heading),
    list,
  );
  const item = ({ severity, message, remedy }: Finding): HTMLLIElement =>
    h(
      'li',
      { class: severity },
      h('strong', { class: 'severity' }, words.findings.severities[severity]),
      h('span', {}, message),
      h('span', { class: 'remedy' }, remedy),
    );
  const listOf = (found: readonly Finding[]): HTMLUListElement => h('ul', { class: 'findings' }, ...found.map(item));
  const update = (findings: readonly Finding[]): void => {
    const of = (severity: Severity): Finding[] => findings.filter((one) => one.severity === severity);
    const [faults, cautions, notes] = [of('fault'), of('caution'), of('note')];
    const open = list.querySelector('details')?.open === true;
    list.replaceChildren(
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
  return { element, update };
}
