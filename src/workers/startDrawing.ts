import { wrap } from 'comlink';
import type { DrawingFormat, FileDrawing } from '../core/ports';
import { fail, type Result } from '../core/result';
import type { DrawingWorker } from './drawingWorker';
import { whenBroken } from './whenBroken';

/**
 * Writes a drawing to a file's bytes in a worker of its own, which ends with it. Codes: as the exporters, worker.failed.
 *
 * @param fontBase absolute address of the folder of the printed font, ending in a slash
 */
export const startDrawing = async (
  drawing: FileDrawing,
  format: DrawingFormat,
  fontBase: string,
): Promise<Result<Uint8Array>> => {
  const worker = new Worker(new URL('./drawingWorker.ts', import.meta.url), { type: 'module' });
  const made: Promise<Result<Uint8Array>> = wrap<DrawingWorker>(worker).makeDrawing(drawing, format, fontBase);
  try {
    return await Promise.race([made, whenBroken(worker)]);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return fail('', 'worker.failed', `The file could not be made (${reason}). Reload the page and try again.`);
  } finally {
    worker.terminate();
  }
};
