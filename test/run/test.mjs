import { rmSync } from 'node:fs';
import path from 'node:path';
import { countPlaywright, countVitest, readReport } from './countReports.mjs';
import { findBrowser } from './findBrowser.mjs';
import { measureSize } from './jsSize.mjs';
import { root, run, runSteps } from './runSteps.mjs';

const unitReport = path.join(root, 'reports/unit.json');
const journeysReport = path.join(root, 'reports/journeys.json');

/**
 * One step that counts as one check.
 * @param {boolean} good
 * @param {string} fault
 */
const check = (good, fault) => ({ passed: good ? 1 : 0, failed: good ? 0 : 1, faults: good ? [] : [fault] });

/** The whole sources, then core without a browser's names, then the app without Node's. */
const typeProjects = [
  'tsconfig.json',
  'test/architecture/tsconfig.core.json',
  'test/architecture/tsconfig.browser.json',
];

const types = async () => {
  const bad = [];
  for (const project of typeProjects) if (!(await run('tsc', ['-p', project]))) bad.push(project);
  return check(bad.length === 0, `tsc has complaints, see above: ${bad.join(', ')}`);
};

const unit = async () => {
  rmSync(unitReport, { force: true });
  const ranWell = await run('vitest', [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${unitReport}`,
  ]);
  return countVitest(readReport(unitReport), ranWell);
};

let built = false;
const build = async () => {
  rmSync(path.join(root, 'dist'), { recursive: true, force: true });
  built = await run('vite', ['build', '--logLevel', 'warn']);
  return check(built, 'the build failed, see above');
};

const size = async () => {
  const { lines, faults } = measureSize(root);
  for (const line of lines) console.log(line);
  return check(faults.length === 0, faults.join('; '));
};

const journeys = async () => {
  if (!built) throw new Error('no journey could start, because the build failed');
  const browser = findBrowser();
  console.log(`Browser: ${browser}`);
  rmSync(journeysReport, { force: true });
  const ranWell = await run('playwright', ['test'], { SADDLEMARK_BROWSER: browser });
  return countPlaywright(readReport(journeysReport), ranWell);
};

await runSteps([
  { name: 'types', run: types },
  {
    name: 'lint',
    run: async () => check(await run('biome', ['check', '--error-on-warnings']), 'Biome has complaints, see above'),
  },
  { name: 'dead code', run: async () => check(await run('knip', []), 'knip has complaints, see above') },
  { name: 'unit', run: unit },
  { name: 'build', run: build },
  { name: 'size', run: size },
  { name: 'journeys', run: journeys },
]);
