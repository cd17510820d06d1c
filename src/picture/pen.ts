// What every drawing is handed: words, numbers and dates of one language, and how wide text comes out; made in the worker.
import type { GlyphWidths } from './glyph-widths.ts';

export type Say = (key: string, words?: Record<string, string | number>) => string;

export interface Pen {
  say: Say;
  /** A number with so many digits after the point, as the language writes it, never grouped. */
  figure(value: number, digits: number): string;
  /** A share between 0 and 1 as whole per cent. */
  percent(share: number): string;
  /** A day given as `2026-03-14`. */
  day(date: string): string;
  month(date: string): string;
  /** Text as the font can show it: on one line, without control characters, `▯` for what has no shape. */
  clean(text: string): string;
  /** The width of clean text in pixels. */
  width(text: string, size: number, bold: boolean): number;
}

/** Text on one line, without what has no place in a picture: control, format (bidirectional overrides among them), private and half characters. */
export function oneLine(text: string): string {
  return text
    .replaceAll(/[\s\p{Cc}]+/gu, (gap) => (gap === '\u00a0' ? gap : ' '))
    .replaceAll(/\p{Cf}|\p{Co}|\p{Cs}|[\u{fe00}-\u{fe0f}]/gu, '')
    .trim();
}

const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

export function makePen(language: string, say: Say, fonts: { regular: GlyphWidths; bold: GlyphWidths }): Pen {
  const days = new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone: 'UTC' });
  const months = new Intl.DateTimeFormat(language, { month: 'short', timeZone: 'UTC' });
  const percents = new Intl.NumberFormat(language, { style: 'percent', maximumFractionDigits: 0 });
  const figures = new Map<number, Intl.NumberFormat>();
  const shows = (part: string) => [...part].every((letter) => fonts.regular.has(letter.codePointAt(0)!));

  return {
    say,
    figure(value, digits) {
      let format = figures.get(digits);
      if (!format) {
        format = new Intl.NumberFormat(language, {
          minimumFractionDigits: digits,
          maximumFractionDigits: digits,
          useGrouping: false,
          signDisplay: 'negative',
        });
        figures.set(digits, format);
      }
      return format.format(value);
    },
    percent: (share) => percents.format(share).replaceAll(/\s/gu, '\u00a0'),
    day: (date) => days.format(new Date(`${date}T00:00:00Z`)),
    month: (date) => months.format(new Date(`${date.slice(0, 7)}-01T00:00:00Z`)),
    clean(text) {
      const plain = oneLine(text.normalize('NFC'));
      if (shows(plain)) return plain;
      return [...segmenter.segment(plain)].map(({ segment }) => (shows(segment) ? segment : '▯')).join('');
    },
    width(text, size, bold) {
      const widths = bold ? fonts.bold : fonts.regular;
      let ems = 0;
      for (const letter of text) ems += widths.get(letter.codePointAt(0)!) ?? 0.6;
      return ems * size;
    },
  };
}
