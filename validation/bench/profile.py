"""Counts instructions of a six-hour burn of the sample by callgrind and writes where they go into README.md; counts do
not depend on what else the machine does.

    profile.py PROGRAM STOVE.toml
"""
import pathlib
import re
import subprocess
import sys
import tempfile

program, stove = map(lambda name: str(pathlib.Path(name).resolve()), sys.argv[1:])
home = pathlib.Path(__file__).resolve().parent
purposes = {  # what a burn asks for; these do not overlap
    "steps of time": "Rosenbrock::do_step(",
    "spare draw against a short push": "SpareDraw::find_reserve(",
    "spare draw against a lasting push": "drawwell::sustained_push(",
    "watching that laws stay in their ranges": "RangeWatch::sample(",
    "before lighting": "drawwell::cold_start(",
}
pieces = {  # what all of them are made of; nor do these
    "gas marched through its cells": "GasPassage::cross(",
    "matrix factored": "StructuredMatrix::factor(",
    "matrix solved": "StructuredMatrix::solve(",
    "Jacobian": "HeatBalance::linearise(",
    "heat of walls and faces": "HeatBalance::sum_up(",
    "temperatures of enthalpies": "Network::temperatures(",
}


def counts(spare):
    """Instructions in all, and of each function with what it calls."""
    with tempfile.TemporaryDirectory() as work:
        out = f"{work}/callgrind"
        subprocess.run(["valgrind", "--tool=callgrind", f"--callgrind-out-file={out}", program, "burn", stove, "--for", "6h",
                        *([] if spare else ["--set", "burn.reserve_every=0s"]), "-o", f"{work}/run.h5"],
                       check=True, capture_output=True)
        text = subprocess.run(["callgrind_annotate", "--inclusive=yes", "--threshold=100", out], check=True,
                              capture_output=True, text=True).stdout
    functions = {}
    for line in text.splitlines():
        if match := re.match(r"\s*([\d,]+) \([^)]*\)\s+\S*?:(.*)", line):
            name = match[2].removesuffix("'2")
            functions[name] = max(functions.get(name, 0), int(match[1].replace(",", "")))
    total = int(re.search(r"([\d,]+) \([^)]*\)\s+PROGRAM TOTALS", text)[1].replace(",", ""))
    return total, functions


def table(title, parts, measured):
    lines = [f"| {title} | with spare draw | without |", "|---|---|---|"]
    left = [1.0, 1.0]
    for word, function in parts.items():
        row = []
        for i, (total, functions) in enumerate(measured):
            share = max((n for name, n in functions.items() if function in name and "std::" not in name.split(function)[0]), default=0) / total
            left[i] -= share
            row.append(f"{100 * share:.0f} %")
        lines.append(f"| {word} | " + " | ".join(row) + " |")
    return lines + ["| all else | " + " | ".join(f"{100 * share:.0f} %" for share in left) + " |", ""]


measured = [counts(True), counts(False)]
lines = ["", "Instructions of the whole program, six hours of the sample: "
         + " with spare draw, ".join(f"{total / 1e9:.2f} thousand million" for total, _ in measured) + " without. Where they go:", ""]
lines += table("asked for", purposes, measured) + table("made of", pieces, measured)
readme = home / "README.md"
begin, end = "<!-- written by validation/bench/run --profile -->", "<!-- end of profile -->"
head, rest = readme.read_text().split(begin)
readme.write_text(head + begin + "\n" + "\n".join(lines) + "\n" + end + rest.split(end)[1])
