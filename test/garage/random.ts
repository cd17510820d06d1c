// Seeded chance for the model garage: the same seed gives the same machine, meter and owner on every run.

export interface Random {
  /** From 0 up to, not including, 1. */
  next(): number;
  between(low: number, high: number): number;
  whole(low: number, high: number): number;
  chance(share: number): boolean;
  pick<T>(choices: readonly T[]): T;
  normal(mean: number, deviation: number): number;
  sign(): 1 | -1;
  /** A stream of its own, so that what one part draws never shifts what another draws. */
  fork(name: string): Random;
}

/** FNV-1a, only to spread a name over 32 bits. */
function spread(text: string): number {
  let hash = 0x811c9dc5;
  for (const char of text) {
    hash ^= char.codePointAt(0)!;
    hash = Math.imul(hash, 0x01000193);
  }
  return hash >>> 0;
}

export function createRandom(seed: string): Random {
  let a = spread(`${seed}/a`);
  let b = spread(`${seed}/b`);
  let c = spread(`${seed}/c`);
  let counter = 1;
  // The "small fast counting" generator, 32 bits: public, and good enough for a simulation.
  function word(): number {
    const sum = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum;
    return sum >>> 0;
  }
  for (let i = 0; i < 15; i++) word();

  const random: Random = {
    next: () => word() / 2 ** 32,
    between: (low, high) => low + (high - low) * random.next(),
    whole: (low, high) => low + Math.floor(random.next() * (high - low + 1)),
    chance: (share) => random.next() < share,
    pick: (choices) => choices[Math.floor(random.next() * choices.length)]!,
    normal: (mean, deviation) =>
      mean + deviation * Math.sqrt(-2 * Math.log(1 - random.next())) * Math.cos(2 * Math.PI * random.next()),
    sign: () => (random.next() < 0.5 ? 1 : -1),
    fork: (name) => createRandom(`${seed}/${name}`),
  };
  return random;
}
