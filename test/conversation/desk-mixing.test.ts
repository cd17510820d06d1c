// Owners, staff, the clock and dying processes in any order: nobody reads what is not theirs, nothing is lost, and each chat keeps its order.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import type { Decide } from '../../src/store/store.ts';
import { House, press, text } from './desk-house.ts';
import { shippedDecide } from './play.ts';

const owners = ['o1', 'o2'];
const members = ['s1', 's2'];

const owner = fc.constantFrom(...owners);
const member = fc.constantFrom(...members);

const event = fc.oneof(
  { weight: 4, arbitrary: fc.record({ kind: fc.constant('words' as const), who: owner }) },
  {
    weight: 3,
    arbitrary: fc.record({
      kind: fc.constant('says' as const),
      who: owner,
      what: fc.constantFrom('person', 'stop', 'done', '0.620', 'fuel is leaking', 'help', '/take', 'person'),
    }),
  },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('opens' as const), who: owner }) },
  {
    weight: 4,
    arbitrary: fc.record({ kind: fc.constant('staff words' as const), who: member, of: owner }),
  },
  {
    weight: 5,
    arbitrary: fc.record({
      kind: fc.constant('staff acts' as const),
      who: member,
      of: owner,
      what: fc.constantFrom(
        'take',
        'take',
        'take-over',
        'give-back',
        'close',
        'ask:battery-voltage',
        'check',
        'help',
        'give-back',
      ),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      kind: fc.constant('staff types' as const),
      who: member,
      of: owner,
      what: fc.constantFrom('/pass', '/note', '/accept', '/jump baseline', '/record json', '/card', '/typo'),
    }),
  },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('at the desk' as const), who: member }) },
  {
    weight: 2,
    arbitrary: fc.record({ kind: fc.constant('clock' as const), minutes: fc.integer({ min: 1, max: 700 }) }),
  },
  {
    weight: 2,
    arbitrary: fc.record({ kind: fc.constant('sends' as const), some: fc.integer({ min: 1, max: 9 }) }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ kind: fc.constant('dies' as const), unmarked: fc.integer({ min: 0, max: 3 }) }),
  },
);

type Event = typeof event extends fc.Arbitrary<infer E> ? E : never;

/** What somebody typed, with a word that is nobody else's. */
interface Written {
  token: string;
  by: 'owner' | 'staff';
  /** The owner whose chat it belongs to; null at the desk as a whole or in a case that there is none of. */
  of: string | null;
  /** The state of the case when it was written, as the latest message about it said. */
  state: string | null;
  caseId: string | null;
  isPrivate: boolean;
}

class Mixing {
  readonly house: House;
  readonly written: Written[] = [];

  constructor(decide: Decide) {
    this.house = new House(decide);
  }

  async play(events: readonly Event[]): Promise<void> {
    await this.house.open();
    // It begins with a desk that has something to do.
    for (const who of owners) await this.take({ kind: 'says', who, what: 'person' });
    await this.take({ kind: 'staff acts', who: 's1', of: 'o1', what: 'take' });
    for (const one of events) await this.take(one);
    await this.house.open();
    await this.house.sendAll();
  }

  /** What the queue has told so far; a case is known once its first message went out. */
  private caseOf(of: string): { id: string; state: string } | null {
    const facts = this.house.sent.findLast(({ facts }) => facts.case?.owner === of)?.facts.case;
    return facts ? { id: facts.id, state: facts.state } : null;
  }

  private async write(by: Written['by'], of: string | null, isPrivate = false): Promise<Written> {
    // The state is only known for sure when nothing is left to send.
    await this.house.sendAll();
    const known = of === null ? null : this.caseOf(of);
    const token = `tok${String(this.written.length).padStart(4, '0')}x`;
    const one = { token, by, of, state: known?.state ?? null, caseId: known?.id ?? null, isPrivate };
    this.written.push(one);
    return one;
  }

  private async take(one: Event): Promise<void> {
    const { house } = this;
    switch (one.kind) {
      case 'words': {
        const { token } = await this.write('owner', one.who);
        return house.owner(one.who, text(`well ${token} @everyone <b>/take`));
      }
      case 'says':
        return house.owner(one.who, text(one.what));
      case 'opens':
        return house.owner(one.who, { kind: 'start', procedure: 'throttle-sensor', machine: 'fenmoor-450' });
      case 'staff words': {
        const { token, caseId } = await this.write('staff', one.of);
        return house.staff(one.who, caseId ?? '9-9', text(`so ${token}`));
      }
      case 'staff acts':
        await house.sendAll();
        return house.staff(one.who, this.caseOf(one.of)?.id ?? '9-9', press(one.what));
      case 'staff types': {
        const { token, caseId } = await this.write('staff', one.of, true);
        return house.staff(one.who, caseId ?? '9-9', text(`${one.what} ${token}`));
      }
      case 'at the desk': {
        const { token } = await this.write('staff', null, true);
        return house.staff(one.who, null, text(`find ${token}`));
      }
      case 'clock':
        house.now += one.minutes * 60_000;
        return house.due();
      case 'sends':
        return house.send(one.some);
      case 'dies':
        await house.send(3, one.unmarked);
        return house.open();
    }
  }
}

const said = (message: OutgoingMessage) => message.edit === 0;
const holding = (messages: readonly OutgoingMessage[], token: string) =>
  messages.filter((message) =>
    JSON.stringify([message.text, message.facts, message.choices]).includes(token),
  );

function check({ house, written }: Mixing): void {
  const { sent } = house;
  for (const { token, by, of, state, caseId, isPrivate } of written) {
    const found = holding(sent, token);
    const toOwners = found.filter(({ to }) => to.kind === 'owner');
    // Nobody but its owner and the desk.
    for (const { to } of toOwners) expect(to.kind === 'owner' && to.person).toBe(of);
    if (isPrivate) expect(toOwners).toEqual([]);
    // Never lost: to the desk while a case is open, to the owner once it is taken.
    const isOpen = state === 'waiting' || state === 'taken';
    const relays = found.filter(
      (one) =>
        said(one) &&
        one.facts.lines?.some(({ key }) => key === (by === 'owner' ? 'desk-owner-said' : 'staff-says')),
    );
    if (by === 'owner' && isOpen) {
      expect(relays.map(({ to }) => (to.kind === 'desk' ? to.caseId : null))).toEqual([caseId]);
    }
    if (by === 'staff' && !isPrivate) expect(relays).toHaveLength(state === 'taken' ? 1 : 0);
  }
  // In each chat in the order in which it was written.
  const chats = Map.groupBy(
    sent.filter(
      (one) =>
        said(one) && one.facts.lines?.some(({ key }) => key === 'staff-says' || key === 'desk-owner-said'),
    ),
    ({ to }) => JSON.stringify(to),
  );
  for (const messages of chats.values()) {
    const tokens = messages.flatMap(({ text }) => text.match(/tok\d{4}x/) ?? []);
    expect(tokens).toEqual(tokens.toSorted());
  }
  for (const { to } of sent.filter(({ to }) => to.kind === 'owner')) {
    expect(owners).toContain(to.kind === 'owner' && to.person);
  }
}

test('whatever happens in whatever order, words reach their owner and the desk, once, in order, and nobody else', async () => {
  const decide = await shippedDecide();
  const seen = new Map<string, number>();
  await fc.assert(
    fc.asyncProperty(fc.array(event, { minLength: 40, maxLength: 70, size: 'max' }), async (events) => {
      const mixing = new Mixing(decide);
      try {
        await mixing.play(events);
        check(mixing);
        for (const { by, state } of mixing.written)
          seen.set(`${by} ${state}`, (seen.get(`${by} ${state}`) ?? 0) + 1);
      } finally {
        await mixing.house.close();
      }
    }),
    { numRuns: 40 },
  );
  // Every state was written in often enough to tell.
  for (const by of ['owner', 'staff']) {
    for (const state of ['waiting', 'taken', 'returned', 'closed']) {
      expect(seen.get(`${by} ${state}`) ?? 0, `${by} ${state}`).toBeGreaterThan(2);
    }
  }
}, 120_000);

test('whoever takes first has it; the second is told by whom', async () => {
  const house = new House(await shippedDecide());
  try {
    await house.open();
    await house.owner('o1', text('person'));
    await Promise.all([house.staff('s1', '1-1', press('take')), house.staff('s2', '1-1', press('take'))]);
    await house.sendAll();
    const toOwner = house.sent.filter(({ to }) => to.kind === 'owner').at(-1);
    expect(toOwner?.text).toContain('s1 at the workshop is with you now');
    expect(house.sent.some(({ text, to }) => to.kind === 'desk' && text === 's1 has it.')).toBe(true);
  } finally {
    await house.close();
  }
});
