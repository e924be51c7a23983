"""A person at a desk: a screen of its own, a window manager, the program, and what eyes and hands can do.

Controls are found by their names in the tree that screen readers walk (AT-SPI 2), and worked with real
mouse and key events (xdotool). Needs Xvfb, openbox, xdotool, and a session bus (run it below
dbus-run-session).
"""

import os
import shutil
import subprocess
import tempfile
import time


def fail(text):
    raise AssertionError(text)


def wait_for(what, get, seconds=20):
    """What `get` returns as soon as it is true."""
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        found = get()
        if found:
            return found
        time.sleep(0.05)
    fail(f"{what}: not within {seconds} s")


class Desk:
    """A screen with a window manager and a home of its own, empty."""

    def __init__(self, size="1366x768"):
        self.folder = tempfile.mkdtemp(prefix="desk-")
        home = os.path.join(self.folder, "home")
        runtime = os.path.join(self.folder, "run")
        os.mkdir(home)
        os.mkdir(runtime, 0o700)
        for name in list(os.environ):
            if name.startswith("XDG_") or name in ("WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "QT_SCALE_FACTOR"):
                del os.environ[name]
        os.environ.update(HOME=home, XDG_RUNTIME_DIR=runtime, LC_ALL="C.UTF-8", QT_QPA_PLATFORM="xcb",
                          QT_LINUX_ACCESSIBILITY_ALWAYS_ON="1", NO_AT_BRIDGE="0")
        self.children = []
        reader, writer = os.pipe()
        self.children.append(subprocess.Popen(
            ["Xvfb", "-displayfd", str(writer), "-screen", "0", size + "x24", "-nolisten", "tcp"],
            pass_fds=[writer], stderr=subprocess.DEVNULL))
        os.close(writer)
        os.environ["DISPLAY"] = ":" + os.fdopen(reader).readline().strip()
        self.children.append(subprocess.Popen(["openbox"], stderr=subprocess.DEVNULL))
        time.sleep(0.5)

    def __enter__(self):
        return self

    def __exit__(self, kind, value, trace):
        if kind and os.environ.get("RAMPWRIGHT_DESK_PICTURE"):
            subprocess.run(["import", "-window", "root", os.environ["RAMPWRIGHT_DESK_PICTURE"]], check=False)
        for child in reversed(self.children):
            if child.poll() is None:
                child.kill()
            child.wait()
        shutil.rmtree(self.folder, ignore_errors=True)

    def path(self, name):
        return os.path.join(self.folder, name)

    def start(self, *arguments):
        window = Window([os.environ["RAMPWRIGHT_PROGRAM"], *arguments])
        self.children.append(window.process)
        window.wait_shown()
        return window


def xdotool(*words):
    return subprocess.run(["xdotool", *[str(word) for word in words]], check=True, capture_output=True,
                          text=True).stdout


def key(*keys):
    for each in keys:
        xdotool("key", "--clearmodifiers", each)
        time.sleep(0.1)


def type_text(text):
    xdotool("type", "--delay", "8", text)
    time.sleep(0.1)


def text_of(node):
    """What stands in a text field."""
    text = node.queryText()
    return text.getText(0, text.characterCount)


class Window:
    """The program's window."""

    def __init__(self, command):
        self.process = subprocess.Popen(command)

    def wait_shown(self):
        import pyatspi

        def shown():
            if self.process.poll() is not None:
                fail(f"the program ended with {self.process.returncode}")
            found = subprocess.run(
                ["xdotool", "search", "--all", "--onlyvisible", "--pid", str(self.process.pid), "--name", "Rampwright"],
                capture_output=True, text=True).stdout.split()
            return found[0] if found else None

        def in_tree():
            desktop = pyatspi.Registry.getDesktop(0)
            for i in range(desktop.childCount):
                app = desktop.getChildAtIndex(i)
                if app and app.get_process_id() == self.process.pid and app.childCount:
                    return app
            return None

        self.id = wait_for("the window", shown)
        xdotool("windowactivate", "--sync", self.id)
        self.app = wait_for("the window in the tree", in_tree)

    def walk(self, node=None, depth=0):
        """Every node of the tree that shows."""
        import pyatspi
        node = node or self.app
        yield node, depth
        for i in range(node.childCount):
            child = node.getChildAtIndex(i)
            if child and (child.getState().contains(pyatspi.STATE_SHOWING) or depth == 0
                          or child.getRoleName() in ("menu item", "list item", "filler")):
                yield from self.walk(child, depth + 1)

    def find(self, role, name, seconds=20):
        """The first showing node of a role whose name begins with `name`."""
        import pyatspi

        def look():
            for node, _ in self.walk():
                if node.getRoleName() == role and (node.name or "").startswith(name) and \
                        node.getState().contains(pyatspi.STATE_SHOWING):
                    return node
            return None

        return wait_for(f'{role} "{name}"', look, seconds)

    def middle(self, node):
        box = self.box(node)
        return box.x + box.width // 2, box.y + box.height // 2

    def click(self, role, name):
        node = self.find(role, name)
        self.scroll_to(node)
        self.click_at(*self.middle(node))

    def scroll_to(self, node):
        """Turns the wheel over what holds a control until all of it can be seen."""
        held, room = self.box(node), None
        outer = node.parent
        while outer and outer.getRoleName() not in ("frame", "application"):
            box = self.box(outer)
            if held.y < box.y or held.y + held.height > box.y + box.height:
                room = box  # it shows a part of what it holds
                break
            held, outer = box, outer.parent
        if not room:
            return
        for _ in range(80):
            box = self.box(node)
            if box.y >= room.y and box.y + box.height <= room.y + room.height:
                return
            xdotool("mousemove", room.x + 4, room.y + room.height // 2, "click", "4" if box.y < room.y else "5")
            time.sleep(0.05)
        fail(f'"{node.name}" cannot be scrolled into view')

    @staticmethod
    def box(node):
        return node.queryComponent().getExtents(0)

    def click_at(self, x, y):
        xdotool("mousemove", x, y, "click", "1")
        time.sleep(0.2)

    def drag(self, start, end, steps=6):
        xdotool("mousemove", *start, "mousedown", "1")
        for i in range(1, steps + 1):
            xdotool("mousemove", round(start[0] + (end[0] - start[0]) * i / steps),
                    round(start[1] + (end[1] - start[1]) * i / steps))
            time.sleep(0.03)
        xdotool("mouseup", "1")
        time.sleep(0.2)

    def fill(self, name, text):
        """Types into a field as one does: click, all of it, type, Return."""
        self.click("text", name)
        key("ctrl+a")
        type_text(text)
        key("Return")

    def title(self):
        return xdotool("getwindowname", self.id).strip()

    def close(self):
        xdotool("windowactivate", "--sync", self.id)
        key("alt+F4")

    def wait_end(self, seconds=20):
        self.process.wait(seconds)
        return self.process.returncode


def figures_of(path):
    """What the command line prints for a file."""
    done = subprocess.run([os.environ["RAMPWRIGHT_PROGRAM"], "figures", path], capture_output=True, text=True)
    if done.returncode:
        fail(f"figures ended with {done.returncode}: {done.stderr}")
    return done.stdout
