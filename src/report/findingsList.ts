import type { Finding, Severity } from '../base/index.js';
import { html, raw, type Html } from './html.js';

const severities: readonly (readonly [Severity, string])[] = [
  ['fault', 'Faults: a value is withheld or must not be used'],
  ['caution', 'Cautions: read them beside the values'],
  ['note', 'Notes'],
];

/** @internal Findings with their remedies, by severity. */
export function findingsList(findings: readonly Finding[]): Html {
  if (findings.length === 0) return html`<p>Nothing to report.</p>`;
  const item = ({ severity, message, remedy }: Finding): Html =>
    html`<li class="${severity}">${message} <span class="remedy">${remedy}</span></li>`;
  return raw(
    severities
      .map(([severity, heading]) => {
        const own = findings.filter((one) => one.severity === severity);
        return own.length === 0
          ? ''
          : html`<h3>${heading}</h3>
              <ul class="findings">
                ${own.map(item)}
              </ul>`.markup;
      })
      .join(''),
  );
}
