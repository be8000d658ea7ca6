/** What the places of old holes and of an old slot can be read from. */
export const DATUMS = [
  { value: 'front', label: 'the old front edge' },
  { value: 'nut', label: 'the nut' },
] as const;
