import * as v from 'valibot';
import type { Project } from '../core/document/types';
import { validateProject } from '../core/document/validateProject';
import { validatePath } from '../core/geom/validatePath';
import { fail, failed, type Issue, issue, ok, type Result } from '../core/result';
import { checkBulk } from './checkBulk';
import { LONGEST_FILE } from './longestFile';
import { PROJECT_SCHEMA } from './projectSchema';
import { cut, quoted } from './quoted';

const VERSION = 1;

const NOT_OURS = 'This is not a Saddlemark project: expected a file that Saddlemark saved.';

const parse = (text: string): Result<unknown> => {
  try {
    return ok(JSON.parse(text));
  } catch {
    return fail(
      '',
      'file.text',
      `${NOT_OURS} It cannot be read as JSON; it may have been cut off or be of another kind.`,
    );
  }
};

/** One fault of the shape in words: which value, what it is and what was expected. */
const describe = (fault: v.BaseIssue<unknown>): Issue => {
  const path = v.getDotPath(fault) ?? '';
  if (fault.type === 'strict_object' && fault.expected === 'never')
    return issue(path, 'file.newer', `It holds ${quoted(path)}, which this Saddlemark does not know.`);
  if (fault.received === 'undefined') return issue(path, 'file.damaged', `${quoted(path)} is missing.`);
  return issue(path, 'file.damaged', `${quoted(path)} is ${cut(fault.received)}, expected ${expectation(fault)}.`);
};

const expectation = ({ expected, type, requirement }: v.BaseIssue<unknown>): string => {
  if (type === 'iso_timestamp') return 'a time such as 2026-03-01T09:30:00.000Z';
  if (type === 'regex') return 'letters, digits, - and _ only';
  if (type === 'union') return 'one of the forms that Saddlemark writes';
  if (type === 'max_value' || type === 'min_value')
    return `${type === 'max_value' ? 'at most' : 'at least'} ${String(requirement)}`;
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

/** What is wrong with the outlines that are drawn freely, which have no row in the field table. */
const pathFaults = ({ bridge, repair }: Project): readonly Issue[] =>
  [bridge.outline, repair?.footprint.outline].flatMap((outline) => {
    const valid = outline?.kind === 'drawn' ? validatePath(outline.path) : null;
    return valid === null || valid.ok ? [] : valid.issues;
  });

/**
 * The project in what was read from a file as JSON, which is not trusted: its keys, its shape and every value are checked
 * before anything of it is used. Codes: those of decodeProject from file.foreign on.
 */
export const readProject = (file: unknown): Result<Project> => {
  if (typeof file !== 'object' || file === null || !('format' in file) || file.format !== 'saddlemark-project')
    return fail('', 'file.foreign', NOT_OURS);
  if ('version' in file && typeof file.version === 'number' && file.version > VERSION)
    return fail(
      'version',
      'file.newer',
      `This project was made by a newer Saddlemark (format ${file.version}; this one reads up to ${VERSION}).`,
    );

  const bulk = checkBulk(file);
  if (!bulk.ok) return bulk;
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
  const wrong = [...validateProject(project), ...pathFaults(project)];
  return wrong.length > 0
    ? failed(wrong.map((each) => ({ ...each, message: `The file is damaged: ${each.message}` })))
    : ok(project);
};

/**
 * The project in the text of a file, which is not trusted.
 *
 * Codes: file.large, file.text (no JSON), file.foreign (no project), file.newer (made by a newer Saddlemark),
 * file.damaged (names the value and what was expected), and those of `validateProject`.
 */
export const decodeProject = (text: string): Result<Project> => {
  if (text.length > LONGEST_FILE) return fail('', 'file.large', `${NOT_OURS} It is larger than 5 MB.`);
  const parsed = parse(text.replace(/^\uFEFF/, ''));
  return parsed.ok ? readProject(parsed.value) : parsed;
};
