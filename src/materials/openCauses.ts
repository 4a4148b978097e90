import type { Subject } from '../base/index.js';
import type { MaterialFamily } from './UsualRange.js';
import { rangeOf, type Measurement, type Properties, type PropertyName } from './measuredProperties.js';
import { fitAll } from './range.js';

/** Causes whose factor follows from the measurement itself. */
export type OpenCauseKey =
  | 'frame-compliance-left-in'
  | 'frame-compliance-overrated'
  | 'grip-slip'
  | 'extensometer-slip'
  | 'strain-length-wrong'
  | 'worked-or-hardened'
  | 'softened';

/** @internal A cause with its factor: measured over true, of the first property that it explains. */
export interface OpenCause {
  readonly key: OpenCauseKey;
  readonly about: Subject;
  readonly factor: number;
  readonly explains: readonly PropertyName[];
  readonly score: number;
  readonly clause: string;
  readonly check: string;
}

/** Beyond this ratio the frame, a slip or a treatment is no explanation (common practice). */
const LEAST_FRAME = 0.02;
const MOST_TREATMENT = 4;
/** Parallel length over gauge length, as pieces are made, and a base entered for another one. */
const LENGTHS = { travel: 1.7, extensometer: 2.5 };
/** The curve's plastic extension over that of the marks, from which the grips have slipped. */
const SLIPPED = 1.25;

/** @internal Causes whose factor is free: less telling than a known factor that fits, so each weighs by how common it is. */
export function openCauses(
  properties: Properties,
  family: MaterialFamily,
  how: Measurement,
  frameInside: boolean,
  sides: Readonly<Partial<Record<PropertyName, 'low' | 'high'>>>,
): OpenCause[] {
  const { modulus, plasticExtension, elongation, yieldStrength, tensileStrength } = properties;
  const out = (name: PropertyName): 'low' | 'high' | undefined => (rangeOf(family, name) ? sides[name] : undefined);
  const ratio = (name: PropertyName): number => {
    const [low, high] = rangeOf(family, name)!;
    return properties[name]! / (out(name) === 'low' ? low : high);
  };
  const fit = (free: readonly PropertyName[]): number => fitAll(properties, family, frameInside, free);
  const slope = modulus === undefined ? undefined : out('modulus');
  const travelled = how.strainFrom !== 'extensometer';
  const found: OpenCause[] = [];
  const add = (
    key: OpenCauseKey,
    about: Subject,
    weight: number,
    explains: readonly PropertyName[],
    factor: number,
    clause: string,
    check: string,
  ): void => {
    found.push({ key, about, factor, explains, score: weight * fit(explains), clause, check });
  };

  if (slope === 'low' && travelled && ratio('modulus') > LEAST_FRAME)
    add(
      'frame-compliance-left-in',
      'frame',
      how.frameRemoved === true ? 0.4 : 0.9,
      ['modulus'],
      ratio('modulus'),
      how.frameRemoved === true ? 'the compliance that was removed is too small' : 'the stretch of the frame is still in the travel',
      'Measure the compliance of the frame with its grips, or use an extensometer.',
    );
  if (slope === 'high' && travelled && how.frameRemoved === true)
    add(
      'frame-compliance-overrated',
      'frame',
      0.6,
      ['modulus'],
      ratio('modulus'),
      'the compliance that was removed is too large',
      'Measure the compliance of the frame again, with the grips and in the range of force of this test.',
    );

  const longer =
    plasticExtension !== undefined &&
    (out('plasticExtension') === 'high' || (elongation !== undefined && elongation > 0 && plasticExtension > SLIPPED * elongation));
  if (travelled && (slope === 'low' || longer))
    add(
      'grip-slip',
      'frame',
      longer ? 0.6 : 0.35,
      [...(slope === 'low' ? (['modulus'] as const) : []), ...(longer ? (['plasticExtension'] as const) : [])],
      longer ? plasticExtension / (elongation ?? rangeOf(family, 'elongation')![1]) : ratio('modulus'),
      'the piece slipped in the grips',
      'Look for drag marks on the heads and for jogs in the curve; clean or renew the grip faces.',
    );
  if (!travelled && (slope !== undefined || out('plasticExtension') !== undefined))
    add(
      'extensometer-slip',
      'frame',
      0.3,
      (['modulus', 'plasticExtension'] as const).filter((name) => out(name) !== undefined),
      ratio(slope === undefined ? 'plasticExtension' : 'modulus'),
      'the extensometer slipped or was not seated',
      'Seat the knife edges again and load twice within the elastic part: both lines must agree.',
    );

  // strain over a wrong length: slope and plastic extension are off by the same number, one way and the other
  const bySlope = slope === undefined || (frameInside && slope === 'low') ? undefined : 1 / ratio('modulus');
  const byLength = bySlope ?? (out('plasticExtension') === undefined ? undefined : ratio('plasticExtension'));
  const most = travelled ? LENGTHS.travel : LENGTHS.extensometer;
  if (
    byLength !== undefined &&
    (travelled ? how.parallelLengthGiven !== true && byLength > 1 : true) &&
    Math.max(byLength, 1 / byLength) < most
  ) {
    const moved = {
      ...properties,
      ...(modulus === undefined ? {} : { modulus: modulus * byLength }),
      ...(plasticExtension === undefined ? {} : { plasticExtension: plasticExtension / byLength }),
    };
    found.push({
      key: 'strain-length-wrong',
      about: 'piece',
      factor: byLength,
      explains: (['modulus', 'plasticExtension'] as const).filter((name) => out(name) !== undefined),
      score: 0.5 * fitAll(moved, family, frameInside),
      clause: travelled ? 'the gauge length stands for the longer parallel length' : 'another base of the extensometer was entered',
      check: travelled
        ? 'Give the parallel length: all that deforms between the fillets is in the travel.'
        : 'Compare the base that was entered with the extensometer and with the setting of its amplifier.',
    });
  }

  // another condition of the same metal: strengths move together, elongation and exponent the other way
  const strengths = (['yieldStrength', 'tensileStrength'] as const).filter((name) => out(name) !== undefined);
  const ways = new Set(strengths.map(out));
  if (strengths.length > 0 && ways.size === 1 && (yieldStrength ?? tensileStrength) !== undefined) {
    const harder = ways.has('high');
    const factor = ratio(strengths[0]!);
    const against = (['elongation', 'plasticExtension', 'exponent'] as const).filter((name) => out(name) === (harder ? 'low' : 'high'));
    if (Math.max(factor, 1 / factor) < MOST_TREATMENT)
      add(
        harder ? 'worked-or-hardened' : 'softened',
        'method',
        0.5,
        [...strengths, ...against, ...(out('yieldRatio') === (harder ? 'high' : 'low') ? (['yieldRatio'] as const) : [])],
        factor,
        harder ? 'the metal was cold worked or hardened' : 'the metal was annealed or overaged',
        'Ask for the condition of the bar, and take a hardness reading.',
      );
  }
  return found;
}
