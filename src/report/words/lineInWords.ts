import type { Section } from '../../base/index.js';
import { MET, type Loading, type TensionResult } from '../../methods/index.js';
import type { Presentation } from './presentation.js';
import { SLOPE } from './shownUnit.js';

/** Units of the dimensions that are no lengths. */
const units: Readonly<Record<string, string>> = { mass: 'g', density: 'g/cm³', area: 'mm²' };

/** @internal A section with its dimensions and its area. */
export function sectionInWords({ shape, dimensions, area }: Section, show: Presentation): string {
  const all = Object.entries(dimensions).map(([name, value]) => `${show.term(name)} ${show.value(value, units[name] ?? 'mm', 5)}`);
  return [show.term(shape), ...all, `S0 = ${show.value(area, 'mm²', 5)}`].join(', ');
}

/** @internal What a strain was taken from, and over which length. */
export const strainBasis = (basis: string, length: number, show: Presentation): string =>
  show.say('{basis}, over {length}', { basis: show.term(basis.replaceAll('-', ' ')), length: show.value(length, 'mm', 5) });

/** @internal The elastic line in sentences: its window, its origin, what others would give. */
export function lineInWords(line: TensionResult['modulusWindow'], show: Presentation): string[] {
  if (!line) return [];
  const { say, number, digits, percent, value } = show;
  return [
    say(
      'Elastic line: window {criterion}, samples {first} to {last} ({points}), {low} to {high}; slope {slope}, R² = {rSquared}, S_m(rel) = {doubt}.',
      {
        criterion: show.term(line.criterion),
        first: line.first,
        last: line.last,
        points: line.points,
        low: value(line.stressLimits[0], 'MPa', 4),
        high: value(line.stressLimits[1], 'MPa', 4),
        slope: value(line.slope, SLOPE, 5),
        rSquared: digits(line.rSquared.toFixed(6)),
        doubt: percent(line.relativeStandardError),
      },
    ),
    say('Strain origin: moved by {shift} to where the line meets zero stress; all strains count from there.', {
      shift: number(line.strainShift, 4),
    }),
    ...(line.alternatives.length > 0
      ? [
          say('Runner-up windows give slopes of {slopes}.', {
            slopes: show.listed(line.alternatives.map(({ slope }) => value(slope, SLOPE, 4))),
          }),
        ]
      : []),
  ];
}

/** @internal How the piece was loaded, stage by stage, and which controls that meets. */
export function loadingInWords(loading: Loading | undefined, show: Presentation): string[] {
  return (loading?.stages ?? []).map(({ stage, stressRate, strainRate }) => {
    const concerned = loading!.controls.filter((one) => one.stage === stage);
    const listed = (some: typeof concerned): string => show.listed(some.map(({ control }) => show.term(control)));
    const met = concerned.filter((one) => one.met);
    const nearest = [...concerned].sort((one, other) => other.share - one.share)[0];
    const rates = {
      stage: show.term(stage),
      stress: show.value(stressRate.median, 'MPa/s', 3),
      strain: show.digits(strainRate.median.toExponential(1)),
    };
    if (met.length > 0)
      return show.say('Loading, {stage} part: {stress} and {strain} 1/s in the median; within {controls}.', {
        ...rates,
        controls: listed(met),
      });
    if (!nearest || nearest.share === 0)
      return show.say('Loading, {stage} part: {stress} and {strain} 1/s in the median; nothing of it is within {controls}.', {
        ...rates,
        controls: listed(concerned),
      });
    return show.say(
      'Loading, {stage} part: {stress} and {strain} 1/s in the median; nearest is {control}, which {share} of it keep to, where {wanted} are wanted.',
      { ...rates, control: show.term(nearest.control), share: show.percent(nearest.share), wanted: show.percent(MET) },
    );
  });
}
