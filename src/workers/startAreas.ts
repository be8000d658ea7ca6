import { wrap } from 'comlink';
import type { Areas } from '../core/derive/deriveAreas';
import { fail, ok, type Result } from '../core/result';
import type { DeriveAreas } from '../store/keepAreas';
import type { AreasAnswer, AreasWorker } from './areasWorker';
import { packPath, unpackPath } from './packedPath';
import { whenBroken } from './whenBroken';

interface Waiting {
  readonly bridge: Parameters<DeriveAreas>;
  readonly answer: (areas: Result<Areas>) => void;
}

/** Only what the areas depend on, since all of it is copied for the worker. */
const questionOf = ([{ rim, density, thickness }, limits, place, rebate, moving]: Parameters<DeriveAreas>) => {
  const bridge = { rim, density, thickness };
  if (!place.ok) return { bridge, limits, cover: place, rebate, moving };
  const { area, front, pins, locating, footprint } = place.value;
  const cover = ok({ area, front, pins, locating, outline: packPath(footprint.outline) });
  return { bridge, limits, cover, rebate, moving };
};

const unpacked = (answer: AreasAnswer): Result<Areas> =>
  answer.ok ? ok({ ...answer.value, finishLine: answer.value.finishLine.map(unpackPath) }) : answer;

/**
 * Areas found in a worker, one bridge at a time. A bridge asked about while another is being worked on waits; when a newer
 * one comes it is dropped and never answered, so that a drag gets the areas of where it is now. Code areas.failed.
 */
export const startAreas = (): DeriveAreas => {
  const worker = new Worker(new URL('./areasWorker.ts', import.meta.url), { type: 'module' });
  const remote = wrap<AreasWorker>(worker);
  const broken = whenBroken(worker);
  // It is heard where something is asked of the worker.
  broken.catch(() => undefined);
  let working = false;
  let waiting: Waiting | null = null;

  const work = async ({ bridge, answer }: Waiting): Promise<void> => {
    working = true;
    try {
      answer(unpacked(await Promise.race([remote.deriveAreas(questionOf(bridge)), broken])));
    } catch {
      answer(fail('', 'areas.failed', 'The part of the program that finds areas broke down. Reload the page.'));
    }
    working = false;
    const next = waiting;
    waiting = null;
    if (next !== null) work(next);
  };
  return (...bridge) =>
    new Promise((answer) => {
      if (working) waiting = { bridge, answer };
      else work({ bridge, answer });
    });
};
