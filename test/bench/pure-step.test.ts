// The jobs that the benchmarks of the pure step play are whole ones: a job that stalls would be measured as a fast one.
import { expect, test } from 'vitest';
import { manyStages, ourStep, stages } from './bench-procedure.ts';
import { mustEnd, textsOf } from './pure-step.ts';

test.each([
  [40, stages],
  [200, manyStages],
])('a job of %i messages over %i stages comes to its end with the last one', async (messages, count) => {
  const step = await ourStep(count);
  expect(() => mustEnd(step, textsOf(messages, count))).not.toThrow();
  expect(() => mustEnd(step, textsOf(messages, count).slice(0, -1))).toThrow('is open');
});
