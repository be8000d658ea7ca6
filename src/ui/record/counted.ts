/** How many of something: "1 photo", "3 photos". */
export const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;
