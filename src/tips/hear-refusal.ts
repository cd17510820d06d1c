// What a platform would not take: the desk is told, and a tip that did not get into the channel counts as not posted.
import type { Arrival } from '../store/store.ts';
import { comesAt } from './keep-schedule.ts';
import { line, type TipsTurn, tellDesk } from './turn.ts';

type Refusal = Extract<Arrival, { kind: 'refused' }>;

/** What cannot reach the desk's own channel is the operator's to mend, and is in the log. */
export function hearRefusal(turn: TipsTurn, { message, why, partly }: Refusal): void {
  const { id, edit, to } = message;
  if (to.kind !== 'tips') return;
  const { state, scene } = turn;
  const [name, known] =
    Object.entries(state.tips).find(([, { posts }]) => posts.some((post) => post.id === id)) ?? [];
  if (name === undefined || known === undefined) return;
  if (edit > 0) return tellDesk(turn, [line('tips-change-refused', { id: name, why })]);
  // One channel has it: it is posted, and can be changed there.
  if (partly) return tellDesk(turn, [line('tips-partly-refused', { id: name, why })]);
  known.posts = known.posts.filter((post) => post.id !== id);
  const tip = scene.content.tips[name];
  const lines = [line('tips-refused', { id: name, why })];
  if (tip && !known.withdrawn) {
    lines.push(line('tips-comes-again', { when: scene.tellTime(comesAt(turn, tip)) }));
  }
  tellDesk(turn, lines);
}
