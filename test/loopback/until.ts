// Waits until something is so, for tests over real sockets; how long it took is never what a test asserts.

export async function until<Found>(
  what: string,
  look: () => Found | Promise<Found>,
  patienceMs = 15_000,
): Promise<NonNullable<Found>> {
  const end = Date.now() + patienceMs;
  for (;;) {
    const found = await look();
    if (found) return found as NonNullable<Found>;
    if (Date.now() > end) throw new Error(`waited in vain: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}
