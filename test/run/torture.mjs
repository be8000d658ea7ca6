import { runSteps } from './runSteps.mjs';
import { fuzzSteps } from './torture/fuzz.mjs';

/** What takes too long for every change: by hand, before a release. */
await runSteps([...fuzzSteps]);
