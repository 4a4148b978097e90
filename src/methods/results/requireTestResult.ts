import { InputError, requireObject } from '../../base/index.js';
import type { Provenance } from '../common/MethodResult.js';
import { resultColumns } from './resultColumns.js';
import type { TestResult } from './TestResult.js';

/** Methods of one test. */
const methods = Object.keys(resultColumns).filter((one) => one !== 'replicates');

/** @internal A result of any method, with its provenance. */
export function requireTestResult(from: string, path: string, result: TestResult): TestResult {
  const given = requireObject(from, path, result) as { readonly method?: unknown; readonly provenance?: unknown };
  const { method } = given;
  if (typeof method !== 'string' || !methods.includes(method))
    throw new InputError(
      from,
      `${path}.method`,
      method === undefined ? 'missing' : 'wrong-type',
      `must be that of the result of one test (${methods.join(', ')})`,
      method,
    );
  const { options, hash, version } = requireObject(from, `${path}.provenance`, given.provenance) as Partial<Provenance>;
  requireObject(from, `${path}.provenance.options`, options);
  for (const [name, text] of Object.entries({ hash, version }))
    if (typeof text !== 'string') throw new InputError(from, `${path}.provenance.${name}`, 'wrong-type', 'must be text', text);
  return result;
}
