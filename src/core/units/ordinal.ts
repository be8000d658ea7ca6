/** "12th", "21st", "22nd": a whole number from 1 up as an ordinal. */
export const ordinal = (n: number): string => {
  const teens = n % 100 >= 11 && n % 100 <= 13;
  const ending = teens ? 'th' : ({ 1: 'st', 2: 'nd', 3: 'rd' }[n % 10] ?? 'th');
  return `${n}${ending}`;
};
