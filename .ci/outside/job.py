"""A job file as plain numbers, read apart from the Rust code: PyYAML, tables of `tests/data`, defaults of `docs`."""

import csv
import math
import pathlib

import yaml

DATA = pathlib.Path(__file__).resolve().parents[2] / "tests" / "data"
SAME = 1e-6


def table(name):
    with open(DATA / name, encoding="utf-8") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("#")))


GRADES, MATERIALS = table("iso286_it_grades.csv"), table("materials.csv")
SPEEDS = {row["class"]: row for row in table("speeds.csv")}
TEETH = [{k: float(v) for k, v in row.items()} for row in table("tooth_feeds.csv")]


def material(given):
    if isinstance(given, dict):
        low, high = given.get("vc", (None, None))
        return {"e": given["e_gpa"] * 1e3, "rho": given["density"] * 1e-12, "kc11": given["kc11"], "mc": given["mc"],
                "poisson": given.get("poisson", 0.3), "vc": (low + high) / 2 if low else None, "class": given.get("class")}
    for row in MATERIALS:
        if str(given) in (row["material"], row["number"]):
            return {"e": float(row["E_GPa"]) * 1e3, "rho": float(row["density_kg_m3"]) * 1e-12,
                    "kc11": float(row["kc11_N_mm2"]), "mc": float(row["mc"]), "poisson": float(row["poisson"]),
                    "vc": (float(row["vc_low_m_min"]) + float(row["vc_high_m_min"])) / 2, "class": row["class"]}
    raise KeyError(f"material {given}")


def grade_width(grade, diameter):
    row = next(r for r in GRADES if float(r["over_mm"]) < diameter <= float(r["up_to_mm"]))
    return float(row[f"IT{grade}_um"]) / 1000


def general_width(diameter):
    """ISO 2768-1, class m."""
    return 2 * next(d for top, d in ((6, 0.1), (30, 0.2), (120, 0.3), (400, 0.5)) if diameter <= top)


def width_of(tolerance, diameter):
    if tolerance is None:
        return general_width(diameter)
    if isinstance(tolerance, str):
        return grade_width(int(tolerance.lstrip("abcdefghjkmnprs")), diameter)
    return tolerance[1] - tolerance[0]


def section(given, start):
    s = {"from": start, "to": start + given["length"], "kind": given.get("kind", "plain"), "ra": given.get("ra"),
         "finish_pass": given.get("finish_pass", False), "flats": 0, "back": False}
    if "thread" in given:
        major, _, pitch = given["thread"].lstrip("M").partition("x")
        s.update(kind="thread", turned=float(major), pitch=float(pitch))
        s["beam"] = (s["turned"] - 1.22687 * s["pitch"],) * 2
    elif "taper" in given:
        s.update(kind="taper", turned=min(given["taper"]), beam=tuple(given["taper"]))
    elif "across_flats" in given:
        corners = given.get("diameter") or given["across_flats"] / math.cos(math.pi / given["sides"])
        s.update(kind="flats", flats=given["sides"], turned=corners, beam=(given["across_flats"],) * 2)
    else:
        s.update(turned=given["diameter"], beam=(given["diameter"],) * 2)
    s["largest"] = max(s["turned"], *s["beam"])
    s["width"] = width_of(given.get("tolerance"), s["turned"])
    s["grip"] = given.get("grip", s["kind"] == "plain")
    usual = interrupt(given, s)
    s["interrupt"] = given.get("interrupt") or usual
    s["fine"] = usual == "never" and s["kind"] not in ("thread", "groove")
    return s


def interrupt(given, s):
    if s["kind"] == "thread":
        return "never"
    ra, width, d = s["ra"] or math.inf, s["width"], s["turned"]
    if isinstance(given.get("tolerance"), str):
        grade = int(given["tolerance"].lstrip("abcdefghjkmnprs"))
        fine, middle = grade <= 7, grade <= 9
    elif given.get("tolerance"):
        fine, middle = width <= grade_width(7, d) + SAME, width <= grade_width(9, d) + SAME
    else:
        fine = middle = False
    if fine or ra <= 0.8:
        return "never"
    return "avoid" if middle or ra <= 1.6 else "free"


def finisher(cutting):
    """The finishing tool of a tandem."""
    own = cutting.get("finisher", {})
    angle = own.get("approach_angle", cutting.get("approach_angle", 93))
    return {"lag": cutting.get("lag", 1.0), "same": own.get("side", "same") == "same", "approach": math.radians(angle),
            "nose": own.get("nose_radius", cutting.get("nose_radius", 0.4))}


def falls(machine, sections, length, shaft):
    """Whether the part may fall into a tray at part-off, with its front free."""
    if not machine.get("counter_spindle"):
        return True
    tray = machine.get("part_off", {}).get("tray", {"max_length": 30, "max_diameter": 16})
    small = length <= tray["max_length"] and max(s["largest"] for s in sections) <= tray["max_diameter"]
    return small and not shaft.get("back_work")


def text_of(path):
    """A job file with its machine in it, as it is written."""
    path = pathlib.Path(path)
    raw = yaml.safe_load(path.read_text(encoding="utf-8"))
    if isinstance(raw.get("machine"), str):
        raw["machine"] = yaml.safe_load((path.parent / raw["machine"]).read_text(encoding="utf-8"))
    return raw


def read(path):
    return numbers(text_of(path))


def numbers(raw):
    machine, sections, start = raw["machine"], [], 0.0
    for given in raw["shaft"]["sections"]:
        sections.append(section(given, start))
        start = sections[-1]["to"]
    for before, s in zip(sections, sections[1:]):
        rear = before["beam"][1] if before["kind"] == "taper" else before["largest"]
        s["back"] = (s["beam"][0] if s["kind"] == "taper" else s["largest"]) < rear - 1e-9
    limits, cutting = raw.get("limits", {}), raw.get("cutting", {})
    stock = raw["stock"]["diameter"]
    metal = material(raw["shaft"]["material"])
    ap_max = cutting.get("ap_max", 1.5)
    reach = machine.get("cross_tool_reach", 10)
    return {
        "sections": sections, "length": start, "stock": stock, "material": metal, "machine": machine,
        "features": raw["shaft"].get("features", []), "back_work": raw["shaft"].get("back_work", []),
        "bow": raw["shaft"].get("straightness", 0.3), "bar_length": raw["stock"].get("bar_length", 3000),
        "tandem": finisher(cutting) if cutting.get("tools") == "tandem" else None,
        "pair": cutting.get("tools") == "opposed", "vc": cutting.get("vc", metal["vc"]), "feed": cutting.get("feed"),
        "nose": cutting.get("nose_radius", 0.4), "approach": math.radians(cutting.get("approach_angle", 93)),
        "ap_max": ap_max, "ap_finish": min(cutting.get("ap_finish", 0.25), ap_max),
        "floor": cutting.get("speed_floor", 0.5), "unbalance": cutting.get("unbalance", 0.1),
        "share": cutting.get("in_plane_share", 0.55), "passive_floor": cutting.get("passive_floor", 0.15),
        "ra_factor": cutting.get("ra_factor", 1.5), "ra_floor": cutting.get("ra_floor", 0.2),
        "bush": raw.get("holding", "bush") == "bush",
        "reaches": reach if isinstance(reach, list) else [reach],
        "centre": raw.get("hold") == "centre", "rates": raw.get("rates"), "falls": falls(machine, sections, start, raw["shaft"]),
        "limits": {
            "stiffness": limits.get("stiffness_min", 0.05 * stock),
            "span": limits.get("span_stiffness_min", limits.get("stiffness_min", 0.05 * stock)),
            "free_ratio": limits.get("free_ratio"), "pick_up": limits.get("pick_up", 0.25), "whirl": limits.get("whirl_ratio", 0.7),
            "whip": limits.get("whip", 0.01 * stock), "sag": limits.get("sag", 0.05), "release": limits.get("release", 0.25),
            "share": limits.get("tolerance_share", 0.25), "drill": limits.get("drill", 0.02),
            "buckling": limits.get("buckling_share", 0.2), "damping": limits.get("damping_ratio", 0.02), "clearance": limits.get("bore_clearance", 1.0),
            "torque_margin": limits.get("torque_margin", 1.5), "avoid_s": limits.get("avoid_penalty_s", 5.0),
        },
    }


def section_at(job, t):
    """Index of the section in cut when the tool has turned `t`: the one that begins there, at the end the last."""
    return next((i for i, s in enumerate(job["sections"]) if t < s["to"] - SAME), len(job["sections"]) - 1)
