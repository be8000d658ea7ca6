import { lazy, StrictMode, Suspense } from 'react';
import { createRoot } from 'react-dom/client';
import { Opening } from './ui/frame/Opening';

/** Everything behind the first paint: what core computes, and the screen that shows it. */
const Workbench = lazy(async () => {
  const { App, startServices } = await import('./main/startWorkbench');
  const services = startServices();
  return { default: () => <App services={services} /> };
});

const root = document.getElementById('root');
if (root === null) throw new Error('index.html must hold an element with the id "root"');

createRoot(root).render(
  <StrictMode>
    <Suspense fallback={<Opening />}>
      <Workbench />
    </Suspense>
  </StrictMode>,
);
