"""
Works out named points of the sheets, apart from Saddlemark's own program, from what a saved project says and nothing that
the program computed. Straight-line and circle geometry in double precision.

    python3 sheet_points.py PROJECT.json... > points.json

Every list of points belongs to one drawing on a sheet, in mm, as it lies on the page for a right-handed instrument: x to
the right, y down, from an origin of its own, since where a drawing lies on its page is not told here. A point with a third
figure is a circle of that radius. For a left-handed instrument x changes sign.
"""

import json
import math
import sys


def bridge_of(project):
    """Saddle line, slot, footprint; x from the centreline, + toward the treble, y from the nut."""
    instrument, bridge = project["instrument"], project["bridge"]
    slot, outline = bridge["slot"], bridge["outline"]
    scale = instrument["scale"]["entered"]
    spread = instrument["spread"]["own"]
    rule = project["compensation"]["rule"]
    # Straight from treble to bass through both figures of the rule, at the outer strings.
    slope = (rule["treble"] - rule["bass"]) / spread
    stretch = math.hypot(1, slope)
    cos, sin = 1 / stretch, slope / stretch
    width, crown = slot["width"], slot["crown"]
    # From what the rule reaches to, to where the string breaks: square to the slot, so longer along the centreline.
    to_break = {"break-point": 0, "slot-front": crown, "slot-centre": crown - 0.5}[rule["reach"]] * width * stretch
    break_point = scale + (rule["treble"] + rule["bass"]) / 2 + to_break
    front_wall = break_point - crown * width * stretch
    middle = front_wall + 0.5 * width * stretch
    half = slot["length"] / 2
    inner = half - width / 2
    front = front_wall - slot["fromFront"]
    return {
        "scale": scale,
        "spread": spread,
        "slope": slope,
        "cos": cos,
        "sin": sin,
        "break": break_point,
        "front_wall": front_wall,
        "middle": middle,
        "front": front,
        # The centres of round ends; a square end is drilled half a width in as well.
        "pins": [(side * inner * cos, middle + side * inner * sin) for side in (1, -1)],
        "walls": [
            # (end, wall): half a width off the slot's own line, where a round end begins, or at the very end.
            (
                side * reach * cos - off * sin,
                middle + side * reach * sin + off * cos,
            )
            for reach in [inner if slot["ends"] == "round" else half]
            for side in (1, -1)
            for off in (-width / 2, width / 2)
        ],
        "slot_half": inner * cos + width / 2 if slot["ends"] == "round" else half * cos + width / 2 * abs(sin),
        "outline": outline_of(outline, front),
    }


def outline_of(outline, front):
    """Half length, depth at the deepest, where front and back edge end on the treble side, and a point of the back edge."""
    figures = outline["parameters"]
    half, full, corner = figures["length"] / 2, figures["full"], figures["corner"]
    if outline["shape"] == "belly":
        wing, run, depth = figures["wing"], figures["belly"] / 2, figures["full"] - figures["wing"]
        # Reverse curve between parallel tangents: the radii add up to (run² + depth²) / (2 depth), and the inflection
        # divides its chord as the radii do.
        radii = (run**2 + depth**2) / (2 * depth)
        share = figures["shoulder"] / radii
        back = (run * (1 - share), front + wing + depth * share)
    elif outline["shape"] == "tie-block":
        back = (half, front + full)
    elif outline["shape"] == "small-ukulele":
        # The back edge is an arc from tip to tip; a corner of radius c touches it and the end.
        bulge = full - figures["end"]
        radius = (half**2 + bulge**2) / (2 * bulge)
        centre = full - radius
        end = centre + math.sqrt((radius - corner) ** 2 - (half - corner) ** 2)
        back = ((half - corner) * radius / (radius - corner), front + centre + (end - centre) * radius / (radius - corner))
    else:
        raise ValueError(outline["shape"])
    return {"half": half, "full": full, "front_end": (half - corner, front), "back": back}


def both(point):
    x, y = point
    return [[x, y], [-x, y]]


def string_places(project):
    """x of each string at the nut: equal air between neighbours across what the margins leave, a pair's own gap kept."""
    instrument = project["instrument"]
    gauges = [string["diameter"] for string in project["strings"]]
    half = instrument["widths"]["nut"] / 2
    first = half - instrument["margins"]["treble"] - gauges[0] / 2
    last = -half + instrument["margins"]["bass"] + gauges[-1] / 2
    return first, last


def sheets_of(project):
    place = bridge_of(project)
    outline, pins = place["outline"], place["pins"]
    bridge, sole = project["bridge"], project["bridge"]["sole"]
    drill, clearance = bridge["locating"]["drill"] / 2, bridge["locating"]["clearance"] / 2
    half, full, front, scale = outline["half"], outline["full"], place["front"], place["scale"]
    edges = both(outline["front_end"]) + both(outline["back"])

    def holes(more):
        return [[x, y, drill + more] for x, y in pins]

    sheets = {
        "window": edges + [[half + 1.5, scale]],
        "finish-mask": edges + holes(0),
        "clearing-line": edges + holes(0),
        # Cauls reach 3 mm beyond the bridge all round, the figure that the app starts from.
        "caul-plate": holes(clearance)
        + edges
        + [[side * (half + 3), front + y] for side in (1, -1) for y in (-3, full + 3)],
        "clamp-plan": holes(clearance) + edges,
        "slot-drawing": edges + [list(wall) for wall in place["walls"]],
    }
    sheets["caul-clamp"] = [[-x, *rest] for x, *rest in sheets["caul-plate"]]

    treble, bass = place["spread"] / 2, -place["spread"] / 2
    breaks = {x: place["break"] + place["slope"] * x for x in (treble, 0, bass)}
    # The stick's far end is 20 mm wide, its octave line at 0; for the same stick either hand.
    sheets["stick-far"] = [[0, 0], [20, 0]] + [[20, breaks[x] - scale] for x in (treble, 0, bass)]

    nut, twelfth = project["instrument"]["widths"]["nut"], project["instrument"]["widths"]["twelfth"]
    first, last = string_places(project)
    sheets["gauge-nut"] = (
        both((nut / 2 + 4, 0))
        + both(((nut + (twelfth - nut) * 40 / (scale / 2)) / 2, 40))
        + [[x + (end - x) * 40 / scale, 40] for x, end in ((first, treble), (last, bass))]
    )
    # The last whole 10 mm that is 15 or more ahead of the bridge's front edge.
    square = math.floor((front - 15) / 10) * 10
    reach = place["slot_half"] + 7
    sheets["gauge-saddle"] = (
        both((reach, square))
        + both((reach, square - 14))
        + [[x + 3, place["front_wall"] + place["slope"] * x] for x in (treble, 0, bass)]
        + [[x - 3, breaks[x]] for x in (treble, 0, bass)]
        + [list(wall) for wall in place["walls"]]
    )
    sheets["spacing"] = [[first, -7], [first, 0], [last, -7], [last, 0], [nut / 2, 0], [-nut / 2, -17]]

    begin, inner, tip = (sole["wing"][name] for name in ("begin", "inner", "tip"))
    level = max(bridge["thickness"], inner) + 20
    # Cauls stand 1 mm to each side of where the wings begin; a wing's upper face is straight to its tip.
    slant = (tip - inner) / (half - begin)
    sheets["clamp-profile"] = (
        both((begin - 1, -level))
        + both((begin + 1, -level))
        + both((half, -level))
        + both((half, -tip))
        + both((begin + 1, -(inner + slant)))
        + both((begin - 1, -bridge["thickness"]))
    )
    thick = 1.125 * 25.4
    radius = sole["top"]["across"]
    sagitta = 0 if radius is None else radius - math.sqrt(radius**2 - (half + 3) ** 2)
    sheets["caul-dome"] = both((half + 3, 0)) + both((half + 3, sagitta - thick))
    return sheets


json.dump(
    {name: sheets_of(json.load(open(name, encoding="utf-8"))) for name in sys.argv[1:]},
    sys.stdout,
    indent=1,
)
