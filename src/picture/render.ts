// From SVG to PNG, with the shipped fonts alone; for the worker and for tests.
import { Resvg } from '@resvg/resvg-js';
import { fontFiles } from './read-pen.ts';

/** System fonts are never looked for: they differ from host to host, and looking takes longer than drawing. */
export function renderPng(svg: string, width?: number): Uint8Array {
  return new Resvg(svg, {
    font: { loadSystemFonts: false, fontFiles: [...fontFiles], defaultFontFamily: 'DejaVu Sans' },
    ...(width !== undefined && { fitTo: { mode: 'width', value: width } }),
  })
    .render()
    .asPng();
}
