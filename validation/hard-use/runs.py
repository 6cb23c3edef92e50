"""What the scripts of this folder share: runs of the program, looks at a folder, and the count of findings."""
import argparse
import hashlib
import pathlib
import shutil
import subprocess
import sys
import tempfile

sources = pathlib.Path(__file__).resolve().parents[2]
sample = sources / "data/stoves/allotment-kitchen.toml"
longest = 240  # [s] a run may take, sanitizers and a busy machine included


class Findings:
    """Counts what was tried, and tells what went wrong."""

    def __init__(self, name):
        self.name, self.tried, self.wrong, self.passed_over = name, 0, 0, []

    def check(self, good, what):
        if not good:
            self.wrong += 1
            print(f"FINDING {self.name}: {what}", flush=True)
        return good

    def pass_over(self, why):
        self.passed_over.append(why)

    def end(self, unit):
        over = "".join(f"; {why}" for why in self.passed_over)
        print(f"{self.name}: {self.tried} {unit}, {self.wrong} findings{over}")
        sys.exit(1 if self.wrong else 0)


def arguments(description, **options):
    """The program's path, --seed, and further whole-number options with their defaults."""
    parser = argparse.ArgumentParser(description=description)
    parser.add_argument("program", type=lambda path: str(pathlib.Path(path).resolve()))
    for name, default in dict(seed=1, **options).items():
        parser.add_argument("--" + name, type=int, default=default, help=f"default {default}")
    return parser.parse_args()


def scratch():
    return tempfile.TemporaryDirectory(prefix="drawwell-hard-use-")


def run(program, words, folder, **options):
    """Output as text, whatever bytes it holds; a run that takes too long raises TimeoutExpired."""
    options.setdefault("stdout", subprocess.PIPE)
    options.setdefault("stderr", subprocess.PIPE)
    options.setdefault("stdin", subprocess.DEVNULL)
    return subprocess.run([program, *words], cwd=folder, timeout=longest, text=True, errors="replace", **options)


def snapshot(folder):
    """Every file below a folder with a digest of its bytes."""
    return {str(path.relative_to(folder)): hashlib.sha1(path.read_bytes()).hexdigest()
            for path in sorted(pathlib.Path(folder).rglob("*")) if path.is_file()}


def copy_of(folder, to):
    shutil.copytree(folder, to, symlinks=True)
    return pathlib.Path(to)


def is_whole(program, file):
    """Whether a file is a finished one of its kind, and not the beginning of one."""
    file = pathlib.Path(file)
    if file.suffix == ".h5":
        if "compare" in file.name:
            return subprocess.run(["ncdump", "-h", file], capture_output=True).returncode == 0
        return run(program, ["export", file.name, "--columns", "drive"], file.parent).returncode == 0
    text = file.read_text(errors="replace")
    endings = {".html": "</html>", ".svg": "</svg>", ".csv": "\n", ".toml": "\n"}
    return text.rstrip(" ").endswith(endings[file.suffix]) or \
        text.rstrip().endswith(endings[file.suffix].strip() or "\0")


def write_log(program, folder, name, minutes=20):
    """A log as somebody would have kept it, from a burn with damper wood than the file says."""
    run(program, ["burn", str(sample), "--for", f"{minutes}min", "--set", "wood.moisture=18 % wet", "--quiet", "-o",
                  "logged.h5"], folder)
    table = run(program, ["export", "logged.h5", "--columns", "outlet_gas_temperature", "--every", "60s"], folder).stdout
    (folder / "logged.h5").unlink()
    rows = [line.split(",")[:2] for line in table.splitlines()[1:]]
    (folder / name).write_text("".join(",".join(row) + "\n" for row in [["time_s", "TC1 (°C)"], *rows]))
