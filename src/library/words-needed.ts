// Lists the words that content needs, and what each is filled in with, for `check`.
import { type FaultContent, wordsOfFaults } from '../procedure/fault.ts';
import type { Machine } from '../procedure/machine.ts';
import type { Procedure, Stage } from '../procedure/procedure.ts';
import type { Tip } from '../procedure/tip.ts';
import { actions, redFlags } from '../procedure/vocabulary.ts';
import type { Path } from './read-yaml.ts';

export interface ContentNeed {
  key: string;
  path: Path;
  who: string;
  given?: readonly string[];
}

/** What every stage and action can name of the machine at hand, and what one with a part can besides. */
export const ofMachine = ['machine', 'wake', 'connector', 'supply', 'signal', 'ground', 'minutes', 'seconds'];
export const ofPart = ['part', 'where', 'tool'];

export function wordsOfProcedure(procedure: Procedure): ContentNeed[] {
  return procedure.stages.flatMap((stage, index) => wordsOfStage(procedure.id, stage, ['stages', index]));
}

function wordsOfStage(procedure: string, stage: Stage, path: Path): ContentNeed[] {
  const { ask } = stage;
  const who = `stage "${stage.id}"`;
  const part = (ask && 'count' in ask && !('readings' in ask)) || stage.shows || stage.adjust;
  const own = {
    key: `${procedure}-${stage.id}`,
    path: [...path, 'id'],
    who,
    given: [...ofMachine, ...(part ? ofPart : [])],
  };
  const answers = ask && 'question' in ask ? ask.answers : [];
  return [
    own,
    ...(ask
      ? [
          {
            key: `${procedure}-${stage.id}-name`,
            path: [...path, 'id'],
            who: `the name of ${who}`,
            given: [],
          },
        ]
      : []),
    ...(stage.section === undefined
      ? []
      : [
          {
            key: `${procedure}-section-${stage.section}`,
            path: [...path, 'section'],
            who: `section "${stage.section}"`,
            given: [],
          },
        ]),
    ...wordsOfActions(stage.do, [...path, 'do']),
    ...wordsOfActions([stage.adjust?.free ?? [], stage.adjust?.fix ?? []].flat(), [...path, 'adjust']),
    ...answers.flatMap((answer, index): ContentNeed[] => {
      const at = [...path, 'ask', 'answers', index];
      const key = `${procedure}-${(ask as { question: string }).question}-${answer.id}`;
      const whose = `answer "${answer.id}" of ${who}`;
      return [
        { key, path: [...at, 'id'], who: whose, given: [] },
        ...wordsOfOutcome(answer.outcome, [...at, 'outcome'], whose),
      ];
    }),
    ...wordsOfOutcome(stage.failing, [...path, 'failing'], who),
    ...wordsOfCautions(stage.cautions, [...path, 'cautions']),
    ...wordsOfCautions(stage.adjust?.cautions ?? [], [...path, 'adjust', 'cautions']),
  ];
}

function wordsOfOutcome(outcome: Stage['failing'], path: Path, who: string): ContentNeed[] {
  if (outcome && 'call' in outcome) {
    const key = `reason-${outcome.call}`;
    return [`${key}-owner`, key].map((each) => ({
      key: each,
      path: [...path, 'call'],
      who: `the reason "${outcome.call}" of ${who}`,
    }));
  }
  if (outcome && 'checkOnly' in outcome) {
    const key = `check-only-${outcome.checkOnly}`;
    return [{ key, path: [...path, 'checkOnly'], who: `the reason "${outcome.checkOnly}" of ${who}` }];
  }
  return [];
}

function wordsOfCautions(cautions: readonly string[], path: Path): ContentNeed[] {
  return cautions.flatMap((id, index) =>
    [`caution-${id}`, `caution-${id}-name`].map((key) => ({
      key,
      path: [...path, index],
      who: `caution "${id}"`,
      given: [],
    })),
  );
}

function wordsOfActions(doing: readonly string[], path: Path): ContentNeed[] {
  return doing.map((action) => {
    const given = action.includes(':') ? [...ofMachine, ...ofPart] : ofMachine;
    return { key: `do-${action.replace(':', '-')}`, path, who: `the action "${action}"`, given };
  });
}

export function wordsOfMachine(machine: Machine): ContentNeed[] {
  const wires = machine.connector.pins.flatMap((pin, index) =>
    pin.wire.map((colour): ContentNeed => {
      return {
        key: `colour-${colour}`,
        path: ['connector', 'pins', index, 'wire'],
        who: `the colour ${colour}`,
        given: [],
      };
    }),
  );
  const parts = Object.keys(machine.parts).map((part): ContentNeed => {
    return { key: `part-${part}`, path: ['parts', part], who: `the part "${part}"`, given: [] };
  });
  return [...wires, ...parts];
}

export function wordsOfTip({ id }: Tip): ContentNeed[] {
  return [{ key: `tip-${id}`, path: ['id'], who: `the tip "${id}"`, given: ['machine', 'procedure'] }];
}

/** The words of one file of faults, each with the entry that needs it; `questions` are those of all files. */
export function wordsOfFaultFile(file: FaultContent, questions: FaultContent['questions']): ContentNeed[] {
  const none: FaultContent = { faults: [], questions, checks: [], pairs: [] };
  const always = new Set(wordsOfFaults(none));
  return (['faults', 'checks'] as const).flatMap((list) =>
    file[list].flatMap((entry, index) => {
      const keys = wordsOfFaults({ ...none, [list]: [entry] }).filter((key) => !always.has(key));
      const done = 'do' in entry ? [...entry.do, ...entry.back].filter(isAction) : [];
      return [
        ...keys.map((key): ContentNeed => ({ key, path: [list, index, 'id'], who: `"${entry.id}"` })),
        ...wordsOfActions(done, [list, index, 'do']),
      ];
    }),
  );
}

/** What no content can leave out: the first line after each red flag, and its reason at the desk. */
export const wordsAlwaysNeeded: readonly string[] = [
  ...redFlags.flatMap((flag) => [`flag-${flag}-first`, `reason-flag-${flag}`]),
  ...wordsOfFaults({ faults: [], questions: [], checks: [], pairs: [] }),
];

function isAction(action: string): boolean {
  return (actions as readonly string[]).includes(action);
}
