// One platform as the storm sees it: an owner and a member of the desk act on it, and what stands in their chats is read back.
import type { LoopbackDiscord } from './discord/server.ts';
import type { LoopbackTelegram } from './telegram/server.ts';
import type { Group } from './telegram/world.ts';
import { member, owner } from './tell-script.ts';

export interface Stage {
  name: string;
  say(text: string): void;
  press(choice: string): void;
  /** What the owner sees, part by part; a repeat that the platform cannot prevent is left out. */
  shown(): string[];
  violations: string[];
}

/** Whatever a member of the desk does is done in every case. */
export interface DeskStage {
  /** Whether each of so many cases offers this. */
  offers(choice: string, cases: number): boolean;
  /** Whether these words stand in every case. */
  reads(words: string): boolean;
  press(choice: string): void;
  say(text: string): void;
}

const ownerId = 11;
const memberId = 21;

export function telegramStage(telegram: LoopbackTelegram): Stage {
  const ann = telegram.person(ownerId, owner);
  const standing = () => telegram.world.standing(ownerId);
  return {
    name: 'telegram',
    violations: telegram.violations,
    say: (text) => void ann.say(text),
    press(choice) {
      const labelled = standing()
        .toReversed()
        .flatMap((sent) => (sent.markup?.inline_keyboard.flat() ?? []).map((button) => ({ sent, button })))
        .find(({ button }) => 'callback_data' in button && button.callback_data.endsWith(`:${choice}`));
      if (!labelled) throw new Error(`Telegram offers no ${choice}`);
      ann.press(labelled.button.text, labelled.sent);
    },
    shown() {
      const texts = standing().map(({ text }) => text);
      return texts.filter((text, index) => text !== texts[index - 1]).map(unmark);
    },
  };
}

export function telegramDesk(telegram: LoopbackTelegram, group: Group): DeskStage {
  const eve = telegram.person(memberId, member);
  group.members.add(memberId);
  const buttonIn = (topic: number, choice: string) =>
    telegram.world
      .standing(group.id)
      .toReversed()
      .filter((sent) => sent.topic === topic)
      .flatMap((sent) => (sent.markup?.inline_keyboard.flat() ?? []).map((button) => ({ sent, button })))
      .find(({ button }) => 'callback_data' in button && button.callback_data.endsWith(`:${choice}`));
  return {
    offers: (choice, cases) =>
      group.topics.size === cases && [...group.topics.keys()].every((topic) => buttonIn(topic, choice)),
    reads: (words) =>
      [...group.topics.keys()].every((topic) =>
        telegram.world
          .standing(group.id)
          .some((sent) => sent.topic === topic && unmark(sent.text).includes(words)),
      ),
    press(choice) {
      for (const topic of group.topics.keys()) {
        const found = buttonIn(topic, choice);
        if (!found) throw new Error(`the desk offers no ${choice}`);
        eve.press(found.button.text, found.sent);
      }
    },
    say(text) {
      for (const topic of group.topics.keys()) eve.say(text, { group, topic });
    },
  };
}

export function discordStage(discord: LoopbackDiscord): Stage {
  const ann = discord.person(String(ownerId), owner);
  return {
    name: 'discord',
    violations: discord.violations,
    say: (text) => void ann.say(text),
    press(choice) {
      for (const message of ann.heard().toReversed()) {
        const rows = (message.components ?? []) as unknown as {
          components: { custom_id: string; label: string }[];
        }[];
        const button = rows
          .flatMap(({ components }) => components)
          .find(({ custom_id }) => custom_id.endsWith(`:${choice}`));
        if (button) return void ann.press(button.label, message);
      }
      throw new Error(`Discord offers no ${choice}`);
    },
    shown: () => ann.heard().map(({ content }) => unmark(content.replace(/\\([\\*_~`|#>\-+.)[<])/g, '$1'))),
  };
}

/** The invisible mark that keeps text from becoming a mention. */
const unmark = (text: string) => text.replaceAll('\u2060', '');
