import { requireObject, requireOptions } from '../../base/index.js';

/**
 * @internal Refuses names that are no parameters of a law. A fit carries its parameters with all that describes them, and names them once more in its
 * standard errors: it serves as it is, but for another law.
 */
export function requireParameters(from: string, parameters: object, names: readonly string[]): void {
  const given = requireObject(from, 'parameters', parameters);
  requireOptions(from, 'standardErrors' in given ? (given.standardErrors as object) : given, names, 'parameters');
}
