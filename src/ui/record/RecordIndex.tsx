const GROUPS: readonly { readonly id: string; readonly name: string }[] = [
  { id: 'this-work', name: 'This one' },
  { id: 'string-ups', name: 'String-ups' },
  { id: 'what-to-expect', name: 'Next time' },
  { id: 'versions', name: 'Versions' },
  { id: 'keeping', name: 'Keeping' },
  { id: 'library', name: 'Library' },
];

/** The groups of the station, to go to at once; the library lies beside them, or below on a narrow screen. */
export function RecordIndex() {
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
