"""Reads a CSV with Python's csv module, strictly: JSON of its rows."""

import csv
import json
import sys

with open(sys.argv[1], encoding="utf-8", newline="") as file:
    print(json.dumps(list(csv.reader(file, delimiter=sys.argv[2], strict=True))))
