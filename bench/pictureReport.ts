/** `npm run pictures`: the picture of a report in the README, of an invented test; needs Chromium. */
import { analyseTension, round } from '../src/index.js';
import { drawFigures } from '../src/render/index.js';
import { figures, renderHtml } from '../src/report/index.js';
import { simulateTension } from '../src/simulate/index.js';
import { launch } from '../test/browser/chromium.js';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const { record, truth } = simulateTension({
  material: {
    modulus: 206_000,
    yieldStress: 285,
    yieldPoint: { upper: 305 },
    hardening: { law: 'swift', prestrain: 0.03, exponent: 0.22 },
    fracture: { extension: 0.32 },
  },
  piece,
  frame: { compliance: 2e-5, slack: 0.2 },
  hand: { speed: 0.05, speedAfterYield: 0.1 },
  logger: { rate: 50, extensometer: { offAt: 0.06 }, lead: 1, tail: 1, forceNoise: 10, motionNoise: 2e-4 },
});
const result = analyseTension(
  record,
  { ...piece, afterFracture: truth.afterFracture },
  {
    test: { identity: 'pull 07', material: 'structural steel, as drawn by the simulator', temperature: 21, invented: true },
    uncertainty: {
      forceClass: 1,
      section: { diameter: { halfWidth: 0.02 } },
      displacement: 0.005,
      gaugeLength: 0.05,
      finalGaugeLength: 0.1,
      finalArea: 0.3,
    },
  },
);
const { tensileStrength, upperYieldStrength } = result;
const markup = renderHtml(result, {
  drawings: await drawFigures(figures(result)),
  decisions: [
    { measured: tensileStrength!, specification: { lower: 360, upper: 510, rule: 'guarded' } },
    ...(upperYieldStrength ? [{ measured: upperYieldStrength, specification: { lower: 300 } }] : []),
  ],
});
const browser = await launch();
const page = await browser.newPage({ viewport: { width: 860, height: 1500 }, offline: true });
await page.setContent(markup);
await page.screenshot({ path: 'docs/report.png' });
await browser.close();
