/** An entity of a DXF by hand: its kind and its values by group code, in their order. */
export interface ReadEntity {
  readonly kind: string;
  readonly groups: readonly (readonly [code: number, value: string])[];
}

const pairsOf = (text: string): readonly (readonly [code: number, value: string])[] => {
  const lines = text.split('\n');
  return Array.from({ length: Math.floor(lines.length / 2) }, (_, pair) => [
    Number(lines[2 * pair]),
    lines[2 * pair + 1] ?? '',
  ]);
};

const groupedByZero = (pairs: readonly (readonly [number, string])[]): ReadEntity[] => {
  const entities: { kind: string; groups: (readonly [number, string])[] }[] = [];
  for (const pair of pairs) {
    if (pair[0] === 0) entities.push({ kind: pair[1], groups: [] });
    else entities.at(-1)?.groups.push(pair);
  }
  return entities;
};

/** What stands between "SECTION, name" and "ENDSEC". */
export const sectionOf = (text: string, name: string): readonly ReadEntity[] => {
  const all = groupedByZero(pairsOf(text));
  const start = all.findIndex(({ kind, groups }) => kind === 'SECTION' && groups[0]?.[1] === name);
  const end = all.findIndex(({ kind }, at) => at > start && kind === 'ENDSEC');
  return start < 0 ? [] : all.slice(start, end);
};

/** All values of a code, in their order. */
export const valuesOf = ({ groups }: ReadEntity, code: number): readonly string[] =>
  groups.flatMap(([other, value]) => (other === code ? [value] : []));

export const numbersOf = (entity: ReadEntity, code: number): readonly number[] => valuesOf(entity, code).map(Number);

/** The values of a header variable. */
export const headerOf = (text: string, variable: string): readonly string[] => {
  const [header] = sectionOf(text, 'HEADER');
  const groups = header?.groups ?? [];
  const at = groups.findIndex(([code, value]) => code === 9 && value === variable);
  const next = groups.findIndex(([code], other) => other > at && code === 9);
  return at < 0 ? [] : groups.slice(at + 1, next < 0 ? undefined : next).map(([, value]) => value);
};
