/**
 * The scenario: an apprentices' class in a bicycle-frame workshop pulls round coupons from bar and strips cut from tube on a 25 kN
 * hand-pumped bench frame. Everything is invented: pieces, materials and records are made by the simulation. The first piece is also
 * `examples/pull-07.csv`.
 */
import { round, tubeStrip } from 'testpiece';
import { writeRecord } from 'testpiece/simulate';

/** Bore 40 mm, the annulus around a 20 mm rod pulls; the class measured the compliance of the frame on a stiff bar. */
export const frame = { bore: 40, rod: 20, compliance: 2e-5 };

/** Bits of the pressure transmitter over 400 bar, a draw-wire sensor of 5 µm, 20 samples a second. */
const logger = { rate: 20, loadStep: 40 / 65535, motionStep: 0.005, motionNoise: 0.002, forceNoise: 12, lead: 1.5, tail: 2 };
const hand = { speed: 0.05, speedAfterYield: 0.12, strokes: 24, depth: 0.25 };

/** A record as the logger of the class writes it: bar, mm of travel, decimal commas. */
export const asLogged = (record, about) =>
  writeRecord(record, {
    columns: [
      { quantity: 'time', name: 'Zeit', unit: 's', decimals: 2 },
      { quantity: 'pressure', name: 'Druck', unit: 'bar', decimals: 2 },
      { quantity: 'travel', name: 'Weg', unit: 'mm', decimals: 3 },
    ],
    preamble: ['Data: invented, made by a simulation', `Piece: ${about}`],
  });

export const pieces = [
  {
    name: '1-bar-mild',
    about: 'round coupon from mild steel bar, evenly pumped',
    piece: { section: round({ diameter: [8.01, 8.0, 7.99] }), gaugeLength: 40, parallelLength: 48 },
    material: {
      modulus: 206_000,
      yieldStress: 285,
      yieldPoint: { upper: 306, plateau: 0.014 },
      hardening: { law: 'swift', prestrain: 0.035, exponent: 0.24 },
      fracture: { extension: 0.33, share: 0.72 },
      reductionOfArea: 0.63,
    },
    frame: { slack: 0.4, seating: 0.08 },
    hand,
    logger,
    seed: 11,
  },
  {
    name: '2-bar-paused',
    about: 'the same bar, with two pauses of the hand, one of them just below yield',
    piece: { section: round({ diameter: [8.0, 8.0, 7.98] }), gaugeLength: 40, parallelLength: 48 },
    material: {
      modulus: 206_000,
      yieldStress: 287,
      yieldPoint: { upper: 303, plateau: 0.013 },
      hardening: { law: 'swift', prestrain: 0.035, exponent: 0.24 },
      fracture: { extension: 0.31, share: 0.72 },
      reductionOfArea: 0.61,
    },
    frame: { slack: 0.7, seating: 0.08 },
    hand: {
      ...hand,
      pauses: [
        { stress: 180, duration: 3, relaxation: 0.02 },
        { stress: 380, duration: 4, relaxation: 0.03 },
      ],
    },
    logger,
    seed: 12,
  },
  {
    name: '3-tube-drawn',
    about: 'strip cut lengthwise from cold-drawn frame tube',
    piece: {
      section: tubeStrip({ width: [12.02, 12.0, 12.01], outerDiameter: 34.9, wallThickness: [1.21, 1.2, 1.2] }),
      gaugeLength: 25,
      parallelLength: 40,
    },
    material: {
      modulus: 205_000,
      hardening: { law: 'hollomon', strengthCoefficient: 620 / 0.002 ** 0.055, exponent: 0.055 },
      fracture: { extension: 0.11, share: 0.8 },
      reductionOfArea: 0.48,
    },
    frame: { slack: 0.3, seating: 0.05 },
    hand: { ...hand, speed: 0.04, speedAfterYield: 0.06 },
    logger,
    seed: 13,
  },
  {
    name: '4-bar-aluminium',
    about: 'round coupon from age-hardened aluminium bar for dropouts',
    piece: { section: round({ diameter: [8.02, 8.0, 8.01] }), gaugeLength: 40, parallelLength: 48 },
    material: {
      modulus: 70_000,
      hardening: { law: 'hollomon', strengthCoefficient: 270 / 0.002 ** 0.08, exponent: 0.08 },
      fracture: { extension: 0.13, share: 0.82 },
      reductionOfArea: 0.34,
    },
    frame: { slack: 0.5, seating: 0.06 },
    hand: { ...hand, pauses: [{ stress: 300, duration: 3, relaxation: 0.015 }] },
    logger,
    seed: 14,
  },
  {
    name: '5-tube-stainless',
    about: 'strip cut from stainless fork tube',
    piece: {
      section: tubeStrip({ width: [12.0, 12.01, 12.0], outerDiameter: 28.6, wallThickness: [1.0, 1.01, 1.0] }),
      gaugeLength: 20,
      parallelLength: 40,
    },
    material: {
      modulus: 195_000,
      yieldStress: 255,
      hardening: { law: 'swift', prestrain: 0.045, exponent: 0.42 },
      fracture: { extension: 0.58, share: 0.8 },
      reductionOfArea: 0.66,
    },
    frame: { slack: 0.35, seating: 0.05 },
    hand: { ...hand, speedAfterYield: 0.2 },
    logger,
    seed: 15,
  },
].map((one) => ({ ...one, frame: { ...frame, ...one.frame }, offsets: [0.002] }));
