import { useCallback, useEffect, useRef, useState } from 'react';
import type { DrawingScale, ImportedOutlines, ImportJob } from '../../core/ports';
import { IMPORT_LIMITS } from '../../importers/importLimits';
import { useServices } from '../services';

/** A file being read, and what was found in it. */
export interface Reading {
  readonly name: string | null;
  /** Rises with every file. */
  readonly files: number;
  readonly busy: boolean;
  /** Why there is nothing, or nothing new. */
  readonly problem: string | null;
  /** At the size that the file itself says. */
  readonly plain: ImportedOutlines | null;
  /** At the size last chosen. */
  readonly found: ImportedOutlines | null;
  open(file: File): Promise<void>;
  /** Reads the same file at another size; answers with what is wrong, or null. */
  resize(scale: DrawingScale): Promise<string | null>;
  cancel(): void;
}

type Shown = Pick<Reading, 'name' | 'files' | 'busy' | 'problem' | 'plain' | 'found'>;

const NOTHING: Shown = { name: null, files: 0, busy: false, problem: null, plain: null, found: null };

/** Reads files in a worker; a reading that is still under way ends when another begins, or with the dialog. */
export const useReading = (): Reading => {
  const { workshop } = useServices();
  const [state, setState] = useState(NOTHING);
  const bytes = useRef<Uint8Array>(new Uint8Array());
  const job = useRef<ImportJob | null>(null);
  /** Rises with every reading: the answer to an older one is dropped. */
  const turn = useRef(0);
  const end = useCallback((): void => {
    turn.current += 1;
    job.current?.cancel();
    job.current = null;
  }, []);
  useEffect(() => end, [end]);

  const read = async (name: string, scale: DrawingScale, load?: () => Promise<ArrayBuffer>): Promise<string | null> => {
    end();
    const mine = turn.current;
    const current = (): boolean => turn.current === mine;
    setState((before) => ({
      ...(load ? { ...NOTHING, files: before.files + 1 } : before),
      name,
      busy: true,
      problem: null,
    }));
    try {
      const [shop, loaded] = await Promise.all([workshop(), load?.()]);
      if (!current()) return null;
      if (loaded !== undefined) bytes.current = new Uint8Array(loaded);
      job.current = shop.readOutlines(name, bytes.current, scale);
      const result = await job.current.result;
      if (!current()) return null;
      if (result.ok) {
        const { value } = result;
        setState((before) => ({ ...before, busy: false, plain: load ? value : before.plain, found: value }));
        return null;
      }
      throw new Error(result.issues[0]?.message);
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      if (current()) setState((before) => ({ ...before, busy: false, problem: load ? reason : null }));
      return reason;
    }
  };

  return {
    ...state,
    open: async (file) => {
      if (file.size > IMPORT_LIMITS.fileSize) {
        end();
        const most = IMPORT_LIMITS.fileSize / 1e6;
        const problem = `${file.name} has ${(file.size / 1e6).toFixed(1)} MB, expected at most ${most}. Save the bridge's outline alone.`;
        setState(({ files }) => ({ ...NOTHING, files, name: file.name, problem }));
        return;
      }
      await read(file.name, { by: 'file' }, () => file.arrayBuffer());
    },
    resize: (scale) => (state.name === null ? Promise.resolve(null) : read(state.name, scale)),
    cancel: () => {
      end();
      setState((before) => ({ ...before, busy: false, problem: 'The reading was ended.' }));
    },
  };
};
