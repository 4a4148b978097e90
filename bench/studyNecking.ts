/** `npm run study:necking`: the onset of necking by the curve, on smooth maxima and on ones whose curvature jumps, with known onset. */
import { considere, hollomon, swift, voce, type HardeningLaw } from '../src/index.js';
import { randomNumbers } from '../src/numeric/index.js';

const CURVES = 600;
const SAMPLES = 1000;
const laws: readonly HardeningLaw[] = [
  hollomon({ strengthCoefficient: 500, exponent: 0.2 }),
  swift({ strengthCoefficient: 500, prestrain: 0.01, exponent: 0.2 }),
  voce({ saturationStress: 400, initialStress: 150, rate: 10 }),
];

/** Engineering stress with a neck that begins suddenly: from the onset on it falls four times as sharply, to three quarters at fracture. */
function falling(law: HardeningLaw, strain: number, corner: boolean): number {
  const onset = law.neckingStrain;
  const force = (e: number): number => law.stress(e) * Math.exp(-e);
  if (!corner || strain <= onset) return force(strain);
  const h = 1e-4;
  const bend = (force(onset + h) - 2 * force(onset) + force(onset - h)) / (h * h);
  return force(onset) + 2 * bend * (strain - onset) ** 2;
}

console.log(
  '| law | maximum | noise | error of the strain, median ± half of 16-84 % (%) | mean (%) | root mean square (%) | stated uncertainty / scatter | held by ±1.96 u | called a corner |',
);
console.log('| --- | --- | --- | --- | --- | --- | --- | --- | --- |');
for (const law of laws)
  for (const corner of [false, true])
    for (const noise of [0.001, 0.005]) {
      const { normal } = randomNumbers(17);
      const onset = law.neckingStrain;
      const to = 1.5 * onset;
      const strain = Float64Array.from({ length: SAMPLES }, (_, i) => (to * (i + 1)) / SAMPLES);
      const clean = strain.map((e) => falling(law, e, corner) * Math.exp(e));
      const errors: number[] = [];
      const stated: number[] = [];
      let corners = 0;
      let held = 0;
      for (let k = 0; k < CURVES; k += 1) {
        const found = considere({ strain, stress: clean.map((s) => s * (1 + noise * normal())) });
        if (!found.ok) throw new Error(found.message);
        errors.push(100 * (found.strain / onset - 1));
        stated.push((100 * found.standardUncertainty) / onset);
        if (Math.abs(found.strain - onset) <= 1.96 * found.standardUncertainty) held += 1;
        if (found.shape === 'corner') corners += 1;
      }
      const sorted = [...errors].sort((a, b) => a - b);
      const at = (share: number): number => sorted[Math.floor(share * CURVES)]!;
      const half = (at(0.84) - at(0.16)) / 2;
      const mean = errors.reduce((a, b) => a + b) / CURVES;
      const square = Math.sqrt(errors.reduce((a, b) => a + b * b, 0) / CURVES);
      const typical = stated.sort((a, b) => a - b)[CURVES >> 1]!;
      console.log(
        `| ${law.name} | ${corner ? 'corner' : 'smooth'} | ${100 * noise} % | ${at(0.5).toFixed(2)} ± ${half.toFixed(2)} | ${mean.toFixed(2)} | ${square.toFixed(2)} | ${(typical / half).toFixed(2)} | ${((100 * held) / CURVES).toFixed(0)} % | ${corners} of ${CURVES} |`,
      );
    }
