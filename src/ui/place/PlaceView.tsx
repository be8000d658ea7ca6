import { useMedia } from '../useMedia';
import { NARROW } from './narrow';
import { PlaceResult } from './reading/PlaceResult';
import './place.css';

/** What the readings say, and where to read; on a narrow screen that stands among the readings. */
export function PlaceView() {
  const narrow = useMedia(NARROW);
  if (narrow) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what is longer than the view is scrolled by keys
    <section className="pages place-view" aria-label="Place" tabIndex={0}>
      <PlaceResult />
    </section>
  );
}
