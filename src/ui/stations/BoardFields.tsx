import { TAPER_LIMIT } from '../../core/instrument/taper';
import { FieldGroup } from '../fields/FieldGroup';
import { FieldRow } from '../fields/FieldRow';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';

/** The fingerboard's widths, whether it narrows evenly, and where the seam of the top lies against it. */
export function BoardFields() {
  return (
    <FieldGroup id="group-board" title="Fingerboard">
      <FieldRow path="instrument.widths.nut" />
      <FieldRow path="instrument.widths.twelfth" />
      <FieldRow path="instrument.widths.last" />
      <FieldRow path="instrument.frets.count" />
      <Taper />
      <FieldRow path="instrument.frets.bodyJoin" />
      <FieldRow path="instrument.seamOffset" />
      <Seam />
    </FieldGroup>
  );
}

function Taper() {
  const taper = useStore((state) => state.derived.taper);
  const { withUnit } = useLengths();
  if (taper === null) return null;
  if (!taper.ok) return <p className="field-caution">{taper.issues[0]?.message}</p>;
  const { deviation, straight } = taper.value;
  const limit = withUnit(TAPER_LIMIT.value);
  if (straight) return <p className="field-note">The taper is straight within {limit}.</p>;
  return (
    <p className="field-caution">
      The taper is not straight: at the 12th fret the board is {withUnit(Math.abs(deviation))}{' '}
      {deviation > 0 ? 'wider' : 'narrower'} than it should be. Read the three widths again. More than {limit} counts:{' '}
      {TAPER_LIMIT.source}.
    </p>
  );
}

function Seam() {
  const seam = useStore((state) => state.project.instrument.seamOffset);
  const { withUnit } = useLengths();
  if (seam === 0) return null;
  return (
    <p className="field-note">
      The seam lies {withUnit(Math.abs(seam))} to the {seam > 0 ? 'treble' : 'bass'} side at the bridge. The bridge goes
      by the board all the same; the strings run over the board, not over the seam.
    </p>
  );
}
