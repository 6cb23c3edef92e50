"""Writes an axisymmetric body of quadratic elements as a deck of CalculiX, lets it compute its
warming and tells the result. One column of elements in radius and height; the time steps are
implicit of first order, so each run is done with two lengths of them and carried on to none."""
import re
import subprocess
import sys
import tempfile
from pathlib import Path

import numpy as np

SIGMA = 5.670374419e-8


class Body:
    """A grid of elements over radii and heights, materials by columns of elements."""

    def __init__(self, radii, heights, materials, material_of, shown_row=0):
        self.radii, self.heights = np.asarray(radii), np.asarray(heights)
        self.materials, self.material_of = materials, material_of
        self.shown_row = shown_row  # half row of the nodes to be told
        self.loads = []  # texts of *FILM and *RADIATE
        self.columns, self.rows = len(radii) - 1, len(heights) - 1

    def node(self, i, j):
        """Node at half column i and half row j, both from 0."""
        return 1 + i + j * (2 * self.columns + 1)

    def element(self, column, row):
        return 1 + column + row * self.columns

    def film(self, column, row, face, around, film):
        """Faces: 1 below, 2 outside, 3 above, 4 inside."""
        self.loads.append(f"*FILM\n{self.element(column, row)}, F{face}, {around}, {film}")

    def radiate(self, column, row, face, around, emissivity):
        self.loads.append(f"*RADIATE\n{self.element(column, row)}, R{face}, {around}, {emissivity}")

    def deck(self, first, times, steps):
        lines = ["*NODE, NSET=all"]
        half = lambda x: np.interp(np.arange(2 * len(x) - 1) / 2, np.arange(len(x)), x)
        for j, y in enumerate(half(self.heights)):
            for i, r in enumerate(half(self.radii)):
                if i % 2 == 0 or j % 2 == 0:
                    lines.append(f"{self.node(i, j)}, {r:.9g}, {y:.9g}")
        names = sorted(self.materials)
        for name in names:
            lines.append(f"*ELEMENT, TYPE=CAX8, ELSET=of_{name}")
            for row in range(self.rows):
                for column in range(self.columns):
                    if self.material_of(column) != name:
                        continue
                    i, j = 2 * column, 2 * row
                    around = [(0, 0), (2, 0), (2, 2), (0, 2), (1, 0), (2, 1), (1, 2), (0, 1)]
                    nodes = ", ".join(str(self.node(i + a, j + b)) for a, b in around)
                    lines.append(f"{self.element(column, row)}, {nodes}")
        for name in names:
            material = self.materials[name]
            lines += [f"*MATERIAL, NAME={name}", "*DENSITY", str(material["density"])]
            for what, keyword in (("conductivity", "*CONDUCTIVITY"), ("heat", "*SPECIFIC HEAT")):
                lines.append(keyword)
                lines += [f"{y}, {x}" for x, y in material[what]]
            lines.append(f"*SOLID SECTION, ELSET=of_{name}, MATERIAL={name}")
        shown = [str(self.node(i, self.shown_row)) for i in range(2 * self.columns + 1)]
        lines += ["*NSET, NSET=shown"] + [node + "," for node in shown]
        lines += ["*INITIAL CONDITIONS, TYPE=TEMPERATURE", f"all, {first}"]
        lines += ["*PHYSICAL CONSTANTS, ABSOLUTE ZERO=0, STEFAN BOLTZMANN=" + repr(SIGMA)]
        for k, (since, until) in enumerate(zip([0, *times], times)):
            count = int(steps[k])
            lines += [f"*STEP, INC={10 * count}", "*HEAT TRANSFER, DIRECT",
                      f"{(until - since) / count:.9g}, {until - since:.9g}"]
            if k == 0:
                lines += self.loads
            lines += [f"*NODE PRINT, NSET=shown, FREQUENCY={10 * count}", "NT", "*END STEP"]
        return "\n".join(lines) + "\n"

    def run_once(self, first, times, steps):
        with tempfile.TemporaryDirectory() as folder:
            Path(folder, "body.inp").write_text(self.deck(first, times, steps))
            ran = subprocess.run(["ccx", "-i", "body"], cwd=folder, capture_output=True, text=True,
                                 check=False)
            out = Path(folder, "body.dat")
            if ran.returncode or not out.exists():
                sys.exit(ran.stdout[-3000:] + ran.stderr)
            seen = re.findall(r"^ +(\d+) +(\S+)$", out.read_text(), re.M)
        count = 2 * self.columns + 1
        self.version = re.search(r"CalculiX Version ([^,\s]+)", ran.stdout).group(1)
        assert len(seen) == count * len(times), "not every node was shown at every time"
        return np.array([float(t) for _, t in seen]).reshape(len(times), count)

    def run(self, first, times, steps):
        """Temperatures [time, place] along the row of nodes and the places' radii; and by
        how much halving the steps moved any of them."""
        whole = self.run_once(first, times, np.asarray(steps))
        halved = self.run_once(first, times, 2 * np.asarray(steps))
        half = np.interp(np.arange(2 * self.columns + 1) / 2, np.arange(self.columns + 1),
                         self.radii)
        return 2 * halved - whole, half, float(np.abs(halved - whole).max())


def tell(header, at, rows):
    """reference.csv to the terminal."""
    print("# " + header)
    print("quantity," + ",".join(f"{x:g}" for x in at))
    for name, values in rows.items():
        print(name + "," + ",".join(f"{value:.7g}" for value in values))
