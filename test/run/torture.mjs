import { parseArgs } from 'node:util';
import { runSteps } from './runSteps.mjs';
import { crashSteps } from './torture/crash.mjs';
import { fuzzSteps } from './torture/fuzz.mjs';

const { rounds } = parseArgs({ options: { rounds: { type: 'string', default: '50' } } }).values;
if (!/^[1-9]\d{0,4}$/.test(rounds)) {
  console.error(`--rounds ${rounds}: expected how often the browser is to be killed, a whole number such as 50.`);
  process.exit(1);
}

/** What takes too long for every change: by hand, before a release. `-- --rounds 200` kills the browser so often. */
await runSteps([...crashSteps(Number(rounds)), ...fuzzSteps]);
