import type { SheetPart } from '../../../../src/core/sheets/parts/types';
import { itemOf } from './partCase';

/** A text of a part by the end of its id. */
export const textOf = (part: SheetPart, id: string): string => {
  const item = itemOf(part, id);
  if (item.kind !== 'text') throw new Error(`${id} is no text.`);
  return item.text;
};

/** The cells of a row in a table of a part, without its name. */
export const cellsOf = (part: SheetPart, table: string, row: string): readonly string[] => {
  const start = `${part.id}-${table}-${row}-`;
  return part.items.flatMap((item) =>
    item.kind === 'text' && item.id.startsWith(start) && /^[1-9]\d*$/.test(item.id.slice(start.length))
      ? [item.text]
      : [],
  );
};
