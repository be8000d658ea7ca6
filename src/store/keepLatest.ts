import { remember } from '../core/derive/remember';

interface Kept<Answer> {
  readonly order: number;
  readonly answer: Answer | null;
}

/**
 * A function that asks once for what takes its time and answers with the newest answer that came, null before the first;
 * while a new one is under way that is the one before. `arrived` is called when an answer comes, unless a later one came
 * first. work: never rejects.
 */
export const keepLatest = <Arguments extends readonly unknown[], Answer>(
  work: (...args: Arguments) => Promise<Answer>,
  arrived: () => void,
): ((...args: Arguments) => Answer | null) => {
  let newest: Kept<Answer> = { order: 0, answer: null };
  let count = 0;
  const ask = remember((...args: Arguments): void => {
    count += 1;
    const order = count;
    work(...args).then((answer) => {
      if (order < newest.order) return;
      newest = { order, answer };
      arrived();
    });
  });
  return (...args) => {
    ask(...args);
    return newest.answer;
  };
};
