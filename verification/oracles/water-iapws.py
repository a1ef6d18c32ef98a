"""Writes water-iapws.json: densities of water at one atmosphere by the formulation of the IAPWS of 1995, from the Python package iapws.

On Debian: apt-get install python3-iapws && python3 verification/oracles/water-iapws.py
The file in the repository is the output for python3-iapws 1.5.2.
"""

import json
from pathlib import Path

import iapws
from iapws import IAPWS95

ATMOSPHERE = 0.101325  # MPa
rows = [
    {"celsius": t, "density": float(f"{IAPWS95(T=273.15 + t, P=ATMOSPHERE).rho:.9g}")}
    for t in [2, 3, 4, 5, 8, 10, 12, 15, 18, 20, 22, 25, 28, 30, 33, 35, 37]
]
out = {"package": "iapws", "version": iapws.__version__, "licence": "GPL-3.0"}
text = json.dumps(out)[:-1] + ', "rows": [\n' + ",\n".join(json.dumps(row) for row in rows) + "\n]}\n"
Path(__file__).with_suffix(".json").write_text(text)
print(len(rows), "rows")
