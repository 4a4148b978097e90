import type { RoundingKind } from '../../statistics/index.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** What one standard calls a property, and its rule in our own words. */
export interface StandardRule {
  /** Symbol; empty where it has none. */
  readonly symbol: string;
  /** Name. */
  readonly name: string;
  /** Rule, in our own words. */
  readonly rule: string;
}

/** @internal A property in both standards. */
export interface RulePair {
  readonly field: keyof TensionResult;
  readonly kind: RoundingKind;
  readonly iso: StandardRule;
  readonly astm: StandardRule;
  readonly difference: string;
}

/** @internal ISO 6892-1:2019 and ASTM E8/E8M side by side, from memory of both. */
export const rulePairs: readonly RulePair[] = [
  {
    field: 'upperYieldStrength',
    kind: 'strength',
    iso: {
      symbol: 'ReH',
      name: 'upper yield strength',
      rule: 'highest stress before the force first falls: by 0.5 % at least, and not reached again over the next 0.05 % of strain',
    },
    astm: {
      symbol: 'UYS',
      name: 'upper yield strength',
      rule: 'first maximum of stress that goes with discontinuous yielding at its onset',
    },
    difference: 'The same sample on a clear fall. A knee, or a halt of the pointer, without a fall is a yield strength for ASTM alone.',
  },
  {
    field: 'lowerYieldStrength',
    kind: 'strength',
    iso: {
      symbol: 'ReL',
      name: 'lower yield strength',
      rule: 'lowest stress of plastic yielding, the initial transient left out; a short rule takes the lowest within 0.25 % after ReH',
    },
    astm: { symbol: 'LYS', name: 'lower yield strength', rule: 'lowest stress of discontinuous yielding, transients left out' },
    difference: 'The same, unless the short rule was agreed.',
  },
  {
    field: 'yieldPointExtension',
    kind: 'yieldPointExtension',
    iso: {
      symbol: 'Ae',
      name: 'percentage yield point extension',
      rule: 'from ReH to the start of uniform hardening, found with a horizontal or a regression line',
    },
    astm: { symbol: 'YPE', name: 'yield point elongation', rule: 'from the first point of zero slope to where uniform hardening begins' },
    difference: 'The construction of the end point is to be stated; values differ by a few tenths of a per cent at most.',
  },
  {
    field: 'proofStrengths',
    kind: 'strength',
    iso: {
      symbol: 'Rp',
      name: 'proof strength, plastic extension',
      rule: 'stress where the curve meets a line of the slope of its own straight part, offset by the plastic extension',
    },
    astm: {
      symbol: 'YS (offset)',
      name: 'yield strength, offset method',
      rule: 'the same construction; the offset is stated with the value',
    },
    difference: 'The same value. ISO wants an extensometer of class 1 (ISO 9513), ASTM class B-2 (E83).',
  },
  {
    field: 'totalExtensionStrengths',
    kind: 'strength',
    iso: { symbol: 'Rt', name: 'proof strength, total extension', rule: 'stress at a total extension of the gauge length' },
    astm: { symbol: 'YS (EUL)', name: 'yield strength, extension under load', rule: 'stress at a stated extension under load' },
    difference: 'The same value; both need a true zero of extension.',
  },
  {
    field: 'tensileStrength',
    kind: 'strength',
    iso: {
      symbol: 'Rm',
      name: 'tensile strength',
      rule: 'highest force over the original area; with discontinuous yielding the highest after hardening has begun',
    },
    astm: {
      symbol: 'TS',
      name: 'tensile strength',
      rule: 'highest force over the original area; the highest after yielding is recommended where the upper yield strength is higher',
    },
    difference: 'The same, unless the upper yield strength is the highest stress of all: then say which is meant.',
  },
  {
    field: 'uniformExtension',
    kind: 'extension',
    iso: { symbol: 'Ag', name: 'percentage plastic extension at maximum force', rule: 'extension at maximum force less its elastic part' },
    astm: { symbol: '', name: 'not named', rule: 'the uniform elongation of ASTM holds the elastic part' },
    difference: 'Compare the uniform elongation of ASTM with Agt, not with Ag.',
  },
  {
    field: 'totalExtensionAtMaximumForce',
    kind: 'extension',
    iso: {
      symbol: 'Agt',
      name: 'percentage total extension at maximum force',
      rule: 'extension at maximum force, the middle of a flat top',
    },
    astm: { symbol: 'El(U)', name: 'uniform elongation', rule: 'elongation at maximum force, just before necking' },
    difference: 'The same point of the curve.',
  },
  {
    field: 'elongationAfterFracture',
    kind: 'extension',
    iso: { symbol: 'A', name: 'percentage elongation after fracture', rule: 'by marks 5.65 √S0 apart; another length is written as index' },
    astm: { symbol: 'El', name: 'elongation after fracture', rule: 'by marks four diameters apart (E8), five (E8M), or 50 mm on sheet' },
    difference:
      'A shorter gauge length gives more, since the neck is a larger part of it: convert by ISO 2566 within its limits, never compare as they are.',
  },
  {
    field: 'reductionOfArea',
    kind: 'reductionOfArea',
    iso: { symbol: 'Z', name: 'percentage reduction of area', rule: 'least area after fracture against the original one' },
    astm: { symbol: 'RA', name: 'reduction of area', rule: 'the same; of flats with an effective thickness, (t1 + 4 t2 + t3)/6' },
    difference: 'The same for rounds.',
  },
];

/** @internal Rules that carry no value. */
export const plainPairs: readonly { readonly topic: string; readonly iso: string; readonly astm: string; readonly difference: string }[] = [
  {
    topic: 'position of the fracture',
    iso: 'A is valid without more where the fracture is a third of the gauge length or more from the nearest mark; anywhere where it reaches its least value; else by subdivision',
    astm: 'outside the middle half of the gauge length the elongation may not represent the material',
    difference: 'ISO is the stricter: a third against a quarter of the gauge length.',
  },
  {
    topic: 'rates',
    iso: 'method A: strain rates of 0.00007, 0.00025, 0.002 or 0.0067 per second within a fifth; method B: 6 to 60 MPa/s (2 to 20 below 150 GPa) while elastic',
    astm: 'control method A: 1.15 to 11.5 MPa/s; B and C: 0.015 per minute; then 0.05 to 0.5 per minute to the tensile strength',
    difference: 'The letters do not mean the same: method B of ISO and control method A of ASTM are the stress rates.',
  },
  {
    topic: 'point of fracture',
    iso: 'the force falls by more than five times its last step and then stays below 2 % of the highest',
    astm: 'just before the sudden fall, or where the force has fallen below a tenth of the highest',
    difference: 'Of consequence for soft metals that tear slowly.',
  },
  {
    topic: 'rounding',
    iso: 'strengths to 1 MPa, Ae to 0.1 %, other extensions to 0.5 %, Z to 1 %',
    astm: 'strengths to 1 MPa below 500, 5 MPa below 1000, 10 MPa above; elongation and reduction to 0.5 % below 10 %, 1 % above',
    difference: 'Round once, from the unrounded value; a limit is compared with the value as its own standard rounds it.',
  },
];
