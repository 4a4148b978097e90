import { roundingStep } from '../../statistics/index.js';
import { ISO, quantity } from '../common/quantity.js';
import { strengthsAt } from '../loading/strengthsAt.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from './tensionOptions.js';
import type { TensionResult, YieldStrength } from './TensionResult.js';

type Name = 'proportionalLimit' | 'upperYieldStrength' | 'lowerYieldStrength' | 'yieldPointExtension';
type Found = { -readonly [K in Name]: NonNullable<TensionResult[K]> };

const definitions = {
  offset: '0.01 % plastic extension',
  deviation: 'first lasting deviation of three standard deviations',
  tangent: 'tangent of 90 % of the slope',
  johnson: "Johnson's apparent elastic limit",
} as const;

/** @internal Lowest and highest proportional limit by the definitions that find one [MPa]; undefined where they are alike once rounded, which matters to nobody. */
export function byDefinitions(proportional: TensionNumbers['proportional']): readonly [number, number] | undefined {
  const limits = Object.values(proportional ?? {}).flatMap((one) => (one.ok ? [one.stress] : []));
  const [lowest, highest] = [Math.min(...limits), Math.max(...limits)];
  return highest - lowest > roundingStep('strength', highest, 'iso') ? [lowest, highest] : undefined;
}

/** @internal Yield strengths, proof strengths and the proportional limit; strengths at total extensions only where the strain is the piece's, from an origin. */
export function yieldQuantities(numbers: TensionNumbers, settings: TensionSettings, strainOfPiece = true) {
  const [plastic, total] = ['proof strength, plastic extension', 'proof strength, total extension'] as const;
  const points = numbers.yielding;
  const limit = numbers.proportional?.[settings.proportionalLimit];
  // an extension that holds a slip of the piece is not its own
  const slipped =
    points?.ok === true && numbers.slips.some((slip) => slip.at >= points.upper.index && slip.at < (points.hardeningStart ?? Infinity));
  const at = (symbol: string, name: string, source: string, point: { stress: number; strain: number; index: number }): YieldStrength =>
    Object.assign(quantity(symbol, name, point.stress, 'MPa', source), { strain: point.strain, index: point.index });
  // set one by one, because a literal that spreads others costs ten times as much, and every trial makes one
  const found: Partial<Found> = {};
  if (limit?.ok === true) {
    const source =
      limit.definition === 'johnson' ? "Johnson's apparent elastic limit (textbooks)" : 'ASTM E6, proportional limit; common practice';
    const name = `limit of proportionality (${definitions[limit.definition]})`;
    const range = byDefinitions(numbers.proportional);
    const value = quantity('Rpl', name, limit.stress, 'MPa', source, limit.standardUncertainty);
    found.proportionalLimit = range ? Object.assign(value, { byDefinition: range }) : value;
  }
  if (points?.ok === true) {
    found.upperYieldStrength = at('ReH', 'upper yield strength', `${ISO}, upper yield strength`, points.upper);
    found.lowerYieldStrength = at('ReL', 'lower yield strength', `${ISO}, lower yield strength`, points.lower);
    if (!slipped && points.extension !== undefined)
      found.yieldPointExtension = quantity(
        'Ae',
        'yield point extension',
        points.extension,
        '1',
        `${ISO}, percentage yield point extension`,
      );
  }
  return Object.assign(found, {
    proofStrengths: strengthsAt('Rp', plastic, `${ISO}, ${plastic}`, numbers.proofs, settings.offsets),
    totalExtensionStrengths:
      strainOfPiece && numbers.line.ok ? strengthsAt('Rt', total, `${ISO}, ${total}`, numbers.totals, settings.totalExtensions) : [],
  });
}
