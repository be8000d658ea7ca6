import type { Dice } from '../../store/random/dice';

type Group = Record<string, unknown>;

const isGroup = (value: unknown): value is Group => typeof value === 'object' && value !== null;

/** A value to stand where another one was expected. */
const anyValue = (dice: Dice): unknown =>
  dice.of<() => unknown>([
    () => null,
    () => true,
    () => '',
    () => 'x'.repeat(1 + dice.below(30_000)),
    () => '<img src=x onerror=alert(1)>',
    () => '2026-13-45T99:99:99.999Z',
    () => [],
    () => ({}),
    () => ({ length: 3 }),
    () => Array.from({ length: dice.below(6000) }, () => 0),
    () => 0,
    () => -1,
    () => 0.5,
    () => 1e308,
    () => 5e-324,
    () => 2 ** 53,
    () => dice.within(1000),
  ])?.();

/** Every group and list within a value, itself among them. */
const groupsOf = (value: unknown): Group[] =>
  isGroup(value) ? [value, ...Object.values(value).flatMap(groupsOf)] : [];

/** Sets a key that may be __proto__, as JSON.parse does it and an assignment does not. */
const put = (group: Group, key: string, value: unknown): void => {
  Object.defineProperty(group, key, { value, enumerable: true, configurable: true, writable: true });
};

const damage = (root: unknown, dice: Dice): void => {
  const groups = groupsOf(root);
  const [group, other] = [dice.of(groups), dice.of(groups)];
  if (group === undefined || other === undefined) return;
  const key = dice.of(Object.keys(group));
  const otherKey = dice.of(Object.keys(other));
  if (key === undefined || otherKey === undefined) return;
  switch (dice.below(8)) {
    case 0:
    case 1:
    case 2:
      put(group, key, anyValue(dice));
      return;
    case 3:
      if (Array.isArray(group)) group.splice(Number(key), 1);
      else Reflect.deleteProperty(group, key);
      return;
    case 4: {
      const value = structuredClone(other[otherKey]);
      put(group, key, value);
      return;
    }
    case 5: {
      const [one, two] = [structuredClone(group[key]), structuredClone(other[otherKey])];
      put(group, key, two);
      put(other, otherKey, one);
      return;
    }
    case 6:
      if (Array.isArray(group)) group.push(...structuredClone(group));
      else put(group, dice.of(['__proto__', 'constructor', 'toString', 'id', 'later', '0']) ?? '', anyValue(dice));
      return;
    default: {
      const value = group[key];
      put(group, key, typeof value === 'number' ? value * (dice.of([-1, 0.999, 1.001, 1.1, 10, 1e9]) ?? 1) : value);
    }
  }
};

/** JSON text whose values have been damaged one to three times; the text itself stays well-formed. */
export const damagedJson = (text: string, dice: Dice): string => {
  const root: unknown = JSON.parse(text);
  for (let left = 1 + dice.below(3); left > 0; left--) damage(root, dice);
  return JSON.stringify(root);
};
