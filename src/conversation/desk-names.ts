// What stages, cautions, checks and readings are called in the desk's own language, and which of them somebody at the desk has named; for all that the desk reads and types.
import type { Line } from '../chat/facts.ts';
import { quoteWords } from '../desk/quote.ts';
import { foldPhrase } from '../measurement/hear-fold.ts';
import type { Content } from '../procedure/content.ts';
import { inLanguage } from '../procedure/localised.ts';
import { stageOf } from '../procedure/procedure.ts';
import { measureIds, redFlags } from '../procedure/vocabulary.ts';
import { nameOfReading } from './desk-judge.ts';
import { line } from './say.ts';
import { benchOf, type Turn } from './turn.ts';

export const stageName = (procedure: string, stage: string): Line => line(`${procedure}-${stage}-name`);

export const checkName = (check: string): Line => line(`check-${check}-name`);

export const cautionName = (caution: string): Line => line(`caution-${caution}-name`);

/** In the words of the desk. */
export function forDesk({ state, scene }: Turn, name: Line): string {
  return scene.label(name, scene.current.workshop.language, state.setUp?.content ?? scene.current.hash);
}

/** The one of these that is meant, by its id, by what it is called, or by a piece of either that only one of them has. */
export function named<Id extends string>(
  turn: Turn,
  typed: string,
  ids: readonly Id[],
  nameOf: (id: Id) => Line,
): Id | null {
  const said = foldPhrase(typed);
  if (said === '') return null;
  const known = ids.map((id) => ({ id, called: [foldPhrase(id), foldPhrase(forDesk(turn, nameOf(id)))] }));
  const exact = known.filter(({ called }) => called.includes(said));
  if (exact[0]) return exact[0].id;
  const holding = known.filter(({ called }) => called.some((name) => name.includes(said)));
  return holding.length === 1 ? (holding[0]?.id ?? null) : null;
}

/** What is on the button of a choice: an answer to the stage's question, or one of the program's own. */
export function pressedName(turn: Turn, choice: string): Line | string {
  const bench = turn.state.setUp ? benchOf(turn) : null;
  const ask = bench?.stage.ask;
  if (bench && ask && 'question' in ask && ask.answers.some(({ id }) => id === choice)) {
    return line(`${bench.procedure.id}-${ask.question}-${choice}`);
  }
  return ownButtons.includes(choice) ? line(`button-${choice}`) : quoteWords(choice);
}

const ownButtons = ['done', 'skip', 'yes', 'no', 'jumping'];

/** A machine by its name; one that content has no longer, by its id. */
export function machineName({ machines, workshop }: Content, id: string): string {
  const machine = machines[id];
  return machine ? inLanguage(machine.name, workshop.language) : id;
}

/** What is noted of a case by an id, in words; what content has no longer, and what somebody wrote, as it is. */
export function noteName(
  content: Content,
  procedure: string | null,
  what: string,
  note: string,
): Line | string {
  const known = procedure === null ? undefined : content.procedures[procedure];
  switch (what) {
    case 'asked':
      return isMeasure(note) ? line(`measure-${note}`) : note;
    case 'checked':
      return content.faults.checks.some(({ id }) => id === note) ? checkName(note) : note;
    case 'jumped':
      return known && stageOf(known, note)?.ask ? stageName(known.id, note) : note;
    case 'closed':
      return causeName(content, note);
    case 'opened':
    case 'reopened':
      return line(`reason-${note}`);
    case 'flagged':
    case 'returned':
      return flagName(note);
    case 'cleared': {
      const [flag = '', ...how] = note.split(': ');
      return line('desk-note-cleared', { flag: flagName(flag), how: how.join(': ') });
    }
    case 'accepted': {
      const [reading = '', value = '', ...why] = note.split(' ');
      const [measure = '', situation] = reading.split('@');
      if (!isMeasure(measure)) return note;
      return line('desk-note-accepted', {
        measure: nameOfReading(measure, situation ?? null),
        value,
        why: why.join(' '),
      });
    }
    default:
      return note;
  }
}

const isMeasure = (id: string): boolean => (measureIds as readonly string[]).includes(id);

const flagName = (flag: string): Line | string =>
  (redFlags as readonly string[]).includes(flag) ? line(`reason-flag-${flag}`) : flag;

export const causeName = ({ faults }: Content, cause: string): Line | string =>
  faults.faults.some(({ id }) => id === cause) ? line(`fault-${cause}`) : cause;
