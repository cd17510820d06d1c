// What holds for every message to an owner, whatever it is about: one ask, agreeing numbers, short lines; for stories and properties.
import { numbersOutsideFacts } from '../words/numbers-outside-facts.ts';
import type { Said } from './play.ts';

/** A line longer than this is not read with a spanner in the hand (our own measure). */
const longestLine = 200;
/** What can be taken in while a hand is on the sensor: a figure, which way, how far, to where. */
const longestLoopReply = 13;
/** Telegram and Discord cut longer labels or break them (both platforms' own documentation allow more). */
const longestLabel = 40;

/** The rules that this message breaks, in words; none for a good one. */
export function brokenRules(message: Said): string[] {
  const { text, facts, choices } = message;
  // An empty line parts two others; where one stands alone, words are missing.
  const broken = /^\n|^$|\n$|\n\n\n/.test(text) ? ['words are missing'] : [];
  if (message.to === 'desk') return broken;
  const outside = numbersOutsideFacts(text, facts);
  if (outside.length > 0) broken.push(`numbers not in its facts: ${outside.join(', ')}`);
  if (/undefined|NaN|\[object|\{|\}/.test(text)) broken.push('a hole in its words');
  for (const row of text.split('\n')) {
    if (row.length > longestLine) broken.push(`a line of ${row.length} characters: ${row}`);
  }
  const rows = text.split('\n').filter((row) => row !== '');
  if (new Set(rows).size < rows.length) broken.push('the same line twice');
  const asked = (text.match(/\?(\s|$)/g) ?? []).length + (text.match(/^Send (all|the)\b/gm) ?? []).length;
  if (asked > 1) broken.push(`asks ${asked} things`);
  broken.push(...verdictRules(message), ...choiceRules(message));
  const inLoop = facts.move !== undefined && facts.verdict?.result === 'adjust' && facts.do === undefined;
  const words = text.split(/\s+/).length;
  if (inLoop && !facts.cautions && /^\S+\. Too (high|low)\./.test(text) && words > longestLoopReply) {
    broken.push(`${words} words while a hand is on the part`);
  }
  if (choices.some(({ label }) => label.length > longestLabel)) broken.push('a label too long for a button');
  return broken;
}

/** The contract: a numeric reading is `pass` exactly when low ≤ value ≤ high as printed, unless unclear or implausible. */
function verdictRules({ facts: { verdict } }: Said): string[] {
  if (!verdict || verdict.value == null || verdict.spread !== undefined) return [];
  if (verdict.result !== 'pass' && verdict.result !== 'adjust') return [];
  const inside =
    (verdict.low ?? Number.NEGATIVE_INFINITY) <= verdict.value &&
    verdict.value <= (verdict.high ?? Number.POSITIVE_INFINITY);
  return inside === (verdict.result === 'pass')
    ? []
    : [`verdict ${verdict.result} for ${verdict.value} within ${verdict.low} to ${verdict.high}`];
}

function choiceRules({ facts: { ask }, choices }: Said): string[] {
  const broken = choices
    .filter(({ id }) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))
    .map(({ id }) => `"${id}" is no id`);
  if (ask?.kind === 'confirm' && choices[0]?.id !== 'done')
    broken.push('a confirm whose first choice is not done');
  if (ask?.kind === 'choice' && choices.length < 2) broken.push('a question without choices');
  if ((ask?.kind === 'count' || ask?.kind === 'target') && !choices.some(({ id }) => id === 'skip'))
    broken.push('no way past a figure that the owner does not have');
  return broken;
}
