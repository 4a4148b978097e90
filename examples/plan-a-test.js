/** Before a test (invented frame): will it break the bar, how fast, what can it answer, and does the head hold? */
import { checkPiece, planTension, round } from 'testpiece';

const frame = {
  capacity: 25_000,
  stroke: 60,
  slack: 1,
  compliance: 2e-5,
  bore: 40,
  rod: 20,
  reliefPressure: 28,
  transmitterRange: 25,
  verifiedFrom: 2500,
  forceError: 0.01,
  forceStep: 6.1,
  travelStep: 0.005,
  oilVolume: 100e3,
  drive: { kind: 'screw', travelPerTurn: 0.5 },
};
const family = 'low-carbon-steel-annealed';

for (const diameter of [8, 6]) {
  const { force, largest } = planTension({ family, section: round({ diameter }), frame });
  console.log(
    `d ${diameter}: ${(force.greatest / 1000).toFixed(1)} kN, ${(100 * force.utilisation).toFixed(0)} % of the frame; largest d ${largest[0].dimension}`,
  );
}

const section = round({ diameter: 6 });
const plan = planTension({ family, section, frame, lengths: { parallelLength: 36 }, samplingRate: 50, claimsStandard: true });
const { lengths, force, travel, energy } = plan;
console.log(
  `L0 ${lengths.gaugeLength}, Lc ${lengths.parallelLength}, ${(10 * force.pressure).toFixed(0)} bar, travel ${travel.travel.toFixed(1)} mm`,
);
console.log(
  `at least ${(energy.frameAndPiece / 1000).toFixed(1)} J in frame and piece, at least ${(energy.oil / 1000).toFixed(1)} J in the oil`,
);
for (const { stage, speed, drivePerMinute } of plan.stages)
  console.log(`${stage}: ${(60 * speed).toFixed(2)} mm/min, ${drivePerMinute.toFixed(1)} turns/min`);
for (const { time, pressure, action } of plan.pace) console.log(`${time.toFixed(1)} s  ${(10 * pressure).toFixed(0)} bar  ${action}`);
for (const { symbols, verdict } of plan.answers) console.log(`${symbols.join(', ')}: ${verdict}`);
for (const { severity, message } of plan.findings) console.log(`${severity}: ${message}`);

const head = { kind: 'thread', size: 10, pitch: 1.5, gripped: 12 };
const check = checkPiece({ family, section, gaugeLength: 30, parallelLength: 36, filletRadius: 5, head });
for (const { what, margin, sound } of check.heads) console.log(`${what}: ${margin.toFixed(2)} times, ${sound ? 'sound' : 'not enough'}`);
for (const { message } of check.findings) console.log(message);
