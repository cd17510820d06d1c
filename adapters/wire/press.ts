// Puts our message id and the choice into a button and reads them back, for every platform with buttons.

export interface Press {
  choice: string;
  /** Our id of the message that offered it. */
  of: string | null;
}

/** What a button carries; null where it would not fit into the platform's `limit` of bytes. */
export function encodePress(messageId: string, choice: string, limit: number): string | null {
  const carried = `${messageId}:${choice}`;
  return Buffer.byteLength(carried) <= limit ? carried : null;
}

export function decodePress(carried: string): Press {
  const colon = carried.indexOf(':');
  if (colon < 0) return { choice: carried, of: null };
  return { choice: carried.slice(colon + 1), of: carried.slice(0, colon) || null };
}
