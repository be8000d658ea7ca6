import { expect, test } from '@playwright/test';
import { findBrowser } from '../test/run/findBrowser.mjs';
import { crashRounds } from '../test/run/torture/crashRounds.mjs';

test('a browser that is killed in the middle of edits: what was said to be kept opens again', async ({ baseURL }) => {
  const program = process.env.SADDLEMARK_BROWSER || findBrowser();
  // How late it may be depends on the machine, and is for `npm run torture` to say.
  const { kills, edits, lost, broken } = await crashRounds({
    program,
    address: baseURL ?? '',
    rounds: 2,
    edits: 30,
    seed: 3,
  });
  expect({ kills, lost, broken }).toEqual({ kills: 2, lost: [], broken: [] });
  expect(edits).toBeGreaterThan(2);
});
