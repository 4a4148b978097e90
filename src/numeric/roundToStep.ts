/**
 * @internal Rounds to a whole number of steps, half to even (ISO 80000-1 rule A), deciding halves by the decimal digits of the value:
 * 2.675 in steps of 0.01 is a half although its binary form lies below.
 */
export function roundToStep(value: number, step: number): number {
  const quotient = Number((value / step).toPrecision(14));
  const floor = Math.floor(quotient);
  const rest = quotient - floor;
  const whole = rest < 0.5 || (rest === 0.5 && floor % 2 === 0) ? floor : floor + 1;
  return Number((whole * step).toPrecision(14));
}
