// Has the tips look at the clock at the start, and at the desk whenever it asks something of them; for every command that chats.
import type { Receive } from '../chat/adapter.ts';
import { isForTips } from '../conversation/hear-desk.ts';
import type { Inbox } from '../inbox/receive.ts';
import type { Calendar } from '../store/store.ts';

/** The key of the tips' own conversation. */
export const tipsKey = 'tips';

export interface Waking {
  calendar: Pick<Calendar, 'wake'>;
  clock: () => number;
  takeDue: Inbox['takeDue'];
}

/** They look at the content, which may be new, and at what an earlier process left of the desk's requests. */
export async function wakeTips({ calendar, clock, takeDue }: Waking): Promise<void> {
  await calendar.wake(tipsKey, clock());
  await takeDue(tipsKey);
}

/** A process that dies in between loses nothing: the request is kept at the desk, and the next start wakes the tips. */
export function passOnToTips(receive: Receive, waking: Waking): Receive {
  return async (message) => {
    await receive(message);
    if (isForTips(message)) await wakeTips(waking);
  };
}
