import { InputError } from './InputError.js';

/** @internal What an error of a library says, in one short line. */
export const saying = (reason: unknown): string | undefined =>
  reason instanceof Error ? JSON.stringify(reason.message.slice(0, 80)) : undefined;

/**
 * @internal For the `.catch()` of the `import()` of optional libraries: an error that says how to install them, and why they were not loaded. It
 * stands at the `import()` itself, where bundlers see that a library may be missing.
 */
export const notLoaded =
  (from: string, names: string, purpose: string) =>
  (reason: unknown): never => {
    const [name = names] = names.split(' ');
    throw new InputError(from, name, 'missing', `must be installed to ${purpose} (npm install ${names})`, reason, saying(reason));
  };
