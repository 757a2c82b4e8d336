"""Runs many cells of the kinds that notebooks hold and watches that memory and time stay level.

Usage: soak.py [cells]

Cells define, define anew (the same, with another type, with another shape), print, show, fail to compile and fail as
they run; 160 names stay declared. Memory is the proportional set size of all processes of the kernel. Time is
told as it was and as processor time, which hangs less on what else the machine does; only the latter is held to a bound.
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
    "Function<Double, Double> g{m} = a -> a * {i}; g{m}.apply(2.0)",
    "{other} changed{m} = ({other}) {i};\n// a comment\nfor (int j = 0; j < 3; j++) {{ System.out.println(changed{m} + j); }}",
    'record Shape{m}(int a, {other} b) {{ int sum() {{ return (int) (a + b); }} }}\nnew Shape{m}({i}, ({other}) 1).sum()',
    'int h{m}(int a) {{ return a / (a - {i}); }}\nh{m}({i})',
]
MOST_GROWTH = 1.15
MOST_SLOWED = 1.25
MOST_MIB = 220
STEPS = 20


def main():
    cells = int(sys.argv[1]) if len(sys.argv) > 1 else 2000
    with Kernel() as kernel:
        levels, work, times = [], [], []
        before = kernel.cpu()
        for i in range(cells):
            code = KINDS[i % len(KINDS)].format(i=i, m=i % 20, other="long" if i // 20 % 2 else "double")
            run = kernel.run(code)
            fails = i % len(KINDS) in (6, 7, 12)
            assert run.status == ("error" if fails else "ok"), (code, run.reply)
            times.append(run.seconds)
            if (i + 1) % (cells // STEPS) == 0:
                memory = kernel.memory()
                now = kernel.cpu()
                recent = statistics.median(times[-cells // STEPS :]) * 1000
                levels.append(sum(memory))
                work.append((now - before) / (cells // STEPS) * 1000)
                before = now
                print(
                    f"{i + 1:6} cells {memory[0]:6.0f} + {sum(memory[1:]):.0f} MiB {recent:6.1f} ms,"
                    f" processor {work[-1]:6.1f} ms a cell",
                    flush=True,
                )
        half = STEPS // 2
        grown = max(levels[half:]) / max(levels[:half])
        # The first step warms up the virtual machines.
        slowed = statistics.mean(work[half:]) / statistics.mean(work[1:half])
        print(f"soak: at most {max(levels):.0f} MiB; second half against first: memory {grown:.2f}, processor {slowed:.2f}")
        assert max(levels) <= MOST_MIB, levels
        assert grown <= MOST_GROWTH, levels
        assert slowed <= MOST_SLOWED, work


if __name__ == "__main__":
    main()
