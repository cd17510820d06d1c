// Says a move: what to turn, which way, how far and where to stop, in full at first and in few words while a hand is on the part; for the adjusting loop.
import type { Line, MoveFact } from '../chat/facts.ts';
import { roundInward, type Window } from '../measurement/window.ts';
import { type Action, type Part, parts } from '../procedure/vocabulary.ts';
import { askReading } from './ask-reading.ts';
import { figure, partFillIn } from './fill-in.ts';
import { line } from './say.ts';
import type { Bench, Turn } from './turn.ts';

/** `window` is the band to watch for while turning, where that can be promised. `again`: the hand is still on the part. */
export function sayMove(
  turn: Turn,
  bench: Bench,
  part: Part,
  direction: number,
  amount: number,
  window: Window | null,
  doing: readonly Action[],
  words: readonly Line[] = [],
  again = false,
): void {
  const { ask } = bench.stage;
  if (!ask || !('reading' in ask)) return;
  const { directions, unit } = parts[part];
  const move: MoveFact = { part, direction: direction > 0 ? directions[0] : directions[1], amount, unit };
  const until = window && roundInward(window, 0.001);
  if (until && until.low !== null && until.high !== null) move.until = { low: until.low, high: until.high };
  const fillIn = { ...partFillIn(bench.machine, part, turn.state.language), amount };
  const band = move.until && {
    low: figure(move.until.low, 0.001),
    high: figure(move.until.high, 0.001),
  };
  const short = band
    ? line(`again-until-${move.direction}`, band)
    : line(`again-${unit}-${move.direction}`, { amount });
  const moveLines = again
    ? [short]
    : [line(`move-${part}-${move.direction}`, fillIn), ...(band ? [line('move-until', band)] : [])];
  askReading(
    turn,
    ask.reading,
    doing,
    [...words, ...moveLines],
    { move },
    [{ id: 'jumping', label: line('button-jumping') }],
    { asked: again },
  );
}
