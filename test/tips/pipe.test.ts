// Holds the tips against the pipe contract, with the whole program running: on their schedule, without configuration, and over a restart.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Answer, startProgram } from '../kill/drive-program.ts';
import { copyEnglishContent } from '../kill/english-content.ts';

const root = join(import.meta.dirname, '../..');
let folder: string;
let content: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'gaugehand-tips-'));
  content = copyEnglishContent(folder);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

async function run(now: string, lines: object[]): Promise<Answer[]> {
  const command = [
    join(root, 'src/start.mjs'),
    'chat',
    '--pipe',
    '--data',
    join(folder, 'data'),
    '--content',
    content,
    '--now',
    now,
  ];
  const program = startProgram(command, { DATABASE_URL: '' });
  const answers: Answer[] = [];
  for (const line of lines) program.write(line);
  const ended = program.end();
  for (let answer = await program.next(); answer !== null; answer = await program.next())
    answers.push(answer);
  expect(program.errors()).toBe('');
  expect(await ended).toBe(0);
  return answers;
}

const tips = (answers: Answer[]) => answers.filter(({ to }) => to === 'tips');
const staff = { from: 's1', role: 'staff' };

test('they come out on their days, and not on others; the same input gives the same output', async () => {
  const days = Array.from({ length: 14 }, () => ({ advance: '1d' }));
  const answers = await run('2026-01-05T18:00:00Z', days);
  let passed = 0;
  const by = answers.flatMap(({ done, to }) => {
    if (done !== undefined) passed = done;
    return to === 'tips' ? [passed + 1] : [];
  });
  // From Monday evening on: day 1 is Tuesday, day 4 Friday, and so on.
  expect(by).toEqual([1, 4, 8, 11]);
  for (const tip of tips(answers)) {
    expect(tip).toMatchObject({ choices: [{ id: expect.stringMatching(/^throttle-sensor\/[a-z0-9-]+$/) }] });
    expect(tip.facts).toBeDefined();
  }
  rmSync(join(folder, 'data'), { recursive: true });
  expect(await run('2026-01-05T18:00:00Z', days)).toEqual(answers);
});

test('the start button of a tip opens its job', async () => {
  const [tip] = tips(await run('2026-01-05T18:00:00Z', [{ advance: '1d' }]));
  const answers = await run('2026-01-05T18:00:00Z', [{ from: 'o1', start: tip?.choices?.[0]?.id }]);
  const own = answers.filter(({ to }) => to === 'o1');
  expect(own.length).toBeGreaterThan(0);
  expect(own.at(-1)?.facts).toMatchObject({ procedure: 'throttle-sensor' });
});

test('a month without the program brings one tip, before the first line is read, and no second one', async () => {
  expect(tips(await run('2026-01-05T18:00:00Z', [{ advance: '2d' }]))).toHaveLength(1);
  const answers = await run('2026-02-09T12:00:00Z', [{ advance: '1m' }, { advance: '1h' }]);
  expect(answers.map(({ to, done }) => to ?? done)).toEqual(['tips', 1, 2]);
});

test('what the desk asks is answered before the line is done', async () => {
  const answers = await run('2026-01-05T12:00:00Z', [
    { ...staff, text: 'tips' },
    { ...staff, choose: 'tips:closed-stop' },
    { ...staff, choose: 'tips:post:closed-stop' },
    { ...staff, choose: 'tips:post:closed-stop' },
    { ...staff, text: '/tips withdraw closed-stop' },
  ]);
  expect(answers.map(({ to, done }) => to ?? done)).toEqual(
    [
      ['desk', 1],
      ['desk', 2],
      ['tips', 'desk', 3],
      ['desk', 4],
      ['tips', 'desk', 5],
    ].flat(),
  );
  const [posted, withdrawn] = tips(answers);
  expect(withdrawn).toMatchObject({ id: posted?.id, edit: 1, choices: [] });
});

test('words that were bettered in the content are corrected in the channel', async () => {
  const [posted] = tips(await run('2026-01-05T18:00:00Z', [{ advance: '1d' }]));
  const words = join(content, 'words/en/tips.ftl');
  const better = readFileSync(words, 'utf8').replace(
    /^tip-closed-stop =\n(?: .*\n)+/m,
    'tip-closed-stop = Better.\n',
  );
  writeFileSync(words, better);
  const requests = [
    { ...staff, text: 'tips closed-stop' },
    { ...staff, choose: 'tips:correct:closed-stop' },
  ];
  const changed = tips(await run('2026-01-07T12:00:00Z', requests));
  expect(changed).toEqual([expect.objectContaining({ id: posted?.id, edit: 1, text: 'Better.' })]);
});
