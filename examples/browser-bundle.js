/**
 * The library in a browser: a page's script is bundled with what it uses and nothing else, and run here in a bare context that has neither Node nor a DOM. The
 * page would hand it the text of a file field; the record is invented.
 */
/* global TextDecoder, TextEncoder */
import { build } from 'esbuild';
import { createContext, runInContext } from 'node:vm';
import { round } from 'testpiece';
import { simulateTension, writeRecord } from 'testpiece/simulate';

const script = `
  import { analyseTension, readRecord, round } from 'testpiece';
  globalThis.evaluate = (text) => {
    const { record, reading } = readRecord(text);
    const { tensileStrength, proofStrengths } = analyseTension(record, { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 });
    return [reading.rows + ' rows', ...[tensileStrength, proofStrengths[0]].map(({ symbol, value, unit }) => symbol + ' ' + value.toFixed(0) + ' ' + unit)];
  };
`;
/** A page's script as one minified text. */
async function bundled(contents) {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: import.meta.dirname },
    bundle: true,
    minify: true,
    write: false,
    platform: 'browser',
    format: 'iife',
    logLevel: 'warning',
  });
  return outputFiles[0].text;
}
const text = await bundled(script);
const field = await bundled("import { round } from 'testpiece/geometry'; globalThis.area = (d) => round({ diameter: d }).area;");
/** Sizes in steps, so that a few bytes more change nothing here. */
const below = (bundle, step) => `below ${step * Math.ceil(bundle.length / 1000 / step)} kB`;
console.log('a whole evaluation:', below(text, 250));
console.log('an area in a form field:', below(field, 5));

const { record } = simulateTension({
  material: {
    modulus: 206_000,
    yieldStress: 285,
    hardening: { law: 'swift', prestrain: 0.03, exponent: 0.22 },
    fracture: { extension: 0.3 },
  },
  piece: { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 },
  logger: { rate: 10, lead: 1, tail: 1 },
});
const file = writeRecord(record, {
  columns: [
    { quantity: 'time', name: 'Time', unit: 's', decimals: 2 },
    { quantity: 'force', name: 'Force', unit: 'kN', decimals: 4 },
    { quantity: 'travel', name: 'Travel', unit: 'mm', decimals: 4 },
  ],
});
// what every browser has beside the language itself, as far as the library needs it
const page = createContext({ TextDecoder, TextEncoder });
runInContext(text, page);
runInContext(field, page);
console.log(page.evaluate(file).join(', '));
console.log('area', page.area(8).toFixed(2), 'mm²');
