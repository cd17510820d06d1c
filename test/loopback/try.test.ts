// A first look at the bot on the stand-in platforms, as a newcomer takes it from the README.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '..', '..');

function tryOut(platform: string, lines: string[]): Promise<{ code: number | null; output: string }> {
  const child = spawn('npm', ['run', '--silent', 'try', '--', platform], { cwd: root });
  let output = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (text: string) => {
      output += text;
    });
  }
  child.stdin.end(lines.map((line) => `${line}\n`).join(''));
  return new Promise((resolve) => child.once('close', (code) => resolve({ code, output })));
}

test.concurrent.each(['telegram', 'discord'])(
  'on %s an owner begins, calls the desk, and is answered',
  {
    timeout: 120_000,
  },
  async (platform) => {
    const { code, output } = await tryOut(platform, ['#1', '#1', 'person', 'desk: #1', 'desk: Good day.']);
    expect(output).toContain('What is wrong with how it runs?');
    expect(output).toMatch(/^desk \| Case \d+-1, taken by Desk$/m);
    expect(output).toMatch(/^Desk \(workshop\): Good day\.$/m);
    expect(output).not.toContain('a rule of the platform was broken');
    expect(code).toBe(0);
  },
);

test('a platform that is not there is said to be none', async () => {
  const { code, output } = await tryOut('carrier-pigeon', []);
  expect(output).toContain('npm run try -- telegram');
  expect(code).toBe(64);
});
