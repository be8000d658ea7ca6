"""Where a bridge sits by its readings, by SciPy's least squares: JSON of [{nominal, readings}] in, poses and sigmas out."""
import json
import sys

import numpy as np
from scipy.optimize import least_squares


def placed(pose, point):
    x, y, turn = pose
    return np.array([
        x + np.cos(turn) * point["x"] - np.sin(turn) * point["y"],
        y + np.sin(turn) * point["x"] + np.cos(turn) * point["y"],
    ])


def fixed(point):
    return np.array([point["x"], point["y"]])


def cross(a, b):
    return a[0] * b[1] - a[1] * b[0]


def predicted(reading, pose):
    kind = reading["kind"]
    if kind == "distance":
        plan = np.linalg.norm(placed(pose, reading["to"]) - fixed(reading["from"]))
        return np.hypot(plan, reading.get("rise", 0))
    if kind == "offset":
        along = fixed(reading["direction"])
        return cross(placed(pose, reading["to"]) - fixed(reading["through"]), along / np.linalg.norm(along))
    if kind == "margin":
        nut, saddle, edge = fixed(reading["nut"]), placed(pose, reading["saddle"]), fixed(reading["at"])
        string = np.interp(edge[1], [nut[1], saddle[1]], [nut[0], saddle[0]])
        return (edge[0] - string) * np.sign(edge[0])
    if kind == "toLine":
        first, second = (placed(pose, point) for point in reading["line"])
        along = fixed(reading["direction"]) / np.linalg.norm(fixed(reading["direction"]))
        # from + t·along = first + s·(second - first)
        t, _ = np.linalg.solve(np.column_stack([along, first - second]), first - fixed(reading["from"]))
        return np.hypot(t, reading.get("rise", 0))
    if kind == "difference":
        a, b = (np.linalg.norm(placed(pose, reading[k]["to"]) - fixed(reading[k]["from"])) for k in ("a", "b"))
        return a - b
    raise ValueError(kind)


def solve(task):
    readings = task["readings"]
    scale = np.array([1, 1, 0.01])
    start = np.array([task["nominal"][k] for k in ("x", "y", "angle")])

    def residuals(step):
        pose = start + step * scale
        return [(r["value"] - predicted(r, pose)) / r["sigma"] for r in readings]

    found = least_squares(residuals, np.zeros(3), jac="3-point", x_scale="jac", xtol=1e-15, ftol=1e-15, gtol=1e-15)
    covariance = np.linalg.inv(found.jac.T @ found.jac)
    return {"pose": list(start + found.x * scale), "sigma": list(np.sqrt(np.diag(covariance)) * scale)}


print(json.dumps([solve(task) for task in json.load(sys.stdin)]))
