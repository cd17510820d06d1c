// Makes what a person typed fit to be kept, for every adapter's door: well-formed, and without the one character that databases refuse.

export function cleanText(text: string): string {
  return text.toWellFormed().replaceAll('\u0000', '');
}

/** A display name on one line, without the marks that turn the direction of writing or hide; null where nothing is left. */
export function cleanName(name: string | null | undefined): string | null {
  const clean = cleanText(name ?? '')
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  return clean === '' ? null : clean.slice(0, 60).toWellFormed().trim();
}
