// Holds our PNG writer to an independent reader (pngjs), with a palette and without.
import fc from 'fast-check';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { encodePng } from '../../src/picture/encode-png.ts';

function pixelsOf(width: number, height: number, colourOf: (index: number) => number): Uint8Array {
  const pixels = new Uint8Array(width * height * 4);
  for (let index = 0; index < width * height; index++) {
    const colour = colourOf(index);
    pixels.set([(colour >> 16) & 255, (colour >> 8) & 255, colour & 255, 255], index * 4);
  }
  return pixels;
}

test('any pixels come back as they were', () => {
  const size = fc.integer({ min: 1, max: 40 });
  fc.assert(
    fc.property(size, size, fc.integer({ min: 1, max: 0xffffff }), (width, height, step) => {
      const pixels = pixelsOf(width, height, (index) => (index * step) & 0xffffff);
      const read = PNG.sync.read(Buffer.from(encodePng(pixels, width, height)));
      expect([read.width, read.height]).toEqual([width, height]);
      expect(Buffer.compare(read.data, pixels)).toBe(0);
    }),
  );
});

test.each([
  [256, 3],
  [257, 2],
])('%d colours are written with colour type %d', (count, kind) => {
  const png = encodePng(
    pixelsOf(count, 1, (index) => index * 257),
    count,
    1,
  );
  // ISO/IEC 15948, 11.2.2: the colour type is the tenth byte of the header chunk.
  expect(png[8 + 8 + 9]).toBe(kind);
  expect(
    Buffer.compare(
      PNG.sync.read(Buffer.from(png)).data,
      pixelsOf(count, 1, (index) => index * 257),
    ),
  ).toBe(0);
});
