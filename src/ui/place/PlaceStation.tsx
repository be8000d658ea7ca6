import type { RoundStage } from '../../core/document/buildTypes';
import { AllFields } from '../fields/AllFields';
import { FieldPanel } from '../fields/FieldPanel';
import { GroupIndex } from '../fields/GroupIndex';
import { goToGroup } from '../fields/goToGroup';
import { useMedia } from '../useMedia';
import { useStore } from '../useStore';
import { BeforeCutting } from './cards/BeforeCutting';
import { FinishCard } from './cards/FinishCard';
import { LocatingCard } from './cards/LocatingCard';
import { GlueCard } from './glue/GlueCard';
import { NARROW } from './narrow';
import { DropFields } from './reading/DropFields';
import { takeInHand } from './reading/inHand';
import { PlaceLimits } from './reading/PlaceLimits';
import { PlaceResult } from './reading/PlaceResult';
import { Readings } from './reading/Readings';
import { Tuned } from './reading/Tuned';
import { usePlace } from './reading/usePlace';
import { TheRun } from './run/TheRun';
import './place.css';

const GROUPS = [
  { id: 'group-readings', name: 'Readings' },
  { id: 'group-tuned', name: 'Loose bridge' },
  { id: 'group-budget', name: 'Before cutting' },
  { id: 'group-locating', name: 'Pins' },
  { id: 'group-finish', name: 'Finish' },
  { id: 'group-glue', name: 'Glue' },
  { id: 'group-run', name: 'The run' },
] as const;

const toReadings = (stage: RoundStage): void => {
  takeInHand({ stage, round: null });
  goToGroup('group-readings');
};

/** The bridge in its place: what was read, and everything until it is glued. */
export function PlaceStation() {
  const place = usePlace();
  const narrow = useMedia(NARROW);
  const issues = useStore((state) => state.derived.issues);
  return (
    <AllFields>
      <FieldPanel>
        <GroupIndex groups={GROUPS} />
        {place === null ? (
          <p className="not-yet">Not computed: {issues.map(({ message }) => message).join(' ')}</p>
        ) : (
          <>
            <Readings place={place} />
            {narrow && (
              <section className="place-view" aria-label="Place">
                <PlaceResult />
              </section>
            )}
            <DropFields place={place} />
            <Tuned place={place} />
            <PlaceLimits />
          </>
        )}
        <BeforeCutting />
        <LocatingCard />
        <FinishCard />
        <GlueCard />
        <TheRun toReadings={toReadings} />
      </FieldPanel>
    </AllFields>
  );
}
