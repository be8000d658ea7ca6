/** What the library shows of a project without reading all of it. */
export interface LibraryEntry {
  readonly id: string;
  readonly revision: number;
  readonly name: string;
  /** The instrument's number or name; null for a model. */
  readonly serial: string | null;
  /** What it was copied from; null for a design of its own. */
  readonly parent: string | null;
  readonly hand: 'right' | 'left';
  /** As entered or as its readings give it, mm; null while they give none. */
  readonly scale: number | null;
  /** Name of the bridge's shape, or 'drawn'. */
  readonly shape: string;
  readonly strings: number;
  /** Kind of height limits: steel, classical or ukulele. */
  readonly kind: string;
  /** Words of notes, woods and origins, to be searched. */
  readonly words: string;
  readonly pictures: readonly string[];
  /** ISO 8601 instants. */
  readonly created: string;
  readonly changed: string;
  readonly archived: boolean;
}
