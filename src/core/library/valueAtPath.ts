/** What stands at a path of a plain value: "bridge.pins"; undefined where there is nothing. */
export const valueAtPath = (tree: unknown, path: string): unknown => {
  let at = tree;
  for (const key of path.split('.')) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, key)) return undefined;
    at = (at as Readonly<Record<string, unknown>>)[key];
  }
  return at;
};

/** Paths at which two plain values differ, down to what holds nothing more or is missing in one of them. */
export const differingPaths = (one: unknown, other: unknown, path = ''): readonly string[] => {
  if (Object.is(one, other)) return [];
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return [path];
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].flatMap((key) =>
    differingPaths(valueAtPath(one, key), valueAtPath(other, key), path === '' ? key : `${path}.${key}`),
  );
};
