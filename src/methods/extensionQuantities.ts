import { ISO, quantity } from './quantity.js';
import type { TensionNumbers } from './tensionKernel.js';

/** @internal What stands at the maximum, at fracture and between. */
export function extensionQuantities(numbers: TensionNumbers) {
  const { line, maximum, fracture, toughness, necking } = numbers;
  const plastic = (strain: number, stress: number) => (line.ok ? strain - stress / line.slope : undefined);
  const uniform = maximum && plastic(maximum.strain, maximum.stress);
  const broken = fracture.ok ? plastic(fracture.strain, fracture.stress) : undefined;
  const wide = maximum && maximum.plateau[1] > maximum.plateau[0] ? (maximum.plateau[1] - maximum.plateau[0]) / Math.sqrt(12) : undefined;
  return {
    ...(uniform === undefined
      ? {}
      : {
          uniformExtension: quantity(
            'Ag',
            'plastic extension at maximum force',
            uniform,
            '1',
            `${ISO}, percentage plastic extension at maximum force`,
            wide,
          ),
        }),
    ...(maximum
      ? {
          totalExtensionAtMaximumForce: quantity(
            'Agt',
            'total extension at maximum force',
            maximum.strain,
            '1',
            `${ISO}, percentage total extension at maximum force`,
            wide,
          ),
        }
      : {}),
    ...(fracture.ok
      ? {
          totalExtensionAtFracture: quantity(
            'At',
            'total extension at fracture',
            fracture.strain,
            '1',
            `${ISO}, percentage total extension at fracture`,
          ),
          fracture: { index: fracture.index, strain: fracture.strain, stress: fracture.stress, how: fracture.how },
        }
      : {}),
    ...(broken === undefined
      ? {}
      : {
          plasticExtensionAtFracture: quantity(
            'At − R/mE',
            'plastic extension at fracture, from the curve',
            broken,
            '1',
            'total extension less the elastic part',
          ),
        }),
    ...(toughness === undefined
      ? {}
      : { toughness: quantity('U', 'energy per volume up to fracture', toughness, 'MPa', 'area under the curve (textbooks)') }),
    ...(necking?.ok === true
      ? {
          necking: quantity(
            'εu',
            'true strain at the onset of necking',
            necking.strain,
            '1',
            "Considère's construction (textbooks)",
            necking.standardUncertainty,
          ),
        }
      : {}),
  };
}
