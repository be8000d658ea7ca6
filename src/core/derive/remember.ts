/** The same function, which keeps its last arguments and answer and works again only when an argument is another object or value. */
export const remember = <Arguments extends readonly unknown[], Answer>(
  work: (...args: Arguments) => Answer,
): ((...args: Arguments) => Answer) => {
  let last: { readonly args: Arguments; readonly answer: Answer } | null = null;
  return (...args) => {
    if (last !== null && args.every((arg, index) => Object.is(arg, last?.args[index]))) return last.answer;
    last = { args, answer: work(...args) };
    return last.answer;
  };
};
