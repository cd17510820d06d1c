// The tips' own conversation: makes one decision of what the clock, the desk or a platform brings; pure, called by the store inside its transaction.
import type { Content } from '../procedure/content.ts';
import type { Decide } from '../store/store.ts';
import type { Wording } from '../words/wording.ts';
import { hearRefusal } from './hear-refusal.ts';
import { hearRequest, type Request } from './hear-request.ts';
import { keepSchedule, looksAgainAt } from './keep-schedule.ts';
import { readTips } from './state.ts';
import type { TipsTurn } from './turn.ts';

export interface TipsKnowledge {
  content: Content;
  /** In the workshop's language. */
  wording: Wording;
  /** Whether there is a channel to post in. */
  hasChannel: boolean;
  /** A time as the desk reads it. */
  tellTime: (at: number, now: number) => string;
  /** What the desk has asked for lately, by the state of its own conversation. */
  requestsOf: (desk: unknown) => readonly Request[];
}

export function makeDecideTips(knowledge: TipsKnowledge): Decide {
  const { content, wording, hasChannel, tellTime, requestsOf } = knowledge;
  return ({ now, number, state: stored, desk }, arrival) => {
    const turn: TipsTurn = {
      scene: { now, number, content, wording, hasChannel, tellTime: (at) => tellTime(at, now) },
      state: readTips(stored),
      messages: [],
    };
    if (arrival.kind === 'refused') hearRefusal(turn, arrival);
    const { heard } = turn.state;
    // Before the clock: what is withdrawn in time is not posted.
    for (const request of requestsOf(desk).filter((one) => one.number > heard)) hearRequest(turn, request);
    if (arrival.kind !== 'refused') keepSchedule(turn);
    return {
      state: turn.state,
      messages: turn.messages,
      readings: [],
      caseRow: null,
      records: [],
      dueAt: looksAgainAt(turn),
    };
  };
}
