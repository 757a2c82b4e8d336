"""What the scripts beside this one share: a kernel that is run as Jupyter runs it, and its memory.

The kernel is the one installed under the name in SKEWBACK_KERNEL (usually ``skewback``), looked for where
Jupyter looks, so JUPYTER_PATH may name another place.
"""
import copy
import os
import queue
import time

import psutil
from jupyter_client.manager import KernelManager

NAME = os.environ.get("SKEWBACK_KERNEL", "skewback")
LONG = 60


class Run:
    """What came back for one cell."""

    def __init__(self, reply, messages, seconds):
        self.reply = reply
        self.messages = messages
        self.seconds = seconds

    @property
    def status(self):
        return self.reply["status"]

    def of(self, kind):
        return [m["content"] for m in self.messages if m["msg_type"] == kind]

    def stream(self, name="stdout"):
        return "".join(c["text"] for c in self.of("stream") if c["name"] == name)

    @property
    def text(self):
        results = self.of("execute_result")
        return results[0]["data"].get("text/plain", "") if results else ""


class Kernel:
    """A kernel in its own process with a client connected to it."""

    def __init__(self, name=NAME, env=None):
        started = time.perf_counter()
        self.manager = KernelManager(kernel_name=name)
        self.manager.start_kernel(env={**os.environ, **(env or {})})
        self.client = self.manager.client()
        self.client.start_channels()
        self.started = started

    def ready(self):
        self.client.wait_for_ready(timeout=LONG)
        return self

    def run(self, code, **options):
        options.setdefault("allow_stdin", False)
        messages = []
        began = time.perf_counter()
        reply = self.client.execute_interactive(
            code, timeout=LONG, output_hook=messages.append, **options
        )
        return Run(reply["content"], messages, time.perf_counter() - began)

    def processes(self):
        front = psutil.Process(self.manager.provisioner.process.pid)
        return [front, *front.children(recursive=True)]

    def memory(self):
        """Proportional set sizes of all its processes, MiB (smaps_rollup of Linux)."""
        return [proportional(p.pid) for p in self.processes()]

    def cpu(self):
        """Processor time of all its processes so far, s."""
        return sum(sum(p.cpu_times()[:2]) for p in self.processes())

    def interrupted(self, code, after=1.0, limit=LONG):
        """Runs a cell, interrupts it and gives the reply and the seconds until it came.

        Gives None in place of both where none came within the limit; the kernel is then as good as lost.
        """
        request = self.client.execute(code, allow_stdin=False)
        time.sleep(after)
        began = time.perf_counter()
        self.manager.interrupt_kernel()
        while True:
            left = limit - (time.perf_counter() - began)
            try:
                reply = self.client.get_shell_msg(timeout=max(0, left))
            except queue.Empty:
                return None, None
            if reply["parent_header"].get("msg_id") == request:
                return reply["content"], time.perf_counter() - began

    def restart(self):
        self.manager.restart_kernel(now=True)
        self.client.wait_for_ready(timeout=LONG)

    def close(self, now=True):
        """Kills the kernel, or where it need not be now asks it to end."""
        self.client.stop_channels()
        self.manager.shutdown_kernel(now=now)

    def __enter__(self):
        return self.ready()

    def __exit__(self, *_):
        self.close()


def joined(outputs):
    """Outputs of a cell, texts on one stream that follow each other made one, as a reader sees them."""
    whole = []
    for output in outputs:
        if output.output_type == "stream" and whole and whole[-1].get("name") == output.name:
            whole[-1].text += output.text
        else:
            whole.append(copy.deepcopy(output))
    return whole


def proportional(pid):
    with open(f"/proc/{pid}/smaps_rollup", encoding="ascii") as rollup:
        for line in rollup:
            if line.startswith("Pss:"):
                return int(line.split()[1]) / 1024
    raise ValueError(f"process {pid} tells no proportional set size")
