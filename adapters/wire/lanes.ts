// Does what belongs to one chat one after the other and different chats side by side, for the adapters' intake.

export interface Lanes {
  /** Runs `work` once everything that was put into the same lane before has ended. */
  run<T>(lane: string, work: () => Promise<T>): Promise<T>;
  /** Resolves once no lane has anything to do. */
  idle(): Promise<void>;
}

export function makeLanes(): Lanes {
  const tails = new Map<string, Promise<unknown>>();
  return {
    run(lane, work) {
      const turn = (tails.get(lane) ?? Promise.resolve()).then(work);
      const tail = turn.catch(() => {});
      tails.set(lane, tail);
      tail.then(() => {
        if (tails.get(lane) === tail) tails.delete(lane);
      });
      return turn;
    },
    async idle() {
      while (tails.size > 0) await Promise.all(tails.values());
    },
  };
}
