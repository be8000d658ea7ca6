"""
What a rule, a calliper and a square read on the demo instrument when its bridge is taped off its place, worked apart from
Saddlemark's own program by plane geometry. python3 taped_readings.py PROJECT.json
"""

import json
import math
import sys

project = json.load(open(sys.argv[1], encoding="utf-8"))
instrument, slot = project["instrument"], project["bridge"]["slot"]
scale, spread = instrument["scale"]["entered"], instrument["spread"]["own"]
if instrument["scale"]["from"] == "readings":
    twelfths = [each["value"] for each in instrument["scale"]["readings"] if each["fret"] == 12]
    scale = 2 * sum(twelfths) / len(twelfths)
rule = project["compensation"]["rule"]
slope = (rule["treble"] - rule["bass"]) / spread
centre = scale + (rule["treble"] + rule["bass"]) / 2
front = centre - slot["crown"] * slot["width"] * math.hypot(1, slope)
nut, twelfth = instrument["widths"]["nut"], instrument["widths"]["twelfth"]
gauges = [string["diameter"] for string in project["strings"]]
nut_x = {
    "treble": nut / 2 - instrument["margins"]["treble"] - gauges[0] / 2,
    "bass": -nut / 2 + instrument["margins"]["bass"] + gauges[-1] / 2,
}
saddle_x = {"treble": spread / 2, "bass": -spread / 2}
last = scale * (1 - 2 ** (-instrument["frets"]["count"] / 12))
half = (instrument["widths"]["last"] or nut + (twelfth - nut) * last / (scale / 2)) / 2


def readings(x, y, degrees):
    angle = math.radians(degrees)

    def placed(px, py):
        """A point of the bridge, from where the saddle line crosses the centreline, where it lies now."""
        return x + px * math.cos(angle) - py * math.sin(angle), centre + y + px * math.sin(angle) + py * math.cos(angle)

    out = {}
    (ax, ay), (bx, by) = placed(-50, front - centre - 50 * slope), placed(50, front - centre + 50 * slope)
    for side in ("treble", "bass"):
        at = saddle_x[side]
        out[f"12th to slot, {side}"] = ay + (by - ay) * (at - ax) / (bx - ax) - scale / 2
        sx, sy = placed(at, slope * at)
        across = nut_x[side] + (sx - nut_x[side]) * last / sy
        gauge = gauges[0] if side == "treble" else gauges[-1]
        out[f"margin, {side}"] = half - abs(across) - gauge / 2
        (cx, cy), (dx, dy) = placed(-50, -50 * slope), placed(50, 50 * slope)
        out[f"stick, {side}"] = cy + (dy - cy) * (at - cx) / (dx - cx) - (centre + slope * at)
    shape = project["bridge"]["outline"]["parameters"]
    corner = shape["length"] / 2 - shape["corner"]
    edge = front - slot["fromFront"] - centre
    ends = {side: math.dist((sign * twelfth / 2, scale / 2), placed(sign * corner, edge)) for side, sign in (("treble", 1), ("bass", -1))}
    out["bass longer by"] = ends["bass"] - ends["treble"]
    return {name: round(value, 2) for name, value in out.items()}


print("planned", readings(0, 0, 0))
print("taped", readings(-0.8, 0.5, 0.3))
