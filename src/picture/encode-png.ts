// Writes opaque pixels as a PNG (ISO/IEC 15948) with a palette where the colours allow it, a third of the size; for the renderer.
import { crc32, deflateSync } from 'node:zlib';

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const palettes = 3;
const trueColour = 2;

/** `pixels` are red, green, blue and alpha by turns; alpha is dropped, since a picture is opaque to its edge. */
export function encodePng(pixels: Uint8Array, width: number, height: number): Uint8Array {
  const indexed = indexColours(pixels, width, height);
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header[8] = 8;
  header[9] = indexed ? palettes : trueColour;
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    ...(indexed ? [chunk('PLTE', indexed.palette)] : []),
    chunk('IDAT', deflateSync(indexed ? indexed.rows : rowsOf(pixels, width, height))),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** A filter byte of 0 before each row, then a place in the palette for each pixel; null beyond 256 colours. */
function indexColours(pixels: Uint8Array, width: number, height: number) {
  const places = new Map<number, number>();
  const rows = Buffer.alloc(height * (width + 1));
  let to = 0;
  let from = 0;
  let before = -1;
  let place = 0;
  for (let y = 0; y < height; y++) {
    to++;
    for (let x = 0; x < width; x++, from += 4) {
      const colour = (pixels[from]! << 16) | (pixels[from + 1]! << 8) | pixels[from + 2]!;
      // Neighbours are mostly alike, and a comparison costs less than a look-up.
      if (colour !== before) {
        const known = places.get(colour);
        if (known === undefined) {
          if (places.size === 256) return null;
          place = places.size;
          places.set(colour, place);
        } else {
          place = known;
        }
        before = colour;
      }
      rows[to++] = place;
    }
  }
  const palette = Buffer.alloc(places.size * 3);
  for (const [colour, index] of places) palette.writeUIntBE(colour, index * 3, 3);
  return { rows, palette };
}

function rowsOf(pixels: Uint8Array, width: number, height: number): Buffer {
  const rows = Buffer.alloc(height * (width * 3 + 1));
  let to = 0;
  let from = 0;
  for (let y = 0; y < height; y++) {
    to++;
    for (let x = 0; x < width; x++, from += 4) {
      rows[to++] = pixels[from]!;
      rows[to++] = pixels[from + 1]!;
      rows[to++] = pixels[from + 2]!;
    }
  }
  return rows;
}

function chunk(name: string, body: Uint8Array): Buffer {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), body]);
  const framed = Buffer.alloc(named.length + 8);
  framed.writeUInt32BE(body.length, 0);
  framed.set(named, 4);
  framed.writeUInt32BE(crc32(named), framed.length - 4);
  return framed;
}
