import type { Derived } from '../../../derive/types';
import type { Project, TrebleBass } from '../../../document/types';
import { boardWidthAt } from '../../../instrument/boardOf';
import { edgeMargins, type OuterString } from '../../../instrument/edgeMargins';
import { fretDistance } from '../../../instrument/fretDistance';

/** Board edge to the outside of both outer strings at the last fret, mm; null while the instrument is not whole. */
export const lastFretMargins = (
  { instrument, strings }: Project,
  { scale, board, saddle, strings: places }: Derived,
): TrebleBass | null => {
  if (!scale.ok || !board.ok || !saddle.ok || !places.ok) return null;
  const outer = (index: number): OuterString | null => {
    const [place, string] = [places.value.at(index), strings.at(index)];
    return place === undefined || string === undefined
      ? null
      : { nutX: place.nutX, saddleX: place.saddleX, diameter: string.diameter };
  };
  const [treble, bass] = [outer(0), outer(-1)];
  if (treble === null || bass === null) return null;
  const y = fretDistance(scale.value.scaleLength, instrument.frets.count) + scale.value.nutOffset;
  const width = instrument.widths.last ?? boardWidthAt(board.value, y);
  return edgeMargins(treble, bass, saddle.value.centre, { y, width });
};
