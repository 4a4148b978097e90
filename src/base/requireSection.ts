import { InputError } from './InputError.js';
import { requireFinite, requireNonNegative, requireObject, requirePositive } from './checks.js';
import type { Section } from './Section.js';

/** @internal A section in which every field that must be a number is one; also for sections written by hand. */
export function requireSection(from: string, path: string, section: Section): Section {
  requireObject(from, path, section);
  const area: unknown = section.area;
  if (area === undefined)
    throw new InputError(from, `${path}.area`, 'missing', 'must be a number (round({ diameter: 8 }) and its kin make a section)', area);
  requirePositive(from, `${path}.area`, area);
  for (const [name, value] of Object.entries(requireObject(from, `${path}.dimensions`, section.dimensions)))
    requirePositive(from, `${path}.dimensions.${name}`, value);
  for (const name of ['secondMoment', 'sectionModulus', 'sectionModulusCorner', 'readings'] as const)
    if (section[name] !== undefined) requirePositive(from, `${path}.${name}`, section[name]);
  if (section.spread !== undefined) requireNonNegative(from, `${path}.spread`, section.spread);
  if (section.taper !== undefined) requireFinite(from, `${path}.taper`, section.taper);
  return section;
}
