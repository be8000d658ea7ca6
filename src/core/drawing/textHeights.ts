/** Font sizes on paper, mm: nothing smaller than `note`; key figures are read at arm's length. After ISO 3098 practice. */
export const TEXT_HEIGHT = { note: 2.9, label: 3.2, key: 4.6 } as const;
