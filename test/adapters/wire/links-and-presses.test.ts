// What stands in start links and buttons comes back as it went in, and fits where the platforms put it.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decodePress, encodePress } from '../../../adapters/wire/press.ts';
import { decodeStart, encodeStart, readStartChoice } from '../../../adapters/wire/start-link.ts';
import { idSchema } from '../../../src/procedure/identifier.ts';

const ids = fc.stringMatching(/^[a-z0-9]{1,9}(-[a-z0-9]{1,9}){0,2}$/);

test('a procedure and a machine come back out of a start link', () => {
  fc.assert(
    fc.property(ids, ids, (procedure, machine) => {
      expect(decodeStart(encodeStart({ procedure, machine }))).toEqual({ procedure, machine });
    }),
  );
});

test('the longest ids that content may have fit a start link, in its alphabet', () => {
  // Telegram, "Deep linking": up to 64 characters, A-Z a-z 0-9 _ and -.
  const longest = idSchema.parse('a'.repeat(30));
  expect(encodeStart({ procedure: longest, machine: longest })).toMatch(/^[A-Za-z0-9_-]{1,64}$/);
});

test.each([
  { payload: 'throttle-sensor', procedure: 'throttle-sensor', machine: null },
  { payload: 'throttle-sensor_any-single', procedure: 'throttle-sensor', machine: 'any-single' },
  { payload: '', procedure: null, machine: null },
  { payload: 'hello world', procedure: null, machine: null },
  { payload: 'a_b_c', procedure: null, machine: null },
])('the payload "$payload" opens $procedure and $machine', ({ payload, procedure, machine }) => {
  expect(decodeStart(payload)).toEqual({ procedure, machine });
});

test('the choice of a start button names them with a slash', () => {
  expect(readStartChoice('throttle-sensor/any-single')).toEqual({
    procedure: 'throttle-sensor',
    machine: 'any-single',
  });
  expect(readStartChoice('')).toEqual({ procedure: null, machine: null });
});

test('a choice comes back out of a button with the message that offered it', () => {
  fc.assert(
    fc.property(ids, ids, (messageId, choice) => {
      const carried = encodePress(messageId, choice, 64);
      expect(carried === null ? null : decodePress(carried)).toEqual(
        carried === null ? null : { choice, of: messageId },
      );
    }),
  );
});

test('a button that would not fit is left out, by bytes and not by characters', () => {
  expect(encodePress('c1-1', 'é'.repeat(30), 64)).toBeNull();
  expect(encodePress('c1-1', 'e'.repeat(59), 64)).not.toBeNull();
});

test('a button that somebody made up is a choice of no message', () => {
  expect(decodePress('anything')).toEqual({ choice: 'anything', of: null });
  expect(decodePress(':yes')).toEqual({ choice: 'yes', of: null });
});
