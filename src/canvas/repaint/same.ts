/** Whether two plain values hold the same. Stops at the first difference, and goes no deeper where both are one object. */
export const same = (one: unknown, other: unknown): boolean => {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => same(one[key as keyof typeof one], other[key as keyof typeof other]))
  );
};
