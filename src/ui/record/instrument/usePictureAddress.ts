import { useEffect, useState } from 'react';
import { useServices } from '../../services';

/** Where a photo can be shown from: null while it is looked for, or why there is none. */
export const usePictureAddress = (id: string): { readonly address: string | null; readonly problem: string | null } => {
  const { library } = useServices();
  const [found, setFound] = useState<{ address: string | null; problem: string | null }>({
    address: null,
    problem: null,
  });
  useEffect(() => {
    let gone = false;
    library()
      .then((of) => of.pictureAddress(id))
      .then(
        (answer) => {
          if (gone) return;
          setFound(
            answer.ok
              ? { address: answer.value, problem: null }
              : { address: null, problem: answer.issues[0]?.message ?? 'It is not here.' },
          );
        },
        () => {},
      );
    return () => {
      gone = true;
    };
  }, [id, library]);
  return found;
};
