// Makes what a person typed fit to be kept, for every adapter's door: well-formed, and without the one character that databases refuse.

/** Also without the invisible mark by which adapters keep text from becoming a mention or a command: it may have been copied. */
export function cleanText(text: string): string {
  return text.toWellFormed().replace(/[\u0000\u2060]/g, '');
}

/** A display name on one line, without the marks that turn the direction of writing or hide; null where nothing is left. */
export function cleanName(name: string | null | undefined): string | null {
  const clean = cleanText(name ?? '')
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\s]+/gu, ' ')
    .trim();
  return clean === '' ? null : clean.slice(0, 60).toWellFormed().trim();
}
