import { useEffect, useRef, useState } from 'react';
import type { SetJob, SetRun } from '../../../core/ports';
import { fileName } from '../../files/fileName';
import { useServices } from '../../services';

/** The making of a set. share: how far it is, 0 to 1; null while none is made. */
export interface SetMaking {
  readonly share: number | null;
  /** What the last set lacks, in words. */
  readonly left: readonly string[];
  start(job: SetJob): Promise<void>;
  cancel(): void;
}

/** Makes sets in the background, one at a time, and hands over the file; leaving the station ends one that is not done. */
export const useSetRun = (): SetMaking => {
  const { store, files, workshop } = useServices();
  const [share, setShare] = useState<number | null>(null);
  const [left, setLeft] = useState<readonly string[]>([]);
  const run = useRef<SetRun | null>(null);
  /** Which start is the last: what an earlier one still tells no longer counts. */
  const last = useRef(0);
  const stop = (): void => {
    last.current += 1;
    run.current?.cancel();
    run.current = null;
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: it reaches for the references alone
  useEffect(() => stop, []);

  const start = async (job: SetJob): Promise<void> => {
    stop();
    const mine = last.current;
    setShare(0);
    setLeft([]);
    const { makeSet } = await workshop();
    if (mine !== last.current) return;
    run.current = makeSet(job, (done) => {
      if (mine === last.current) setShare(done);
    });
    const made = await run.current.result;
    if (mine !== last.current) return;
    setShare(null);
    if (!made.ok) {
      store.actions.warn(`No set. ${made.issues.map(({ message }) => message).join(' ')}`);
      return;
    }
    const ending = job.as === 'zip' ? 'zip' : 'pdf';
    const name = fileName(store.getState().project.about.name, 'set', ending);
    files.download(name, ending === 'zip' ? 'application/zip' : 'application/pdf', made.value.bytes);
    setLeft(made.value.left.map((out) => `${out.name}: ${out.reason}`));
    const lacking = made.value.missing.length === 0 ? '' : ` The printed font lacks ${made.value.missing.join(' ')}.`;
    store.actions.say(`Downloaded ${name}.${lacking} Print it at 100 % and measure the long lines.`);
  };
  const cancel = (): void => {
    stop();
    setShare(null);
    store.actions.say('The set was cancelled.');
  };
  return { share, left, start, cancel };
};
