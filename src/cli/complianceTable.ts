import type { FittedCompliance } from '../curve/index.js';
import type { Phrase } from '../languages/index.js';
import { presentation, type PresentationOptions } from '../report/index.js';
import { findingLines } from './findingLines.js';
import { padded } from './padded.js';
import { plain } from './plain.js';

const ONE_PULL: Phrase = 'The frame gives {motion} up to {force} (standard uncertainty {doubt}).';
const PULLS: Phrase = 'The frame gives {motion} up to {force} (standard uncertainty {doubt}), by {pulls} pulls.';

/** The compliance as `--frame-compliance` takes it, or its law. */
function lawOf({ compliance }: FittedCompliance): string[] {
  if ('constant' in compliance) return [`  --frame-compliance ${Number(compliance.constant.toPrecision(6)).toExponential()}`];
  if ('exponent' in compliance)
    return [`  ${Number(compliance.coefficient.toPrecision(6))} mm · (F / N)^${Number(compliance.exponent.toPrecision(6))}`];
  return [];
}

/** A measured compliance as text for a terminal: the motion of the frame over the force with its uncertainty, and findings. In N and mm, as the flags take it. */
export function complianceTable(found: FittedCompliance, pulls: number, reader: PresentationOptions): string {
  const show = presentation('complianceTable', { language: reader.language });
  const { say, number, percent, doubt, beside } = show;
  const { force, travel, standardUncertainty, relativeStandardUncertainty, residualStandardDeviation, samples, modulus, range } = found;
  const mm = (value: number): string => `${number(value, 3)}\u00a0mm`;
  const newtons = (value: number): string => number(value, 5);
  const rows = Array.from(force, (F, k) => [newtons(F), beside(travel[k]!, standardUncertainty[k]!, 4), doubt(standardUncertainty[k]!)]);
  const all = [
    say(pulls === 1 ? ONE_PULL : PULLS, {
      motion: mm(travel.at(-1)!),
      force: `${newtons(range[1])}\u00a0N`,
      doubt: percent(relativeStandardUncertainty, 2),
      pulls,
    }),
    ...lawOf(found),
    ...(modulus === undefined
      ? []
      : [`  ${say('Modulus of the pieces, found with it: {modulus}.', { modulus: `${number(modulus, 4)}\u00a0MPa` })}`]),
    `  ${say('Standard deviation of the travel about the fit: {deviation}, over {samples} samples from {low} to {high}.', {
      deviation: mm(residualStandardDeviation),
      samples,
      low: newtons(range[0]),
      high: `${newtons(range[1])}\u00a0N`,
    })}`,
    '',
    ...padded([[`${say('Force')} / N`, `${say('Motion of the frame')} / mm`, 'u / mm'], ...rows], [0, 1, 2]),
    '',
    say('Findings'),
    ...findingLines(found.findings, reader).map((one) => `  ${one}`),
  ];
  return `${all.map(plain).join('\n')}\n`;
}
