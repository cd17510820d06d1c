// The case's card for the desk: what a colleague would have told them, at a glance, in the order in which it matters; kept current by editing.

import type { CauseFact, Line } from '../chat/facts.ts';
import type { Case } from '../desk/case.ts';
import { firstName, machineLines, whoLines } from './desk-machine.ts';
import { cautionName, forDesk, machineName, noteName, stageName } from './desk-names.ts';
import { showPictures } from './desk-pictures.ts';
import { readingLines, trialLines } from './desk-readings.ts';
import { ownerName } from './desk-relay.ts';
import { caseFact, line, tellDesk } from './say.ts';
import { seatButtons } from './seat.ts';
import { tellDeskWhen } from './tell-when.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';
import { beliefOf, desksCauses } from './weigh-evidence.ts';

const causesShown = 4;
const wordsShown = 2;

/** A new card, or the one there is changed; nothing where it would say the same. */
export function showCard(turn: Turn, one: Case): void {
  const bench = turn.state.setUp ? benchOf(turn) : null;
  const causes = bench ? causesOf(bench) : [];
  const lines = [
    ...headLines(turn, one),
    line(''),
    ...(bench ? setUpLines(turn, bench, causes) : noSetUp(turn, one)),
    ...footLines(turn, one),
  ];
  const buttons = seatButtons(one);
  const face = sumOf(JSON.stringify([lines, buttons]));
  if (one.card?.face === face) return;
  const before = one.card;
  const edited = before ? { id: before.id, edit: before.edit + 1 } : undefined;
  const facts = { case: caseFact(turn, one), ...(causes.length > 0 ? { causes } : {}) };
  const id = tellDesk(turn, one.id, { lines, buttons, facts }, edited);
  one.card = { id, edit: edited?.edit ?? 0, face };
  if (!before && bench) showPictures(turn, one, bench, causes);
}

/** What the card shows of an owner is gone with all else; it says so in its place. */
export function blankCard(turn: Turn, one: Case): void {
  const edited = one.card ? { id: one.card.id, edit: one.card.edit + 1 } : undefined;
  tellDesk(turn, one.id, { lines: [line('desk-erased', { id: one.id })] }, edited);
}

function headLines(turn: Turn, one: Case): Line[] {
  const holder = one.holder?.name ?? null;
  const since = tellDeskWhen(turn, one.history.at(-1)?.at ?? one.openedAt);
  const state =
    one.state === 'taken' && holder !== null
      ? line('desk-state-taken', { name: holder })
      : one.state === 'waiting'
        ? line('desk-state-waiting', { since: tellDeskWhen(turn, one.openedAt) })
        : line(`desk-state-${one.state === 'closed' ? 'closed' : 'returned'}`, { since });
  return [
    line('desk-card', { id: one.id, state }),
    ...(one.flag === null ? [] : [line('desk-card-flag', { flag: line(`reason-flag-${one.flag}`) })]),
  ];
}

function setUpLines(turn: Turn, bench: Bench, causes: CauseFact[]): Line[] {
  const one = turn.state.case;
  const readings = readingLines(bench);
  const trials = trialLines(bench);
  const { acknowledged, oddity } = bench.setUp;
  const checks = (oddity?.done ?? []).filter((id) =>
    bench.content.faults.checks.some((check) => check.id === id),
  );
  return [
    ...machineLines(turn, bench),
    line(''),
    ...whoLines(turn, bench, ownerName(turn)),
    ...wordsLines(one),
    ...section('desk-head-readings', readings),
    ...section('desk-head-tried', [
      ...trials,
      ...checks.map((check) => line('desk-checked', { check: line(`check-${check}`) })),
    ]),
    ...section('desk-head-causes', [
      ...causes.map(({ id, probability = 0 }) =>
        line('desk-cause', { cause: line(`fault-${id}`), share: Math.round(probability * 100) }),
      ),
      ...causes.slice(0, 1).map(({ id }) => line(`fault-${id}-why`)),
    ]),
    ...(acknowledged.length > 0
      ? [
          line(''),
          line('desk-cautions', {
            cautions: acknowledged.map((one) => forDesk(turn, cautionName(one))).join(', '),
          }),
        ]
      : []),
  ];
}

function noSetUp(turn: Turn, one: Case): Line[] {
  const { about } = one;
  return [
    line('desk-no-set-up-open'),
    line(''),
    line('desk-who', { name: firstName(ownerName(turn)), platform: turn.state.owner.platform }),
    ...(about
      ? [
          line('desk-about', {
            machine: machineName(turn.scene.current, about.machine),
            code: about.code,
          }),
        ]
      : []),
    ...wordsLines(one),
  ];
}

function wordsLines(one: Case | null): Line[] {
  return (one?.ownWords ?? []).slice(0, wordsShown).map((text) => line('desk-own-words', { text }));
}

/** The likely causes, once anything was read that could bear them out. */
function causesOf(bench: Bench): CauseFact[] {
  const { readings, oddity } = bench.setUp;
  if (Object.keys(readings).length === 0 && !oddity) return [];
  return desksCauses(beliefOf(bench)).slice(0, causesShown);
}

function footLines(turn: Turn, one: Case): Line[] {
  const { state } = turn;
  const remarks = one.history.filter(
    ({ what }) => what === 'remark' || what === 'accepted' || what === 'cleared',
  );
  return [
    line(''),
    line('desk-reason', { reason: line(`reason-${one.reason}`) }),
    ...(one.goTo === null
      ? []
      : [
          line('desk-goes-on-at', {
            stage: state.setUp ? stageName(state.setUp.procedure, one.goTo) : one.goTo,
          }),
        ]),
    ...remarks.slice(-4).map(({ by, what, note }) =>
      line(`desk-history-${what}`, {
        name: by ?? '',
        note: noteName(turn.scene.current, one.about?.procedure ?? null, what, note ?? ''),
      }),
    ),
    ...(one.job === null ? [] : [line('desk-job', { job: one.job })]),
  ];
}

const section = (
  head: 'desk-head-readings' | 'desk-head-tried' | 'desk-head-causes',
  lines: Line[],
): Line[] => (lines.length === 0 ? [] : [line(''), line(head), ...lines]);

/** A short sum of a text, to see whether it changed (FNV-1a, 32 bits). */
function sumOf(text: string): string {
  let sum = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) sum = Math.imul(sum ^ text.charCodeAt(at), 0x01000193) >>> 0;
  return sum.toString(36);
}
