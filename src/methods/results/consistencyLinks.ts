import { doubt, link, type ConsistencyLink } from './consistencyLink.js';
import { ELONGATION_DOUBT, REDUCTION_DOUBT } from '../common/brokenPiece.js';
import type { TensionResult } from '../evaluation/TensionResult.js';
import { NECKING_AGREEMENT } from '../loading/hardeningFindings.js';

/** Rm over HBW of steels, middle and half-width (common practice: 3.0 to 3.6). */
const HARDNESS_FACTOR = [3.3, 0.3] as const;
/** Barba's even part against Ag, as a share of Ag (common practice). */
const BARBA_DOUBT = 0.25;
/** @internal Rm and hardness, of steels. An Rm that is only at least so large may be equal to anything above: then the hardness must stand for at least as much. */
export function hardnessLink({ tensileStrength: Rm }: TensionResult, hardness: number, uncertainty: number): ConsistencyLink[] {
  const [factor, half] = HARDNESS_FACTOR;
  const strength = { symbol: 'Rm', value: Rm.value, unit: 'MPa' } as const;
  const byHardness = { symbol: '3.3 HBW', value: factor * hardness, unit: 'MPa' } as const;
  return [
    link({
      link: 'strength-hardness',
      ...(Rm.atLeast
        ? { relation: 'at-least', left: byHardness, right: strength }
        : { relation: 'equal', left: strength, right: byHardness }),
      doubts: [doubt(Rm), factor * uncertainty],
      open: half * hardness,
      causes: [
        'force or area off by a factor',
        'hardness read on a decarburised or cold-worked skin',
        'austenitic or cold-worked steel, or no steel',
      ],
      source: 'common practice: Rm is 3.0 to 3.6 times HBW of carbon and low-alloy steels',
    }),
  ];
}

/** @internal n and the uniform strain. */
export function neckingLink({ hardening, totalExtensionAtMaximumForce: Agt }: TensionResult): ConsistencyLink[] {
  if (!hardening || !Agt) return [];
  const n = hardening.exponent;
  return [
    link({
      link: 'exponent-uniform-strain',
      relation: 'equal',
      left: { symbol: 'n', value: n.value, unit: '1' },
      right: { symbol: 'ln(1 + Agt)', value: Math.log1p(Agt.value), unit: '1' },
      doubts: [doubt(n), doubt(Agt) / (1 + Agt.value)],
      open: NECKING_AGREEMENT,
      causes: [
        'slip or frame motion in the strain',
        'the fit takes in the yield plateau or passes the maximum',
        'the metal does not follow a power law',
      ],
      source: "Considère's condition with Hollomon's law (textbooks)",
    }),
  ];
}

/** @internal A on two gauge lengths of one piece, and Ag. */
export function barbaLinks(result: TensionResult, other: { readonly elongation: number; readonly gaugeLength: number }): ConsistencyLink[] {
  const { elongationAfterFracture: A, uniformExtension: Ag, testPiece } = result;
  if (!A) return [];
  const own = { value: A.value, x: Math.sqrt(testPiece.section.area) / testPiece.gaugeLength };
  const second = { value: other.elongation, x: Math.sqrt(testPiece.section.area) / other.gaugeLength };
  const [short, long] = own.x > second.x ? [own, second] : [second, own];
  const u = doubt(A, ELONGATION_DOUBT);
  const order = link({
    link: 'elongation-two-lengths',
    relation: 'at-least',
    left: { symbol: 'A (short)', value: short.value, unit: '1' },
    right: { symbol: 'A (long)', value: long.value, unit: '1' },
    doubts: [u, ELONGATION_DOUBT],
    open: 0,
    causes: ['the two gauge lengths were exchanged', 'the short gauge length does not hold the fracture', 'a reading of Lu is wrong'],
    source: 'Barba (1880): the neck weighs more on a short gauge length',
  });
  if (!Ag) return [order];
  const even = (short.x * long.value - long.x * short.value) / (short.x - long.x);
  return [
    order,
    link({
      link: 'even-part',
      relation: 'equal',
      left: { symbol: 'a of A = a + b √S0/L0', value: even, unit: '1' },
      right: { symbol: 'Ag', value: Ag.value, unit: '1' },
      doubts: [(short.x * ELONGATION_DOUBT) / (short.x - long.x), (long.x * u) / (short.x - long.x), doubt(Ag)],
      open: BARBA_DOUBT * Math.abs(Ag.value),
      causes: ['Ag holds slip or frame motion', 'the two gauge lengths are too alike to tell', 'a reading of Lu is wrong'],
      source: 'Barba (1880): the even part of the elongation is the extension before the neck',
    }),
  ];
}

/** @internal What must be at least as large as the elongation, or at most. */
export function elongationLinks({
  elongationAfterFracture: A,
  uniformExtension: Ag,
  reductionOfArea: Z,
}: TensionResult): ConsistencyLink[] {
  if (!A) return [];
  const u = doubt(A, ELONGATION_DOUBT);
  const links: ConsistencyLink[] = [];
  if (Ag)
    links.push(
      link({
        link: 'elongation-uniform-extension',
        relation: 'at-least',
        left: { symbol: 'A', value: A.value, unit: '1' },
        right: { symbol: 'Ag', value: Ag.value, unit: '1' },
        doubts: [u, doubt(Ag)],
        open: 0,
        causes: [
          'the extension holds slip, frame motion or material outside the gauge length',
          'Lu was measured outside the fracture',
          'a unit or a length is wrong',
        ],
        source: 'ISO 6892-1: both are plastic, and A holds the neck as well',
      }),
    );
  if (Z && Z.value < 1)
    links.push(
      link({
        link: 'fracture-strain-elongation',
        relation: 'at-least',
        left: { symbol: 'ln(1/(1 − Z))', value: -Math.log1p(-Z.value), unit: '1' },
        right: { symbol: 'ln(1 + A)', value: Math.log1p(A.value), unit: '1' },
        doubts: [doubt(Z, REDUCTION_DOUBT) / (1 - Z.value), u / (1 + A.value)],
        open: 0,
        causes: ['Su was measured beside the neck', 'Lu or L0 is wrong', 'area or diameter taken for each other'],
        source: 'constancy of volume: at the fracture the strain is at least the mean over the gauge length',
      }),
    );
  return links;
}
