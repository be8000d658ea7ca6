"""
Prints and scans a page in the mind, and reads it as a maker would, with OpenCV alone.

In: JSON with picture (a PGM of the page), dpi (of that picture), stretchX, stretchY, skewDeg, turnDeg, noise, seed, and scan, where
the scan is kept. Out: JSON with the lengths of both long lines and both diagonals of the square, mm. Nothing here knows the sheet
but for what stands on it: the lowest long line across, the leftmost long line along, and a square of about 100 mm.
"""

import json
import sys

import cv2
import numpy as np

SCAN_DPI = 300
PX = SCAN_DPI / 25.4  # pixels to a millimetre of the scan


def scanned(wanted):
    """The page as a printer and a scanner would hand it back: stretched, out of square, laid askew, blurred, noisy."""
    page = cv2.imread(wanted["picture"], cv2.IMREAD_GRAYSCALE)
    half = SCAN_DPI / wanted["dpi"]
    skew, turn = np.radians(wanted["skewDeg"]), np.radians(wanted["turnDeg"])
    printed = np.array(
        [
            [wanted["stretchX"], wanted["stretchY"] * np.sin(skew)],
            [0, wanted["stretchY"] * np.cos(skew)],
        ]
    )
    laid = np.array([[np.cos(turn), -np.sin(turn)], [np.sin(turn), np.cos(turn)]])
    matrix = half * laid @ printed
    border = 12 * PX
    size = (int(page.shape[1] * half + 2 * border), int(page.shape[0] * half + 2 * border))
    soft = cv2.GaussianBlur(page, (0, 0), 0.5 / half)
    moved = np.hstack([matrix, [[border], [border]]])
    scan = cv2.warpAffine(soft, moved, size, flags=cv2.INTER_CUBIC, borderValue=255)
    noise = np.random.default_rng(wanted["seed"]).normal(0, wanted["noise"], scan.shape)
    return np.clip(scan + noise, 0, 255).astype(np.uint8)


def darkness(scan, points):
    """How dark the scan is at points, 0 to 1, between pixels by straight lines."""
    xs, ys = points[..., 0].astype(np.float32), points[..., 1].astype(np.float32)
    xs, ys = np.atleast_2d(xs), np.atleast_2d(ys)
    return 1 - cv2.remap(scan, xs, ys, cv2.INTER_LINEAR, borderValue=255) / 255.0


def on_line(scan, start, end, inset):
    """A straight line through the middle of a drawn one, from where its darkness lies across it; answers point and direction."""
    along = (end - start) / np.linalg.norm(end - start)
    across = np.array([-along[1], along[0]])
    places = np.linspace(inset, 1 - inset, 240)[:, None] * (end - start) + start
    off = np.linspace(-0.5 * PX, 0.5 * PX, 25)
    dark = darkness(scan, places[:, None, :] + off[None, :, None] * across)
    dark = np.where(dark > 0.25, dark, 0)
    weight = dark.sum(axis=1)
    found = weight > 0.5 * np.median(weight)
    centre = (dark * off).sum(axis=1)[found] / weight[found]
    points = places[found] + centre[:, None] * across
    near = np.abs(centre - np.median(centre)) < 0.12 * PX
    vx, vy, x, y = cv2.fitLine(points[near].astype(np.float32), cv2.DIST_HUBER, 0, 0.01, 0.01).ravel()
    way = np.array([vx, vy], dtype=float)
    return np.array([x, y], dtype=float), way * np.sign(way @ along)


def whole_line(scan, point, way, middle):
    """How far a drawn line goes from its middle both ways before there is a gap of half a millimetre, along its direction."""
    step = 0.5
    ends = []
    for sign in (-1, 1):
        reach = middle + sign * np.arange(0, 300 * PX, step)
        dark = darkness(scan, (point + reach[:, None] * way)[:, None, :]).max(axis=1) > 0.3
        gap = int(0.5 * PX / step)
        empty = np.convolve(~dark, np.ones(gap), "valid") == gap
        ends.append(reach[np.argmax(empty)])
    return ends


def long_line(scan, binary, upright):
    """From the first tick to the last of the long line: the lowest across, or the leftmost along. mm."""
    small = 4
    height, width = binary.shape[0] // small * small, binary.shape[1] // small * small
    coarse = binary[:height, :width].reshape(height // small, small, width // small, small).max(axis=(1, 3))
    lines = cv2.HoughLinesP(coarse, 1, np.pi / 1800, 100, minLineLength=int(50 * PX / small), maxLineGap=4)
    ends = [line.reshape(2, 2).astype(float) * small + small / 2 for line in lines]
    slope = [abs(e[1] - e[0])[0 if upright else 1] / np.linalg.norm(e[1] - e[0]) for e in ends]
    ends = [e for e, s in zip(ends, slope) if s < 0.03]
    ends.sort(key=lambda e: e[:, 0].mean() if upright else -e[:, 1].mean())
    for start, end in ends:
        if start[1 if upright else 0] > end[1 if upright else 0]:
            start, end = end, start
        point, way = on_line(scan, start, end, 0.05)
        first, last = whole_line(scan, point, way, ((start + end) / 2 - point) @ way)
        # A row of words looks like a line from afar, and has gaps.
        if last - first > 120 * PX:
            break
    point, way = on_line(scan, point + first * way, point + last * way, 0.02)
    across = np.array([-way[1], way[0]])
    first, last = whole_line(scan, point, way, 0)
    reach = np.arange(first - 2 * PX, last + 2 * PX, 0.25)
    best = []
    for side in (-1, 1):
        # Ticks are the marks that reach at least a millimetre out from the line.
        rows = np.linspace(0.5 * PX, 1.0 * PX, 7)
        dark = darkness(scan, point + reach[None, :, None] * way + side * rows[:, None, None] * across).mean(axis=0)
        marked = np.flatnonzero(np.diff(np.concatenate([[0], dark > 0.3, [0]]).astype(int)))
        ticks = []
        for begin, stop in zip(marked[::2], marked[1::2]):
            span = slice(max(0, begin - 8), stop + 8)
            ticks.append(np.average(reach[span], weights=np.where(dark[span] > 0.08, dark[span], 0)))
        if len(ticks) > len(best):
            best = ticks
    return (best[-1] - best[0]) / PX


def square_corners(scan, binary):
    """Corners of the square: top left, top right, bottom right, bottom left, where the middles of its sides cross."""
    contours, _ = cv2.findContours(binary, cv2.RETR_LIST, cv2.CHAIN_APPROX_NONE)
    for contour in contours:
        quad = cv2.approxPolyDP(contour, 2 * PX, True).reshape(-1, 2).astype(float)
        if len(quad) != 4:
            continue
        sides = np.linalg.norm(np.roll(quad, -1, axis=0) - quad, axis=1) / PX
        if np.all(np.abs(sides - 100) < 12):
            break
    else:
        raise SystemExit("expected a square of about 100 mm")
    total, apart = quad.sum(axis=1), quad[:, 0] - quad[:, 1]
    quad = quad[[total.argmin(), apart.argmax(), total.argmax(), apart.argmin()]]
    lines = [on_line(scan, quad[k], quad[(k + 1) % 4], 0.1) for k in range(4)]
    corners = []
    for k in range(4):
        (p, v), (q, w) = lines[k - 1], lines[k]
        t = np.linalg.solve(np.column_stack([v, -w]), q - p)[0]
        corners.append(p + t * v)
    return corners


def main():
    wanted = json.load(sys.stdin)
    scan = scanned(wanted)
    cv2.imwrite(wanted["scan"], scan)
    _, binary = cv2.threshold(cv2.GaussianBlur(scan, (3, 3), 0), 0, 255, cv2.THRESH_BINARY_INV + cv2.THRESH_OTSU)
    top_left, top_right, bottom_right, bottom_left = square_corners(scan, binary)
    answer = {
        "across": long_line(scan, binary, False),
        "along": long_line(scan, binary, True),
        "down": np.linalg.norm(bottom_right - top_left) / PX,
        "up": np.linalg.norm(top_right - bottom_left) / PX,
    }
    json.dump(answer, sys.stdout)


main()
