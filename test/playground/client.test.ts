import { deflateRawSync } from 'node:zlib';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { startWorker } from '../../playground/client.js';
import type { Reply } from '../../playground/protocol.js';

/** A worker that does nothing of its own. */
class Still {
  static readonly all: Still[] = [];
  onmessage: ((event: { data: unknown }) => void) | null = null;
  onerror: ((event: { message: string }) => void) | null = null;
  onmessageerror: (() => void) | null = null;
  readonly posted: { readonly id: number }[] = [];
  ended = false;
  constructor() {
    Still.all.push(this);
  }
  postMessage(message: { readonly id: number }): void {
    this.posted.push(message);
  }
  terminate(): void {
    this.ended = true;
  }
}

beforeEach(() => {
  Still.all.length = 0;
  vi.stubGlobal('Worker', Still);
  vi.stubGlobal('WORKER', deflateRawSync('0;').toString('base64'));
});
afterEach(() => {
  vi.unstubAllGlobals();
});
const worker = async (k: number): Promise<Still> => {
  await vi.waitUntil(() => (Still.all[k]?.posted.length ?? 0) > 0);
  return Still.all[k]!;
};

test('replies go to whoever asked, until it is done', async () => {
  const [one, two]: Reply[][] = [[], []];
  const ask = startWorker(() => undefined);
  ask({ kind: 'json' }, (reply) => one!.push(reply));
  ask({ kind: 'text' }, (reply) => two!.push(reply));
  const { onmessage, posted } = await worker(0);
  expect(posted.map(({ id }) => id)).toEqual([1, 2]);
  for (const data of [
    { kind: 'text', text: 'b', id: 2 },
    { kind: 'done', id: 2 },
    { kind: 'done', id: 2 },
  ])
    onmessage!({ data });
  expect(one).toEqual([]);
  expect(two!.map(({ kind }) => kind)).toEqual(['text', 'done']);
});

test.each(['onerror', 'onmessageerror'] as const)('%s: whoever waits is refused, it is said, and another worker goes on', async (event) => {
  const lost: string[] = [];
  const replies: Reply[] = [];
  const ask = startWorker((message) => lost.push(message));
  ask({ kind: 'json' }, (reply) => replies.push(reply));
  const first = await worker(0);
  first[event]!({ message: 'out of memory' });
  expect(first.ended).toBe(true);
  expect(lost).toHaveLength(1);
  expect(lost[0]).toMatch(/^The work stopped unexpectedly \(.+\)\./);
  expect(replies).toEqual([{ kind: 'refused', message: lost[0] }]);
  ask({ kind: 'text' }, () => undefined);
  expect((await worker(1)).posted).toHaveLength(1);
  // what the first still says counts no more
  first.onerror!({ message: 'again' });
  expect(lost).toHaveLength(1);
});

test('a worker that cannot start is said too', async () => {
  vi.stubGlobal('WORKER', 'AAAA');
  const lost: string[] = [];
  startWorker((message) => lost.push(message))({ kind: 'json' }, () => undefined);
  await vi.waitUntil(() => lost.length > 0);
  expect(lost).toHaveLength(1);
});
