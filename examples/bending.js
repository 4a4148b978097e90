/** One bar bent on three and on four points: the same modulus from three places of measurement. The records are invented, made by the simulation. */
import { analyseBending, beamDeflection, rectangular } from 'testpiece';
import { simulateBending } from 'testpiece/simulate';

const section = rectangular({ width: 10, thickness: 5 });
const material = { modulus: 205_000, yieldStress: 500, tangentModulus: 2000 };
const frame = { compliance: 2e-5, indentation: 1e-5, slack: 0.1 };
const three = { points: 3, span: 100 };
const four = { points: 4, span: 120, arm: 40 };
console.log('200 N bend the bar by', beamDeflection({ force: 200, modulus: 205_000, section, setup: three }).toFixed(4), 'mm');

for (const setup of [three, four]) {
  const piece = { section, setup };
  const { record } = simulateBending({ material, piece, frame, logger: { rate: 50, extensometer: true } });
  const { force, travel, deflection } = record;
  const raw = analyseBending({ force, travel }, piece);
  const noses = analyseBending({ force, travel }, piece, { frameCompliance: 2e-5, indentationCompliance: 1e-5 });
  const middle = analyseBending({ force, deflection }, piece);
  console.log(setup.points, 'points');
  console.log('  slope of raw travel', (raw.elasticSlope.value / 1000).toFixed(1), 'GPa, and no modulus:', raw.modulus === undefined);
  for (const [name, { modulus, chordModulus, proofStrengths }] of Object.entries({ noses, middle }))
    console.log(
      `  ${name}: slope ${(modulus.value / 1000).toFixed(1)} GPa, chord ${(chordModulus.value / 1000).toFixed(1)} GPa,`,
      `${proofStrengths[0].symbol} ${proofStrengths[0].value.toFixed(0)} MPa (the outer fibre yields at 500 MPa)`,
    );
}
