"""Writes pipe-sizes-fluids.json from the pipe tables of the MIT-licensed Python package fluids.

On Debian: apt-get install python3-fluids && python3 verification/oracles/pipe-sizes-fluids.py
The file in the repository is the output for python3-fluids 1.0.22-2.
"""

import json
from pathlib import Path

import fluids
from fluids import piping

SCHEDULES = {
    "ASME B36.10M": {
        "5": "5", "10": "10", "20": "20", "30": "30", "40": "40", "60": "60", "80": "80", "100": "100",
        "120": "120", "140": "140", "160": "160", "STD": "STD", "XS": "XS", "XXS": "XXS",
    },
    "ASME B36.19M": {"5S": "5S", "10S": "10S", "40S": "40S", "80S": "80S"},
}

rows = []
for standard, schedules in SCHEDULES.items():
    for schedule, key in schedules.items():
        nps, inside, outside, wall = piping.schedule_lookup[key]
        for n, di, do, t in zip(nps, inside, outside, wall):
            rows.append({"standard": standard, "nps": n, "schedule": schedule, "outside_mm": do, "wall_mm": t})

out = {"package": "fluids", "version": fluids.__version__, "licence": "MIT", "rows": rows}
text = json.dumps({k: v for k, v in out.items() if k != "rows"})[:-1] + ', "rows": [\n'
text += ",\n".join(json.dumps(row) for row in rows) + "\n]}\n"
Path(__file__).with_suffix(".json").write_text(text)
print(len(rows), "rows")
