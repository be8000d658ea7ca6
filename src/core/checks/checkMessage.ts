/** The words of a check or of a mend with their lengths written for the reader: {0} is the first of them. */
export const checkMessage = (
  { message, lengths }: { readonly message: string; readonly lengths: readonly number[] },
  show: (mm: number) => string,
): string => message.replace(/\{(\d)\}/g, (_, index: string) => show(lengths[Number(index)] ?? Number.NaN));
