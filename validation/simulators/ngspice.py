"""Writes a network of heat as a deck of ngspice, lets it compute and tells the result: a volt is a
kelvin, an ampere a watt, a farad a joule per kelvin; a node's name with
an h behind it is where its heat arrives."""
import re
import subprocess
import sys
import tempfile
from pathlib import Path

import numpy as np

SIGMA = 5.670374419e-8


def table(points):
    """A quantity linear between points, level beyond, as a function of ngspice's text."""
    flat = ",".join(f"{x},{y}" for x, y in points)
    low, high = points[0][0], points[-1][0]
    return lambda node: f"pwl(min(max(V({node}),{low}),{high}),{flat})"


class Deck:
    def __init__(self, first):
        self.first, self.nodes, self.lines = first, [], []

    def cell(self, name, mass, capacity, slope=0.0):
        """A cell of heat capacity [J/(kg K)] growing in line from where the deck begins. Its charge
        counts its heat, as if the capacity did not grow; its temperature is a source that follows."""
        self.nodes.append(name)
        self.lines.append(f"C{name} {name}h 0 {mass * capacity!r}")
        self.lines.append(f".ic V({name}h)=0")
        u = f"V({name}h)"
        if slope:
            u = f"(sqrt({capacity ** 2!r}+{2 * slope * capacity!r}*{u})-{capacity!r})/{slope!r}"
        self.lines.append(f"B{name} {name} 0 V={self.first!r}+{u}")

    def flow(self, text, start, end="0"):
        """Heat [W] from one cell to another or away."""
        end = end if end == "0" else end + "h"
        self.lines.append(f"B{len(self.lines)} {start}h {end} I={text}")

    def conduct(self, a, b, conductivity_a, shape_a, conductivity_b, shape_b):
        resistance = (f"1/({conductivity_a(a)}*{shape_a!r})+1/({conductivity_b(b)}*{shape_b!r})")
        self.flow(f"(V({a})-V({b}))/({resistance})", a, b)

    def lose(self, node, area, film, around, emissivity):
        """A face that loses heat by a film and by radiation to one temperature."""
        radiated = f"{emissivity * SIGMA!r}*(V({node})^4-{around ** 4!r})"
        self.flow(f"{area!r}*({film!r}*(V({node})-{around!r})+{radiated})", node)

    def run(self, times, step):
        """Temperatures at the times, one row a node, and the program's own name and version."""
        with tempfile.TemporaryDirectory() as folder:
            deck, out = Path(folder, "deck.cir"), Path(folder, "out")
            nodes = " ".join(f"v({node})" for node in self.nodes)
            deck.write_text("\n".join([
                "* written by validation/simulators", *self.lines,
                ".options reltol=1e-7 vntol=1e-6 abstol=1e-7 chgtol=1e-7 trtol=1 method=gear",
                f".tran {step} {times[-1] + step} 0 {step} uic",
                ".control", "set wr_singlescale", "run", f"wrdata {out} {nodes}", "quit",
                ".endc", ".end", ""]))
            ran = subprocess.run(["ngspice", "-b", deck], capture_output=True, text=True)
            data = Path(f"{out}.data") if Path(f"{out}.data").exists() else out
            if not data.exists():
                sys.exit(ran.stdout + ran.stderr)
            seen = np.loadtxt(data)
        version = subprocess.run(["ngspice", "--version"], capture_output=True, text=True).stdout
        version = re.search(r"ngspice-\S+", version).group()
        return [np.interp(times, seen[:, 0], seen[:, i + 1]) for i in range(len(self.nodes))], version


def tell(header, at, rows):
    """reference.csv to the terminal."""
    print("# " + header)
    print("quantity," + ",".join(f"{x:g}" for x in at))
    for name, values in rows.items():
        print(name + "," + ",".join(f"{value:.8g}" for value in values))
