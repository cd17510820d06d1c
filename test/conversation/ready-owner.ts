// An owner whose machine is in order: gives the healthy answer to whatever is asked, from figures laid out beforehand; for walking to a stage.
import type { Play, Said } from './play.ts';

/** What the meter shows: by stage, else by measure. */
export type Shows = Readonly<Record<string, string>>;

/** The bench machine as a careful hand leaves it (common practice, no source). */
export const benchFigures: Shows = {
  'battery-voltage': '12.60',
  'supply-voltage': '5.00',
  'signal-idle': '0.500',
  'as-found-idle': '0.500',
  'signal-closed-stop': '0.400',
  'signal-snapped': '0.501',
  'signal-fast-idle': '0.652',
  'signal-released': '0.500',
  'signal-wide-open': '4.528',
  'signal-sweep': '0.50 1.30 2.20 3.40 4.53 3.35 2.25 1.28 0.50',
  'idle-speed': '2200',
  'warm-idle': '0.550',
  'warm-release': '0.550',
  'warm-snap': '0.551',
  'count:fast-idle': '14',
  'count:idle-stop': '2',
};

/** The shipped adjustable machine, likewise; its figures are invented. */
export const shippedFigures: Shows = {
  ...benchFigures,
  'signal-idle': '0.710',
  'as-found-idle': '0.710',
  'signal-closed-stop': '0.620',
  'signal-snapped': '0.710',
  'signal-fast-idle': '0.860',
  'signal-released': '0.710',
  'signal-wide-open': '4.30',
  'signal-sweep': '0.71 1.48 2.45 3.49 4.30 3.25 2.46 1.55 0.71',
  'idle-speed': '1750',
  'warm-idle': '0.740',
  'warm-release': '0.741',
  'warm-snap': '0.740',
};

/** One healthy answer to the latest message that asks; null where nothing is asked. */
export function answer(play: Play, who: string, asked: Said, shows: Shows): Said[] | null {
  const { ask, stage = '' } = asked.facts;
  switch (ask?.kind) {
    case 'confirm':
      return play.choose(who, 'done');
    case 'choice':
      return play.choose(who, shows[ask.question] ?? asked.choices[0]!.id);
    case 'count':
      return play.text(who, shows[`count:${ask.part}`] ?? '2');
    case 'target':
    case 'reading':
    case 'readings': {
      const figure =
        (ask.kind === 'target' ? shows[`manual:${ask.measure}`] : undefined) ??
        shows[stage] ??
        shows[ask.measure];
      if (figure === undefined) throw new Error(`Nothing is laid out for ${ask.measure} at ${stage}.`);
      return play.text(who, figure);
    }
    case undefined:
      return null;
  }
}

export const latestAsk = (play: Play, who: string): Said | undefined =>
  play.said.findLast((said) => said.to === who && said.facts.ask !== undefined);

/** Goes on in good order until `there` is asked for (or the record comes); says what was said on the way. */
export function walk(play: Play, who: string, shows: Shows, there: (said: Said) => boolean): Said[] {
  const on: Said[] = [];
  for (let messages = 0; messages < 150; messages += 1) {
    const latest = play.said.findLast((said) => said.to === who);
    if (latest && (there(latest) || latest.facts.record)) return on;
    const asked = latestAsk(play, who);
    const said = asked ? answer(play, who, asked, shows) : play.text(who, 'hello');
    if (!said) return on;
    on.push(...said);
  }
  throw new Error(`Never got there: ${on.at(-1)?.text}`);
}
