import { useEffect, useId, useMemo, useRef, useState } from 'react';
import type { Project } from '../../../core/document/types';
import { compareProjects } from '../../../core/library/compareProjects';
import { entryTitle } from '../list/entryWords';
import { DifferenceTable } from './DifferenceTable';
import { OverlaidDrawings } from './OverlaidDrawings';
import './compare.css';

interface CompareDialogProps {
  /** The two projects; null when one could not be read. */
  readonly read: () => Promise<readonly [Project, Project] | null>;
  /** What to call them, where their own titles do not tell them apart. */
  readonly names?: readonly [string, string];
  readonly closed: () => void;
}

const titleOf = ({ about, build }: Project): string =>
  entryTitle({ name: about.name, serial: build === null ? null : build.serial });

/** Their titles; with a number where both are called the same. */
const titlesOf = ([one, other]: readonly [Project, Project]): readonly [string, string] => {
  const [mine, theirs] = [titleOf(one), titleOf(other)];
  return mine === theirs ? [`${mine} (1)`, `${theirs} (2)`] : [mine, theirs];
};

/** Two projects side by side: their drawings, and what differs. */
export function CompareDialog({ read, names, closed }: CompareDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const [both, setBoth] = useState<readonly [Project, Project] | null>(null);
  const reading = useRef(read);
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    let gone = false;
    reading.current().then((found) => {
      if (gone) return;
      if (found === null) shown?.close();
      else setBoth(found);
    });
    return () => {
      gone = true;
      shown?.close();
    };
  }, []);
  const differences = useMemo(() => (both === null ? [] : compareProjects(both[0], both[1])), [both]);
  const told = names ?? (both === null ? null : titlesOf(both));
  return (
    <dialog ref={dialog} aria-labelledby={title} className="new-dialog compare-dialog" onClose={closed}>
      <form method="dialog">
        <div className="dialog-head">
          <h2 id={title}>{told === null ? 'Comparing' : `${told[0]} against ${told[1]}`}</h2>
          <button type="submit">Close</button>
        </div>
      </form>
      {both !== null && told !== null && (
        <>
          <OverlaidDrawings one={both[0]} other={both[1]} names={told} />
          <DifferenceTable differences={differences} names={told} />
        </>
      )}
    </dialog>
  );
}
