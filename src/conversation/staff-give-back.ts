// Gives a chat back to the program: power, probes and a fresh reading first, at the stage where it was or the one that staff chose.
import { giveBack } from '../desk/case.ts';
import { enterNext, jumpAhead } from './enter-stage.ts';
import { newLoop } from './learn-loop.ts';
import { leaveWithdrawn, wayOut } from './leave-withdrawn.ts';
import { showMenu } from './menu.ts';
import { carry, caseFact, line, sayAgain } from './say.ts';
import { answer, holds, isClear, type Seat } from './seat.ts';
import { benchOf, type Turn } from './turn.ts';

export function giveBackCase(seat: Seat): void {
  // Whoever gives it back with a red flag up would send the owner to the machine again.
  if (!holds(seat) || !isClear(seat)) return;
  const { turn, one, member } = seat;
  const { setUp } = turn.state;
  if (setUp && wayOut(turn, setUp)?.into === null) return answer(seat, line('desk-withdrawn'));
  const { goTo } = one;
  giveBack(one, member.name, turn.scene.now);
  one.goTo = null;
  answer(seat, line('desk-returned', { name: member.name }));
  carry(turn, [line('given-back', { name: member.name })], { case: caseFact(turn, one) });
  goOn(turn, goTo);
}

function goOn(turn: Turn, goTo: string | null): void {
  const { setUp } = turn.state;
  if (!setUp) return showMenu(turn);
  setUp.held = false;
  setUp.paused = false;
  setUp.asked = null;
  setUp.heard = null;
  // What became of leads and power meanwhile is not known.
  const probes = setUp.rig.probes === 'none' ? 'none' : 'unsure';
  setUp.rig = { ...setUp.rig, awake: false, awakeSince: null, engine: 'off', probes };
  if (Object.keys(setUp.readings).length > 0) carry(turn, [line('given-back-fresh')]);
  if (leaveWithdrawn(turn)) return;
  if (goTo !== null) return jumpAhead(turn, goTo);
  const { step } = setUp;
  if (step.kind === 'way-back' || step.kind === 'give-up' || step.kind === 'cautions') return sayAgain(turn);
  startAfresh(turn);
  if (setUp.passed[setUp.stage] === 'accepted') return enterNext(turn);
  sayAgain(turn);
}

/** What was turned is not turned again, and what was odd is judged anew: a person has seen to it. */
function startAfresh(turn: Turn): void {
  const { setUp } = benchOf(turn);
  setUp.step = { kind: 'stage' };
  setUp.doing = [];
  setUp.extra = [];
  setUp.oddity = null;
  setUp.unclear = 0;
  setUp.reread = null;
  setUp.wakes = 0;
  for (const key of Object.keys(setUp.failures)) {
    if (key === setUp.stage || key.startsWith(`${setUp.stage}/`)) delete setUp.failures[key];
  }
  if (setUp.loop) setUp.loop = { ...newLoop(), free: setUp.loop.free };
}
