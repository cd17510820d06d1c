// The words that steer a set-up: help, repeat, back, pause, stop and a person; whole messages only, and never past a guard.

import type { SteeringWord } from '../measurement/heard.ts';
import { inLanguage } from '../procedure/localised.ts';
import { sectionOf, stageOf } from '../procedure/procedure.ts';
import { choose } from './answer.ts';
import { askBack } from './ask-back.ts';
import { callPerson } from './call-person.ts';
import { enterStage } from './enter-stage.ts';
import { giveUp } from './give-up.ts';
import { showMenu } from './menu.ts';
import { isRideable } from './rig.ts';
import { carry, line, say, sayAgain } from './say.ts';
import { benchOf, type Turn } from './turn.ts';

export function steer(turn: Turn, word: SteeringWord): void {
  const { state } = turn;
  if (word === 'human') return callPerson(turn, { reason: 'asked', goOn: true });
  if (word === 'help') {
    carry(turn, [line('help'), line('')]);
    return sayAgain(turn);
  }
  const { setUp } = state;
  if (!setUp) return state.offered && (word === 'yes' || word === 'no') ? sayAgain(turn) : showMenu(turn);
  // Whoever steers on keeps the set-up that is open.
  if (word === 'back' || word === 'pause' || word === 'stop') state.offered = null;
  switch (word) {
    case 'repeat':
      return where(turn);
    case 'back':
      return goBack(turn);
    case 'pause':
      return pause(turn);
    case 'stop':
      if (setUp.step.kind === 'way-back') return sayAgain(turn);
      return giveUp(turn);
    case 'yes':
    case 'done':
      return confirm(turn, word);
    case 'no':
      return deny(turn);
  }
}

/** How far through the job, then the stage again. */
function where(turn: Turn): void {
  const { procedure, machine, stage } = benchOf(turn);
  const name = inLanguage(machine.name, turn.state.language);
  const section = sectionOf(procedure, stage);
  carry(turn, [
    section === null
      ? line('where-plain', { machine: name })
      : line('where', {
          machine: name,
          part: section.part,
          parts: section.parts,
          name: line(`${procedure.id}-section-${section.id}`),
        }),
  ]);
  sayAgain(turn);
}

/** "Done" and "yes" are the first button of a confirmation or of a yes-or-no; anywhere else a number or a choice is wanted. */
function confirm(turn: Turn, word: 'yes' | 'done'): void {
  const { state } = turn;
  const { setUp } = benchOf(turn);
  const choices = state.latest?.choices ?? [];
  if (choices.includes(word)) return choose(turn, word);
  if (choices.includes('done') && !setUp.heard) return choose(turn, 'done');
  if (setUp.heard) return choose(turn, 'yes');
  askBack(turn, setUp.step.kind === 'stage' && asksChoice(turn) ? 'choose-one' : 'number-wanted');
}

function deny(turn: Turn): void {
  const { setUp } = benchOf(turn);
  if (setUp.heard) return choose(turn, 'no');
  askBack(turn, asksChoice(turn) ? 'choose-one' : 'not-yet');
}

function asksChoice(turn: Turn): boolean {
  const { ask } = benchOf(turn).stage;
  return ask !== undefined && 'question' in ask;
}

/** One stage back; what was confirmed from there on has to be confirmed again. A running engine is stopped first. */
function goBack(turn: Turn): void {
  const { setUp, procedure } = benchOf(turn);
  setUp.heard = null;
  if (setUp.rig.engine === 'running') return askBack(turn, 'back-engine-runs');
  if (setUp.loop && setUp.rig.sensor === 'loose') return askBack(turn, 'back-sensor-loose');
  const before = setUp.been.at(-2);
  const stage = before === undefined ? undefined : stageOf(procedure, before);
  if (!stage) return askBack(turn, 'back-no-further');
  setUp.been = setUp.been.slice(0, -2);
  const from = procedure.stages.indexOf(stage);
  for (const later of procedure.stages.slice(from)) delete setUp.passed[later.id];
  enterStage(turn, stage);
}

function pause(turn: Turn): void {
  const { setUp } = benchOf(turn);
  const running = setUp.rig.engine === 'running';
  const untouched = isRideable(setUp.rig) && !running && setUp.doing.length === 0;
  setUp.paused = true;
  setUp.rig = { ...setUp.rig, awake: false, awakeSince: null, engine: 'off' };
  say(turn, {
    lines: [
      ...(running ? [line('pause-engine')] : []),
      ...(untouched ? [] : [line('leave-it')]),
      line('paused'),
    ],
  });
}
