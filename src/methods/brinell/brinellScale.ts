import { finding, type Finding } from '../../base/index.js';
import { convert } from '../../units/index.js';
import { isNominal, mustBeWritten, nearestCombination } from './brinellFindings.js';

/** @internal The scale of a test: its name, and which forces are of it. */
export interface BrinellScale {
  /** `HBW 5/750`. */
  readonly name: string;
  /** True where a force is that of the scale within what is allowed; of a scale that no force meets all are. */
  readonly holds: (force: number) => boolean;
  /** Its force [N]; absent where no force of the test is a nominal one. */
  readonly nominal?: number | undefined;
}

/** @internal The combination of the standard that most of the forces meet; where none does, ball and mean force. */
export function brinellScale(ball: number, forces: readonly number[]): BrinellScale {
  const met = forces.flatMap((force) => {
    const nearest = nearestCombination(ball, force);
    return nearest && isNominal(force, nearest.force) ? [nearest] : [];
  });
  const count = ({ designation }: { readonly designation: string }): number => met.filter((one) => one.designation === designation).length;
  const [first, ...others] = met;
  if (first === undefined) {
    const mean = forces.reduce((sum, one) => sum + one, 0) / forces.length;
    return { name: `HBW ${ball}/${Number(convert(mean, 'N', 'kgf').toPrecision(4))}`, holds: () => true };
  }
  const { designation, force: nominal } = others.reduce((best, one) => (count(one) > count(best) ? one : best), first);
  return { name: designation, nominal, holds: (force) => isNominal(force, nominal) };
}

/** @internal Scale and time: 10 to 15 s go without saying (ISO 6506-1, from memory). */
export function brinellDesignation({ name }: BrinellScale, times: readonly number[]): string {
  if (times.length === 0) return name;
  const mean = times.reduce((sum, one) => sum + one, 0) / times.length;
  return mustBeWritten(mean) ? `${name}/${Math.round(mean)}` : name;
}

/** @internal That an indentation was left out of the mean for its force. */
export const offScaleFindings = (number: number, force: number, { name, nominal = force, holds }: BrinellScale): Finding[] =>
  holds(force)
    ? []
    : [finding('brinell-indentation-off-scale', { number, share: 100 * (force / nominal - 1), designation: name }, { field: 'hardness' })];
