import { InputError, isInputError } from '../base/index.js';

/** Files larger than this are refused [bytes]. */
const MOST = 512 * 1024 * 1024;

/** @internal The bytes of a file as a buffer of its own. */
export function wholeFile(from: string, bytes: unknown): ArrayBuffer {
  if (!(bytes instanceof Uint8Array) && !(bytes instanceof ArrayBuffer))
    throw new InputError(from, 'bytes', 'wrong-type', 'must be the bytes of a file', bytes);
  if (bytes.byteLength === 0) throw new InputError(from, 'bytes', 'empty', 'must not be empty', 0);
  if (bytes.byteLength > MOST) throw new InputError(from, 'bytes', 'too-large', `must be at most ${MOST} bytes`, bytes.byteLength);
  return bytes instanceof ArrayBuffer ? bytes : bytes.slice().buffer;
}

/** What an error of a library says, in one short line. */
const saying = (reason: unknown): string | undefined => (reason instanceof Error ? JSON.stringify(reason.message.slice(0, 60)) : undefined);

/** @internal An optional library, which must be installed. */
export async function library<Library>(from: string, name: string, load: () => Promise<Library>): Promise<Library> {
  try {
    return await load();
  } catch (reason) {
    throw new InputError(from, name, 'missing', 'must be installed to read such files', reason, saying(reason));
  }
}

/** @internal What a library reads from a file, or an error that the file is not of its kind. */
export async function content<Content>(from: string, kind: string, read: () => Content | Promise<Content>): Promise<Content> {
  try {
    return await read();
  } catch (reason) {
    if (isInputError(reason)) throw reason;
    throw new InputError(from, 'bytes', 'wrong-type', `must be ${kind} that can be read`, reason, saying(reason));
  }
}
