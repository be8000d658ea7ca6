import { AllFields } from '../fields/AllFields';
import { FieldPanel } from '../fields/FieldPanel';
import { GroupIndex } from '../fields/GroupIndex';
import { InstrumentPanel } from './instrument/InstrumentPanel';
import { KeepingPanel } from './keeping/KeepingPanel';
import { LearnedPanel } from './learned/LearnedPanel';
import { StringUpPanel } from './stringUp/StringUpPanel';
import { VersionsPanel } from './versions/VersionsPanel';

const GROUPS = [
  { id: 'this-work', name: 'This one' },
  { id: 'string-ups', name: 'String-ups' },
  { id: 'what-to-expect', name: 'Next time' },
  { id: 'versions', name: 'Versions' },
  { id: 'keeping', name: 'Keeping' },
  { id: 'library', name: 'Library' },
] as const;

/** What is kept of the work in hand, and where. */
export function RecordStation() {
  return (
    <AllFields>
      <FieldPanel>
        <GroupIndex groups={GROUPS} />
        <InstrumentPanel />
        <StringUpPanel />
        <LearnedPanel />
        <VersionsPanel />
        <KeepingPanel />
      </FieldPanel>
    </AllFields>
  );
}
