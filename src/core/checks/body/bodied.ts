import type { BodyPlace } from '../../body/types';
import type { BridgePlace, SlotPlace } from '../../bridge/types';
import type { Body } from '../../document/bodyTypes';
import type { Bridge, Hand } from '../../document/types';

/** What the checks beneath the bridge look at; all in the instrument frame, whichever hand the body was built for. */
export interface Bodied {
  readonly body: Body;
  readonly place: BodyPlace;
  readonly design: Bridge;
  readonly bridge: BridgePlace;
  readonly slot: SlotPlace;
  readonly hand: Hand;
  /** The maker's own. */
  readonly limits: Readonly<Record<string, number>>;
}
