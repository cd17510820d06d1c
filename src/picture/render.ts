// From SVG to PNG, with the shipped fonts alone; for the worker and for tests.
import { Resvg } from '@resvg/resvg-js';
import { encodePng } from './encode-png.ts';
import { fontFiles } from './read-pen.ts';

/** System fonts are never looked for: they differ from host to host, and looking takes longer than drawing. */
export const fontOptions = {
  loadSystemFonts: false,
  fontFiles: [...fontFiles],
  defaultFontFamily: 'DejaVu Sans',
};

export function renderPng(svg: string, width?: number): Uint8Array {
  const image = new Resvg(svg, {
    font: fontOptions,
    ...(width !== undefined && { fitTo: { mode: 'width', value: width } }),
  }).render();
  return encodePng(image.pixels, image.width, image.height);
}
