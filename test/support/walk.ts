/** Paths of all numbers in a value that are not finite. */
export function notFinite(value: unknown, path = 'result'): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (ArrayBuffer.isView(value)) return (value as Float64Array).every((one) => Number.isFinite(one)) ? [] : [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) => notFinite(one, `${path}.${name}`));
}
