import type { ReadOptions } from '../src/index.js';
import type { Ask } from './client.js';
import type { Loaded, Source } from './protocol.js';
import type { recordView } from './recordView.js';
import { emptyState, type State } from './state.js';
import { fill, words } from './words.js';

/** Settings that a record takes over. */
type Kept = Pick<State, 'assumptions' | 'basis'>;

/** What the page does as a record goes and comes. */
interface Events {
  /** The record that was there is left; `next` is what is known of the one that is awaited. */
  readonly leave: (next: Partial<State>) => void;
  readonly begin: (source: Source, read: ReadOptions, next: Loaded, kept: Kept | undefined) => void;
}

/** Where records come from: made by the worker, or read from a file. What was asked for before the newest counts no more. */
export function loading(ask: Ask, record: ReturnType<typeof recordView>, { leave, begin }: Events) {
  let newest = 0;

  /** Makes a record; of an address its settings are kept. */
  const load = (source: Extract<Source, { from: 'made' | 'exercise' }>, kept?: Kept): void => {
    const own = (newest += 1);
    leave({});
    record.say(words.record.working);
    const request =
      source.from === 'made' ? ({ kind: 'make', scenario: source.scenario } as const) : ({ kind: 'exercise', name: source.name } as const);
    ask(request, (reply) => {
      if (own !== newest) return;
      if (reply.kind === 'loaded') begin(source, {}, reply.loaded, kept);
      if (reply.kind === 'refused') record.say(fill(words.record.failed, { message: reply.message }), true);
    });
  };

  const refused = (message: string): void => {
    record.say(fill(words.record.refused, { message }), true);
    record.offerHelp(true);
  };

  /** Reads a file; one that is refused may be read again in another way. */
  const read = async (file: File, options: ReadOptions, kept: Kept | undefined): Promise<void> => {
    const own = (newest += 1);
    const source = { from: 'file', name: file.name } as const;
    const { assumptions, basis } = kept ?? emptyState;
    leave({ source, read: options, assumptions, basis });
    record.say(fill(words.record.reading, { name: file.name }));
    try {
      const bytes = await file.arrayBuffer();
      if (own !== newest) return;
      ask({ kind: 'read', name: file.name, bytes, options }, (reply) => {
        if (own !== newest) return;
        if (reply.kind === 'refused') refused(reply.message);
        if (reply.kind !== 'loaded') return;
        record.offerHelp(false);
        begin(source, options, reply.loaded, kept);
      });
    } catch (error) {
      // a folder, or a file that is gone
      if (own === newest) refused(String(error));
    }
  };
  return { load, read };
}
