// Puts things under their ids, for whoever looks up an id that a person or a link named.

/** Without what every object brings along: a start link that names "constructor" leads nowhere. */
export function byId<T extends { id: string }>(things: Iterable<T>): Record<string, T> {
  const found: Record<string, T> = Object.create(null);
  for (const thing of things) found[thing.id] = thing;
  return found;
}
