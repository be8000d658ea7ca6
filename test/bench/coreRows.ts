import { createDerive } from '../../src/core/derive/createDerive';
import { allFields } from '../../src/core/document/fieldAt';
import { fieldValue, withFieldValue } from '../../src/core/document/fieldValue';
import type { Project } from '../../src/core/document/types';
import { buildDrawing } from '../../src/core/drawing/buildDrawing';
import { fitSetback } from '../../src/core/intonation/fitSetback';
import { monteCarloSetback } from '../../src/core/intonation/monteCarloSetback';
import { unwrap } from '../exporters/pdf/unwrap';
import { WORKED_SETUPS, WORKED_STRINGS } from '../reference/intonation-worked';
import { INSTRUMENTS } from './instruments';
import { type Row, row } from './row';
import { percentile, timed, timedRuns } from './statistics';

const ROUNDS = 4;
const FIT_ROUNDS = 500;
const SAMPLES = 100_000;
const SAMPLING_RUNS = 7;
const FRETS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];

/** The project with each of its figures changed a little, one at a time. */
const edits = (project: Project, round: number): readonly Project[] =>
  allFields(project).flatMap((field) => {
    const value = fieldValue(project, field.path);
    if (typeof value !== 'number' || !('min' in field)) return [];
    const step = field.kind === 'number' && field.whole ? 1 : (field.max - field.min) * 1e-4 * (round + 1);
    return [withFieldValue(project, field.path, value + step <= field.max ? value + step : value - step)];
  });

/** From an edit to its numbers, and from the numbers to the display list. No warm-up: a maker's first edits count. */
function editRows(): readonly Row[] {
  const deriving: number[] = [];
  const drawing: number[] = [];
  for (const project of INSTRUMENTS) {
    const derive = createDerive();
    const { hand, nut } = project.instrument;
    for (let round = 0; round < ROUNDS; round += 1) {
      for (const edited of edits(project, round)) {
        let derived = derive(project);
        deriving.push(
          timed(() => {
            derived = derive(edited);
          }),
        );
        drawing.push(
          timed(() => buildDrawing(derived, { hand, datum: nut.datum, style: { unit: 'mm', decimals: 1 } })),
        );
      }
    }
  }
  const note = (times: readonly number[]) =>
    `median ${percentile(times, 0.5).toFixed(3)}, worst ${Math.max(...times).toFixed(2)} of ${times.length} edits`;
  return [
    row('derive, p95', 'ms', [percentile(deriving, 0.95)], [2], note(deriving)),
    row('buildDrawing, p95', 'ms', [percentile(drawing, 0.95)], [], note(drawing)),
  ];
}

function fitRow(): Row {
  const times = timedRuns(FIT_ROUNDS, (round) => {
    for (const [index, string] of WORKED_STRINGS.entries()) {
      const setup = WORKED_SETUPS[index];
      if (setup === undefined) throw new Error(`${string.name} has no set-up`);
      unwrap(fitSetback(string, { ...setup, action: setup.action + 1e-4 * round }, { frets: FRETS, freeNut: false }));
    }
  });
  const note = `median ${percentile(times, 0.5).toFixed(3)}, worst ${Math.max(...times).toFixed(2)} of ${FIT_ROUNDS}`;
  return row('fit of six strings, twelve frets, p95', 'ms', [percentile(times, 0.95)], [2], note);
}

function samplingRow(): Row {
  const [string, setup] = [WORKED_STRINGS.at(-1), WORKED_SETUPS.at(-1)];
  if (string === undefined || setup === undefined) throw new Error('the worked example has no string');
  const doubts = { action: 0.1, nutHeight: 0.05, relief: 0.03, coreDiameter: 0.01, modulus: 5, massPerLength: 0.05 };
  const options = { frets: FRETS, freeNut: false };
  const times = timedRuns(SAMPLING_RUNS, (seed) => {
    const sampling = monteCarloSetback({ string, setup, options, doubts, samples: SAMPLES, seed });
    let step = sampling.next();
    while (!step.done) step = sampling.next();
    unwrap(step.value);
  });
  const note = `one string, twelve frets, six figures in doubt; median of ${SAMPLING_RUNS}; in Node`;
  return row('100,000 samples of intonation', 'ms', [percentile(times, 0.5)], [300], note);
}

/** What core takes for an edit, a fit and a sampling. */
export const coreRows = (): readonly Row[] => [...editRows(), fitRow(), samplingRow()];
