// The few commands of our own that are whole sentences, in plain English words on every platform; for owners.

const commands = {
  erase: ['erase me', '/erase', 'erase', 'forget me'],
} as const;

export function isCommandWord(text: string, command: keyof typeof commands): boolean {
  const said = text.trim().toLowerCase().replaceAll(/\s+/gu, ' ');
  return (commands[command] as readonly string[]).includes(said);
}
