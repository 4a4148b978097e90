import { InputError, isInputError, saying } from '../base/index.js';

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

/** @internal What a library reads from a file, or an error that the file is not of its kind. */
export async function content<Content>(from: string, kind: string, read: () => Content | Promise<Content>): Promise<Content> {
  try {
    return await read();
  } catch (reason) {
    if (isInputError(reason)) throw reason;
    throw new InputError(from, 'bytes', 'wrong-type', `must be ${kind} that can be read`, reason, saying(reason));
  }
}
