import * as v from 'valibot';
import type { Project } from '../core/document/types';
import { validateProject } from '../core/document/validateProject';
import { fail, failed, type Issue, issue, ok, type Result } from '../core/result';
import { LONGEST_FILE } from './longestFile';
import { PROJECT_SCHEMA } from './projectSchema';

const VERSION = 1;

/** Keys that could reach an object's prototype. */
const FORBIDDEN_KEYS: readonly string[] = ['__proto__', 'constructor', 'prototype'];

const NOT_OURS = 'This is not a Saddlemark project: expected a file that Saddlemark saved.';

const parse = (text: string): Result<unknown> => {
  let forbidden: string | null = null;
  let value: unknown;
  try {
    value = JSON.parse(text, (key, inner: unknown) => {
      if (FORBIDDEN_KEYS.includes(key)) forbidden = key;
      return inner;
    });
  } catch {
    return fail(
      '',
      'file.text',
      `${NOT_OURS} It cannot be read as JSON; it may have been cut off or be of another kind.`,
    );
  }
  return forbidden === null
    ? ok(value)
    : fail(forbidden, 'file.damaged', `The file is damaged: it holds the key "${forbidden}".`);
};

const LONGEST_QUOTE = 60;

/** What a message quotes from a file is never longer than a line. */
const short = (text: string): string => (text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text);

/** One fault of the shape in words: which value, what it is and what was expected. */
const describe = (fault: v.BaseIssue<unknown>): Issue => {
  const path = short(v.getDotPath(fault) ?? '');
  if (fault.type === 'strict_object' && fault.expected === 'never')
    return issue(path, 'file.newer', `It holds "${path}", which this Saddlemark does not know.`);
  if (fault.received === 'undefined') return issue(path, 'file.damaged', `"${path}" is missing.`);
  return issue(path, 'file.damaged', `"${path}" is ${short(fault.received)}, expected ${expectation(fault)}.`);
};

const expectation = ({ expected, type, requirement }: v.BaseIssue<unknown>): string => {
  if (type === 'iso_timestamp') return 'a time such as 2026-03-01T09:30:00.000Z';
  if (type === 'regex') return 'letters, digits, - and _ only';
  if (type === 'max_length' || type === 'min_length')
    return `${type === 'max_length' ? 'at most' : 'at least'} ${String(requirement)} of them`;
  const plain: Readonly<Record<string, string>> = {
    Object: 'a group of values',
    Array: 'a list',
    string: 'text',
    number: 'a number',
  };
  return plain[expected ?? ''] ?? expected ?? 'something else';
};

/**
 * The project in the text of a file. The file is not trusted: its size, its keys, its shape and every value are checked
 * before anything of it is used.
 *
 * Codes: file.large, file.text (no JSON), file.foreign (no project), file.newer (made by a newer Saddlemark),
 * file.damaged (names the value and what was expected), and those of `validateProject`.
 */
export const decodeProject = (text: string): Result<Project> => {
  if (text.length > LONGEST_FILE) return fail('', 'file.large', `${NOT_OURS} It is larger than 5 MB.`);
  const parsed = parse(text.replace(/^\uFEFF/, ''));
  if (!parsed.ok) return parsed;
  const file = parsed.value;
  if (typeof file !== 'object' || file === null || !('format' in file) || file.format !== 'saddlemark-project')
    return fail('', 'file.foreign', NOT_OURS);
  if ('version' in file && typeof file.version === 'number' && file.version > VERSION)
    return fail(
      'version',
      'file.newer',
      `This project was made by a newer Saddlemark (format ${file.version}; this one reads up to ${VERSION}).`,
    );

  const read = v.safeParse(PROJECT_SCHEMA, file);
  if (!read.success) {
    const issues = read.issues.map(describe);
    const unknown = issues.filter(({ code }) => code === 'file.newer');
    if (unknown.length > 0)
      return failed(
        unknown.map((each) => ({ ...each, message: `This project was made by a newer Saddlemark. ${each.message}` })),
      );
    return failed(issues.map((each) => ({ ...each, message: `The file is damaged: ${each.message}` })));
  }
  const project: Project = read.output;
  if (new Set(project.strings.map(({ id }) => id)).size < project.strings.length)
    return fail('strings', 'file.damaged', 'The file is damaged: two strings share one id.');
  const wrong = validateProject(project);
  return wrong.length > 0
    ? failed(wrong.map((each) => ({ ...each, message: `The file is damaged: ${each.message}` })))
    : ok(project);
};
