import type { Compensation, HeightKindName, ShapeName, TrebleBass } from '../document/types';

/** What a kind of instrument starts from; measuring the instrument beats all of it. Lengths mm. */
export interface KindRow {
  readonly id: string;
  readonly name: string;
  readonly shape: ShapeName;
  readonly stringSet: string;
  readonly scaleLength: number;
  readonly frets: { readonly count: number; readonly bodyJoin: number };
  readonly widths: { readonly nut: number; readonly twelfth: number };
  readonly boardRadius: number | null;
  readonly margin: number;
  readonly spread: number;
  readonly action: TrebleBass;
  readonly nutHeight: TrebleBass;
  readonly relief: number;
  readonly rule: Compensation['rule'];
  readonly height: { readonly kind: HeightKindName; readonly run: number };
  readonly thickness: number;
  readonly slotDepth: number;
  /**
   * Slot to pin row, a second row behind the first (0 for one row), and the outer spacing where the shape's usual one does
   * not suit the strings; for bridges with pins.
   */
  readonly pins: { readonly from: number; readonly stagger: number; readonly spread?: number };
}
