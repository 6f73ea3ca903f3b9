"""Forces, travels, speeds and times of a cut, from the model's text."""

import math

from job import SAME

PLUNGE = 0.4


def edge(ap, nose, approach):
    """Length of the edge in cut and the extent of its chord along the axis."""
    on_nose = nose * (1 - math.cos(approach))
    if ap <= on_nose:
        return nose * math.acos(1 - ap / nose), math.sqrt(2 * nose * ap - ap**2)
    rest = ap - on_nose
    return nose * approach + rest / math.sin(approach), nose * math.sin(approach) + rest / math.tan(approach)


def force(job, ap, feed):
    length, along = edge(ap, job["nose"], job["approach"])
    chip = ap * feed / length
    specific = job["material"]["kc11"] * chip ** -job["material"]["mc"]
    main, chord = specific * ap * feed, math.atan2(ap, along)
    return {"main": main, "chord": chord, "specific": specific, "passive": job["share"] * main * math.cos(chord)}


def finish_feed(job, s):
    """Feed of the travel that leaves a section's surface."""
    feed = 0.15 if job["feed"] is None else job["feed"]
    return feed if s["ra"] is None else min(feed, math.sqrt(8 * job["nose"] * 4 * s["ra"] / 1000))


def travels(job, s):
    """Depths of each travel of a turned section: one depth a tool."""
    stock = (job["stock"] - s["turned"]) / 2
    last, most = job["ap_finish"], job["ap_max"]
    if stock <= SAME:
        return []
    whole = stock <= most + SAME and not (s["finish_pass"] and stock > last + SAME)
    if job["pair"] and whole:
        return [[stock - last, last] if stock > last + SAME else [stock]]
    if whole:
        return [[stock]]
    passes = max(1, math.ceil((stock - last) / most - SAME))
    rough = (stock - last) / passes
    if job["pair"]:
        return [[rough]] * (passes - 1) + [[rough, last]]
    return [[rough]] * passes + [[last]]


def net_radial(job, depths, feed):
    parts = [force(job, ap, feed)["passive"] for ap in depths]
    if len(parts) == 1:
        return abs(parts[0])
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


def driven_work(job):
    """Work of driven tools across the shaft that bends it: name, place along the shaft, force."""
    metal = job["material"]
    kc = lambda chip: metal["kc11"] * chip ** -metal["mc"]

    def mill(width, area, teeth, feed=150.0, vc=25_000.0):
        # Half a turn in cut: the chip is a sine from nothing to the feed of a tooth, its mean 2/pi of that.
        per_tooth = feed / (teeth * vc / (math.pi * width))
        removed = area * feed
        return kc(per_tooth * 2 / math.pi) * removed / vc

    for f in job["features"]:
        if f.get("cross_hole"):
            d = f["cross_hole"]
            yield "cross_hole", f["at"], f.get("thrust", 0.55 * kc(0.43 * 0.02 * d) * 0.02 * d * d / 2)
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
