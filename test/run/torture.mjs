import { runSteps } from './runSteps.mjs';
import { crashSteps } from './torture/crash.mjs';
import { fuzzSteps } from './torture/fuzz.mjs';

/** What takes too long for every change: by hand, before a release. */
await runSteps([...crashSteps, ...fuzzSteps]);
