// Puts a tip into the channel, marks it withdrawn there, or corrects it where it stands; for the schedule and for the desk.
import type { Tip } from '../procedure/tip.ts';
import { label } from '../words/render.ts';
import { mostPosts } from './state.ts';
import { line, nextId, send, standing, type TipsTurn, tipLine, tipState } from './turn.ts';

const minuteMs = 60_000;

export const jobOf = ({ procedure, machine }: Tip): string => `${procedure}/${machine}`;

const startButton = ({ scene }: TipsTurn, job: string) => [
  { id: job, label: label('tips-start', {}, scene.wording) },
];

export function postTip(turn: TipsTurn, tip: Tip): void {
  const { scene } = turn;
  const known = tipState(turn, tip.id);
  const job = jobOf(tip);
  const { id, text } = send(turn, {
    id: nextId(turn),
    edit: 0,
    to: { kind: 'tips' },
    lines: [tipLine(scene, tip)],
    choices: startButton(turn, job),
  });
  known.seenTo = scene.now;
  known.withdrawn = false;
  // By the minute, as the schedule is: a second's delay must not cost the tip its place a week later.
  const at = Math.floor(scene.now / minuteMs) * minuteMs;
  known.posts = [...known.posts, { id, edit: 0, at, text, job, withdrawn: false }].slice(-mostPosts);
}

/** All that stands of it says from now on that it does not hold, and it does not come again by itself. */
export function withdrawTip(turn: TipsTurn, id: string): void {
  tipState(turn, id).withdrawn = true;
  for (const post of standing(turn, id)) {
    post.edit += 1;
    post.withdrawn = true;
    const { text } = send(turn, {
      id: post.id,
      edit: post.edit,
      to: { kind: 'tips' },
      lines: [line('tips-withdrawn')],
      choices: [],
    });
    post.text = text;
  }
}

/** All that stands of it and reads otherwise than it would now is changed. */
export function correctTip(turn: TipsTurn, tip: Tip, text: string): void {
  const job = jobOf(tip);
  for (const post of standing(turn, tip.id)) {
    if (post.text === text && post.job === job) continue;
    post.edit += 1;
    post.text = text;
    post.job = job;
    send(turn, {
      id: post.id,
      edit: post.edit,
      to: { kind: 'tips' },
      lines: [tipLine(turn.scene, tip)],
      choices: startButton(turn, job),
    });
  }
}
