"""Sends the kernel what no client should send. It must never end, never hang, and go on serving others.

Usage: fuzz.py [rounds] [seed]
"""
import hashlib
import hmac
import json
import random
import sys
import time

import zmq

from kernels import Kernel

DELIMITER = b"<IDS|MSG>"
TYPES = (
    "execute_request complete_request inspect_request history_request is_complete_request "
    "comm_info_request comm_open comm_msg comm_close kernel_info_request input_reply debug_request "
    "interrupt_request connect_request create_subshell_request nonsense"
).split()
FIELDS = (
    "code cursor_pos detail_level silent store_history user_expressions allow_stdin stop_on_error "
    "hist_access_type n session start stop pattern unique comm_id target_name data value"
).split()


class Fuzzer:
    def __init__(self, kernel, seed):
        self.random = random.Random(seed)
        self.info = kernel.client.get_connection_info()
        self.key = self.info["key"]
        self.context = zmq.Context()
        self.sockets = {}

    def socket(self, name):
        """A connection is made anew now and then: the kernel may have cut off the one before."""
        if name not in self.sockets or self.random.random() < 0.05:
            if name in self.sockets:
                self.sockets[name].close(linger=100)
            socket = self.context.socket(zmq.REQ if name == "hb" else zmq.DEALER)
            socket.connect(f"tcp://{self.info['ip']}:{self.info[name + '_port']}")
            self.sockets[name] = socket
        return self.sockets[name]

    def bytes(self, most=200):
        return self.random.randbytes(self.random.randrange(most))

    def value(self, depth=0):
        r = self.random
        kinds = [
            lambda: r.choice([None, True, False, 0, -1, 2**31, 2**63, -(2**70), 1e308, -0.0]),
            lambda: r.random() * 10 ** r.randrange(-300, 300),
            lambda: "".join(chr(r.choice([0, 9, 34, 92, 0x7F, 0xE9, 0x2028, 0x1D44E])) for _ in range(r.randrange(9))),
            lambda: r.choice(["1+1", "int a = ", "%maven", "%%", '"""', "/*", "tail", "range", "*" * 30]),
        ]
        if depth < 3:
            kinds.append(lambda: [self.value(depth + 1) for _ in range(r.randrange(4))])
            kinds.append(lambda: {r.choice(FIELDS): self.value(depth + 1) for _ in range(r.randrange(4))})
        return r.choice(kinds)()

    def parts(self):
        r = self.random
        header = {"msg_id": str(r.random()), "session": "fuzz", "username": "f", "date": "", "version": "5.4"}
        header["msg_type"] = r.choice(TYPES)
        content = {r.choice(FIELDS): self.value() for _ in range(r.randrange(6))}
        parts = [json.dumps(p).encode() for p in (header, {}, {}, content)]
        damage = r.random()
        if damage < 0.1:
            i = r.randrange(4)
            parts[i] = parts[i][: r.randrange(len(parts[i]) + 1)]
        elif damage < 0.15:
            parts[r.randrange(4)] = self.bytes()
        elif damage < 0.18:
            parts[3] = b'{"code":' + b"[" * 50_000
        elif damage < 0.2:
            parts[3] = b'{"cursor_pos":1e999999999,"n":' + b"9" * 2000 + b',"code":"a"}'
        return parts

    def frames(self):
        r = self.random
        parts = self.parts()
        sign = hmac.new(self.key, digestmod=hashlib.sha256)
        for part in parts:
            sign.update(part)
        signature = sign.hexdigest().encode()
        kind = r.random()
        if kind < 0.15:
            signature = r.choice([b"", b"0" * 64, self.bytes(), signature[:-1], signature.upper()])
        frames = [DELIMITER, signature, *parts]
        if kind > 0.9:
            frames = [self.bytes() for _ in range(r.randrange(1, 9))]
        elif kind > 0.8:
            del frames[r.randrange(len(frames))]
        elif kind > 0.7:
            frames += [self.bytes(100_000) for _ in range(r.randrange(3))]
        return frames

    def send(self):
        name = self.random.choices(["shell", "control", "stdin", "hb", "raw"], [60, 15, 15, 5, 5])[0]
        if name == "raw":
            self.raw()
            return
        if name == "hb":
            socket = self.socket("hb")
            try:
                socket.send(self.bytes(), zmq.DONTWAIT)
            except zmq.ZMQError:
                socket.close(linger=0)
                del self.sockets["hb"]
            return
        self.socket(name).send_multipart(self.frames())

    def raw(self):
        """Not even ZeroMQ."""
        import socket

        port = self.random.choice(["shell", "control", "stdin", "hb", "iopub"]) + "_port"
        with socket.create_connection((self.info["ip"], self.info[port])) as stranger:
            try:
                stranger.sendall(self.random.choice([b"GET / HTTP/1.1\r\n\r\n", self.bytes(5000), b"\xff" * 10]))
            except OSError:
                pass

    def huge(self, size):
        """One good message of a size that fits and one that does not."""
        content = json.dumps({"code": "int a = 1; // " + "x" * size, "silent": True}).encode()
        header = json.dumps({"msg_id": f"huge{size}", "msg_type": "execute_request", "session": "f"}).encode()
        parts = [header, b"{}", b"{}", content]
        sign = hmac.new(self.key, b"".join(parts), hashlib.sha256).hexdigest().encode()
        socket = self.context.socket(zmq.DEALER)
        socket.connect(f"tcp://{self.info['ip']}:{self.info['shell_port']}")
        socket.send_multipart([DELIMITER, sign, *parts])
        time.sleep(1)
        socket.close(linger=0)


def main():
    rounds = int(sys.argv[1]) if len(sys.argv) > 1 else 2000
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else 1
    with Kernel() as kernel:
        front, worker = kernel.processes()[0].pid, len(kernel.processes())
        fuzzer = Fuzzer(kernel, seed)
        for i in range(rounds):
            fuzzer.send()
            if i % 200 == 199:
                serve(kernel, f"round {i + 1}")
        for size in (1 << 20, 10 << 20, 40 << 20):
            fuzzer.huge(size)
            serve(kernel, f"a message of {size >> 20} MiB")
        assert kernel.processes()[0].pid == front and kernel.manager.is_alive()
        assert len(kernel.processes()) == worker, kernel.processes()
        memory = kernel.memory()
        print(f"fuzz: {rounds} rounds from seed {seed}, still served; memory {sum(memory):.0f} MiB")


def serve(kernel, when):
    """A good request gets its answer, once what the fuzzer has asked for is through.

    An interrupt or a cell that fails is the fuzzer's right, and stops or aborts what comes after it.
    """
    for _ in range(20):
        run = kernel.run("20 + 2")
        if run.status != "aborted" and run.reply.get("ename") != "CellInterrupted":
            break
    assert run.status == "ok" and run.text == "22", (when, run.reply)


if __name__ == "__main__":
    main()
