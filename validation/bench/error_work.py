"""Drives one right-hand side, a stove's, by several steppers at several tolerances in one run, and draws the error of
each against the time it took: solver/error-work.svg and the table of solver/README.md.

    error_work.py OWN CVODE LIBRARY STOVE.toml SECONDS
"""
import pathlib
import re
import statistics
import subprocess
import sys

import matplotlib
import numpy as np

matplotlib.use("svg")
import matplotlib.pyplot as plt

own, cvode, library, stove, seconds = sys.argv[1:]
every = "600"
home = pathlib.Path(__file__).resolve().parents[2]
integrate = str(home / "validation/simulators/scipy/integrate.py")
rounds = 3
at_error = 0.1  # K
# Flows are balanced as closely as drawwell balances its own for that tolerance, but for differences ten times closer.
commands = {
    "drawwell": lambda t: [own, stove, seconds, every, f"{t:g}"],
    "CVODE, BDF": lambda t: [cvode, stove, seconds, every, f"{t:g}", f"{max(2.5 * t, 1e-7):g}"],
    "SciPy, BDF": lambda t: ["/usr/bin/python3", integrate, library, stove, seconds, every, f"{t:g}", "BDF", f"{max(2.5 * t, 1e-7):g}"],
    "SciPy, LSODA": lambda t: ["/usr/bin/python3", integrate, library, stove, seconds, every, f"{t:g}", "LSODA", f"{max(2.5 * t, 1e-7):g}"],
}
tolerances = {"drawwell": (1e-3, 2e-4, 5e-5, 1e-5, 1e-6), "CVODE, BDF": (1e-3, 1e-4, 1e-5, 1e-6, 1e-7),
              "SciPy, BDF": (1e-3, 1e-4, 1e-5, 1e-6), "SciPy, LSODA": (1e-3, 1e-4, 1e-5, 1e-6)}


def run(command):
    """Temperatures [K] of all solids at all times, and time and right-hand sides taken."""
    done = subprocess.run(command, capture_output=True, text=True)
    if done.returncode:
        return None
    rows = [line.split(",") for line in done.stdout.splitlines() if not line.startswith("#")]
    walls = np.array([[float(x) for x in row[1:]] for row in rows[1:]
                      if not row[0].startswith(("fuel.", "flow.")) and row[0] != "heat"])
    spent, sides = re.search(r"([\d.e-]+) s, (\d+) right-hand sides", done.stderr.splitlines()[-1]).groups()
    return walls, float(spent), int(sides)


# Two that know nothing of each other must agree before they judge. A tolerance at which a stepper takes the flow's turn
# at lighting for another is no reference: CVODE at 1e-8 and at 1e-10 are 40 and 0.6 K off both.
reference = run([own, stove, seconds, every, "1e-7"])[0]
best = run([cvode, stove, seconds, every, "1e-9", "1e-7"])[0]
apart = np.abs(reference - best).max()
if not apart < 0.01:
    sys.exit(f"the references are {apart:.2g} K apart")
found = {}
for _ in range(rounds):  # in turn, so that what else the machine does falls on all alike
    for name, command in commands.items():
        for tolerance in tolerances[name]:
            if result := run(command(tolerance)):
                found.setdefault((name, tolerance), []).append(result)

lines = ["| stepper | tolerance | worst wall, K off | right-hand sides | time |", "|---|---|---|---|---|"]
curves = {}
for (name, tolerance), results in found.items():
    error = np.abs(results[0][0] - best).max()
    spent = statistics.median(r[1] for r in results)
    curves.setdefault(name, []).append((error, spent))
    lines.append(f"| {name} | {tolerance:g} | {error:.2g} | {results[0][2]:,} | {1e3 * spent:,.0f} ms |")


def time_at(name, error):
    """Of a curve, by straight lines between its logarithms."""
    points = sorted(curves[name])
    e, t = np.log(np.array(points)).T
    return float(np.exp(np.interp(np.log(error), e, t)))


compared = {name: time_at(name, at_error) / time_at("drawwell", at_error) for name in curves if name != "drawwell"}
lines += ["", f"At {at_error} K off the worst wall, in times of drawwell's time: " + ", ".join(f"{name} {ratio:.1f}" for name, ratio in compared.items())
          + f". The reference is CVODE at 1e-9; drawwell at 1e-7 is {apart:.1g} K off it."]

plt.rcParams.update({"svg.hashsalt": "drawwell", "font.family": "sans-serif", "svg.fonttype": "none", "font.size": 11})
figure, axes = plt.subplots(figsize=(7, 4.2))
for (name, points), marker, line in zip(curves.items(), "osD^", ("-", "--", "-.", ":")):
    e, t = zip(*sorted(points))
    axes.loglog(e, 1e3 * np.array(t), marker=marker, linestyle=line, color="black", markerfacecolor="white", label=name)
axes.set_xlabel("worst wall at any time, K off")
axes.set_ylabel("time, ms")
axes.legend(frameon=False)
axes.spines[["top", "right"]].set_visible(False)
figure.tight_layout()
figure.savefig(home / "solver/error-work.svg", metadata={"Date": None})

readme = home / "solver/README.md"
begin, end = "<!-- error and work: written by validation/bench/run -->", "<!-- end of error and work -->"
head, rest = readme.read_text().split(begin)
readme.write_text(head + begin + "\n\n" + "\n".join(lines) + "\n\n" + end + rest.split(end)[1])
