/** Goes to a group of the station by its id. */
export const goToGroup = (id: string): void => {
  const title = document.getElementById(id);
  title?.focus({ preventScroll: true });
  title?.closest('section')?.scrollIntoView();
};
