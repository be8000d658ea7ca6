import type { Ties } from '../../../core/document/types';
import { FieldRow } from '../../fields/FieldRow';
import { useLengths } from '../../useLengths';
import { drillNote } from '../drillNote';

/** The string holes of a tie block or of a back edge. */
export function TieRows({ ties }: { readonly ties: Ties }) {
  const { style } = useLengths();
  return (
    <>
      <FieldRow path="bridge.ties.spread" />
      <FieldRow path="bridge.ties.from" />
      <FieldRow path="bridge.ties.hole" note={drillNote(ties.hole, style.unit)} />
      <FieldRow path="bridge.ties.rise" />
    </>
  );
}
