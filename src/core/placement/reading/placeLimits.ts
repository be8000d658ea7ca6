/** How far a bridge may sit off and be left, and where that figure comes from. */
export interface PlaceLimit {
  readonly label: string;
  /** mm, or radians for the turn. */
  readonly value: number;
  readonly source: string;
}

const CHOICE = 'an engineering choice, no source';

/** Tolerances to start from, by the name of their limit; the maker's own stand in the project's limits. */
export const PLACE_LIMITS = {
  placeSideways: { label: 'Sideways, most', value: 0.25, source: CHOICE },
  placeAlong: {
    label: 'Fore and aft, most',
    value: 0.4,
    source: `about a cent at the 12th fret of a guitar: ${CHOICE}`,
  },
  placeTurn: { label: 'Turned, most', value: (0.15 * Math.PI) / 180, source: CHOICE },
} as const satisfies Readonly<Record<string, PlaceLimit>>;

export type PlaceLimitName = keyof typeof PLACE_LIMITS;

/** The tolerance in use. */
export const placeLimit = (name: PlaceLimitName, own: Readonly<Record<string, number>>): number =>
  own[name] ?? PLACE_LIMITS[name].value;
