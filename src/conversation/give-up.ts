// Giving up with the machine left as it ran before: offers the way back, then puts every part back, one thing at a time.
import type { Facts, Line } from '../chat/facts.ts';
import type { Action, Part } from '../procedure/vocabulary.ts';
import { parts } from '../procedure/vocabulary.ts';
import { doLines, doneButton } from './ask-reading.ts';
import { endUnset } from './end-set-up.ts';
import { partFillIn } from './fill-in.ts';
import { afterActions } from './rig.ts';
import { line, say } from './say.ts';
import { benchOf, type Turn } from './turn.ts';

/** One thing to put back: what to do, and which part goes in by how much afterwards. */
interface WayBackStep {
  doing: Action[];
  words?: Line;
  part?: Part;
  amount?: number;
}

/** What was changed and can be put back, in order; the leads come out last. */
function stepsBack(turn: Turn): Record<string, WayBackStep> {
  const { setUp } = benchOf(turn);
  const steps: Record<string, WayBackStep> = {};
  if (setUp.rig.engine === 'running') steps.engine = { doing: ['stop-engine'] };
  if (setUp.touched.includes('sensor-body') || setUp.rig.sensor === 'loose') {
    steps.sensor = {
      doing: [
        ...(setUp.rig.sensor === 'loose' ? [] : (['loosen:sensor-screws'] as const)),
        'restore:sensor-body',
        'tighten:sensor-screws',
      ],
    };
  }
  const turns = setUp.counts['idle-stop'];
  if (!turns && setUp.rig.idleStop === 'off') {
    steps.uncounted = { doing: [], words: line('way-back-uncounted') };
  }
  if (turns !== undefined && turns > 0) {
    steps.stop = {
      doing: setUp.rig.idleStop === 'off' ? [] : ['back-off:idle-stop'],
      part: 'idle-stop',
      amount: turns,
    };
  }
  const clicks = setUp.counts['fast-idle'];
  if (clicks !== undefined && clicks > 0) {
    steps.knob = {
      doing: [...(setUp.rig.fastIdle === 'off' ? [] : (['back-off:fast-idle'] as const)), 'engage:fast-idle'],
      part: 'fast-idle',
      amount: clicks,
    };
    steps.release = { doing: ['release:fast-idle'] };
  }
  if (setUp.rig.awake || setUp.rig.probes !== 'none') steps.leads = { doing: ['sleep', 'unprobe'] };
  return steps;
}

/** Whether anything was changed, or is in the way, that could be put back. */
export const canPutBack = (turn: Turn): boolean => Object.keys(stepsBack(turn)).length > 0;

/** The owner wants to stop. What was changed is offered to be put back first. */
export function giveUp(turn: Turn): void {
  const { setUp } = benchOf(turn);
  setUp.heard = null;
  setUp.oddity = null;
  assumeDone(turn);
  setUp.paused = false;
  const steps = Object.keys(stepsBack(turn));
  if (steps.length === 0) return endUnset(turn);
  if (steps.length === 1 && steps[0] === 'leads') return startWayBack(turn);
  setUp.step = { kind: 'give-up' };
  askGiveUp(turn);
}

/** What was asked for last may have been done without a word: it is put back with the rest. */
export function assumeDone(turn: Turn): void {
  const { setUp } = benchOf(turn);
  const opening = setUp.doing.filter((action) => /^(loosen|back-off):/.test(action));
  setUp.rig = afterActions(setUp.rig, opening, turn.scene.now);
  setUp.doing = [];
  const part = setUp.loop?.advised?.part;
  if (part !== undefined && !setUp.touched.includes(part)) setUp.touched.push(part);
}

export function askGiveUp(turn: Turn): void {
  const held = benchOf(turn).setUp.held;
  say(turn, {
    lines: [line('give-up')],
    facts: { ask: { kind: 'choice', question: 'way-back' } },
    buttons: [
      { id: 'restore', label: line('give-up-restore') },
      { id: 'leave', label: line('give-up-leave') },
      // While a person holds it, nobody goes on past them.
      held ? { id: 'wait', label: line('give-up-wait') } : { id: 'go-on', label: line('give-up-go-on') },
    ],
  });
}

export function startWayBack(turn: Turn): void {
  const { setUp } = benchOf(turn);
  setUp.step = { kind: 'way-back', left: Object.keys(stepsBack(turn)) };
  setUp.loop = null;
  askWayBack(turn);
}

/** Left as it is: tight and without leads all the same. */
export function leaveAsIs(turn: Turn): void {
  const { setUp } = benchOf(turn);
  setUp.step = { kind: 'way-back', left: [...(setUp.rig.sensor === 'loose' ? ['tighten'] : []), 'leads'] };
  setUp.loop = null;
  askWayBack(turn);
}

export function askWayBack(turn: Turn): void {
  const bench = benchOf(turn);
  const { step } = bench.setUp;
  if (step.kind !== 'way-back') return;
  const [id] = step.left;
  const back = id === undefined ? undefined : stepOf(turn, id);
  if (!back) return endUnset(turn);
  bench.setUp.doing = back.doing;
  const facts: Facts = { ask: { kind: 'confirm' } };
  if (back.doing.length > 0) facts.do = back.doing;
  const lines = [...doLines(turn, bench, back.doing), ...(back.words ? [back.words] : [])];
  if (back.part && back.amount !== undefined) {
    const { unit } = parts[back.part];
    facts.move = { part: back.part, direction: 'in', amount: back.amount, unit };
    lines.push(
      line(`move-${back.part}-in`, {
        ...partFillIn(bench.machine, back.part, turn.state.language),
        amount: back.amount,
      }),
    );
  }
  say(turn, { lines, facts, buttons: [doneButton] });
}

function stepOf(turn: Turn, id: string): WayBackStep | undefined {
  if (id === 'tighten') return { doing: ['tighten:sensor-screws'] };
  if (id === 'leads') return { doing: ['sleep', 'unprobe'] };
  return stepsBack(turn)[id];
}

/** One thing is back where it was. */
export function wayBackDone(turn: Turn): void {
  const { setUp } = benchOf(turn);
  const { step } = setUp;
  if (step.kind !== 'way-back') return;
  setUp.rig = afterActions(setUp.rig, setUp.doing, turn.scene.now);
  setUp.doing = [];
  const [finished, ...left] = step.left;
  if (finished === 'stop' || finished === 'uncounted') setUp.rig.idleStop = 'set';
  if (finished === 'knob') setUp.rig.fastIdle = 'set';
  setUp.step = { kind: 'way-back', left };
  askWayBack(turn);
}
