// Plays one story of test/conversations: what the owner says or presses, and what the program is to answer; for the stories' test.
import { z } from 'zod';
import { brokenRules } from './message-rules.ts';
import type { Play, Said } from './play.ts';
import { latestAsk, type Shows, walk } from './ready-owner.ts';

const phrases = z.union([z.string(), z.array(z.string())]).transform((given) => [given].flat());
const words = z.string().transform((given) => given.split(/\s+/));

const stepSchema = z.strictObject({
  // What happens: one of these.
  owner: z.union([z.string(), z.number()]).transform(String).optional(),
  presses: z.string().optional(),
  /** A button of an earlier message. */
  'presses an old': z.string().optional(),
  opens: z.string().optional(),
  /** Time passes, as 20m, 3h, 3d. */
  later: z
    .string()
    .regex(/^\d+[mhd]$/)
    .optional(),
  /** Answers in good order until this stage asks, or to the end. */
  'goes on to': z.string().optional(),
  // What the program answers.
  says: phrases.optional(),
  'says first': z.string().optional(),
  'never says': phrases.optional(),
  /** As "reading signal-idle", "choice heard", "confirm" or "nothing". */
  asks: z.string().optional(),
  /** As "pass 0.712". */
  verdict: z.string().optional(),
  /** As "sensor-body clockwise 1 nudge", or its beginning. */
  move: z.string().optional(),
  /** Every action, in order; "nothing" for none. */
  does: words.optional(),
  stage: z.string().optional(),
  choices: words.optional(),
  /** How the set-up ended. */
  record: z.string().optional(),
  baseline: z.string().optional(),
  values: z.record(z.string(), z.number()).optional(),
  static: z.record(z.string(), z.number()).optional(),
  /** Why a person was called. */
  case: z.string().optional(),
});

export const storySchema = z.strictObject({
  title: z.string(),
  machine: z.enum(['fenmoor-450', 'fenmoor-250', 'any-single', 'bench-single']),
  /** What the meter shows, by stage or measure, wherever the story does not say it. */
  shows: z.record(z.string(), z.string()).default({}),
  story: z.array(stepSchema).min(2),
});

export type StoryFile = z.infer<typeof storySchema>;
type Step = StoryFile['story'][number];

const ms = { m: 60_000, h: 3_600_000, d: 86_400_000 } as const;
const who = 'rider';

/** Everything in which the program's answers differ from the story; none where it went as told. */
export function tellStory(story: StoryFile, play: Play, usual: Shows): string[] {
  const shows = { ...usual, ...story.shows };
  const wrong: string[] = [];
  for (const [index, step] of story.story.entries()) {
    const before = play.said.length;
    act(play, step, shows);
    const said = play.said.slice(before);
    for (const message of said) wrong.push(...brokenRules(message).map((rule) => `${rule}\n${message.text}`));
    const differences = compare(step, said, play);
    if (differences.length > 0) {
      const told = said.map(
        (message) =>
          `${message.to}: ${message.text}\n  ${JSON.stringify({ ...message.facts, lines: undefined })}`,
      );
      wrong.push(
        `step ${index + 1} ${JSON.stringify(step)}\n- ${differences.join('\n- ')}\n${told.join('\n')}`,
      );
      break;
    }
  }
  return wrong;
}

function act(play: Play, step: Step, shows: Shows): void {
  if (step.owner !== undefined) play.text(who, step.owner);
  else if (step.presses !== undefined) play.choose(who, step.presses);
  else if (step['presses an old'] !== undefined)
    play.choose(who, step['presses an old'], oldMessage(play, step['presses an old']));
  else if (step.opens !== undefined) {
    const [procedure = '', machine = ''] = step.opens.split('/');
    play.start(who, procedure, machine);
  } else if (step.later !== undefined) {
    play.advance(Number.parseInt(step.later, 10) * ms[step.later.at(-1) as keyof typeof ms]);
  } else if (step['goes on to'] !== undefined) {
    const stage = step['goes on to'];
    walk(
      play,
      who,
      shows,
      ({ facts }) =>
        (facts.stage === stage && facts.ask !== undefined && facts.ask.kind !== 'confirm') ||
        (facts.stage === stage && !facts.cautions && facts.ask !== undefined),
    );
  } else throw new Error('A step tells what happens.');
}

/** The latest message with this button, before the latest one with buttons. */
function oldMessage(play: Play, choice: string): string {
  const latest = latestAsk(play, who);
  const old = play.said.findLast(
    (said) => said.id !== latest?.id && said.choices.some(({ id }) => id === choice),
  );
  if (!old) throw new Error(`No earlier message offered "${choice}".`);
  return old.id;
}

function compare(step: Step, all: Said[], play: Play): string[] {
  const said = all.filter(({ to }) => to === who);
  const text = said.map((message) => message.text).join('\n');
  const asked = said.findLast(({ facts }) => facts.ask)?.facts;
  const differs: string[] = [];
  const expect = (what: string, wanted: string | undefined, got: string) => {
    if (wanted !== undefined && wanted !== got) differs.push(`${what}: wanted "${wanted}", got "${got}"`);
  };
  const last = <T>(pick: (message: Said) => T | undefined) =>
    said.map(pick).findLast((one) => one !== undefined);
  for (const phrase of step.says ?? []) if (!text.includes(phrase)) differs.push(`does not say "${phrase}"`);
  for (const phrase of step['never says'] ?? []) if (text.includes(phrase)) differs.push(`says "${phrase}"`);
  expect('first line', step['says first'], text.split('\n')[0] ?? '');
  expect('asks', step.asks, askIn(asked));
  const verdict = last(({ facts }) => facts.verdict);
  expect('verdict', step.verdict, verdict ? `${verdict.result} ${verdict.value ?? ''}`.trim() : 'none');
  const move = last(({ facts }) => facts.move);
  const moved = move ? `${move.part} ${move.direction} ${move.amount} ${move.unit}` : 'none';
  if (step.move !== undefined && !`${moved} `.startsWith(`${step.move} `))
    differs.push(`move: wanted "${step.move}", got "${moved}"`);
  expect('does', step.does?.join(' '), last(({ facts }) => facts.do)?.join(' ') ?? 'nothing');
  expect('stage', step.stage, last(({ facts }) => facts.stage) ?? 'none');
  expect(
    'choices',
    step.choices?.join(' '),
    last(({ choices }) => (choices.length > 0 ? choices.map(({ id }) => id) : undefined))?.join(' ') ??
      'none',
  );
  const record = last(({ facts }) => facts.record);
  expect('record', step.record, record?.result ?? 'none');
  expect('baseline', step.baseline, record?.baseline ?? 'none');
  for (const [measure, value] of Object.entries(step.values ?? {}))
    expect(measure, `${value}`, `${record?.values[measure]?.value}`);
  for (const [measure, value] of Object.entries(step.static ?? {}))
    expect(`static ${measure}`, `${value}`, `${record?.static?.[measure]?.value}`);
  const called = all.map(({ facts }) => facts.case).findLast((one) => one !== undefined);
  expect('case', step.case, called?.reason ?? 'none');
  if (step.record !== undefined)
    expect('record at the desk', step.record, play.records.at(-1)?.result ?? 'none');
  return differs;
}

function askIn(facts: Said['facts'] | undefined): string {
  const ask = facts?.ask;
  if (!ask) return 'nothing';
  const about = {
    confirm: '',
    choice: 'question',
    reading: 'measure',
    readings: 'measure',
    count: 'part',
    target: 'measure',
  }[ask.kind];
  return about === '' ? ask.kind : `${ask.kind} ${(ask as unknown as Record<string, string>)[about]}`;
}
