"""Forces, travels, speeds and times of a cut, from the model's text."""

import functools
import math

import numpy as np
from scipy.integrate import quad
from scipy.linalg import cho_solve

from beam import Beam
from job import SAME, SPEEDS, TEETH

PLUNGE = 0.4
# Pitch of coarse threads, mm (ISO 261, from memory): the hole is the diameter less the pitch.
COARSE = {"M3": 0.5, "M4": 0.7, "M5": 0.8, "M6": 1.0, "M8": 1.25, "M10": 1.5, "M12": 1.75}


def chip(angle, nose, ap, feed, shallow):
    """Thickness of the chip on the nose: from the edge towards the centre of the nose, as far as the tool was one feed
    before, or where only the nose cuts as far as the bar."""
    across, up = math.sin(angle), math.cos(angle)
    # The circle of the tool before lies one feed back: the near crossing of the line from the edge.
    to_centre = nose + feed * across
    root = to_centre**2 - feed**2 - 2 * feed * nose * across
    thick = to_centre - math.sqrt(max(root, 0.0))
    if shallow:
        thick = min(thick, (ap - nose * (1 - up)) / up)
    return max(thick, 0.0)


@functools.lru_cache(maxsize=None)
def edge_sums(nose, approach, mc, ap, feed):
    """Main, radial and axial force of an edge for 1 N/mm²: adaptive integrals over the nose, the straight edge by hand."""
    assert feed <= nose, "chips thicker than the nose are not read here"
    on_nose = nose * (1 - math.cos(approach))
    end = approach if ap >= on_nose else math.acos(1 - ap / nose)
    begin = max(-math.asin(feed / (2 * nose)), -end)
    shallow = ap < min(nose, on_nose)
    # Where the surface of the bar begins to limit the chip.
    turn = math.atan2(nose * math.sin(end) - feed, nose - ap) if shallow else end
    ends = [begin, turn, end] if begin < turn < end else [begin, end]

    def over(of):
        def element(angle):
            thick = chip(angle, nose, ap, feed, shallow)
            # The width in the middle of the chip: what lies between both circles is exact.
            return of(angle, thick) * (nose - thick / 2) if thick > 0 else 0.0

        return sum(quad(element, a, b, epsabs=0, epsrel=1e-9, limit=400)[0] for a, b in zip(ends, ends[1:]))

    sums = [
        over(lambda _, h: h ** (1 - mc)), over(lambda a, h: h ** (1 - mc) * math.cos(a)),
        over(lambda a, h: h ** (1 - mc) * math.sin(a)),
    ]
    if not shallow:
        # Square ends of the elements count a triangle too much, or too little, where the edge leaves the bar.
        width = max(ap - on_nose, 0) / math.sin(approach) - feed * math.cos(end) / 2
        thick = feed * math.sin(end)
        main = width * thick ** (1 - mc)
        for i, part in enumerate((main, main * math.cos(end), main * math.sin(end))):
            sums[i] += part
    return sums


def force(job, ap, feed, edge=None):
    """`edge`: the tool, if it is not the leading one."""
    metal, edge = job["material"], edge or job
    main, radial, axial = edge_sums(edge["nose"], edge["approach"], metal["mc"], ap, feed)
    main, share = metal["kc11"] * main, metal["kc11"] * job["share"]
    passive = max(share * radial, job["passive_floor"] * main)
    slope = job["share"] * main / feed / (1 + (share * axial / passive) ** 2)
    return {"main": main, "passive": passive, "axial": share * axial, "slope": slope}


def forces(job, depths, feed):
    """Forces of the tools of one travel; the second tool of a tandem has its own edge."""
    return [force(job, ap, feed, job["tandem"] if turn else None) for turn, ap in enumerate(depths)]


def finish_feed(job, s):
    """Feed of the travel that leaves a section's surface."""
    return feed_of(job, s, job["tandem"]["nose"] if tandem(job, s) else job["nose"])


def feed_of(job, s, nose):
    feed = 0.15 if job["feed"] is None else job["feed"]
    if s["ra"] is None:
        return feed
    ideal = max(s["ra"], job["ra_floor"]) / job["ra_factor"]
    return min(feed, math.sqrt(8 * nose * 4 * ideal / 1000))


def roughed(job, s):
    stock = (job["stock"] - s["turned"]) / 2
    passes = max(1, math.ceil((stock - job["ap_finish"]) / job["ap_max"] - SAME))
    return [[(stock - job["ap_finish"]) / passes]] * passes


def whole_cut(job, s):
    """Whether one cut takes all that a section has to give, and no last pass is asked for."""
    stock = (job["stock"] - s["turned"]) / 2
    return stock <= job["ap_max"] + SAME and not (s["finish_pass"] and stock > job["ap_finish"] + SAME)


def tandem(job, s):
    """Whether both tools of a tandem cut a section in its last travel."""
    stock = (job["stock"] - s["turned"]) / 2
    if not job["tandem"] or not job["bush"] or s["back"] or stock <= job["ap_finish"] + SAME or s["kind"] == "groove":
        return False
    if whole_cut(job, s) and not s["fine"]:
        return False
    spindle, stand = job["machine"].get("counter_spindle"), job["machine"]["bush"]["gap"] + job["tandem"]["lag"]
    if spindle and spindle["nearest"] < stand:
        return False
    length, cuts = s["to"] - s["from"], together(job, s)
    if s["kind"] == "thread":
        # A thread too long to be pulled back is whirled.
        bush = job["machine"]["bush"]
        return length <= stand - job["tandem"]["lag"] + bush["land"] - bush.get("engagement_min", bush["land"] / 2) + SAME
    step = tandem_change(job, s, min(length, stand) if len(cuts) > 1 else length)
    return step <= job["limits"]["share"] * s["width"]


def together(job, s):
    cuts = roughed(job, s)
    return cuts[:-1] + [cuts[-1] + [job["ap_finish"]]]


def tandem_change(job, s, p):
    """Change of the diameter along the last travel of both tools over a segment of the length `p`: the bar next to the bush
    as a beam on its two springs, at every moment of the travel."""
    tools, bush, cuts = job["tandem"], job["machine"]["bush"], together(job, s)
    lag, gap = tools["lag"], bush["gap"]
    if p <= lag:
        return 0.0
    rough, finish = (f["passive"] for f in forces(job, cuts[-1], feed_of(job, s, tools["nose"])))
    between = s["turned"] + 2 * job["ap_finish"]
    before, spring = between + 2 * cuts[-1][0], bush["stiffness"] * 500

    def moved(out, lead):
        contact = bush["land"] - (out - gap)
        bar = Beam([(0, lag, between), (lag, lag + out + contact, before)], [(lag + out, spring), (lag + out + contact, spring)],
                   [0, lag], job["material"], 1e9)
        load = np.zeros(len(bar.k))
        load[2 * bar.node(0)] = finish
        load[2 * bar.node(lag)] += lead if tools["same"] else -lead
        return cho_solve(bar.factor, load)[2 * bar.node(0)]

    first = max(gap, p - lag) if len(cuts) > 1 else gap
    seen = [moved(gap, 0.0)] + [moved(out, rough) for out in np.linspace(gap, first, 9)]
    return 2 * (max(seen) - min(seen))


#: Up to this depth a cut is a finishing cut by itself.
FINISHING_TO = 2.0


def obeys(job, s, cuts, p):
    """Whether a pull-back by `p` before each travel but the first keeps both rules."""
    bush, wide = job["machine"]["bush"], job["stock"] - 2 * sum(cuts[0])
    engaged = bush.get("engagement_min", bush["land"] / 2)
    if p - bush["gap"] > (bush["land"] - engaged) * (1 + 1e-9):
        return False
    for turn, depths in enumerate(cuts[1:], start=1):
        last = turn == len(cuts) - 1
        feed = finish_feed(job, s) if last else 0.15 if job["feed"] is None else job["feed"]
        limit = job["limits"]["share"] * s["width"] if last else sum(depths)
        both = last and len(depths) > 1 and job["tandem"]
        change = tandem_change(job, s, p) if both else pull_back_change(job, p, wide, net_radial(job, depths, feed))
        if change > limit * (1 + 1e-9):
            return False
        wide -= 2 * sum(depths)
    return True


def travels(job, s):
    """Depths of each travel of a turned section: one depth a tool."""
    stock, last = (job["stock"] - s["turned"]) / 2, job["ap_finish"]
    if stock <= SAME:
        return []
    whole = whole_cut(job, s)
    if tandem(job, s):
        return together(job, s)
    if job["tandem"] and whole and s["fine"] and stock > FINISHING_TO:
        cuts = roughed(job, s) + [[last]]
        return cuts if not job["bush"] or obeys(job, s, cuts, s["to"] - s["from"]) else [[stock]]
    if job["pair"] and whole:
        return [[stock - last, last] if stock > last + SAME else [stock]]
    if whole:
        return [[stock]]
    return together(job, s) if job["pair"] else roughed(job, s) + [[last]]


def net_radial(job, depths, feed):
    parts = [f["passive"] for f in forces(job, depths, feed)]
    if len(parts) == 1:
        return abs(parts[0])
    if job["tandem"] and job["tandem"]["same"]:
        return sum(parts)
    return max(abs(parts[0] - parts[1]), job["unbalance"] * max(map(abs, parts)))


def top_rpm(job, diameter, grip):
    machine = job["machine"]
    cap = machine["headstock"]["max_rpm"]
    if machine.get("counter_spindle"):
        cap = min(cap, machine["counter_spindle"]["max_rpm"])
    return min(1000 * job["vc"] / (math.pi * diameter), cap)


def overhang(job, x, contact, diameter):
    """End of an overhang `x` on the two springs of the bush that still touch, mm/N."""
    e, nu = job["material"]["e"], job["material"]["poisson"]
    inertia, area = math.pi * diameter**4 / 64, math.pi * diameter**2 / 4
    shear = 6 * (1 + nu) / (7 + 6 * nu) * area * e / (2 * (1 + nu))
    k = job["machine"]["bush"]["stiffness"] * 1000 / 2
    return (((contact + x) / contact) ** 2 + (x / contact) ** 2) / k + x**2 * (contact + x) / (3 * e * inertia) \
        + (x + x**2 / contact) / shear


def pull_back_change(job, p, diameter, newtons):
    """Change of the diameter along a travel after a pull-back by `p`."""
    bush = job["machine"]["bush"]
    far, land = max(bush["gap"], p), bush["land"]
    near = overhang(job, bush["gap"], land, diameter)
    return 2 * newtons * (overhang(job, far, land - (far - bush["gap"]), diameter) - near)


def driven_rpm(job, what, diameter):
    """Speed of a driven drill or cutter: that of the material's class, as far as the machine drives it."""
    speed = float(SPEEDS[job["material"]["class"]][f"{what}_m_per_min"])
    return min(1000 * speed / (math.pi * diameter), job["machine"].get("driven_max_rpm", 6000))


def drill_feed(job, diameter):
    return float(SPEEDS[job["material"]["class"]]["drill_feed_share"]) * diameter


def tooth_feed(job, diameter):
    """Feed of a tooth: the table's, straight in between, in proportion below it, the last above it."""
    row = SPEEDS[job["material"]["class"]]["tooth_feed"]
    first = TEETH[0]
    if diameter < first["diameter_mm"]:
        return first[row] * diameter / first["diameter_mm"]
    return float(np.interp(diameter, [t["diameter_mm"] for t in TEETH], [t[row] for t in TEETH]))


def driven_work(job):
    """Work of driven tools across the shaft that bends it: name, place along the shaft, force."""
    metal = job["material"]
    kc = lambda chip: metal["kc11"] * chip ** -metal["mc"]

    def mill(width, area, teeth):
        # Half a turn in cut: the chip is a sine from nothing to the feed of a tooth, its mean 2/pi of that.
        per_tooth, rpm = tooth_feed(job, width), driven_rpm(job, "mill", width)
        removed_per_min, way_per_min = area * per_tooth * teeth * rpm, math.pi * width * rpm
        return kc(per_tooth * 2 / math.pi) * removed_per_min / way_per_min

    def thrust(d):
        # The handbook's thrust over its torque: a chisel edge of 0.18 of the diameter. Its number of the material drops out.
        f = drill_feed(job, d)
        torque = 1.2 * kc(0.43 * f) * f * d * d / 8
        theirs = (0.05 * f**0.8 * d**0.8 * 1.355 + 0.007 * d**2 * 0.030) / (0.025 * f**0.8 * d**1.8 * 1.085)
        return torque * theirs

    for f in job["features"]:
        if f.get("cross_hole"):
            yield "cross_hole", f["at"], f["thrust"] if "thrust" in f else thrust(f["cross_hole"])
        elif f.get("tapped_hole") and "at" in f:
            yield "tapped_hole", f["at"], thrust(float(f["tapped_hole"][1:]) - COARSE[f["tapped_hole"]])
        elif f.get("keyseat"):
            width, depth = f["keyseat"]
            yield "keyseat", f["to"], mill(width, width * depth, 2)
    for s in job["sections"]:
        if s["flats"] and s["turned"] > s["beam"][0] + SAME:
            # Circle less triangle: what lies outside the chord.
            radius, height = s["turned"] / 2, s["beam"][0] / 2
            half = math.sqrt(radius**2 - height**2)
            angle = 2 * math.atan2(half, height)
            yield "flats", s["to"], mill(2 * half, radius**2 * (angle - math.sin(angle)) / 2, 4)
