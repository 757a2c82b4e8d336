"""Works in JupyterLab as an author does, in a browser without a window, and runs the notebooks by nbconvert.

    python lab.py --program skewback.jar --notebooks notebooks --repository ~/.m2/repository --out target/jupyter

The kernel is installed into the folder of --out; nothing of the user's own Jupyter is read or changed. Screenshots are
left there to be looked at.
"""
import argparse
import json
import os
import pathlib
import secrets
import shutil
import socket
import subprocess
import sys
import time
import urllib.request

import nbformat
from playwright.sync_api import expect, sync_playwright

from kernels import joined

LIBRARY = "%maven org.skewback:skewback-library:0.1.0"
KERNEL = {"name": "skewback", "display_name": "Skewback (Java)", "language": "java"}
DEMO = pathlib.PurePosixPath("notebooks/gorge-crossing/06-form-of-the-rib.ipynb")
SLOW = 120_000

SWEEP = """\
import org.skewback.figure.*; import org.skewback.quantity.*;
List<Quantity> sags = List.of(Quantity.of(2, "m"), Quantity.of(3, "m"), Quantity.of(4, "m"), Quantity.of(5, "m"));
Sweep sweep = Sweep.of("A chain turned over", "sag of the chain", sags,
    sag -> ChainTurnedOver.of("Chain and arch", new double[] {0, 4, 8, 12}, new double[] {0, sag.in("m"), sag.in("m"), 0},
        new double[] {0, 10, 10, 0}));
sweep"""

SHEET = """\
import org.skewback.sheet.Sheet;
Sheet lesson = Sheet.titled("A chain turned over");
lesson.figure(sweep.opening(sags.get(1)));
lesson.latest()"""

CHART = """\
import org.knowm.xchart.*;
XYChart chart = new XYChartBuilder().width(600).height(320).title("Moment along the rib").xAxisTitle("x (m)")
    .yAxisTitle("moment (kNm)").build();
chart.addSeries("live load", new double[] {0, 1, 2, 3}, new double[] {0, 1, 0, -1});
chart"""

TABLE = """\
import tech.tablesaw.api.*;
DoubleColumn thrust = DoubleColumn.create("thrust [kN]");
StringColumn place = StringColumn.create("place");
for (int i = 0; i < 45; i++) { thrust.append(100.5 + i); place.append("panel " + i); }
Table.create("Thrust by panel", place, thrust)"""

IMAGE = """\
import java.awt.image.BufferedImage;
BufferedImage image = new BufferedImage(120, 40, BufferedImage.TYPE_INT_RGB);
for (int x = 0; x < 120; x++) { for (int y = 0; y < 40; y++) { image.setRGB(x, y, (2 * x) << 16 | (5 * y) << 8 | 90); } }
image"""

PROGRESS = """\
import org.skewback.display.WorkProgress;
WorkProgress work = WorkProgress.of("Chance that the pier slides", "samples", System.out::println);
display(work);
for (int i = 1; i <= 20; i++) { Thread.sleep(30); work.at(500L * i, 10_000, "so far 0 failed"); }
work.done();"""

DISPLAYS = {
    "library": LIBRARY,
    "sweep": SWEEP,
    "sheet": SHEET,
    "progress": PROGRESS,
    "quantity": 'Quantity g = Quantity.of(148, "kN/m").named("g", "kN/m", "permanent load");\n'
    'g.times(Quantity.of(336, "m").named("L", "m", "span"))',
    "record": 'record Pier(String name, double height) {}\nList.of(new Pier("P1", 48.5), new Pier("P2", 61.0))',
    "map": 'Map.of("span", 336, "rise", 72)',
    "matrix": "new double[][] {{1, 2.5}, {3, 4}}",
    "array": "new double[] {1, 2, 3}",
    "table": TABLE,
    "chart": CHART,
    "image": IMAGE,
    "html": 'html("<b>bold</b> &amp; <i>italic</i>")',
    "markdown": 'markdown("**strong**, a list:\\n\\n- one\\n- two")',
    "latex": 'latex("H = \\\\frac{g L^2}{8 f}")',
    "svg": 'svg("<svg xmlns=\\"http://www.w3.org/2000/svg\\" width=\\"60\\" height=\\"30\\">'
    '<path d=\\"M5 28Q30 -20 55 28\\" fill=\\"none\\" stroke=\\"#0072b2\\" stroke-width=\\"2\\"/></svg>")',
    "json": 'json("{\\"span\\": 336, \\"piers\\": [48.5, 61]}")',
    "failing": "new Object() { public String toString() { throw new IllegalStateException(); } }",
}


def parsed():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--program", required=True, type=pathlib.Path)
    parser.add_argument("--notebooks", required=True, type=pathlib.Path)
    parser.add_argument("--repository", required=True, type=pathlib.Path)
    parser.add_argument("--out", required=True, type=pathlib.Path)
    parser.add_argument("--java", default="java")
    parser.add_argument("--chromium", default=os.environ.get("SKEWBACK_CHROMIUM") or shutil.which("chromium"))
    return parser.parse_args()


class Place:
    """Folders of a Jupyter that is nobody's."""

    def __init__(self, out, repository):
        shutil.rmtree(out, ignore_errors=True)
        self.out = out.resolve()
        self.work = self.out / "work"
        self.data = self.out / "data"
        settings = self.out / "settings" / "@jupyterlab"
        for folder in (self.work, self.data, settings / "notebook-extension", settings / "apputils-extension"):
            folder.mkdir(parents=True)
        # All cells are there at once, however long the notebook.
        tracker = settings / "notebook-extension" / "tracker.jupyterlab-settings"
        tracker.write_text(json.dumps({"windowingMode": "none"}), encoding="utf-8")
        news = settings / "apputils-extension" / "notification.jupyterlab-settings"
        news.write_text(json.dumps({"fetchNews": "false", "checkForUpdates": False}), encoding="utf-8")
        self.environment = {
            **os.environ,
            "JUPYTER_DATA_DIR": str(self.data),
            "JUPYTER_CONFIG_DIR": str(self.out / "config"),
            "JUPYTER_RUNTIME_DIR": str(self.out / "runtime"),
            "JUPYTERLAB_SETTINGS_DIR": str(self.out / "settings"),
            "JUPYTERLAB_WORKSPACES_DIR": str(self.out / "workspaces"),
            "SKEWBACK_LOCAL_REPOSITORY": str(repository.resolve()),
            "SKEWBACK_HISTORY": "off",
            "PATH": os.pathsep.join([str(pathlib.Path(sys.executable).parent), os.environ["PATH"]]),
        }

    def run(self, *words, **options):
        return subprocess.run(
            [str(word) for word in words],
            **{"env": self.environment, "cwd": self.work, "check": True, "text": True, "timeout": 300, **options})


class Lab:
    """A running JupyterLab."""

    def __init__(self, place):
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            self.port = free.getsockname()[1]
        self.token = secrets.token_hex(16)
        self.log = open(place.out / "lab.log", "w", encoding="utf-8")
        root = ["--allow-root"] if hasattr(os, "geteuid") and os.geteuid() == 0 else []
        self.process = subprocess.Popen(
            [sys.executable, "-m", "jupyterlab", "--no-browser", f"--port={self.port}", "--ip=127.0.0.1",
             f"--IdentityProvider.token={self.token}", f"--ServerApp.root_dir={place.work}", *root],
            env=place.environment, cwd=place.work, stdout=self.log, stderr=subprocess.STDOUT)

    def __enter__(self):
        deadline = time.monotonic() + 90
        while True:
            try:
                urllib.request.urlopen(f"http://127.0.0.1:{self.port}/api?token={self.token}", timeout=5).close()
                return self
            except OSError:
                if self.process.poll() is not None or time.monotonic() > deadline:
                    raise
                time.sleep(0.3)

    def __exit__(self, *_):
        self.process.terminate()
        try:
            self.process.wait(30)
        except subprocess.TimeoutExpired:
            self.process.kill()
        self.log.close()

    def address(self, notebook):
        return f"http://127.0.0.1:{self.port}/lab/tree/{notebook}?reset&token={self.token}"


class Notebook:
    """A notebook open in the browser."""

    def __init__(self, page, lab, name):
        self.page = page
        page.goto(lab.address(name))
        self.cells = page.locator(".jp-Notebook .jp-Cell")
        expect(page.locator(".jp-Notebook")).to_be_visible(timeout=SLOW)
        self.idle()

    def idle(self):
        expect(self.page.get_by_text("Skewback (Java) | Idle")).to_be_visible(timeout=SLOW)

    def menu(self, *names):
        self.page.keyboard.press("Escape")
        self.page.get_by_role("menuitem", name=names[0], exact=True).click()
        self.page.get_by_role("menuitem", name=names[1]).first.click()

    def run_all(self):
        codes = self.page.locator(".jp-Notebook .jp-CodeCell .jp-InputPrompt")
        # The last cell of a fresh notebook has run when it bears a number.
        self.menu("Run", "Run All Cells")
        numbered = self.page.locator(".jp-Notebook .jp-CodeCell .jp-InputPrompt", has_text="]:")
        expect(numbered.last).to_contain_text("[", timeout=SLOW)
        deadline = time.monotonic() + SLOW / 1000
        while time.monotonic() < deadline:
            prompts = [text.strip() for text in codes.all_inner_texts()]
            if all(any(c.isdigit() for c in text) for text in prompts if text != "[ ]:") and not any(
                "*" in text for text in prompts
            ) and any(any(c.isdigit() for c in text) for text in prompts):
                self.idle()
                return
            time.sleep(0.2)
        raise AssertionError(f"not all cells have run: {prompts}")

    def failures(self):
        return self.page.locator(
            '.jp-Notebook [data-mime-type="application/vnd.jupyter.error"],'
            ' .jp-Notebook [data-mime-type="application/vnd.jupyter.stderr"]'
        ).all_inner_texts()

    def add(self, code):
        """Adds a cell at the end and types into it."""
        self.cells.last.click()
        self.page.keyboard.press("Escape")
        self.page.keyboard.press("b")
        self.page.keyboard.press("Enter")
        self.page.keyboard.type(code)
        return self.cells.nth(self.cells.count() - 1)

    def shot(self, path, locator=None):
        (locator or self.page).screenshot(path=str(path))


def displays(place):
    notebook = nbformat.v4.new_notebook()
    notebook.metadata["kernelspec"] = KERNEL
    for name, code in DISPLAYS.items():
        cell = nbformat.v4.new_code_cell(code)
        cell["id"] = name
        notebook.cells.append(cell)
    nbformat.write(notebook, place.work / "displays.ipynb")


def demo(notebook, place):
    notebook.run_all()
    assert notebook.failures() == [], notebook.failures()
    assert notebook.page.locator(".jp-OutputArea-output").count() > 10
    notebook.shot(place.out / "demo.png")


def shown(notebook, place):
    notebook.run_all()
    assert notebook.failures() == [], notebook.failures()
    cells = dict(zip(DISPLAYS, notebook.cells.all()))
    wanted = {
        "progress": "10\u202f000 samples, done",
        "record": "48.5",
        "map": "336",
        "matrix": "2 × 2",
        "array": "[1.0, 2.0, 3.0]",
        "table": "rows 21 to 40 of 45",
        "html": "bold & italic",
        "markdown": "strong",
        "failing": "its toString failed",
    }
    for name, text in wanted.items():
        expect(cells[name].locator(".jp-OutputArea-output")).to_contain_text(text)
    for name in ("chart", "image", "svg"):
        expect(cells[name].locator(".jp-OutputArea-output img, .jp-OutputArea-output svg").first).to_be_visible()
    for name in ("quantity", "latex"):
        expect(cells[name].locator("mjx-container").first).to_be_visible(timeout=SLOW)
    expect(cells["json"].locator(".jp-RenderedJSON")).to_contain_text("span", timeout=SLOW)
    for name, cell in cells.items():
        cell.scroll_into_view_if_needed()
        notebook.shot(place.out / f"display-{name}.png", cell)


def sweep(notebook, place):
    cell = notebook.cells.nth(list(DISPLAYS).index("sweep"))
    cell.scroll_into_view_if_needed()
    pictures = cell.locator(".frames img")
    expect(pictures).to_have_count(4)
    visible = lambda: [picture.is_visible() for picture in pictures.all()]
    assert visible() == [True, False, False, False], visible()
    cell.locator("label").nth(2).click()
    assert visible() == [False, False, True, False], visible()
    cell.locator("input").nth(2).focus()
    notebook.page.keyboard.press("ArrowRight")
    assert visible() == [False, False, False, True], visible()
    notebook.shot(place.out / "sweep.png", cell)
    pictures = notebook.cells.nth(list(DISPLAYS).index("sheet")).locator(".frames img")
    assert visible() == [False, True, False, False], visible()


def complete(notebook, place):
    cell = notebook.add("Math.sqr")
    notebook.page.keyboard.press("Tab")
    expect(notebook.page.locator(".jp-Completer")).to_contain_text("sqrt(", timeout=20_000)
    notebook.shot(place.out / "complete.png")
    notebook.page.keyboard.press("Enter")
    expect(cell).to_contain_text("Math.sqrt(")


def inspect(notebook, place):
    notebook.add("Math.sqrt(")
    notebook.page.keyboard.press("Shift+Tab")
    expect(notebook.page.locator(".jp-Tooltip")).to_contain_text("sqrt", timeout=20_000)
    notebook.shot(place.out / "inspect.png")
    notebook.page.keyboard.press("Escape")


def interrupt(notebook, place):
    cell = notebook.add("while (true) {} ")
    notebook.page.keyboard.press("Shift+Enter")
    expect(cell.locator(".jp-InputPrompt")).to_contain_text("*")
    notebook.menu("Kernel", "Interrupt Kernel")
    expect(notebook.page.locator(".jp-Notebook")).to_contain_text("was interrupted", timeout=20_000)
    notebook.idle()
    notebook.shot(place.out / "interrupt.png")


def restart(notebook, place):
    notebook.menu("Kernel", "Restart Kernel…")
    notebook.page.locator(".jp-Dialog .jp-mod-accept").click()
    notebook.idle()
    cell = notebook.add("1 + 41")
    notebook.page.keyboard.press("Shift+Enter")
    expect(cell.locator(".jp-OutputArea-output")).to_contain_text("42", timeout=SLOW)
    notebook.idle()
    notebook.shot(place.out / "restart.png")


def browse(place, chromium):
    problems = []
    with Lab(place) as lab, sync_playwright() as playwright:
        root = ["--no-sandbox"] if hasattr(os, "geteuid") and os.geteuid() == 0 else []
        browser = playwright.chromium.launch(executable_path=chromium, args=[*root, "--disable-gpu"])
        page = browser.new_page(viewport={"width": 1280, "height": 1000})
        steps = [(DEMO, [demo]), ("displays.ipynb", [shown, sweep, complete, inspect, interrupt, restart])]
        for name, actions in steps:
            notebook = Notebook(page, lab, name)
            for action in actions:
                began = time.monotonic()
                try:
                    action(notebook, place)
                except Exception as problem:
                    page.screenshot(path=str(place.out / f"failed-{action.__name__}.png"))
                    problems.append(f"{action.__name__}: {problem}")
                print(f"{action.__name__} {time.monotonic() - began:.1f} s", flush=True)
        browser.close()
    return problems


def texts(path):
    """What a notebook shows as text, with pictures by their bytes."""
    return [
        [json.dumps({key: output.get(key) for key in ("name", "text", "data")}, sort_keys=True) for output in joined(cell.outputs)]
        for cell in nbformat.read(path, as_version=4).cells
        if cell.cell_type == "code"
    ]


def convert(place):
    """Runs each notebook twice; both must show the same."""
    problems = []
    for path in (DEMO, pathlib.PurePosixPath("displays.ipynb")):
        runs = []
        for turn in ("once", "again"):
            ran = place.run(
                sys.executable, "-m", "nbconvert", "--to", "notebook", "--execute", "--output", f"{path.stem}-{turn}",
                path, check=False, capture_output=True)
            if ran.returncode != 0:
                return [f"nbconvert: {path.name}: {ran.stderr[-2000:]}"]
            runs.append(texts(place.work / path.parent / f"{path.stem}-{turn}.ipynb"))
        if runs[0] != runs[1]:
            differing = [i for i, (a, b) in enumerate(zip(*runs)) if a != b]
            problems.append(f"nbconvert: {path.name} shows something else the second time, in code cells {differing}")
    return problems


def main():
    wanted = parsed()
    place = Place(wanted.out, wanted.repository)
    place.run(wanted.java, "-jar", wanted.program.resolve(), "kernel", "install", "--data", place.data)
    place.run(wanted.java, "-jar", wanted.program.resolve(), "kernel", "check", "--data", place.data)
    # The demo reads its data by a path beside it.
    shutil.copytree(wanted.notebooks.parent / "shared", place.work / "shared")
    folder = place.work / DEMO.parent
    folder.mkdir(parents=True)
    shutil.copy(wanted.notebooks / "gorge-crossing" / DEMO.name, folder)
    displays(place)
    problems = convert(place) + browse(place, wanted.chromium)
    for problem in problems:
        print(f"FAILED {problem}", file=sys.stderr)
    return 1 if problems else 0


if __name__ == "__main__":
    sys.exit(main())
