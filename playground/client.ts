import type { Numbered, Reply, Request } from './protocol.js';

/** Text of the worker, put in by the build: a worker of its own file would not run from a page on disk. */
declare const WORKER: string;

/** The way to the worker: a request, and what to do with each reply. */
export type Ask = (request: Request, onReply: (reply: Reply) => void) => void;

/** Starts the worker. */
export function startWorker(): Ask {
  const address = URL.createObjectURL(new Blob([WORKER], { type: 'text/javascript' }));
  const worker = new Worker(address);
  const waiting = new Map<number, (reply: Reply) => void>();
  let last = 0;
  worker.onmessage = ({ data }: MessageEvent<Numbered<Reply>>) => {
    waiting.get(data.id)?.(data);
    if (data.kind === 'done') waiting.delete(data.id);
  };
  return (request, onReply) => {
    last += 1;
    waiting.set(last, onReply);
    worker.postMessage({ ...request, id: last }, request.kind === 'read' ? [request.bytes] : []);
  };
}
