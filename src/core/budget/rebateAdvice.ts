/** What of a rebate is in question. All mm. */
export interface RebateCase {
  /** Film of the finish; null while it was not measured. */
  readonly film: number | null;
  /** Finish left under the rim. */
  readonly rim: number;
  readonly rebate: { readonly width: number; readonly depth: number } | null;
  readonly repair: boolean;
}

/** Limits of rim and rebate to start from, mm, with their sources. */
export const REBATE_LIMITS = {
  rimNew: { value: 25.4 / 32, source: '0 to 1/32 in: common practice, no single source' },
  rim: {
    value: 25.4 / 16,
    source: 'common practice; a bridge lifted over a rim of 1/8 in: jakewildwood.blogspot.com, new bridge pull-off',
  },
  rebateOver: { value: 0.05, source: 'film and a little: common practice, no source' },
  rebateDeepest: {
    value: 25.4 / 64,
    source: 'under 1/64 in: davidsguitar.blogspot.com, ready for neck and bridge glue-up',
  },
} as const;

/** A finding on rim or rebate: good, to look at, or still to be read. */
export interface RebateFinding {
  readonly verdict: 'good' | 'look' | 'read';
  readonly code:
    | 'none'
    | 'rebate-bare'
    | 'repair-edge'
    | 'rim-wide'
    | 'rim-over-new'
    | 'read-film'
    | 'too-shallow'
    | 'too-deep'
    | 'too-narrow'
    | 'fits';
  /** The figure and the limit that it is held against, mm; null where there is none. */
  readonly value: number | null;
  readonly limit: number | null;
}

/** How deep a rebate is cut for a film, mm: the film and a little. own: the maker's limits. */
export const rebateDepth = (film: number, own: Readonly<Record<string, number>>): number =>
  film + (own.rebateOver ?? REBATE_LIMITS.rebateOver.value);

/**
 * What the rim and its rebate want: none of it in a repair, the rim no wider than is usual unless there is a rebate, and that
 * as deep as the film and a little, no deeper than hides, and as wide as the rim; none where the glue goes to the edge.
 * own: the maker's limits.
 */
export const rebateAdvice = (
  { film, rim, rebate, repair }: RebateCase,
  own: Readonly<Record<string, number>>,
): readonly RebateFinding[] => {
  const limit = (name: keyof typeof REBATE_LIMITS): number => own[name] ?? REBATE_LIMITS[name].value;
  const finding = (
    verdict: RebateFinding['verdict'],
    code: RebateFinding['code'],
    value: number | null = null,
    held: number | null = null,
  ): RebateFinding => ({ verdict, code, value, limit: held });
  if (rim === 0) return [rebate === null ? finding('good', 'none') : finding('look', 'rebate-bare', rebate.width)];
  const wide: readonly RebateFinding[] = repair
    ? [finding('look', 'repair-edge', rim, 0)]
    : rebate === null && rim >= limit('rim') - 1e-9
      ? [finding('look', 'rim-wide', rim, limit('rim'))]
      : rim > limit('rimNew') + 1e-9
        ? [finding('look', 'rim-over-new', rim, limit('rimNew'))]
        : [];
  if (rebate === null) return wide.length > 0 ? wide : [finding('good', 'fits', rim, limit('rimNew'))];
  if (film === null) return [...wide, finding('read', 'read-film')];
  const wanted = rebateDepth(film, own);
  const cut: readonly RebateFinding[] = [
    ...(rebate.depth < film ? [finding('look', 'too-shallow', rebate.depth, wanted)] : []),
    ...(rebate.depth > limit('rebateDeepest')
      ? [finding('look', 'too-deep', rebate.depth, limit('rebateDeepest'))]
      : []),
    ...(rebate.width < rim ? [finding('look', 'too-narrow', rebate.width, rim)] : []),
  ];
  return cut.length > 0 ? [...wide, ...cut] : [...wide, finding('good', 'fits', rebate.depth, wanted)];
};
