// From the first word to an open set-up: greeting, procedure, machine, and start links; for owners without a set-up, or with another one.

import { machinesFor, proceduresOffered } from '../procedure/content.ts';
import { inLanguage } from '../procedure/localised.ts';
import { checkCode } from './check-code.ts';
import { enterStage } from './enter-stage.ts';
import { carry, line, say, sayAgain } from './say.ts';
import { newSetUp } from './state.ts';
import type { Turn } from './turn.ts';

/** Once per chat: who speaks, what it is and is not, what is kept and who reads it. */
function greet(turn: Turn): void {
  if (turn.state.greeted) return;
  turn.state.greeted = true;
  const { workshop } = turn.scene.current;
  carry(turn, [
    line('greeting', { workshop: inLanguage(workshop.name, turn.state.language) }),
    line('greeting-scope'),
    line('greeting-kept', { days: workshop.keepDays }),
    line(''),
  ]);
}

/** Offers what there is to choose; a single procedure is chosen already. */
export function showMenu(turn: Turn): void {
  greet(turn);
  const { state, scene } = turn;
  const procedures = proceduresOffered(scene.current);
  const [only] = procedures;
  state.chosen = procedures.length === 1 && only ? only.id : null;
  if (state.chosen !== null) return showMachines(turn);
  state.menu = 'procedure';
  say(turn, {
    lines: [line('menu-procedure')],
    facts: { ask: { kind: 'choice', question: 'procedure' } },
    buttons: procedures.map((procedure) => ({
      id: procedure.id,
      label: inLanguage(procedure.name, state.language),
    })),
  });
}

function showMachines(turn: Turn): void {
  const { state, scene } = turn;
  state.menu = 'machine';
  say(turn, {
    lines: [line('menu-machine')],
    facts: { ask: { kind: 'choice', question: 'machine' } },
    buttons: machinesFor(scene.current, state.chosen ?? '').map((machine) => ({
      id: machine.id,
      label: inLanguage(machine.name, state.language),
    })),
  });
}

/** A choice in the menu, already known to be one of those offered. */
export function chooseInMenu(turn: Turn, choice: string): void {
  const { state } = turn;
  if (state.menu === 'procedure') {
    state.chosen = choice;
    return showMachines(turn);
  }
  openSetUp(turn, state.chosen ?? '', choice);
}

/** A start link. The same one again says the stage again; another asks what to keep. */
export function followLink(turn: Turn, procedure: string | null, machine: string | null): void {
  const { state, scene } = turn;
  const known = procedure === null ? undefined : scene.current.procedures[procedure];
  const offers = known ? machinesFor(scene.current, known.id) : [];
  const fits = offers.some((one) => one.id === machine);
  if (state.setUp) {
    if (
      state.setUp.held ||
      procedure === null ||
      !known ||
      (state.setUp.procedure === procedure && (machine === null || state.setUp.machine === machine))
    ) {
      return sayAgain(turn);
    }
    if (!fits || machine === null) {
      carry(turn, [line('link-unknown')]);
      return sayAgain(turn);
    }
    state.offered = { procedure, machine };
    return askReplace(turn);
  }
  greet(turn);
  if (known && fits && machine !== null) return openSetUp(turn, known.id, machine);
  if (procedure !== null && (!known || machine !== null)) carry(turn, [line('link-unknown')]);
  if (!known) return showMenu(turn);
  state.chosen = known.id;
  showMachines(turn);
}

/** Keep the open set-up, or start the one that the link names. */
export function askReplace(turn: Turn): void {
  say(turn, {
    lines: [line('link-replace')],
    facts: { ask: { kind: 'choice', question: 'replace' } },
    buttons: [
      { id: 'keep', label: line('link-keep') },
      { id: 'replace', label: line('link-start-new') },
    ],
  });
}

/** What the owner decided about another start link. */
export function decideLink(turn: Turn, choice: string): void {
  const { state } = turn;
  const offered = state.offered;
  state.offered = null;
  if (choice === 'replace' && offered) {
    if (state.setUp && state.setUp.touched.length > 0) carry(turn, [line('link-left-as-is')]);
    return openSetUp(turn, offered.procedure, offered.machine);
  }
  sayAgain(turn);
}

function openSetUp(turn: Turn, procedure: string, machine: string): void {
  const { state, scene } = turn;
  const first = scene.current.procedures[procedure]?.stages[0];
  if (!first) throw new Error(`Procedure ${procedure} has no stages.`);
  state.menu = null;
  state.chosen = null;
  state.setUps += 1;
  const code = checkCode(scene.number, state.setUps);
  state.setUp = newSetUp(code, scene.current.hash, procedure, machine, first.id, scene.now);
  const own = scene.current.machines[machine];
  carry(turn, [line('set-up-opened', { machine: own ? inLanguage(own.name, state.language) : machine })]);
  if (own?.sensor.adjustable === 'no') {
    state.setUp.checkOnly = 'not-adjustable';
    carry(turn, [line('check-only-not-adjustable')]);
  }
  carry(turn, [line('')]);
  enterStage(turn, first);
}
