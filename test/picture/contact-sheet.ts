// Draws every sample as its own file under pictures/, and contact sheets at phone size on a light and a dark ground; for `npm run pictures`.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { drawings } from '../../src/picture/drawings.ts';
import { penReader } from '../../src/picture/read-pen.ts';
import { renderPng } from '../../src/picture/render.ts';
import { element } from '../../src/picture/svg.ts';
import { samples } from './samples.ts';

const out = fileURLToPath(new URL('../../pictures/', import.meta.url));
rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });

const penOf = penReader(fileURLToPath(new URL('../../content/words/', import.meta.url)));
const sizes: string[] = [];
const cells: string[] = [];
for (const { name, drawing, language, subject } of samples) {
  const { svg, alternative } = drawings[drawing](subject, penOf(language));
  const png = renderPng(svg);
  writeFileSync(join(out, `${name}.png`), png);
  sizes.push(`${String(Math.round(png.length / 1024)).padStart(4)} kB  ${name}: ${alternative}`);
  cells.push(Buffer.from(png).toString('base64'));
}

// A phone shows a picture about 380 points wide.
const [width, height, gap, columns, perSheet] = [380, 214, 16, 3, 12];
for (let first = 0; first < cells.length; first += perSheet) {
  const page = cells.slice(first, first + perSheet);
  for (const [ground, colour] of [
    ['light', '#ffffff'],
    ['dark', '#15202b'],
  ] as const) {
    const rows = Math.ceil(page.length / columns);
    const size = { width: columns * (width + gap) + gap, height: rows * (height + gap) + gap };
    const images = page.map((png, index) =>
      element('image', {
        x: gap + (index % columns) * (width + gap),
        y: gap + Math.floor(index / columns) * (height + gap),
        width,
        height,
        href: `data:image/png;base64,${png}`,
      }),
    );
    const svg = element(
      'svg',
      { xmlns: 'http://www.w3.org/2000/svg', ...size },
      element('rect', { ...size, fill: colour }),
      ...images,
    );
    writeFileSync(join(out, `sheet-${1 + first / perSheet}-${ground}.png`), renderPng(svg));
  }
}
process.stdout.write(
  `${sizes.join('\n')}\n${samples.length} pictures and their contact sheets are in ${out}\n`,
);
