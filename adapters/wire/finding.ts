// What an examination of the surroundings found, one line each, for `npm run doctor`.

export interface Finding {
  /** Null for something that is neither right nor wrong. */
  right: boolean | null;
  what: string;
  /** What to do about it, where it is wrong. */
  mend?: string;
}

/** Beyond this, schedules and records tell wrong times. */
const clockTolerance = 30_000;

/** Compares this machine's clock with the time that a platform's answer carries, which is whole seconds. */
export function compareClock(platform: string, dateHeader: string | null, now: number): Finding[] {
  const theirs = Date.parse(dateHeader ?? '');
  if (Number.isNaN(theirs)) return [];
  const offSeconds = Math.round(Math.abs(now - theirs) / 1000);
  const right = Math.abs(now - theirs) < clockTolerance;
  const what = right ? `clock: agrees with ${platform}` : `clock: ${offSeconds} s off from ${platform}`;
  return [{ right, what, mend: 'Have the system set its clock from the network (NTP).' }];
}
