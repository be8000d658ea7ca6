import type { BridgePlace, SaddlePlace, SlotPlace } from '../../bridge/types';
import type { Project } from '../../document/types';
import { sagitta } from '../../height/sagitta';
import { footprintReach } from '../../height/sole/footprintReach';
import type { SideHeights } from '../../height/sole/sideHeights';

/** What a section along the strings is drawn from. */
export interface SectionNeeds {
  readonly project: Pick<Project, 'bridge' | 'height' | 'setup' | 'strings'>;
  readonly heights: SideHeights;
  readonly saddle: SaddlePlace;
  readonly slot: SlotPlace;
  readonly place: BridgePlace;
  readonly scaleLength: number;
  /** Index of the string to cut along; null for the centreline. */
  readonly string: number | null;
}

/** Places of the section: along the strings from the break point, + toward the tail; heights above the sole at mid-width. */
export interface SectionPlaces {
  readonly front: number;
  readonly back: number;
  readonly slotFront: number;
  readonly slotBack: number;
  /** Where the string meets the top of the bridge. */
  readonly run: number;
  /** Middle of the pin hole; null without pins. */
  readonly pin: number | null;
  /** A tie hole: where it begins, and the heights of its lower and upper side; null without ties. */
  readonly tie: { readonly from: number; readonly low: number; readonly high: number } | null;
  readonly face: number;
  readonly floor: number;
  readonly foot: number;
  /** Top of the saddle, and the straightedge. */
  readonly crown: number;
  readonly straightedge: number;
  readonly stringRise: number;
  readonly breakDeg: number;
  /** Height of the sole, and of the top under it. */
  readonly sole: (along: number) => number;
  readonly top: (along: number) => number;
}

/** A figure of the strings at x, straight between one and the next; of the nearest beyond the outer ones. */
const between = (places: readonly { readonly x: number; readonly value: number }[], x: number): number => {
  const sorted = [...places].sort((a, b) => a.x - b.x);
  const next = sorted.findIndex((place) => place.x >= x);
  const [from, to] = [sorted[next - 1], sorted[next]];
  if (to === undefined) return sorted.at(-1)?.value ?? 0;
  if (from === undefined) return to.value;
  return from.value + ((to.value - from.value) * (x - from.x)) / (to.x - from.x);
};

const meanNut = ({ nutHeight }: Project['setup']): number => (nutHeight.treble + nutHeight.bass) / 2;

/** The places of a section; null where it passes beside the bridge. */
export const sectionPlaces = (needs: SectionNeeds): SectionPlaces | null => {
  const { project, heights, saddle, slot, place, scaleLength, string } = needs;
  const { bridge, height, setup } = project;
  const x = string === null ? 0 : (saddle.strings[string]?.x ?? 0);
  const reach = footprintReach(place.footprint.outline, x);
  if (reach === null) return null;
  const breakAt = saddle.centre + saddle.slope * x;
  const from = (y: number): number => y - breakAt;
  const of = (values: readonly number[]): number =>
    between(
      saddle.strings.map((each, index) => ({ x: each.x, value: values[index] ?? 0 })),
      x,
    );
  const { chain, airspace } = heights;
  const proud = of(chain.strings.map((each) => each.proud));
  const overFrets = of(chain.strings.map((each) => each.height));
  const pins = [...place.pins].sort((a, b) => Math.abs(a.centre.x - x) - Math.abs(b.centre.x - x));
  const pin = pins[0];
  const { sole, thickness, ties } = bridge;
  const slotBack = from(slot.back + saddle.slope * x);
  const middle = from((reach.front + reach.back) / 2);
  const floor = thickness - bridge.slot.depth;
  const dome = sole?.top.along ?? null;
  const hollow = sole?.along ?? null;
  const half = (reach.back - reach.front) / 2;
  // The flatter of the two touches the rounder: in the middle, or at both edges.
  const lift = Math.max(0, sagitta(hollow, half) - sagitta(dome, half));
  return {
    front: from(reach.front),
    back: from(reach.back),
    slotFront: from(slot.front + saddle.slope * x),
    slotBack,
    run: height.run,
    pin: pin === undefined ? null : from(pin.centre.y),
    tie:
      ties === null
        ? null
        : { from: slotBack + ties.from, low: ties.rise - ties.hole / 2, high: ties.rise + ties.hole / 2 },
    face: thickness - sagitta(sole?.face ?? null, x),
    floor,
    foot: floor + height.pickup,
    crown: thickness + proud,
    straightedge: thickness + airspace,
    stringRise: (overFrets - meanNut(setup)) / scaleLength,
    breakDeg: (Math.atan2(proud, height.run) * 180) / Math.PI,
    sole: (along) => 0 - sagitta(hollow, along - middle),
    top: (along) => 0 - lift - sagitta(dome, along - middle),
  };
};
