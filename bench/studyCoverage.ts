/** `npm run study:coverage -- TESTS FIRST`: by tests of that seed and the next, whether nominal 95 % intervals hold the truth, and how fast Monte Carlo over a whole test is. */
import { analyseTension, monteCarloTension, sectionFromArea } from '../src/index.js';
import { knownCurve, scenarios } from './scenarios.js';
import { analysed, compared, kinds, uncertainTest } from './uncertainTests.js';

const TESTS = Number(process.argv[2] ?? 200);
const FIRST = Number(process.argv[3] ?? 1);

for (const systematic of [true, false]) {
  const tests = systematic ? TESTS : TESTS / 2;
  console.log(
    `\n${systematic ? 'Force, dimensions, displacement, lengths, frame and noise drawn' : 'Noise alone drawn'}, ${tests} tests of each kind:\n`,
  );
  console.log('| kind | quantity | held | mean error / u | RMS error / RMS u | u, median |');
  console.log('| --- | --- | --- | --- | --- | --- |');
  for (const kind of kinds) {
    const found = new Map<string, { error: number; u: number; half: number; truth: number }[]>();
    for (let seed = FIRST; seed < FIRST + tests; seed += 1) {
      const test = uncertainTest(kind, seed, systematic);
      for (const [symbol, [value, truth, u, half]] of Object.entries(compared(test, analysed(test))))
        found.set(symbol, [...(found.get(symbol) ?? []), { error: value - truth, u, half, truth }]);
    }
    for (const [symbol, all] of found) {
      const covered = all.filter(({ error, half }) => Math.abs(error) <= half).length / all.length;
      const rms = (pick: (one: (typeof all)[number]) => number): number =>
        Math.sqrt(all.reduce((sum, one) => sum + pick(one) ** 2, 0) / all.length);
      const mean = all.reduce((sum, { error, u }) => sum + error / u, 0) / all.length;
      const shares = all.map(({ u, truth }) => u / truth).sort((a, b) => a - b);
      const ratio = rms(({ error }) => error) / rms(({ u }) => u);
      console.log(
        `| ${kind} | ${symbol}${all.length < tests ? ` (${all.length})` : ''} | ${(100 * covered).toFixed(1)} % | ${mean.toFixed(2)} | ${ratio.toFixed(2)} | ${(100 * shares[all.length >> 1]!).toFixed(3)} % |`,
      );
    }
  }
}

// smooth curves with a toe have no straight part: whether the intervals know it, noise being all that is drawn
console.log('\n| kind, noise alone | samples | quantity | held | RMS error / RMS u | u, median |\n| --- | --- | --- | --- | --- | --- |');
for (const kind of scenarios)
  for (const n of [1000, 10_000]) {
    const tests = Math.ceil((TESTS * 200) / n);
    const found: Record<string, { error: number; u: number; half: number }[]> = { E: [], 'Rp0.2': [] };
    for (let seed = FIRST; seed < FIRST + tests; seed += 1) {
      const { strain, stress, modulus, proofStrength } = knownCurve(kind, n, seed);
      const area = 50;
      const piece = { section: sectionFromArea({ area }), gaugeLength: 50 };
      const result = analyseTension({ force: stress.map((R) => R * area), extension: strain.map((e) => e * 50) }, piece, {
        uncertainty: { coverage: 0.95 },
      });
      for (const [quantity, truth] of [
        [result.modulus, modulus],
        [result.proofStrengths[0], proofStrength],
      ] as const) {
        const budget = quantity && result.uncertainty?.[quantity.symbol];
        if (budget)
          found[quantity.symbol]!.push({
            error: quantity.value / truth - 1,
            u: budget.standardUncertainty / truth,
            half: budget.expandedUncertainty / truth,
          });
      }
    }
    for (const [symbol, all] of Object.entries(found)) {
      const held = all.filter(({ error, half }) => Math.abs(error) <= half).length / all.length;
      const squares = (pick: 'error' | 'u'): number => all.reduce((sum, one) => sum + one[pick] ** 2, 0);
      const u = all.map((one) => one.u).sort((a, b) => a - b)[all.length >> 1]!;
      console.log(
        `| ${kind} | ${n} | ${symbol} (${all.length}) | ${(100 * held).toFixed(1)} % | ${Math.sqrt(squares('error') / squares('u')).toFixed(2)} | ${(100 * u).toFixed(3)} % |`,
      );
    }
  }

console.log('\n| samples | trials a second, search and all | analysis with budgets and one trial (ms) |\n| --- | --- | --- |');
for (const n of [1000, 10_000]) {
  const { record, piece, options } = uncertainTest('aluminium, extensometer', 1);
  const step = record.force.length / n;
  const pick = (column: Float64Array): Float64Array => Float64Array.from({ length: n }, (_, i) => column[Math.floor(i * step)]!);
  const thinned = { force: pick(record.force), extension: pick(record.extension!) };
  const run = (trials: number): number => {
    // processor time, so that others on the machine do not count
    const start = process.cpuUsage();
    monteCarloTension(thinned, piece, { ...options, trials });
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  };
  run(300);
  const times = Array.from({ length: 5 }, () => [run(1), run(1001)] as const);
  const median = (all: number[]): number => all.sort((a, b) => a - b)[all.length >> 1]!;
  const [once, many] = [median(times.map(([one]) => one)), median(times.map(([, more]) => more))];
  console.log(`| ${n} | ${Math.round(1e6 / (many - once))} | ${once.toFixed(1)} |`);
}
