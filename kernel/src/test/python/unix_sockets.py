"""Runs a cell over Unix sockets through jupyter_client, which speaks with libzmq; nothing is left of them."""
import os
import stat
import sys
import time

from jupyter_client.manager import KernelManager

folder = sys.argv[1]
manager = KernelManager(kernel_name="kingpost", transport="ipc", ip=os.path.join(folder, "k"),
                        connection_file=os.path.join(folder, "connection.json"))
manager.start_kernel()
client = manager.client()
client.start_channels()
try:
    client.wait_for_ready(timeout=120)
    sockets = sorted(name for name in os.listdir(folder) if name.startswith("k-"))
    assert sockets == ["k-1", "k-2", "k-3", "k-4", "k-5"], sockets
    for name in sockets:
        mode = os.stat(os.path.join(folder, name)).st_mode
        assert stat.S_ISSOCK(mode) and stat.S_IMODE(mode) == 0o600, oct(mode)
    shown = []
    reply = client.execute_interactive("6 * 7", timeout=120, output_hook=shown.append)
    assert reply["content"]["status"] == "ok", reply["content"]
    results = [message["content"]["data"]["text/plain"] for message in shown if message["msg_type"] == "execute_result"]
    assert results == ["42"], shown
    assert client.hb_channel.is_beating()
finally:
    manager.shutdown_kernel()
    client.stop_channels()
left = [name for name in os.listdir(folder) if name.startswith("k-")]
assert left == [], left
print("ok: a cell over Unix sockets")
