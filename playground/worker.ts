import { answer, begins, emptyDesk } from './desk.js';
import type { Numbered, Reply, Request } from './protocol.js';

/** The worker's own side of its channel. */
interface Scope {
  onmessage: ((event: MessageEvent<Numbered<Request>>) => void) | null;
  postMessage(message: Numbered<Reply>): void;
}

const scope = globalThis as unknown as Scope;
const desk = emptyDesk();
let newest = 0;

scope.onmessage = ({ data }) => {
  const { id } = data;
  // what is asked beside does not stop an evaluation
  if (begins.includes(data.kind)) newest = id;
  const pause = async (): Promise<boolean> => {
    await new Promise((resume) => setTimeout(resume, 0));
    return newest !== id;
  };
  void answer(
    desk,
    data,
    (reply) => {
      scope.postMessage({ ...reply, id });
    },
    pause,
  );
};
