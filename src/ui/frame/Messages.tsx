import { lazy, Suspense } from 'react';
import { useServices } from '../services';
import { useStore } from '../useStore';

/** What failed, under the header until the next thing happens. */
export function AlertBar() {
  const { actions } = useServices().store;
  const message = useStore((state) => state.message);
  const shown = message.kind === 'alert' && message.text !== '';
  return (
    <div className="alert-bar" data-shown={shown}>
      <p role="alert">{shown && <span key={message.count}>{message.text}</span>}</p>
      {shown && (
        <button type="button" onClick={() => actions.say('')}>
          Dismiss
        </button>
      )}
    </div>
  );
}

const KeepLine = lazy(async () => ({ default: (await import('../record/KeepLine')).KeepLine }));

/** What happened last, and what is kept. */
export function StatusBar() {
  const message = useStore((state) => state.message);
  return (
    <footer className="status-bar">
      <p role="status">{message.kind === 'status' && <span key={message.count}>{message.text}</span>}</p>
      <Suspense fallback={null}>
        <KeepLine />
      </Suspense>
    </footer>
  );
}
