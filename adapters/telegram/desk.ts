// The desk's group on Telegram: who claimed it, who belongs to it, and which topic or reply thread is which case's.
import type { Api } from 'grammy';
import { cleanName } from '../wire/clean-text.ts';
import type { Links, Surroundings } from '../wire/surroundings.ts';
import type { DeskPlace } from './decode-update.ts';
import { readTrouble } from './trouble.ts';

/** Where a case is: in a topic of its own, or under its first message where the group has no topics. */
export interface CasePlace {
  group: string;
  topic: number | null;
  root: number | null;
}

export interface ClaimedGroup {
  group: string;
  hasTopics: boolean;
}

const groupLink = 'telegram:desk';
const caseLink = (caseId: string) => `telegram:case:${caseId}`;
const topicLink = (group: string, topic: number) => `telegram:topic:${group}:${topic}`;
const replyLink = (group: string, messageId: number) => `telegram:reply:${group}:${messageId}`;

export async function readDeskGroup(links: Links): Promise<ClaimedGroup | null> {
  const known = await links.get(groupLink);
  return known === undefined ? null : JSON.parse(known);
}

export type Desk = Awaited<ReturnType<typeof openDesk>>;

export async function openDesk(api: Api, { links, words, log }: Surroundings) {
  let claimed = await readDeskGroup(links);

  async function claim(group: string, hasTopics: boolean): Promise<void> {
    claimed = { group, hasTopics };
    await links.set(groupLink, JSON.stringify(claimed));
    log.info({ ...claimed }, 'a Telegram group is the desk now');
  }

  async function migrate(from: string, to: string): Promise<void> {
    if (from === claimed?.group) await claim(to, claimed.hasTopics);
  }

  /** Topics can be switched on and off at any time; every message from the group tells. */
  async function noteTopics({ group, hasTopics }: DeskPlace): Promise<void> {
    if (claimed?.group === group && claimed.hasTopics !== hasTopics) await claim(group, hasTopics);
  }

  async function caseAt(place: DeskPlace): Promise<string | null> {
    if (place.topic !== null) {
      const caseId = await links.get(topicLink(place.group, place.topic));
      if (caseId) return caseId;
    }
    if (place.repliesTo === null) return null;
    return (await links.get(replyLink(place.group, place.repliesTo))) ?? null;
  }

  /** Asked anew at each use: who has left the group has no say. */
  async function isMember(person: string): Promise<boolean> {
    if (claimed === null) return false;
    try {
      const member = await api.getChatMember(claimed.group, Number(person));
      return member.status === 'restricted' ? member.is_member : !['left', 'kicked'].includes(member.status);
    } catch (error) {
      const trouble = readTrouble(error);
      if (trouble.kind === 'refused') return false;
      throw error;
    }
  }

  /** The case's place in the present group, made where there is none; null while there is no group. */
  async function placeOf(caseId: string): Promise<CasePlace | null> {
    if (claimed === null) return null;
    const known = await links.get(caseLink(caseId));
    const place = known === undefined ? null : (JSON.parse(known) as CasePlace);
    return place?.group === claimed.group ? place : await makePlace(caseId, claimed);
  }

  async function makePlace(caseId: string, { group, hasTopics }: ClaimedGroup): Promise<CasePlace> {
    const topic = hasTopics ? await createTopic(caseId, group) : null;
    const place = { group, topic, root: null };
    if (topic !== null) await links.set(topicLink(group, topic), caseId);
    await links.set(caseLink(caseId), JSON.stringify(place));
    return place;
  }

  async function createTopic(caseId: string, group: string): Promise<number | null> {
    const name = cleanName(words.say('platform-case-name', words.workshop, { case: caseId })) ?? caseId;
    try {
      return (await api.createForumTopic(group, name)).message_thread_id;
    } catch (error) {
      const trouble = readTrouble(error);
      if (trouble.kind !== 'no-topics' && trouble.kind !== 'refused') throw error;
      log.warn(
        { group },
        'no topic can be made in the desk group: give the bot the right to manage topics; replies are used instead',
      );
      return null;
    }
  }

  /** A topic that somebody deleted: the case gets a new one with its next message. */
  async function forgetPlace(caseId: string): Promise<void> {
    await links.delete(caseLink(caseId));
    log.warn({ caseId }, 'the topic of a case is gone: it is made anew');
  }

  /** Without topics, answers find their case by what they reply to. */
  async function noteSent(caseId: string, place: CasePlace, messageId: number): Promise<void> {
    if (place.topic !== null) return;
    await links.set(replyLink(place.group, messageId), caseId);
    if (place.root === null) {
      await links.set(caseLink(caseId), JSON.stringify({ ...place, root: messageId }));
    }
  }

  return {
    group: () => claimed?.group ?? null,
    claim,
    migrate,
    noteTopics,
    caseAt,
    isMember,
    placeOf,
    forgetPlace,
    noteSent,
  };
}
