"""What planning a job would take with general libraries: a rotordynamics library for the states, HiGHS for the program.

    python3 -m venv target/bench-venv && target/bench-venv/bin/pip install -r .ci/requirements.txt
    cargo build --release
    target/bench-venv/bin/python benches/reference.py demo/feed-roller-shaft.yaml

Both run one after the other on the same shaft, on one core each, and the ratio is printed.

What the script does, and does not
----------------------------------
It plans the way a user of the libraries would: on the station grid of our plan (its number of stations, evenly spaced over its length), every
station with every grip the counter-spindle's travel allows on that grid, at both ends of the headstock's range, is one state. A state is a
rotor on springs; the library builds it (`ShaftElement`, `BearingElement`, `Rotor`) and answers as its manual says: `run_modal` for the
critical speed, and for stiffness and sag its own matrices, solved densely (its static run holds bearings rigid). Two equal planes make its
modal run slow, so a second ratio is printed for a user who takes its matrices and asks scipy for the lowest eigenvalue alone. The mesh is as coarse
as the same points allow: forty elements over the span, one a shoulder elsewhere. States are alike in size, so `--states` of them, evenly taken
from the list, are run, and their median is scaled to the number of all: running all would take hours. The program is the unit flow over the
arcs between all stations that the travel allows, each arc at the time of its length, solved once by HiGHS. Nothing is proven, placed
or re-gripped: all that would only add to its side.

Our side is the release build of the command: text to proven plan, with the start of the process.
"""

import argparse
import json
import os
import pathlib
import statistics
import subprocess
import time
import warnings

for variable in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ.setdefault(variable, "1")

import highspy  # noqa: E402
import numpy as np  # noqa: E402
from scipy.linalg import eigh  # noqa: E402

# One core for either side; what is started from here inherits it.
os.sched_setaffinity(0, {min(os.sched_getaffinity(0))})

warnings.filterwarnings("ignore")
import ross as rs  # noqa: E402

ROOT = pathlib.Path(__file__).resolve().parent.parent
SPAN_ELEMENTS = 40
E, NU, RHO = 206e9, 0.3, 7850.0
G = 9.81


def ours(job, repeats):
    """Seconds of the command (least of some runs), and its plan."""
    command = [str(ROOT / "target/release/spanhold"), "plan", job, "--format", "json"]
    seconds = []
    for _ in range(repeats):
        start = time.perf_counter()
        done = subprocess.run(command, capture_output=True, text=True, check=True)
        seconds.append(time.perf_counter() - start)
    return min(seconds), json.loads(done.stdout)


def all_states(plan):
    """Turned length, nose and headstock's place of every state on the plan's station grid, mm."""
    layout, sections = plan["layout"], plan["shaft"]["sections"]
    gap, hold = layout["gap_mm"], layout["collet_hold_mm"]
    near, far = layout["counter_spindle_nearest_mm"], layout["counter_spindle_farthest_mm"]
    heads = (layout["headstock_nearest_mm"], layout["headstock_farthest_mm"])
    stations = np.linspace(0.0, plan["length_mm"] + layout["part_off_width_mm"], plan["optimality"]["stations"])
    grips = [
        x
        for x in stations
        for s in sections
        if s["grip"] and s["kind"] == "cylinder" and s["from_mm"] + hold <= x <= s["to_mm"]
    ]
    states = [(t, None, heads[1]) for t in stations[1:] if t <= heads[1] - heads[0]]
    for t in stations:
        states += [(t, g, h) for g in grips if near <= t + gap - g <= far and g <= t for h in heads]
    return stations, grips, states


def rotor(plan, state, springs):
    """The state as a rotor on springs."""
    turned, nose, head = state
    layout, sections = plan["layout"], plan["shaft"]["sections"]
    hold, land, gap = layout["collet_hold_mm"], layout["bush_land_mm"], layout["gap_mm"]
    face = turned + gap
    held = [(face, springs["bush"] / 2), (face + land, springs["bush"] / 2)]
    held += [(face + head, springs["head"] / 2), (face + head + layout["headstock_hold_mm"], springs["head"] / 2)]
    if nose is not None:
        held += [(nose, springs["counter"] / 2), (nose - hold, springs["counter"] / 2)]
        at = nose - hold - (layout["sleeve_pitch_mm"] or 1e9)
        while at >= 0:
            held.append((at, springs["sleeve"]))
            at -= layout["sleeve_pitch_mm"]
    points = {0.0, turned, *(x for x, _ in held)}
    points |= {s["to_mm"] for s in sections if s["to_mm"] < turned}
    points |= set(np.linspace(nose or 0.0, face, SPAN_ELEMENTS + 1))
    x = sorted(points)
    x = [x[0]] + [b for a, b in zip(x, x[1:]) if b - a > 1e-6]
    stock = plan["shaft"]["stock_diameter_mm"]

    def diameter(at):
        inside = [s for s in sections if s["from_mm"] <= at <= s["to_mm"]]
        return inside[0]["front_diameter_mm"] if inside and at < turned else stock

    steel = rs.Material(name="steel", rho=RHO, E=E, Poisson=NU)
    shaft = [
        rs.ShaftElement(
            L=(b - a) / 1e3, idl=0.0, odl=diameter((a + b) / 2) / 1e3, material=steel, shear_effects=True,
            rotary_inertia=True, gyroscopic=True, shear_method_calc="cowper",
        )
        for a, b in zip(x, x[1:])
    ]
    nodes = np.array(x)
    bearings = [
        rs.BearingElement(n=int(np.argmin(abs(nodes - at))), kxx=k * 1e6, cxx=0.0) for at, k in held
    ]
    return rs.Rotor(shaft, [], bearings)


def answer(plan, state, springs, dense):
    """Critical speed (rev/min), least stiffness (N/µm) and largest sag (mm), as the library gives them."""
    r = rotor(plan, state, springs)
    k, m = r.K(0.0), r.M(0.0)
    dof = len(k) // len(r.nodes)
    down = np.zeros(len(m))
    down[1::dof] = -G
    sag = np.linalg.solve(k, m @ down)[1::dof]
    flexibility = np.linalg.inv(k)
    if dense:
        omega = np.sqrt(eigh(k, m, eigvals_only=True, subset_by_index=[0, 0])[0])
    else:
        omega = r.run_modal(speed=0.0, num_modes=4).wn[0]
    return omega * 60 / (2 * np.pi), 1e-6 / max(np.diag(flexibility)[1::dof]), 1e3 * max(abs(sag))


def program(stations, far):
    """Seconds HiGHS takes for the unit flow over all stages that the travel allows."""
    arcs = [(i, j) for i in range(len(stations)) for j in range(i + 1, len(stations)) if stations[j] - stations[i] <= far]
    start = time.perf_counter()
    highs = highspy.Highs()
    highs.setOptionValue("output_flag", False)
    highs.setOptionValue("threads", 1)
    lp = highspy.HighsLp()
    lp.num_col_, lp.num_row_ = len(arcs), len(stations) - 1
    lp.col_cost_ = np.array([7.0 + 0.4 * (stations[j] - stations[i]) for i, j in arcs])
    lp.col_lower_, lp.col_upper_ = np.zeros(len(arcs)), np.full(len(arcs), highspy.kHighsInf)
    balance = np.zeros(lp.num_row_)
    balance[0] = 1.0
    lp.row_lower_ = lp.row_upper_ = balance
    starts, index, value = [0], [], []
    for i, j in arcs:
        index.append(i)
        value.append(1.0)
        if j < lp.num_row_:
            index.append(j)
            value.append(-1.0)
        starts.append(len(index))
    lp.a_matrix_.format_ = highspy.MatrixFormat.kColwise
    lp.a_matrix_.start_, lp.a_matrix_.index_ = np.array(starts), np.array(index)
    lp.a_matrix_.value_ = np.array(value)
    highs.passModel(lp)
    highs.run()
    if highs.getModelStatus() != highspy.HighsModelStatus.kOptimal:
        raise SystemExit("the flow program has no optimum")
    return time.perf_counter() - start, len(arcs)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("job")
    parser.add_argument("--states", type=int, default=20)
    parser.add_argument("--repeats", type=int, default=5)
    # Of the demo's machine; the plan holds places, not stiffnesses. N/µm.
    parser.add_argument("--springs", type=json.loads, default={"bush": 150, "head": 120, "counter": 80, "sleeve": 5})
    a = parser.parse_args()
    our_s, plan = ours(a.job, a.repeats)
    if not plan["layout"]["bush_land_mm"] or not plan["layout"]["collet_hold_mm"]:
        raise SystemExit("only jobs next to a bush, with a counter-spindle")
    stations, grips, states = all_states(plan)
    picked = [states[i] for i in np.linspace(0, len(states) - 1, a.states).astype(int)]
    lp_s, arcs = program(stations, plan["layout"]["counter_spindle_farthest_mm"])
    print(f"{len(stations)} stations, {len(grips)} grips, {len(states)} states, {arcs} arcs; program {lp_s:.3f} s")
    print(f"ours: {our_s:.4f} s planned and proven")
    for name, dense in (("its modal run", False), ("its matrices, scipy", True)):
        seconds = []
        for state in picked:
            start = time.perf_counter()
            answer(plan, state, a.springs, dense)
            seconds.append(time.perf_counter() - start)
        one_s = statistics.median(seconds)
        all_s = one_s * len(states) + lp_s
        print(f"{name}: {one_s:.4f} s a state (median of {len(picked)}), all {all_s:.0f} s (scaled), ratio {all_s / our_s:.0f}")


if __name__ == "__main__":
    main()
