/**
 * @internal A deep copy as plain data: objects and arrays, typed arrays as arrays, fields that are undefined left out, and infinite ones, which options
 * have where they mean the same as none (JSON has no infinity). The result shares nothing with what the caller holds.
 */
export function plainCopy<T>(value: T): T;
export function plainCopy(value: unknown): unknown {
  if (ArrayBuffer.isView(value)) return Array.from(value as Float64Array);
  if (Array.isArray(value)) return value.map((one: unknown) => plainCopy(one));
  if (typeof value !== 'object' || value === null) return value;
  const copied: [string, unknown][] = [];
  for (const [name, one] of Object.entries(value) as [string, unknown][])
    if (one !== undefined && one !== Infinity) copied.push([name, plainCopy(one)]);
  return Object.fromEntries(copied);
}
