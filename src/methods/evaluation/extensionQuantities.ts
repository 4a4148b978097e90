import { ISO, quantity } from '../common/quantity.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionResult } from './TensionResult.js';

type Name =
  | 'uniformExtension'
  | 'totalExtensionAtMaximumForce'
  | 'totalExtensionAtFracture'
  | 'fracture'
  | 'plasticExtensionAtFracture'
  | 'toughness'
  | 'necking';
type Found = { -readonly [K in Name]?: NonNullable<TensionResult[K]> };

/** @internal What stands at the maximum, at fracture and between. */
export function extensionQuantities(numbers: TensionNumbers): Found {
  const { line, maximum, fracture, toughness, necking, spread } = numbers;
  const plastic = (strain: number, stress: number) => (line.ok ? strain - stress / line.slope : undefined);
  const uniform = maximum && plastic(maximum.strain, maximum.stress);
  const broken = fracture.ok ? plastic(fracture.strain, fracture.stress) : undefined;
  // anywhere on a plateau, and anywhere that noise makes as high, with the same right
  const width = maximum && Math.max(maximum.plateau[1] - maximum.plateau[0], spread?.withinNoise ?? 0);
  const wide = width !== undefined && width > 0 ? width / Math.sqrt(12) : undefined;
  // no test shortens: what would be negative stands on a motion that was set anew, or on noise where nothing flowed
  const positive = (value: number | undefined): value is number => value !== undefined && value >= 0;
  const counts = fracture.ok && positive(fracture.strain);
  // set one by one, because a literal that spreads others costs ten times as much, and every trial makes one
  const found: Found = {};
  if (positive(uniform))
    found.uniformExtension = quantity(
      'Ag',
      'plastic extension at maximum force',
      uniform,
      '1',
      `${ISO}, percentage plastic extension at maximum force`,
      wide,
    );
  if (maximum && positive(maximum.strain))
    found.totalExtensionAtMaximumForce = quantity(
      'Agt',
      'total extension at maximum force',
      maximum.strain,
      '1',
      `${ISO}, percentage total extension at maximum force`,
      wide,
    );
  if (counts) {
    found.totalExtensionAtFracture = quantity(
      'At',
      'total extension at fracture',
      fracture.strain,
      '1',
      `${ISO}, percentage total extension at fracture`,
    );
    found.fracture = { index: fracture.index, strain: fracture.strain, stress: fracture.stress, how: fracture.how };
  }
  if (counts && positive(broken))
    found.plasticExtensionAtFracture = quantity(
      'At − R/mE',
      'plastic extension at fracture, from the curve',
      broken,
      '1',
      'total extension less the elastic part',
    );
  if (counts && positive(toughness))
    found.toughness = quantity('U', 'energy per volume up to fracture', toughness, 'MPa', 'area under the curve (textbooks)');
  if (necking?.ok === true && necking.strain >= 0)
    found.necking = quantity(
      'εu',
      'true strain at the onset of necking',
      necking.strain,
      '1',
      "Considère's construction (textbooks)",
      necking.standardUncertainty,
    );
  return found;
}
