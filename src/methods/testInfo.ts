import { InputError, requireFinite, requireOptions } from '../base/index.js';
import type { TestInfo } from './MethodResult.js';

const testFields = ['identity', 'material', 'operator', 'date', 'temperature', 'standard', 'forceCalibration', 'remarks', 'invented'];

/** @internal Checks who tested what: text, a number of degrees, a yes or no. */
export function requireTest(from: string, test: TestInfo): TestInfo {
  requireOptions(from, test, testFields, 'options.test');
  for (const [name, value] of Object.entries(test)) {
    if (value === undefined) continue;
    if (name === 'temperature') requireFinite(from, 'options.test.temperature', value);
    else if (typeof value !== (name === 'invented' ? 'boolean' : 'string'))
      throw new InputError(
        from,
        `options.test.${name}`,
        'wrong-type',
        name === 'invented' ? 'must be true or false' : 'must be text',
        value,
      );
  }
  return { ...test };
}
