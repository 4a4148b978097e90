import type { Numbered, Reply, Request } from './protocol.js';
import { fill, words } from './words.js';

/**
 * The worker's script, put in by the build: a worker of its own file would not run from a page on disk. It is deflated and in base64,
 * for most of it is the words of the languages.
 */
declare const WORKER: string;

/** The way to the worker: a request, and what to do with each reply. */
export type Ask = (request: Request, onReply: (reply: Reply) => void) => void;

async function script(): Promise<string> {
  const packed = Uint8Array.from(atob(WORKER), (sign) => sign.charCodeAt(0));
  return new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate-raw'))).text();
}

/**
 * The way to a worker that is started by the first request. Where it fails, whoever waits is refused, and the next request starts another:
 * that one knows no record, so `lost` is told.
 */
export function startWorker(lost: (message: string) => void): Ask {
  const waiting = new Map<number, (reply: Reply) => void>();
  let last = 0;
  let current: Promise<Worker> | undefined;
  const fail = (failed: Promise<Worker>, reason: string): void => {
    if (failed !== current) return;
    current = undefined;
    const message = fill(words.record.stopped, { reason });
    const left = [...waiting.values()];
    waiting.clear();
    for (const tell of left) tell({ kind: 'refused', message });
    lost(message);
  };
  const start = (): Promise<Worker> => {
    const started = script().then((text) => {
      const worker = new Worker(URL.createObjectURL(new Blob([text], { type: 'text/javascript' })));
      const stop = (reason: string): void => {
        worker.terminate();
        fail(started, reason);
      };
      worker.onmessage = ({ data }: MessageEvent<Numbered<Reply>>) => {
        waiting.get(data.id)?.(data);
        if (data.kind === 'done') waiting.delete(data.id);
      };
      worker.onerror = ({ message }) => {
        stop(message || words.record.unknownReason);
      };
      worker.onmessageerror = () => {
        stop(words.record.unreadable);
      };
      return worker;
    });
    return started;
  };
  return (request, onReply) => {
    last += 1;
    const id = last;
    waiting.set(id, onReply);
    const started = (current ??= start());
    started
      .then((worker) => {
        worker.postMessage({ ...request, id }, request.kind === 'read' ? [request.bytes] : []);
      })
      .catch((error: unknown) => {
        fail(started, String(error));
      });
  };
}
