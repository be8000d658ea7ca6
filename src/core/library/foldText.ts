/** Words as they are searched: small letters without accents, whatever way they were typed. */
export const foldText = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
