import { MOST_BRACES } from '../../../core/document/bodyFields';
import type { Body, Brace } from '../../../core/document/bodyTypes';
import { fail, ok, type Result } from '../../../core/result';

const freeId = (braces: readonly Brace[]): string => {
  const taken = new Set(braces.map(({ id }) => id));
  let number = braces.length + 1;
  while (taken.has(`b${number}`)) number += 1;
  return `b${number}`;
};

/** One brace more, at the end of the list, under an id of its own. Codes: body.bracesFull. */
export const withBrace = (body: Body, brace: Omit<Brace, 'id'>): Result<Body> =>
  body.braces.length >= MOST_BRACES
    ? fail('body.braces', 'body.bracesFull', `There is room for ${MOST_BRACES} braces.`)
    : ok({ ...body, braces: [...body.braces, { id: freeId(body.braces), ...brace }] });

/** The brace of this id changed, or taken out when `change` answers null. Codes: body.noBrace. */
export const changeBrace = (body: Body, id: string, change: (brace: Brace) => Brace | null): Result<Body> =>
  body.braces.some((brace) => brace.id === id)
    ? ok({ ...body, braces: body.braces.flatMap((brace) => (brace.id === id ? (change(brace) ?? []) : brace)) })
    : fail('body.braces', 'body.noBrace', 'There is no such brace.');
