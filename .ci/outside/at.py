"""The program's `at` against the same moment worked out here."""

import json
import math

from cutting import finish_feed, forces, net_radial, travels
from job import section_at
from plan import FORCE, NEAR, SAME_PLACE
from state import State

# No rule asks for more of the second and third frequency.
HIGHER = 5e-3
MOMENTS = 3


def compare(run, recheck):
    """Looks at some moments of the plan; complaints go to the recheck. Returns how many were looked at."""
    job, looked = recheck.job, 0
    for stage in recheck.plan["stages"]:
        nose = stage["grip"] and stage["grip"]["nose_mm"]
        low, high = stage["from_mm"], min(stage["to_mm"], job["length"])
        for i in range(MOMENTS):
            t = round(low + (high - low) * (0.15 + 0.7 * i / (MOMENTS - 1)), 2)
            # At a border of sections a moment has two cuts.
            if not low < t < high or any(abs(t - s["to"]) < 1e-3 for s in job["sections"]):
                continue
            head = recheck.heads(t, low, stage["to_mm"])[0]
            call = ["--turned", t, "--format", "json", "--rpm", 1000]
            if nose is not None:
                call += ["--grip", nose, "--collet", recheck.collet["name"]]
            if job["bush"]:
                call += ["--headstock", round(head - t - job["machine"]["bush"]["gap"], 9)]
            else:
                call += ["--stage-end", round(head - job["machine"]["no_bush"]["collet_gap"], 9)]
            code, out, errors = run(*call)
            if code not in (0, 1):
                recheck.complain(f"at {t}: exit status {code}: {errors}")
                continue
            moment(recheck, State(job, t, recheck.collet, nose, head), json.loads(out), t)
            looked += 1
    return looked


def moment(recheck, state, told, t):
    job = recheck.job
    same = lambda what, ours, key, near=NEAR: recheck.same(f"`at`, {what} at {t}", ours, told[key], near)
    omegas = state.beam.omegas(3) / (2 * math.pi)
    for i, hz in enumerate(omegas):
        recheck.same(f"`at`, frequency {i + 1} at {t}", hz, told["frequencies_hz"][i], HIGHER if i else NEAR)
    same("critical speed", 60 * omegas[0], "n_crit_rpm")
    same("unsupported", state.unsupported, "unsupported_mm")
    checks = state.checks(1000.0)
    places = {c["check"]: c["at_mm"] for c in told["checks"]}
    same("stiffness", state.at_place("stiffness", told["stiffness_at_mm"], checks), "stiffness_n_per_um", SAME_PLACE)
    if "sag" in places:
        same("sag", 1000 * state.at_place("sag", places["sag"], checks), "sag_um", SAME_PLACE)
    same("whip", checks["whip"][0], "whip_mm")
    section = job["sections"][section_at(job, t)]
    if told["work"] != "turn":
        return
    cuts = travels(job, section)
    feed = finish_feed(job, section)
    parts = forces(job, [ap for ap in cuts[-1] if ap > 1e-9], feed)
    same("passive force", parts[0]["passive"], "passive_force_n", FORCE)
    same("net radial force", net_radial(job, [a for a in cuts[-1] if a > 1e-9], feed), "net_radial_force_n", FORCE)
    same("main force", sum(p["main"] for p in parts), "main_force_n", FORCE)
    same("deflection", 1000 * state.tool_deflection(section), "cut_deflection_um", FORCE)
