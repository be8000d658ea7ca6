/** Whether an earlier visit may have left something: nothing of the library is loaded for a first one. */
export const beenHere = async (): Promise<boolean> => {
  try {
    return (await indexedDB.databases()).some(({ name }) => name === 'saddlemark');
  } catch {
    return true;
  }
};
