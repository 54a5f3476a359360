"""Time and distance from rest to a speed, integrated over time by scipy, as a check on our own
integration over speed. Writes run_up.csv beside itself. Needs scipy and numpy.

    python3 tests/golden/run_up.py

Columns: power W, torque force N, thrust limit N, resistance N, drag at the target N, mass kg,
equivalent mass kg, target m/s, time s, distance m. An empty field is a limit that is not known.
"""

import csv
import datetime
import pathlib

import numpy
import scipy
from scipy.integrate import solve_ivp

CASES = [
    # power, torque force, thrust limit, resistance, drag at target, mass, equivalent mass, target
    (60.0, 40.0, 37.0, 9.4, 0.0, 6.4, 6.9, 1.5),
    (60.0, 40.0, 37.0, 9.4, 0.5, 6.4, 6.9, 3.0),
    (None, 40.0, 30.0, 9.4, 0.2, 6.4, 7.4, 2.0),
    (250.0, None, 25.0, 5.0, 12.0, 6.4, 6.4, 9.0),
    (1500.0, 900.0, 700.0, 420.0, 0.0, 210.0, 236.0, 1.2),
    (1500.0, 900.0, 700.0, -50.0, 2.0, 210.0, 236.0, 3.0),
    (7000.0, 1500.0, 1200.0, 100.0, 180.0, 300.0, 320.0, 15.0),
    (29840.0, 6000.0, None, 0.0, 0.0, 850.0, 850.0, 15.0),
    (15000.0, 2500.0, 2600.0, 300.0, 250.0, 400.0, 520.0, 20.0),
    (60.0, 40.0, 20.0, 18.0, 1.0, 6.4, 6.9, 1.4),
]


def run(power, torque, limit, resistance, drag, mass, equivalent, target):
    def acceleration(speed):
        against = resistance + drag * (speed / target) ** 2
        found = []
        drive = [force for force in (torque, power / speed if power and speed > 0 else None) if force]
        if drive:
            found.append((min(drive) - against) / equivalent)
        if limit is not None:
            found.append((limit - against) / mass)
        return min(found)

    def there(_, state):
        return state[0] - target

    there.terminal = True
    solved = solve_ivp(
        lambda _, state: [acceleration(state[0]), state[0]],
        (0.0, 1e4),
        [0.0, 0.0],
        method="Radau",
        events=there,
        rtol=1e-11,
        atol=1e-12,
        max_step=0.01,
    )
    return solved.t_events[0][0], solved.y_events[0][0][1]


def main():
    here = pathlib.Path(__file__).with_suffix(".csv")
    with here.open("w", newline="") as file:
        file.write(f"# scipy {scipy.__version__}, numpy {numpy.__version__}, {datetime.date.today()}\n")
        writer = csv.writer(file, lineterminator="\n")
        for case in CASES:
            time, distance = run(*case)
            writer.writerow(["" if x is None else x for x in case] + [f"{time:.9f}", f"{distance:.9f}"])


main()
