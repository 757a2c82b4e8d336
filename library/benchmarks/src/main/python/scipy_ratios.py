"""Runs this library and SciPy on the same matrices and prints the ratios side by side.

Build the benchmarks first (mvn -Pbenchmarks -pl library/benchmarks -am package -DskipTests), then:

    python3 library/benchmarks/src/main/python/scipy_ratios.py A6000 A60000 G60000

SciPy's sparse direct solver is used with the ordering made for symmetric matrices, on one thread, its
ordering included in the time, as ours is. Times are the shortest of several; "processor" leaves out what
other programs of the machine took. A ratio below 1 means that this library is faster.
"""

import argparse
import glob
import json
import os
import subprocess
import tempfile
import time

for variable in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ[variable] = "1"

import numpy
import scipy
from scipy.io import mmread
from scipy.sparse.linalg import LinearOperator, eigsh, splu

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.abspath(os.path.join(HERE, *[".."] * 5))
MODES = 20


def default_classpath():
    jars = glob.glob(
        os.path.expanduser("~/.m2/repository/org/apache/commons/commons-math3/3.6.1/*3.6.1.jar")
    )
    return os.pathsep.join(
        [
            os.path.join(ROOT, "library", "benchmarks", "target", "classes"),
            os.path.join(ROOT, "library", "core", "target", "classes"),
            *jars,
        ]
    )


def timed(times, task):
    wall = processor = float("inf")
    result = None
    for _ in range(times):
        start, start_processor = time.perf_counter(), time.process_time()
        result = task()
        processor = min(processor, (time.process_time() - start_processor) * 1e3)
        wall = min(wall, (time.perf_counter() - start) * 1e3)
    return {"wall": wall, "processor": processor}, result


def factor(stiffness):
    return splu(
        stiffness,
        permc_spec="MMD_AT_PLUS_A",
        diag_pivot_thresh=0.0,
        options={"SymmetricMode": True},
    )


def modes(stiffness, mass):
    inverse = factor(stiffness)
    operator = LinearOperator(stiffness.shape, inverse.solve)
    return numpy.sort(
        eigsh(
            stiffness,
            k=MODES,
            M=mass,
            sigma=0,
            which="LM",
            OPinv=operator,
            return_eigenvectors=True,
        )[0]
    )


def difference(ours, theirs):
    return numpy.max(numpy.abs(ours - theirs)) / numpy.max(numpy.abs(theirs))


def compare(name, folder, rounds):
    stiffness = mmread(os.path.join(folder, name + "-stiffness.mtx")).tocsc()
    mass = mmread(os.path.join(folder, name + "-mass.mtx")).tocsc()
    order = stiffness.shape[0]
    load = numpy.arange(order, dtype=numpy.int64) * 7919 % 1000 / 1000.0 - 0.5
    theirs = {}
    theirs["factor and solve"], solution = timed(
        rounds, lambda: factor(stiffness).solve(load)
    )
    inverse = factor(stiffness)
    theirs["solve"], _ = timed(4 * rounds, lambda: inverse.solve(load))
    theirs["modes"], values = timed(max(4, rounds // 2), lambda: modes(stiffness, mass))
    with open(os.path.join(folder, name + "-times.jsonl")) as lines:
        ours = {entry["work"]: entry for entry in map(json.loads, lines)}
    for work, time_taken in theirs.items():
        print(
            f"{name:8} {order:7} {work:18}"
            f" {ours[work]['wall']:9.1f} {time_taken['wall']:9.1f}"
            f" {ours[work]['wall'] / time_taken['wall']:6.2f}"
            f" {ours[work]['processor']:9.1f} {time_taken['processor']:9.1f}"
            f" {ours[work]['processor'] / time_taken['processor']:6.2f}",
            flush=True,
        )
    own = numpy.loadtxt(os.path.join(folder, name + "-solution.txt"))
    own_modes = numpy.loadtxt(os.path.join(folder, name + "-modes.txt"))
    print(
        f"{name:8} largest relative difference: solution {difference(own, solution):.1e},"
        f" modes {difference(own_modes, values):.1e}",
        flush=True,
    )


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("structures", nargs="+", help="such as A6000 or G60000")
    parser.add_argument("--rounds", type=int, default=12)
    parser.add_argument("--java", default="java")
    parser.add_argument("--heap", default="400m")
    parser.add_argument("--classpath", default=default_classpath())
    options = parser.parse_args()
    print(f"SciPy {scipy.__version__}, NumPy {numpy.__version__}; load {os.getloadavg()}")
    print("                                         wall ms              processor ms")
    print("structure order work                  own     SciPy  ratio       own     SciPy  ratio")
    with tempfile.TemporaryDirectory() as folder:
        for name in options.structures:
            subprocess.run(
                [
                    options.java,
                    f"-Xmx{options.heap}",
                    "-cp",
                    options.classpath,
                    "org.skewback.benchmarks.SolverComparison",
                    folder,
                    str(options.rounds),
                    name,
                ],
                check=True,
            )
            compare(name, folder, options.rounds)


if __name__ == "__main__":
    main()
