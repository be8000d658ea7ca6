import { isConverted } from '../body/bodyHand';
import { bodyPlace } from '../body/bodyPlace';
import { mirrorBody } from '../body/mirrorBody';
import { soundholeReach } from '../body/soundholeReach';
import type { BodyPlace, Reach } from '../body/types';
import { bodyChecks } from '../checks/body/bodyChecks';
import type { DesignCheck } from '../checks/types';
import type { Body } from '../document/bodyTypes';
import type { Bridge, Hand, Project } from '../document/types';
import { remember } from './remember';
import type { Derived } from './types';

/** What lies beneath and around the bridge. */
export interface BodyStep {
  /** As it was built, body frame: what is drawn. */
  readonly built: BodyPlace;
  /** The same in the instrument frame: what the bridge is held against. */
  readonly place: BodyPlace;
  /** From the soundhole; none without one, or without a bridge. */
  readonly reach: readonly Reach[];
  readonly checks: readonly DesignCheck[];
}

/** That, remembered by what it needs; null while nothing was said of the body. Total. */
export const createBodyStep = (): ((project: Project, derived: Derived) => BodyStep | null) => {
  const builtStep = remember(bodyPlace);
  const placeStep = remember(
    (built: BodyPlace, converted: boolean): BodyPlace => (converted ? mirrorBody(built) : built),
  );
  const step = remember(
    (
      body: Body,
      built: BodyPlace,
      place: BodyPlace,
      design: Bridge,
      hand: Hand,
      limits: Project['limits'],
      bridge: Derived['bridge'],
      slot: Derived['slot'],
    ): BodyStep => {
      if (!bridge.ok || !slot.ok) return { built, place, reach: [], checks: [] };
      const whole = { body, place, design, hand, limits, bridge: bridge.value, slot: slot.value };
      const { soundhole } = place;
      return {
        built,
        place,
        reach: soundhole === null ? [] : soundholeReach(soundhole, bridge.value, slot.value),
        checks: bodyChecks(whole),
      };
    },
  );
  return ({ body, bridge: design, instrument: { hand }, limits }, { bridge, slot }) => {
    if (body === null) return null;
    const built = builtStep(body);
    const place = placeStep(built, isConverted(body, hand));
    return step(body, built, place, design, hand, limits, bridge, slot);
  };
};
