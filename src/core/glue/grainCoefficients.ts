/** Change across the grain, as a share of the width, for one percent of moisture content. */
export interface GrainCoefficient {
  readonly id: string;
  readonly name: string;
  /** Quarter-sawn: growth rings stand upright in the piece. */
  readonly radial: number;
  /** Flat-sawn: growth rings lie flat. */
  readonly tangential: number;
}

export const GRAIN_SOURCE =
  'Wood Handbook, FPL-GTR-190, table 13-5, for moisture from 6 to 14 %; rosewood and ebony are not in it';

export const GRAIN_COEFFICIENTS: readonly GrainCoefficient[] = [
  { id: 'sitka-spruce', name: 'Sitka spruce', radial: 0.00148, tangential: 0.00263 },
  { id: 'engelmann-spruce', name: 'Engelmann spruce', radial: 0.0013, tangential: 0.00248 },
  { id: 'red-spruce', name: 'Red or white spruce', radial: 0.0013, tangential: 0.00274 },
  { id: 'western-redcedar', name: 'Western redcedar', radial: 0.00111, tangential: 0.00234 },
  { id: 'alaska-yellow-cedar', name: 'Alaska yellow-cedar', radial: 0.00095, tangential: 0.00208 },
  { id: 'port-orford-cedar', name: 'Port-Orford-cedar', radial: 0.00158, tangential: 0.00241 },
  { id: 'redwood', name: 'Redwood, old growth', radial: 0.0012, tangential: 0.00205 },
  { id: 'mahogany', name: 'Mahogany', radial: 0.00172, tangential: 0.00238 },
  { id: 'khaya', name: 'African mahogany', radial: 0.00141, tangential: 0.00201 },
  { id: 'spanish-cedar', name: 'Spanish-cedar', radial: 0.00141, tangential: 0.00219 },
  { id: 'sugar-maple', name: 'Sugar maple', radial: 0.00165, tangential: 0.00353 },
  { id: 'bigleaf-maple', name: 'Bigleaf maple', radial: 0.00126, tangential: 0.00248 },
  { id: 'walnut', name: 'Black walnut', radial: 0.0019, tangential: 0.00274 },
  { id: 'cherry', name: 'Black cherry', radial: 0.00126, tangential: 0.00248 },
];
