import { Fragment, useEffect, useState } from 'react';
import { braceName, bracePart } from '../../../core/body/bodyPlace';
import { nearestBrace } from '../../../core/checks/body/nearestBrace';
import { reamed } from '../../../core/checks/mouths';
import type { Body } from '../../../core/document/bodyTypes';
import { addBrace } from '../../../store/commands/body/addBrace';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { useChange } from '../repair/useChange';
import { BraceEdit } from './BraceEdit';

/** Wood from each brace to the nearest pin hole as it is reamed, by the brace's id; none without pins. */
const usePinGaps = (): ReadonlyMap<string, number> => {
  const place = useStore((state) => state.around?.body?.place ?? null);
  const pins = useStore((state) => state.project.bridge.pins);
  const { bridge } = useStore((state) => state.derived);
  if (place === null || pins === null || !bridge.ok) return new Map();
  const holes = reamed(pins, bridge.value.pins);
  return new Map(
    place.braces.flatMap((brace): readonly (readonly [string, number])[] => {
      const nearest = nearestBrace([brace], holes);
      return nearest === null ? [] : [[brace.id, nearest.wall]];
    }),
  );
};

/** Every brace in one line; the one that is chosen here or in the drawing is open beneath its line. */
export function BraceList({ body }: { readonly body: Body }) {
  const { actions } = useServices().store;
  const change = useChange();
  const { bare, style } = useLengths();
  const gaps = usePinGaps();
  const [open, setOpen] = useState<string | null>(null);
  const picked = useStore((state) =>
    body.braces.find((brace, index) => state.selection[0] === bracePart(brace, index)),
  );
  const pickedId = picked?.id ?? null;
  useEffect(() => {
    if (pickedId !== null) setOpen(pickedId);
  }, [pickedId]);
  const pins = gaps.size > 0;
  return (
    <>
      {body.braces.length > 0 && (
        <table className="figures small-figures braces">
          <caption>Braces{pins ? `, and wood from each to the nearest pin hole, ${style.unit}` : ''}</caption>
          <thead>
            <tr>
              <th scope="col">Brace</th>
              {pins && <th scope="col">To a pin</th>}
              <th scope="col">
                <span className="for-readers">Change</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {body.braces.map((brace, index) => {
              const { id, read } = brace;
              const name = braceName(brace, index);
              const gap = gaps.get(id);
              const shown = open === id;
              return (
                <Fragment key={id}>
                  <tr>
                    <th scope="row">
                      {name}
                      {!read && <small>not found yet</small>}
                    </th>
                    {pins && <td>{gap === undefined ? '' : bare(gap)}</td>}
                    <td>
                      <button
                        type="button"
                        aria-expanded={shown}
                        aria-label={`${shown ? 'Close' : 'Change'} ${name}, brace ${index + 1}`}
                        onClick={() => {
                          setOpen(shown ? null : id);
                          actions.select(shown ? [] : [bracePart(brace, index)]);
                        }}
                      >
                        {shown ? 'Close' : 'Change'}
                      </button>
                    </td>
                  </tr>
                  {shown && (
                    <tr className="brace-open">
                      <td colSpan={pins ? 3 : 2}>
                        <BraceEdit body={body} brace={brace} index={index} />
                      </td>
                    </tr>
                  )}
                </Fragment>
              );
            })}
          </tbody>
        </table>
      )}
      <div className="buttons">
        <button type="button" onClick={() => change('One brace more', addBrace)}>
          One brace more
        </button>
      </div>
    </>
  );
}
