/**
 * Study of a parameter: how far noise of the load channel and the least rise over the elastic window move the elastic slope and Rp0.2, over tests whose truth
 * is known. Everything is invented: a steel bar with an extensometer, as a bicycle-frame workshop would pull it.
 */
import { analyseTension, round, summariseReplicates } from 'testpiece';
import { simulateTension } from 'testpiece/simulate';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const SEEDS = 6;

/** One test of the same bar, with another noise. */
const made = (forceNoise, seed) =>
  simulateTension({
    material: { modulus: 206_000, hardening: { law: 'hollomon', strengthCoefficient: 700, exponent: 0.12 }, fracture: { extension: 0.14 } },
    piece,
    hand: { speed: 0.02, speedAfterYield: 0.2 },
    logger: { rate: 10, extensometer: true, forceNoise, motionNoise: 2e-5 },
    seed,
  });

console.log('noise/N  span   slope: mean off by/GPa   s/GPa   Rp0.2: mean off by/MPa   s/MPa');
for (const forceNoise of [0, 10, 40]) {
  const tests = Array.from({ length: SEEDS }, (_, k) => made(forceNoise, k + 1));
  for (const spanShare of [0.1, 0.2, 0.4]) {
    const errors = tests.map(({ record, truth }) => {
      const { elasticSlope, proofStrengths } = analyseTension(record, piece, { modulus: { window: { by: 'lower-bound', spanShare } } });
      return [
        (elasticSlope.value - truth.modulus) / 1000,
        proofStrengths[0].value - truth.proofStrengths.find(({ offset }) => offset === 0.002).stress,
      ];
    });
    const columns = [0, 1].flatMap((k) => {
      const { mean, standardDeviation } = summariseReplicates(errors.map((one) => one[k]));
      return [mean, standardDeviation];
    });
    const [e, sE, rp, sRp] = columns.map((value) => (Math.abs(value) < 5e-4 ? 0 : value));
    console.log(
      String(forceNoise).padStart(7),
      spanShare.toFixed(2).padStart(6),
      e.toFixed(2).padStart(15),
      sE.toFixed(2).padStart(12),
      rp.toFixed(2).padStart(18),
      sRp.toFixed(2).padStart(14),
    );
  }
}
