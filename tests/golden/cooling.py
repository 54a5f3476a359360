"""Golden values for cooling and warming, from general-purpose libraries.

Writes cooling.csv beside this file: name, inputs, output. Run: pip install ht fluids scipy; python cooling.py
Last run 2026-11-25 with ht 1.2.0, scipy 1.17.1.
"""
import csv
import itertools
import pathlib

import ht
import scipy
from scipy.integrate import solve_ivp

rows = []
for ra, pr in itertools.product([1e2, 1e4, 1e6, 1e8, 1e10, 1e12], [0.69, 0.71, 7.0]):
    rows.append(["plate-any", ra, pr, "", "", "", "", "", ht.Nu_vertical_plate_Churchill(pr, ra / pr)])
    rows.append(["level-cylinder", ra, pr, "", "", "", "", "", ht.Nu_horizontal_cylinder_Churchill_Chu(pr, ra / pr)])
for re, pr in itertools.product([1.0, 1e2, 1e3, 1e4, 1e5, 1e6], [0.70, 0.71, 7.0]):
    rows.append(["across-cylinder", re, pr, "", "", "", "", "", ht.Nu_cylinder_Churchill_Bernstein(re, pr)])


def winding(loss, copper, inner, outer, cw, ch, time):
    """Rises of winding and housing from cold, copper loss growing with 0.00393 per kelvin."""
    def slope(_, y):
        w, h = y
        flow = (w - h) / inner
        return [(loss + 0.00393 * copper * w - flow) / cw, (flow - h / outer) / ch]
    return solve_ivp(slope, [0.0, time], [0.0, 0.0], method="Radau", rtol=1e-10, atol=1e-12).y[:, -1]


for time in [1.0, 30.0, 300.0, 3600.0]:
    for case in [(30.0, 25.0, 1.5, 4.0, 15.0, 120.0), (90.0, 80.0, 1.9, 4.7, 21.9, 238.0), (8.0, 5.0, 0.5, 9.0, 4.0, 40.0)]:
        w, h = winding(*case, time)
        rows.append(["winding", *case, time, w])
        rows.append(["housing", *case, time, h])

path = pathlib.Path(__file__).with_name("cooling.csv")
with path.open("w", newline="") as file:
    out = csv.writer(file, lineterminator="\n")
    out.writerow(["# ht " + ht.__version__ + ", scipy " + scipy.__version__ + ", written by cooling.py"])
    out.writerows([*row[:-1], f"{row[-1]:.10g}"] for row in rows)
