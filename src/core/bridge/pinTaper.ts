const domain = (good: boolean, what: string, value: number): void => {
  if (!good || !Number.isFinite(value)) throw new RangeError(`Expected ${what}, got ${value}.`);
};

/**
 * Taper of a reamer or pin, mm of diameter per mm of length: 2·tan(angle / 2). 3° gives 0.05237, which is 1:19.09.
 *
 * @param angle included angle, radians, above 0 and below π
 * @throws RangeError outside that range
 */
export const taperOfAngle = (angle: number): number => {
  domain(angle > 0 && angle < Math.PI, 'an included angle between 0 and π', angle);
  return 2 * Math.tan(angle / 2);
};

/**
 * Included angle of a taper, radians: 2·atan(taper / 2). 1:20, which is 0.05, gives 2.864°.
 *
 * @param taper mm of diameter per mm of length, above 0
 * @throws RangeError when it is not
 */
export const angleOfTaper = (taper: number): number => {
  domain(taper > 0, 'a taper above 0', taper);
  return 2 * Math.atan(taper / 2);
};

/**
 * How far a tapered reamer goes on, mm, from where it first touches the rim of a drilled hole until the mouth of the hole
 * has the diameter asked for: (mouth − pilot) / taper. It touches where it is as thick as the drill, so neither its tip
 * nor the length of the hole matters.
 *
 * @param pilot the drill, mm, above 0
 * @param mouth mm, the pilot or more
 * @param taper mm of diameter per mm of length, above 0
 * @throws RangeError outside those ranges
 */
export const depthForDiameter = (pilot: number, mouth: number, taper: number): number => {
  domain(pilot > 0, 'a pilot hole above 0 mm', pilot);
  domain(mouth >= pilot, `a mouth of ${pilot} mm or more`, mouth);
  domain(taper > 0, 'a taper above 0', taper);
  return (mouth - pilot) / taper;
};
