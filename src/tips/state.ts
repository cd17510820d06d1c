// What is remembered of the channel: what was posted when, what was withdrawn, what the desk was shown last; for every part of the tips.

/** A message in the channel, as it stands there. */
export interface Post {
  id: string;
  edit: number;
  at: number;
  text: string;
  /** The job that its start button opens, as `procedure/machine`. */
  job: string;
  withdrawn: boolean;
}

export interface TipState {
  /** Its instants up to here are dealt with. */
  seenTo: number;
  /** Withdrawn: it does not come again by itself. */
  withdrawn: boolean;
  /** Oldest first; older ones than these are left as they are. */
  posts: Post[];
}

/** What a member of the desk was shown, and may now confirm. */
interface Shown {
  tip: string;
  text: string;
  at: number;
}

export interface TipsState {
  version: 1;
  said: number;
  /** The number of the desk's latest request that was heard. */
  heard: number;
  tips: Record<string, TipState>;
  shown: Shown | null;
}

export const mostPosts = 12;

const newTips = (): TipsState => ({ version: 1, said: 0, heard: 0, tips: {}, shown: null });

/** A copy of the stored state, to be worked on. */
export function readTips(stored: unknown): TipsState {
  if (stored === null) return newTips();
  const { version } = stored as { version?: unknown };
  if (version !== 1) {
    throw new Error(`The tips were kept by another version of the program (${String(version)}, here 1).`);
  }
  return structuredClone(stored as TipsState);
}

/** When a tip was last posted; null for never. */
export const postedAt = ({ posts }: TipState): number | null => posts.at(-1)?.at ?? null;
