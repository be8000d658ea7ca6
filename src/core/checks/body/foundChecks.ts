import { braceName, hasLength } from '../../body/bodyPlace';
import { pathContains } from '../../geom/pathContains';
import type { DesignCheck } from '../types';
import { checkPart } from '../wallCheck';
import type { Bodied } from './bodied';

/** More names than this are a number instead. */
const MOST_NAMES = 3;

const listOf = (names: readonly string[]): string =>
  names.length > MOST_NAMES ? `${names.length} braces` : names.join(', ');

/** Braces that run on beneath the whole bridge; the others may well end there. */
const RUN_ON = ['x-leg', 'fan', 'transverse'] as const;

/** Whether the braces and the plate were found on this instrument, and all of them that lies beneath the bridge. */
export const foundChecks = ({ body, place, bridge }: Bodied): readonly DesignCheck[] => {
  const { braces, plate } = body;
  if (braces.length === 0)
    return [
      {
        id: 'braces-none',
        verdict: 'look',
        message: 'No brace is entered: find them with a light inside or with magnets before drilling.',
        lengths: [],
        source: null,
      },
    ];
  const found: DesignCheck[] = [];
  const unread = braces.flatMap((brace, index) => (brace.read ? [] : [braceName(brace, index)]));
  const unfound = [
    ...(unread.length === 0 ? [] : [listOf(unread)]),
    ...(plate !== null && !plate.read ? ['the plate'] : []),
  ].join(' and ');
  found.push({
    id: 'body-found',
    verdict: unfound === '' ? 'good' : 'look',
    message:
      unfound === ''
        ? `All that is entered beneath the top was found on this instrument.`
        : `Not found on this instrument yet: ${unfound}. Until then the checks beneath the top rest on a guess.`,
    lengths: [],
    source: null,
  });
  const short = braces.flatMap((brace, index) => (hasLength(brace) ? [] : [braceName(brace, index)]));
  if (short.length > 0)
    found.push({
      id: 'brace-short',
      verdict: 'wrong',
      message: `Both points of ${listOf(short)} are the same place: expected two places on the brace, some way apart.`,
      lengths: [],
      source: null,
    });
  const { outline } = bridge.footprint;
  const ending = place.braces.flatMap(({ kind, name, from, to }) => {
    const at = [from, to].filter((end) => pathContains(outline, end));
    return RUN_ON.some((each) => each === kind) && at.length > 0 ? [{ name, at }] : [];
  });
  if (ending.length > 0)
    found.push({
      id: 'brace-ends',
      verdict: 'look',
      message: `As entered, ${listOf(ending.map(({ name }) => name))} ends beneath the bridge. If it runs on, take a point beyond the bridge, so that all of it is checked.`,
      lengths: [],
      source: null,
      at: ending.flatMap(({ at }) => at),
      part: checkPart('Braces run on beneath the bridge'),
    });
  return found;
};
