import { FieldGroup } from '../../fields/FieldGroup';
import { FieldRow } from '../../fields/FieldRow';
import { useStore } from '../../useStore';
import { MadeFrom } from './MadeFrom';
import { MakeInstrument } from './MakeInstrument';
import { NotesBox } from './NotesBox';
import { Photos } from './Photos';
import { WoodRows } from './WoodRows';
import './instrument.css';

/** What is told of the model or the one instrument in hand, beyond its figures. */
export function InstrumentPanel() {
  const build = useStore((state) => state.project.build);
  return (
    <FieldGroup id="this-work" title={build === null ? 'This model' : 'This instrument'}>
      <FieldRow path="about.name" />
      {build === null ? <MakeInstrument /> : <FieldRow path="build.serial" usual="not numbered yet" />}
      <MadeFrom />
      {build !== null && <WoodRows woods={build.woods} />}
      <NotesBox />
      <Photos />
    </FieldGroup>
  );
}
