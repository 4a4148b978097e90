import type { Subject } from '../base/index.js';
import type { MaterialFamily } from './materialFamilies.js';
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

/** A cause before it is ranked. */
interface Candidate extends Omit<OpenCause, 'score'> {
  /** How common it is. */
  readonly weight: number;
  /** The properties without it, where they follow; otherwise those that it explains are free. */
  readonly mended?: Properties;
}

/** What the causes are looked for in. */
interface Case {
  readonly properties: Properties;
  readonly how: Measurement;
  readonly frameInside: boolean;
  /** True where the strain is made from travel, or may be. */
  readonly travelled: boolean;
  /** On which side of its range in the family a property lies. */
  readonly out: (name: PropertyName) => 'low' | 'high' | undefined;
  /** A property over the nearest end of its range. */
  readonly ratio: (name: PropertyName) => number;
  /** Upper end of the usual elongation. */
  readonly mostElongation: number;
}

/** Beyond this ratio the frame, a slip or a treatment is no explanation (common practice). */
const LEAST_FRAME = 0.02;
const MOST_TREATMENT = 4;
/** Parallel length over gauge length, as pieces are made, and a base entered for another one. */
const LENGTHS = { travel: 1.7, extensometer: 2.5 };
/** The curve's plastic extension over that of the marks, from which the grips have slipped. */
const SLIPPED = 1.25;

const strainNames = ['modulus', 'plasticExtension'] as const;

function frameLeftIn({ how, travelled, out, ratio }: Case): Candidate | undefined {
  if (out('modulus') !== 'low' || !travelled || ratio('modulus') <= LEAST_FRAME) return undefined;
  const removed = how.frameRemoved === true;
  return {
    key: 'frame-compliance-left-in',
    about: 'frame',
    weight: removed ? 0.4 : 0.9,
    explains: ['modulus'],
    factor: ratio('modulus'),
    clause: removed ? 'the compliance that was removed is too small' : 'the stretch of the frame is still in the travel',
    check: 'Measure the compliance of the frame with its grips, or use an extensometer.',
  };
}

function frameOverrated({ how, travelled, out, ratio }: Case): Candidate | undefined {
  if (out('modulus') !== 'high' || !travelled || how.frameRemoved !== true) return undefined;
  return {
    key: 'frame-compliance-overrated',
    about: 'frame',
    weight: 0.6,
    explains: ['modulus'],
    factor: ratio('modulus'),
    clause: 'the compliance that was removed is too large',
    check: 'Measure the compliance of the frame again, with the grips and in the range of force of this test.',
  };
}

function gripSlip({ properties, travelled, out, ratio, mostElongation }: Case): Candidate | undefined {
  const { plasticExtension, elongation } = properties;
  const soft = out('modulus') === 'low';
  const longer =
    plasticExtension !== undefined &&
    (out('plasticExtension') === 'high' || (elongation !== undefined && elongation > 0 && plasticExtension > SLIPPED * elongation));
  if (!travelled || !(soft || longer)) return undefined;
  return {
    key: 'grip-slip',
    about: 'frame',
    weight: longer ? 0.6 : 0.35,
    explains: [...(soft ? (['modulus'] as const) : []), ...(longer ? (['plasticExtension'] as const) : [])],
    factor: longer ? plasticExtension / (elongation ?? mostElongation) : ratio('modulus'),
    clause: 'the piece slipped in the grips',
    check: 'Look for drag marks on the heads and for jogs in the curve; clean or renew the grip faces.',
  };
}

function extensometerSlip({ travelled, out, ratio }: Case): Candidate | undefined {
  const explains = strainNames.filter((name) => out(name) !== undefined);
  if (travelled || explains.length === 0) return undefined;
  return {
    key: 'extensometer-slip',
    about: 'frame',
    weight: 0.3,
    explains,
    factor: ratio(explains[0]!),
    clause: 'the extensometer slipped or was not seated',
    check: 'Seat the knife edges again and load twice within the elastic part: both lines must agree.',
  };
}

/** Strain over a wrong length: slope and plastic extension are off by the same number, one way and the other. */
function wrongLength({ properties, how, frameInside, travelled, out, ratio }: Case): Candidate | undefined {
  const { modulus, plasticExtension } = properties;
  const slope = out('modulus');
  const bySlope = slope === undefined || (frameInside && slope === 'low') ? undefined : 1 / ratio('modulus');
  const factor = bySlope ?? (out('plasticExtension') === undefined ? undefined : ratio('plasticExtension'));
  if (factor === undefined || (travelled && (how.parallelLengthGiven === true || factor <= 1))) return undefined;
  if (Math.max(factor, 1 / factor) >= (travelled ? LENGTHS.travel : LENGTHS.extensometer)) return undefined;
  return {
    key: 'strain-length-wrong',
    about: 'piece',
    weight: 0.5,
    explains: strainNames.filter((name) => out(name) !== undefined),
    factor,
    mended: {
      ...properties,
      ...(modulus === undefined ? {} : { modulus: modulus * factor }),
      ...(plasticExtension === undefined ? {} : { plasticExtension: plasticExtension / factor }),
    },
    clause: travelled ? 'the gauge length stands for the longer parallel length' : 'another base of the extensometer was entered',
    check: travelled
      ? 'Give the parallel length: all that deforms between the fillets is in the travel.'
      : 'Compare the base that was entered with the extensometer and with the setting of its amplifier.',
  };
}

/** Another condition of the same metal: strengths move together, elongation and exponent the other way. */
function otherCondition({ out, ratio }: Case): Candidate | undefined {
  const strengths = (['yieldStrength', 'tensileStrength'] as const).filter((name) => out(name) !== undefined);
  const ways = new Set(strengths.map(out));
  if (ways.size !== 1) return undefined;
  const harder = ways.has('high');
  const factor = ratio(strengths[0]!);
  if (Math.max(factor, 1 / factor) >= MOST_TREATMENT) return undefined;
  const against = (['elongation', 'plasticExtension', 'exponent'] as const).filter((name) => out(name) === (harder ? 'low' : 'high'));
  return {
    key: harder ? 'worked-or-hardened' : 'softened',
    about: 'method',
    weight: 0.5,
    explains: [...strengths, ...against, ...(out('yieldRatio') === (harder ? 'high' : 'low') ? (['yieldRatio'] as const) : [])],
    factor,
    clause: harder ? 'the metal was cold worked or hardened' : 'the metal was annealed or overaged',
    check: 'Ask for the condition of the bar, and take a hardness reading.',
  };
}

const causes = [frameLeftIn, frameOverrated, gripSlip, extensometerSlip, wrongLength, otherCondition];

/** @internal Causes whose factor is free: less telling than a known factor that fits, so each weighs by how common it is. */
export function openCauses(
  properties: Properties,
  family: MaterialFamily,
  how: Measurement,
  frameInside: boolean,
  sides: Readonly<Partial<Record<PropertyName, 'low' | 'high'>>>,
): OpenCause[] {
  const out = (name: PropertyName): 'low' | 'high' | undefined => (rangeOf(family, name) ? sides[name] : undefined);
  const ratio = (name: PropertyName): number => {
    const [low, high] = rangeOf(family, name)!;
    return properties[name]! / (out(name) === 'low' ? low : high);
  };
  const travelled = how.strainFrom !== 'extensometer';
  const given: Case = { properties, how, frameInside, travelled, out, ratio, mostElongation: rangeOf(family, 'elongation')![1] };
  return causes.flatMap((cause) => {
    const found = cause(given);
    if (!found) return [];
    const { weight, mended, ...open } = found;
    const fit = mended ? fitAll(mended, family, frameInside) : fitAll(properties, family, frameInside, open.explains);
    return [{ ...open, score: weight * fit }];
  });
}
