"""Sets our beam against two general libraries, and our chatter limit against a simulated cut.

    python .ci/reference.py target/reference_cases.json

The file is written by `cargo test --test published reference_cases`. Libraries and versions: `.ci/requirements.txt` beside this
file. Exit 0 when every quantity agrees; 1 when one does not, when fewer than 30 shafts ran in either library, or when
the simulated cut is not stable just below and unstable just above our limit.

Change of axes and units
------------------------
Ours: mm, N, t, s; x along the shaft from the left end; deflection and weight positive downwards.

* Rotordynamics library (ROSS): m, N, kg, s. Shaft along its z; lateral x and y, y up, so our deflection is -y. Four
  unknowns a node (x, y and two rotations); at zero speed the planes do not couple and x, y have the same bearings, so
  each of our frequencies comes twice and every second is taken. Cowper's shear coefficient (its `cowper`), rotary
  inertia on, gyroscopic terms on but without effect at zero speed. Same nodes as ours. Answers come from its own
  stiffness and mass matrices: its static run holds bearings rigid, and its modal run takes seconds a shaft for pairs of
  equal frequencies (it gives the same ones, within 0.0005 %).
* Structural library (OpenSees): kept in mm, N, t, s. Shaft along its x, y up, so our deflection is -y; axial motion
  held. Timoshenko elements with shear area `k A`, k = 6(1+v)/(7+6v) (Cowper); weight as a uniform element load. Mass
  lumped at nodes, translational and rotary, as a different mass model from ours; every element is cut in
  sixteen. The lumping error falls with the square of the cuts: in the worst of these shafts from 0.16 % of the third
  frequency at four to 0.01 % at sixteen.

The limit of 0.1 % is on stiffness and frequency; sag at a place is compared on the scale of the shaft's largest sag,
since it may pass through zero.
"""

import ctypes
import json
import math
import pathlib
import sys
import sysconfig
import warnings
from importlib.metadata import version

import numpy as np
from scipy.integrate import solve_ivp
from scipy.linalg import eigh

from ledger import keep, percent, row

LIMIT = 1e-3
LEAST_CASES = 30
CUTS = 16
# The simulated cut is this much below and above our limit.
MARGIN = 0.03


def load_opensees():
    """Its own Fortran libraries sit beside it, but the loader does not find those that they need in turn."""
    beside = pathlib.Path(sysconfig.get_paths()["purelib"]) / "openseespylinux" / "lib"
    for name in ("libquadmath.so.0", "libgfortran.so.4", "libblas.so.3", "liblapack.so.3"):
        if (beside / name).exists():
            ctypes.CDLL(str(beside / name), mode=ctypes.RTLD_GLOBAL)
    import openseespy.opensees as ops

    return ops


def node_at(case, place):
    return int(np.argmin(np.abs(np.array(case["nodes_mm"]) - place)))


def rotordynamics(case):
    import ross as rs

    m = case["material"]
    material = rs.Material(
        name="bar", rho=m["density_kg_per_m3"], E=m["e_n_per_mm2"] * 1e6, Poisson=m["poisson"]
    )
    nodes = case["nodes_mm"]
    shaft = [
        rs.ShaftElement(
            L=(b - a) * 1e-3, idl=0.0, odl=d * 1e-3, material=material, n=i,
            shear_effects=True, rotary_inertia=True, gyroscopic=True, shear_method_calc="cowper",
        )
        for i, (a, b, d) in enumerate(zip(nodes, nodes[1:], case["diameters_mm"]))
    ]
    springs = [
        rs.BearingElement(n=node_at(case, s["at_mm"]), kxx=s["n_per_mm"] * 1e3, cxx=0.0)
        for s in case["springs"]
    ]
    rotor = rs.Rotor(shaft, [], springs)
    dof = rotor.number_dof
    stiffness, mass = np.array(rotor.K(0)), np.array(rotor.M(0))
    down = np.zeros(len(mass))
    down[1::dof] = -1.0
    sag = -np.linalg.solve(stiffness, mass @ down * case["gravity_mm_per_s2"] * 1e-3)[1::dof] * 1e3
    softness = np.linalg.inv(stiffness)
    at = [node_at(case, p) for p in case["places_mm"]]
    omega = np.sqrt(eigh(stiffness, mass, eigvals_only=True, subset_by_index=[0, 5]))
    return {
        "stiffness_n_per_mm": [1e-3 / softness[dof * i + 1, dof * i + 1] for i in at],
        "sag_mm": [sag[i] for i in at],
        "largest_sag_mm": np.abs(sag).max(),
        "frequencies_hz": list(omega[::2] / (2 * math.pi)),
    }


def structural(case, ops):
    m = case["material"]
    e, v, rho = m["e_n_per_mm2"], m["poisson"], m["density_kg_per_m3"] * 1e-12
    shear_modulus, k = e / (2 * (1 + v)), 6 * (1 + v) / (7 + 6 * v)
    nodes = case["nodes_mm"]
    ops.wipe()
    ops.model("basic", "-ndm", 2, "-ndf", 3)
    ops.geomTransf("Linear", 1)
    tag = lambda i: CUTS * i + 1
    last = tag(len(nodes) - 1)
    lumps = np.zeros((last + 1, 2))
    places = [nodes[0]]
    for a, b in zip(nodes, nodes[1:]):
        places += [a + (b - a) * j / CUTS for j in range(1, CUTS + 1)]
    for n, x in enumerate(places, start=1):
        ops.node(n, x, 0.0)
        ops.fix(n, 1, 0, 0)
    weights = []
    for n in range(1, last):
        d = case["diameters_mm"][(n - 1) // CUTS]
        area, inertia = math.pi * d**2 / 4, math.pi * d**4 / 64
        ops.element("ElasticTimoshenkoBeam", n, n, n + 1, e, shear_modulus, area, inertia, k * area, 1)
        half = (places[n] - places[n - 1]) / 2
        lumps[n : n + 2] += [rho * area * half, rho * inertia * half]
        weights.append(rho * area * case["gravity_mm_per_s2"])
    for n in range(1, last + 1):
        ops.mass(n, lumps[n, 0], lumps[n, 0], lumps[n, 1])
    for i, s in enumerate(case["springs"], start=1):
        here, ground = tag(node_at(case, s["at_mm"])), last + i
        ops.node(ground, s["at_mm"], 0.0)
        ops.fix(ground, 1, 1, 1)
        ops.uniaxialMaterial("Elastic", i, s["n_per_mm"])
        ops.element("zeroLength", last + i, ground, here, "-mat", i, "-dir", 2)
    omega = np.sqrt(np.array(ops.eigen(3)))

    ops.system("BandGen")
    ops.numberer("RCM")
    ops.constraints("Plain")
    ops.algorithm("Linear")
    pattern = 0

    def solve(load):
        nonlocal pattern
        pattern += 1
        ops.timeSeries("Constant", pattern)
        ops.pattern("Plain", pattern, pattern)
        load()
        ops.integrator("LoadControl", 1.0)
        ops.analysis("Static", "-noWarnings")
        if ops.analyze(1) != 0:
            raise RuntimeError(f"{case['name']}: the static solution failed")
        y = -np.array([ops.nodeDisp(tag(i), 2) for i in range(len(nodes))])
        ops.remove("loadPattern", pattern)
        ops.remove("timeSeries", pattern)
        ops.reset()
        return y

    def own_weight():
        for n, w in enumerate(weights, start=1):
            ops.eleLoad("-ele", n, "-type", "-beamUniform", -w)

    sag = solve(own_weight)
    at = [node_at(case, p) for p in case["places_mm"]]
    stiffness = [1.0 / solve(lambda: ops.load(tag(i), 0.0, -1.0, 0.0))[i] for i in at]
    return {
        "stiffness_n_per_mm": stiffness,
        "sag_mm": [sag[i] for i in at],
        "largest_sag_mm": np.abs(sag).max(),
        "frequencies_hz": list(omega / (2 * math.pi)),
    }


def deviations(ours, theirs):
    """Largest share of difference of each quantity. numpy's `max` hands NaN on; Python's own would lose it."""

    def share(what, scale=None):
        a, b = np.atleast_1d(ours[what]), np.atleast_1d(theirs[what])
        assert a.shape == b.shape, what
        return np.abs(a - b) / (np.abs(b) if scale is None else scale)

    largest = theirs["largest_sag_mm"]
    sags = np.append(share("sag_mm", largest), share("largest_sag_mm"))
    hz = share("frequencies_hz")
    return {
        "stiffness": np.max(share("stiffness_n_per_mm")),
        "sag": np.max(sags),
        **{f"frequency {i + 1}": d for i, d in enumerate(hz)},
    }


def compare(name, standing, cases, solve, rows):
    """Prints the worst of each quantity and adds a row for it; true when all agree. NaN never agrees."""
    found = {}
    for case in cases:
        for what, deviation in deviations(case["ours"], solve(case)).items():
            found.setdefault(what, []).append((deviation, case["name"]))
    good = len(cases) >= LEAST_CASES
    print(f"{name}: {len(cases)} shafts" + ("" if good else f", {LEAST_CASES} are needed"))
    for what, all_of_it in found.items():
        fine = all(deviation <= LIMIT for deviation, _ in all_of_it)
        good = good and fine
        # What is no number counts as the worst of all.
        deviation, case = max(all_of_it, key=lambda d: math.inf if math.isnan(d[0]) else d[0])
        print(f"  {what:12} worst {100 * deviation:.5f} % ({case}){'' if fine else '  TOO FAR'}")
        rows.append(row(
            "beam: general libraries", f"{what} of random stepped shafts on springs, worst of {len(all_of_it)} shafts", name,
            f"worked out in the same run by {standing}", len(all_of_it), "the library's", percent(LIMIT), deviation / LIMIT,
        ))
    return good


def growth_per_turn(case, depth, delay):
    """Simulates m y'' + c y' + k y = -K b (y(t) - y(t - T)) turn by turn; growth of the wave from turn to turn.

    Time is counted in radians of the free frequency, so that m = k = 1; the first turn cuts a surface with one short
    wave left on it. Each turn is an ordinary equation driven by the one before (method of steps).
    """
    zeta, gain = case["damping"], case["cutting_n_per_mm2"] * depth / case["stiffness_n_per_mm"]
    # At least eight steps to a period of vibration, whatever the speed.
    before = lambda t: math.sin(t) * math.exp(-(((t - delay / 2) / 3.0) ** 2))
    state, sizes = [0.0, 0.0], []
    for _ in range(240):
        old = before
        motion = lambda t, y: [y[1], -2 * zeta * y[1] - y[0] - gain * (y[0] - old(t))]
        turn = solve_ivp(motion, (0.0, delay), state, method="DOP853", rtol=1e-8, atol=1e-14,
                         max_step=0.8, dense_output=True)
        state = list(turn.y[:, -1])
        grid = np.linspace(0.0, delay, 200)
        sizes.append(math.sqrt(np.mean(turn.sol(grid)[0] ** 2)))
        if sizes[-1] > 1e6 or sizes[-1] < 1e-9:
            break
        before = (lambda s: lambda t: s(t)[0])(turn.sol)
    late = np.log(np.array(sizes[len(sizes) // 2 :]))
    return float(np.exp(np.polyfit(np.arange(len(late)), late, 1)[0]))


def worst_delay(damping, turns):
    """The delay at which the limit is least: vibration at sqrt(1+2z), whole turns plus the phase that makes
    (1 - exp(-i w T)) G real, by tan(w T / 2) = -Re G / Im G."""
    w = math.sqrt(1 + 2 * damping)
    g = 1 / complex(1 - w * w, 2 * damping * w)
    phase = 2 * math.atan2(-g.real, g.imag) % (2 * math.pi)
    return (2 * math.pi * turns + phase) / w


def chatter(cases, rows):
    good = len(cases) > 0
    for case in cases:
        limit = case["ours"]["depth_limit_mm"]
        delay = worst_delay(case["damping"], 2)
        below = growth_per_turn(case, (1 - MARGIN) * limit, delay)
        above = growth_per_turn(case, (1 + MARGIN) * limit, delay)
        # Below the limit every speed is stable: some more delays.
        others = [growth_per_turn(case, (1 - MARGIN) * limit, delay * f) for f in (0.55, 0.8, 0.93, 1.07, 1.3)]
        fine = below < 1.0 < above and max(others) < 1.0
        good = good and fine
        rows.append(row(
            "chatter: simulated cut", f"depth limit, one mode of {case['stiffness_n_per_mm'] / 1000:g} N/µm, ζ {case['damping']:g}, K "
            f"{case['cutting_n_per_mm2']:g} N/mm², mm", "regenerative delay equation, simulated turn by turn",
            "worked out in the same run by integrating the equation", 1, f"grows from {1 + MARGIN:g}, dies at {1 - MARGIN:g} of it",
            percent(MARGIN),
        ))
        print(
            f"simulated cut, limit {limit:.4f} mm: growth a turn {below:.5f} at {1 - MARGIN:.2f}, {above:.5f} at "
            f"{1 + MARGIN:.2f}; other speeds at most {max(others):.5f}{'' if fine else '  WRONG'}"
        )
    return good


def main(path):
    warnings.filterwarnings("ignore")
    data = json.loads(pathlib.Path(path).read_text())
    ops = load_opensees()
    rows, shafts = [], data["shafts"]
    results = [
        compare("rotordynamics library", f"ROSS {version('ross-rotordynamics')}", shafts, rotordynamics, rows),
        compare("structural library", f"OpenSees {version('openseespy')}", shafts, lambda case: structural(case, ops), rows),
        chatter(data["chatter"], rows),
    ]
    return 0 if all(results) and keep("reference", rows) else 1


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit("usage: reference.py target/reference_cases.json")
    sys.exit(main(sys.argv[1]))
