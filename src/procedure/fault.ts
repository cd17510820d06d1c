// What content may say of a fault, of the checks that find it and of causes that come together, for the library and the diagnosis.
import { z } from 'zod';
import { idSchema } from './identifier.ts';
import { type SensorKind, sensorKinds } from './vocabulary.ts';

const id = idSchema;
const share = z.number().min(0).max(1);
const spread = z.number().min(0).default(0);

/**
 * What the meter would show, told from what the healthy machine would show (`signal`) and the sensor's supply.
 * `spread` is a standard deviation, `give` a half-width within which all values are alike.
 */
const predictorSchema = z.discriminatedUnion('kind', [
  /** The healthy machine's figure, rightly set or not. */
  z.strictObject({ kind: z.literal('same'), share: share.default(1), spread }),
  /** The healthy machine's figure, and set as it should be. */
  z.strictObject({ kind: z.literal('right'), share: share.default(1), spread }),
  /** Set off its mark: the rightly set figure, moved by up to `give`. */
  z.strictObject({ kind: z.literal('mis-set'), share: share.default(1), give: z.number().positive() }),
  z.strictObject({
    kind: z.literal('shifted'),
    share: share.default(1),
    by: z.number(),
    give: spread,
    spread,
  }),
  z.strictObject({
    kind: z.literal('scaled'),
    share: share.default(1),
    by: z.number(),
    give: spread,
    spread,
  }),
  /** Scaled as the supply is: where that was measured, and the band went with it, the same. */
  z.strictObject({
    kind: z.literal('follows-supply'),
    share: share.default(1),
    by: z.number(),
    give: spread,
    spread,
  }),
  z.strictObject({ kind: z.literal('negated'), share: share.default(1), spread }),
  z.strictObject({
    kind: z.literal('constant'),
    share: share.default(1),
    at: z.number(),
    give: spread,
    spread,
  }),
  z.strictObject({ kind: z.literal('supply'), share: share.default(1), spread }),
  /** Supply minus signal: red on supply, black on signal. */
  z.strictObject({ kind: z.literal('supply-minus'), share: share.default(1), spread }),
  /** Signal minus supply: red on signal, black on supply. */
  z.strictObject({ kind: z.literal('less-supply'), share: share.default(1), spread }),
  z.strictObject({ kind: z.literal('negative-supply'), share: share.default(1), spread }),
  /** Does not stand still; around the healthy figure, or around `at`. */
  z.strictObject({
    kind: z.literal('wandering'),
    share: share.default(1),
    width: z.number().positive(),
    at: z.number().optional(),
  }),
  /** Falls away to `to` at some angles: a single reading shows that, a sweep is broken. */
  z.strictObject({ kind: z.literal('drop-out'), share: share.default(1), to: z.number().default(0), spread }),
  /** Overload wherever the healthy figure is above. */
  z.strictObject({ kind: z.literal('over-range'), share: share.default(1), above: z.number() }),
  /** The healthy figure with too few digits: the last one is worth `digit`. */
  z.strictObject({ kind: z.literal('coarse'), share: share.default(1), digit: z.number().positive() }),
  /** Raised by up to `by`, as the bars stand. */
  z.strictObject({ kind: z.literal('bar-angle'), share: share.default(1), by: z.number().positive() }),
  /** A figure of earlier that no longer moves. */
  z.strictObject({ kind: z.literal('frozen'), share: share.default(1), give: spread }),
  z.strictObject({ kind: z.literal('anything'), share: share.default(1), from: z.number(), to: z.number() }),
  z.strictObject({ kind: z.literal('overload'), share: share.default(1) }),
  /** A blank meter. */
  z.strictObject({ kind: z.literal('blank'), share: share.default(1) }),
]);

export type Predictor = z.infer<typeof predictorSchema>;

/** Where in the machine a fault acts, in the order in which two of them act on one reading. */
export const layers = [
  'mechanical',
  'sensor',
  'wiring',
  'power',
  'leads',
  'meter',
  'owner',
  'engine',
] as const;

const sweepShapes = ['rising', 'falling', 'flat', 'broken', 'not-back'] as const;
export type SweepShape = (typeof sweepShapes)[number];

export const priorSets = ['complaint', 'odd-reading'] as const;
export type PriorSet = (typeof priorSets)[number];

/** Of a thousand complaints, and of a thousand odd readings, so many are this. */
const prior = z.strictObject({ complaint: z.number().min(0), 'odd-reading': z.number().min(0) });

const faultSchema = z.strictObject({
  id,
  /** The row of the signature table it stands for, null where there is none. */
  row: z.string().nullable(),
  layer: z.enum(layers),
  /** Only a sensor of this kind can have it. */
  sensor: z.enum(sensorKinds).optional(),
  /** It comes and goes between one reading and the next, so that an earlier reading in order says nothing against it. */
  passing: z.boolean().default(false),
  prior,
  /** The first entry that fits a reading counts; where none fits, the reading is the healthy machine's. */
  shows: z
    .array(
      z.strictObject({
        /** Measures; a trailing `*` stands for any ending. */
        on: z.array(z.string()).min(1),
        /** Situations; all of them where absent. */
        at: z.array(z.string()).min(1).optional(),
        as: z.array(predictorSchema).min(1),
      }),
    )
    .default([]),
  /** How a reading moves after an action; told from `shows` where absent. */
  changes: z
    .array(z.strictObject({ after: z.array(z.string()).min(1), falls: share, same: share, rises: share }))
    .default([]),
  /** The shape of a sweep; told from `shows` where absent. */
  sweep: z.partialRecord(z.enum(sweepShapes), share).optional(),
  /** Shares of the answers to a question, among those who know. */
  answers: z.record(id, z.record(id, share)).default({}),
});

export type Fault = z.infer<typeof faultSchema>;

/**
 * A question with buttons. The first answer is the ordinary, healthy one; `usual` holds for faults that do not say
 * otherwise, and `slips` is how many answers are given at random. "Don't know" is always offered beside them.
 */
const questionSchema = z.strictObject({ id, usual: z.record(id, share), slips: share.default(0.08) });

const checkSchema = z.strictObject({
  id,
  do: z.array(z.string()).default([]),
  /** What puts things back before the straight path goes on. */
  back: z.array(z.string()).default([]),
  ask: z.discriminatedUnion('kind', [
    /** The reading that was odd is taken again. */
    z.strictObject({ kind: z.literal('retake') }),
    z.strictObject({ kind: z.literal('choice'), question: id }),
    z.strictObject({ kind: z.literal('reading'), measure: z.string() }),
    /** Nothing is asked: the reading is taken as a setting that is off, and the straight path goes on. */
    z.strictObject({ kind: z.literal('go-on') }),
  ]),
  minutes: z.number().positive(),
  tools: z.array(id).default([]),
  /** Who can do it safely. */
  for: z.enum(['owner', 'desk']).default('owner'),
  /** How often the fault is gone afterwards, where it was that fault. */
  mends: z.record(id, share).default({}),
});

export type Check = z.infer<typeof checkSchema>;

/** Two causes that come together often enough to be thought of at once. */
const pairSchema = z.strictObject({ of: z.tuple([id, id]), prior });
export type Pair = z.infer<typeof pairSchema>;

/** One file of `content/faults`; the lists of all files together are the fault content. */
export const faultFileSchema = z.strictObject({
  faults: z.array(faultSchema).default([]),
  questions: z.array(questionSchema).default([]),
  checks: z.array(checkSchema).default([]),
  pairs: z.array(pairSchema).default([]),
});

export type FaultContent = z.infer<typeof faultFileSchema>;

/** The two faults that every content has: all is well, and none that we know of. */
export const nothingWrong = 'nothing-wrong';
export const unknownCause = 'unknown';
/** The answer that says nothing. */
const dontKnow = 'dont-know';

export function joinFaultFiles(files: readonly FaultContent[]): FaultContent {
  return {
    faults: files.flatMap((file) => file.faults),
    questions: files.flatMap((file) => file.questions),
    checks: files.flatMap((file) => file.checks),
    pairs: files.flatMap((file) => file.pairs),
  };
}

/** What a machine with this kind of sensor can have; the same object where that is all. */
export function faultsFor(content: FaultContent, kind: SensorKind): FaultContent {
  const isOther = ({ sensor }: Fault) => sensor !== undefined && sensor !== kind;
  const others = new Set(content.faults.filter(isOther).map((fault) => fault.id));
  if (others.size === 0) return content;
  return {
    ...content,
    faults: content.faults.filter((fault) => !others.has(fault.id)),
    pairs: content.pairs.filter(({ of }) => !of.some((one) => others.has(one))),
  };
}

/** Why a person is called; each has words under `call-…`. */
const callReasons = ['unknown-cause', 'not-for-an-owner', 'nothing-left', 'look-alike'] as const;
export type CallReason = (typeof callReasons)[number];

/** The answers to a check's question have words; those of a procedure's own question are the procedure's. */
function answersOf(content: FaultContent, { ask }: Check): string[] {
  if (ask.kind !== 'choice') return [];
  const question = content.questions.find((one) => one.id === ask.question);
  return [...Object.keys(question?.usual ?? {}), dontKnow].map(
    (answer) => `answer-${ask.question}-${answer}`,
  );
}

/** The keys of every word that this content needs in a language. */
export function wordsOfFaults(content: FaultContent): string[] {
  return [
    ...content.faults.flatMap(({ id: fault }) => [
      `fault-${fault}`,
      `fault-${fault}-why`,
      `fault-${fault}-remedy`,
    ]),
    ...content.checks.flatMap((check) => [
      `check-${check.id}`,
      `check-${check.id}-name`,
      ...answersOf(content, check),
    ]),
    ...callReasons.map((reason) => `call-${reason}`),
  ];
}
