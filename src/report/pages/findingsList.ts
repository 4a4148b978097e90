import type { Finding, Severity } from '../../base/index.js';
import type { Phrase } from '../../languages/index.js';
import { html, raw, type Html } from './html.js';
import type { Presentation } from '../words/presentation.js';

const severities: readonly (readonly [Severity, Phrase])[] = [
  ['fault', 'Faults: a value is withheld or must not be used'],
  ['caution', 'Cautions: read them beside the values'],
  ['note', 'Notes'],
];

/** @internal Findings with their remedies, by severity. */
export function findingsList(findings: readonly Finding[], show: Presentation): Html {
  if (findings.length === 0) return html`<p>${show.say('Nothing to report.')}</p>`;
  const item = (one: Finding): Html => {
    const { message, remedy } = show.finding(one);
    return html`<li class="${one.severity}">${message} <span class="remedy">${remedy}</span></li>`;
  };
  const units = show.inchPound ? html`<p>${show.say('Numbers in findings are in N, mm, MPa and s.')}</p>`.markup : '';
  return raw(
    units +
      severities
        .map(([severity, heading]) => {
          const own = findings.filter((one) => one.severity === severity);
          return own.length === 0
            ? ''
            : html`<h3>${show.say(heading)}</h3>
                <ul class="findings">
                  ${own.map(item)}
                </ul>`.markup;
        })
        .join(''),
  );
}
