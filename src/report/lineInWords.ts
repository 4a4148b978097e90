import type { Section } from '../base/index.js';
import type { Loading, TensionResult } from '../methods/index.js';
import { number, percent } from './MethodPage.js';

/** @internal A section with its dimensions and its area. */
export function sectionInWords({ shape, dimensions, area }: Section): string {
  const all = Object.entries(dimensions).map(([name, value]) => `${name} ${number(value, 5)}`);
  return `${shape}, ${all.join(', ')} (mm); S0 = ${number(area, 5)} mm²`;
}

/** @internal The elastic line in sentences: its window, its origin, what others would give. */
export function lineInWords(line: TensionResult['modulusWindow']): string[] {
  if (!line) return [];
  return [
    `Elastic line: window ${line.criterion}, samples ${line.first} to ${line.last} (${line.points}), ${number(line.stressLimits[0], 4)} to ${number(line.stressLimits[1], 4)} MPa; slope ${number(line.slope / 1000, 5)} GPa, R² = ${line.rSquared.toFixed(6)}, S_m(rel) = ${percent(line.relativeStandardError)}.`,
    `Strain origin: moved by ${number(line.strainShift, 4)} to where the line meets zero stress; all strains count from there.`,
    ...(line.alternatives.length > 0
      ? [`Runner-up windows give slopes of ${line.alternatives.map(({ slope }) => number(slope / 1000, 4)).join(', ')} GPa.`]
      : []),
  ];
}

/** @internal How the piece was loaded, stage by stage, and which controls that meets. */
export function loadingInWords(loading: Loading | undefined): string[] {
  return (loading?.stages ?? []).map(({ stage, stressRate, strainRate }) => {
    const met = loading!.controls.filter((one) => one.stage === stage && one.met).map(({ control }) => control);
    return `Loading, ${stage} part: ${number(stressRate.median, 3)} MPa/s and ${strainRate.median.toExponential(1)} 1/s in the median; ${met.length > 0 ? `within ${met.join(', ')}` : 'within no control of the standards'}.`;
  });
}
