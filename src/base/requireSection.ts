import { requireFinite, requireObject, requirePositive } from './checks.js';
import type { Section } from './Section.js';

/** @internal A section whose every number is one; also one that was written by hand. */
export function requireSection(from: string, path: string, section: Section): Section {
  requireObject(from, path, section);
  requirePositive(from, `${path}.area`, section.area);
  for (const [name, value] of Object.entries(requireObject(from, `${path}.dimensions`, section.dimensions)))
    requireFinite(from, `${path}.dimensions.${name}`, value);
  for (const name of ['secondMoment', 'sectionModulus', 'sectionModulusCorner', 'spread', 'taper', 'readings'] as const)
    if (section[name] !== undefined) requireFinite(from, `${path}.${name}`, section[name]);
  return section;
}
