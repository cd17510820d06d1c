// What the few commands in a platform's menu mean, for both platforms: words of the conversation, as if typed.
import type { Body } from '../../src/chat/incoming-message.ts';
import type { PlatformText } from './surroundings.ts';

/** In the order in which the menu shows them. */
export const menu = ['begin', 'where', 'help', 'person'] as const;

export type MenuCommand = (typeof menu)[number];

export const menuText = (command: MenuCommand): PlatformText => `platform-menu-${command}`;

export const isMenuCommand = (name: string): name is MenuCommand =>
  (menu as readonly string[]).includes(name);

/** English is the second lexicon of every chat, so its words steer whatever the owner's language. */
export function bodyOfCommand(command: MenuCommand): Body {
  switch (command) {
    case 'begin':
      return { kind: 'start', procedure: null, machine: null };
    case 'where':
      return { kind: 'text', text: 'repeat' };
    case 'help':
      return { kind: 'text', text: 'help' };
    case 'person':
      return { kind: 'text', text: 'human' };
  }
}
