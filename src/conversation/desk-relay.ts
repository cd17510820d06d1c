// Passes what an owner writes on to the desk while a case is open, with the verdict of any number in it; what they wrote is quoted text, never a command.
import type { Line, VerdictFact } from '../chat/facts.ts';
import type { IncomingMessage } from '../chat/incoming-message.ts';
import { isOpen, isTaken, keepWords } from '../desk/case.ts';
import { quoteName, quoteWords } from '../desk/quote.ts';
import { remindNext } from '../desk/remind.ts';
import type { Seen } from '../diagnosis/evidence.ts';
import { hear } from '../measurement/hear.ts';
import type { Unit } from '../measurement/unit.ts';
import { judgeForDesk, limitsLine, nameOfReading, resultLine, seenLine } from './desk-judge.ts';
import { pressedName } from './desk-names.ts';
import { unitOf, unitSaid } from './fill-in.ts';
import { caseFact, line, tellDesk } from './say.ts';
import { benchOf, type Turn } from './turn.ts';

export const ownerName = ({ state }: Turn): string => quoteName(state.owner.name, state.owner.person);

export function relayToDesk(turn: Turn, message: IncomingMessage): void {
  const { state, scene } = turn;
  const one = state.case;
  const { body } = message;
  if (!isOpen(one) || body.kind === 'choice' || body.kind === 'start') return;
  const text = body.kind === 'picture' ? body.caption : body.text;
  keepWords(one, quoteWords(text));
  if (isTaken(one)) {
    one.unansweredSince ??= scene.now;
    one.remindAt ??= remindNext(scene.current.workshop, scene.now, one.reminded, scene.desk.closedOn);
  }
  const key =
    body.kind === 'picture'
      ? text.trim() === ''
        ? 'desk-owner-picture'
        : 'desk-owner-picture-with'
      : body.kind === 'edited'
        ? 'desk-owner-changed'
        : 'desk-owner-said';
  const along = readAlong(turn, text);
  tellDesk(turn, one.id, {
    lines: [line(key, { name: ownerName(turn), text: quoteWords(text) }), ...along.lines],
    facts: { case: caseFact(turn, one), ...(along.verdict ? { verdict: along.verdict } : {}) },
    picture:
      body.kind === 'picture' ? { kind: 'relayed', platform: message.platform, picture: body.picture } : null,
  });
}

/** A button that the owner pressed while a person has the chat, by what is on it. */
export function relayPress(turn: Turn, choice: string): void {
  const one = turn.state.case;
  // An answer to what staff asked is told when it is taken.
  if (!isTaken(one) || turn.state.setUp?.asked) return;
  tellDesk(turn, one.id, {
    lines: [line('desk-owner-pressed', { name: ownerName(turn), choice: pressedName(turn, choice) })],
    facts: { case: caseFact(turn, one) },
  });
}

/** What a number in it would come to, by the measure that is asked for or that the stage is about. */
function readAlong(turn: Turn, text: string): { lines: Line[]; verdict: VerdictFact | null } {
  if (!turn.state.setUp) return { lines: [], verdict: null };
  const bench = benchOf(turn);
  const { asked } = bench.setUp;
  // What staff asked for is told when it is taken.
  if (asked?.kind === 'reading') return { lines: [], verdict: null };
  const { ask } = bench.stage;
  if (!ask || !('reading' in ask)) return { lines: [], verdict: null };
  const measure = ask.reading;
  const situation = ask.at ?? null;
  const heard = hear(text, unitOf(measure) as Unit, turn.scene.lexicons(turn.state.language));
  const seen: Seen | null =
    heard.kind === 'reading'
      ? { kind: 'value', value: heard.value, resolution: heard.resolution }
      : heard.kind === 'range'
        ? { kind: 'range', low: heard.low, high: heard.high, resolution: heard.resolution }
        : null;
  if (!seen) return { lines: [], verdict: null };
  const verdict = judgeForDesk(bench, { measure, situation }, seen);
  const limits = verdict && limitsLine(verdict.low, verdict.high, seen.resolution);
  if (!verdict || !limits) return { lines: [], verdict: null };
  const shown = seenLine(seen, unitSaid(unitOf(measure)));
  return {
    lines: [
      line('desk-read-along', {
        measure: nameOfReading(measure, situation),
        shown,
        limits,
        result: resultLine(verdict),
      }),
    ],
    verdict,
  };
}
