import { LibraryList } from './list/LibraryList';
import { useShelf } from './shelf/useShelf';
import './list/list.css';

/** The library: every model and instrument that this browser keeps. */
export function RecordView() {
  const { shelf, state } = useShelf();
  return (
    <section className="library" aria-label="Library of this browser">
      <h2>
        <span id="library" tabIndex={-1}>
          Library
        </span>
      </h2>
      {state.problem !== null && (
        <div className="field-caution">
          <p>{state.problem} The work in hand goes on, and can be saved to a file.</p>
          <button type="button" onClick={() => void shelf.refresh()}>
            Try again
          </button>
        </div>
      )}
      {state.problem === null && state.entries === null && <p className="quiet">One moment …</p>}
      {state.entries !== null && state.entries.length === 0 && (
        <p className="quiet">
          Nothing is kept here yet. What you begin or change is kept by itself, from the first change on.
        </p>
      )}
      {state.entries !== null && state.entries.length > 0 && <LibraryList entries={state.entries} />}
    </section>
  );
}
