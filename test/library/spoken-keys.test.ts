import { expect, test } from 'vitest';
import { findCalls, findSpoken, readSources } from '../../src/library/spoken-keys.ts';

test.each<[string, [string, string[] | null][]]>([
  ["say(turn, { lines: [line('held')] })", [['held', []]]],
  ["line('ask-readings', { count: ask.count })", [['ask-readings', ['count']]]],
  ["line('a-value', { value, low: figure(low, 3), high })", [['a-value', ['value', 'low', 'high']]]],
  [`line(\`caution-\${caution}\`)`, [['caution-*', []]]],
  [`line(\`do-\${action.replace(':', '-')}\`, { ...common })`, [['do-*', null]]],
  [
    "line(open ? 'called' : 'called-closed')",
    [
      ['called', []],
      ['called-closed', []],
    ],
  ],
  [
    "line(measure === 'idle-speed' ? 'ask-speed' : 'ask-number')",
    [
      ['ask-speed', []],
      ['ask-number', []],
    ],
  ],
  [
    `line('wire-plain', { colour: line(\`colour-\${base}\`) })`,
    [
      ['wire-plain', ['colour']],
      ['colour-*', []],
    ],
  ],
  ["line('greeting', names)", [['greeting', null]]],
  ["export function label(key: string) { return 'no-key'; }", []],
  ["outline('not-this')", []],
  ["line('')", []],
])('in %j, the program says %j', (source, found) => {
  expect(findCalls(source).map(({ key, given }) => [key, given])).toEqual(found);
});

test('a key counts as said where it is written out or put together anywhere', () => {
  const { needs, says } = findSpoken([
    {
      file: 'src/a.ts',
      text: `ask(turn, \`unclear-\${heard.why}\`);\nask(turn, 'leave-it');\n  line('held');`,
    },
  ]);
  expect(['unclear-two-meanings', 'leave-it', 'held'].every(says)).toBe(true);
  expect(['unclear', 'called', 'two-meanings'].some(says)).toBe(false);
  expect(needs).toEqual([
    { key: 'held', file: 'src/a.ts', line: 3, column: 8, who: 'what the program says here', given: [] },
  ]);
});

test('the sources of the program say something, each at its place', async () => {
  const { needs } = findSpoken(await readSources());
  expect(needs.length).toBeGreaterThan(20);
  for (const need of needs) expect(need.file).toMatch(/^(src|adapters)\/.*\.ts$/);
});
