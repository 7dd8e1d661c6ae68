"""Forces of many trusses by SciPy: every joint equation of a truss at once, written down from its coordinates.

Reads a JSON list from the file named first: for each truss "joints" (rows of coordinates, m), "members" (pairs of
joint numbers), "reactions" (joint number, then the direction's cosines) and "loads" (joint number, then components, N).
Writes a JSON list to the file named second: for each truss the member forces (tension positive), then the reactions, N.
"""
import json
import sys

import numpy as np
import scipy
from scipy.sparse import csc_matrix
from scipy.sparse.linalg import splu


def forces(truss):
    places = np.array(truss["joints"], dtype=float)
    axes = places.shape[1]
    rows, columns, cosines = [], [], []

    def put(joint, column, direction):
        for axis in range(axes):
            rows.append(axes * joint + axis)
            columns.append(column)
            cosines.append(direction[axis])

    column = 0
    for start, end in truss["members"]:
        along = places[end] - places[start]
        unit = along / np.linalg.norm(along)
        put(start, column, unit)
        put(end, column, -unit)
        column += 1
    for reaction in truss["reactions"]:
        put(int(reaction[0]), column, reaction[1:])
        column += 1
    size = axes * len(places)
    if column != size:
        raise ValueError(f"{column} unknowns for {size} equations")
    right = np.zeros(size)
    for load in truss["loads"]:
        joint = int(load[0])
        right[axes * joint:axes * (joint + 1)] -= load[1:]
    return splu(csc_matrix((cosines, (rows, columns)), shape=(size, size))).solve(right).tolist()


with open(sys.argv[1]) as given:
    answers = [forces(truss) for truss in json.load(given)]
with open(sys.argv[2], "w") as found:
    json.dump(answers, found)
print("SciPy", scipy.__version__, "solved", len(answers), "trusses")
