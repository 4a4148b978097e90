/** `npm run pictures`: the picture of the guide "Hardening laws", from an invented flow curve. */
import { writeFileSync } from 'node:fs';
import { compareLaws, swift } from '../src/index.js';
import { randomNumbers } from '../src/numeric/index.js';
import { drawFigure } from '../src/render/index.js';

const { normal } = randomNumbers(4);
const truth = swift({ strengthCoefficient: 720, prestrain: 0.006, exponent: 0.17 });
const strain = Float64Array.from({ length: 300 }, (_, i) => 0.004 + (0.155 * i) / 299);
const stress = strain.map((e) => truth.stress(e) + 1.2 * normal());
const strains = Float64Array.from({ length: 100 }, (_, i) => 0.01 * (i + 1));
const { ranked } = compareLaws({ strain, stress }, { strains });
const title = 'Laws that agree up to the neck part beyond it';
const x = { field: 'strain', type: 'quantitative', title: 'true plastic strain' };
const y = { field: 'stress', type: 'quantitative', title: 'true stress (MPa)', scale: { zero: false } };
const svg = await drawFigure({
  $schema: 'https://vega.github.io/schema/vega-lite/v6.json',
  title,
  description: `${title}: five laws fitted to strains below 0.16 and drawn to 1, with the measured points`,
  width: 520,
  height: 300,
  layer: [
    {
      data: {
        values: ranked.flatMap(({ name, extrapolated }) =>
          Array.from(strains, (e, k) => ({ strain: e, stress: extrapolated[k]!, law: name })),
        ),
      },
      mark: { type: 'line' },
      encoding: {
        x,
        y,
        color: { field: 'law', type: 'nominal', title: null, scale: { range: ['#0072b2', '#d55e00', '#007a5a', '#7a4fa0', '#9a6200'] } },
        strokeDash: { field: 'law', type: 'nominal', title: null },
      },
    },
    {
      data: { values: Array.from(strain, (e, k) => ({ strain: e, stress: stress[k]! })) },
      mark: { type: 'point', filled: true, size: 8, color: '#222222' },
      encoding: { x, y },
    },
  ],
  config: { font: 'sans-serif', view: { stroke: null } },
});
writeFileSync('docs/hardening-laws.svg', svg);
for (const { name, fit, difference, weight, extrapolated } of ranked)
  console.log(
    name,
    fit.rSquared.toFixed(5),
    difference.toFixed(1),
    weight.toFixed(3),
    extrapolated[19]!.toFixed(0),
    extrapolated[49]!.toFixed(0),
    extrapolated[99]!.toFixed(0),
  );
