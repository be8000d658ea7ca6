const GROUPS: readonly { readonly id: string; readonly name: string }[] = [
  { id: 'group-heights', name: 'Heights' },
  { id: 'group-scale', name: 'Scale' },
  { id: 'group-board', name: 'Board' },
  { id: 'group-strings', name: 'Strings' },
  { id: 'group-compensation', name: 'Compensation' },
  { id: 'group-worth', name: 'Worth' },
  { id: 'group-audit', name: 'Repair' },
];

/** The groups of the station in the order of the work, to go to at once. */
export function GroupIndex() {
  const go = (id: string): void => {
    const title = document.getElementById(id);
    title?.focus({ preventScroll: true });
    title?.closest('section')?.scrollIntoView();
  };
  return (
    <nav className="group-index" aria-label="Groups">
      {GROUPS.map(({ id, name }) => (
        <button key={id} type="button" onClick={() => go(id)}>
          {name}
        </button>
      ))}
    </nav>
  );
}
