import { FIELDS, READING_COUNT } from '../../core/document/fieldTable';
import { FieldGroup } from '../fields/FieldGroup';
import { FieldPanel } from '../fields/FieldPanel';
import { FieldRow } from '../fields/FieldRow';
import { Sources } from '../fields/Sources';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { CompensationFields } from './CompensationFields';
import { StringSetSelect } from './StringSetSelect';

const READINGS = Array.from({ length: READING_COUNT }, (_, index) => `instrument.scale.readings.${index}`);

/** What the maker measured, and what the strings are to do. */
export function MeasureStation() {
  const { instrument } = useStore((state) => state.project);
  return (
    <FieldPanel>
      <FieldGroup title="Instrument">
        <FieldRow path="about.name" />
      </FieldGroup>
      <FieldGroup title="Scale" hint="Steel rule on the frets; lift it and lay it again for each reading.">
        {READINGS.map((path) => (
          <FieldRow key={path} path={path} />
        ))}
        <ScaleLength />
        <FieldRow path="instrument.nut.datum" />
        {instrument.nut.datum === 'zero-fret' && <FieldRow path="instrument.nut.face" />}
        <FieldRow path="instrument.nut.offset" />
      </FieldGroup>
      <FieldGroup title="Fingerboard">
        <FieldRow path="instrument.widths.nut" />
        <FieldRow path="instrument.widths.twelfth" />
        <FieldRow path="instrument.frets.bodyJoin" />
      </FieldGroup>
      <FieldGroup title="Strings">
        <StringSetSelect />
        <FieldRow path="instrument.spread.own" />
        <FieldRow path="instrument.spread.from" />
        <FieldRow path="instrument.margins.treble" />
        <FieldRow path="instrument.margins.bass" />
        <FieldRow path="instrument.gapRule" />
      </FieldGroup>
      <CompensationFields />
      <FieldGroup title="Set-up wanted">
        <FieldRow path="setup.action.treble" />
        <FieldRow path="setup.action.bass" />
        <FieldRow path="setup.relief" />
      </FieldGroup>
      <Sources fields={FIELDS.measure} />
    </FieldPanel>
  );
}

/** The scale in use: the maker's figure, or what the readings say. */
function ScaleLength() {
  const { scale } = useStore((state) => state.derived);
  const readings = useStore((state) => state.project.instrument.scale.readings.length);
  const { withUnit } = useLengths();
  const measured = scale.ok && scale.value.from === 'readings' ? scale.value : null;
  const note =
    measured === null
      ? readings > 0
        ? 'Typed: the readings are set aside.'
        : undefined
      : measured.readings < 2
        ? 'From one reading; two more would show how sure it is.'
        : `Twice the mean of ${measured.readings} readings, which spread ${withUnit(measured.readingSpread)}.`;
  return <FieldRow path="instrument.scale.entered" instead={measured?.scaleLength} note={note} />;
}
