/**
 * Equilibrium moisture content, %, by the two-hydrate equation of Hailwood and Horrobin with Simpson's coefficients
 * (Forest Products Laboratory FPL-RN-0268, 1998; Wood Handbook eq. 4-5), computed apart from this program from the
 * published coefficients, on which seven copies agree.
 */
export const EMC_TABLE = {
  humidities: [30, 40, 45, 50, 55, 60, 65, 70, 80],
  rows: [
    { celsius: 10, percent: [6.305, 7.874, 8.658, 9.466, 10.32, 11.244, 12.267, 13.426, 16.382] },
    { celsius: 20, percent: [6.188, 7.722, 8.485, 9.271, 10.101, 11.0, 11.996, 13.129, 16.037] },
    { celsius: 21.1, percent: [6.17, 7.699, 8.459, 9.243, 10.07, 10.965, 11.958, 13.088, 15.99] },
    { celsius: 25, percent: [6.096, 7.608, 8.359, 9.132, 9.948, 10.832, 11.814, 12.931, 15.808] },
    { celsius: 30, percent: [5.985, 7.473, 8.21, 8.969, 9.771, 10.64, 11.605, 12.706, 15.548] },
  ],
} as const;

/** Printed figures; `within` is half of the last digit that is printed, or what the source itself says of the difference. */
export const EMC_ANCHORS = [
  { celsius: 20, humidity: 65, percent: 12.0, within: 0.01, source: 'usual reference climate of wood testing' },
  { celsius: 60, humidity: 80, percent: 13.56, within: 0.01, source: 'published worked figure of the equation' },
  { celsius: 60, humidity: 55, percent: 8.4, within: 0.05, source: 'by the equation; the printed table has 8.0' },
  { celsius: 21, humidity: 25, percent: 5.3, within: 0.1, source: 'stoves.bioenergylists.org table' },
  { celsius: 21, humidity: 60, percent: 11.1, within: 0.15, source: 'stoves.bioenergylists.org table' },
  { celsius: 21, humidity: 84, percent: 17.6, within: 0.1, source: 'stoves.bioenergylists.org table' },
] as const;

/** 150 psi on 100 × 30 mm: 1.0342 MPa × 3000 mm², hand arithmetic. */
export const GLUE_CHECK = { area: 3000, psi: 150, newton: 3102.6, lbf: 697.5 } as const;

/**
 * Change across the grain for 1 % of moisture, as a share of the width, radial and tangential: Wood Handbook, FPL-GTR-190,
 * table 13-5 (hardwoods read on the page, the rest from a copy). Names as this program has them.
 */
export const GRAIN_TABLE = [
  ['Sitka spruce', 0.00148, 0.00263],
  ['Engelmann spruce', 0.0013, 0.00248],
  ['Red or white spruce', 0.0013, 0.00274],
  ['Western redcedar', 0.00111, 0.00234],
  ['Alaska yellow-cedar', 0.00095, 0.00208],
  ['Port-Orford-cedar', 0.00158, 0.00241],
  ['Redwood, old growth', 0.0012, 0.00205],
  ['Mahogany', 0.00172, 0.00238],
  ['African mahogany', 0.00141, 0.00201],
  ['Spanish-cedar', 0.00141, 0.00219],
  ['Sugar maple', 0.00165, 0.00353],
  ['Bigleaf maple', 0.00126, 0.00248],
  ['Black walnut', 0.0019, 0.00274],
  ['Black cherry', 0.00126, 0.00248],
] as const;

/** 100 mm of Sitka spruce, radial and tangential, hand arithmetic from the table: 100 × 0.00148 × 4; and from 45 to 55 % at 20 °C. */
export const SITKA_CHECK = {
  width: 100,
  fromSixToTen: { radial: 0.592, tangential: 1.052 },
  air: { celsius: 20, from: 45, to: 55, moisture: 1.6161, radial: 0.239, tangential: 0.425 },
} as const;

/** Gauge of a shop's vacuum, and what it presses with: customguitars.com has the inches; 1 inHg is 0.4912 psi, hand arithmetic. */
export const VACUUM_CHECK = [
  { inHg: 20, psi: 9.8 },
  { inHg: 25, psi: 12.3 },
] as const;
