import type { LibraryEntry } from '../../../core/ports';
import { useStore } from '../../useStore';
import { entryTitle } from './entryWords';

interface TickedBarProps {
  readonly entries: readonly LibraryEntry[];
  readonly ticked: readonly string[];
  readonly compare: (ids: readonly [string, string]) => void;
  readonly clear: () => void;
}

/** What is ticked to be compared: two with each other, or one with the work in hand. Nothing while none is. */
export function TickedBar({ entries, ticked, compare, clear }: TickedBarProps) {
  const current = useStore(({ project }) => project.id);
  const there = ticked.filter((id) => entries.some((entry) => entry.id === id));
  const [one, other] = there;
  if (one === undefined) return null;
  const title = (id: string): string => {
    const entry = entries.find((each) => each.id === id);
    return entry === undefined ? '' : entryTitle(entry);
  };
  return (
    <div className="ticked-bar">
      <p>{there.map(title).join(' and ')}</p>
      {other !== undefined && (
        <button type="button" onClick={() => compare([one, other])}>
          Compare the two
        </button>
      )}
      {other === undefined &&
        (one === current ? (
          <p className="quiet">Tick another one to compare it with what is in hand.</p>
        ) : (
          <button type="button" onClick={() => compare([one, current])}>
            Compare with what is in hand
          </button>
        ))}
      <button type="button" onClick={clear}>
        Clear
      </button>
    </div>
  );
}
