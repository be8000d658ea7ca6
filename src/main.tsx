import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { Opening } from './ui/frame/Opening';

const element = document.getElementById('root');
if (element === null) throw new Error('index.html must hold an element with the id "root"');
const root = createRoot(element);

/** Everything behind the first paint: what core computes, the screen that shows it, and what draws on it, side by side. */
const open = async (): Promise<void> => {
  const canvas = import('./canvas/createSurface');
  const { App, startServices } = await import('./main/startWorkbench');
  const services = await startServices();
  await canvas;
  root.render(
    <StrictMode>
      <App services={services} />
    </StrictMode>,
  );
};

root.render(<Opening />);
open().catch((error: unknown) => {
  const reason = error instanceof Error ? error.message : String(error);
  root.render(<Opening problem={`Saddlemark could not be loaded (${reason}). Reload the page to try again.`} />);
});
