import { columnsHash } from './columnsHash.js';
import type { Provenance } from './MethodResult.js';
import { plainCopy } from './plainCopy.js';
import { version } from './version.js';

/** @internal What reproduces a result: this package, the options as given, and a hash of the columns. */
export const provenanceOf = (options: object, columns: Readonly<Record<string, Float64Array | undefined>>): Provenance => ({
  package: 'testpiece',
  version,
  options: plainCopy({ ...options }),
  hash: columnsHash(columns),
});
