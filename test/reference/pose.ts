/**
 * Ten sets of readings of a taped bridge, mm, and where SciPy 1.10.1 (`scipy.optimize.least_squares` with central differences, tolerances
 * 1e-15, sigmas from the inverse of JᵀJ) says that it sits. The readings were made up: a bridge moved by up to 1.5 mm and
 * 0.5°, each reading with noise of its sigma, rounded to 0.01 mm. `pose_by_scipy.py` beside the readers' tests makes the
 * answers again.
 */
export const POSE_SETS = [
  {
    nominal: {
      x: 0.0,
      y: 634.5,
      angle: 0.0,
    },
    readings: [
      {
        kind: 'distance',
        from: {
          x: 28.5,
          y: 316,
        },
        to: {
          x: 76.2,
          y: -9.5,
        },
        rise: 9.2,
        sigma: 0.3,
        value: 313.12,
      },
      {
        kind: 'distance',
        from: {
          x: -28.5,
          y: 316,
        },
        to: {
          x: -76.2,
          y: -9.5,
        },
        rise: 9.2,
        sigma: 0.3,
        value: 313.04,
      },
      {
        kind: 'distance',
        from: {
          x: 28.5,
          y: 316,
        },
        to: {
          x: -76.2,
          y: -9.5,
        },
        rise: 9.2,
        sigma: 0.3,
        value: 327.11,
      },
      {
        kind: 'distance',
        from: {
          x: -28.5,
          y: 316,
        },
        to: {
          x: 76.2,
          y: -9.5,
        },
        sigma: 0.25,
        value: 327.0,
      },
    ],
    pose: {
      x: 0.0610226951,
      y: 635.0414827351,
      angle: 0.0004002387,
    },
    sigma: {
      x: 1.6609272627,
      y: 0.1487460708,
      angle: 0.005642599,
    },
  },
  {
    nominal: {
      x: 0.0,
      y: 652.5,
      angle: 0.0,
    },
    readings: [
      {
        kind: 'offset',
        through: {
          x: 0,
          y: 0,
        },
        direction: {
          x: 0,
          y: 1,
        },
        to: {
          x: 1.8,
          y: -10,
        },
        sigma: 0.4,
        value: 0.18,
      },
      {
        kind: 'toLine',
        from: {
          x: 20,
          y: 325,
        },
        direction: {
          x: 0.01,
          y: 1,
        },
        line: [
          {
            x: -76.2,
            y: -9.5,
          },
          {
            x: 76.2,
            y: -9.5,
          },
        ],
        sigma: 0.3,
        value: 317.6,
      },
      {
        kind: 'toLine',
        from: {
          x: -20,
          y: 325,
        },
        direction: {
          x: -0.01,
          y: 1,
        },
        line: [
          {
            x: -76.2,
            y: -9.5,
          },
          {
            x: 76.2,
            y: -9.5,
          },
        ],
        sigma: 0.3,
        value: 318.12,
      },
    ],
    pose: {
      x: -1.5077262363,
      y: 652.3615884382,
      angle: -0.0112162892,
    },
    sigma: {
      x: 0.4103729839,
      y: 0.2126090219,
      angle: 0.0091505181,
    },
  },
  {
    nominal: {
      x: 0.0,
      y: 434.5,
      angle: 0.0,
    },
    readings: [
      {
        kind: 'margin',
        nut: {
          x: 14.0,
          y: 0,
        },
        saddle: {
          x: 21.0,
          y: -0.5,
        },
        at: {
          x: 23.0,
          y: 298.08,
        },
        sigma: 0.2,
        value: 3.17,
      },
      {
        kind: 'margin',
        nut: {
          x: -14.0,
          y: 0,
        },
        saddle: {
          x: -21.0,
          y: 0.5,
        },
        at: {
          x: -23.0,
          y: 298.08,
        },
        sigma: 0.2,
        value: 5.06,
      },
      {
        kind: 'toLine',
        from: {
          x: 0,
          y: 0,
        },
        direction: {
          x: 0,
          y: 1,
        },
        line: [
          {
            x: -38,
            y: 1.5,
          },
          {
            x: 38,
            y: -1.5,
          },
        ],
        rise: 8.7,
        sigma: 0.3,
        value: 434.43,
      },
      {
        kind: 'difference',
        a: {
          from: {
            x: -21.0,
            y: 216,
          },
          to: {
            x: -38.1,
            y: -9.5,
          },
        },
        b: {
          from: {
            x: 21.0,
            y: 216,
          },
          to: {
            x: 38.1,
            y: -9.5,
          },
        },
        sigma: 0.15,
        value: 0.25,
      },
    ],
    pose: {
      x: 1.3667843486,
      y: 434.2765253299,
      angle: -0.0060997388,
    },
    sigma: {
      x: 0.2058630284,
      y: 0.3001140623,
      angle: 0.0019822401,
    },
  },
  {
    nominal: {
      x: 0.0,
      y: 647.5,
      angle: 0.0,
    },
    readings: [
      {
        kind: 'distance',
        from: {
          x: 27.5,
          y: 322.5,
        },
        to: {
          x: 76.2,
          y: -9.5,
        },
        rise: 10.0,
        sigma: 0.3,
        value: 320.12,
      },
      {
        kind: 'distance',
        from: {
          x: -27.5,
          y: 322.5,
        },
        to: {
          x: -76.2,
          y: -9.5,
        },
        rise: 10.0,
        sigma: 0.3,
        value: 320.64,
      },
      {
        kind: 'margin',
        nut: {
          x: 18.0,
          y: 0,
        },
        saddle: {
          x: 27.0,
          y: -0.5,
        },
        at: {
          x: 29.5,
          y: 445.04999999999995,
        },
        sigma: 0.2,
        value: 5.35,
      },
      {
        kind: 'margin',
        nut: {
          x: -18.0,
          y: 0,
        },
        saddle: {
          x: -27.0,
          y: 0.5,
        },
        at: {
          x: -29.5,
          y: 445.04999999999995,
        },
        sigma: 0.2,
        value: 5.31,
      },
      {
        kind: 'toLine',
        from: {
          x: 0,
          y: 0,
        },
        direction: {
          x: 0,
          y: 1,
        },
        line: [
          {
            x: -38,
            y: 1.5,
          },
          {
            x: 38,
            y: -1.5,
          },
        ],
        rise: 10.0,
        sigma: 0.3,
        value: 648.16,
      },
    ],
    pose: {
      x: -0.0428430418,
      y: 648.3588044319,
      angle: -0.003306209,
    },
    sigma: {
      x: 0.2058169032,
      y: 0.1746336901,
      angle: 0.0027928256,
    },
  },
  {
    nominal: {
      x: 0.0,
      y: 634.5,
      angle: 0.0,
    },
    readings: [
      {
        kind: 'offset',
        through: {
          x: 23.0,
          y: 0,
        },
        direction: {
          x: 5.5,
          y: 316,
        },
        to: {
          x: 76.2,
          y: 5,
        },
        sigma: 0.4,
        value: 41.57,
      },
      {
        kind: 'toLine',
        from: {
          x: 20,
          y: 316,
        },
        direction: {
          x: 0.01,
          y: 1,
        },
        line: [
          {
            x: -76.2,
            y: -9.5,
          },
          {
            x: 76.2,
            y: -9.5,
          },
        ],
        sigma: 0.3,
        value: 310.12,
      },
      {
        kind: 'difference',
        a: {
          from: {
            x: -28.5,
            y: 316,
          },
          to: {
            x: -76.2,
            y: -9.5,
          },
        },
        b: {
          from: {
            x: 28.5,
            y: 316,
          },
          to: {
            x: 76.2,
            y: -9.5,
          },
        },
        sigma: 0.15,
        value: 1.06,
      },
    ],
    pose: {
      x: -0.5075152614,
      y: 635.7439541665,
      angle: -0.0059000647,
    },
    sigma: {
      x: 0.3958068399,
      y: 0.3015445328,
      angle: 0.0012444137,
    },
  },
  {
    nominal: {
      x: 0.0,
      y: 652.5,
      angle: 0.0,
    },
    readings: [
      {
        kind: 'distance',
        from: {
          x: 30.0,
          y: 325,
        },
        to: {
          x: 76.2,
          y: -9.5,
        },
        rise: 9.8,
        sigma: 0.3,
        value: 322.18,
      },
      {
        kind: 'distance',
        from: {
          x: -30.0,
          y: 325,
        },
        to: {
          x: -76.2,
          y: -9.5,
        },
        rise: 9.8,
        sigma: 0.3,
        value: 323.35,
      },
      {
        kind: 'distance',
        from: {
          x: 30.0,
          y: 325,
        },
        to: {
          x: -76.2,
          y: -9.5,
        },
        rise: 9.8,
        sigma: 0.3,
        value: 337.71,
      },
      {
        kind: 'distance',
        from: {
          x: -30.0,
          y: 325,
        },
        to: {
          x: 76.2,
          y: -9.5,
        },
        sigma: 0.25,
        value: 335.53,
      },
      {
        kind: 'offset',
        through: {
          x: 0,
          y: 0,
        },
        direction: {
          x: 0,
          y: 1,
        },
        to: {
          x: -4.7,
          y: -10,
        },
        sigma: 0.4,
        value: -5.93,
      },
      {
        kind: 'offset',
        through: {
          x: 25.5,
          y: 0,
        },
        direction: {
          x: 4.5,
          y: 325,
        },
        to: {
          x: 76.2,
          y: 5,
        },
        sigma: 0.4,
        value: 40.46,
      },
      {
        kind: 'margin',
        nut: {
          x: 22.0,
          y: 0,
        },
        saddle: {
          x: 27.0,
          y: -0.5,
        },
        at: {
          x: 32.0,
          y: 448.49999999999994,
        },
        sigma: 0.2,
        value: 7.53,
      },
      {
        kind: 'margin',
        nut: {
          x: -22.0,
          y: 0,
        },
        saddle: {
          x: -27.0,
          y: 0.5,
        },
        at: {
          x: -32.0,
          y: 448.49999999999994,
        },
        sigma: 0.2,
        value: 5.79,
      },
      {
        kind: 'toLine',
        from: {
          x: 0,
          y: 0,
        },
        direction: {
          x: 0,
          y: 1,
        },
        line: [
          {
            x: -38,
            y: 1.5,
          },
          {
            x: 38,
            y: -1.5,
          },
        ],
        rise: 9.8,
        sigma: 0.3,
        value: 653.18,
      },
      {
        kind: 'toLine',
        from: {
          x: 20,
          y: 325,
        },
        direction: {
          x: 0.01,
          y: 1,
        },
        line: [
          {
            x: -76.2,
            y: -9.5,
          },
          {
            x: 76.2,
            y: -9.5,
          },
        ],
        sigma: 0.3,
        value: 319.31,
      },
      {
        kind: 'toLine',
        from: {
          x: -20,
          y: 325,
        },
        direction: {
          x: -0.01,
          y: 1,
        },
        line: [
          {
            x: -76.2,
            y: -9.5,
          },
          {
            x: 76.2,
            y: -9.5,
          },
        ],
        sigma: 0.3,
        value: 319.6,
      },
      {
        kind: 'difference',
        a: {
          from: {
            x: -30.0,
            y: 325,
          },
          to: {
            x: -76.2,
            y: -9.5,
          },
        },
        b: {
          from: {
            x: 30.0,
            y: 325,
          },
          to: {
            x: 76.2,
            y: -9.5,
          },
        },
        sigma: 0.15,
        value: 1.32,
      },
    ],
    pose: {
      x: -1.2582344368,
      y: 653.7569643284,
      angle: -0.0063614155,
    },
    sigma: {
      x: 0.1650017491,
      y: 0.1122687608,
      angle: 0.000931424,
    },
  },
  {
    nominal: {
      x: 0.0,
      y: 434.5,
      angle: -0.002,
    },
    readings: [
      {
        kind: 'distance',
        from: {
          x: 21.0,
          y: 216,
        },
        to: {
          x: 38.1,
          y: -9.5,
        },
        rise: 6.8,
        sigma: 0.3,
        value: 210.21,
      },
      {
        kind: 'distance',
        from: {
          x: -21.0,
          y: 216,
        },
        to: {
          x: 38.1,
          y: -9.5,
        },
        sigma: 0.25,
        value: 217.52,
      },
      {
        kind: 'offset',
        through: {
          x: 0,
          y: 0,
        },
        direction: {
          x: 0,
          y: 1,
        },
        to: {
          x: 4.7,
          y: -10,
        },
        sigma: 0.4,
        value: 3.78,
      },
      {
        kind: 'toLine',
        from: {
          x: 0,
          y: 0,
        },
        direction: {
          x: 0,
          y: 1,
        },
        line: [
          {
            x: -38,
            y: 1.5,
          },
          {
            x: 38,
            y: -1.5,
          },
        ],
        rise: 6.8,
        sigma: 0.3,
        value: 434.77,
      },
    ],
    pose: {
      x: -0.9731130221,
      y: 434.7480235025,
      angle: 0.0076710103,
    },
    sigma: {
      x: 0.419799754,
      y: 0.3055506467,
      angle: 0.0097436548,
    },
  },
  {
    nominal: {
      x: 0.0,
      y: 647.5,
      angle: 0.0013,
    },
    readings: [
      {
        kind: 'margin',
        nut: {
          x: 18.0,
          y: 0,
        },
        saddle: {
          x: 27.0,
          y: -0.5,
        },
        at: {
          x: 29.5,
          y: 445.04999999999995,
        },
        sigma: 0.2,
        value: 5.12,
      },
      {
        kind: 'toLine',
        from: {
          x: -20,
          y: 322.5,
        },
        direction: {
          x: -0.01,
          y: 1,
        },
        line: [
          {
            x: -76.2,
            y: -9.5,
          },
          {
            x: 76.2,
            y: -9.5,
          },
        ],
        sigma: 0.3,
        value: 316.49,
      },
      {
        kind: 'difference',
        a: {
          from: {
            x: -27.5,
            y: 322.5,
          },
          to: {
            x: -76.2,
            y: -9.5,
          },
        },
        b: {
          from: {
            x: 27.5,
            y: 322.5,
          },
          to: {
            x: 76.2,
            y: -9.5,
          },
        },
        sigma: 0.15,
        value: -0.34,
      },
      {
        kind: 'offset',
        through: {
          x: 0,
          y: 0,
        },
        direction: {
          x: 0,
          y: 1,
        },
        to: {
          x: -4.6,
          y: -10,
        },
        sigma: 0.4,
        value: -4.41,
      },
    ],
    pose: {
      x: 0.2495749174,
      y: 648.5137556448,
      angle: 0.0017155819,
    },
    sigma: {
      x: 0.2370157515,
      y: 0.3009288305,
      angle: 0.0010896099,
    },
  },
  {
    nominal: {
      x: 0.0,
      y: 634.5,
      angle: 0.0048,
    },
    readings: [
      {
        kind: 'distance',
        from: {
          x: -28.5,
          y: 316,
        },
        to: {
          x: -76.2,
          y: -9.5,
        },
        rise: 10.2,
        sigma: 0.3,
        value: 311.22,
      },
      {
        kind: 'distance',
        from: {
          x: 28.5,
          y: 316,
        },
        to: {
          x: -76.2,
          y: -9.5,
        },
        rise: 10.2,
        sigma: 0.3,
        value: 324.39,
      },
      {
        kind: 'offset',
        through: {
          x: 23.0,
          y: 0,
        },
        direction: {
          x: 5.5,
          y: 316,
        },
        to: {
          x: 76.2,
          y: 5,
        },
        sigma: 0.4,
        value: 41.98,
      },
      {
        kind: 'toLine',
        from: {
          x: 20,
          y: 316,
        },
        direction: {
          x: 0.01,
          y: 1,
        },
        line: [
          {
            x: -76.2,
            y: -9.5,
          },
          {
            x: 76.2,
            y: -9.5,
          },
        ],
        sigma: 0.3,
        value: 308.42,
      },
    ],
    pose: {
      x: 0.0581338272,
      y: 633.6240439002,
      angle: 0.0125491436,
    },
    sigma: {
      x: 0.3898354523,
      y: 0.2400715413,
      angle: 0.0037037123,
    },
  },
  {
    nominal: {
      x: 0.0,
      y: 652.5,
      angle: -0.0083,
    },
    readings: [
      {
        kind: 'distance',
        from: {
          x: 30.0,
          y: 325,
        },
        to: {
          x: 76.2,
          y: -9.5,
        },
        rise: 9.4,
        sigma: 0.3,
        value: 321.17,
      },
      {
        kind: 'distance',
        from: {
          x: -30.0,
          y: 325,
        },
        to: {
          x: -76.2,
          y: -9.5,
        },
        rise: 9.4,
        sigma: 0.3,
        value: 322.97,
      },
      {
        kind: 'distance',
        from: {
          x: 30.0,
          y: 325,
        },
        to: {
          x: -76.2,
          y: -9.5,
        },
        rise: 9.4,
        sigma: 0.3,
        value: 337.14,
      },
      {
        kind: 'distance',
        from: {
          x: -30.0,
          y: 325,
        },
        to: {
          x: 76.2,
          y: -9.5,
        },
        sigma: 0.25,
        value: 335.03,
      },
      {
        kind: 'offset',
        through: {
          x: 0,
          y: 0,
        },
        direction: {
          x: 0,
          y: 1,
        },
        to: {
          x: -3.7,
          y: -10,
        },
        sigma: 0.4,
        value: -4.4,
      },
      {
        kind: 'offset',
        through: {
          x: 25.5,
          y: 0,
        },
        direction: {
          x: 4.5,
          y: 325,
        },
        to: {
          x: 76.2,
          y: 5,
        },
        sigma: 0.4,
        value: 40.13,
      },
      {
        kind: 'margin',
        nut: {
          x: 22.0,
          y: 0,
        },
        saddle: {
          x: 27.0,
          y: -0.5,
        },
        at: {
          x: 32.0,
          y: 448.49999999999994,
        },
        sigma: 0.2,
        value: 6.79,
      },
      {
        kind: 'margin',
        nut: {
          x: -22.0,
          y: 0,
        },
        saddle: {
          x: -27.0,
          y: 0.5,
        },
        at: {
          x: -32.0,
          y: 448.49999999999994,
        },
        sigma: 0.2,
        value: 5.91,
      },
      {
        kind: 'toLine',
        from: {
          x: 0,
          y: 0,
        },
        direction: {
          x: 0,
          y: 1,
        },
        line: [
          {
            x: -38,
            y: 1.5,
          },
          {
            x: 38,
            y: -1.5,
          },
        ],
        rise: 9.4,
        sigma: 0.3,
        value: 653.47,
      },
      {
        kind: 'toLine',
        from: {
          x: 20,
          y: 325,
        },
        direction: {
          x: 0.01,
          y: 1,
        },
        line: [
          {
            x: -76.2,
            y: -9.5,
          },
          {
            x: 76.2,
            y: -9.5,
          },
        ],
        sigma: 0.3,
        value: 318.53,
      },
      {
        kind: 'toLine',
        from: {
          x: -20,
          y: 325,
        },
        direction: {
          x: -0.01,
          y: 1,
        },
        line: [
          {
            x: -76.2,
            y: -9.5,
          },
          {
            x: 76.2,
            y: -9.5,
          },
        ],
        sigma: 0.3,
        value: 319.01,
      },
      {
        kind: 'difference',
        a: {
          from: {
            x: -30.0,
            y: 325,
          },
          to: {
            x: -76.2,
            y: -9.5,
          },
        },
        b: {
          from: {
            x: 30.0,
            y: 325,
          },
          to: {
            x: 76.2,
            y: -9.5,
          },
        },
        sigma: 0.15,
        value: 1.97,
      },
    ],
    pose: {
      x: -0.7742644837,
      y: 653.2587182868,
      angle: -0.0110546627,
    },
    sigma: {
      x: 0.1649328002,
      y: 0.1122795491,
      angle: 0.0009316349,
    },
  },
] as const;
