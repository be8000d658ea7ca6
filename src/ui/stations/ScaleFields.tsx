import { READING_COUNT } from '../../core/document/instrumentFields';
import { FieldGroup } from '../fields/FieldGroup';
import { FieldRow } from '../fields/FieldRow';
import { More } from '../fields/More';
import { lazyPanel } from '../lazyPanels';
import { useStore } from '../useStore';
import { SurveyResult } from './SurveyResult';

const OtherFrets = lazyPanel('OtherFrets');
const FIRST_SHOWN = 3;

/** Nut to 12th fret and other frets by rule, and the scale that they show. */
export function ScaleFields() {
  const { scale, nut } = useStore((state) => state.project.instrument);
  const fitted = useStore((state) => state.derived.scale);
  const inUse = fitted.ok && fitted.value.from === 'readings' ? fitted.value.scaleLength : undefined;
  const given = scale.readings.filter(({ fret }) => fret === 12).length;
  const shown = Math.min(READING_COUNT, Math.max(FIRST_SHOWN, given + 1));
  return (
    <FieldGroup id="group-scale" title="Scale" hint="Steel rule on the frets; lift it and lay it again each time.">
      {Array.from({ length: shown }, (_, index) => `instrument.scale.readings.12.${index}`).map((path) => (
        <FieldRow key={path} path={path} />
      ))}
      <FieldRow
        path="instrument.scale.entered"
        instead={inUse}
        note={inUse === undefined && scale.readings.length > 0 ? 'Typed: the readings are set aside.' : undefined}
      />
      <SurveyResult />
      <More summary="Other frets" open={scale.readings.length > given}>
        <OtherFrets />
      </More>
      <FieldRow path="instrument.nut.datum" />
      {nut.datum === 'zero-fret' && <FieldRow path="instrument.nut.face" />}
      <FieldRow path="instrument.nut.offset" />
    </FieldGroup>
  );
}
