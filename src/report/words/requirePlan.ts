import { InputError, requireObject, requireOneOf } from '../../base/index.js';
import type { TestPlan } from '../../planning/index.js';

/** @internal Refuses what is no plan. */
export function requirePlan(from: string, plan: TestPlan): TestPlan {
  const given: object = requireObject(from, 'plan', plan);
  if (!('planOf' in given)) throw new InputError(from, 'plan.planOf', 'missing', 'must be that of a plan', undefined);
  requireOneOf(from, 'plan.planOf', given.planOf, ['tension', 'brinell', 'shear', 'bending', 'compression', 'cupping']);
  return plan;
}
