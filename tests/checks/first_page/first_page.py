# SPDX-License-Identifier: MIT
# Acts as the new user: finds things by their accessible names, then clicks where they are shown.
import glob
import os
import subprocess
import sys
import time

import pyatspi

MOST_ACTIONS = 25
actions = []
pictures = sys.argv[1] if len(sys.argv) > 1 else ""


def descendants(node):
    try:
        for child in node:
            if child is not None:
                yield child
                yield from descendants(child)
    except Exception:  # the tree changes while it is walked
        return


def find(role, start, window="", seconds=15):
    """The box of the first shown thing of that role whose name starts so, in that window."""
    until = time.time() + seconds
    while time.time() < until:
        for program in pyatspi.Registry.getDesktop(0):
            if program is None or "matwright" not in program.name.lower():
                continue
            windows = [top for top in program if top is not None and window in top.name]
            for node in (node for top in windows for node in descendants(top)):
                try:
                    if (node.getRoleName() == role and node.name.startswith(start)
                            and node.getState().contains(pyatspi.STATE_SHOWING)):
                        box = node.queryComponent().getExtents(pyatspi.DESKTOP_COORDS)
                        if box.width > 0 and box.x >= 0:
                            return box
                except Exception:
                    continue
        time.sleep(0.2)
    sys.exit(f"FAILED: there is no {role} named {start!r} on the screen")


def xdotool(*words):
    subprocess.run(["xdotool", *map(str, words)], check=True)


def picture(name):
    if pictures:
        subprocess.run(["import", "-window", "root", os.path.join(pictures, name)], check=True)


def click(role, start, window="", times=1):
    box = find(role, start, window)
    xdotool("mousemove", box.x + box.width // 2, box.y + box.height // 2)
    xdotool("click", "--repeat", times, "--delay", 80, 1)
    for _ in range(times):
        actions.append(f"click {role} {start!r}")
    time.sleep(0.6)


def drag(what, x1, y1, x2, y2):
    xdotool("mousemove", x1, y1, "mousedown", 1)
    for step in range(1, 21):
        xdotool("mousemove", x1 + (x2 - x1) * step // 20, y1 + (y2 - y1) * step // 20)
    xdotool("mouseup", 1)
    actions.append(f"drag {what}")
    time.sleep(0.6)


click("list item", "Photo slot 6 × 4 in", times=2)
for _ in range(3):
    click("list item", "Photo slot 3 × 4 in", times=2)
page = find("canvas", "Page")
drag("around all four on the page", page.x + 12, page.y + 12, page.x + page.width - 12,
     page.y + page.height - 12)
click("push button", "Add mat")
picture("window.png")
click("push button", "Template…")
click("push button", "Save PDF")
picture("save.png")
click("push button", "Save", window="Save the template")
time.sleep(1)

for number, action in enumerate(actions, 1):
    print(f"{number:2}  {action}")
files = glob.glob(os.path.expanduser("~/**/*.pdf"), recursive=True)
if not files:
    sys.exit("FAILED: no PDF was saved")
text = subprocess.run(["pdftotext", "-layout", files[0], "-"], capture_output=True, text=True,
                      check=True).stdout
sizes = subprocess.run(["pdfinfo", files[0]], capture_output=True, text=True, check=True).stdout
for wanted in ("6 × 4 in", "6 1/4 × 4 1/4 in", "3 1/4 × 4 1/4 in"):
    if wanted not in text:
        sys.exit(f"FAILED: the template does not say {wanted!r}")
print("\n".join(line for line in sizes.splitlines() if line.startswith(("Pages", "Page size"))))
print(f"{len(actions)} clicks and drags from the blank page to the template "
      f"(at most {MOST_ACTIONS})")
if len(actions) > MOST_ACTIONS:
    sys.exit("FAILED: too many")
