const GROUPS: readonly { readonly id: string; readonly name: string }[] = [
  { id: 'group-readings', name: 'Readings' },
  { id: 'group-tuned', name: 'Loose bridge' },
  { id: 'group-budget', name: 'Before cutting' },
  { id: 'group-locating', name: 'Pins' },
  { id: 'group-finish', name: 'Finish' },
  { id: 'group-glue', name: 'Glue' },
  { id: 'group-run', name: 'The run' },
];

/** Goes to a group of the station. */
export const goToGroup = (id: string): void => {
  const title = document.getElementById(id);
  title?.focus({ preventScroll: true });
  title?.closest('section')?.scrollIntoView();
};

/** The groups of the station in the order of the work, to go to at once. */
export function PlaceIndex() {
  return (
    <nav className="group-index" aria-label="Groups">
      {GROUPS.map(({ id, name }) => (
        <button key={id} type="button" onClick={() => goToGroup(id)}>
          {name}
        </button>
      ))}
    </nav>
  );
}
