"""The best turn and shift of points onto points, by SciPy: JSON of [{from, to, weights}] in, [{angle, x, y, rms}] out."""
import json
import sys

import numpy as np
from scipy.linalg import orthogonal_procrustes
from scipy.optimize import least_squares


def turned(angle, points):
    cos, sin = np.cos(angle), np.sin(angle)
    return points @ np.array([[cos, sin], [-sin, cos]])


def solve(task):
    start, end = np.array(task["from"], float), np.array(task["to"], float)
    root = np.sqrt(np.array(task["weights"], float))[:, None]

    def misses(step):
        return (root * (turned(step[0], start) + step[1:] - end)).ravel()

    # From several turns, since a mirror image can hold a poor one still.
    middle = end.mean(axis=0) - start.mean(axis=0)
    tried = [
        least_squares(misses, [angle, *middle], xtol=1e-15, ftol=1e-15, gtol=1e-15)
        for angle in np.linspace(-np.pi, np.pi, 12, endpoint=False)
    ]
    best = min(tried, key=lambda found: found.cost)
    angle = np.arctan2(np.sin(best.x[0]), np.cos(best.x[0]))
    rms = np.sqrt(2 * best.cost / (root**2).sum())
    # The same turn by the orthogonal Procrustes problem, which may answer with a reflection.
    share = root**2 / (root**2).sum()
    a, b = root * (start - (share * start).sum(axis=0)), root * (end - (share * end).sum(axis=0))
    matrix, _ = orthogonal_procrustes(a, b)
    reflected = bool(np.linalg.det(matrix) < 0)
    procrustes = None if reflected else float(np.arctan2(matrix[0, 1], matrix[0, 0]))
    return {"angle": float(angle), "x": best.x[1], "y": best.x[2], "rms": float(rms), "procrustes": procrustes}


print(json.dumps([solve(task) for task in json.load(sys.stdin)]))
