"""Talks to the registered kernel message by message, through jupyter_client."""
import time

from jupyter_client.kernelspec import KernelSpecManager
from jupyter_client.manager import start_new_kernel


def check(what, condition, found=None):
    if not condition:
        raise SystemExit(f"FAILED: {what}: {found!r}")
    print("ok:", what)


spec = KernelSpecManager().get_kernel_spec("kingpost")
check("the kernel spec is found", spec.display_name == "Kingpost", spec.display_name)
check("the kernel is interrupted by message", spec.interrupt_mode == "message", spec.interrupt_mode)

manager, client = start_new_kernel(kernel_name="kingpost", startup_timeout=60)


def outputs(message_id):
    """All that is published for a request between its busy and its idle."""
    found = []
    busy = False
    while True:
        message = client.get_iopub_msg(timeout=30)
        if message["parent_header"].get("msg_id") != message_id:
            continue
        if message["msg_type"] == "status":
            if message["content"]["execution_state"] == "idle":
                return found
            busy = True
        else:
            if not busy:
                check("busy comes first", False, message)
            found.append(message)


def reply_to(message_id, timeout=20):
    """The content of the reply; replies to what start_new_kernel asked may still lie before it."""
    while True:
        message = client.get_shell_msg(timeout=timeout)
        if message["parent_header"].get("msg_id") == message_id:
            return message["content"]


def execute(code, **options):
    message_id = client.execute(code, **options)
    return reply_to(message_id, 60), outputs(message_id)


try:
    info = reply_to(client.kernel_info())
    check("the language is Java", info["language_info"]["name"] == "java", info)

    reply, found = execute('System.out.println("to stdout"); System.err.println("to stderr"); 6 * 7')
    check("a cell runs", reply["status"] == "ok", reply)
    texts = {m["content"]["name"]: m["content"]["text"] for m in found if m["msg_type"] == "stream"}
    check("streams arrive", texts == {"stdout": "to stdout\n", "stderr": "to stderr\n"}, texts)
    result = [m["content"]["data"]["text/plain"] for m in found if m["msg_type"] == "execute_result"]
    check("the last value is the result", result == ["42"], result)
    check("the input is repeated first", found[0]["msg_type"] == "execute_input", found[0]["msg_type"])

    reply, found = execute("int half = 21;\nhalf.size()")
    check("an error is an error", reply["status"] == "error" and reply["ename"] == "CompilationError", reply)
    check("and is published once", [m["msg_type"] for m in found] == ["execute_input", "error"], found)

    reply, found = execute("1 / 0", user_expressions={"x": "1"})
    check("so is an exception", reply["ename"] == "ArithmeticException", reply)

    reply, found = execute("int x = 5;", user_expressions={"double": "x * 2", "bad": "nothing_here"})
    values = reply["user_expressions"]
    check("user expressions are evaluated", values["double"]["data"]["text/plain"] == "10", values)
    check("each on its own", values["bad"]["status"] == "error", values)

    matches = reply_to(client.complete("Mat", 3))["matches"]
    check("completion knows types", "Math" in matches, matches)

    for _ in range(3):  # the first may take longer than a kernel on a loaded machine lets a client wait
        found = reply_to(client.inspect("Math.max", 8))
        if found["found"]:
            break
    check("inspection finds a method", found["found"] and "max" in found["data"]["text/plain"], found)

    for code, status in (("int a = 1;", "complete"), ("for (;;) {", "incomplete"), ("int 5 = ;", "invalid")):
        found = reply_to(client.is_complete(code))["status"]
        check(f"{code} is {status}", found == status, found)

    history = reply_to(client.history(hist_access_type="tail", n=1, output=False))["history"]
    check("history has the last cell", history[-1][2] == "int x = 5;", history)

    check("there are no comms", reply_to(client.comm_info())["comms"] == {})

    message_id = client.execute("while (true) { }")
    time.sleep(1)
    begin = time.monotonic()
    manager.interrupt_kernel()
    reply = reply_to(message_id)
    check("an endless loop is interrupted", reply["status"] == "error", reply)
    print(f"    after {time.monotonic() - begin:.2f} s")
    outputs(message_id)
    reply, found = execute("x")
    check("and its variables are kept", found[-1]["content"]["data"]["text/plain"] == "5", found)

    manager.restart_kernel(now=False)
    client.wait_for_ready(timeout=60)
    reply, found = execute("x")
    check("a restart forgets them", reply["status"] == "error", reply)
    check("the heart beats", client.is_alive() and client.hb_channel.is_beating())
finally:
    client.stop_channels()
    begin = time.monotonic()
    manager.shutdown_kernel(now=False)
    print(f"shut down in {time.monotonic() - begin:.2f} s")
check("the process has ended", not manager.has_kernel or not manager.is_alive())
