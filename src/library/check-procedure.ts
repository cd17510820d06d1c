// Holds one procedure against itself, for `check`: ids that lead nowhere, rings without a way out, guards that are missing.
import type { Condition } from '../procedure/condition.ts';
import type { Outcome, Procedure, Stage } from '../procedure/procedure.ts';
import { checkRings } from './check-rings.ts';
import { checkDuplicates, type Finding } from './finding.ts';
import type { Path } from './read-yaml.ts';
import { reachableStages } from './stage-graph.ts';
import { suggest } from './suggest.ts';

export function checkProcedure(procedure: Procedure, procedures: readonly string[]): Finding[] {
  const { stages, withdrawn } = procedure;
  const findings = [
    ...checkDuplicates(['stages'], stages, 'stage'),
    ...stages.flatMap((stage, index) => checkStage(procedure, stage, ['stages', index])),
    ...checkStart(stages),
    ...stages.flatMap((_, index) => checkPassedOver(stages, index)),
  ];
  const instead = withdrawn?.instead;
  if (instead !== undefined && (!procedures.includes(instead) || instead === procedure.id)) {
    const others = procedures.filter((id) => id !== procedure.id);
    const mend = suggest(instead, others, 'other procedure');
    findings.push({
      path: ['withdrawn', 'instead'],
      message: `There is no other procedure "${instead}".`,
      mend,
    });
  }
  // Where ids lead nowhere, what can be reached says little.
  if (findings.length > 0) return findings;
  const reached = reachableStages(procedure, null);
  const unreached = stages.flatMap((stage, index): Finding[] => {
    if (reached.has(stage)) return [];
    const mend = 'Let another stage lead to it by next or go, or take it out.';
    return [{ path: ['stages', index, 'id'], message: `No stage leads to "${stage.id}".`, mend }];
  });
  return [...unreached, ...checkRings(procedure), ...checkCautions(stages)];
}

function checkStage(procedure: Procedure, stage: Stage, path: Path): Finding[] {
  const ids = procedure.stages.map(({ id }) => id);
  const findings: Finding[] = [];
  const checkId = (id: string | undefined, at: Path) => {
    if (id === undefined || ids.includes(id)) return;
    findings.push({
      path: [...path, ...at],
      message: `There is no stage "${id}".`,
      mend: suggest(id, ids, 'stage'),
    });
  };
  const checkOutcome = (outcome: Outcome | undefined, at: Path) => {
    if (outcome && 'go' in outcome) checkId(outcome.go, [...at, 'go']);
  };
  checkId(stage.next, ['next']);
  checkOutcome(stage.failing, ['failing']);
  stage.when.forEach((condition, index) => {
    findings.push(...checkCondition(procedure, condition, [...path, 'when', index]));
  });
  const { ask } = stage;
  if (ask && 'question' in ask) {
    findings.push(...checkDuplicates([...path, 'ask', 'answers'], ask.answers, 'answer'));
    for (const [index, answer] of ask.answers.entries()) {
      checkOutcome(answer.outcome, ['ask', 'answers', index, 'outcome']);
    }
  }
  const needs = (holds: boolean, at: Path, message: string, mend: string) => {
    if (!holds) findings.push({ path: [...path, ...at], message: `Stage "${stage.id}" ${message}.`, mend });
  };
  const reads = ask !== undefined && 'reading' in ask;
  const judges = reads || (ask !== undefined && 'readings' in ask);
  const { adjust } = stage;
  needs(
    (ask === undefined) !== (stage.conclude === undefined),
    ['id'],
    ask ? 'both asks and concludes' : 'neither asks nor concludes anything',
    ask ? 'Keep one of ask and conclude.' : 'Add an ask, as "ask: { confirm: true }".',
  );
  needs(!adjust || reads, ['adjust'], 'adjusts, but asks for no reading', 'Add "ask: { reading: … }".');
  needs(
    !adjust || (adjust.free === undefined) === (adjust.fix === undefined),
    ['adjust'],
    'lets something go and does not fix it again, or the other way round',
    'Give both free and fix, or neither.',
  );
  needs(
    !stage.failing || judges,
    ['failing'],
    'says what follows from a reading, but asks for none',
    'Take "failing" out.',
  );
  needs(
    !stage.noteOnly || judges,
    ['noteOnly'],
    'notes a reading, but asks for none',
    'Take "noteOnly" out.',
  );
  needs(
    !stage.startList || (ask !== undefined && 'confirm' in ask),
    ['startList'],
    'is an item of the start list, but nothing is confirmed',
    'Write "ask: { confirm: true }".',
  );
  needs(
    stage.picture !== 'part' || (stage.shows ?? adjust?.part) !== undefined,
    ['picture'],
    'shows a part, but does not say which',
    'Add "shows" with the part.',
  );
  return findings;
}

function checkCondition(procedure: Procedure, condition: Condition, path: Path): Finding[] {
  if ('not' in condition) return checkCondition(procedure, condition.not, [...path, 'not']);
  if ('any' in condition) {
    return condition.any.flatMap((one, index) => checkCondition(procedure, one, [...path, 'any', index]));
  }
  const { stages } = procedure;
  const unknown = (key: string, id: string, known: string[], what: string): Finding[] => {
    if (known.includes(id)) return [];
    return [
      { path: [...path, key], message: `There is no ${what} "${id}".`, mend: suggest(id, known, what) },
    ];
  };
  if ('passed' in condition)
    return unknown(
      'passed',
      condition.passed,
      stages.map(({ id }) => id),
      'stage',
    );
  if ('touched' in condition) {
    const turned = stages.flatMap(({ adjust, do: doing }) =>
      [adjust?.part ?? [], doing.map(partOfAction)].flat(2),
    );
    return unknown('touched', condition.touched, [...new Set(turned)], 'turned part');
  }
  if (!('answer' in condition)) return [];
  const asks = stages.flatMap(({ ask }) => (ask && 'question' in ask ? [ask] : []));
  const asked = asks.filter((ask) => ask.question === condition.answer);
  if (asked.length === 0)
    return unknown(
      'answer',
      condition.answer,
      asks.map((ask) => ask.question),
      'question',
    );
  const answers = [...new Set(asked.flatMap((ask) => ask.answers.map(({ id }) => id)))];
  const wanted = typeof condition.is === 'string' ? [condition.is] : condition.is;
  return wanted.flatMap((id): Finding[] => {
    if (answers.includes(id)) return [];
    const message = `The question "${condition.answer}" has no answer "${id}".`;
    return [{ path: [...path, 'is'], message, mend: suggest(id, answers, 'answer') }];
  });
}

const partOfAction = (action: string): string[] => action.split(':').slice(1);

/** An engine is only started behind a list of what must hold first. */
function checkStart(stages: readonly Stage[]): Finding[] {
  const start = stages.findIndex((stage) => stage.do.includes('start-engine'));
  if (start < 0 || stages.slice(0, start).some((stage) => stage.startList)) return [];
  const message = `Stage "${stages[start]!.id}" starts the engine, and nothing is confirmed before.`;
  const mend = 'Put stages with "startList: true" before it, one for each thing that must hold first.';
  return [{ path: ['stages', start, 'do'], message, mend }];
}

/** No way that a file names leads past what must hold before an engine starts. */
function checkPassedOver(stages: readonly Stage[], from: number): Finding[] {
  const stage = stages[from]!;
  const answers = stage.ask && 'question' in stage.ask ? stage.ask.answers : [];
  const outcomes: [Outcome | undefined, Path][] = [
    [stage.failing, ['failing', 'go']],
    ...answers.map(({ outcome }, index): [Outcome | undefined, Path] => {
      return [outcome, ['ask', 'answers', index, 'outcome', 'go']];
    }),
  ];
  const ways: [string | undefined, Path][] = [
    [stage.next, ['next']],
    ...outcomes.map(([outcome, path]): [string | undefined, Path] => {
      return [outcome && 'go' in outcome ? outcome.go : undefined, path];
    }),
  ];
  return ways.flatMap(([to, path]): Finding[] => {
    const until = stages.findIndex(({ id }) => id === to);
    const passed = stages.slice(from + 1, Math.max(until, from + 1)).filter(({ startList }) => startList);
    if (passed.length === 0) return [];
    const list = passed.map(({ id }) => id).join(', ');
    const message = `From "${stage.id}" to "${to}" the start list is passed over: ${list}.`;
    const mend = `Lead to "${passed[0]!.id}" instead, or take this out.`;
    return [{ path: ['stages', from, ...path], message, mend }];
  });
}

/** Only said: a procedure that turns nothing and starts nothing may need none. */
function checkCautions(stages: readonly Stage[]): Finding[] {
  if (stages.some(({ cautions, adjust }) => cautions.length + (adjust?.cautions.length ?? 0) > 0)) return [];
  const message = 'No stage of this procedure shows a caution.';
  const mend = 'Put "cautions: [ … ]" back to each stage where hands, fingers or fuel are at risk.';
  return [{ level: 'warning', path: ['stages'], atKey: true, message, mend }];
}
