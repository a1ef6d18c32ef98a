"""Writes wrapped-cylinder-calculix.json: a thick pipe in an orthotropic wrap, solved by the finite-element program CalculiX.

On Debian: apt-get install calculix-ccx && python3 verification/oracles/wrapped-cylinder-calculix.py
The file in the repository is the output for calculix-ccx 2.20. One row of quadratic elements of revolution through each layer;
the program spreads them over a wedge of two degrees, which leaves some 0.01 per cent in the large stresses and 0.1 in the small.
"""

import json
import math
import subprocess
import tempfile
from pathlib import Path

ELEMENTS = 80  # through each layer

CASES = [
    {"ends": ends, "radii": radii, "pipe": pipe, "wrap": wrap, "poisson": poisson, "pressure": pressure}
    for radii, pipe, wrap, poisson, pressure in [
        # radii in mm, moduli and pressure in MPa: pipe (E, nu), wrap (hoop, axial, radial), nu hoop-axial, hoop-radial, axial-radial
        ([23, 25, 27], [210000, 0.3], [130000, 5000, 5000], [0.25, 0.25, 0.25], 200),
        ([100, 106, 112], [207000, 0.3], [24000, 12000, 8000], [0.2, 0.3, 0.25], 10),
    ]
    for ends in ["open ends", "closed ends", "plane strain"]
]


def deck(case, numbers):
    inner, interface, outer = case["radii"]
    layers = [(inner, interface), (interface, outer)]
    # The nodes of the interface stand twice, tied, so that each layer keeps its own stresses.
    lines, tops, elements, count, element = ["*NODE, NSET=ALL"], [], [], 0, 0
    height = (outer - inner) / (2 * ELEMENTS)
    for layer, (low, high) in enumerate(layers):
        for row, z in enumerate([0, height / 2, height]):
            for i in range(2 * ELEMENTS + 1):
                if row == 1 and i % 2 == 1:
                    continue
                count += 1
                numbers[layer, i, row] = count
                lines.append(f"{count},{low + (high - low) * i / (2 * ELEMENTS):.12g},{z:.12g}")
        for e in range(ELEMENTS):
            element += 1
            corners = [(2 * e, 0), (2 * e + 2, 0), (2 * e + 2, 2), (2 * e, 2)]
            middles = [(2 * e + 1, 0), (2 * e + 2, 1), (2 * e + 1, 2), (2 * e, 1)]
            elements.append(f"{element}," + ",".join(str(numbers[layer, *each]) for each in corners + middles))
    lines += ["*ELEMENT, TYPE=CAX8, ELSET=EALL", *elements]
    lines += ["*ELSET, ELSET=PIPE, GENERATE", f"1,{ELEMENTS}", "*ELSET, ELSET=WRAP, GENERATE", f"{ELEMENTS + 1},{2 * ELEMENTS}"]
    lines += ["*MATERIAL, NAME=STEEL", "*ELASTIC", f"{case['pipe'][0]},{case['pipe'][1]}", "*SOLID SECTION, ELSET=PIPE, MATERIAL=STEEL"]
    hoop, axial, radial = case["wrap"]
    hoop_axial, hoop_radial, axial_radial = case["poisson"]
    # Directions of the program: 1 through, 2 along, 3 round. No shear arises, so its moduli do not count.
    lines += ["*MATERIAL, NAME=FIBRE", "*ELASTIC, TYPE=ENGINEERING CONSTANTS"]
    lines += [f"{radial},{axial},{hoop},{axial_radial * radial / axial:.15g},{hoop_radial * radial / hoop:.15g},{hoop_axial * axial / hoop:.15g},5000,5000,", "5000"]
    lines += ["*SOLID SECTION, ELSET=WRAP, MATERIAL=FIBRE", "*EQUATION"]
    for row in range(3):
        lines += ["2", f"{numbers[1, 0, row]},1,1.,{numbers[0, 2 * ELEMENTS, row]},1,-1."]
    tops = [node for (_, _, row), node in numbers.items() if row == 2]
    bottoms = [node for (_, _, row), node in numbers.items() if row == 0]
    if case["ends"] != "plane strain":
        for node in tops[1:]:
            lines += ["2", f"{node},2,1.,{tops[0]},2,-1."]
    lines += ["*BOUNDARY", *[f"{node},2,2,0" for node in bottoms + (tops if case["ends"] == "plane strain" else [])]]
    lines += ["*STEP", "*STATIC", "*DLOAD", f"1,P4,{case['pressure']}"]
    if case["ends"] == "closed ends":
        lines += ["*CLOAD", f"{tops[0]},2,{case['pressure'] * math.pi * inner**2:.12g}"]
    return "\n".join([*lines, "*EL FILE", "S", "*END STEP"]) + "\n"


def solve(case):
    numbers = {}
    with tempfile.TemporaryDirectory() as folder:
        job = Path(folder) / "job"
        job.with_suffix(".inp").write_text(deck(case, numbers))
        subprocess.run(["ccx", "job"], cwd=folder, check=True, capture_output=True)
        block, stresses = None, {}
        for line in job.with_suffix(".frd").read_text().splitlines():
            if line.startswith(" -4"):
                block = line.split()[1]
            elif line.startswith(" -1") and block == "STRESS":
                stresses[int(line[3:13])] = [float(line[13 + 12 * i : 25 + 12 * i]) for i in range(6)]
    bore, wrap = stresses[numbers[0, 0, 0]], stresses[numbers[1, 0, 0]]
    return {**case, "boreHoop": bore[2], "wrapHoop": wrap[2], "interfacePressure": -wrap[0]}


rows = [solve(case) for case in CASES]
text = '{"package": "calculix-ccx", "version": "2.20", "licence": "GPL-2.0", "rows": [\n'
text += ",\n".join(json.dumps(row) for row in rows) + "\n]}\n"
Path(__file__).with_suffix(".json").write_text(text)
print(len(rows), "rows")
