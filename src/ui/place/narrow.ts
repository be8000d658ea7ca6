/** Where fields, picture and figures stand beneath one another: as the style sheets have it. */
export const NARROW = '(max-width: 899px)';
