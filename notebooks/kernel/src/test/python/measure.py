"""Measures kernels side by side, in turns, so that whatever else the machine does hits all alike.

Usage: measure.py [--starts n] [--cells n] [--limit seconds] kernel... (usually: measure.py skewback python3)
Prints one Markdown table. Memory is the proportional set size of all processes of a kernel.
"""
import argparse
import os
import statistics
import time

from kernels import Kernel

LOOPS = {
    "java": [
        ("while(true)", "while (true) { }"),
        ("swallows interrupts", "while (true) { try { Thread.sleep(1000); } catch (InterruptedException e) { } }"),
        (
            "inside a library",
            "java.util.stream.Stream.iterate(1, java.util.function.UnaryOperator.identity())"
            ".filter(java.util.List.of()::contains).findFirst()",
        ),
    ],
    "python": [
        ("while(true)", "while True: pass"),
        ("swallows interrupts", "import time\nwhile True:\n  try: time.sleep(1)\n  except KeyboardInterrupt: pass"),
        ("inside a library", "import itertools, collections\ncollections.deque(itertools.repeat(1), maxlen=0)"),
    ],
}
CODE = {
    "java": {
        "lines": "for (int i = 0; i < 20_000; i++) System.out.println(i);",
        "die": 'Runtime.class.getMethod("halt", int.class).invoke(Runtime.getRuntime(), 4);',
        "keep": "int kept = 7;",
    },
    "python": {"lines": "for i in range(20_000): print(i)", "die": None, "keep": "kept = 7"},
}


def first_result(name):
    kernel = Kernel(name)
    try:
        kernel.ready()
        assert kernel.run("1+1").status == "ok"
        return time.perf_counter() - kernel.started
    finally:
        kernel.close()


def at(times, number):
    """Median around the cell of a number."""
    return statistics.median(times[max(0, number - 10) : number + 10])


def stopping(kernel, language, loop, limit):
    """How long an endless loop takes to obey, what it costs after that, and whether variables are kept."""
    kernel.run(CODE[language]["keep"])
    _, seconds = kernel.interrupted(loop, limit=limit)
    if seconds is None:
        kernel.restart()
        return {"stopped, s": f"not stopped within {limit:.0f} s"}
    time.sleep(1)
    before = kernel.cpu()
    time.sleep(1)
    quiet = kernel.cpu() - before
    kept = kernel.run("kept").text == "7"
    return {
        "stopped, s": seconds,
        "processor in the second after, s": quiet,
        "variables kept": "yes" if kept else "no",
    }


def long_session(name, cells, limit):
    results = {}
    with Kernel(name) as kernel:
        language = "python" if "python" in name else "java"
        code = CODE[language]
        times = [kernel.run(f"{i}+1").seconds for i in range(cells)]
        results["warm round trip, ms"] = statistics.median(times[20:120]) * 1000
        results["cell 600 against cell 20"] = at(times, cells - 10) / at(times, 20)
        results["memory after them, MiB"] = sum(kernel.memory())
        run = kernel.run(code["lines"])
        assert run.stream().count("\n") == 20_000, run.stream().count("\n")
        results["20 000 lines, s"] = run.seconds
        results["20 000 lines, messages"] = len(run.of("stream"))
        for title, loop in LOOPS[language]:
            for measure, value in stopping(kernel, language, loop, limit).items():
                results[f"{title}: {measure}"] = value
        if code["die"]:
            began = time.perf_counter()
            kernel.run(code["die"])
            assert kernel.run("1+1").text == "2"
            results["dead worker to next result, s"] = time.perf_counter() - began
    return results


def main():
    options = argparse.ArgumentParser()
    options.add_argument("--starts", type=int, default=7)
    options.add_argument("--cells", type=int, default=610)
    options.add_argument("--limit", type=float, default=10, help="seconds that a loop may take to stop")
    options.add_argument("kernels", nargs="+")
    given = options.parse_args()
    starts = {name: [] for name in given.kernels}
    load = os.getloadavg()[0]
    for _ in range(given.starts):
        for name in given.kernels:
            starts[name].append(first_result(name))
    sessions = {name: long_session(name, given.cells, given.limit) for name in given.kernels}
    rows = list(dict.fromkeys(key for session in sessions.values() for key in session))
    print("| | " + " | ".join(given.kernels) + " |\n|---|" + "---|" * len(given.kernels))
    print("| first result from process start, s | " + " | ".join(f"{statistics.median(s):.2f}" for s in starts.values()) + " |")
    for row in rows:
        print(f"| {row} | " + " | ".join(shown(sessions[name].get(row, "")) for name in given.kernels) + " |")
    print(f"\nload of the machine before and after: {load:.1f}, {os.getloadavg()[0]:.1f}")


def shown(value):
    return value if isinstance(value, str) else f"{value:.2f}" if value < 10 else f"{value:.0f}"


if __name__ == "__main__":
    main()
