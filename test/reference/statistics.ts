/**
 * Norris, linear regression of lower difficulty: NIST Statistical Reference Datasets (StRD), certified values.
 * 36 calibrations of ozone monitors; x is the customer's measurement, y NIST's.
 */
export const NORRIS = {
  x: [
    0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5,
    11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1,
    448.9, 0.5,
  ],
  y: [
    0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8,
    557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2,
    0.2,
  ],
  intercept: -0.262323073774029,
  interceptSd: 0.232818234301152,
  slope: 1.00211681802045,
  slopeSd: 0.000429796848199937,
  residualSd: 0.884796396144373,
  residualSquares: 26.6173985294224,
} as const;

/** NoInt1, a line through the origin: NIST StRD, certified values. */
export const NO_INTERCEPT_1 = {
  x: [60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70],
  y: [130, 131, 132, 133, 134, 135, 136, 137, 138, 139, 140],
  slope: 2.07438016528926,
  slopeSd: 0.0165289256198347,
  residualSd: 3.56753034006338,
  residualSquares: 127.272727272727,
} as const;

/**
 * Calibration of a thermometer by a straight line about 20 °C: GUM (JCGM 100:2008) annex H.3. The readings are written
 * from memory; that they reproduce every published figure is what the test shows. Published: y1 −0.1712 (u 0.0029),
 * y2 0.002 18 (u 0.000 67), r −0.930, s 0.0035, correction at 30 °C −0.1494 (u 0.0041).
 */
export const GUM_H3 = {
  reference: 20,
  temperature: [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511],
  correction: [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16],
  intercept: -0.1712,
  interceptDoubt: 0.0029,
  slope: 0.00218,
  slopeDoubt: 0.00067,
  correlation: -0.93,
  residualSd: 0.0035,
  at30: -0.1494,
  at30Doubt: 0.0041,
} as const;

/**
 * Two-sided Student factors [probability, degrees of freedom, factor]. The two of 16 degrees are those of GUM table G.2
 * (2.12 and 2.92) with more digits; all were computed with scipy 1.17, stats.t.isf((1 − p)/2, ν).
 */
export const STUDENT_T = [
  [0.95, 16, 2.119905299221],
  [0.99, 16, 2.920781622425],
  [0.95, 1, 12.706204736175],
  [0.5, 2, 0.816496580928],
  [0.6827, 3.5, 1.164805640017],
  [0.9545, 18, 2.148852323637],
  [0.95, 0.7, 36.611415031589],
  [0.999, 1000, 3.300282648424],
  [0.95, 100_000, 1.959987707535],
  [0.1, 7.25, 0.130131125817],
  [1 - 1e-10, 4, 494.91982261],
] as const;

/** The 97.5 % point of the normal distribution, in every statistical table. */
export const NORMAL_975 = 1.959963984540054;

/** I_x(a, b) as [x, a, b, value]: scipy 1.17, special.betainc. The first is 6·0.3² − 8·0.3³ + 3·0.3⁴ by hand. */
export const INCOMPLETE_BETA = [
  [0.3, 2, 3, 0.3483],
  [0.9, 0.5, 8, 0.9999999979425369],
  [0.999, 50, 0.5, 0.7523690199653766],
  [0.02, 0.3, 0.7, 0.2658281022611188],
] as const;

/** ln Γ(x): scipy 1.17, special.gammaln. Γ(1/2) = √π and Γ(10) = 9! agree by hand. */
export const LOG_GAMMA = [
  [0.1, 2.252712651734206],
  [0.5, 0.5723649429247],
  [1.5, -0.12078223763524526],
  [10, 12.801827480081469],
  [100.25, 360.28455963776423],
] as const;

/**
 * First outputs of xoshiro128** from the state 1, 2, 3, 4: from the authors' reference program (version 1.1), as
 * printed in the tests of the Rust crate rand_xoshiro.
 */
export const XOSHIRO_FROM_1234 = [
  11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
] as const;

/**
 * What six strings want, treble to bass, over 54 mm, and the saddle lines for it. The setbacks are a worked example of
 * the string model (light steel set, 645 mm); lines and misses were computed from them apart from this program and
 * rounded: line − own, mm, string 1 to 6.
 */
export const SADDLE = {
  points: [
    { x: 27, setback: 1.818 },
    { x: 16.2, setback: 3.458 },
    { x: 5.4, setback: 1.97 },
    { x: -5.4, setback: 2.762 },
    { x: -16.2, setback: 3.377 },
    { x: -27, setback: 4.772 },
  ],
  leastSquares: {
    centre: 3.026,
    angleDeg: 2.32,
    slope: -0.04052,
    misses: [0.114, -1.088, 0.837, 0.483, 0.306, -0.652],
  },
  minimax: { centre: 3.042, angleDeg: 1.742, worst: 0.908 },
  /** A bridge bought with its slot at 3°. */
  fixed: { slope: -0.05241, centre: 3.0262, misses: [-0.207, -1.281, 0.773, 0.547, 0.498, -0.331] },
} as const;

/**
 * Calibration of an end gauge, JCGM 100:2008 (GUM) H.1: standard uncertainty times sensitivity, nm, and degrees of freedom.
 * Length of the standard 25 (18), comparison 9.7 (25.6), difference of the coefficients 2.9 (50), of the temperatures
 * 16.6 (2); combined 32, effective degrees of freedom 16, k for 99 % 2.92, expanded 93. Unrounded, as computed from the
 * published inputs by another program: 31.7106 and 16.657 (lS·θ·u(δα) = 50.000623e6·0.1·0.58e-6 = 2.900,
 * lS·α·u(δθ) = 50.000623e6·11.5e-6·0.029 = 16.675).
 */
export const GUM_H1 = {
  parts: [
    { effect: 25, degreesOfFreedom: 18 },
    { effect: 9.7, degreesOfFreedom: 25.6 },
    { effect: 2.900036, degreesOfFreedom: 50 },
    { effect: 16.675208, degreesOfFreedom: 2 },
  ],
  sigma: 31.7106,
  degreesOfFreedom: 16.657,
  factor99: 2.92,
  expanded99: 93,
} as const;

/**
 * Resistance and reactance measured together, JCGM 100:2008 (GUM) H.2. Means, standard uncertainties and correlations of
 * V (V), I (A) and φ (rad) as published; R = V/I·cos φ, X = V/I·sin φ, Z = V/I. Published results: R 127.732 (0.071),
 * X 219.847 (0.295), Z 254.260 (0.236) Ω; without the correlations u(R) would be 0.195 (from memory; hand arithmetic gives 0.194). The inputs are rounded there, so
 * that they carry the results to about one in the last digit only. Inputs from memory.
 */
export const GUM_H2 = {
  volt: { mean: 4.999, sigma: 0.0032 },
  ampere: { mean: 0.019661, sigma: 0.0000095 },
  phase: { mean: 1.04446, sigma: 0.00075 },
  correlation: { voltAmpere: -0.36, voltPhase: 0.86, amperePhase: -0.65 },
  ohm: { r: 127.732, x: 219.847, z: 254.26 },
  sigma: { r: 0.071, x: 0.295, z: 0.236, rUncorrelated: 0.195 },
} as const;

/**
 * Additive models, JCGM 101:2008 9.2 (from memory, and exact): four N(0, 1) → u 2, ±3.92; four rectangular of unit
 * standard deviation → u 2, ±2√3·(2 − (3/5)^(1/4)) = ±3.8794067; one of them ten times as wide → u 10.148892, ±17.0.
 */
export const JCGM_101_ADDITIVE = {
  normal: { sigma: 2, half: 3.919928 },
  rectangular: { sigma: 2, half: 3.8794067 },
  oneWide: { sigma: 10.148892, half: 17 },
} as const;
