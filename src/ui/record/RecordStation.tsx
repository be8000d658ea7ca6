import { AllFields } from '../fields/AllFields';
import { FieldPanel } from '../fields/FieldPanel';
import { InstrumentPanel } from './instrument/InstrumentPanel';
import { KeepingPanel } from './keeping/KeepingPanel';
import { LearnedPanel } from './learned/LearnedPanel';
import { RecordIndex } from './RecordIndex';
import { StringUpPanel } from './stringUp/StringUpPanel';
import { VersionsPanel } from './versions/VersionsPanel';

/** What is kept of the work in hand, and where. */
export function RecordStation() {
  return (
    <AllFields>
      <FieldPanel>
        <RecordIndex />
        <InstrumentPanel />
        <StringUpPanel />
        <LearnedPanel />
        <VersionsPanel />
        <KeepingPanel />
      </FieldPanel>
    </AllFields>
  );
}
