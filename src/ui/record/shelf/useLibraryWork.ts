import { useMemo } from 'react';
import { useServices } from '../../services';
import { type LibraryWork, libraryWork } from './libraryWork';

export const useLibraryWork = (): LibraryWork => {
  const services = useServices();
  return useMemo(() => libraryWork(services), [services]);
};
