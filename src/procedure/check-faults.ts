// What is wrong with fault content beyond its shape: unknown names, shares that do not add up, checks without a way back; for `check`.
import {
  type Check,
  type Fault,
  type FaultContent,
  nothingWrong,
  type Pair,
  priorSets,
  unknownCause,
} from './fault.ts';

export interface FaultProblem {
  /** The fault, check, question or pair that it is about; empty where it is about all of them. */
  fault: string;
  /** Where in the joined content, as `faults.leads-swapped.shows.0.on`; lists of named things are walked by their ids. */
  path: string;
  message: string;
  /** What would be right. */
  mend: string;
}

export interface Vocabulary {
  measures: readonly string[];
  actions: readonly string[];
}

/** Each action that leaves something off its place, and what puts it back. */
const wayBack: Record<string, readonly string[]> = {
  sleep: ['wake'],
  unprobe: ['probe'],
  'probe-supply': ['probe'],
  'probe-ground': ['probe'],
  'probe-battery': ['probe'],
  'loosen:sensor-screws': ['tighten:sensor-screws'],
  'engage:fast-idle': ['release:fast-idle'],
  open: ['close'],
  'start-engine': ['stop-engine'],
};

const tolerance = 1e-6;

export function checkFaults(content: FaultContent, vocabulary: Vocabulary): FaultProblem[] {
  return [
    ...checkNames(content),
    ...priorSets.flatMap((set) => checkPriors(content, set)),
    ...content.faults.flatMap((fault) => checkFault(content, fault, vocabulary)),
    ...content.questions.flatMap((question) =>
      checkSum(question.id, `questions.${question.id}.usual`, Object.values(question.usual)),
    ),
    ...content.checks.flatMap((check) => checkOne(content, check, vocabulary)),
    ...content.pairs.flatMap((pair, index) => checkPair(content, pair, index)),
  ];
}

function checkNames(content: FaultContent): FaultProblem[] {
  const problems: FaultProblem[] = [];
  for (const list of ['faults', 'questions', 'checks'] as const) {
    const seen = new Set<string>();
    for (const { id } of content[list]) {
      if (seen.has(id)) {
        problems.push({
          fault: id,
          path: `${list}.${id}`,
          message: `"${id}" stands here twice`,
          mend: 'Keep one of the two, or give one another id.',
        });
      }
      seen.add(id);
    }
  }
  for (const id of [nothingWrong, unknownCause]) {
    if (!content.faults.some((fault) => fault.id === id)) {
      problems.push({
        fault: id,
        path: 'faults',
        message: `the fault "${id}" is missing`,
        mend: `Add "${id}": every diagnosis needs it.`,
      });
    }
  }
  return problems;
}

function checkPriors(content: FaultContent, set: (typeof priorSets)[number]): FaultProblem[] {
  const sum = [...content.faults, ...content.pairs].reduce((total, one) => total + one.prior[set], 0);
  const over = Number((sum - 1000).toFixed(6));
  if (over === 0) return [];
  return [
    {
      fault: '',
      path: `faults.*.prior.${set}`,
      message: `the ${set} priors of all faults and pairs add up to ${Number(sum.toFixed(6))} of 1000`,
      mend:
        over > 0
          ? `Take ${over} away, from "${unknownCause}" if from none else.`
          : `Add ${-over}, to "${unknownCause}" if to none else.`,
    },
  ];
}

function checkFault(content: FaultContent, fault: Fault, { measures, actions }: Vocabulary): FaultProblem[] {
  const path = `faults.${fault.id}`;
  const problems: FaultProblem[] = [];
  for (const [index, shown] of fault.shows.entries()) {
    for (const [place, on] of shown.on.entries()) {
      problems.push(...checkKnown(fault.id, `${path}.shows.${index}.on.${place}`, 'measure', on, measures));
    }
    const shares = shown.as.map((predictor) => predictor.share);
    problems.push(...checkSum(fault.id, `${path}.shows.${index}.as`, shares));
  }
  for (const [index, change] of fault.changes.entries()) {
    for (const [place, after] of change.after.entries()) {
      problems.push(
        ...checkKnown(fault.id, `${path}.changes.${index}.after.${place}`, 'action', after, actions),
      );
    }
    problems.push(
      ...checkSum(fault.id, `${path}.changes.${index}`, [change.falls, change.same, change.rises]),
    );
  }
  if (fault.sweep !== undefined) {
    problems.push(...checkSum(fault.id, `${path}.sweep`, Object.values(fault.sweep)));
  }
  for (const [question, shares] of Object.entries(fault.answers)) {
    const where = `${path}.answers.${question}`;
    const asked = content.questions.find((one) => one.id === question);
    const questions = content.questions.map((one) => one.id);
    problems.push(...checkKnown(fault.id, where, 'question', question, questions));
    problems.push(...checkSum(fault.id, where, Object.values(shares)));
    for (const answer of Object.keys(asked === undefined ? {} : shares)) {
      const answers = Object.keys(asked?.usual ?? {});
      problems.push(...checkKnown(fault.id, `${where}.${answer}`, 'answer', answer, answers));
    }
  }
  return problems;
}

function checkOne(content: FaultContent, check: Check, { measures, actions }: Vocabulary): FaultProblem[] {
  const path = `checks.${check.id}`;
  const faults = content.faults.map((fault) => fault.id);
  const problems = [
    ...check.do.flatMap((action, index) =>
      checkKnown(check.id, `${path}.do.${index}`, 'action', action, actions),
    ),
    ...check.back.flatMap((action, index) =>
      checkKnown(check.id, `${path}.back.${index}`, 'action', action, actions),
    ),
    ...Object.keys(check.mends).flatMap((fault) =>
      checkKnown(check.id, `${path}.mends.${fault}`, 'fault', fault, faults),
    ),
    ...checkWayBack(check),
  ];
  if (check.ask.kind === 'reading') {
    problems.push(...checkKnown(check.id, `${path}.ask.measure`, 'measure', check.ask.measure, measures));
  }
  if (check.ask.kind === 'choice') {
    const questions = content.questions.map((one) => one.id);
    problems.push(...checkKnown(check.id, `${path}.ask.question`, 'question', check.ask.question, questions));
  }
  if (check.ask.kind === 'retake' && Object.keys(check.mends).length === 0) {
    problems.push({
      fault: check.id,
      path: `${path}.mends`,
      message: 'the reading is taken again, but nothing is mended by this check',
      mend: 'Say under "mends" which fault is gone afterwards, and how often.',
    });
  }
  return problems;
}

/** What a check took off its place is put back by its later actions or by its `back`. */
function checkWayBack(check: Check): FaultProblem[] {
  const steps = [...check.do, ...check.back];
  return check.do.flatMap((action, index) => {
    const back = wayBack[action];
    if (back === undefined || back.some((one) => steps.indexOf(one, index + 1) !== -1)) return [];
    return [
      {
        fault: check.id,
        path: `checks.${check.id}.do.${index}`,
        message: `there is no way back from "${action}"`,
        mend: `Add "${back[0]}" under "back".`,
      },
    ];
  });
}

function checkPair(content: FaultContent, pair: Pair, index: number): FaultProblem[] {
  const faults = content.faults.map((fault) => fault.id);
  const path = `pairs.${index}.of`;
  const name = pair.of.join('+');
  const [first, second] = pair.of;
  return [
    ...pair.of.flatMap((id, place) => checkKnown(name, `${path}.${place}`, 'fault', id, faults)),
    ...(first === second
      ? [{ fault: name, path, message: 'a fault is paired with itself', mend: 'Name two faults.' }]
      : []),
  ];
}

function checkKnown(
  fault: string,
  path: string,
  what: string,
  name: string,
  known: readonly string[],
): FaultProblem[] {
  const fits = name.endsWith('*')
    ? known.some((one) => one.startsWith(name.slice(0, -1)))
    : known.includes(name);
  if (fits) return [];
  return [
    {
      fault,
      path,
      message: `there is no ${what} "${name}"`,
      mend: `Use one of: ${known.join(', ')}.`,
    },
  ];
}

function checkSum(fault: string, path: string, shares: readonly number[]): FaultProblem[] {
  const sum = shares.reduce((total, one) => total + one, 0);
  if (Math.abs(sum - 1) < tolerance) return [];
  return [
    {
      fault,
      path,
      message: `the shares add up to ${Number(sum.toFixed(6))}, not 1`,
      mend: `Change them by ${Number((1 - sum).toFixed(6))} in all.`,
    },
  ];
}
