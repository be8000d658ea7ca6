/** What is believed of the spread between instruments of one maker before there are many: one sigma, mm. */
export const USUAL_SPREAD = {
  value: 0.5,
  least: 0.05,
  most: 3,
  source:
    'the bridge’s place to ± 0.4 mm, a tuner to ± 1 cent on either note (± 0.5 mm), strings and players ± 0.7 mm: estimated, no source',
} as const;

/** How many instruments that belief counts for beside those that were read: few, so that theirs soon tells. */
export const SPREAD_WORTH = 3;
