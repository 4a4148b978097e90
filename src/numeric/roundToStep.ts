/** Where a value halfway between two steps goes: to the even one (ISO 80000-1 rule A) or away from 0 (rule B). */
export type HalfRule = 'even' | 'up';

/**
 * @internal Rounds to a whole number of steps, half to even (ISO 80000-1 rule A) or up, deciding halves by the decimal digits of the value:
 * 2.675 in steps of 0.01 is a half although its binary form lies below.
 */
export function roundToStep(value: number, step: number, half: HalfRule = 'even'): number {
  const quotient = Number((Math.abs(value) / step).toPrecision(14));
  const floor = Math.floor(quotient);
  const rest = quotient - floor;
  const down = rest < 0.5 || (rest === 0.5 && half === 'even' && floor % 2 === 0);
  const rounded = Number(((down ? floor : floor + 1) * step).toPrecision(14));
  return value < 0 && rounded !== 0 ? -rounded : rounded;
}
