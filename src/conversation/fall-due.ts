// What the clock brings: a control unit awake too long, a case that nobody has taken; nothing else moves a chat by itself.
import { caseFact, line, say, tellDesk } from './say.ts';
import { benchOf, type Turn } from './turn.ts';

export function fallDue(turn: Turn): void {
  const { state, scene } = turn;
  const { setUp } = state;
  if (setUp && setUp.rig.awakeSince !== null && setUp.rig.engine === 'off' && !setUp.paused) {
    const { machine } = benchOf(turn);
    if (scene.now >= setUp.rig.awakeSince + machine.awakeMinutes * 60_000) {
      setUp.paused = true;
      setUp.rig = { ...setUp.rig, awake: false, awakeSince: null };
      say(turn, { lines: [line('awake-too-long', { minutes: machine.awakeMinutes }), line('paused')] });
    }
  }
  const one = state.case;
  if (one?.remindAt != null && one.state === 'waiting' && scene.now >= one.remindAt) {
    one.remindAt += scene.current.workshop.remindMinutes * 60_000;
    const minutes = Math.round((scene.now - one.openedAt) / 60_000);
    tellDesk(turn, null, {
      lines: [line('desk-reminder', { id: one.id, minutes })],
      facts: { case: caseFact(turn, one) },
    });
  } else if (one && one.state !== 'waiting') {
    one.remindAt = null;
  }
}
