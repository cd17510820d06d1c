// The better of what is on offer, where a part stops only at fixed places; for the conversation.

/** Of 0.652 and 0.665 for 0.650 the former is kept; the first of two equally near. */
export function betterOf(offers: readonly number[], aim: number): number | null {
  return offers.reduce<number | null>(
    (best, offer) => (best !== null && Math.abs(best - aim) <= Math.abs(offer - aim) + 1e-9 ? best : offer),
    null,
  );
}
