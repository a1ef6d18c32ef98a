"""Writes student-scipy.json: quantiles of Student's t, of the normal distribution and Clopper-Pearson intervals from SciPy.

On Debian: apt-get install python3-scipy && python3 verification/oracles/student-scipy.py
The file in the repository is the output for SciPy 1.17.1; another version may differ in the last digits.
"""

import json
from pathlib import Path

import scipy
from scipy import stats

student = [
    {"chance": chance, "degrees": degrees, "t": float(stats.t.ppf((1 + chance) / 2, degrees))}
    for degrees in [1, 2, 3, 4, 5, 7, 9, 12, 20, 29, 60, 120]
    for chance in [0.5, 0.8, 0.9, 0.95, 0.99, 0.999]
]
normal = [
    {"probability": p, "x": float(stats.norm.ppf(p))}
    for p in [1e-12, 1e-6, 0.001, 0.025, 0.05, 0.2, 0.4, 0.6, 0.9, 0.95, 0.975, 0.999, 0.999999]
]
binomial = []
for hits, trials in [(0, 10), (1, 10), (3, 10), (10, 10), (0, 59), (2, 59), (58, 59), (12, 200), (199, 200)]:
    for level in [0.9, 0.95, 0.99]:
        interval = stats.binomtest(hits, trials).proportion_ci(level, method="exact")
        binomial.append({"hits": hits, "trials": trials, "level": level, "least": float(interval.low), "most": float(interval.high)})

rows = lambda given: "[\n" + ",\n".join(json.dumps(row) for row in given) + "\n]"
text = '{"package": "scipy", "version": "%s", "licence": "BSD-3-Clause",\n' % scipy.__version__
text += '"student": %s,\n"normal": %s,\n"binomial": %s}\n' % (rows(student), rows(normal), rows(binomial))
Path(__file__).with_suffix(".json").write_text(text)
print(len(student), len(normal), len(binomial), "rows")
