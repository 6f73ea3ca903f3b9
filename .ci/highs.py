"""Solves our sequence programs with HiGHS and compares the optima.

    python .ci/highs.py target/sequence_programs

The folder is written by `cargo test --lib planner::tests::export`: free MPS files and `index.json` with our least times.
highspy's version: `.ci/requirements.txt` beside this file. Exit 0 when every optimum agrees; 1 when one does not, when
fewer than 20 programs ran, or when the programs together are too small to say anything.

Tolerance: 1e-9 relative on the optimum. A program's vertices are whole flows, so both optima are sums of the same few
costs; the flow found is rounded to 0 and 1 (never by more than 1e-6) and its cost added up anew, so HiGHS's own
feasibility tolerance of 1e-7 does not enter.
"""

import json
import pathlib
import sys

import highspy
from ledger import keep, percent, row

SAME = 1e-9
WHOLE = 1e-6
LEAST_PROGRAMS = 20
LEAST_ARCS = 5_000


def solve(path):
    """Least cost of a program, from its whole flow; and how far the flow was from whole."""
    highs = highspy.Highs()
    highs.setOptionValue("output_flag", False)
    highs.setOptionValue("threads", 1)
    if highs.readModel(str(path)) != highspy.HighsStatus.kOk:
        raise RuntimeError("not read")
    highs.run()
    if highs.getModelStatus() != highspy.HighsModelStatus.kOptimal:
        raise RuntimeError(f"ended as {highs.modelStatusToString(highs.getModelStatus())}")
    flow, cost = highs.getSolution().col_value, highs.getLp().col_cost_
    off = max(abs(x - round(x)) for x in flow)
    return sum(c * round(x) for x, c in zip(flow, cost)), off


def main(folder):
    programs = json.loads((folder / "index.json").read_text(encoding="utf-8"))
    wrong, arcs, worst = [], 0, 0.0
    for program in programs:
        arcs += program["edges"]
        try:
            found, off = solve(folder / program["file"])
        except RuntimeError as error:
            wrong.append(f"{program['file']}: {error}")
            continue
        difference = abs(found - program["least_s"]) / abs(program["least_s"])
        worst = max(worst, difference)
        if difference > SAME:
            wrong.append(f"{program['file']}: {found!r} s, ours is {program['least_s']!r} s")
        if off > WHOLE:
            wrong.append(f"{program['file']}: the flow is {off} off whole numbers")
    for line in wrong:
        print(line)
    print(f"{len(programs)} programs, {arcs} arcs, {len(wrong)} differ, worst relative difference {worst:.1e}")
    if len(programs) < LEAST_PROGRAMS or arcs < LEAST_ARCS:
        print(f"too little to compare: at least {LEAST_PROGRAMS} programs and {LEAST_ARCS} arcs")
        return 1
    if wrong:
        return 1
    kept = keep("highs", [row(
        "planner", f"sequence programs of {LEAST_PROGRAMS} or more random jobs, {LEAST_ARCS} or more arcs: least time, worst",
        "the same programs as MPS files", "worked out in the same run by HiGHS", f"{LEAST_PROGRAMS} or more", "the optima",
        percent(SAME), worst / SAME,
    )])
    return 0 if kept else 1


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    sys.exit(main(pathlib.Path(sys.argv[1])))
