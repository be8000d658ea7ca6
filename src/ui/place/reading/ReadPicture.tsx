import type { PlacePicture } from '../../../core/drawing/place/drawPlace';
import { ItemsSvg } from '../../items/ItemsSvg';

/** As large as its words read well. */
const PIXELS_PER_MM = 5.6;
/** A finger, mm of the picture. */
const FINGER = 3.6;

/** Goes to the box of a line, and opens what it is folded away in. */
const focusLine = (line: string): void => {
  const box = document.querySelector<HTMLElement>(`[data-line="${CSS.escape(line)}"]`);
  box?.closest('details')?.setAttribute('open', '');
  box?.focus();
};

/** The picture of what to read; a press on a number leads to its box. Keys reach the boxes themselves. */
export function ReadPicture({ picture }: { readonly picture: PlacePicture }) {
  const { plot, spots } = picture;
  const { title, summary, width, height, items } = plot;
  const share = (length: number, of: number): string => `${(length / of) * 100}%`;
  return (
    <figure className="read-picture" style={{ maxWidth: `${Math.round(width * PIXELS_PER_MM)}px` }}>
      <ItemsSvg className="plot" width={width} height={height} items={items} label={`${title}. ${summary}`} />
      {spots.map(({ line, at }) => (
        <button
          key={line}
          type="button"
          className="read-spot"
          tabIndex={-1}
          aria-hidden="true"
          title="Read this line"
          style={{
            left: share(at.x - FINGER, width),
            top: share(at.y - FINGER, height),
            width: share(2 * FINGER, width),
            height: share(2 * FINGER, height),
          }}
          onClick={() => focusLine(line)}
        />
      ))}
    </figure>
  );
}
