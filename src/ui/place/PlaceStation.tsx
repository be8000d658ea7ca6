import type { RoundStage } from '../../core/document/buildTypes';
import { AllFields } from '../fields/AllFields';
import { FieldPanel } from '../fields/FieldPanel';
import { useMedia } from '../useMedia';
import { useStore } from '../useStore';
import { BeforeCutting } from './cards/BeforeCutting';
import { FinishCard } from './cards/FinishCard';
import { LocatingCard } from './cards/LocatingCard';
import { GlueCard } from './glue/GlueCard';
import { NARROW } from './narrow';
import { goToGroup, PlaceIndex } from './PlaceIndex';
import { DropFields } from './reading/DropFields';
import { takeInHand } from './reading/inHand';
import { PlaceLimits } from './reading/PlaceLimits';
import { PlaceResult } from './reading/PlaceResult';
import { Readings } from './reading/Readings';
import { Tuned } from './reading/Tuned';
import { usePlace } from './reading/usePlace';
import { TheRun } from './run/TheRun';
import './place.css';

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
        <PlaceIndex />
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
