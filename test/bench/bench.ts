import { measureSize } from '../run/jsSize.mjs';
import { browserRows } from './browserRows';
import { coreRows } from './coreRows';
import { pdfRows } from './pdfRows';
import { formatRows, type Row, row } from './row';
import { percentile, timedRuns } from './statistics';

/** The lines of the size check, "what: figure, at most ceiling", as lines of the table. */
function sizeRows(built: string): readonly Row[] {
  const { lines, faults } = measureSize(built);
  if (lines.length === 0) throw new Error(faults.join('; '));
  return lines.map((line) => {
    const [what = line, said = ''] = line.split(': ');
    const [measured = said, ceiling = ''] = said.split(', at most ');
    const [size = measured, note = ''] = measured.split(' gz ');
    return { what: `${what}, gz`, measured: size, budget: `${ceiling} KB`, over: faults.includes(line), note };
  });
}

/** The same sums again and again: how steady the machine is. */
const steadiness = (): readonly number[] =>
  timedRuns(20, () => {
    let sum = 0;
    for (let index = 0; index < 1e7; index += 1) sum += index % 7;
    if (sum <= 0) throw new Error('the sums came out wrong');
  });

/** Where things are: the project, the folder that holds the build's `dist`, the address of the app, the browser. */
const [root = '', built = '', origin = '', browser = ''] = process.argv.slice(2);

const before = steadiness();
const withoutBrowser = [...coreRows(), ...(await pdfRows(root))];
const inBrowser = await browserRows(origin, browser);
const sums = [...before, ...steadiness()];
const machine = row(
  'the same sums before and after, median / p95',
  'ms',
  [percentile(sums, 0.5), percentile(sums, 0.95)],
  [],
  'far apart: something else ran, measure again',
);
console.log(`\n${formatRows([...sizeRows(built), ...inBrowser, ...withoutBrowser, machine])}\n`);
