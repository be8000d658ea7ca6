import { FieldRow } from '../fields/FieldRow';

interface LimitRowProps {
  /** As in the project's limits. */
  readonly name: string;
  /** What counts while the maker set none, and where that comes from. */
  readonly usual: string;
  readonly source: string;
}

/** One limit of the maker's, with the usual figure and its source. */
export function LimitRow({ name, usual, source }: LimitRowProps) {
  return <FieldRow path={`limits.${name}`} usual={usual} note={`Usual ${usual}: ${source}.`} />;
}
