import { type ReactNode, Suspense, useState } from 'react';

interface MoreProps {
  readonly summary: string;
  /** Open from the start. */
  readonly open?: boolean;
  readonly children: ReactNode;
}

/** Detail behind a plain answer; what is in it is made when it is first opened, and then stays. */
export function More({ summary, open = false, children }: MoreProps) {
  const [openFromStart] = useState(open);
  const [opened, setOpened] = useState(open);
  return (
    <details
      className="more"
      open={openFromStart}
      onToggle={(event) => {
        if (event.currentTarget.open) setOpened(true);
      }}
    >
      <summary>{summary}</summary>
      {opened && <Suspense fallback={<p className="quiet">One moment …</p>}>{children}</Suspense>}
    </details>
  );
}
