"""Runs many cells of the kinds that notebooks hold and watches that memory and speed stay level.

Usage: soak.py [cells]
"""
import statistics
import sys

from kernels import Kernel

KINDS = [
    "{i} + 1",
    "double x{m} = {i} * 0.5; x{m} * 2",
    'System.out.println("line {i}");',
    "int f{m}(int a) {{ return a + {i}; }} f{m}(2)",
    "record R{m}(double a) {{ }} new R{m}({i})",
    "var list{m} = IntStream.range(0, 1000).boxed().toList(); list{m}.size()",
    "int broken = missing{i};",
    'throw new IllegalStateException("{i}");',
    "display({i});",
]
MOST_GROWTH = 1.25


def main():
    cells = int(sys.argv[1]) if len(sys.argv) > 1 else 2000
    with Kernel() as kernel:
        levels, times = [], []
        for i in range(cells):
            run = kernel.run(KINDS[i % len(KINDS)].format(i=i, m=i % 40))
            times.append(run.seconds)
            if (i + 1) % (cells // 20) == 0:
                memory = kernel.memory()
                recent = statistics.median(times[-cells // 20 :]) * 1000
                levels.append(sum(memory))
                print(f"{i + 1:6} cells {memory[0]:6.0f} + {sum(memory[1:]):.0f} MiB {recent:6.1f} ms", flush=True)
        half = len(levels) // 2
        grown = max(levels[half:]) / max(levels[:half])
        slowed = statistics.median(times[-200:]) / statistics.median(times[20:220])
        print(f"soak: memory {grown:.2f} times, time {slowed:.2f} times that of the first half's")
        assert grown <= MOST_GROWTH, levels


if __name__ == "__main__":
    main()
