import { describe, expect, test } from 'vitest';
import { formatProblem } from '../../src/library/problem.ts';
import { type Change, loadChanged, soundContent } from './sound-content.ts';
import { faultAndWorkshop } from './spoilt/fault-and-workshop.ts';
import { form } from './spoilt/form.ts';
import { machine } from './spoilt/machine.ts';
import { procedure } from './spoilt/procedure.ts';
import { words } from './spoilt/words.ts';

test('sound content loads whole, without a word', async () => {
  const { newest, problems } = await loadChanged({});
  expect(problems).toEqual([]);
  const { content, words: texts } = newest!.edition;
  expect(content.machines['tern-200']?.name).toBe('Tern 200');
  expect(content.procedures.baseline?.stages).toHaveLength(6);
  expect(content.faults.faults.map((fault) => fault.id)).toEqual(['nothing-wrong', 'unknown']);
  expect(texts.de?.['said.ftl']).toBe(soundContent['words/de/said.ftl']);
});

describe.each([
  ['files', form],
  ['machines', machine],
  ['procedures', procedure],
  ['faults and the workshop', faultAndWorkshop],
  ['words', words],
])('mistakes in %s', (_, table) => {
  test.each(table)('$what: said with file, line, column and mend', async ({ changes, said }) => {
    const { newest, problems } = await loadChanged(changes);
    expect(problems.map(formatProblem)).toEqual(said);
    const refused = problems.some((problem) => problem.level === 'error');
    expect(newest === null).toBe(refused);
  });
});

const allMistakes = [...form, ...machine, ...procedure, ...faultAndWorkshop, ...words];

test('every mistake is named at a line and column that its file has, with a whole sentence to mend it', async () => {
  for (const { changes } of allMistakes) {
    const { problems } = await loadChanged(changes);
    expect(problems.length).toBeGreaterThan(0);
    for (const problem of problems) {
      const text = textOf(problem.file, changes);
      const line = text?.split('\n')[problem.line - 1];
      if (text !== undefined)
        expect(line?.length ?? -1, formatProblem(problem)).toBeGreaterThanOrEqual(problem.column - 1);
      expect(problem.message).toMatch(/^["“\p{Lu}].*\.$/u);
      expect(problem.mend).toMatch(/^\p{Lu}.*[.?]$/u);
    }
  }
});

function textOf(file: string, changes: Record<string, Change>): string | undefined {
  const change = changes[file];
  if (typeof change === 'string') return change;
  return Array.isArray(change) ? soundContent[file]?.replace(change[0], change[1]) : soundContent[file];
}

test('a file that is not UTF-8 is named', async () => {
  const { problems } = await loadChanged({ 'machines/tern-200.yaml': Buffer.from([0x6e, 0xe4, 0x0a]) });
  expect(problems.map(formatProblem)).toEqual([
    'machines/tern-200.yaml:1:1  This file is not written in UTF-8. Mend: Save it as UTF-8.',
  ]);
});

test('aliases that would swell without end are refused', async () => {
  const swelling = `a: &a [x, x, x, x, x, x, x, x, x]\n${['b', 'c', 'd', 'e'].map((name, at) => `${name}: &${name} [${Array(9).fill(`*${'abcd'[at]}`).join(', ')}]`).join('\n')}\n`;
  const { newest, problems } = await loadChanged({ 'machines/tern-200.yaml': swelling });
  expect(newest).toBeNull();
  expect(problems[0]?.mend).toBe('Write the entries out instead of repeating them by reference.');
});

test('the same files load to the same hash, and any change to a figure or a word to another', async () => {
  const hashes = await Promise.all(
    [
      {},
      {},
      { 'machines/tern-200.yaml': ['tolerance: 0.01', 'tolerance: 0.012'] },
      { 'words/en/said.ftl': ['caution-hot = Some', 'caution-hot = Other'] },
      { 'machines/tern-200.yaml': ['id: tern-200', '# A remark.\nid: tern-200'] },
    ].map(
      async (changes) => (await loadChanged(changes as Record<string, Change>)).newest?.edition.content.hash,
    ),
  );
  expect(hashes[0]).toMatch(/^[0-9a-f]{64}$/);
  expect(hashes[1]).toBe(hashes[0]);
  expect(new Set(hashes.slice(0, 4)).size).toBe(3);
  expect(hashes[4]).toBe(hashes[0]);
});
