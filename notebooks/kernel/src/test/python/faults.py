"""Tries with the kernel what kernels for Java are known to get wrong, and prints what was seen.

Usage: faults.py
Prints one Markdown table and fails where something is not as it should be.
"""
import sys
import time

from kernels import LONG, Kernel

SEEN = []


def case(title):
    def keep(function):
        SEEN.append((title, function))
        return function

    return keep


def ask(kernel, kind, content, channel="shell"):
    """Sends a request as it stands and gives the content of the reply."""
    client = kernel.client
    message = client.session.msg(kind, content)
    sender = client.control_channel if channel == "control" else client.shell_channel
    sender.send(message)
    while True:
        reply = sender.get_msg(timeout=LONG)
        if reply["parent_header"].get("msg_id") == message["msg_id"]:
            return reply["content"]


@case("kernel_info")
def kernel_info(kernel):
    info = ask(kernel, "kernel_info_request", {})
    assert info["status"] == "ok" and info["supported_features"] == [], info
    return f"status ok, protocol {info['protocol_version']}, no optional feature claimed"


@case("history_request")
def history(kernel):
    kernel.run("int asked = 3;")
    found = []
    for kind in (
        {"hist_access_type": "tail", "n": 1},
        {"hist_access_type": "range", "session": 0, "start": 1, "stop": 2},
        {"hist_access_type": "search", "pattern": "*asked*", "n": 1},
    ):
        found.append(len(ask(kernel, "history_request", {"raw": True, "output": False, **kind})["history"]))
    assert found == [1, 1, 1], found
    return "tail, range and search answered, one entry each as asked"


@case("silent")
def silent(kernel):
    run = kernel.run("System.out.println(1); 1", silent=True)
    kinds = [m["msg_type"] for m in run.messages]
    assert set(kinds) <= {"status"}, kinds
    return "nothing published but the state"


@case("store_history=false")
def unstored(kernel):
    before = kernel.run("1").reply["execution_count"]
    after = kernel.run("1", store_history=False).reply["execution_count"]
    assert before == after, (before, after)
    return f"counter stays at {after}"


@case("user_expressions")
def expressions(kernel):
    given = kernel.run("int base = 20;", user_expressions={"a": "base + 1", "b": "nothing"}).reply["user_expressions"]
    assert given["a"]["data"]["text/plain"] == "21" and given["b"]["status"] == "error", given
    return "a value, and an error where there is none"


def queue_of_two(kernel, stop):
    first = kernel.client.execute("Thread.sleep(1000); throw new IllegalStateException();", stop_on_error=stop)
    second = kernel.client.execute("1 + 1")
    status = {}
    while len(status) < 2:
        reply = kernel.client.get_shell_msg(timeout=LONG)
        status[reply["parent_header"]["msg_id"]] = reply["content"]["status"]
    return status[first], status[second]


@case("stop_on_error")
def stop_on_error(kernel):
    stops, goes_on = queue_of_two(kernel, True), queue_of_two(kernel, False)
    assert (stops, goes_on) == (("error", "aborted"), ("error", "ok")), (stops, goes_on)
    return "true: what waited is aborted; false: it runs"


@case("allow_stdin=false")
def no_input(kernel):
    run = kernel.run("new Scanner(System.in).nextLine()")
    assert run.status == "error" and "does not take input" in run.reply["evalue"], run.reply
    return f"{run.reply['ename'].split('.')[-1]}: {run.reply['evalue'][:60]}…"


@case("allow_stdin=true")
def given_input(kernel):
    request = kernel.client.execute("new Scanner(System.in).nextInt() * 2", allow_stdin=True)
    kernel.client.get_stdin_msg(timeout=LONG)
    kernel.client.input("168")
    while True:
        message = kernel.client.get_iopub_msg(timeout=LONG)
        if message["msg_type"] == "execute_result" and message["parent_header"]["msg_id"] == request:
            break
    kernel.client.get_shell_msg(timeout=LONG)
    assert message["content"]["data"]["text/plain"] == "336"
    return "Scanner reads: 168 * 2 gives 336"


@case("inspect with the cursor anywhere")
def inspect(kernel):
    code = "Math.sqrt(2)"
    missed = [
        cursor
        for cursor in range(5, len(code) + 1)
        if not ask(kernel, "inspect_request", {"code": code, "cursor_pos": cursor, "detail_level": 0})["found"]
    ]
    assert missed == [], missed
    return f"found at each of the {len(code) - 4} positions behind the dot of {code}"


@case("is_complete")
def is_complete(kernel):
    said = [
        ask(kernel, "is_complete_request", {"code": code})
        for code in ("int a = 1;", "for (int i = 0; i < 3; i++) {", "int a = )")
    ]
    assert [s["status"] for s in said] == ["complete", "incomplete", "invalid"], said
    return f"complete; incomplete with indent {said[1]['indent']!r}; invalid"


def interrupt(kernel, loop):
    kernel.run("int kept = 7;")
    reply, seconds = kernel.interrupted(loop)
    time.sleep(1)
    before = kernel.cpu()
    time.sleep(1)
    busy = kernel.cpu() - before
    kept = kernel.run("kept").text == "7"
    assert reply["status"] == "error" and seconds < 5 and busy < 0.5, (reply, seconds, busy)
    return f"{reply['ename']} after {seconds:.1f} s, {busy:.2f} s of processor in a second after, variables {'kept' if kept else 'lost'}"


@case("interrupt: `while (true)`")
def plain_loop(kernel):
    return interrupt(kernel, "while (true) { }")


@case("interrupt: swallows interrupts")
def swallowing_loop(kernel):
    return interrupt(kernel, "while (true) { try { Thread.sleep(1000); } catch (InterruptedException e) { } }")


@case("interrupt: inside a library")
def library_loop(kernel):
    return interrupt(kernel, "Stream.iterate(1, UnaryOperator.identity()).filter(List.of()::contains).findFirst()")


@case("one message with a wrong signature")
def wrong_signature(kernel):
    client = kernel.client
    key, client.session.key = client.session.key, b"another"
    client.shell_channel.send(client.session.msg("kernel_info_request", {}))
    client.session.key = key
    run = kernel.run("1 + 2")
    assert run.text == "3"
    return "dropped; the next cell gives 3"


@case("20 000 `println`")
def lines(kernel):
    run = kernel.run("for (int i = 0; i < 20_000; i++) System.out.println(i);")
    assert run.stream().count("\n") == 20_000
    messages = len(run.of("stream"))
    assert messages <= 100, messages
    return f"20 000 lines in {messages} messages, {run.seconds:.2f} s"


@case("output after the cell ended")
def late(kernel):
    first = kernel.client.execute(
        "new Thread(() -> { try { Thread.sleep(300); } catch (InterruptedException e) { } System.out.println(1); }).start();"
    )
    kernel.client.execute("1 + 1")
    while True:
        message = kernel.client.get_iopub_msg(timeout=LONG)
        if message["msg_type"] == "stream":
            break
    for _ in range(2):
        kernel.client.get_shell_msg(timeout=LONG)
    assert message["parent_header"]["msg_id"] == first
    return "arrives under the cell that started the thread"


@case("`System.exit` in a cell")
def leave(kernel):
    kernel.run("int kept = 5;")
    run = kernel.run("System.exit(1);")
    assert run.status == "error" and kernel.run("kept").text == "5", run.reply
    return "error reply, variables kept, next cell works"


@case("StackOverflow")
def overflow(kernel):
    kernel.run("int deeper(int n) { return deeper(n + 1) + 1; }")
    run = kernel.run("deeper(0)")
    traceback = "\n".join(run.reply["traceback"])
    assert run.reply["ename"] == "java.lang.StackOverflowError" and "REPL" not in traceback, traceback
    assert "line 1" in traceback and len(traceback) < 2000, traceback
    return f"{run.reply['ename']}, traceback of {len(traceback)} characters with cell and line"


@case("`double[]`")
def array(kernel):
    text = kernel.run("new double[] {1, 2.5}").text
    assert text == "[1.0, 2.5]", text
    return text


@case("mutually dependent classes, forward references")
def forward(kernel):
    run = kernel.run(
        "class East { West other; }\nclass West { East other; }\nint early = later(6);\n"
        "int later(int i) { return i + 1; }\nearly"
    )
    assert run.text == "7", run.reply
    return "compile and run in one cell"


@case("600th expression against the 20th")
def six_hundred(kernel):
    times = [kernel.run(f"{i} + 1").seconds for i in range(610)]
    median = lambda part: sorted(part)[len(part) // 2]
    twentieth, last = median(times[10:30]), median(times[590:610])
    assert last < 2 * twentieth, (twentieth, last)
    return f"{1000 * last:.0f} ms against {1000 * twentieth:.0f} ms"


@case("debug_request")
def debug(kernel):
    reply = ask(kernel, "debug_request", {"type": "request", "command": "initialize"}, "control")
    assert reply["status"] == "error", reply
    return f"error: {reply['evalue']}"


@case("a worker that dies")
def death(kernel):
    began = time.perf_counter()
    run = kernel.run('Runtime.class.getMethod("halt", int.class).invoke(Runtime.getRuntime(), 4);')
    assert run.reply["ename"] == "WorkerStopped" and kernel.run("1 + 1").text == "2", run.reply
    return f"told that variables are lost; next result {time.perf_counter() - began:.2f} s after the cell began"


def main():
    failed = 0
    print("| matter | seen |\n|---|---|")
    with Kernel() as kernel:
        for title, function in SEEN:
            try:
                seen = function(kernel)
            except AssertionError as problem:
                failed += 1
                seen = f"WRONG: {problem}"
            print(f"| {title} | {seen} |", flush=True)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
