/**
 * A reader of one's own: a format that the library does not know becomes rows, and `readRows` does the rest (units, which column is which, holes,
 * checks). The format is that of an invented box at the frame of the workshop: `t+00:01.50 | 12.40 bar | 0.350 mm`, with notes between.
 */
import { analyseTension, pressureToForce, readRows, round } from 'testpiece';
import { simulateTension } from 'testpiece/simulate';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const frame = { bore: 40, rod: 20 };

/** Rows of the box's text, one after the other: names with units first, then numbers. Lines of another form are notes. */
function* rowsOf(text) {
  yield ['time [s]', 'pressure [bar]', 'travel [mm]'];
  for (const line of text.split('\n')) {
    const found = /^t\+(\d+):([\d.]+) \| (-?[\d.]+) bar \| (-?[\d.]+) mm$/.exec(line.trim());
    if (!found) continue;
    const [, minutes, seconds, pressure, travel] = found.map(Number);
    yield [60 * minutes + seconds, pressure, travel];
  }
}

// what the box would have written of an invented test
const { pressureRecord } = simulateTension({
  material: {
    modulus: 206_000,
    yieldStress: 285,
    hardening: { law: 'swift', prestrain: 0.03, exponent: 0.22 },
    fracture: { extension: 0.3 },
  },
  piece,
  frame: { ...frame, compliance: 2e-5, slack: 0.3 },
  logger: { rate: 10, lead: 1, tail: 1 },
});
const lines = Array.from(pressureRecord.time, (t, i) => {
  const clock = `${String(Math.floor(t / 60)).padStart(2, '0')}:${(t % 60).toFixed(2).padStart(5, '0')}`;
  return `t+${clock} | ${(10 * pressureRecord.pressure[i]).toFixed(3)} bar | ${pressureRecord.travel[i].toFixed(4)} mm`;
});
const text = ['# box 2, invented data', ...lines.slice(0, 50), '# note: guard closed', ...lines.slice(50)].join('\n');

const { record, reading } = readRows(rowsOf(text));
console.log(reading.columns.map(({ name, unit, quantity }) => `${name} in ${unit} is ${quantity}`).join(', '));
console.log(`${reading.rows} rows of ${lines.length}`);
const result = analyseTension(pressureToForce(record, frame), piece, { frameCompliance: 2e-5, test: { invented: true } });
for (const { symbol, value, unit } of [result.modulus, result.proofStrengths[0], result.tensileStrength])
  console.log(symbol, value.toFixed(0), unit);
