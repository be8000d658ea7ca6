/** The stable face of the core as it was promised to checks from outside the project, copied out by hand. */

interface Issue {
  readonly path: string;
  readonly code: string;
  readonly severity: 'error' | 'warning';
  readonly message: string;
}
type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly issues: readonly Issue[] };
interface Point {
  readonly x: number;
  readonly y: number;
}
type Segment =
  | { readonly kind: 'line'; readonly to: Point }
  | { readonly kind: 'arc'; readonly to: Point; readonly centre: Point; readonly clockwise: boolean }
  | { readonly kind: 'cubic'; readonly to: Point; readonly c1: Point; readonly c2: Point };
interface Path {
  readonly start: Point;
  readonly segments: readonly Segment[];
  readonly closed: boolean;
}
type LengthStyle =
  | { readonly unit: 'mm'; readonly decimals: number }
  | { readonly unit: 'in'; readonly decimals: number }
  | { readonly unit: 'in'; readonly denominator: 8 | 16 | 32 | 64 };
interface StringSpec {
  readonly name: string;
  readonly frequency: number;
  readonly elastic:
    | {
        readonly kind: 'core';
        readonly massPerLength: number;
        readonly coreDiameter: number;
        readonly coreShape: 'round' | 'hex';
        readonly modulus: number;
      }
    | {
        readonly kind: 'measured';
        readonly kappa: number;
        readonly b0: number;
        readonly at?: { readonly scaleLength: number; readonly frequency: number };
      };
}
interface Setup {
  readonly scaleLength: number;
  readonly nutHeight: number;
  readonly action: number;
  readonly relief: number;
  readonly reliefFrets: readonly [number, number];
  readonly fingerDistance: number;
  readonly pushDown?: number;
}
interface Setback {
  readonly saddle: number;
  readonly nut: number;
}
interface SetbackFit extends Setback {
  readonly rms: number;
  readonly cents: readonly number[];
}
interface SaddleLine {
  readonly centre: number;
  readonly slope: number;
  readonly misses: readonly number[];
}

interface Pose {
  readonly x: number;
  readonly y: number;
  readonly angle: number;
}
type Reading = { readonly value: number; readonly sigma: number } & (
  | { readonly kind: 'distance'; readonly from: Point; readonly to: Point; readonly rise?: number }
  | { readonly kind: 'offset'; readonly through: Point; readonly direction: Point; readonly to: Point }
  | { readonly kind: 'margin'; readonly nut: Point; readonly saddle: Point; readonly at: Point }
  | {
      readonly kind: 'toLine';
      readonly from: Point;
      readonly direction: Point;
      readonly line: readonly [Point, Point];
      readonly rise?: number;
    }
  | {
      readonly kind: 'difference';
      readonly a: { readonly from: Point; readonly to: Point };
      readonly b: { readonly from: Point; readonly to: Point };
    }
);
interface PoseFit {
  readonly pose: Pose;
  readonly sigma: Pose;
  readonly residuals: readonly number[];
  readonly unseen: readonly ('x' | 'y' | 'angle')[];
}
interface PrintReading {
  readonly nominalX: number;
  readonly nominalY: number;
  readonly readX: number;
  readonly readY: number;
  readonly diagonals?: { readonly nominal: number; readonly a: number; readonly b: number };
  readonly sigma?: number;
  readonly part?: { readonly x: number; readonly y: number };
}
interface PrintFactor {
  readonly factorX: number;
  readonly factorY: number;
  readonly sigmaX: number;
  readonly sigmaY: number;
  readonly skewDeg: number;
  readonly errorAtPart: { readonly x: number; readonly y: number };
  readonly verdict: 'true' | 'correct' | 'reprint' | 'refuse';
  readonly sure: boolean;
  readonly hint: string | null;
}

/** All of them. */
export interface Contract {
  parseLength(text: string, unit: 'mm' | 'in'): Result<number>;
  formatLength(mm: number, style: LengthStyle): string;
  fretDistance(scaleLength: number, fret: number): number;
  fitScale(readings: readonly { readonly fret: number; readonly value: number; readonly sigma: number }[]): Result<{
    readonly scaleLength: number;
    readonly nutOffset: number;
    readonly sigma: { readonly scaleLength: number; readonly nutOffset: number };
    readonly residuals: readonly number[];
  }>;
  stringPositions(args: {
    readonly width: number;
    readonly marginTreble: number;
    readonly marginBass: number;
    readonly diameters: readonly number[];
    readonly rule: 'equal-gaps' | 'equal-centres';
  }): Result<readonly number[]>;
  fretCents(string: StringSpec, setup: Setup, setback: Setback, frets: readonly number[]): readonly number[];
  fitSetback(
    string: StringSpec,
    setup: Setup,
    options: { readonly frets: readonly number[]; readonly freeNut: boolean },
  ): Result<SetbackFit>;
  fitSaddleLine(
    points: readonly { readonly x: number; readonly setback: number }[],
    method: 'least-squares' | 'minimax' | 'outer',
    slope?: number,
  ): Result<SaddleLine>;
  centsPerMm(scaleLength: number, fret: number): number;
  saddleTravelFor(cents: number, scaleLength: number, fret: number): number;
  pathArea(path: Path): number;
  signedArea(path: Path): number;
  pathCentroid(path: Path): Point;
  offsetPath(path: Path, distance: number): Promise<Result<readonly Path[]>>;
  mirrorPath(path: Path): Path;
  solvePose(nominal: Pose, readings: readonly Reading[]): Result<PoseFit>;
  solvePrintFactor(reading: PrintReading): Result<PrintFactor>;
  clampForce(area: number, pressurePsi: number): { readonly newton: number; readonly lbf: number };
  equilibriumMoisture(celsius: number, relativeHumidity: number): number;
}
