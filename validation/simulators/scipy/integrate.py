"""Integrates a stove by SciPy on drawwell's right-hand side, a shared library; writes
reference.csv to the terminal.

    integrate.py LIBRARY STOVE.toml SECONDS EVERY TOLERANCE METHOD [BALANCED]
"""
import ctypes
import sys
import time as clock

import numpy as np
import scipy
import scipy.integrate

GO_ON, BEGIN_ANEW, TOO_LONG = range(3)


class Run:
    """The C entry point with its types."""

    def __init__(self, library, stove, end):
        self.c = ctypes.CDLL(library)
        numbers = np.ctypeslib.ndpointer(dtype=float, flags="C_CONTIGUOUS")
        run, real, size = ctypes.c_void_p, ctypes.c_double, ctypes.c_size_t
        for name, result, arguments in (
            ("open", run, [ctypes.c_char_p, real]),
            ("size", size, [run]),
            ("name", ctypes.c_char_p, [run, size]),
            ("initial", None, [run, numbers]),
            ("unit", None, [run, numbers]),
            ("begin", real, [run, real, numbers]),
            ("rates", ctypes.c_int, [run, real, numbers, numbers]),
            ("evaluations", size, [run]),
            ("balance_within", None, [run, real]),
            ("accepted", ctypes.c_int, [run, real, real, numbers]),
            ("show", None, [run, real, numbers, numbers]),
        ):
            function = getattr(self.c, "drawwell_" + name)
            function.restype, function.argtypes = result, arguments
        self.run = self.c.drawwell_open(stove.encode(), end)
        if not self.run:
            sys.exit("the stove cannot be opened")
        self.size = self.c.drawwell_size(self.run)
        self.names = []
        while name := self.c.drawwell_name(self.run, len(self.names)):
            self.names.append(name.decode())

    def initial(self):
        state = np.empty(self.size)
        self.c.drawwell_initial(self.run, state)
        return state

    def unit(self):
        unit = np.empty(self.size)
        self.c.drawwell_unit(self.run, unit)
        return unit

    def begin(self, time, state):
        return self.c.drawwell_begin(self.run, time, state)

    def rates(self, time, state):
        rate = np.empty(self.size)
        bad = self.c.drawwell_rates(self.run, time, np.ascontiguousarray(state), rate)
        return np.full(self.size, np.nan) if bad else rate

    def accepted(self, time, step, state):
        return self.c.drawwell_accepted(self.run, time, step, np.ascontiguousarray(state))

    def show(self, time, state):
        quantity = np.empty(len(self.names))
        self.c.drawwell_show(self.run, time, state, quantity)
        return quantity


class Stretch:
    """Steps from one time to another where nothing changes at once."""

    def __init__(self, run, method, tolerance):
        self.run, self.method, self.tolerance = run, method, tolerance
        self.absolute = 100 * tolerance * run.unit()  # of a hundred kelvin
        self.steps = self.taken_again = 0

    def solver(self, time, state, to, longest=np.inf):
        return self.method(self.run.rates, time, state, to, rtol=self.tolerance,
                           atol=self.absolute, max_step=longest)

    def go(self, time, state, to):
        solver = self.solver(time, state, to)
        short = False
        while solver.status == "running":
            before = solver.t, solver.y.copy()
            if message := solver.step():
                sys.exit(f"SciPy gave up at {solver.t} s: {message}")
            self.steps += 1
            step = solver.t - before[0]
            verdict = self.run.accepted(solver.t, step, solver.y)
            if verdict == TOO_LONG:
                self.taken_again += 1
                solver = self.solver(*before, to, longest=step / 4)
                short = True
            elif (verdict == BEGIN_ANEW or short) and solver.status == "running":
                solver = self.solver(solver.t, solver.y, to)
                short = False
        return solver.y.copy()


def main():
    library, stove, end, every, tolerance, method = sys.argv[1:7]
    end, every = float(end), float(every)
    run = Run(library, stove, end)
    if balanced := sys.argv[7:]:
        run.c.drawwell_balance_within(run.run, float(balanced[0]))
    stretch = Stretch(run, getattr(scipy.integrate, method), float(tolerance))
    start = clock.perf_counter()
    time, state = 0.0, run.initial()
    following = run.begin(time, state)
    times, shown = [time], [run.show(time, state)]
    while time < end:
        sample = every * len(times)
        to = min(following, sample)
        state = stretch.go(time, state, to)
        time = to
        if time == following and time < end:
            following = run.begin(time, state)
        if time == sample:
            times.append(time)
            shown.append(run.show(time, state))
    print(f"{clock.perf_counter() - start} s, {run.c.drawwell_evaluations(run.run)} right-hand sides, "
          f"{stretch.steps} steps", file=sys.stderr)
    print(f"# SciPy {scipy.__version__}, {method}, relative tolerance {tolerance}, "
          f"{stretch.steps} steps, {stretch.taken_again} taken again")
    print("quantity," + ",".join(f"{t:g}" for t in times))
    for name, row in zip(run.names, np.array(shown).T):
        print(name + "," + ",".join(f"{value:.11g}" for value in row))


main()
