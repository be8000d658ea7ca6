/**
 * Equilibrium moisture content of wood, % of its dry mass, from air temperature, °C, and relative humidity, %. The
 * two-hydrate equation of Hailwood and Horrobin as fitted by Simpson (Forest Products Laboratory, FPL-RN-0268, 1998; Wood
 * Handbook, equation 4-5). Throws RangeError outside −20 to 100 °C and 0 to 100 %.
 */
export const equilibriumMoisture = (celsius: number, relativeHumidity: number): number => {
  if (!(celsius >= -20 && celsius <= 100)) throw new RangeError('Expected a temperature from −20 to 100 °C.');
  if (!(relativeHumidity >= 0 && relativeHumidity <= 100))
    throw new RangeError('Expected a relative humidity from 0 to 100 %.');
  const t = celsius;
  const w = 349 + 1.29 * t + 0.0135 * t ** 2;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t ** 2;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t ** 2;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t ** 2;
  const kh = (k * relativeHumidity) / 100;
  const dissolved = kh / (1 - kh);
  const hydrated = (k1 * kh + 2 * k1 * k2 * kh ** 2) / (1 + k1 * kh + k1 * k2 * kh ** 2);
  return (1800 / w) * (dissolved + hydrated);
};
