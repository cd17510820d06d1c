// Node's own fetch in place of the library's, which sits out the whole time limit when an answer breaks off in the middle.

/** The library's signal is of an older make that Node's fetch does not take; it is passed on to one that it does. */
export const nativeFetch = (url: string, options: RequestInit & { agent?: unknown }): Promise<Response> => {
  const { signal, agent: _, ...rest } = options;
  const controller = new AbortController();
  if (signal?.aborted) controller.abort();
  signal?.addEventListener('abort', () => controller.abort());
  return fetch(url, { ...rest, signal: controller.signal });
};
