// Plays one story of test/conversations/desk: owners and members of the desk by name, and what each of them is to read; for the stories' test.
import { z } from 'zod';
import { brokenRules } from './message-rules.ts';
import type { Play, Said } from './play.ts';
import { shippedFigures, walk } from './ready-owner.ts';

const phrases = z.union([z.string(), z.array(z.string())]).transform((given) => [given].flat());

/** One thing that happens, as `Ann: hello`, `Sam presses: take`, `Ann goes on to: baseline`, `later: 30m`; and who reads what of it. */
const stepSchema = z
  .looseObject({
    /** "nothing" where they must read nothing. */
    case: z.enum(['waiting', 'taken', 'returned', 'closed']).optional(),
    reason: z.string().optional(),
    verdict: z.string().optional(),
    record: z.string().optional(),
    /** The card was changed where it stands. */
    card: phrases.optional(),
    thread: phrases.optional(),
    desk: phrases.optional(),
    nowhere: phrases.optional(),
    buttons: z.string().optional(),
  })
  .transform((step) => ({ ...step }) as Record<string, unknown> & typeof step);

const storySchema = z.strictObject({
  title: z.string(),
  starts: z.string().default('2026-01-05T09:00:00Z'),
  owners: z.array(z.string()),
  staff: z.array(z.string()),
  story: z.array(stepSchema).min(2),
});

const ms = { m: 60_000, h: 3_600_000, d: 86_400_000 } as const;

export function tellDeskStory(given: unknown, play: Play): string[] {
  const { story, owners, staff, starts } = storySchema.parse(given);
  play.now = Date.parse(starts);
  const wrong: string[] = [];
  for (const [index, step] of story.entries()) {
    const before = play.said.length;
    act(play, step, owners, staff);
    const said = play.said.slice(before);
    const differs = [...said.flatMap((one) => brokenRules(one)), ...compare(step, said, owners)];
    if (differs.length === 0) continue;
    const told = said.map(({ to, text, facts, edit, ...rest }) =>
      JSON.stringify({
        to: rest.case ?? to,
        edit,
        text,
        case: facts.case,
        choices: rest.choices.map(({ id }) => id),
      }),
    );
    wrong.push(`step ${index + 1} ${JSON.stringify(step)}\n- ${differs.join('\n- ')}\n${told.join('\n')}`);
    break;
  }
  return wrong;
}

/** The latest case of all: a story has one in hand at a time, or names it, as `Sam in 2-1`. */
function latestCase(play: Play): string | null {
  return play.said.findLast((one) => one.case !== undefined)?.case ?? null;
}

function act(play: Play, step: Record<string, unknown>, owners: string[], staff: string[]): void {
  const people = [...owners, ...staff];
  const [what = '', given] =
    Object.entries(step).find(([key]) => key === 'later' || people.includes(key.split(' ')[0] ?? '')) ?? [];
  const typed = String(given);
  if (what === 'later') {
    play.advance(Number.parseInt(typed, 10) * ms[typed.at(-1) as keyof typeof ms]);
    return;
  }
  const [who = '', ...how] = what.split(' ');
  const manner = how.join(' ');
  if (owners.includes(who)) return actAsOwner(play, who, manner, typed);
  if (!staff.includes(who)) throw new Error(`Nobody is called ${who}.`);
  const seat = {
    role: 'staff' as const,
    name: who,
    caseId: manner.includes('at the desk') ? null : (/in (\S+)/.exec(manner)?.[1] ?? latestCase(play)),
  };
  if (manner.includes('presses')) play.choose(who, typed, null, seat);
  else if (manner.includes('sends a picture')) {
    play.text(who, '', { ...seat, body: { kind: 'picture', picture: 'desk.jpg', caption: typed } });
  } else play.text(who, typed, seat);
}

function actAsOwner(play: Play, who: string, manner: string, typed: string): void {
  switch (manner) {
    case '':
      play.text(who, typed, { name: who });
      return;
    case 'presses':
      play.choose(who, typed);
      return;
    case 'opens': {
      const [procedure = '', machine = ''] = typed.split('/');
      play.start(who, procedure, machine);
      return;
    }
    case 'sends a picture':
      play.text(who, '', { body: { kind: 'picture', picture: 'plug.jpg', caption: typed } });
      return;
    case 'goes on to':
      walk(
        play,
        who,
        shippedFigures,
        ({ facts }) => facts.stage === typed && !facts.cautions && facts.ask !== undefined,
      );
      return;
    default:
      throw new Error(`${who} cannot "${manner}".`);
  }
}

function compare(step: z.infer<typeof stepSchema>, said: Said[], owners: string[]): string[] {
  const differs: string[] = [];
  const holds = (where: string, wanted: string[] | undefined, messages: Said[]) => {
    const text = messages.map((one) => one.text).join('\n');
    for (const phrase of wanted ?? []) {
      if (phrase === 'nothing' ? messages.length > 0 : !text.includes(phrase)) {
        differs.push(`${where}: wanted "${phrase}", got "${text}"`);
      }
    }
  };
  for (const owner of owners) {
    const wanted = step[`to ${owner}`];
    if (wanted !== undefined)
      holds(
        `to ${owner}`,
        phrases.parse(wanted),
        said.filter(({ to }) => to === owner),
      );
  }
  const thread = said.filter((one) => one.case !== undefined);
  const isCard = (one: Said) => one.edit !== undefined || one.text.startsWith('Case ');
  holds('card', step.card, thread.filter(isCard));
  holds(
    'thread',
    step.thread,
    thread.filter((one) => !isCard(one)),
  );
  holds(
    'desk',
    step.desk,
    said.filter((one) => one.to === 'desk' && one.case === undefined),
  );
  for (const phrase of step.nowhere ?? []) {
    if (said.some((one) => one.text.includes(phrase))) differs.push(`somebody reads "${phrase}"`);
  }
  const latest = <T>(pick: (one: Said) => T | undefined) =>
    said.map(pick).findLast((one) => one !== undefined);
  const same = (what: string, wanted: string | undefined, got: string | undefined) => {
    if (wanted !== undefined && wanted !== (got ?? 'none'))
      differs.push(`${what}: wanted "${wanted}", got "${got}"`);
  };
  same(
    'case',
    step.case,
    latest(({ facts }) => facts.case?.state),
  );
  same(
    'reason',
    step.reason,
    latest(({ facts }) => facts.case?.reason),
  );
  same(
    'verdict',
    step.verdict,
    latest(({ facts }) => facts.verdict && `${facts.verdict.result} ${facts.verdict.value}`),
  );
  same(
    'record',
    step.record,
    latest(({ facts }) => facts.record?.result),
  );
  same(
    'buttons',
    step.buttons,
    latest(({ choices, case: thread }) =>
      thread !== undefined && choices.length > 0 ? choices.map(({ id }) => id).join(' ') : undefined,
    ),
  );
  return differs;
}
