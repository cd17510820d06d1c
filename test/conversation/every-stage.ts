// One chat after another, each halted at another message of a whole set-up; for guards that have to hold everywhere.
import type { Decide } from '../../src/store/store.ts';
import { Play, type Said } from './play.ts';
import { answer, benchFigures, latestAsk, type Shows } from './ready-owner.ts';

export interface Halt {
  play: Play;
  who: string;
  /** The message that waits for an answer. */
  asked: Said;
  shows: Shows;
}

/** How many answers a whole set-up of the bench machine takes, low sensor and all. */
export function* everyStage(decide: Decide, shows: Shows = {}): Generator<Halt> {
  const figures = { ...benchFigures, complaint: 'runs-badly', ...shows };
  for (let answers = 0; answers < 200; answers += 1) {
    const play = new Play(decide);
    const halt = haltAfter(play, answers, figures);
    if (!halt) return;
    yield halt;
  }
}

function haltAfter(play: Play, answers: number, shows: Shows): Halt | null {
  const who = 'rider';
  play.start(who, 'throttle-sensor', 'bench-single');
  // The first closed-stop figure is off its mark, so that the loop is gone through too.
  const low = { ...shows, 'signal-closed-stop': '0.380' };
  let turned = false;
  for (let given = 0; given < answers; given += 1) {
    const asked = latestAsk(play, who);
    const latest = play.said.findLast(({ to }) => to === who);
    if (!asked || latest?.facts.record) return null;
    answer(play, who, asked, asked.facts.stage === 'baseline' && !turned ? low : shows);
    if (asked.facts.ask?.kind === 'reading' && asked.facts.stage === 'baseline') turned = true;
  }
  const asked = latestAsk(play, who);
  const latest = play.said.findLast(({ to }) => to === who);
  return asked && !latest?.facts.record ? { play, who, asked, shows } : null;
}
