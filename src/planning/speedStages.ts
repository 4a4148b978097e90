import { crossheadSpeed, strainRateOfSpeed, stressRatesOf, testingRates, type RateLimits } from '../curve/index.js';
import { oilFlow } from './oilFlow.js';
import type { SpeedStage } from './TensionPlan.js';
import type { RateControl } from './TensionPlanInput.js';
import { cylinderArea, type TestFrame } from './TestFrame.js';

/** @internal What the speeds follow from. */
export interface StageInput {
  readonly frame: TestFrame;
  readonly control: RateControl;
  readonly strengthRange: 2 | 3 | 4;
  /** Parallel length [mm]. */
  readonly length: number;
  /** Area [mm²]. */
  readonly area: number;
  /** Modulus, the middle of its range [MPa]. */
  readonly modulus: number;
  /** Give of frame and fillets [mm/N]. */
  readonly give: number;
  /** Lowest yield strength to be expected [MPa]; undefined where there is none. */
  readonly lowestYield: number | undefined;
}

/** The speed changes at this share of the lowest yield strength, before any plastic strain is likely (common practice). */
const CHANGE_AT = 0.8;
/** Plastic strain at which yield is over and Rp0.2 is past (common practice). */
const YIELD_OVER = 0.005;

const geometricMean = ([low, high]: RateLimits): number => Math.sqrt(low * high);
const scaled = ([low, high]: RateLimits, factor: number): RateLimits => [low * factor, high * factor];

/** A rate to aim at, and what is allowed. */
interface Aim {
  readonly strainRate: number;
  readonly limits: RateLimits;
}

/** Rates of the three parts: strain rates of the parallel length. */
function aims({ control, strengthRange, length, area, modulus, give }: StageInput): Readonly<Record<SpeedStage['stage'], Aim>> {
  const { strainRanges, recommendedRanges, methodB, e8 } = testingRates;
  const ofRange = (number: number): Aim => strainRanges.find(({ range }) => range === number)!;
  const elastic = { length, area, slope: modulus, compliance: give };
  /** The speed of the elastic part is held through yield, unless that strains the piece too fast. */
  const held = (stressRates: RateLimits, most: number, strength: Aim): ReturnType<typeof aims> => {
    const strainRate = geometricMean(stressRates) / modulus;
    const through = crossheadSpeed({ ...elastic, strainRate }) / length;
    return {
      elastic: { strainRate, limits: scaled(stressRates, 1 / modulus) },
      yield: { strainRate: Math.min(through, most), limits: [0, most] },
      strength,
    };
  };
  const afterE8: Aim = { strainRate: geometricMean(e8.strength), limits: e8.strength };
  const centre = ([low, high]: RateLimits): number => (low + high) / 2;
  switch (control) {
    case 'iso-a':
      return {
        elastic: ofRange(recommendedRanges.proof),
        yield: ofRange(recommendedRanges.proof),
        strength: ofRange(strengthRange),
      };
    case 'iso-b':
      return held(stressRatesOf(modulus), methodB.upToProof, {
        strainRate: ofRange(recommendedRanges.strength).strainRate,
        limits: [0, methodB.afterYield],
      });
    case 'e8-a':
      return held(e8.stressRate, e8.strength[1], afterE8);
    case 'e8-b': {
      const aim = { strainRate: centre(e8.strainRate), limits: e8.strainRate };
      return { elastic: aim, yield: aim, strength: afterE8 };
    }
    case 'e8-c': {
      // one speed of the crosshead: the piece gets its share of it
      const share = strainRateOfSpeed({ ...elastic, speed: length });
      return {
        elastic: { strainRate: centre(e8.crosshead) * share, limits: scaled(e8.crosshead, share) },
        yield: { strainRate: centre(e8.crosshead), limits: e8.crosshead },
        strength: afterE8,
      };
    }
  }
}

/** Strokes or turns a minute. */
function drivePerMinute({ drive }: TestFrame, speed: number, flow: number | undefined): number | undefined {
  if (drive === undefined) return undefined;
  if (drive.kind === 'screw') return (60 * speed) / drive.travelPerTurn;
  return flow === undefined ? undefined : (60 * flow) / drive.volumePerStroke;
}

/** @internal The speeds of a tension test, one for each part. */
export function speedStages(input: StageInput): SpeedStage[] {
  const { frame, length, area, modulus, give, lowestYield } = input;
  const aim = aims(input);
  const piston = cylinderArea(frame);
  const stageOf = (stage: SpeedStage['stage'], more: Partial<SpeedStage>): SpeedStage => {
    const { strainRate, limits } = aim[stage];
    const elastic = stage === 'elastic';
    const speed = crossheadSpeed({ strainRate, length, area, slope: elastic ? modulus : 0, compliance: give });
    const forceRate = elastic ? strainRate * modulus * area : 0;
    const pressureRate = piston === undefined ? undefined : forceRate / (piston * (frame.efficiency ?? 1));
    const flow =
      piston === undefined || pressureRate === undefined
        ? undefined
        : oilFlow({
            speed,
            area: piston,
            pressureRate,
            volume: frame.oilVolume ?? 0,
            bulkModulus: frame.oilBulkModulus,
            hoseGrowth: frame.hoseGrowth,
          });
    const perMinute = drivePerMinute(frame, speed, flow);
    return {
      stage,
      strainRate,
      limits,
      speed,
      ...(elastic ? { stressRate: strainRate * modulus, forceRate } : {}),
      ...(elastic && pressureRate !== undefined ? { pressureRate } : {}),
      ...(flow === undefined ? {} : { oilFlow: flow }),
      ...(perMinute === undefined ? {} : { drivePerMinute: perMinute }),
      ...more,
    };
  };
  return lowestYield === undefined
    ? [stageOf('elastic', {}), stageOf('strength', {})]
    : [
        stageOf('elastic', { untilStress: CHANGE_AT * lowestYield }),
        stageOf('yield', { untilPlasticStrain: YIELD_OVER }),
        stageOf('strength', {}),
      ];
}
