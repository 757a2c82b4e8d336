"""The kernel with the clients that people use: jupyter_client, nbclient and nbconvert."""
import os
import subprocess
import sys
import tempfile
import time
import unittest

import nbformat
import psutil
from nbclient import NotebookClient

from kernels import LONG, NAME, Kernel, joined

CELLS = [
    'import java.util.stream.*;\nrecord Arch(double span, double rise) { double ratio() { return span / rise; } }',
    "var arch = new Arch(336, 84);\narch.ratio()",
    'System.out.println("span " + arch.span());\nSystem.err.println("to the error stream");\narch',
    'display(IntStream.range(0, 5).boxed().toList(), "list");',
    'updateDisplay(IntStream.range(0, 3).boxed().toList(), "list");\nnew double[] {1, 2.5}',
]


def notebook(cells):
    made = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(c) for c in cells])
    made.metadata["kernelspec"] = {"name": NAME, "display_name": NAME, "language": "java"}
    return made


def outputs(made):
    return [
        (o.output_type, o.get("name"), o.get("text"), (o.get("data") or {}).get("text/plain"))
        for cell in made.cells
        for o in joined(cell.outputs)
    ]


class Clients(unittest.TestCase):
    def test_nbclient_runs_a_notebook(self):
        made = notebook(CELLS)
        NotebookClient(made, kernel_name=NAME, timeout=LONG).execute()
        seen = outputs(made)
        self.assertIn(("execute_result", None, None, "4.0"), seen)
        self.assertIn(("stream", "stdout", "span 336.0\n", None), seen)
        self.assertIn(("stream", "stderr", "to the error stream\n", None), seen)
        self.assertIn(("display_data", None, None, "[0, 1, 2]"), seen)
        self.assertIn(("execute_result", None, None, "[1.0, 2.5]"), seen)

    def test_nbconvert_gives_the_same_text_twice(self):
        with tempfile.TemporaryDirectory() as folder:
            source = os.path.join(folder, "n.ipynb")
            nbformat.write(notebook(CELLS), source)
            seen = []
            for name in ("a", "b"):
                subprocess.run(
                    [sys.executable, "-m", "nbconvert", "--to", "notebook", "--execute"]
                    + ["--output", name, source],
                    check=True,
                    capture_output=True,
                )
                seen.append(outputs(nbformat.read(os.path.join(folder, name + ".ipynb"), 4)))
            self.assertEqual(seen[0], seen[1])
            self.assertGreater(len(seen[0]), 5)

    def test_what_a_thread_prints_late_comes_under_its_own_cell(self):
        with Kernel() as kernel:
            code = 'new Thread(() -> { try { Thread.sleep(300); } catch (InterruptedException e) { } System.out.println("late"); }).start();'
            first = kernel.client.execute(code)
            kernel.client.execute("1 + 1")
            while True:
                message = kernel.client.get_iopub_msg(timeout=LONG)
                if message["msg_type"] == "stream":
                    break
            self.assertEqual("late\n", message["content"]["text"])
            self.assertEqual(first, message["parent_header"]["msg_id"])

    def test_input_and_password(self):
        with Kernel() as kernel:
            kernel.client.execute('input("Span?") + password("Key?")', allow_stdin=True)
            asked = []
            for answer in ("336", "secret"):
                request = kernel.client.get_stdin_msg(timeout=LONG)
                asked.append((request["content"]["prompt"], request["content"]["password"]))
                kernel.client.input(answer)
            self.assertEqual([("Span?", False), ("Key?", True)], asked)
            reply = kernel.client.get_shell_msg(timeout=LONG)
            self.assertEqual("ok", reply["content"]["status"])

    def test_many_lines_arrive_in_few_messages(self):
        with Kernel() as kernel:
            run = kernel.run("for (int i = 0; i < 20_000; i++) System.out.println(i);")
            self.assertEqual(20_000, run.stream().count("\n"))
            self.assertLessEqual(len(run.of("stream")), 100)

    def test_a_restart_begins_anew(self):
        with Kernel() as kernel:
            kernel.run("int kept = 1;")
            kernel.manager.restart_kernel()
            kernel.client.wait_for_ready(timeout=LONG)
            self.assertEqual("error", kernel.run("kept").status)

    def test_history_reaches_over_sessions(self):
        with tempfile.TemporaryDirectory() as folder:
            env = {"SKEWBACK_HISTORY": os.path.join(folder, "history.jsonl")}
            kernel = Kernel(env=env).ready()
            kernel.run("int remembered = 12;")
            kernel.close(now=False)
            with Kernel(env=env) as kernel:
                kernel.run("1")
                kernel.client.history(hist_access_type="search", pattern="*remembered*", raw=True)
                reply = kernel.client.get_shell_msg(timeout=LONG)
                self.assertEqual([1, 1, "int remembered = 12;"], list(reply["content"]["history"][0]))

    def test_no_process_outlives_whoever_started_the_kernel(self):
        code = (
            "from kernels import Kernel\nimport os, time\nk = Kernel().ready()\nk.run('1')\n"
            "print(*[p.pid for p in k.processes()], flush=True)\nos._exit(0)\n"
        )
        here = os.path.dirname(os.path.abspath(__file__))
        done = subprocess.run(
            [sys.executable, "-c", code], cwd=here, check=True, capture_output=True, text=True
        )
        self.assert_all_end([int(pid) for pid in done.stdout.split()])

    def test_no_worker_outlives_a_kernel_that_is_killed(self):
        with Kernel() as kernel:
            kernel.run('new Thread(() -> { while (true) { } }).start();')
            family = [process.pid for process in kernel.processes()]
            psutil.Process(family[0]).kill()
            self.assert_all_end(family)

    def assert_all_end(self, family):
        self.assertGreaterEqual(len(family), 2)
        until = time.monotonic() + LONG
        while any(alive(pid) for pid in family) and time.monotonic() < until:
            time.sleep(0.1)
        self.assertEqual([], [pid for pid in family if alive(pid)])

    def test_listens_on_loopback_only(self):
        with Kernel() as kernel:
            kernel.run("1")
            for process in kernel.processes():
                for connection in process.net_connections(kind="inet"):
                    address = connection.laddr.ip.removeprefix("::ffff:")
                    self.assertIn(address, ("127.0.0.1", "::1"), connection)
            mode = os.stat(kernel.manager.connection_file).st_mode & 0o777
            self.assertEqual(0o600, mode)


def alive(pid):
    try:
        return psutil.Process(pid).status() != psutil.STATUS_ZOMBIE
    except psutil.NoSuchProcess:
        return False


if __name__ == "__main__":
    unittest.main(verbosity=2)
