import { measureSize } from '../run/jsSize.mjs';
import { browserRows } from './browserRows';
import { coreRows } from './coreRows';
import { pdfRows } from './pdfRows';
import { formatRows, type Row } from './row';

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

/** Where things are: the project, the folder that holds the build's `dist`, the address of the app, the browser. */
const [root = '', built = '', origin = '', browser = ''] = process.argv.slice(2);

const quiet = [...coreRows(), ...(await pdfRows(root))];
console.log(`\n${formatRows([...sizeRows(built), ...(await browserRows(origin, browser)), ...quiet])}\n`);
