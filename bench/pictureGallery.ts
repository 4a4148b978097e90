/** `npm run pictures`: the pictures of the guide "Figures", from seeded simulations; all of it is invented. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { drawFigures } from '../src/render/index.js';
import { gallery } from '../test/support/gallery.js';

mkdirSync('docs/gallery', { recursive: true });
for (const [name, svg] of Object.entries(await drawFigures(gallery()))) {
  writeFileSync(`docs/gallery/${name}.svg`, svg!);
  console.log(name, svg!.length);
}
