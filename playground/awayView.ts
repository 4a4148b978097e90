import type { Ask } from './client.js';
import { button, h } from './element.js';
import type { Request } from './protocol.js';
import { fill, words } from './words.js';

/** What the section needs to know of the page. */
export interface AwaySource {
  readonly ask: Ask;
  /** Name of the record, without an ending. */
  readonly name: () => string;
  readonly report: () => Request;
}

/** Hands a text over as a file; nothing leaves the browser. */
function download(name: string, type: string, text: string): void {
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
export function awayView({ ask, name, report }: AwaySource) {
  const said = h('span', { role: 'status', class: 'soft' });
  /** Asks for a text and hands it over under the name that the record has now. */
  const take = (request: Request, ending: string, type: string): void => {
    const file = `${name()}.${ending}`;
    said.textContent = '';
    ask(request, (reply) => {
      if (reply.kind === 'text') download(file, type, reply.text);
      if (reply.kind === 'refused') said.textContent = fill(words.away.failed, { message: reply.message });
    });
  };
  const record = (): void => {
    take({ kind: 'text' }, 'csv', 'text/csv');
  };
  const ofResult = [
    button(words.away.report, () => {
      take(report(), 'report.html', 'text/html');
    }),
    button(words.away.json, () => {
      take({ kind: 'json' }, 'report.json', 'application/json');
    }),
  ];
  const ofRecord = button(words.away.record, record);
  const offer = (there: { readonly record: boolean; readonly result: boolean }): void => {
    ofRecord.disabled = !there.record;
    for (const one of ofResult) one.disabled = !there.result;
  };
  offer({ record: false, result: false });
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
  const element = h(
    'section',
    { 'aria-labelledby': 'away-heading' },
    h('h2', { id: 'away-heading' }, words.away.heading),
    h('p', { class: 'row' }, ...ofResult, ofRecord),
    h('p', { class: 'soft' }, words.away.address),
    h('p', { class: 'row' }, button(words.away.copy, tell), said),
  );
  return { element, record, /** Only what is there can be taken away. */ offer };
}
