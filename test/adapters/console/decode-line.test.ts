// Each kind of line of the pipe contract, and what is no line of it.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeLine } from '../../../adapters/console/decode-line.ts';

const message = (line: object) => {
  const decoded = decodeLine(JSON.stringify(line));
  if (decoded.kind !== 'message') throw new Error(JSON.stringify(decoded));
  return decoded.message;
};

describe('a line of the pipe contract', () => {
  test.each([
    [
      { from: 'o1', text: '0.348 V' },
      { kind: 'text', text: '0.348 V' },
    ],
    [
      { from: 'o1', choose: 'done' },
      { kind: 'choice', choice: 'done', of: null },
    ],
    [
      { from: 'o1', choose: 'done', of: 'c1-4' },
      { kind: 'choice', choice: 'done', of: 'c1-4' },
    ],
    [
      { from: 'o1', picture: '/tmp/a b.jpg', text: 'the plug' },
      { kind: 'picture', picture: '/tmp/a b.jpg', caption: 'the plug' },
    ],
    [
      { from: 'o1', picture: 'a.jpg' },
      { kind: 'picture', picture: 'a.jpg', caption: '' },
    ],
    [
      { from: 'o1', start: 'throttle-sensor/any-single' },
      { kind: 'start', procedure: 'throttle-sensor', machine: 'any-single' },
    ],
    [
      { from: 'o1', start: 'throttle-sensor' },
      { kind: 'start', procedure: 'throttle-sensor', machine: null },
    ],
    [
      { from: 'o1', start: '' },
      { kind: 'start', procedure: null, machine: null },
    ],
    [
      { from: 'o1', text: '' },
      { kind: 'text', text: '' },
    ],
    [
      { from: 'o1', text: 'half \ud800 and \u0000 nothing' },
      { kind: 'text', text: 'half \ufffd and  nothing' },
    ],
  ])('%j says %j', (line, body) => {
    expect(message(line)).toMatchObject({
      platform: 'console',
      person: 'o1',
      chat: 'o1',
      role: 'owner',
      caseId: null,
      body,
    });
  });

  test('staff speak at the desk or inside a case, with an id and a language where they are given', () => {
    expect(message({ from: 's1', role: 'staff', text: 'x' })).toMatchObject({
      role: 'staff',
      caseId: null,
      locale: null,
    });
    expect(message({ from: 's1', role: 'staff', case: 'C', text: 'x', id: '7', locale: 'de' })).toMatchObject(
      {
        caseId: 'C',
        messageId: '7',
        locale: 'de',
      },
    );
  });

  test('without an id every line is new; with one it is that message', () => {
    const ids = [1, 2].map(() => message({ from: 'o1', text: 'x' }).messageId);
    expect(new Set(ids).size).toBe(2);
    expect(message({ from: 'o1', text: 'x', id: 'a' }).messageId).toBe(
      message({ from: 'o1', text: 'x', id: 'a' }).messageId,
    );
  });

  test.each([
    ['30s', 30_000],
    ['5m', 300_000],
    ['36h', 129_600_000],
    ['2d', 172_800_000],
    ['0.5h', 1_800_000],
  ])('"advance":"%s" moves the clock by %d ms', (advance, ms) => {
    expect(decodeLine(JSON.stringify({ advance }))).toMatchObject({ kind: 'advance', ms });
  });

  test.each(['', ' ', '\r', '\t '])('a blank line (%j) asks for nothing', (line) => {
    expect(decodeLine(line)).toEqual({ kind: 'blank' });
  });

  test.each([
    ['not JSON', /not JSON/],
    ['[]', /one JSON object/],
    ['"text"', /one JSON object/],
    ['null', /one JSON object/],
    ['{}', /"from"/],
    ['{"from":"","text":"x"}', /"from"/],
    ['{"from":7,"text":"x"}', /"from" is a string/],
    ['{"from":"o1"}', /"text", "choose"/],
    ['{"from":"o1","text":7}', /"text" is a string/],
    ['{"from":"o1","role":"boss","text":"x"}', /"role"/],
    ['{"from":"o1","case":"C","text":"x"}', /"case" is for staff/],
    ['{"from":"o1","choose":"a","text":"x"}', /one of/],
    ['{"from":"o1","choose":"a","start":"x"}', /one of/],
    ['{"from":"o1","text":"x","of":"m"}', /"of" belongs/],
    ['{"from":"o1","text":"x","id":{}}', /"id"/],
    ['{"advance":"36"}', /"advance"/],
    ['{"advance":"-3h"}', /"advance"/],
    ['{"advance":"99999999999d"}', /"advance"/],
    ['{"advance":5}', /"advance" is a string/],
  ])('%s is told what is wrong with it', (line, why) => {
    const decoded = decodeLine(line);
    expect(decoded.kind).toBe('wrong');
    expect(decoded.kind === 'wrong' && decoded.why).toMatch(why);
  });

  test('whatever is written, it is decoded or told what is wrong, and its text is fit for every database', () => {
    const anything = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.json(),
      fc.jsonValue().map((from) => JSON.stringify({ from, text: from })),
    );
    fc.assert(
      fc.property(anything, (line) => {
        const decoded = decodeLine(line);
        if (decoded.kind !== 'message') return;
        const texts = Object.values(decoded.message.body).filter((value) => typeof value === 'string');
        for (const text of [...texts, decoded.message.person]) {
          expect(text.isWellFormed() && !text.includes('\0')).toBe(true);
        }
      }),
    );
  });
});
