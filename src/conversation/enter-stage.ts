// Goes to a stage: passes over what does not apply, shows its cautions first, then says what to do and asks; the spine of every procedure.
import type { PictureRequest } from '../chat/outgoing-message.ts';
import { type Stage, sectionOf, stageAfter, stageBelow, stageOf } from '../procedure/procedure.ts';
import { askStage } from './ask-stage.ts';
import { applies } from './circumstances.ts';
import { endSetUp } from './end-set-up.ts';
import { carry, line, say } from './say.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';

/** Far more than a shipped procedure has in a row; a ring of stages that do not apply is a defect that `check` finds. */
const farthest = 500;

/** Enters this stage, or the first after it that applies; null ends the set-up. */
export function enterStage(turn: Turn, from: Stage | null, cautions: readonly string[] = []): void {
  const bench = benchOf(turn);
  let stage = from;
  for (let passed = 0; stage && passed < farthest; passed += 1) {
    if (!applies(bench, stage)) {
      // What is passed over leads nowhere else: the stage that stands below it is looked at.
      stage = stageBelow(bench.procedure, stage);
      continue;
    }
    // Whatever led here, a jump or a way that content takes: what must hold before an engine starts is confirmed first.
    const open = openStartItemBefore(turn, stage);
    if (open) return arriveAt(turn, bench, open, cautions);
    if (stage.conclude === undefined) return arriveAt(turn, bench, stage, cautions);
    bench.setUp.finding = stage.conclude;
    carry(turn, [line(`${bench.procedure.id}-${stage.id}`)]);
    stage = stageAfter(bench.procedure, stage);
  }
  if (stage) throw new Error(`Procedure ${bench.procedure.id} goes round in a ring at ${stage.id}.`);
  endSetUp(turn);
}

export function enterNext(turn: Turn): void {
  const { procedure, stage } = benchOf(turn);
  enterStage(turn, stageAfter(procedure, stage));
}

/** The stage came out right. */
export function passStage(turn: Turn): void {
  const { setUp } = benchOf(turn);
  setUp.passed[setUp.stage] = 'passed';
  enterNext(turn);
}

/** A stage by its id; the start list is gone through before anything that lies behind it. */
export function jumpTo(turn: Turn, id: string): void {
  enterStage(turn, landing(turn, id));
}

/** Where a jump to this stage leads: there, or to the item of the start list that is open before it. */
export function landing(turn: Turn, id: string): Stage {
  const { procedure } = benchOf(turn);
  const wanted = stageOf(procedure, id);
  if (!wanted) throw new Error(`Procedure ${procedure.id} has no stage ${id}.`);
  return openStartItemBefore(turn, wanted) ?? wanted;
}

/** A jump past stages that were never gone through; their cautions are shown before anything is done. */
export function jumpAhead(turn: Turn, id: string): void {
  const { procedure, setUp } = benchOf(turn);
  const stage = landing(turn, id);
  const before = procedure.stages.slice(0, procedure.stages.indexOf(stage));
  const cautions = before.flatMap((one) => [...one.cautions, ...(one.adjust?.cautions ?? [])]);
  enterStage(
    turn,
    stage,
    [...new Set(cautions)].filter((one) => !setUp.acknowledged.includes(one)),
  );
}

/** The first item of the start list that stands before this stage and is not confirmed. */
function openStartItemBefore(turn: Turn, wanted: Stage): Stage | undefined {
  const bench = benchOf(turn);
  const until = bench.procedure.stages.indexOf(wanted);
  const list = bench.procedure.stages.filter((stage) => stage.startList);
  const last = list.at(-1);
  if (!last || bench.procedure.stages.indexOf(last) >= until) return undefined;
  return list.find((stage) => applies(bench, stage) && bench.setUp.passed[stage.id] === undefined);
}

/** Whoever comes to a part of the job for the first time is told how far that is. */
function tellPart(turn: Turn, { procedure, setUp }: Bench, stage: Stage): void {
  const section = sectionOf(procedure, stage);
  if (section === null) return;
  const been = setUp.been.some((id) => {
    const before = stageOf(procedure, id);
    return before !== undefined && sectionOf(procedure, before)?.id === section.id;
  });
  if (been) return;
  const { id, part, parts } = section;
  carry(turn, [line('part-begins', { part, parts, name: line(`${procedure.id}-section-${id}`) }), line('')]);
}

function arriveAt(turn: Turn, bench: Bench, stage: Stage, besides: readonly string[]): void {
  const { setUp } = bench;
  tellPart(turn, bench, stage);
  setUp.stage = stage.id;
  setUp.loop = null;
  setUp.heard = null;
  setUp.unclear = 0;
  setUp.reread = null;
  setUp.oddity = null;
  // Doing an item of the start list again, or one that lies before it, makes the rest of the list worth nothing.
  if (setUp.been.at(-1) !== stage.id) setUp.been = [...setUp.been, stage.id].slice(-80);
  const cautions = [...new Set([...besides, ...stage.cautions])].filter(
    (caution) => !setUp.acknowledged.includes(caution),
  );
  if (cautions.length > 0) return showCautions(turn, cautions, 'stage');
  setUp.step = { kind: 'stage' };
  askStage(turn);
}

/** Cautions stand alone and are acknowledged before what they belong to. */
export function showCautions(
  turn: Turn,
  cautions: string[],
  before: 'stage' | 'turn',
  picture: PictureRequest | null = null,
): void {
  const { setUp } = benchOf(turn);
  setUp.step = { kind: 'cautions', cautions, before };
  setUp.doing = [];
  say(turn, {
    lines: cautions.map((caution) => line(`caution-${caution}`)),
    facts: { cautions, ask: { kind: 'confirm' } },
    buttons: [{ id: 'done', label: line('button-understood') }],
    picture,
  });
}
