// The language of the person at this machine, as the surroundings name it.

/** `de_DE.UTF-8` as `de-DE`; null for "C" and where nothing is set. */
export function systemLocale(surroundings: Record<string, string | undefined>): string | null {
  const named = surroundings.LC_ALL || surroundings.LC_MESSAGES || surroundings.LANG || '';
  const match = /^([a-z]{2,3})(?:_([A-Z]{2}))?(?:[.@]|$)/.exec(named);
  if (match === null) return null;
  return match[2] === undefined ? (match[1] ?? null) : `${match[1]}-${match[2]}`;
}
