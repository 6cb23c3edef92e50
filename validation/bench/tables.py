"""Turns what the benchmarks measured into the tables of README.md, and into bench.json."""
import json
import math
import pathlib
import platform
import sys

work, home = map(pathlib.Path, sys.argv[1:])
measured = json.loads((work / "bench.json").read_text())
unit = {"ns": 1e-9, "us": 1e-6, "ms": 1e-3, "s": 1.0}
median = {b["run_name"]: b for b in measured["benchmarks"] if b.get("aggregate_name") == "median"}
seconds = {name: b["real_time"] * unit[b["time_unit"]] for name, b in median.items()}


def shown(t):
    for limit, factor, name in ((1e-6, 1e9, "ns"), (1e-3, 1e6, "us"), (1.0, 1e3, "ms")):
        if t < limit:
            return f"{t * factor:.3g} {name}"
    return f"{t:.3g} s"


def exponent(points):
    """Slope of log time over log size, by least squares."""
    x, y = zip(*((math.log(size), math.log(t)) for size, t in points))
    mx, my = sum(x) / len(x), sum(y) / len(y)
    return sum((a - mx) * (b - my) for a, b in zip(x, y)) / sum((a - mx) ** 2 for a in x)


lines = ["| burn of six hours | with spare draw | without | steps | right-hand sides | cells |", "|---|---|---|---|---|---|"]
for name in sorted(n.split("/")[1] for n in median if n.startswith("burn/")):
    bare = median[f"burn_without_reserve/{name}"]
    lines.append(f"| {name} | {shown(seconds[f'burn/{name}'])} | {shown(seconds[f'burn_without_reserve/{name}'])} "
                 f"| {bare['steps']:.0f} | {bare['rhs']:.0f} | {bare['cells']:.0f} |")

lines += ["", "| piece | time |", "|---|---|"]
for name in ("right_hand_side", "gas_march", "linearise_and_factor", "gas_properties", "reading_data", "reading_a_stove",
             "building_a_network", "writing_csv"):
    lines.append(f"| {name.replace('_', ' ')} | {shown(seconds[name])} |")
for run in json.loads((work / "start.json").read_text())["results"]:
    what = "start of the program" if "--version" in run["command"] else "start, reading, half a minute of burn, writing"
    lines.append(f"| {what} | {shown(run['median'])} |")
peak = json.loads((work / "memory.json").read_text())["peak_mb"]
lines.append(f"| peak memory of 24 hours, a row each second | {peak:.0f} MB |")

cells = sorted((median[n]["cells"], seconds[n]) for n in median if n.startswith("cells/"))
hours = sorted((float(n.split("/")[1]), seconds[n]) for n in median if n.startswith("hours/"))
lines += ["", "| cells | time of an hour |", "|---|---|"] + [f"| {c:.0f} | {shown(t)} |" for c, t in cells]
lines += ["", f"Exponent over cells {exponent(cells):.2f}, over the burn's length {exponent(hours):.2f}."]
one, two = (seconds[f"many_burns/{n}/iterations:1/real_time"] for n in (1, 2))
lines += ["", f"A thousand burns of three hours, five times two hundred: {shown(5 * one)} on one thread, {shown(5 * two)} on two, {one / two:.2f} times as fast."]

readme = home / "README.md"
marker = "<!-- below: written by validation/bench/run -->"
head = readme.read_text().split(marker)[0]
readme.write_text(f"{head}{marker}\n\n" + "\n".join(lines) + "\n")
report = {"machine": platform.machine(), "cores": measured["context"]["num_cpus"], "mhz": measured["context"]["mhz_per_cpu"],
          "seconds": seconds, "peak_mb": peak}
(home / "bench.json").write_text(json.dumps(report, indent=1) + "\n")
