"""Starts a classic Notebook server on a scratch folder and drives it: classic_notebook.py SCRIPT CHROMIUM FOLDER"""
import os
import socket
import subprocess
import sys
import time
import urllib.request

import nbformat.v4 as v4
import nbformat

script, chromium, folder = sys.argv[1:4]
DISPLAY = "kingpost.notebook.CellDisplay.sink()"
SVG = "<svg xmlns='http://www.w3.org/2000/svg' width='80' height='40'><path d='M5 35L40 5L75 35Z'/></svg>"

notebook = v4.new_notebook()
notebook.metadata["kernelspec"] = {"name": "kingpost", "display_name": "Kingpost", "language": "java"}
notebook.cells = [
    v4.new_markdown_cell("# Worksheet\n\n$F = \\frac{12}{5}$"),
    v4.new_code_cell("6 * 7"),
    v4.new_code_cell(DISPLAY + '.display(new kingpost.render.Exhibit(Map.of("text/plain", "figure", "image/svg+xml", "' + SVG + '")), Optional.empty());'),
    v4.new_code_cell(DISPLAY + '.display(new kingpost.render.Exhibit(Map.of("text/plain", "F", "text/markdown", "$$F_{AB} = \\\\frac{12}{5}$$")), '
                     'Optional.empty());'),
    v4.new_code_cell('System.out.println("done");'),
]
os.makedirs(folder, exist_ok=True)
nbformat.write(notebook, os.path.join(folder, "worksheet.ipynb"))

with socket.socket() as free:
    free.bind(("127.0.0.1", 0))
    port = free.getsockname()[1]
log = open(os.path.join(folder, "server.log"), "w")
server = subprocess.Popen(
    [sys.executable, "-m", "notebook", "--no-browser", "--allow-root", "--ip=127.0.0.1", f"--port={port}",
     "--NotebookApp.token=scratch", f"--notebook-dir={folder}", "--NotebookApp.use_redirect_file=False"],
    stdin=subprocess.DEVNULL, stdout=log, stderr=subprocess.STDOUT)
try:
    address = f"http://127.0.0.1:{port}"
    for attempt in range(120):
        try:
            urllib.request.urlopen(address + "/api?token=scratch", timeout=5)
            break
        except OSError:
            time.sleep(0.5)
    done = subprocess.run(["node", script, f"{address}/notebooks/worksheet.ipynb?token=scratch", chromium, folder],
                          timeout=400)
    status = done.returncode
finally:
    server.terminate()
    server.wait(30)
    log.close()
if status:
    print(open(log.name).read()[-4000:])
sys.exit(status)
