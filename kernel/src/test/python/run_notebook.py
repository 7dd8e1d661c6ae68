"""Runs a notebook through the registered kernel with nbclient and writes it: run_notebook.py IN OUT"""
import sys

import nbformat
from nbclient import NotebookClient

notebook = nbformat.read(sys.argv[1], as_version=4)
NotebookClient(notebook, timeout=180, kernel_name="kingpost").execute()
nbformat.validate(notebook)
nbformat.write(notebook, sys.argv[2])
print("ran", sum(cell.cell_type == "code" for cell in notebook.cells), "cells")
