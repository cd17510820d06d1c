// Holds the desk's part in the tips: looked at before anything is done, posted by hand, corrected and withdrawn where they stand.
import { describe, expect, test } from 'vitest';
import { day, hour, openChannel, shipped, tip } from './channel.ts';

/** Monday noon: no tip's time, and not quiet. */
const monday = '2026-01-05T12:00:00Z';
const open = (own: Partial<Parameters<typeof openChannel>[0]> = {}) =>
  openChannel({ now: monday, tips: [tip({ id: 'one' }), tip({ id: 'two' })], ...own });
const buttons = (channel: ReturnType<typeof openChannel>) => channel.desk.at(-1)?.choices.map(({ id }) => id);

test('the list says of each tip when it was posted, and from when on it may come', () => {
  const channel = open();
  channel.advanceTo('2026-01-07T12:00:00Z');
  expect(channel.ask('')).toBe(
    [
      'one: posted Tue 6 Jan, 17:30, comes not before Tue 13 Jan, 17:30.',
      'two: not posted yet, comes not before Fri 9 Jan, 17:30.',
      '"tips NAME" shows one.',
    ].join('\n'),
  );
  expect(buttons(channel)).toEqual(['tips:one', 'tips:two']);
  expect(channel.desk.at(-1)?.to).toEqual({ kind: 'desk', caseId: null });
});

test('a tip that nobody knows is not repeated as it was typed', () => {
  expect(open().ask('@everyone')).toBe('I know no tip "everyone".\nThere are: one, two.');
  expect(open().ask('constructor')).toContain('I know no tip "constructor".');
  expect(open({ tips: [] }).ask('')).toBe('There are no tips.');
});

describe('posting by hand', () => {
  test('shows the tip first, and posts it once it is confirmed', () => {
    const channel = open();
    const shown = channel.ask('post:one');
    expect(shown).toContain('This is one.');
    expect(channel.posted).toEqual([]);
    expect(buttons(channel)).toEqual(['tips:post:one']);
    expect(channel.ask('post:one')).toBe('Ines sends "one" to the channel.');
    expect(channel.posted.map(({ message }) => message.text)).toEqual(['This is one.']);
  });

  test('once: a second press shows it again, and that it rests', () => {
    const channel = open();
    channel.ask('one');
    channel.ask('post one');
    expect(channel.ask('post one')).toContain('It rests until Mon 12 Jan, 12:00.');
    expect(channel.ask('post one')).toContain('It rests until');
    expect(channel.posted).toHaveLength(1);
  });

  test('what was looked at an hour ago, or reads otherwise by now, is looked at again', () => {
    const late = open();
    late.ask('one');
    late.advance(hour + 1);
    expect(late.ask('post one')).toContain('To post it now');
    expect(late.posted).toEqual([]);
    const changed = open();
    changed.ask('one');
    changed.change({ words: { one: 'It reads otherwise.' } });
    expect(changed.ask('post one')).toContain('It reads otherwise.');
    expect(changed.posted).toEqual([]);
    const other = open();
    other.ask('one');
    expect(other.ask('post two')).toContain('This is two.');
    expect(other.posted).toEqual([]);
  });

  test('not in its quiet hours, and not without a channel', () => {
    const night = open({ now: '2026-01-05T22:00:00Z' });
    expect(night.ask('post one')).toContain('Quiet hours: nothing is posted before Tue 6 Jan, 08:00.');
    expect(buttons(night)).toEqual([]);
    expect(night.ask('post one')).toContain('Quiet hours');
    expect(night.posted).toEqual([]);
    const nowhere = open({ hasChannel: false });
    nowhere.ask('post one');
    expect(nowhere.ask('post one')).toContain('No channel for tips is set.');
    expect(nowhere.posted).toEqual([]);
  });

  test('the schedule keeps its distance from it, and lets it rest', () => {
    const channel = open({ now: '2026-01-06T16:30:00Z' });
    channel.ask('two');
    channel.ask('post two');
    channel.advanceTo('2026-01-08T12:00:00Z');
    const at = channel.posted.map((one) => `${new Date(one.at).toISOString().slice(0, 16)} ${one.tip}`);
    // 17:30 is too near, 20:30 is far enough.
    expect(at).toEqual(['2026-01-06T16:30 two', '2026-01-06T20:30 one']);
  });
});

describe('withdrawing', () => {
  test('changes all that stands of it, takes the button away, and keeps it from coming again', () => {
    const channel = open();
    channel.advance(15 * day);
    const ids = channel.posted.filter((one) => one.tip === 'one').map(({ message }) => message.id);
    expect(ids).toHaveLength(2);
    channel.ask('one');
    expect(channel.edits).toEqual([]);
    expect(channel.ask('withdraw one')).toBe('Ines withdraws "one". It does not come again by itself.');
    expect(channel.edits.map(({ id, edit, text, choices, to }) => ({ id, edit, text, choices, to }))).toEqual(
      ids.map((id) => ({
        id,
        edit: 1,
        text: "This tip is withdrawn. Please don't go by it.",
        choices: [],
        to: { kind: 'tips' },
      })),
    );
    const before = channel.posted.length;
    channel.advance(60 * day);
    expect(new Set(channel.posted.slice(before).map((one) => one.tip))).toEqual(new Set(['two']));
    expect(channel.ask('')).toContain('one: posted Tue 13 Jan, 17:30, withdrawn.');
  });

  test('leaves alone what is older than the workshop keeps anything: where that stands is not known any more', () => {
    const channel = open();
    channel.advance(2 * day);
    channel.change({ hasChannel: false });
    channel.advance(shipped.workshop.keepDays * day);
    expect(channel.ask('one')).not.toContain('To withdraw it');
    channel.ask('withdraw one');
    expect(channel.edits).toEqual([]);
  });

  test('posted again by hand, it is back, and what was withdrawn stays so', () => {
    const channel = open();
    channel.advance(2 * day);
    channel.ask('one');
    channel.ask('withdraw one');
    channel.advanceTo('2026-02-02T12:00:00Z');
    channel.ask('one');
    channel.ask('post one');
    channel.change({ words: { one: 'Better words.' } });
    channel.ask('one');
    channel.ask('correct one');
    expect(channel.edits.map(({ id, text }) => `${id} ${text}`)).toEqual([
      expect.stringContaining('withdrawn'),
      expect.stringContaining('Better words.'),
    ]);
    expect(channel.edits[0]?.id).not.toBe(channel.edits[1]?.id);
  });

  test('also where the content has it no longer', () => {
    const channel = open();
    channel.advance(2 * day);
    channel.change({ tips: [tip({ id: 'two' })] });
    expect(channel.ask('')).toContain('one: posted Tue 6 Jan, 17:30, no longer in the content.');
    expect(channel.ask('one')).toContain('This is one.');
    channel.ask('withdraw one');
    expect(channel.edits).toHaveLength(1);
    expect(channel.ask('one')).toContain('I know no tip "one".');
  });
});

describe('correcting', () => {
  test('is offered once the words are others, and changes what stands, with its button', () => {
    const channel = open();
    channel.advance(2 * day);
    expect(channel.ask('one')).not.toContain('To correct it');
    expect(channel.ask('correct one')).not.toContain('corrects');
    channel.change({ words: { one: 'Better words.' } });
    expect(channel.ask('one')).toContain('The channel reads otherwise.');
    expect(channel.ask('correct one')).toBe('Ines corrects "one" in the channel.');
    const [posted] = channel.posted;
    const choices = [{ id: 'throttle-sensor/any-single', label: 'Start' }];
    expect(channel.edits).toEqual([
      expect.objectContaining({ id: posted?.message.id, edit: 1, text: 'Better words.', choices }),
    ]);
    expect(channel.ask('one')).not.toContain('To correct it');
  });

  test('also where it leads to another job', () => {
    const channel = open();
    channel.advance(2 * day);
    channel.change({ tips: [tip({ id: 'one', machine: 'fenmoor-450' }), tip({ id: 'two' })] });
    channel.ask('one');
    channel.ask('correct one');
    expect(channel.edits[0]?.choices.map(({ id }) => id)).toEqual(['throttle-sensor/fenmoor-450']);
  });
});
