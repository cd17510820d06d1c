// Keeps the turns of one conversation in this process one after the other, so that only other processes clash.
export function makeLanes(): <T>(name: string, work: () => Promise<T>) => Promise<T> {
  const last = new Map<string, Promise<unknown>>();
  return <T>(name: string, work: () => Promise<T>): Promise<T> => {
    const mine = (last.get(name) ?? Promise.resolve()).then(work);
    const done = mine
      .catch(() => {})
      .then(() => {
        if (last.get(name) === done) last.delete(name);
      });
    last.set(name, done);
    return mine;
  };
}
