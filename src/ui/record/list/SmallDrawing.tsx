import { useEffect, useRef, useState } from 'react';
import type { LibraryEntry } from '../../../core/ports';
import { useServices } from '../../services';
import { shelfOf } from '../shelf/createShelf';

/** How far outside of the view a drawing is made already. */
const AHEAD = '200px';

/** The bridge of an entry, drawn once it comes into view. For the eyes: the words beside it tell the same. */
export function SmallDrawing({ entry }: { readonly entry: LibraryEntry }) {
  const { pictures } = shelfOf(useServices());
  const frame = useRef<HTMLDivElement>(null);
  const [, setMade] = useState(0);
  const picture = pictures.known(entry);
  useEffect(() => {
    const seen = frame.current;
    if (picture !== undefined || seen === null) return;
    let stop: (() => unknown) | null = null;
    const watcher = new IntersectionObserver(
      ([found]) => {
        stop?.();
        stop = found?.isIntersecting ? pictures.want(entry, () => setMade((count) => count + 1)) : null;
      },
      { rootMargin: AHEAD },
    );
    watcher.observe(seen);
    return () => {
      watcher.disconnect();
      stop?.();
    };
  }, [entry, picture, pictures]);
  return (
    <div ref={frame} className="small-drawing" aria-hidden="true">
      {picture && (
        <svg viewBox={picture.viewBox} style={{ width: `${100 * picture.share}%` }} aria-hidden="true">
          <path d={picture.outline} />
          <path d={picture.inside} className="inside" />
        </svg>
      )}
    </div>
  );
}
