// The rights of a member in a channel, by the order that Discord publishes under "Permissions".
import { type APIOverwrite, type APIRole, OverwriteType } from 'discord.js';
import { expect, test } from 'vitest';
import { rightsIn } from '../../../adapters/discord/examine.ts';

const see = 1n << 10n;
const send = 1n << 11n;
const administrator = 1n << 3n;

const role = (id: string, rights: bigint) => ({ id, permissions: String(rights) }) as APIRole;
const exception = (id: string, type: OverwriteType, allow: bigint, deny: bigint): APIOverwrite => ({
  id,
  type,
  allow: String(allow),
  deny: String(deny),
});

const everyone = role('500', see | send);
const guild = (...roles: APIRole[]) => ({ id: '500', owner_id: '1', roles: [everyone, ...roles] });

test.each([
  { name: 'everyone’s rights are had', roles: [], overwrites: [], rights: see | send },
  {
    name: 'a channel may deny everyone',
    roles: [],
    overwrites: [exception('500', OverwriteType.Role, 0n, send)],
    rights: see,
  },
  {
    name: 'a role’s exception goes before everyone’s',
    roles: [role('600', 0n)],
    overwrites: [
      exception('500', OverwriteType.Role, 0n, see),
      exception('600', OverwriteType.Role, see, 0n),
    ],
    rights: see | send,
  },
  {
    name: 'the member’s own exception goes before a role’s',
    roles: [role('600', 0n)],
    overwrites: [
      exception('900', OverwriteType.Member, 0n, send),
      exception('600', OverwriteType.Role, send, 0n),
    ],
    rights: see,
  },
])('$name', ({ roles, overwrites, rights }) => {
  const mine = roles.map(({ id }) => id);
  expect(rightsIn(guild(...roles), '900', mine, overwrites)).toBe(rights);
});

test('an administrator and the owner may do everything', () => {
  expect(rightsIn(guild(role('600', administrator)), '900', ['600'], []) & send).toBe(send);
  expect(rightsIn({ ...guild(), owner_id: '900' }, '900', [], []) & administrator).toBe(administrator);
});
