import type { Issue, Result } from '../../../src/core/result';

/** What came of a number of damaged files. */
export interface FuzzRun {
  readonly taken: number;
  readonly refused: number;
  /** What should not be, each with the number of its file. */
  readonly faults: readonly string[];
  /** The file that took longest, and its processor time in ms: other work on the machine does not count. */
  readonly slowest: { readonly file: number; readonly ms: number };
}

/** What a maker waits at most, ms. */
const LONGEST_MS = 2000;

/** Longer than this, a message would be a copy of what is in the file. */
const LONGEST_QUOTE = 60;

const wrongMessage = ({ message }: Issue, file: string): string | null => {
  if (message.length === 0 || message.length >= 300) return `a message of ${message.length} characters`;
  for (let at = 0; at + LONGEST_QUOTE < message.length; at++)
    if (file.includes(message.slice(at, at + LONGEST_QUOTE + 1))) return `quotes at length: ${message}`;
  return null;
};

/** What is wrong with a refusal; null for a good one. */
const wrongRefusal = (issues: readonly Issue[], file: string): string | null =>
  issues.length === 0
    ? 'refused without a reason'
    : (issues
        .slice(0, 20)
        .map((each) => wrongMessage(each, file))
        .find((wrong) => wrong !== null) ?? null);

/**
 * Hands files to a reader, one after the other, and holds each answer against what it must be: a refusal in words, or a
 * value that `wrongValue` finds nothing wrong with; nothing thrown, nothing slow.
 *
 * @param file makes the file of a number, the same each time
 * @param begin told before each file, so that one that never ends can be named
 */
export const fuzzRun = <Value>(
  count: number,
  file: (number: number) => string,
  read: (file: string, number: number) => Result<Value>,
  wrongValue: (value: Value) => string | null,
  begin: (number: number) => void = () => {},
): FuzzRun => {
  const faults: string[] = [];
  let [taken, refused] = [0, 0];
  let slowest = { file: 0, ms: 0 };
  for (let number = 0; number < count; number++) {
    const text = file(number);
    begin(number);
    const start = process.cpuUsage();
    try {
      const result = read(text, number);
      const { user, system } = process.cpuUsage(start);
      const ms = (user + system) / 1000;
      if (ms > slowest.ms) slowest = { file: number, ms };
      if (ms > LONGEST_MS) faults.push(`${number}: took ${ms.toFixed(0)} ms`);
      if (result.ok) taken++;
      else refused++;
      const wrong = result.ok ? wrongValue(result.value) : wrongRefusal(result.issues, text);
      if (wrong !== null) faults.push(`${number}: ${wrong}`);
    } catch (error) {
      faults.push(`${number}: threw ${error instanceof Error ? error.stack : String(error)}`);
    }
  }
  return { taken, refused, faults, slowest };
};
