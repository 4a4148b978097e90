import { InputError, requireObject } from '../base/index.js';
import type { TestResult } from '../methods/index.js';
import { brinellPage } from './brinellPage.js';
import { cuppingPage } from './cuppingPage.js';
import type { MethodPage } from './MethodPage.js';
import { shearPage } from './shearPage.js';
import { tensionPage } from './tensionPage.js';

type Pages = { readonly [Method in TestResult['method']]: MethodPage<Extract<TestResult, { method: Method }>> };

/** What the report says of each method. */
const pages: Pages = { tension: tensionPage, shear: shearPage, brinell: brinellPage, cupping: cuppingPage };

/** @internal What the report says of a result's method. */
export function pageOf(from: string, result: TestResult): MethodPage<TestResult> {
  const given: object = requireObject(from, 'result', result);
  const known = Object.keys(pages);
  const method: unknown = 'method' in given ? given.method : undefined;
  if (typeof method !== 'string' || !known.includes(method))
    throw new InputError(from, 'result.method', 'wrong-type', `must be that of a result (${known.join(', ')})`, method);
  // the page of a method is only ever given results of that method
  return pages[method as keyof Pages] as MethodPage<TestResult>;
}
