/** `npm run bench`: costs as ratios measured in one run; a pass is one sum over two columns. */
import { analyseTension, fitModulus, round, type TensionRecord } from '../src/index.js';
import { simulateTension } from '../src/simulate/index.js';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };

/** A noisy record of about n samples. */
function recordOf(n: number): TensionRecord {
  const seconds = 130;
  return simulateTension({
    material: {
      modulus: 205_000,
      hardening: { law: 'hollomon', strengthCoefficient: 450 / 0.002 ** 0.1, exponent: 0.1 },
      fracture: { extension: 0.13 },
    },
    piece,
    hand: { speed: 0.05 },
    logger: { rate: n / seconds, extensometer: true, forceNoise: 20 },
  }).record;
}

/** Median time of a call [ms]. */
function time(call: () => unknown, times = 9): number {
  const taken = Array.from({ length: times }, () => {
    const start = performance.now();
    call();
    return performance.now() - start;
  });
  return taken.sort((a, b) => a - b)[times >> 1] ?? NaN;
}

/** One pass: the sum of both columns, four at a time. */
function pass(x: Float64Array, y: Float64Array): number {
  let [a, b, c, d] = [0, 0, 0, 0];
  for (let i = 0; i + 3 < x.length; i += 4) {
    a += x[i]! + y[i]!;
    b += x[i + 1]! + y[i + 1]!;
    c += x[i + 2]! + y[i + 2]!;
    d += x[i + 3]! + y[i + 3]!;
  }
  return a + b + c + d;
}

console.log('| samples | fitModulus / pass | analyseTension / pass |\n| --- | --- | --- |');
for (const n of [1e3, 1e4, 1e5, 1e6]) {
  const record = recordOf(n);
  const { extension } = record;
  if (!extension) continue;
  const curve = { strain: extension.map((x) => x / 40), stress: record.force.map((F) => F / piece.section.area) };
  const warm = n < 1e5 ? 50 : 3;
  for (let k = 0; k < warm; k += 1) {
    pass(curve.strain, curve.stress);
    fitModulus(curve);
    analyseTension(record, piece);
  }
  const one = time(() => pass(curve.strain, curve.stress), 99);
  console.log(
    `| ${record.force.length} | ${(time(() => fitModulus(curve)) / one).toFixed(1)} | ${(time(() => analyseTension(record, piece)) / one).toFixed(1)} |`,
  );
}
