import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import path from 'node:path';
import { countVitest, readReport } from './countReports.mjs';
import { root, run, runSteps } from './runSteps.mjs';

/** The programs that read our files back, each with Debian's package that holds it and how to ask for its version. */
const readers = [
  { command: 'pdftocairo', version: '-v', package: 'poppler-utils' },
  { command: 'qpdf', version: '--version', package: 'qpdf' },
  { command: 'rsvg-convert', version: '--version', package: 'librsvg2-bin' },
  { command: '/usr/bin/python3', version: '-cimport shapely', package: 'python3-shapely' },
  { command: '/usr/bin/python3', version: '-cimport ezdxf', package: 'python3-ezdxf' },
  { command: '/usr/bin/python3', version: '-cimport scipy', package: 'python3-scipy' },
  { command: '/usr/bin/python3', version: '-cimport cv2', package: 'python3-opencv' },
];

const missing = () =>
  readers.filter(({ command, version }) => spawnSync(command, [version], { stdio: 'ignore' }).status !== 0);

/** Every reader that answers counts as one check; one that is missing has failed, and nothing is skipped. */
const findReaders = async () => {
  const wanted = [...new Set(missing().map((reader) => reader.package))];
  if (wanted.length > 0 && process.getuid?.() === 0) {
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const command = `apt-get update -q && apt-get install -q -y --no-install-recommends ${wanted.join(' ')}`;
    spawnSync('sh', ['-c', command], { stdio: 'inherit', env });
  }
  const faults = missing().map(
    (reader) =>
      `${reader.command} is missing: install Debian's package ${reader.package}, or run this as root on Debian or Ubuntu`,
  );
  return { passed: readers.length - faults.length, failed: faults.length, faults };
};

const report = path.join(root, 'reports/readers.json');

const readBack = async () => {
  rmSync(report, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const ranWell = await run('vitest', ['run', '--mode', 'readers', ...reporters]);
  return countVitest(readReport(report), ranWell);
};

await runSteps([
  { name: 'readers', run: findReaders },
  { name: 'read back', run: readBack },
]);
