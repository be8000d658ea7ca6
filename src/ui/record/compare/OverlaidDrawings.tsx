import { useMemo, useState } from 'react';
import type { Project } from '../../../core/document/types';
import { RadioRow } from '../../fields/RadioRow';
import { type LaidBy, overlay } from './overlay';

interface OverlaidDrawingsProps {
  readonly one: Project;
  readonly other: Project;
  readonly names: readonly [string, string];
}

const WAYS = [
  { value: 'break-point', label: 'Break points together' },
  { value: 'nut', label: 'Nuts together' },
] as const;

/** Two bridges laid over each other: the first in a continuous line, the other dashed and in another colour. */
export function OverlaidDrawings({ one, other, names }: OverlaidDrawingsProps) {
  const [by, setBy] = useState<LaidBy>('break-point');
  const laid = useMemo(() => overlay(one, other, by), [one, other, by]);
  if (laid === null) return <p className="not-yet">One of the two cannot be drawn: its design checks say why.</p>;
  return (
    <figure className="overlaid">
      <RadioRow label="Laid over each other by" value={by} choices={WAYS} choose={setBy} />
      <svg viewBox={laid.viewBox} role="img" aria-label={`${names[0]}, and ${names[1]} dashed, laid over each other`}>
        {laid.drawings.map(({ lines, moved }, index) => (
          <path
            key={names[index]}
            d={lines}
            className={index === 0 ? 'laid-under' : 'laid-over'}
            transform={moved === 0 ? undefined : `translate(0 ${moved})`}
          />
        ))}
      </svg>
      <figcaption>
        <span className="key-under">{names[0]}</span>
        <span className="key-over">{names[1]}, dashed</span>
      </figcaption>
    </figure>
  );
}
