// One message of a member of the desk inside a case: a button or a command, a picture, or plain words to the owner.
import type { IncomingMessage } from '../chat/incoming-message.ts';
import { type Case, isTaken, type Member } from '../desk/case.ts';
import { quoteName, quoteWords } from '../desk/quote.ts';
import { type Command, readBareCommand, readCommand } from '../desk/read-command.ts';
import { commandsOf } from './command-words.ts';
import { caseFact, line, say, tellDesk } from './say.ts';
import { answer, type Seat, seatButtons, tell } from './seat.ts';
import { acceptValue } from './staff-accept.ts';
import { askMeasure } from './staff-ask-for.ts';
import { sendCheck } from './staff-check.ts';
import { closeCase, nameCause } from './staff-close.ts';
import { giveBackCase } from './staff-give-back.ts';
import { chooseStage } from './staff-jump.ts';
import { clearFlag, keepNote, noteJob, showAgain } from './staff-note.ts';
import { showRecord } from './staff-record.ts';
import { passCase, takeCase, takeOver } from './staff-take.ts';
import type { Turn } from './turn.ts';

/** Said bare before anybody has the case: plain words would go nowhere. */
const saidBare = ['take', 'help', 'card', 'record'];

export function hearStaff(turn: Turn, message: IncomingMessage): void {
  const one = turn.state.case;
  const member = memberOf(message);
  if (!one || one.id !== message.caseId) return tellPast(turn, message.caseId, one);
  const seat = { turn, one, member };
  const { body } = message;
  switch (body.kind) {
    case 'choice':
      return act(seat, commandOf(body.choice), 'desk-choice-unknown');
    case 'picture':
      if (!mayWrite(seat)) return;
      return sendPicture(seat, message, body.picture, body.caption);
    case 'edited':
      return answer(seat, line('desk-edited'));
    case 'start':
      return answer(seat, line('desk-start'));
    case 'text': {
      const meaning = commandsOf(turn.scene);
      const command =
        readCommand(body.text, meaning) ??
        (isTaken(one) ? null : readBareCommand(body.text, saidBare, meaning));
      if (command) return act(seat, command, 'desk-command-unknown');
      if (body.text.trim() === '' || !mayWrite(seat)) return;
      return write(seat, body.text);
    }
  }
}

const commandOf = (choice: string): Command => {
  const [name = '', ...rest] = choice.split(':');
  return { name, rest: rest.join(':') };
};

function memberOf({ platform, person, name }: IncomingMessage): Member {
  return { platform, person, name: quoteName(name, quoteName(person, '?')) };
}

function act(
  seat: Seat,
  { name, rest }: Command,
  unknown: 'desk-choice-unknown' | 'desk-command-unknown',
): void {
  switch (name) {
    case 'take':
      return takeCase(seat);
    case 'take-over':
      return takeOver(seat);
    case 'pass':
      return passCase(seat, rest);
    case 'ask':
      return askMeasure(seat, rest);
    case 'check':
      return sendCheck(seat, rest);
    case 'accept':
      return acceptValue(seat, rest);
    case 'jump':
      return chooseStage(seat, rest);
    case 'clear':
      return clearFlag(seat, rest);
    case 'give-back':
      return giveBackCase(seat);
    case 'close':
      return closeCase(seat, rest);
    case 'cause':
      return nameCause(seat, rest);
    case 'note':
      return keepNote(seat, rest);
    case 'job':
      return noteJob(seat, rest);
    case 'card':
      return showAgain(seat);
    case 'record':
      return showRecord(seat, rest);
    case 'help':
      return help(seat);
    default:
      return answer(seat, line(unknown));
  }
}

/** Plain words reach the owner only once somebody has the case. */
function mayWrite(seat: Seat): boolean {
  if (isTaken(seat.one)) return true;
  tell(seat, { lines: [line('desk-not-sent')], buttons: seatButtons(seat.one).slice(0, 1) });
  return false;
}

function write({ turn, one, member }: Seat, text: string): void {
  answered(one);
  say(turn, {
    lines: [line('staff-says', { name: member.name, text: quoteWords(text) })],
    facts: { case: caseFact(turn, one) },
  });
}

function sendPicture(
  { turn, one, member }: Seat,
  message: IncomingMessage,
  picture: string,
  caption: string,
): void {
  answered(one);
  say(turn, {
    lines: [
      caption.trim() === ''
        ? line('staff-sends-picture', { name: member.name })
        : line('staff-says', { name: member.name, text: quoteWords(caption) }),
    ],
    facts: { case: caseFact(turn, one) },
    picture: { kind: 'relayed', platform: message.platform, picture },
  });
}

function answered(one: Case): void {
  one.unansweredSince = null;
  one.remindAt = null;
  one.reminded = 0;
}

function help(seat: Seat): void {
  const keys = ['talk', 'take', 'measure', 'decide', 'end', 'note', 'desk'] as const;
  tell(seat, {
    lines: keys.map((key) => line(`desk-help-${key}`)),
    buttons: seatButtons(seat.one),
  });
}

/** Said in the thread of a case that another followed. */
function tellPast(turn: Turn, caseId: string | null, one: Case | null): void {
  tellDesk(turn, caseId, {
    lines: [one ? line('desk-case-past', { id: one.id }) : line('desk-case-unknown')],
  });
}
