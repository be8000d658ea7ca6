import type { DrillRow } from './drillRows';

/** In which order these holes are drilled. */
export const drillOrder = (rows: readonly Pick<DrillRow, 'id'>[]): readonly string[] => {
  const has = (wanted: DrillRow['id']): boolean => rows.some(({ id }) => id === wanted);
  return [
    ...(has('ties') ? ['string holes along the bridge, before it is glued'] : []),
    'first locating hole, through the bridge where it is taped',
    'its pin in, read by rule again',
    'second locating hole, its pin in',
    ...(has('pins') ? ['pilots of the pins once the glue is hard', 'ream each to its own pin'] : []),
    ...(has('wire') ? ['wire hole last, into the slot'] : []),
  ];
};

/** Which of the nearest drills to take. */
export const DRILL_CHOICE =
  'Beside each drill: how much larger it is than the hole. Of two, take the smaller: a hole can be opened, not closed. Try the drill in waste with the pin itself.';

/** What to beware of. */
export const DRILL_CAUTION =
  'Find braces and plate first, with mirror and light. Back up the plate with a block, never with a hand. Drill slowly, square to the top, stop set. Dust: extraction and a respirator. Labels and local rules come before this card.';
