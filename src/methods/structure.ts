/**
 * @internal A deep copy as plain data: objects and arrays, typed arrays as arrays, fields that are undefined left out, and infinite ones, which options
 * have where they mean the same as none (JSON has no infinity). The result shares nothing with what the caller holds.
 */
export function structure<T>(value: T): T;
export function structure(value: unknown): unknown {
  if (ArrayBuffer.isView(value)) return Array.from(value as Float64Array);
  if (Array.isArray(value)) return value.map((one: unknown) => structure(one));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, one]) => (one === undefined || one === Infinity ? [] : [[name, structure(one)]])),
  );
}
