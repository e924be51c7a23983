"""The program as a person meets it: real windows, real clicks and keys, other processes looking in.

`walks.py NAME` does one walk; its failure is the test's. See desk.py for what it needs.
"""

import os
import signal
import subprocess
import sys
import time

from desk import Desk, fail, figures_of, key, text_of, type_text, wait_for, xdotool

DATA = os.path.join(os.environ["RAMPWRIGHT_SOURCE_DIR"], "data")
DEMO = os.path.join(DATA, "harbour-hall.ramp.json")
STEPS = ("Agree", "Shape", "Roll", "Load", "Aim", "Run", "Paper")


def copy_demo(desk):
    path = desk.path("race.ramp.json")
    with open(DEMO, encoding="utf-8") as source, open(path, "w", encoding="utf-8") as own:
        own.write(source.read())
    return path


def answer(window, name):
    """A figure of the answers: what follows its name."""
    label = window.find("label", name + ": ")
    return label.name.split(": ", 1)[1]


def newcomer():
    """From an empty home to a saved plan and a PDF, following the steps; nothing of the program known."""
    with Desk() as desk:
        window = desk.start()
        window.click("push button", "Next")
        window.click("push button", "Enough")
        key("ctrl+n")
        wait_for("the plain block", lambda: "not saved" in window.title())
        plain = answer(window, "Mass")

        window.click("check box", "Shape")
        window.fill("Wood, Block weighs", "4 oz")
        window.click("push button", "Start from the shape wedge")
        window.click("check box", "I have decided this step")
        wait_for("another mass than the plain block's", lambda: answer(window, "Mass") != plain)
        wedge = answer(window, "Mass")

        window.click("check box", "Load")
        bar = window.find("list item", "tungsten bar")
        rear = window.find("image", "Wheel rear left")
        balance = window.find("image", "Balance point")
        # Onto the wood, seen from above, between the rear axle and the balance point.
        drop = ((window.middle(rear)[0] + window.middle(balance)[0]) // 2 + 20, window.middle(rear)[1] + 60)
        window.scroll_to(bar)
        window.drag(window.middle(bar), drop)
        wait_for("the bar's weight in the answers", lambda: answer(window, "Mass") != wedge)
        loaded = answer(window, "Balance point")
        key("Left", "Left", "Left")
        wait_for("the balance point moved by keys", lambda: answer(window, "Balance point") != loaded)
        mass, time_ = answer(window, "Mass"), answer(window, "Heat time")

        window.click("check box", "Paper")
        sheet = desk.path("robin.pdf")
        window.click("push button", "Save as PDF")
        time.sleep(0.5)
        key("ctrl+a")
        type_text(sheet)
        key("Return")
        wait_for("the sheet on disk", lambda: os.path.exists(sheet) and os.path.getsize(sheet) > 1000)

        plan = desk.path("robin.ramp.json")
        key("ctrl+s")
        time.sleep(0.5)
        key("ctrl+a")
        type_text(plan)
        key("Return")
        wait_for("the plan on disk", lambda: os.path.exists(plan))
        wait_for("a title without the mark of unsaved work", lambda: window.title().startswith("New build (robin"))
        window.close()
        if window.wait_end() != 0:
            fail("it did not end well")

        printed = figures_of(plan)
        for figure in (mass, time_):
            if figure not in printed:
                fail(f'the window said "{figure}", the command line does not:\n{printed}')
        text = subprocess.run(["pdftotext", "-layout", sheet, "-"], capture_output=True, text=True,
                              check=True).stdout
        for word in ("Robin", "tungsten bar"):
            if word not in text:
                fail(f'"{word}" is not on the sheet')


# What a reader works with has to say what it is. Empty cells are known by their column's heading.
INTERACTIVE = {"push button", "check box", "radio button", "text", "spin button", "combo box", "slider", "list",
               "list item", "menu item", "page tab", "table", "tree", "canvas"}


def names():
    """The tree as another process sees it, at every step: nothing to work with is without a name."""
    import pyatspi
    with Desk() as desk:
        window = desk.start(DEMO)
        unnamed, seen, roles = [], 0, set()
        for step in STEPS:
            window.click("check box", step)
            tabs = [node.name for node, _ in window.walk() if node.getRoleName() == "page tab" and node.name]
            for node in (node for tab in [None, *tabs] for node in after_tab(window, tab)):
                role = node.getRoleName()
                if role not in INTERACTIVE:
                    continue
                seen += 1
                roles.add(role)
                if not node.name and not inner(node, pyatspi):
                    unnamed.append(f"{step}: {role} in {[parent.name for parent in parents(node)]}")
            if step == "Load":
                drawing = window.find("canvas", "Drawing of the car")
                drawn = [drawing.getChildAtIndex(i) for i in range(drawing.childCount)]
                if not any(part.name == "Balance point" for part in drawn) or \
                        not any(part.getRoleName() == "list item" for part in drawn):
                    fail(f"the drawing's parts are not in the tree: {[part.name for part in drawn]}")
                for part in drawn:
                    if not part.name or not part.description:
                        fail(f"a drawn {part.getRoleName()} has no name or no place")
        if seen < 300 or not {"push button", "text", "table", "menu item", "canvas"} <= roles:
            fail(f"only {seen} parts were seen, of the roles {sorted(roles)}: the walk is at fault")
        if unnamed:
            fail("without a name:\n" + "\n".join(unnamed))
        window.close()
        if window.wait_end() != 0:
            fail("it did not end well")


def after_tab(window, tab):
    """What shows when a page tab is chosen."""
    if tab:
        window.click("page tab", tab)
    time.sleep(0.3)
    return [node for node, _ in window.walk()]


def parents(node):
    while node.parent:
        node = node.parent
        yield node


def inner(node, pyatspi):
    """The toolkit's own parts: a spin box's line, the list behind a closed combo box."""
    role = node.parent.getRoleName() if node.parent else ""
    return role in ("spin button", "combo box")


def killed():
    """Killed hard after an edit: the next start offers what was there, and it is what was typed."""
    with Desk() as desk:
        path = copy_demo(desk)
        with open(path, encoding="utf-8") as file:
            before = file.read()
        window = desk.start(path)
        window.click("check box", "Shape")
        window.fill("Wood, Block weighs", "123.4")
        mass = answer(window, "Mass")
        time.sleep(6)  # unsaved work is kept aside within five seconds
        window.fill("Wood, Block weighs", "99")  # and once more, in the middle of which it is killed
        window.process.send_signal(signal.SIGKILL)
        window.process.wait()
        with open(path, encoding="utf-8") as file:
            if file.read() != before:
                fail("the file was touched without a save")

        again = desk.start()
        again.click("push button", "Bring It Back")
        wait_for("the mass that was typed", lambda: answer(again, "Mass") == mass or
                 text_of_block(again).startswith("99"))
        block = text_of_block(again)
        if not block.startswith(("123.4", "99")):
            fail(f'the block weighs "{block}", neither what was typed first nor last')
        key("ctrl+z")
        again.close()
        again.click("push button", "Discard")
        if again.wait_end() != 0:
            fail("it did not end well")

        third = desk.start()
        time.sleep(1)
        for node, _ in third.walk():
            if node.getRoleName() == "push button" and node.name.startswith("Bring"):
                fail("work that was thrown away is offered again")
        third.close()


def text_of_block(window):
    window.click("check box", "Shape")
    return text_of(window.find("text", "Wood, Block weighs"))


def two():
    """Two processes on one file: the second says so, and neither loses what it has."""
    with Desk() as desk:
        path = copy_demo(desk)
        first = desk.start(path)
        second = desk.start(path)
        notice = wait_for("a word about the other window", lambda: next(
            (node for node, _ in second.walk() if "other window" in (node.name or "")
             or "open in another" in (node.name or "")), None))
        print("second window:", notice.name)
        xdotool("windowactivate", "--sync", first.id)
        first.click("check box", "Shape")
        first.fill("Wood, Block weighs", "111.1")
        key("ctrl+s")
        wait_for("the first window's save", lambda: "111.1" in open(path, encoding="utf-8").read())
        # Nothing unsaved in the second: it reads the file again by itself.
        xdotool("windowactivate", "--sync", second.id)
        wait_for("the second window to follow the file", lambda: text_of_block(second).startswith("111.1"))
        for window in (second, first):
            window.close()
            if window.wait_end() != 0:
                fail("it did not end well")


if __name__ == "__main__":
    {"newcomer": newcomer, "names": names, "killed": killed, "two": two}[sys.argv[1]]()
