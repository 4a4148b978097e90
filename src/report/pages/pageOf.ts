import { InputError, requireObject } from '../../base/index.js';
import type { CurveResult, TestResult } from '../../methods/index.js';
import { bendingPage } from './bendingPage.js';
import { compressionPage } from './compressionPage.js';
import { brinellPage } from './brinellPage.js';
import { cuppingPage } from './cuppingPage.js';
import type { MethodPage } from './MethodPage.js';
import { shearPage } from './shearPage.js';
import { tensionPage } from './tensionPage.js';
import { unloadingPage } from './unloadingPage.js';

type Pages = { readonly [Method in TestResult['method']]: MethodPage<Extract<TestResult, { method: Method }>> };

/** @internal What the report says of each method. */
export const pages: Pages = {
  tension: tensionPage,
  compression: compressionPage,
  bending: bendingPage,
  shear: shearPage,
  brinell: brinellPage,
  cupping: cuppingPage,
  unloading: unloadingPage,
};

/** @internal What the report says of a result's method. */
export function pageOf<Result extends TestResult | CurveResult>(from: string, result: Result): MethodPage<Result> {
  const given: object = requireObject(from, 'result', result);
  const known = Object.keys(pages);
  const method: unknown = 'method' in given ? given.method : undefined;
  if (typeof method !== 'string' || !known.includes(method))
    throw new InputError(from, 'result.method', 'wrong-type', `must be that of a result (${known.join(', ')})`, method);
  // every page of a tension test draws the curve, also that of a result of stress and strain alone
  if (method === 'tension') requireObject(from, 'result.curve', 'curve' in given ? given.curve : undefined);
  // the compiler cannot see that the page listed under the result's method is the page for its type
  const page: unknown = pages[method as keyof Pages];
  return page as MethodPage<Result>;
}
