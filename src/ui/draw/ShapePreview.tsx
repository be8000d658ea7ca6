import { type CSSProperties, useEffect, useMemo, useState } from 'react';
import { SHAPE_PARAMETERS } from '../../core/document/shapeParameters';
import { handedPicture } from '../../core/drawing/shapePreview/handedPicture';
import { itemBounds } from '../../core/drawing/shapePreview/itemBounds';
import { shapePreview } from '../../core/drawing/shapePreview/shapePreview';
import type { ShapePreview as Picture } from '../../core/drawing/shapePreview/types';
import type { Item } from '../../core/drawing/types';
import { lengthText } from '../../store/fieldText';
import { ItemsSvg } from '../items/ItemsSvg';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import '../style/draw.css';

/** Room for a finger about the words of a dimension, mm of the picture. */
const ABOUT_WORDS = 1.2;

/** Where the field that has the focus lives in the project; null while none has. */
const useFocusedPath = (): string | null => {
  const [path, setPath] = useState<string | null>(null);
  useEffect(() => {
    const follow = ({ target }: FocusEvent): void =>
      setPath(target instanceof HTMLElement ? (target.dataset.path ?? null) : null);
    const leave = (): void => setPath(null);
    document.addEventListener('focusin', follow);
    document.addEventListener('focusout', leave);
    return () => {
      document.removeEventListener('focusin', follow);
      document.removeEventListener('focusout', leave);
    };
  }, []);
  return path;
};

/** Where words lie in a picture, as shares of it. */
const placeOf = (item: Item, { width, height }: Picture): CSSProperties => {
  const { minX, minY, maxX, maxY } = itemBounds(item);
  const share = (length: number, of: number): string => `${(100 * length) / of}%`;
  return {
    left: share(minX - ABOUT_WORDS, width),
    top: share(minY - ABOUT_WORDS, height),
    width: share(maxX - minX + 2 * ABOUT_WORDS, width),
    height: share(maxY - minY + 2 * ABOUT_WORDS, height),
  };
};

const focusField = (path: string | undefined): void => {
  const boxes = document.querySelectorAll<HTMLInputElement>('input[data-path]');
  [...boxes].find((box) => box.dataset.path === path)?.focus();
};

/**
 * The chosen shape with its dimensions; that of the field in hand stands out, and a press on a figure goes to its field.
 * Nothing for an outline that is drawn freely.
 */
export function ShapePreview() {
  const outline = useStore((state) => state.project.bridge.outline);
  const hand = useStore((state) => state.project.instrument.hand);
  const { style } = useLengths();
  const focused = useFocusedPath();
  const picture = useMemo(() => {
    if (outline.kind === 'drawn') return null;
    // The figures of the boxes. Millimetres need no sign in a drawing; inches have theirs.
    const made = shapePreview(outline, (mm) => `${lengthText(mm, style)}${style.unit === 'in' ? '″' : ''}`);
    return made.ok ? handedPicture(hand, made.value) : null;
  }, [outline, hand, style]);
  if (outline.kind === 'drawn') return null;
  if (picture === null) return <p className="not-yet">These dimensions do not make a bridge: see the design checks.</p>;

  const { width, height, items, title, summary } = picture;
  const rows = SHAPE_PARAMETERS[outline.shape];
  const picked = rows.find(({ path }) => path === focused)?.name;
  return (
    <figure className="shape-preview" aria-label={title}>
      <div>
        <ItemsSvg
          className="shape-picture"
          width={width}
          height={height}
          items={items.filter(({ part }) => part !== picked)}
          label={`${title}. ${summary}`}
        />
        {/* For the pointer alone: the fields themselves stand right below, under the same names. */}
        <div aria-hidden="true">
          <ItemsSvg
            className="shape-picked"
            width={width}
            height={height}
            items={items.filter(({ part }) => part === picked)}
            label={title}
          />
          {items.map((item) =>
            item.kind === 'text' ? (
              <button
                key={item.id}
                type="button"
                tabIndex={-1}
                style={placeOf(item, picture)}
                onClick={() => focusField(rows.find(({ name }) => name === item.part)?.path)}
              />
            ) : null,
          )}
        </div>
      </div>
    </figure>
  );
}
