import { useEffect, useState } from 'react';

/** False until the screen was painted once: what can wait stays out of the first frame. */
export const useAfterFirstFrame = (): boolean => {
  const [painted, setPainted] = useState(false);
  useEffect(() => {
    let waiting: ReturnType<typeof setTimeout> | undefined;
    const frame = requestAnimationFrame(() => {
      waiting = setTimeout(() => setPainted(true));
    });
    return () => {
      cancelAnimationFrame(frame);
      clearTimeout(waiting);
    };
  }, []);
  return painted;
};
