"""Writes DXF files of every version and kind into a folder, and prints the size of what is drawn in each, as ezdxf sees it."""

import json
import math
import sys
from pathlib import Path

import ezdxf
from ezdxf import bbox, disassemble
from ezdxf.math import BoundingBox

FOLDER = Path(sys.argv[1])
VERSIONS = ["R12", "R2000", "R2004", "R2007", "R2010", "R2013", "R2018"]
# mm to a unit, by $INSUNITS: AutoCAD's DXF reference, header variables.
FOOT = 304.8
SURVEY = 1200000 / 3937
UNITS = {
    1: 25.4, 2: FOOT, 3: FOOT * 5280, 4: 1, 5: 10, 6: 1000, 7: 1e6, 8: 25.4e-6, 9: 25.4e-3, 10: FOOT * 3, 11: 1e-7,
    12: 1e-6, 13: 1e-3, 14: 100, 15: 1e4, 16: 1e5, 21: SURVEY, 22: SURVEY / 12, 23: SURVEY * 3, 24: SURVEY * 5280,
}
# Chords of the boxes stray less than this, mm.
STRAY = 0.0005
# Points along a curve.
POINTS = 4000

# x, y, bulge: a bridge with round ends and a belly.
BELLY = [(0, 0, 0), (150, 0, -0.35), (146, 26, 0), (110, 27, 0.18), (40, 27, 0), (4, 26, -0.35)]


def polyline(space, doc, points, close=True, extrusion=(0, 0, 1), scale=1.0):
    rows = [(x * scale, y * scale, b) for x, y, b in points]
    if doc.dxfversion == "AC1009":
        return space.add_polyline2d(rows, format="xyb", close=close, dxfattribs={"extrusion": extrusion})
    return space.add_lwpolyline(rows, format="xyb", close=close, dxfattribs={"extrusion": extrusion})


def belly(doc, msp, s):
    polyline(msp, doc, BELLY, scale=s)


def mirrored(doc, msp, s):
    polyline(msp, doc, BELLY, extrusion=(0, 0, -1), scale=s)


def circle(doc, msp, s):
    msp.add_circle((3 * s, 4 * s), 60 * s)


def loose(doc, msp, s):
    """A stadium of two lines and two arcs, out of order, one line run backward."""
    msp.add_line((20 * s, 30 * s), (120 * s, 30 * s))
    msp.add_arc((120 * s, 15 * s), 15 * s, 270, 90)
    msp.add_line((20 * s, 0), (120 * s, 0))
    msp.add_arc((20 * s, 15 * s), 15 * s, 90, 270)


def loose_from_behind(doc, msp, s):
    msp.add_line((-20 * s, 30 * s), (-120 * s, 30 * s))
    msp.add_arc((120 * s, 15 * s), 15 * s, 270, 90, dxfattribs={"extrusion": (0, 0, -1)})
    msp.add_line((-20 * s, 0), (-120 * s, 0))
    msp.add_arc((20 * s, 15 * s), 15 * s, 90, 270, dxfattribs={"extrusion": (0, 0, -1)})


def blocks(doc, msp, s):
    """A block in a block, turned, mirrored and stretched."""
    inner = doc.blocks.new("Inner", base_point=(10 * s, 5 * s))
    polyline(inner, doc, BELLY, scale=s)
    outer = doc.blocks.new("Outer")
    outer.add_blockref("Inner", (7 * s, 3 * s), dxfattribs={"rotation": 20, "xscale": -1, "yscale": 1})
    msp.add_blockref("outer", (50 * s, -20 * s), dxfattribs={"rotation": 33, "xscale": 1.2, "yscale": 1.2})


def stretched(doc, msp, s):
    inner = doc.blocks.new("Disc", base_point=(1 * s, 2 * s))
    inner.add_circle((5 * s, 5 * s), 20 * s)
    msp.add_blockref("Disc", (0, 0), dxfattribs={"rotation": 30, "xscale": 3, "yscale": 0.8})


def array(doc, msp, s):
    inner = doc.blocks.new("Bar")
    polyline(inner, doc, [(0, 0, 0), (40, 0, 0), (40, 9, 0), (0, 9, 0)], scale=s)
    msp.add_blockref("Bar", (0, 0), dxfattribs={
        "rotation": 15, "column_count": 3, "row_count": 2, "column_spacing": 50 * s, "row_spacing": 20 * s,
    })


def paper(doc, msp, s):
    polyline(msp, doc, BELLY, scale=s)
    polyline(doc.layout("Layout1"), doc, [(x * 2, y * 2, b) for x, y, b in BELLY], scale=s)


def hidden_layer(doc, msp, s):
    doc.layers.new("OFF").off()
    polyline(msp, doc, BELLY, scale=s)
    polyline(msp, doc, [(x * 2, y * 2, b) for x, y, b in BELLY], scale=s).dxf.layer = "off"


def ellipse(doc, msp, s):
    msp.add_ellipse((5 * s, 6 * s), (60 * s, 20 * s), 0.4)


def ellipse_parts(doc, msp, s):
    """The upper and lower part of an ellipse, cut off at both ends."""
    msp.add_ellipse((0, 0), (70 * s, 0), 0.3, 0.4, 2.9)
    msp.add_ellipse((0, 0), (70 * s, 0), 0.3, 2 * math.pi - 2.9, 2 * math.pi - 0.4)
    msp.add_line((70 * s * math.cos(0.4), 21 * s * math.sin(0.4)), (70 * s * math.cos(0.4), -21 * s * math.sin(0.4)))
    msp.add_line((70 * s * math.cos(2.9), 21 * s * math.sin(2.9)), (70 * s * math.cos(2.9), -21 * s * math.sin(2.9)))


HULL = [(0, 0), (40, -12), (75, 8), (110, -12), (150, 0), (140, 30), (75, 40), (10, 30)]


def clamped(degree):
    def draw(doc, msp, s):
        spline = msp.add_open_spline([(x * s, y * s) for x, y in HULL + [HULL[0]]], degree=degree)
        spline.dxf.flags |= 8
    return draw


def wrapped(degree):
    """Uniform knots, control points that repeat: closed without clamped ends."""
    def draw(doc, msp, s):
        msp.add_spline().set_closed([(x * s, y * s, 0) for x, y in HULL], degree=degree)
    return draw


def weighted(doc, msp, s):
    weights = [1, 2, 0.5, 2, 1, 3, 1, 0.7, 1]
    msp.add_rational_spline([(x * s, y * s) for x, y in HULL + [HULL[0]]], weights, degree=3)


def round_spline(doc, msp, s):
    """A circle of radius 50 as a rational quadratic: nine points around a square."""
    r = 50 * s
    points = [(r, 0), (r, r), (0, r), (-r, r), (-r, 0), (-r, -r), (0, -r), (r, -r), (r, 0)]
    w = math.sqrt(0.5)
    knots = [0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4]
    msp.add_rational_spline(points, [1, w, 1, w, 1, w, 1, w, 1], degree=2, knots=knots)


ANY = {
    "belly": belly, "mirrored": mirrored, "circle": circle, "loose": loose, "loose from behind": loose_from_behind,
    "blocks": blocks, "array": array, "paper": paper, "hidden layer": hidden_layer,
}
NEWER = {
    "stretched": stretched, "ellipse": ellipse, "ellipse parts": ellipse_parts,
    **{f"clamped {degree}": clamped(degree) for degree in (1, 2, 3, 4, 5)},
    **{f"wrapped {degree}": wrapped(degree) for degree in (2, 3, 4)},
    "weighted": weighted, "round spline": round_spline,
}


def points_of(entity):
    """Points along a curve, or None for what ezdxf gives an exact box of."""
    kind = entity.dxftype()
    if kind == "ELLIPSE":
        low, high = entity.dxf.start_param, entity.dxf.end_param
        return list(entity.vertices([low + (high - low) * i / POINTS for i in range(POINTS + 1)]))
    if kind == "SPLINE":
        curve = entity.construction_tool()
        knots = curve.knots()
        low, high = knots[curve.degree], knots[-curve.degree - 1]
        return list(curve.points([low + (high - low) * i / POINTS for i in range(POINTS)]))
    return None


def measure(doc, msp, s):
    """Across and along, and some points on the curves, mm."""
    box, some = BoundingBox(), []
    for entity in disassemble.recursive_decompose(msp):
        if doc.layers.get(entity.dxf.layer).is_off():
            continue
        points = points_of(entity)
        if points is None:
            box.extend([*bbox.extents([entity], flatten=STRAY * s)])
        else:
            box.extend(points)
            some += [(p.x / s, p.y / s) for p in points[:: POINTS // 50]]
    return box.size.x / s, box.size.y / s, some


def write(name, draw, version, unit):
    doc = ezdxf.new(version)
    doc.header["$INSUNITS"] = unit
    doc.header["$MEASUREMENT"] = 0 if unit == 4 else 1
    s = 1 / UNITS.get(unit, 1)
    draw(doc, doc.modelspace(), s)
    file = f"{name}-{version}-{unit}.dxf".replace(" ", "-")
    doc.saveas(FOLDER / file)
    across, along, points = measure(doc, doc.modelspace(), s)
    told = version != "R12" and unit in UNITS
    return {"file": file, "across": across, "along": along, "told": told, "all": name == "array", "points": points}


def main():
    cases = [write(name, draw, version, 4) for version in VERSIONS for name, draw in ANY.items()]
    cases += [write(name, draw, version, 4) for version in VERSIONS[1:] for name, draw in NEWER.items()]
    cases += [write("belly", belly, "R2010", unit) for unit in [0, *UNITS]]
    print(json.dumps(cases))


main()
