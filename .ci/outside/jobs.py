"""Random jobs for the checks from outside: small shafts on invented machines, the same every time."""

import random

import yaml

MATERIALS = ["C45", "11SMn30", "42CrMo4", "X5CrNi18-10", "Ti-6Al-4V", "EN AW-6082", "16MnCr5"]


def job(seed):
    r = random.Random(seed)
    bar = r.choice([8, 10, 12, 16, 20])
    bush = r.random() < 0.8
    sections, length = [], 0.0
    for _ in range(r.randint(2, 6)):
        size = round(bar * r.uniform(0.55, 0.95), 1)
        long = round(r.choice([r.uniform(8, 25), r.uniform(20, 70 if bush else 30)]), 1)
        s = {"length": long, "diameter": size}
        kind = r.random()
        if kind < 0.1:
            s = {"length": 2, "diameter": round(size * 0.9, 1), "kind": "groove"}
        elif kind < 0.2:
            s = {"length": long, "taper": [size, round(bar * r.uniform(0.45, 0.95), 1)]}
        elif kind < 0.27 and bar >= 10:
            s = {"length": min(long, 14), "thread": "M8x1"}
        elif kind < 0.32:
            s = {"length": min(long, 12), "across_flats": round(bar * 0.7, 1), "sides": 4}
        if "diameter" in s and s.get("kind") is None:
            if r.random() < 0.6:
                s["tolerance"] = r.choice(["h6", "h7", "h8", "h9", "h10", "h11"])
            if r.random() < 0.4:
                s["ra"] = r.choice([0.8, 1.6, 3.2, 6.3])
            if r.random() < 0.3:
                s["interrupt"] = r.choice(["avoid", "free"])
        sections.append(s)
        length += s["length"]
    features = []
    if r.random() < 0.4:
        plain = [i for i, s in enumerate(sections) if "diameter" in s and s["length"] > 12]
        if plain:
            i = r.choice(plain)
            start = sum(s["length"] for s in sections[:i])
            features.append({"cross_hole": 2, "at": round(start + sections[i]["length"] / 2, 1)})
            if r.random() < 0.5:
                features[-1]["thrust"] = r.choice([60, 150, 300])
    land = r.choice([12, 16, 22])
    stroke = r.choice([90, 150, 250])
    sizes = [s["diameter"] for s in sections if "diameter" in s and s.get("kind") is None] or [bar * 0.8]
    largest = max(s.get("diameter", 0) for s in sections)
    collets = [{"name": f"c{i}", "range": [round(d - 0.3, 2), round(d + 0.1, 2)], "hold": r.choice([6, 8, 12]),
                "passes": round(r.choice([d + 0.3, largest + 0.5, bar + 0.5, bar + 0.5]), 2), "clamp_force": r.choice([6000, 12000])}
               for i, d in enumerate(r.sample(sizes, min(len(sizes), r.randint(1, 3))))]
    machine = {
        "name": f"invented {seed}",
        "bush": {"max_bar": 20, "land": land, "gap": r.choice([0.8, 1.2, 1.5]), "stiffness": r.choice([40, 80, 120])},
        "no_bush": {"max_bar": 22, "collet_gap": r.choice([4, 8])},
        "headstock": {"nearest": r.choice([30, 45]), "stroke": stroke, "hold": 25, "stiffness": 80, "max_rpm": 8000,
                      "regrip_s": r.choice([3, 6])},
        "shared_stop_saving_s": r.choice([0, 2]), "cross_tool_reach": r.choice([6, 10]),
        "segment_overhead_s": 1.0, "part_off": {"width": 2, "time_s": 6},
    }
    if r.random() < 0.92:
        machine["counter_spindle"] = {
            "nearest": r.choice([12, 20]), "farthest": r.choice([80, 140, 250]), "bore": 22,
            "bore_depth": r.choice([120, 400]), "stiffness": r.choice([40, 80]), "max_rpm": 7000,
            "hand_over_s": r.choice([4, 8]), "collets": collets}
        if r.random() < 0.4:
            machine["counter_spindle"]["sleeve"] = {"pitch": r.choice([40, 70]), "stiffness": 3}
    pair = r.random() < 0.25
    cutting = {"tools": "opposed" if pair else "single", "vc": r.choice([50, 90, 140]), "nose_radius": r.choice([0.2, 0.4]),
               "approach_angle": r.choice([75, 90, 93]), "ap_max": r.choice([1.0, 2.0, 5.0, 5.0, 5.0]),
               "ap_finish": 0.25, "speed_floor": r.choice([1.0, 0.5])}
    if r.random() < 0.7:
        cutting["feed"] = r.choice([0.05, 0.1, 0.15])
    return {
        "shaft": {"name": f"random {seed}", "material": r.choice(MATERIALS), "sections": sections, "features": features,
                  "straightness": r.choice([0.1, 0.3, 0.6])},
        "stock": {"diameter": bar, "bar_length": 3000}, "machine": machine, "cutting": cutting,
        "holding": "bush" if bush else "no_bush",
        "limits": {"stiffness_min": r.choice([0.02, 0.05, 0.2, 0.03 * bar]), "sag": r.choice([0.05, 0.02]),
                   "whip": r.choice([0.1, 0.03])},
        "planning": {"station_pitch": 10},
    }


def on_centre(seed):
    """A random job whose front a centre holds, on a machine that lets any part fall."""
    given, r = job(seed), random.Random(f"centre {seed}")
    spindle = given["machine"].get("counter_spindle")
    if spindle is None:
        return given
    spindle["centre"] = {"force": r.choice([5, 20, 60]), "stiffness": r.choice([8, 20, 40])}
    spindle["farthest"] = 400
    given["machine"]["headstock"]["stroke"] = 400
    given["machine"]["part_off"]["tray"] = {"max_length": 500, "max_diameter": 30}
    given["shaft"]["features"].append({"centre_hole": "A1", "end": "front"})
    return given | {"hold": "centre"}


def tandem(seed):
    """A random job for two tools in one travel next to the bush, with more surfaces that ask for both."""
    given, r = job(seed), random.Random(f"tandem {seed}")
    given["cutting"] |= {"tools": "tandem", "lag": r.choice([0.4, 1.0, 3.0]),
                         "finisher": {"side": r.choice(["same", "opposite"]), "nose_radius": r.choice([0.2, 0.4, 0.8])}}
    for section in given["shaft"]["sections"]:
        if "thread" not in section and section.get("kind") != "groove" and r.random() < 0.4:
            section["ra"] = 0.8
    return given


def write(seed, folder, make=job):
    path = folder / f"random_{make.__name__}_{seed}.yaml"
    path.write_text(yaml.safe_dump(make(seed), sort_keys=False), encoding="utf-8")
    return path
