// Puts the store, the inbox, the outbox and the chat platforms together and lets them run until told to stop, or until one cannot go on.
import { createDiscord } from '../../adapters/discord/bot.ts';
import { createTelegram } from '../../adapters/telegram/bot.ts';
import type { Fatal, Log, PlatformAdapter, Surroundings, Words } from '../../adapters/wire/surroundings.ts';
import type { Adapter } from '../chat/adapter.ts';
import type { Destination } from '../chat/outgoing-message.ts';
import { startTimekeeper } from '../inbox/keep-time.ts';
import { makeInbox, type Shelf } from '../inbox/receive.ts';
import { makePacing } from '../outbox/pace.ts';
import { makeOutbox } from '../outbox/run-outbox.ts';
import type { Paint } from '../outbox/send-row.ts';
import type { Decide, Store } from '../store/store.ts';
import { answerHealth, isHealthy } from './answer-health.ts';
import { codeOfFatal, exitCodes } from './exit-codes.ts';
import { platformRates } from './platform-rates.ts';
import type { Settings } from './read-environment.ts';
import { passOnToTips, wakeTips } from './wake-tips.ts';

export interface BotParts {
  settings: Settings;
  store: Store;
  decide: Decide;
  /** Brings content that a set-up is pinned to. */
  library?: Shelf;
  /** Whether it decides for the tips too. */
  hasTips?: boolean;
  paint: Paint | null;
  words: Words;
  log: Log;
  /** Aborted once the program is to stop. */
  stopping: AbortSignal;
  /** For the operator: why it ends, in a sentence. */
  say: (sentence: string) => void;
}

const sendsAtOnce = 32;
/** A supervisor kills what has not ended after ten seconds. */
const stopWithinMs = 8_000;

/** Resolves to the exit code. The store stays open: whoever opened it closes it. */
export async function runBot(parts: BotParts): Promise<number> {
  const { settings, store, decide, library, paint, log, stopping } = parts;
  const ended = Promise.withResolvers<number>();
  stopping.addEventListener('abort', () => ended.resolve(exitCodes.stopped));
  const fatal = (kind: Fatal, why: string) => {
    log.error({ kind }, why);
    parts.say(why);
    ended.resolve(codeOfFatal[kind]);
  };
  const platforms = createPlatforms(parts, fatal);
  const health =
    settings.healthPort === null ? null : await answerHealth(settings.healthPort, () => isHealthy(platforms));
  const { receive, takeDue, takeRefusal } = makeInbox(store, decide, library);
  const outbox = makeOutbox({
    store,
    clock: Date.now,
    route: (to) => routeOf(to, platforms, settings),
    paint,
    pacing: makePacing(platformRates),
    refused: takeRefusal,
    report: (trouble, row) => log.warn({ row: row?.row, attempts: row?.attempts }, trouble),
    atOnce: sendsAtOnce,
  });
  const waking = { calendar: store.calendar, clock: Date.now, takeDue };
  if (parts.hasTips) await wakeTips(waking);
  const take = parts.hasTips ? passOnToTips(receive, waking) : receive;
  outbox.start();
  const timekeeper = startTimekeeper({
    calendar: store.calendar,
    clock: Date.now,
    takeDue,
    report: (trouble) => log.warn({}, trouble),
  });
  // A platform that is away keeps trying; the others do not wait for it.
  for (const platform of platforms) {
    platform.start(take).catch((error) => {
      log.error({ platform: platform.name, trouble: nameOf(error) }, 'a platform could not be started');
      ended.resolve(exitCodes.failed);
    });
  }
  const code = stopping.aborted ? exitCodes.stopped : await ended.promise;
  log.info({ code }, 'stopping');
  await Promise.race([stopAll(), patience()]);
  return code;

  async function stopAll(): Promise<void> {
    health?.close();
    await Promise.all(platforms.map((platform) => platform.stop()));
    await timekeeper.stop();
    await outbox.stop();
  }
}

const patience = () => new Promise<void>((resolve) => setTimeout(resolve, stopWithinMs).unref());

function createPlatforms(
  { settings, store, words, log }: BotParts,
  onFatal: (kind: Fatal, why: string) => void,
): PlatformAdapter[] {
  const platforms: PlatformAdapter[] = [];
  const around = (name: string): Surroundings => ({
    links: store.links,
    words,
    log,
    deskCode: settings.deskCode,
    onFatal,
    isHealthy: () => isHealthy(platforms),
    sentParts: (messageId) => store.outbox.sentParts(messageId, name),
    fetchForeign: async (platform, picture) =>
      (await platforms.find((one) => one.name === platform)?.fetchPicture(picture)) ?? null,
  });
  if (settings.telegram) platforms.push(createTelegram(settings.telegram, around('telegram')));
  if (settings.discord) platforms.push(createDiscord(settings.discord, around('discord')));
  return platforms;
}

/** The desk is where it was claimed; until then its messages wait with every platform that could have it. */
function routeOf(to: Destination, platforms: PlatformAdapter[], settings: Settings): Adapter[] {
  switch (to.kind) {
    case 'owner':
      return platforms.filter(({ name }) => name === to.platform);
    case 'desk': {
      const claimed = platforms.filter((platform) => platform.hasDesk());
      return claimed.length > 0 ? claimed : platforms;
    }
    case 'tips': {
      const channels = tipsChannels(settings);
      return platforms.filter(({ name }) => channels[name]);
    }
  }
}

/** By the name of the platform; one that has no channel takes no tips. */
function tipsChannels({ telegram, discord }: Settings): Record<string, string | null | undefined> {
  return { telegram: telegram?.tipsChannel, discord: discord?.tipsChannel };
}

const nameOf = (error: unknown) => (error instanceof Error ? error.name : typeof error);
