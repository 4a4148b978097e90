import { button, h } from './element.js';
import { words } from './words.js';

/** What can be taken away. */
export interface AwayActions {
  readonly report: () => void;
  readonly json: () => void;
  readonly record: () => void;
}

/** Hands a text over as a file; nothing leaves the browser. */
export function download(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = h('a', { href: address, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 60_000);
}

/** The last section: downloads, and the address. */
export function awayView({ report, json, record }: AwayActions): HTMLElement {
  const said = h('span', { role: 'status', class: 'soft' });
  // a page that is not of this machine may have no clipboard at all
  const copy = async (): Promise<string> => {
    try {
      await navigator.clipboard.writeText(location.href);
      return words.away.copied;
    } catch {
      return words.away.notCopied;
    }
  };
  const tell = (): void => {
    void copy().then((text) => {
      said.textContent = text;
    });
  };
  return h(
    'section',
    { 'aria-labelledby': 'away-heading' },
    h('h2', { id: 'away-heading' }, words.away.heading),
    h('p', { class: 'row' }, button(words.away.report, report), button(words.away.json, json), button(words.away.record, record)),
    h('p', { class: 'soft' }, words.away.address),
    h('p', { class: 'row' }, button(words.away.copy, tell), said),
  );
}
