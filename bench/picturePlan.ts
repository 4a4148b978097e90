/** `npm run pictures`: the pictures of the guide "Planning a test", of an invented frame. */
import { writeFileSync } from 'node:fs';
import { planTension, round } from '../src/index.js';
import { drawFigures } from '../src/render/index.js';
import { planFigures } from '../src/report/index.js';

const frame = { capacity: 25_000, compliance: 2e-5, bore: 40, rod: 20 };
const section = round({ diameter: 6 });
const plan = planTension({ family: 'low-carbon-steel-annealed', section, frame, lengths: { parallelLength: 36 } });
const { pace, piece } = await drawFigures(planFigures(plan));
writeFileSync('docs/plan-pace.svg', pace ?? '');
writeFileSync('docs/plan-piece.svg', piece ?? '');
