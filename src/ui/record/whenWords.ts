const DAY: Intl.DateTimeFormatOptions = { day: 'numeric', month: 'short', year: 'numeric' };
const day = new Intl.DateTimeFormat('en-GB', DAY);
const moment = new Intl.DateTimeFormat('en-GB', { ...DAY, hour: '2-digit', minute: '2-digit', second: '2-digit' });

/** The day of an instant where the maker is: "3 Mar 2026", which no one takes for the 3rd of another month. */
export const dayWords = (instant: string): string => day.format(new Date(instant));

/** The day and the time of day: "3 Mar 2026, 14:05:09". */
export const momentWords = (instant: string): string => moment.format(new Date(instant));
