import type { PlotPicture } from '../../../core/drawing/plots/types';
import { itemBounds } from '../../../core/drawing/shapePreview/itemBounds';
import type { Item } from '../../../core/drawing/types';
import { ItemsSvg } from '../../items/ItemsSvg';

/** Room for a finger around a figure, mm of the picture. */
const AROUND = 0.8;

/** As large as its words read well. */
const PIXELS_PER_MM = 5.4;
/** Smaller they would not: a narrow screen scrolls instead. */
const LEAST_PIXELS = 3.2;

/** The part of a figure that can be changed is the path of its field. */
const isFigure = (item: Item): boolean => item.kind === 'text' && item.part.includes('.');

/** The field of a figure, in the same dialog or on the same page. */
const focusField = (from: HTMLElement, path: string): void => {
  const place = from.closest('dialog') ?? document;
  place.querySelector<HTMLElement>(`[data-path="${CSS.escape(path)}"]`)?.focus();
};

/** A side view; a press on a figure leads to its field. Keys reach the fields themselves. */
export function EditablePicture({ picture }: { readonly picture: PlotPicture }) {
  const { title, summary, width, height, items } = picture;
  const share = (length: number, of: number): string => `${(length / of) * 100}%`;
  return (
    <figure className="side-picture">
      <h3>{title}</h3>
      <div
        className="side-drawing"
        style={{
          maxWidth: `${Math.round(width * PIXELS_PER_MM)}px`,
          minWidth: `${Math.round(width * LEAST_PIXELS)}px`,
        }}
      >
        <ItemsSvg className="plot" width={width} height={height} items={items} label={`${title}. ${summary}`} />
        {items.filter(isFigure).map((item) => {
          const { minX, minY, maxX, maxY } = itemBounds(item);
          return (
            <button
              key={item.id}
              type="button"
              className="side-figure"
              tabIndex={-1}
              aria-hidden="true"
              title="Change this figure"
              style={{
                left: share(minX - AROUND, width),
                top: share(minY - AROUND, height),
                width: share(maxX - minX + 2 * AROUND, width),
                height: share(maxY - minY + 2 * AROUND, height),
              }}
              onClick={({ currentTarget }) => focusField(currentTarget, item.part)}
            />
          );
        })}
      </div>
    </figure>
  );
}
