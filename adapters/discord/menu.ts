// Registers the few slash commands on Discord, with their descriptions in each language, for the start.
import {
  ApplicationCommandOptionType,
  ApplicationIntegrationType,
  InteractionContextType,
  PermissionFlagsBits,
  type REST,
  type RESTPutAPIApplicationCommandsJSONBody,
  Routes,
} from 'discord.js';
import { menu, menuText } from '../wire/steering.ts';
import type { PlatformText, Surroundings, Words } from '../wire/surroundings.ts';

/** Discord's own names of the languages that it names otherwise than we do. */
const discordLocales: Record<string, string> = { es: 'es-ES', pt: 'pt-BR', sv: 'sv-SE', zh: 'zh-CN' };

export async function setMenu(rest: REST, application: string, { words, log }: Surroundings): Promise<void> {
  const serverOnly = [InteractionContextType.Guild];
  const everywhere = [InteractionContextType.Guild, InteractionContextType.BotDM];
  const integration_types = [ApplicationIntegrationType.GuildInstall];
  const body: RESTPutAPIApplicationCommandsJSONBody = [
    ...menu.map((name) => ({
      name,
      ...describe(menuText(name), words),
      contexts: everywhere,
      integration_types,
    })),
    {
      name: 'desk',
      ...describe('platform-menu-desk', words),
      contexts: serverOnly,
      integration_types,
      default_member_permissions: String(PermissionFlagsBits.ManageChannels),
      options: [
        {
          type: ApplicationCommandOptionType.String,
          name: 'code',
          ...describe('platform-menu-desk-code', words),
          required: true,
        },
      ],
    },
  ];
  try {
    await rest.put(Routes.applicationCommands(application), { body });
  } catch {
    log.warn({}, 'the slash commands could not be registered on Discord');
  }
}

function describe(text: PlatformText, words: Words) {
  const inLanguages = words.languages
    .filter((language) => language !== 'en')
    .map((language) => [discordLocales[language] ?? language, words.say(text, language).slice(0, 100)]);
  return {
    description: words.say(text, 'en').slice(0, 100),
    description_localizations: Object.fromEntries(inLanguages),
  };
}
