import { requireOptions, requirePositive } from '../base/index.js';
import { anyMetal } from './anyMetal.js';
import { materialFamilies, type MaterialFamily, type MaterialFamilyKey } from './materialFamilies.js';
import { materialFamily, requireFamily } from './materialFamily.js';
import {
  measurementNames,
  propertyWords,
  rangeOf,
  requireMeasurement,
  requireProperties,
  type MeasuredProperties,
  type Measurement,
  type Properties,
  type PropertyName,
} from './measuredProperties.js';
import { mistakesOf, type Mistake } from './mistakes.js';
import { openCauses } from './openCauses.js';
import type { ComparedProperty, PropertyCause, PropertyExplanation } from './PropertyExplanation.js';
import { fitAll, MARGIN, namesOf, outsideOf, sideOf } from './range.js';

/** Options of {@link explainProperties}: how it was measured, and with what it is compared. */
export interface ExplainPropertiesOptions extends Measurement {
  /** Family that the metal should be of; default all of them together. */
  readonly family?: MaterialFamilyKey | undefined;
  /** Share by which a property may lie beyond its range; default 0.1 for a family and 1 for all, since the list does not hold every metal. */
  readonly margin?: number | undefined;
}

/** Ranks below this are no help. */
const LEAST_SCORE = 0.02;
/** How common a wrong family is. */
const WRONG_FAMILY = 0.5;

/** The properties without a mistake; where strain was wrong, offset and exponent were read at wrong places and say nothing. */
function without(properties: Properties, { stress, strain }: Mistake): Properties {
  const { modulus, yieldStrength, yieldRatio, tensileStrength, elongation, plasticExtension, exponent } = properties;
  const strained =
    strain === 1 ? { yieldStrength: yieldStrength === undefined ? undefined : yieldStrength / stress, yieldRatio, exponent } : {};
  const mended: Record<string, number | undefined> = {
    modulus: modulus === undefined ? undefined : (modulus * strain) / stress,
    tensileStrength: tensileStrength === undefined ? undefined : tensileStrength / stress,
    elongation,
    plasticExtension: plasticExtension === undefined ? undefined : plasticExtension / strain,
    ...strained,
  };
  return Object.fromEntries(Object.entries(mended).filter(([, value]) => value !== undefined));
}

const list = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]!}`;

/** Sentence of a cause. */
function sentence(clause: string, factor: number, explains: readonly PropertyName[]): string {
  const words = list(explains.map((name) => propertyWords[name]));
  const times =
    factor >= 1 ? `${Number(factor.toPrecision(3))} times the true one` : `1/${Number((1 / factor).toPrecision(3))} of the true one`;
  return `If ${clause}, ${words} would fit: the reading is ${times}.`;
}

/** What was measured of a metal, and what it is compared with. */
interface Comparison {
  readonly given: Properties;
  /** The family that it should be of, or all of them. */
  readonly candidates: readonly MaterialFamily[];
  readonly frameInside: boolean;
  readonly margin: number;
}

/** Families in which all of some properties lie. */
const fitting = (some: Properties, families: readonly MaterialFamily[], frameInside: boolean): MaterialFamilyKey[] =>
  families.filter((family) => outsideOf(some, family, frameInside, MARGIN).length === 0).map(({ key }) => key);

/** Each property beside its range, in the family or in any metal. */
function comparedWith({ given, frameInside, margin }: Comparison, family: MaterialFamily | undefined): ComparedProperty[] {
  const compared: ComparedProperty[] = [];
  for (const property of namesOf(given)) {
    const range = family ? rangeOf(family, property) : anyMetal[property];
    if (!range) continue;
    const value = given[property]!;
    const side = sideOf(value, range, margin);
    // any slope can be that of a soft frame
    const outside = side === 'low' && property === 'modulus' && frameInside && !family ? undefined : side;
    compared.push(outside ? { property, value, range, outside } : { property, value, range });
  }
  return compared;
}

/** The mistake as a cause, where without it more properties fit than it takes out of their ranges. */
function causeOf(
  mistake: Mistake,
  { given, candidates, frameInside, margin }: Comparison,
  outside: readonly PropertyName[],
): PropertyCause[] {
  const mended = without(given, mistake);
  const best = candidates.reduce((a, b) => (fitAll(mended, b, frameInside) > fitAll(mended, a, frameInside) ? b : a));
  const still = outsideOf(mended, best, frameInside, margin);
  const explains = outside.filter((name) => mended[name] !== undefined && mended[name] !== given[name] && !still.includes(name));
  const broken = still.filter((name) => !outside.includes(name));
  if (explains.length === 0 || broken.length >= explains.length) return [];
  const factor = mistake.stress === 1 ? mistake.strain : mistake.stress;
  return [
    {
      key: mistake.key,
      about: mistake.about,
      factor,
      explains,
      score: mistake.weight * fitAll(mended, best, frameInside),
      families: fitting(mended, candidates, frameInside),
      sentence: sentence(mistake.clause, factor, explains),
      check: mistake.check,
    },
  ];
}

/** That the metal is of another family, where all that was measured fits one. */
function anotherFamily({ given, frameInside }: Comparison, family: MaterialFamily, outside: readonly PropertyName[]): PropertyCause[] {
  // a slope that holds the frame says nothing about the family
  if (frameInside && outside.every((name) => name === 'modulus')) return [];
  const families = fitting(
    given,
    materialFamilies.filter((other) => other !== family),
    frameInside,
  );
  if (families.length === 0) return [];
  return [
    {
      key: 'another-family',
      about: 'method',
      factor: 1,
      explains: outside,
      score: WRONG_FAMILY * Math.max(...families.map((key) => fitAll(given, materialFamily(key), frameInside))),
      families,
      sentence: `All that was measured fits ${list(families.map((key) => materialFamily(key).name))}.`,
      check: 'Compare the marking of the bar and its certificate; density, magnetism and hardness tell families apart.',
    },
  ];
}

/**
 * Properties beside the usual ranges of a family of metals, and what may explain those that do not fit, likeliest first.
 *
 * $$ \text{score} = w \prod_i \exp\left( -\frac12 \left( \frac{\ln (x_i / r_i)}{\ln 1.1} \right)^2 \right), \qquad x_i = \frac{\text{measured}_i}{f_s \text{ or } f_s / f_e \text{ or } f_e} $$
 *
 * @remarks
 * A mistake multiplies all stresses by $f_s$ and all strains by $f_e$, so strengths move by $f_s$, the slope by $f_s / f_e$ and the plastic
 * extension by $f_e$; each is taken out in thought, and what is left is compared with the range whose nearest end is $r_i$ (a property inside
 * its range counts 1, one that does not fit at all 0.1, one for which the family has no range 0.7). The weight $w$ says how common the mistake is (common practice). Of travel that still
 * holds the frame only the upper end of the modulus counts in a comparison with all metals. Ranges of the trade are no limits: a cause is where
 * to look first, never a correction.
 *
 * @param properties - Slope of the elastic line, strengths [MPa], elongations and exponent [1]; at least one.
 * @param options - Family, margin, and how it was measured.
 * @returns Each property with its range, and causes with factor, rank and what to check.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`, `wrong-type`.
 *
 * @example
 * ```ts
 * const measured = { modulus: 824000, yieldStrength: 1200, tensileStrength: 1680 };
 * explainProperties(measured, { family: 'structural-steel', shape: 'round' }).causes[0]?.key; // => 'radius-for-diameter'
 * ```
 *
 * @see Common practice; ranges from memory. Checked in `test/materials/explainProperties.test.ts`.
 */
export function explainProperties(properties: MeasuredProperties, options: ExplainPropertiesOptions = {}): PropertyExplanation {
  const from = 'explainProperties';
  requireOptions(from, options, ['family', 'margin', ...measurementNames]);
  const given = requireProperties(from, properties);
  const how = requireMeasurement(from, options);
  const one = options.family === undefined ? undefined : requireFamily(from, 'options.family', options.family);
  const margin = requirePositive(from, 'options.margin', options.margin ?? (one ? MARGIN : 1));
  const frameInside = how.strainFrom === 'travel' && how.frameRemoved !== true;

  const comparison: Comparison = { given, candidates: one ? [one] : materialFamilies, frameInside, margin };
  const compared = comparedWith(comparison, one);
  const outside = compared.filter((each) => each.outside).map(({ property }) => property);
  if (outside.length === 0) return { compared, causes: [] };
  const causes = mistakesOf(how).flatMap((mistake) => causeOf(mistake, comparison, outside));
  const sides = Object.fromEntries(compared.map((each) => [each.property, each.outside]));
  const open = comparison.candidates
    .flatMap((family) => openCauses(given, family, how, frameInside, sides).map((cause) => ({ ...cause, families: [family.key] })))
    .sort((a, b) => b.score - a.score);
  for (const { clause, ...cause } of open)
    if (!causes.some(({ key }) => key === cause.key)) causes.push({ ...cause, sentence: sentence(clause, cause.factor, cause.explains) });
  if (one) causes.push(...anotherFamily(comparison, one, outside));
  const ranked = causes.filter(({ score, explains }) => score >= LEAST_SCORE && explains.length > 0);
  return { compared, causes: ranked.sort((a, b) => b.score - a.score) };
}
