// The stand-in as a program of its own, for the test of the pipe driver only.
import { createStandIn } from './stand-in.ts';

const take = createStandIn();
let rest = '';
let line = 0;
process.stdin.setEncoding('utf8');
for await (const chunk of process.stdin) {
  const pieces = (rest + chunk).split('\n');
  rest = pieces.pop()!;
  for (const piece of pieces) {
    line += 1;
    for (const output of take(JSON.parse(piece))) process.stdout.write(`${JSON.stringify(output)}\n`);
    process.stdout.write(`${JSON.stringify({ done: line })}\n`);
  }
}
