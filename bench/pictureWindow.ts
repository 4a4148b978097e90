/** `npm run pictures`: the pictures of the guide "The elastic line", drawn from invented curves with known slope. */
import { writeFileSync } from 'node:fs';
import { fitModulus, required } from '../src/index.js';
import { lineFit } from '../src/numeric/index.js';
import { drawFigure } from '../src/render/index.js';
import { knownCurve, type Scenario } from './scenarios.js';

/** Short windows rise by this share of the offset stress; one begins at each of so many levels. */
const RISE = 0.08;
const PLACES = 90;

async function draw(scenario: Scenario, seed: number, title: string, file: string): Promise<void> {
  const { strain, stress, modulus } = knownCurve(scenario, 4000, seed);
  const line = required(fitModulus({ strain, stress }));
  const { offsetStress = 0, envelope } = line;
  const levels = Array.from({ length: PLACES }, (_, k) => (1.1 * offsetStress * k) / PLACES);
  const reach = (level: number): number => stress.findIndex((R) => R >= level);
  const local = levels.flatMap((level) => {
    const fit = lineFit(strain, stress, reach(level), reach(level + RISE * offsetStress));
    return fit ? [{ stress: level + (RISE / 2) * offsetStress, slope: fit.slope / 1000 }] : [];
  });
  const across = (from: number, to: number, slope: number) => [
    { stress: from, slope: slope / 1000 },
    { stress: to, slope: slope / 1000 },
  ];
  const x = { field: 'stress', type: 'quantitative', title: 'stress (MPa)' };
  const y = { field: 'slope', type: 'quantitative', title: 'slope (GPa)', scale: { domain: [0, (1.35 * modulus) / 1000] } };
  const lineOf = (values: { stress: number; slope: number }[], color: string, strokeWidth: number, strokeDash: number[]) => ({
    data: { values },
    mark: { type: 'line', color, strokeWidth, strokeDash, clip: true },
    encoding: { x, y },
  });
  const label = (at: { stress: number; slope: number }, text: string, color: string, dy: number) => ({
    data: { values: [at] },
    mark: { type: 'text', text, color, align: 'left', dx: 4, dy, fontSize: 12 },
    encoding: { x, y },
  });
  const window = [stress[line.first]!, stress[line.last]!] as const;
  const svg = await drawFigure({
    $schema: 'https://vega.github.io/schema/vega-lite/v6.json',
    title,
    description: `${title}: slopes of short windows along the curve, the window that the search chose, and the slope that the curve was made with`,
    width: 520,
    height: 260,
    layer: [
      { data: { values: local }, mark: { type: 'point', filled: true, size: 18, color: '#222222', clip: true }, encoding: { x, y } },
      lineOf(across(0, 1.1 * offsetStress, modulus), '#007a5a', 1.5, [2, 3]),
      lineOf(across(window[0], window[1], line.slope), '#d55e00', 4, [1, 0]),
      {
        data: { values: [{ stress: 0.2 * offsetStress }, { stress: offsetStress }] },
        mark: { type: 'rule', color: '#666666', strokeDash: [6, 4] },
        encoding: { x },
      },
      label({ stress: 0, slope: modulus / 1000 }, 'slope it was made with', '#007a5a', -8),
      label({ stress: window[0], slope: line.slope / 1000 }, `chosen window: ${envelope?.verdict ?? ''}`, '#b34700', 34),
      label({ stress: 0.2 * offsetStress, slope: 0 }, '0.2 of the offset stress', '#444444', -8),
      label({ stress: offsetStress, slope: (1.25 * modulus) / 1000 }, 'offset stress', '#444444', 0),
    ],
    config: { font: 'sans-serif', view: { stroke: null } },
  });
  writeFileSync(file, svg);
}

await draw('steel', 21, 'Steel with a toe: slopes of short windows', 'docs/elastic-line-steel.svg');
await draw('soft copper', 4, 'Soft copper: no linear part', 'docs/elastic-line-copper.svg');
