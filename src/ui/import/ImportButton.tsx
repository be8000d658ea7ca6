import { lazy, Suspense, useState } from 'react';
import { takeOutline } from '../../store/commands/takeOutline';
import { useServices } from '../services';

const ImportDialog = lazy(async () => ({ default: (await import('./ImportDialog')).ImportDialog }));

/** Opens the way to an outline from a file, which becomes the bridge's as one step. */
export function ImportButton() {
  const { actions } = useServices().store;
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" onClick={() => setOpen(true)}>
        Import an outline
      </button>
      {open && (
        <Suspense fallback={null}>
          <ImportDialog
            take={(path) => actions.change('Outline from a file', (project) => takeOutline(project, path))}
            closed={() => setOpen(false)}
          />
        </Suspense>
      )}
    </>
  );
}
