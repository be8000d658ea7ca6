import type { StringUp } from '../../../core/document/buildTypes';
import { stringUpName } from './stringUpWords';

interface StringUpListProps {
  readonly stringUps: readonly StringUp[];
  readonly open: string | null;
  readonly choose: (id: string) => void;
}

/** All string-ups by their day; one of them is open below. */
export function StringUpList({ stringUps, open, choose }: StringUpListProps) {
  return (
    <ul className="string-ups" aria-label="String-ups">
      {stringUps.map((each) => (
        <li key={each.id}>
          <button type="button" aria-pressed={each.id === open} onClick={() => choose(each.id)}>
            {stringUpName(each)}
            <small>{Object.keys(each.cents).length} strings read</small>
          </button>
        </li>
      ))}
    </ul>
  );
}
