/**
 * Monte Carlo: distributions where a budget by the Guide is not enough, and a whole test with everything that is doubtful about it. Invented numbers
 * of the workshop: the neck of a broken bar, and a pull on travel.
 */
import { monteCarlo, monteCarloTension, required, round, uncertaintyBudget } from 'testpiece';
import { simulateTension } from 'testpiece/simulate';

// reduction of area of a thin neck: the square makes the distribution lopsided where the reading of the neck is poor
const inputs = {
  before: { value: 8, uncertainty: { halfWidth: 0.01 } },
  neck: { value: 1.5, uncertainty: { halfWidth: 0.6 } },
};
const reduction = ({ before, neck }) => 1 - (neck / before) ** 2;
const budget = uncertaintyBudget(reduction, inputs, { coverageFactor: 2 });
const trials = required(monteCarlo(reduction, inputs, { seed: 7, coverage: 0.95, digits: 2 }));
const short = (value, figures) => Number(value.toPrecision(figures));
const percent = (value) => `${(100 * value).toFixed(1)} %`;
console.log('budget     ', percent(budget.value), '±', percent(budget.expandedUncertainty));
console.log('Monte Carlo', percent(trials.mean), 'from', percent(trials.interval[0]), 'to', percent(trials.interval[1]), trials.ended);

// a whole test: every trial disturbs force, motion, lengths and section and evaluates anew
const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const { record } = simulateTension({
  material: { modulus: 206_000, hardening: { law: 'hollomon', strengthCoefficient: 700, exponent: 0.12 }, fracture: { extension: 0.14 } },
  piece,
  frame: { compliance: 2e-5 },
  hand: { speed: 0.05, speedAfterYield: 0.3 },
  logger: { rate: 5, forceNoise: 8 },
  seed: 8,
});
const run = monteCarloTension(record, piece, {
  frameCompliance: 2e-5,
  uncertainty: { forceClass: 1, section: { diameter: { halfWidth: 0.01 } }, frameCompliance: 0.03 },
  trials: 300,
  seed: 9,
});
for (const symbol of ['E', 'Rp0.2', 'Rm']) {
  const { value, unit, standardUncertainty, interval } = run.distributions[symbol];
  const stated = [run.result.modulus, run.result.proofStrengths[0], run.result.tensileStrength].find((one) => one.symbol === symbol);
  console.log(
    `${symbol} ${short(value, 4)} ${unit}: u = ${short(standardUncertainty, 2)} by ${run.trials} trials,`,
    `${short(stated.standardUncertainty, 2)} by the budget; ${interval.map((one) => short(one, 4)).join(' to ')}`,
  );
}
