// Puts the few commands into Telegram's menu, in each language, for the start.
import type { Api } from 'grammy';
import type { LanguageCode } from 'grammy/types';
import { menu, menuText } from '../wire/steering.ts';
import type { Surroundings } from '../wire/surroundings.ts';

/** The menu is a convenience: that it cannot be set holds nothing up. */
export async function setMenu(api: Api, { words, log }: Surroundings): Promise<void> {
  const commandsIn = (language: string) =>
    menu.map((command) => ({ command, description: words.say(menuText(command), language).slice(0, 256) }));
  const scope = { type: 'all_private_chats' as const };
  try {
    await api.setMyCommands(commandsIn('en'), { scope });
    for (const language of words.languages) {
      if (language === 'en' || !/^[a-z]{2}$/.test(language)) continue;
      await api.setMyCommands(commandsIn(language), { scope, language_code: language as LanguageCode });
    }
  } catch {
    log.warn({}, 'the command menu could not be set on Telegram');
  }
}
