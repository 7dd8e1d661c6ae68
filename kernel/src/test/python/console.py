"""Types into jupyter console on a terminal of tmux and reads the screen, as a person would: console.py"""
import os
import shlex
import subprocess
import sys
import time

SOCKET = f"kingpost-console-{os.getpid()}"


def tmux(*arguments):
    return subprocess.run(["tmux", "-L", SOCKET, *arguments], check=True, capture_output=True, text=True).stdout


def screen():
    return tmux("capture-pane", "-p", "-t", "console")


def wait_for(what, text, seconds=60):
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        if text in screen():
            print("ok:", what)
            return
        time.sleep(0.2)
    raise SystemExit(f"FAILED: {what}: no {text!r} on the screen:\n{screen()}")


def press(key):
    """A key, once the console has taken in what came before: it loses keys that arrive while it asks the kernel."""
    time.sleep(0.7)
    tmux("send-keys", "-t", "console", key)
    time.sleep(0.7)


def type_line(text):
    tmux("send-keys", "-t", "console", "-l", text)
    press("Enter")


command = f"exec {shlex.quote(sys.executable)} -m jupyter_console --kernel kingpost "
command += "--ZMQTerminalInteractiveShell.kernel_is_complete_timeout=20"
tmux("new-session", "-d", "-s", "console", "-x", "110", "-y", "50", command)
try:
    wait_for("the banner greets", "Kingpost", 90)
    wait_for("the prompt comes", "In [1]", 60)
    type_line("6 * 7")
    wait_for("a value is shown", "Out[1]: 42")
    type_line("int twice(int x) {")
    wait_for("an open brace makes it wait for more", "...:")
    type_line("return 2 * x; }")
    press("Enter")
    type_line("twice(50) + 3")
    wait_for("and works", ": 103")
    type_line("1 / 0")
    wait_for("an error is shown", "ArithmeticException")
    tmux("send-keys", "-t", "console", "-l", "Math.multiplyH")
    press("Tab")
    wait_for("Tab completes", "Math.multiplyHigh")
    press("C-c")
    # An interrupt is not tried here: this console (6.4.4) ends with "KeyboardInterrupt escaped interact()" when
    # control-C is pressed during a loop, with the reference kernel as well. raw_client.py and the browser try it.
    type_line("twice(2)")
    wait_for("and what was made is kept", ": 4")
    press("C-d")
    end = time.monotonic() + 20
    while subprocess.run(["tmux", "-L", SOCKET, "has-session", "-t", "console"], capture_output=True).returncode == 0:
        if "exit" in screen() and "y" in screen():
            tmux("send-keys", "-t", "console", "-l", "y")
            tmux("send-keys", "-t", "console", "Enter")
        if time.monotonic() > end:
            raise SystemExit("FAILED: control-D does not end it:\n" + screen())
        time.sleep(0.3)
    print("ok: control-D ends it")
finally:
    subprocess.run(["tmux", "-L", SOCKET, "kill-server"], capture_output=True)
