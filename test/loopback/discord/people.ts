// People who use the loopback Discord in tests: they write, press, fill in forms, give commands and send pictures.
import { type APIMessage, ChannelType } from 'discord.js';
import type { InteractionKind, Interactions, Pending } from './interactions.ts';
import type { Channel, Person, Posted, World } from './world.ts';

export function makeActors(
  world: World,
  interactions: Interactions,
  dispatch: (event: string, data: unknown) => void,
) {
  function channel(type: ChannelType = ChannelType.GuildText, name = 'bench-talk'): Channel {
    return world.addChannel({ type, guild: world.guild, name });
  }

  function directChat(person: Person): Channel {
    const known = [...world.channels.values()].find(
      ({ type, members }) => type === ChannelType.DM && members.has(person.id),
    );
    return known ?? world.addChannel({ type: ChannelType.DM, members: new Set([person.id]) });
  }

  function person(id: string, name: string, locale = 'en-GB') {
    const one: Person = { id, name, locale, takesDirectMessages: true };
    world.people.set(id, one);
    const post = (where: Channel | undefined, message: Partial<Posted>, silent = false) => {
      const posted = world.post((where ?? directChat(one)).id, world.userOf(one), message);
      if (!silent) dispatch('MESSAGE_CREATE', world.asEvent(posted));
      return posted;
    };
    return {
      id,
      person: one,
      chat: () => directChat(one).id,
      say: (content: string, where?: Channel) => post(where, { content, mentions: mentionsIn(content) }),
      /** Says something that no event tells of, as while the bot is away. */
      sayUnheard: (content: string, where?: Channel) => post(where, { content }, true),
      sendPicture: (url: string, content = '') =>
        post(undefined, {
          content,
          attachments: [
            {
              id: world.nextId(),
              filename: 'a.png',
              content_type: 'image/png',
              size: 10,
              url,
              proxy_url: url,
            },
          ],
        } as Partial<Posted>),
      edit(message: Posted, content: string) {
        Object.assign(message, { content, edited_timestamp: new Date().toISOString() });
        dispatch('MESSAGE_UPDATE', world.asEvent(message));
      },
      /** Presses the button with this label; on the latest message that has it unless one is named. */
      press: (label: string, on?: Posted) => press(one, label, on),
      choose: (label: string) => press(one, label),
      command: (name: string, where?: Channel, options: { name: string; value: string }[] = []) => {
        const typed = options.map((option) => ({ ...option, type: 3 }));
        return interact(one, where ?? directChat(one), 'command', 2, {
          data: { id: '1', name, type: 1, ...(typed.length > 0 ? { options: typed } : {}) },
        });
      },
      fillIn(form: { custom_id: string }, value: string, where?: Channel) {
        const data = {
          custom_id: form.custom_id,
          components: [{ type: 1, components: [{ type: 4, custom_id: 'reading', value }] }],
        };
        return interact(one, where ?? directChat(one), 'form', 5, { data });
      },
      heard: () => world.standing(directChat(one).id).filter(({ author }) => author.id === world.bot.id),
    };
  }

  function press(one: Person, label: string, on?: Posted): Pending {
    const seen = on ?? world.messages.filter((message) => !message.deleted && find(message, label)).at(-1);
    const found = seen && find(seen, label);
    const channelOf = seen && world.channels.get(seen.channel_id);
    if (!seen || !found || !channelOf) throw new Error(`no control "${label}" to press`);
    return interact(one, channelOf, 'press', 3, {
      data: {
        component_type: found.type,
        custom_id: found.custom_id,
        ...(found.value ? { values: [found.value] } : {}),
      },
      message: world.asEvent(seen),
    });
  }

  function interact(one: Person, where: Channel, kind: InteractionKind, type: number, rest: object): Pending {
    const id = world.nextId();
    const pending: Pending = {
      id,
      token: `token-${id}`,
      kind,
      at: Date.now(),
      answered: null,
      said: null,
      form: null,
    };
    interactions.add(pending);
    const user = world.userOf(one);
    dispatch('INTERACTION_CREATE', {
      id,
      application_id: world.application,
      token: pending.token,
      version: 1,
      type,
      channel_id: where.id,
      channel: world.showChannel(where),
      locale: one.locale,
      entitlements: [],
      ...(where.guild
        ? { guild_id: where.guild, member: { user, nick: null, roles: [], permissions: '0' } }
        : { user }),
      ...rest,
    });
    return pending;
  }

  const mentionsIn = (content: string) => (content.includes(`<@${world.bot.id}>`) ? [world.bot] : []);

  return { person, channel };
}

interface ShownControl {
  type: number;
  custom_id: string;
  label?: string;
  options?: { label: string; value: string }[];
}

interface Control {
  type: number;
  custom_id: string;
  value?: string;
}

function find({ components }: APIMessage, label: string): Control | null {
  const rows = (components ?? []) as unknown as { components: ShownControl[] }[];
  for (const { type, custom_id, label: own, options } of rows.flatMap((row) => row.components)) {
    if (own === label) return { type, custom_id };
    const option = options?.find((one) => one.label === label);
    if (option) return { type, custom_id, value: option.value };
  }
  return null;
}
