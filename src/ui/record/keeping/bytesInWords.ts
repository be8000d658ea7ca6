/** An amount of storage, to two digits: "3.2 MB". Decimal units, as systems show free space. */
export const bytesInWords = (bytes: number): string => {
  const units = ['bytes', 'KB', 'MB', 'GB', 'TB'];
  let [amount, unit] = [bytes, 0];
  while (amount >= 999.5 && unit < units.length - 1) {
    amount /= 1000;
    unit += 1;
  }
  return `${unit === 0 || amount >= 9.95 ? Math.round(amount) : amount.toFixed(1)} ${units[unit]}`;
};
