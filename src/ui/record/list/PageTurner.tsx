interface PageTurnerProps {
  /** From 0. */
  readonly page: number;
  /** Rows on a page, and rows in all. */
  readonly size: number;
  readonly count: number;
  readonly turn: (page: number) => void;
}

/** To the page before and after; nothing when all rows stand on one. */
export function PageTurner({ page, size, count, turn }: PageTurnerProps) {
  const pages = Math.ceil(count / size);
  if (pages <= 1) return null;
  const [first, last] = [page === 0, page === pages - 1];
  return (
    <nav className="page-turner" aria-label="Pages of the library">
      <button type="button" aria-disabled={first} onClick={() => !first && turn(page - 1)}>
        Page before
      </button>
      <span>
        {page * size + 1}–{Math.min(count, (page + 1) * size)} of {count}
      </span>
      <button type="button" aria-disabled={last} onClick={() => !last && turn(page + 1)}>
        Next page
      </button>
    </nav>
  );
}
