import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { beenHere } from './main/beenHere';
import { NotLoaded } from './ui/frame/NotLoaded';

const element = document.getElementById('root');
if (element === null) throw new Error('index.html must hold an element with the id "root"');

/** Everything behind the first paint, which is in the page itself. */
const open = async (): Promise<void> => {
  const visited = beenHere();
  const { App, startServices } = await import('./main/startWorkbench');
  const services = await startServices(await visited);
  createRoot(element).render(
    <StrictMode>
      <App services={services} />
    </StrictMode>,
  );
};

open().catch((error: unknown) => {
  const reason = error instanceof Error ? error.message : String(error);
  createRoot(element).render(<NotLoaded reason={reason} />);
});
