/**
 * The worksheet of the steel-string of `cards.ts`: scale 645, board 46 at the nut and 57 at the 12th fret, 20 frets, strings over
 * 54, outer diameters 0.3048 and 1.3462, nut margins of 3. Hand arithmetic.
 *
 * line        620, and 620 − 322.5
 * last fret   645(1 − 2^(−20/12)) = 441.838; the board 46 + 11·441.838/322.5 = 61.0705 wide there
 *             treble string 19.8476 + 7.1524·441.838/647.778 = 24.7261: 30.5352 − 24.7261 − 0.1524 = 5.6567
 *             bass string   19.3269 + 7.6731·0.682082 = 24.5606: 30.5352 − 24.5606 − 0.6731 = 5.3015
 * corners     front edge 638.789 from the nut, its ends at ±74.2, nut corners at ±23:
 *             √(638.789² + 51.2²) = 640.838 the same side, √(638.789² + 97.2²) = 646.142 across
 */
export const WORKSHEET = {
  place: [
    ['Line from nut', '620.0 mm', '620.0 mm'],
    ['… from the 12th fret', '297.5 mm', '297.5 mm'],
    ['Edge to string, last fret', '5.7 mm', '5.3 mm'],
    ['Break point from nut', '646.6 mm', '649.0 mm'],
    ['… from the 12th fret', '324.1 mm', '326.5 mm'],
    ['Slot front, centre', '646.2 mm', '323.7 mm'],
    ['Treble nut corner to', '640.8 mm', '646.1 mm'],
    ['Bass nut corner to', '646.1 mm', '640.8 mm'],
  ],
  /** A square of 100 has diagonals of 141.42; one of 4 in = 101.6 has 5.657 in = 5 21/32. */
  square: { mm: ['100.0 mm', '141.4 mm'], in: ['4″', '5 21/32″'] },
  /** Rooms of a page, less head and name: A4 upright 240 high, Letter on its side 158.9 high, A4 upright 180 wide. */
  widest: 180,
  tallest: 153,
} as const;
