"""Fails unless nbformat writes the notebook exactly as it stands in the file: same_as_reference_writer.py FILE"""
import difflib
import sys

import nbformat

with open(sys.argv[1], encoding="utf-8", newline="") as file:
    text = file.read()
notebook = nbformat.reads(text, as_version=4)
nbformat.validate(notebook)
expected = nbformat.writes(notebook) + "\n"
if text != expected:
    sys.exit("\n".join(difflib.unified_diff(text.splitlines(), expected.splitlines(), "ours", "nbformat", lineterm="")))
