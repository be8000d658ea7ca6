import { lazy, type ReactNode, Suspense, useState } from 'react';

const HelpStrip = lazy(async () => ({ default: (await import('./HelpStrip')).HelpStrip }));

/** The fields of a station, with a strip at the foot that explains the one in hand. */
export function FieldPanel({ children }: { readonly children: ReactNode }) {
  const [path, setPath] = useState<string | null>(null);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it only watches which of its boxes has the focus
    <div
      className="field-panel"
      onFocus={({ target }) => setPath(target.dataset.path ?? null)}
      onBlur={() => setPath(null)}
    >
      <div className="field-groups">{children}</div>
      {path !== null && (
        <Suspense fallback={null}>
          <HelpStrip path={path} />
        </Suspense>
      )}
    </div>
  );
}
