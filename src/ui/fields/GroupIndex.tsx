import { goToGroup } from './goToGroup';

interface GroupIndexProps {
  readonly groups: readonly { readonly id: string; readonly name: string }[];
}

/** The groups of a station in the order of the work, to go to at once. */
export function GroupIndex({ groups }: GroupIndexProps) {
  return (
    <nav className="group-index" aria-label="Groups">
      {groups.map(({ id, name }) => (
        <button key={id} type="button" onClick={() => goToGroup(id)}>
          {name}
        </button>
      ))}
    </nav>
  );
}
