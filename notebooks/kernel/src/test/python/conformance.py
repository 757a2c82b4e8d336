"""The public conformance suite of Jupyter kernels (jupyter_kernel_test), with every part of it in use."""
import os
import tempfile
import unittest

import jupyter_kernel_test

from kernels import NAME


def setUpModule():
    # The suite takes the session for the first there was: of all that was ever run, it expects one
    # input alone to fit its search pattern.
    folder = tempfile.TemporaryDirectory()
    unittest.addModuleCleanup(folder.cleanup)
    os.environ["SKEWBACK_HISTORY"] = os.path.join(folder.name, "history.jsonl")


class KernelConformance(jupyter_kernel_test.KernelTests):
    kernel_name = NAME
    language_name = "java"
    file_extension = ".java"
    code_hello_world = 'System.out.println("hello, world");'
    code_stderr = 'System.err.println("a complaint");'
    completion_samples = [
        {"text": '"word".toUpp', "matches": {"toUpperCase("}},
        {"text": "StringBuil", "matches": {"StringBuilder"}},
    ]
    complete_code_samples = ["int a = 1;", "1 + 1", "for (int i = 0; i < 3; i++) { }"]
    incomplete_code_samples = ["for (int i = 0; i < 3; i++) {", 'String s = """\n a', "Math.max(1,"]
    invalid_code_samples = ["int a = )"]
    code_page_something = ""
    code_generate_error = 'throw new IllegalStateException("wrong");'
    code_execute_result = [{"code": "1 + 2", "result": "3"}, {"code": '"a" + 1', "result": "a1"}]
    code_display_data = [{"code": "display(7);", "mime": "text/plain"}]
    code_history_pattern = "1*2*"
    supported_history_operations = ("tail", "range", "search")
    code_inspect_sample = "Math.sqrt"
    code_clear_output = "clearOutput(false);"


if __name__ == "__main__":
    unittest.main(verbosity=2)
