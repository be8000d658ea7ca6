"""Offsets polygons with Shapely: reads [{corners, distance, points}] as JSON, writes [{area, rings, misses}].

The ring of points within the distance of an outline is put together from what it sweeps: a rectangle over each side, and
about each corner a disc, or where the outline hardly turns a triangle on either side. Shapely's own buffer would smooth
what is shallower than a hundredth of the distance, which is more than an offset may miss.
"""
import json
import math
import sys

from shapely.geometry import LinearRing, Point, Polygon
from shapely.ops import unary_union

HARDLY_TURNS = 0.03
CHORDS_IN_QUARTER = 512
DUST = 1e-6


def swept(corners, reach):
    sides = list(zip(corners, corners[1:] + corners[:1]))
    normals = []
    parts = []
    for (ax, ay), (bx, by) in sides:
        length = math.hypot(bx - ax, by - ay)
        nx, ny = (by - ay) / length * reach, (ax - bx) / length * reach
        normals.append((nx, ny))
        parts.append(Polygon([(ax + nx, ay + ny), (bx + nx, by + ny), (bx - nx, by - ny), (ax - nx, ay - ny)]))
    for index, (x, y) in enumerate(corners):
        (px, py), (nx, ny) = normals[index - 1], normals[index]
        turn = abs(math.atan2(px * ny - py * nx, px * nx + py * ny))
        if turn > HARDLY_TURNS:
            parts.append(Point(x, y).buffer(reach, CHORDS_IN_QUARTER))
        elif turn > 0:
            parts.append(Polygon([(x, y), (x + px, y + py), (x + nx, y + ny)]))
            parts.append(Polygon([(x, y), (x - px, y - py), (x - nx, y - ny)]))
    return unary_union(parts)


def offset(corners, distance):
    corners = [tuple(corner) for corner in corners]
    inside = Polygon(corners)
    ring = swept(corners, abs(distance))
    found = inside.union(ring) if distance > 0 else inside.difference(ring)
    polygons = [part for part in getattr(found, "geoms", [found]) if part.area > DUST]
    holes = [hole for part in polygons for hole in part.interiors if Polygon(hole).area > DUST]
    return found.area, len(polygons) + len(holes)


def answer(case):
    area, rings = offset(case["corners"], case["distance"])
    outline = LinearRing(case["corners"])
    misses = [abs(outline.distance(Point(x, y)) - abs(case["distance"])) for x, y in case["points"]]
    return {"area": area, "rings": rings, "misses": misses}


json.dump([answer(case) for case in json.load(sys.stdin)], sys.stdout)
