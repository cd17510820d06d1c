// Makes plain text stay plain on Discord, where stars, lines and mentions would otherwise become markup.

const marks = /[\\*_~`|]/g;
/** Headings, quotes, lists and small print begin a line. */
const lineStarts = /^(\s*)(#{1,3}|-#|>{1,3}|[-+]|\d+[.)])(?=\s)/gm;
const linkLike = /\[(?=[^\]\n]*\]\()/g;
/** Mentions of people, roles, channels and commands, emoji and times all begin so. */
const anglesThatResolve = /<(?=[@#:/at])/g;
const callsForAll = /@(?=everyone|here)/g;

export function escapeText(text: string): string {
  return text
    .replace(marks, '\\$&')
    .replace(lineStarts, (_, blank: string, mark: string) => blank + escapeMark(mark))
    .replace(linkLike, '\\[')
    .replace(anglesThatResolve, '\\<')
    .replace(callsForAll, '@\u2060');
}

/** Of "1." the point is what makes the list; of the others it is the first sign. */
function escapeMark(mark: string): string {
  return /^\d/.test(mark) ? `${mark.slice(0, -1)}\\${mark.slice(-1)}` : `\\${mark}`;
}
