// How wide each character of a TrueType font is, read from its tables, so that drawings can fit their text; for the pen.

/** Width in ems by code point; a character that the font has no shape for is not in the map. */
export type GlyphWidths = ReadonlyMap<number, number>;

/** Reads `cmap` (format 4), `hhea` and `hmtx` as the OpenType specification lays them out (big endian throughout). */
export function readGlyphWidths(file: Uint8Array): GlyphWidths {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  const tables = new Map<string, number>();
  for (let index = 0; index < view.getUint16(4); index++) {
    const entry = 12 + index * 16;
    const tag = String.fromCharCode(...file.subarray(entry, entry + 4));
    tables.set(tag, view.getUint32(entry + 8));
  }
  const table = (tag: string): number => {
    const start = tables.get(tag);
    if (start === undefined) throw new Error(`the font has no table "${tag}"`);
    return start;
  };

  const perEm = view.getUint16(table('head') + 18);
  const measured = view.getUint16(table('hhea') + 34);
  const advances = table('hmtx');
  const advance = (glyph: number) => view.getUint16(advances + 4 * Math.min(glyph, measured - 1)) / perEm;

  const widths = new Map<number, number>();
  const segments = findSegments(view, table('cmap'));
  const count = view.getUint16(segments + 6) / 2;
  const ends = segments + 14;
  const starts = ends + count * 2 + 2;
  const deltas = starts + count * 2;
  const offsets = deltas + count * 2;
  for (let segment = 0; segment < count; segment++) {
    const start = view.getUint16(starts + segment * 2);
    const end = view.getUint16(ends + segment * 2);
    const delta = view.getUint16(deltas + segment * 2);
    const offset = view.getUint16(offsets + segment * 2);
    for (let code = start; code <= end && code < 0xffff; code++) {
      const listed =
        offset === 0 ? code : view.getUint16(offsets + segment * 2 + offset + (code - start) * 2);
      const glyph = listed === 0 ? 0 : (listed + delta) & 0xffff;
      if (glyph !== 0) widths.set(code, advance(glyph));
    }
  }
  return widths;
}

function findSegments(view: DataView, cmap: number): number {
  for (let index = 0; index < view.getUint16(cmap + 2); index++) {
    const subtable = cmap + view.getUint32(cmap + 4 + index * 8 + 4);
    if (view.getUint16(subtable) === 4) return subtable;
  }
  throw new Error('the font has no character map of format 4');
}
