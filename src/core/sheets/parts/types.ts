import type { Around } from '../../derive/createAround';
import type { Areas } from '../../derive/deriveAreas';
import type { Derived } from '../../derive/types';
import type { Project } from '../../document/types';
import type { Item } from '../../drawing/types';
import type { Result } from '../../result';
import type { LengthStyle } from '../../units/formatLength';

/** All that a sheet can tell. areas and around: null where they could not be had. */
export interface SheetContext {
  readonly project: Project;
  readonly derived: Derived;
  readonly around: Around | null;
  readonly areas: Areas | null;
  readonly style: LengthStyle;
  /** ISO date of issue. */
  readonly date: string;
}

/** One drawing at true size, before it is laid on a page. */
export interface SheetPart {
  /** Stable and unique in its document: "window", "caul-plate". */
  readonly id: string;
  /** As its title on the page: "Inside caul, PLATE FACE". */
  readonly name: string;
  /** Room that it takes, mm; every item lies within, origin at the top left, y down. */
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
  /** Never cut over two pages: what is of the bridge, and cards. Others are, joined by marks, where no page holds them. */
  readonly whole: boolean;
}

/** A kind of sheet that a maker can tick. */
export interface SheetKind {
  readonly id: string;
  readonly name: string;
  /** One plain sentence: what it is for. */
  readonly about: string;
  /** Its drawings; none, or a failure with the reason, where this instrument has no such sheet. */
  readonly make: (context: SheetContext) => Result<readonly SheetPart[]>;
}
