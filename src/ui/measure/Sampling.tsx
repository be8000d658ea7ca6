import { useEffect, useRef, useState } from 'react';
import type { SamplingJob, SetbackRange } from '../../core/ports';
import { NINETEEN_OF_TWENTY } from '../plusMinus';
import { useServices } from '../services';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { samplingsOf } from './samplingsOf';

const SAMPLES = 50_000;

interface Sampled {
  readonly models: unknown;
  readonly ranges: readonly SetbackRange[];
}

/** The same doubts drawn at random, all at once: a check on the first-order ±, made in the background. */
export function Sampling() {
  const { workshop, store } = useServices();
  const models = useStore((state) => state.derived.models);
  const [share, setShare] = useState<number | null>(null);
  const [sampled, setSampled] = useState<Sampled | null>(null);
  const job = useRef<SamplingJob | null>(null);
  /** Which start is the last: what an earlier one still tells, or brings, no longer counts. */
  const last = useRef(0);
  const stop = (): void => {
    last.current += 1;
    job.current?.cancel();
    job.current = null;
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: it reaches for the references alone
  useEffect(() => stop, []);
  if (!models.ok) return null;

  const start = async (): Promise<void> => {
    stop();
    const mine = last.current;
    setShare(0);
    const { sampleSetbacks } = await workshop();
    if (mine !== last.current) return;
    const requests = samplingsOf(models.value, store.getState().project, SAMPLES);
    job.current = sampleSetbacks(requests, (done) => {
      if (mine === last.current) setShare(done);
    });
    const result = await job.current.result;
    if (mine !== last.current) return;
    setShare(null);
    if (result.ok) setSampled({ models, ranges: result.value });
    else store.actions.warn(result.issues[0]?.message ?? '');
  };
  const cancel = (): void => {
    stop();
    setShare(null);
    store.actions.say('Sampling cancelled.');
  };

  return (
    <div className="sampling">
      <p className="hint">
        A check on the ± above: {SAMPLES.toLocaleString('en')} instruments for each string, every figure drawn at random
        within its doubt.
      </p>
      {share === null ? (
        <button type="button" onClick={() => void start()}>
          Sample the doubts
        </button>
      ) : (
        <p className="sampling-run">
          <progress aria-label="Sampling" value={share} max={1} />
          <button type="button" onClick={cancel}>
            Cancel
          </button>
        </p>
      )}
      {sampled?.models === models && (
        <>
          <SampledTable ranges={sampled.ranges} />
          <p className="field-note">
            A mean farther back than the mark is the finger’s doing: it may press below the fret top, never above it.
          </p>
        </>
      )}
    </div>
  );
}

function SampledTable({ ranges }: { readonly ranges: readonly SetbackRange[] }) {
  const models = useStore((state) => state.derived.models);
  const { bare } = useLengths();
  if (!models.ok) return null;
  return (
    <table className="figures loose small-figures" aria-label="Sampled setbacks">
      <thead>
        <tr>
          <th scope="col">String</th>
          <th scope="col">mean</th>
          <th scope="col">95 % from</th>
          <th scope="col">to</th>
          <th scope="col">first order</th>
        </tr>
      </thead>
      <tbody>
        {models.value.map(({ id, name, sigma }, index) => {
          const range = ranges[index];
          if (range === undefined) return null;
          return (
            <tr key={id}>
              <th scope="row">
                {index + 1} {name}
              </th>
              <td>{bare(range.mean)}</td>
              <td>{bare(range.low)}</td>
              <td>{bare(range.high)}</td>
              <td>± {bare(NINETEEN_OF_TWENTY * sigma)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
