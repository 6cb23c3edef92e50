#!/usr/bin/env python3
"""The table of validation/README.md beside the rows of a run.

    validation/table.py check ROWS [CASE...]    fails where a row is new, gone, has another verdict,
                                                or a figure that moved by more than a twentieth
    validation/table.py renew ROWS [CASE...]    writes the rows of the run into the table, and says
                                                what moved

ROWS is what the cases append to the file named by DRAWWELL_VALIDATION_ROWS. With CASE only the rows
of those cases (`measured/wet_fuel`, or `measured` for all in it) are looked at and renewed.
"""
import pathlib
import re
import sys

MARKER = "<!-- below: written by validation/run --renew -->"
HEAD = "| case | what is compared | drawwell | value | limit | |\n|---|---|---|---|---|---|\n"

# A figure has moved if it changed by more than a twentieth.
MOVED = 1 / 20
# What is far below its limit is noise of rounding, of the processor's own exp and log, and of where
# the steps fall: less than a hundredth of the limit says nothing, however many times over it is.
NOTHING = 1 / 100


class Row:
    """One comparison. Case and what is compared are its name; the rest comes from the run."""

    def __init__(self, cells):
        if len(cells) != 6:
            sys.exit(f"not a row of the table: {cells}")
        self.case, self.what, self.own, value, limit, self.verdict = cells
        self.value_text, self.limit_text = value, limit
        self.value, self.limit = float(value), float(limit)

    @property
    def name(self):
        return self.case, self.what

    def line(self):
        return "| " + " | ".join((self.case, self.what, self.own, self.value_text, self.limit_text, self.verdict)) + " |"

    def own_figures(self):
        return [float(each) for each in self.own.split(" +- ")] if self.own else []

    def changes(self, new):
        """What differs in the new row, in words."""
        found = []
        if self.verdict.split(":")[0] != new.verdict.split(":")[0]:
            found.append(f"{self.verdict} -> {new.verdict}")
        if moved(self.value, new.value, NOTHING * abs(self.limit)):
            found.append(f"value {self.value_text} -> {new.value_text}")
        if moved(self.limit, new.limit, 0):
            found.append(f"limit {self.limit_text} -> {new.limit_text}")
        # A figure of its own has moved by nothing while it stays well within its spread.
        mine, others = self.own_figures(), new.own_figures()
        within = MOVED * mine[1] if len(mine) > 1 else 0
        if len(mine) != len(others) or (mine and moved(mine[0], others[0], within)):
            found.append(f"drawwell {self.own} -> {new.own}")
        return found


def moved(old, new, nothing):
    return abs(new - old) > max(MOVED * abs(old), nothing)


def by_name(rows, where):
    named = {}
    for row in rows:
        if row.name in named:
            sys.exit(f"{where} has two rows of one name: {row.case}: {row.what}")
        named[row.name] = row
    return named


def kept_rows(text):
    below = text.partition(MARKER)[2]
    lines = [line for line in below.splitlines() if line.startswith("| ") and not line.startswith("| case |")]
    return by_name((Row([cell.strip() for cell in re.split(r"(?<!\\)\|", line)[1:-1]]) for line in lines), "the table")


def run_rows(path):
    lines = pathlib.Path(path).read_text().splitlines()
    return by_name((Row(line.split("\t")) for line in lines), "the run")


def main(do, path, *cases, readme=pathlib.Path(__file__).parent / "README.md"):
    text = readme.read_text()
    if MARKER not in text:
        sys.exit(f"{readme} lacks its marker: {MARKER}")
    asked = lambda row: not cases or any(row.case == c or row.case.startswith(c + "/") for c in cases)
    table, run = kept_rows(text), run_rows(path)
    said = 0
    for name in sorted(table.keys() | run.keys()):
        old, new = table.get(name), run.get(name)
        if not asked(old or new):
            continue
        found = ["new"] if not old else ["gone"] if not new else old.changes(new)
        if found:
            said += 1
            print(f"{name[0]}: {name[1]}: {', '.join(found)}")
    if do == "check":
        if said:
            print(f"{said} rows of validation/README.md are not what this run has; validation/run --renew writes them")
        return 1 if said else 0
    rows = [row for row in table.values() if not asked(row)] + [row for row in run.values() if asked(row)]
    head = text.partition(MARKER)[0]
    body = "".join(row.line() + "\n" for row in sorted(rows, key=lambda row: row.name))
    part = readme.with_name(readme.name + ".part")
    part.write_text(f"{head}{MARKER}\n\n{HEAD}{body}")
    part.replace(readme)
    return 0


if __name__ == "__main__":
    if len(sys.argv) < 3 or sys.argv[1] not in ("check", "renew"):
        sys.exit(__doc__)
    sys.exit(main(*sys.argv[1:]))
