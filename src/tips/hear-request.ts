// What a member of the desk asks of the tips: all of them, one to look at, and, once it was looked at, to post, correct or withdraw it.
import type { Line } from '../chat/facts.ts';
import type { Choice } from '../chat/outgoing-message.ts';
import { tipsInOrder } from '../procedure/content.ts';
import type { Tip } from '../procedure/tip.ts';
import { render } from '../words/render.ts';
import { comesAt } from './keep-schedule.ts';
import { correctTip, jobOf, postTip, withdrawTip } from './post-tip.ts';
import { quietUntil, restedAt } from './schedule.ts';
import { postedAt } from './state.ts';
import { button, line, standing, type TipsTurn, tellDesk, tipLine, tipState } from './turn.ts';

/** One request of the desk, in the order made. */
export interface Request {
  number: number;
  /** What was typed or pressed behind "tips". */
  words: string;
  /** Who asks. */
  name: string;
}

/** What was looked at longer ago than this (ms) is looked at again before anything is done. */
const shownFor = 3_600_000;
const mostButtons = 8;
const longestId = 30;

const deeds = ['post', 'correct', 'withdraw'] as const;
type Deed = (typeof deeds)[number];

export function hearRequest(turn: TipsTurn, { number, words, name }: Request): void {
  turn.state.heard = number;
  const [first = '', second] = words
    .toLowerCase()
    .split(/[\s:]+/u)
    .filter((word) => word !== '');
  if (first === '') return list(turn);
  const deed = deeds.find((one) => one === first && second !== undefined) ?? null;
  const id = (deed ? second : first) ?? '';
  const { content } = turn.scene;
  const tip = Object.hasOwn(content.tips, id) ? (content.tips[id] ?? null) : null;
  const stands = Object.hasOwn(turn.state.tips, id) && standing(turn, id).length > 0;
  if (!tip && !stands) return tellUnknown(turn, id);
  if (deed && isShown(turn, id, tip) && offers(turn, id, tip).includes(deed)) {
    return act(turn, deed, id, tip, name);
  }
  preview(turn, id, tip);
}

function act(turn: TipsTurn, deed: Deed, id: string, tip: Tip | null, name: string): void {
  turn.state.shown = null;
  if (deed === 'withdraw') withdrawTip(turn, id);
  else if (tip && deed === 'post') postTip(turn, tip);
  else if (tip) correctTip(turn, tip, textOf(turn, id, tip));
  tellDesk(turn, [line(`tips-did-${deed}`, { id, name })]);
}

/** What is confirmed has to be what was looked at, word for word. */
function isShown({ state, scene }: TipsTurn, id: string, tip: Tip | null): boolean {
  const { shown } = state;
  if (shown?.tip !== id || scene.now - shown.at > shownFor) return false;
  return shown.text === textOf({ state, scene, messages: [] }, id, tip);
}

/** As it would be posted now; a tip that content has no longer, as it stands. */
function textOf(turn: TipsTurn, id: string, tip: Tip | null): string {
  return tip
    ? render([tipLine(turn.scene, tip)], turn.scene.wording)
    : (standing(turn, id).at(-1)?.text ?? '');
}

function offers(turn: TipsTurn, id: string, tip: Tip | null): Deed[] {
  const stands = standing(turn, id);
  const reads = textOf(turn, id, tip);
  const differs = tip !== null && stands.some(({ text, job }) => text !== reads || job !== jobOf(tip));
  return [
    ...(tip && hindrance(turn, tip) === null ? (['post'] as const) : []),
    ...(differs ? (['correct'] as const) : []),
    ...(stands.length > 0 ? (['withdraw'] as const) : []),
  ];
}

/** Why it cannot be posted now. */
function hindrance(turn: TipsTurn, tip: Tip): Line | null {
  const { scene } = turn;
  if (!scene.hasChannel) return line('tips-no-channel');
  const last = postedAt(tipState(turn, tip.id));
  if (last !== null && restedAt(tip, last) > scene.now) {
    return line('tips-rests', { when: scene.tellTime(restedAt(tip, last)) });
  }
  const quietEnds = quietUntil(tip, scene.content.workshop.timeZone, scene.now);
  return quietEnds === null ? null : line('tips-quiet', { when: scene.tellTime(quietEnds) });
}

function preview(turn: TipsTurn, id: string, tip: Tip | null): void {
  const text = textOf(turn, id, tip);
  turn.state.shown = { tip: id, text, at: turn.scene.now };
  const may = offers(turn, id, tip);
  const why = tip && hindrance(turn, tip);
  const lines = [
    statusLine(turn, id, tip),
    line(''),
    tip ? tipLine(turn.scene, tip) : line('tips-as-it-stands', { text }),
    line(''),
    ...(why ? [why] : []),
    ...may.map((deed) => line(`tips-may-${deed}`, { id })),
  ];
  tellDesk(
    turn,
    lines,
    may.map((deed) => button(turn, `${deed} ${id}`, `tips-button-${deed}`)),
  );
}

function list(turn: TipsTurn): void {
  const { content, hasChannel } = turn.scene;
  const tips = tipsInOrder(content);
  const gone = Object.keys(turn.state.tips).filter(
    (id) => !Object.hasOwn(content.tips, id) && standing(turn, id).length > 0,
  );
  if (tips.length + gone.length === 0) return tellDesk(turn, [line('tips-none')]);
  const choices: Choice[] = [...tips.map(({ id }) => id), ...gone]
    .slice(0, mostButtons)
    .map((id) => ({ id: `tips:${id}`, label: id }));
  const lines = [
    ...(hasChannel ? [] : [line('tips-no-channel')]),
    ...tips.map((tip) => statusLine(turn, tip.id, tip)),
    ...gone.map((id) => statusLine(turn, id, null)),
    line('tips-how'),
  ];
  tellDesk(turn, lines, choices);
}

function statusLine(turn: TipsTurn, id: string, tip: Tip | null): Line {
  const { tellTime, hasChannel } = turn.scene;
  const known = tipState(turn, id);
  const last = postedAt(known);
  const posted = last === null ? line('tips-never-posted') : line('tips-posted', { when: tellTime(last) });
  const comes =
    tip === null
      ? line('tips-gone')
      : known.withdrawn
        ? line('tips-stays-away')
        : hasChannel
          ? line('tips-comes', { when: tellTime(comesAt(turn, tip)) })
          : line('tips-comes-never');
  return line('tips-status', { id, posted, comes });
}

function tellUnknown(turn: TipsTurn, id: string): void {
  const known = tipsInOrder(turn.scene.content).map((tip) => tip.id);
  // An id is all that is repeated of what was typed.
  const typed = id.replaceAll(/[^a-z0-9-]/gu, '').slice(0, longestId);
  tellDesk(turn, [
    line('tips-unknown', { id: typed === '' ? '?' : typed }),
    known.length === 0 ? line('tips-none') : line('tips-known', { tips: known.join(', ') }),
  ]);
}
