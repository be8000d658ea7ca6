import { useSyncExternalStore } from 'react';
import { type Services, useServices } from '../../services';
import { createSetPreview, type SetPreview, type SetPreviewState } from './createSetPreview';

const previews = new WeakMap<Services, SetPreview>();

/** The preview of these services: the same one for the fields, which open it, and the pages, which show it. */
export const useSetPreview = (): readonly [SetPreview, SetPreviewState] => {
  const services = useServices();
  const preview = previews.get(services) ?? createSetPreview(services.workshop);
  previews.set(services, preview);
  return [preview, useSyncExternalStore(preview.subscribe, preview.getState)];
};
