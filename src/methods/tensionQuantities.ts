import type { BaseUnit, Quantity, TestPiece } from '../base/index.js';
import type { LineExplanation, WindowChoice } from '../curve/index.js';
import { elongationAfterFracture, reductionOfArea } from '../geometry/index.js';
import type { TensionNumbers } from './tensionKernel.js';
import type { TensionSettings } from './tensionOptions.js';
import type { StrengthAtExtension, TensionResult, YieldStrength } from './TensionResult.js';

const ISO = 'ISO 6892-1:2019';

const quantity = (symbol: string, name: string, value: number, unit: BaseUnit, source: string, standardUncertainty?: number): Quantity => ({
  symbol,
  name,
  value,
  unit,
  source,
  ...(standardUncertainty === undefined ? {} : { standardUncertainty }),
});

/** @internal 0.002 as the index of a symbol: 0.2. */
export const percent = (strain: number): string => String(Number((100 * strain).toPrecision(12)));

const definitions = {
  offset: '0.01 % plastic extension',
  deviation: 'first lasting deviation of three standard deviations',
  tangent: 'tangent of 90 % of the slope',
  johnson: "Johnson's apparent elastic limit",
} as const;

/** The quantities of a result, each only where the numbers support it. */
type Quantities = Omit<
  TensionResult,
  | 'method'
  | 'test'
  | 'testPiece'
  | 'extensionBasis'
  | 'strainLength'
  | 'curve'
  | 'maximumForce'
  | 'rates'
  | 'findings'
  | 'trail'
  | 'provenance'
>;

/** How a window was chosen. */
function criterionInWords(window: WindowChoice): string {
  if (window.by === 'lower-bound') return `highest slope less ${window.z ?? 0} standard errors`;
  if (window.by === 'relative-error') return 'least relative standard error';
  return `given by its ${window.by === 'samples' ? 'samples' : `limits of ${window.by}`}`;
}

/** Elastic line, window and modulus. */
function elastic(numbers: TensionNumbers, curve: TensionResult['curve'], isModulus: boolean, explanation: LineExplanation) {
  const { line, shift } = numbers;
  if (!line.ok) return {};
  const slope = (symbol: string, name: string, source: string) =>
    quantity(symbol, name, line.slope, 'MPa', source, line.points > 2 ? line.standardError : undefined);
  return {
    elasticSlope: slope('mE', 'slope of the elastic part', `${ISO}, slope of the elastic part of the curve`),
    ...(isModulus ? { modulus: slope('E', 'modulus of elasticity', `${ISO}, Annex G, modulus of elasticity`) } : {}),
    modulusWindow: {
      criterion: criterionInWords(line.criterion),
      first: line.first,
      last: line.last,
      points: line.points,
      slope: line.slope,
      strainLimits: [curve.strain[line.first]!, curve.strain[line.last]!] as const,
      stressLimits: [curve.stress[line.first]!, curve.stress[line.last]!] as const,
      strainShift: shift,
      rSquared: line.rSquared,
      relativeStandardError: line.relativeStandardError,
      alternatives: line.alternatives.map(({ first, last, slope: other }) => ({ first, last, slope: other })),
      ...explanation,
    },
  };
}

/** Yield strengths, proof strengths and the proportional limit. */
function yielding(numbers: TensionNumbers, settings: TensionSettings) {
  const points = numbers.yielding;
  const limit = numbers.proportional?.[settings.proportionalLimit];
  const at = (symbol: string, name: string, source: string, point: { stress: number; strain: number; index: number }): YieldStrength => ({
    ...quantity(symbol, name, point.stress, 'MPa', source),
    strain: point.strain,
    index: point.index,
  });
  const strengths = (
    symbol: string,
    name: string,
    found: TensionNumbers['proofs'] | TensionNumbers['totals'],
    extensions: readonly number[],
  ): StrengthAtExtension[] =>
    found.flatMap((one, i) => {
      const extension = extensions[i]!;
      return one.ok
        ? [{ ...quantity(`${symbol}${percent(extension)}`, name, one.stress, 'MPa', `${ISO}, ${name}`), extension, strain: one.strain }]
        : [];
    });
  return {
    ...(limit?.ok === true
      ? {
          proportionalLimit: quantity(
            'Rpl',
            `limit of proportionality (${definitions[limit.definition]})`,
            limit.stress,
            'MPa',
            limit.definition === 'johnson'
              ? "Johnson's apparent elastic limit (textbooks)"
              : 'ASTM E6, proportional limit; common practice',
          ),
        }
      : {}),
    ...(points?.ok === true
      ? {
          upperYieldStrength: at('ReH', 'upper yield strength', `${ISO}, upper yield strength`, points.upper),
          lowerYieldStrength: at('ReL', 'lower yield strength', `${ISO}, lower yield strength`, points.lower),
          yieldPointExtension: quantity('Ae', 'yield point extension', points.extension, '1', `${ISO}, percentage yield point extension`),
        }
      : {}),
    proofStrengths: strengths('Rp', 'proof strength, plastic extension', numbers.proofs, settings.offsets),
    totalExtensionStrengths: strengths('Rt', 'proof strength, total extension', numbers.totals, settings.totalExtensions),
  };
}

/** What stands at the maximum, at fracture and between. */
function extensions(numbers: TensionNumbers) {
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

/** The hardening law. */
function hardening({ hardening: fit }: TensionNumbers): Pick<TensionResult, 'hardening'> {
  if (fit?.ok !== true) return {};
  return {
    hardening: {
      law: 'Hollomon',
      exponent: quantity(
        'n',
        'hardening exponent',
        fit.exponent,
        '1',
        'Hollomon, least squares on true plastic strain',
        fit.standardErrors.exponent,
      ),
      strengthCoefficient: quantity(
        'K',
        'strength coefficient',
        fit.strengthCoefficient,
        'MPa',
        'Hollomon, least squares on true plastic strain',
        fit.standardErrors.strengthCoefficient,
      ),
      range: fit.range,
      points: fit.points,
      rSquared: fit.rSquared,
    },
  };
}

/** @internal A and Z, from what was measured on the broken piece; readings that do not fit are left to a finding. */
export function afterFracture({
  section,
  gaugeLength,
  afterFracture: after,
}: TestPiece): Pick<TensionResult, 'elongationAfterFracture' | 'reductionOfArea'> {
  const length = after?.gaugeLength;
  const area = after?.area;
  return {
    ...(length !== undefined && length >= gaugeLength
      ? {
          elongationAfterFracture: quantity(
            'A',
            'elongation after fracture',
            elongationAfterFracture({ originalLength: gaugeLength, finalLength: length }),
            '1',
            `${ISO}, percentage elongation after fracture`,
          ),
        }
      : {}),
    ...(area !== undefined && area <= section.area
      ? {
          reductionOfArea: quantity(
            'Z',
            'reduction of area',
            reductionOfArea({ originalArea: section.area, finalArea: area }),
            '1',
            `${ISO}, percentage reduction of area`,
          ),
        }
      : {}),
  };
}

/** @internal Names, units and sources for the numbers. */
export function tensionQuantities(
  numbers: TensionNumbers,
  curve: TensionResult['curve'],
  stress: Float64Array,
  settings: TensionSettings,
  isModulus: boolean,
  explanation: LineExplanation,
): Quantities {
  const yields = yielding(numbers, settings);
  const proof = yields.proofStrengths[0];
  const { line } = numbers;
  return {
    ...elastic(numbers, curve, isModulus, explanation),
    ...yields,
    tensileStrength: quantity('Rm', 'tensile strength', stress[numbers.maximumSample]!, 'MPa', `${ISO}, tensile strength`),
    maximumIndex: numbers.maximumSample,
    ...extensions(numbers),
    ...(isModulus && line.ok && proof
      ? {
          resilience: quantity(
            'Ur',
            'energy per volume up to the proof strength',
            proof.value ** 2 / (2 * line.slope),
            'MPa',
            'Rp²/(2E) (textbooks)',
          ),
        }
      : {}),
    ...hardening(numbers),
  };
}

/** @internal Fm. */
export const maximumForce = (force: number): Quantity => quantity('Fm', 'maximum force', force, 'N', `${ISO}, maximum force`);
