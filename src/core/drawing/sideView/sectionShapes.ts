import type { Item } from '../types';
import type { SectionPlaces } from './sectionPlace';
import { at, sideLine, sideShape, steps } from './sideItems';

/** How far the top and the string run on ahead of the bridge, and the top behind it, mm. */
const AHEAD = 14;
const BEHIND = 10;
/** How far a pin hole goes on into the top, mm. */
const INTO_TOP = 1.5;
const COUNT = 24;
/** How far the saddle's faces end below its crown, as a share of its thickness: rounded off to be looked at. */
const CROWN_FALL = 0.15;

/** Top, bridge with its slot, saddle, string, straightedge, and pin or tie hole. draft radians; hole: of the pin, mm; gauge: of the string. */
export const sectionShapes = (
  places: SectionPlaces,
  { draft, hole, clearance }: { readonly draft: number; readonly hole: number; readonly clearance: number },
): readonly Item[] => {
  const { front, back, slotFront, slotBack, face, floor, foot, crown, straightedge, run, pin, tie } = places;
  const lean = face * Math.tan(draft);
  const thinner = clearance / 2;
  const shoulder = crown - CROWN_FALL * (slotBack - slotFront);
  const ahead = front - AHEAD;
  const [leave, enter] = [at(0, crown), at(run, face)];
  return [
    sideLine(
      'top',
      'top',
      'outline',
      ...steps(ahead, back + BEHIND, COUNT).map((along) => at(along, places.top(along))),
    ),
    sideShape(
      'bridge',
      'bridge',
      'outline',
      ...steps(back, front, COUNT).map((along) => at(along, places.sole(along))),
      at(front + lean, face),
      at(slotFront, face),
      at(slotFront, floor),
      at(slotBack, floor),
      at(slotBack, face),
      at(back - lean, face),
    ),
    sideShape(
      'saddle',
      'saddle',
      'slot',
      at(slotFront + thinner, foot),
      at(slotFront + thinner, shoulder),
      leave,
      at(slotBack - thinner, shoulder),
      at(slotBack - thinner, foot),
    ),
    sideLine('straightedge', 'straightedge', 'rule-line', at(ahead, straightedge), at(slotFront, straightedge)),
    sideLine('string', 'string', 'string-line', at(ahead, crown + places.stringRise * ahead), leave, enter),
    ...(tie === null
      ? []
      : [tie.low, tie.high].map((height, index) =>
          sideLine(`tie-${index === 0 ? 'low' : 'high'}`, 'tie', 'beneath', at(tie.from, height), at(back, height)),
        )),
    ...(pin === null
      ? []
      : [-1, 1].map((side) =>
          sideLine(
            `pin-${side < 0 ? 'front' : 'back'}`,
            'pin',
            'beneath',
            at(pin + (side * hole) / 2, face),
            at(pin + (side * hole) / 2, places.top(pin) - INTO_TOP),
          ),
        )),
  ];
};
