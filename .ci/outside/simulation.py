"""The share of sampled parts that keep every limit, by a second simulation: other random numbers, the other reading.

    python .ci/outside/simulation.py target/release/spanhold [--no-skipping] [JOB…]

Each feasible demo job is planned once. Parts are drawn with numpy, each is turned as the plan says, and the share of
parts within every limit is compared with `scatter` of the plan, and so is the share of each check that fails. Forces
come from the depths, feeds and tools that the plan prints; speeds, grips and places of the headstock are those of the
plan. Before that, the nominal part must use as much of each limit as the plan tells.

Some demo jobs keep every limit in each part, which says little: they run once more with wide spreads. And one job has
two equal holes, which only their places tell apart.

Both shares are counts, so they differ by chance. With `p` the share of both counts pooled, one failure and one success
added so that it is never 0 or 1, the difference may be 3.3 standard errors `sqrt(p (1 - p) (1/n + 1/m))`: one pair of
fair counts in a thousand differs by more. The seed is fixed, so a run says the same each time.
"""

import copy
import json
import math
import os
import pathlib
import subprocess
import sys
import tempfile
import time
from dataclasses import dataclass, field

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

import numpy as np
import yaml
from beam import Beam
from cutting import PLUNGE, driven_work, forces, net_radial, pull_back_change
from job import SAME, grade_width, numbers, text_of
from scipy.linalg import cho_solve
from state import State, pieces, share

PARTS, SEED = 200, 20260
# States of a cut are at most this far apart, as in the program.
STEP = 5.0
ERRORS = 3.3
# A check is compared by itself where it fails in at least this many parts, here or there.
FEW = 4
PASSES = 1 + 1e-6
# The nominal part against what the plan tells, of the value and of the limit: its worst state may lie between two of ours.
# `chatter` goes up and down between states, and small shares are told from few modes.
NOMINAL, NOMINAL_CHATTER = (0.03, 2e-3), (0.1, 0.01)
# Spreads where the job gives none; those of one support are that of all.
USUAL = {"straightness": 0.3, "kc": 0.18, "passive": 0.25, "e": 0.02, "damping": 0.3, "supports": 0.25, "run_out": 0.3}
SUPPORTS = ("bush", "headstock", "counter_spindle", "centre", "sleeve")
# Bow of a shaft from drawn bar, mm per m, where the job gives none.
BOW_OF = {"drawn": 1.5}
# A drill on the axis presses sideways with this share of its thrust.
SIDEWAYS = 0.1
# Tolerance of work on the rear end that gives none, mm.
BACK_WIDTH = 0.1
# From this share of the buckling load on, the bar counts as softer.
PRESSED = 0.05


# Wide enough that parts of any job fail.
WIDE = {"straightness": 1.0, "kc": 0.4, "passive": 0.8, "e": 0.1, "damping": 0.6, "supports": 0.8, "bar": 0.2}
# Demo jobs that run again with these, and one that gets a second hole like its first.
WIDER, TWIN = ("feed-roller-shaft", "platen-shaft", "probe-needle"), ("metering-spindle", 160)
# Parts of a run with wide spreads; more states matter there.
PARTS_WIDE = 100


class Coarse(State):
    """Static answers are exact at nodes for any mesh, and the first frequency hardly depends on it: few elements do."""

    span, inside, elements = 24, 8, 24


# Jobs


def with_shop(path, plan):
    """A job that has only its drawing: the rest is in shop.yaml. Of machines and bars the plan's choice counts."""
    raw = yaml.safe_load(path.read_text(encoding="utf-8"))
    shop = yaml.safe_load((path.parent / "shop.yaml").read_text(encoding="utf-8"))
    for entry in shop["machines"]:
        machine = yaml.safe_load((path.parent / entry["file"]).read_text(encoding="utf-8"))
        if machine["name"] == plan["machine"]:
            break
    else:
        raise KeyError(f"no machine {plan['machine']} in the shop")
    own = [c for c in shop["collets"] if entry["name"] in c.get("machines", [entry["name"]])]
    machine["counter_spindle"]["collets"] = machine["counter_spindle"]["collets"] + own
    grade, wide = str(raw["shaft"]["material"]), plan["shaft"]["stock_diameter_mm"]
    raw["stock"] = next(b for b in shop["bars"] if str(b["material"]) == grade and b["diameter"] == wide)
    raw["shaft"].setdefault("straightness", BOW_OF[raw["stock"]["kind"]])
    for key in ("limits", "cutting", "scatter"):
        raw[key] = shop.get(key, {}) | raw.get(key, {})
    return raw | {"machine": machine, "tool_list": raw.get("tool_list", shop.get("tool_list", []))}


def bar_range(raw):
    """Lower and upper deviation of the bar, mm."""
    given = raw["stock"].get("tolerance")
    if given is None:
        return 0.0, 0.0
    if not isinstance(given, str):
        return tuple(given)
    if not given.startswith("h"):
        raise ValueError(f"bar of {given}: only h is read here")
    return -grade_width(int(given[1:]), raw["stock"]["diameter"]), 0.0


# Samples


def draws(raw, job, count, seed):
    """Factors of each part, and its deviation of the bar's diameter."""
    given, rng = raw.get("scatter", {}), np.random.default_rng(seed)
    spread = USUAL | {k: v for k, v in given.items() if k in USUAL}
    spread |= {k: given.get(k, spread["supports"]) for k in SUPPORTS}
    # Median 1 and the spread as coefficient of variation.
    table = {k: np.exp(math.sqrt(math.log(1 + spread[k] ** 2)) * rng.standard_normal(count)) for k in spread if k != "supports"}
    low, high = bar_range(raw)
    bar = given["bar"] * rng.standard_normal(count) if "bar" in given else rng.uniform(low, high, count)
    table["bar"] = np.maximum(bar / job["stock"] + 1, 0.5)
    return [{k: float(v[i]) for k, v in table.items()} for i in range(count)]


def changed(job, f):
    """The job of one part. Limits and cuts stay those of the nominal one."""
    machine = copy.deepcopy(job["machine"])
    spindle = machine.get("counter_spindle") or {}
    for name, support in (("bush", machine.get("bush")), ("headstock", machine["headstock"]), ("counter_spindle", spindle),
                          ("centre", spindle.get("centre")), ("sleeve", spindle.get("sleeve"))):
        if support:
            support["stiffness"] *= f[name]
    metal = job["material"] | {"e": job["material"]["e"] * f["e"], "kc11": job["material"]["kc11"] * f["kc"]}
    return job | {"machine": machine, "material": metal, "bow": job["bow"] * f["straightness"], "stock": job["stock"] * f["bar"],
                  "limits": job["limits"] | {"damping": job["limits"]["damping"] * f["damping"]}}


def softest(job, f):
    """No stiffness of the part is below this share of the nominal one: least of all factors that take part."""
    machine, bar = job["machine"], f["bar"]
    spindle = machine.get("counter_spindle") or {}
    springs = ["headstock"] + ["bush"] * job["bush"] + ["counter_spindle"] * bool(spindle)
    springs += [k for k in ("centre", "sleeve") if spindle.get(k)]
    # Bending goes with the fourth power of the diameter, shear with the second.
    return min([f[k] for k in springs] + [f["e"] * min(1.0, bar**4)])


# A plan as a list of what may fail


@dataclass
class Spot:
    """One check at one state. `use`: share of the limit that the nominal part takes; `ratio`: speed over the critical
    one; `flexible`: mm/N at the tool, both of the nominal part."""

    stage: int
    check: str
    place: tuple
    rpm: float = 0.0
    cut: dict = field(default_factory=dict)
    load: float = 0.0
    scales: bool = True
    use: float = 0.0
    ratio: float = 0.0
    flexible: float = 0.0


NOMINAL_FACTORS = {k: 1.0 for k in (*USUAL, *SUPPORTS, "bar")}


class Simulation:
    """`place` of a spot: turned length, nose, place of the headstock, nose that opens, place of driven work."""

    def __init__(self, raw, plan):
        self.raw, self.plan, self.job = raw, plan, numbers(raw)
        self.machine = self.job["machine"]
        self.refuse()
        spindle = self.machine.get("counter_spindle")
        self.collet = next((c for c in spindle["collets"] if c["name"] == plan["collet"]), None) if spindle else None
        self.end = self.job["length"] + self.machine.get("part_off", {}).get("width", 3)
        self.edges = {t["name"]: {"nose": t.get("nose_radius", self.job["nose"]),
                                  "approach": math.radians(t.get("approach_angle", math.degrees(self.job["approach"])))}
                      for t in raw.get("tool_list", [])}
        self.spots, self.whole = [], []
        for index, stage in enumerate(plan["stages"]):
            self.cuts_of(index, stage)
            self.between(index, stage)
        self.last_grip()
        self.states = 0
        self.most_pressed = 1.0
        nominal = Part(self, NOMINAL_FACTORS)
        for spot in self.spots + self.whole:
            spot.use = nominal.use(spot)
            if spot.check in ("whirl", "whip", "bore"):
                spot.ratio = spot.rpm / nominal.critical(spot.place) / math.sqrt(1 - nominal.pressed(spot))
            if spot.check == "chatter":
                beam = nominal.state(spot.place).beam
                spot.flexible = beam.flexibility(beam.node(spot.place[0]))[0]
        self.most_pressed = max((nominal.buckling(s) for s in self.spots), default=0.0)
        self.groups = {}
        for spot in sorted(self.spots + self.whole, key=lambda s: -s.use):
            self.groups.setdefault((spot.stage, spot.check), []).append(spot)

    def refuse(self):
        """What is not read here must not be passed over: it would be in the program's share only."""
        spindle = self.machine.get("counter_spindle") or {}
        back = [f for f in self.raw["shaft"].get("features", []) if f.get("end") == "back"]
        unread = {
            "tandem": self.job["tandem"], "centre": self.job["centre"], "free_ratio": self.job["limits"]["free_ratio"],
            "stock.bore": self.raw["stock"].get("bore"), "back_work": self.job["back_work"],
            "torsional_stiffness": spindle.get("torsional_stiffness"), "axial_load": spindle.get("axial_load"),
            "tolerance of work on the rear end": any("tolerance" in f for f in back),
            # Its spread is read, but this reading has no offset of a collet.
            "run_out": any("run_out" in s for s in self.raw["shaft"]["sections"]),
        }
        if any(unread.values()):
            raise NotImplementedError(", ".join(k for k, v in unread.items() if v))

    def head(self, t, last, to):
        """Place of the headstock's nose while a piece that ends at `to` is cut, the last re-grip at `last`."""
        headstock = self.machine["headstock"]
        if not self.job["bush"]:
            stop = min([r for r in self.plan["headstock_regrips_mm"] if r >= to - SAME], default=self.end)
            return stop + self.machine["no_bush"]["collet_gap"]
        return t + self.machine["bush"]["gap"] + headstock["nearest"] + headstock["stroke"] - (t - last)

    def last(self, upto, also):
        """The last re-grip before a place; those at it only where they come first."""
        return max([r for r in self.plan["headstock_regrips_mm"] if r < upto - SAME or also and r <= upto + SAME], default=0.0)

    def cuts_of(self, index, stage):
        nose = stage["grip"] and stage["grip"]["nose_mm"]
        pieces = [s for s in self.plan["segments"] if s["stage"] == stage["number"]]
        pieces = [(s["from_mm"], s["to_mm"], s["rpm"], s) for s in pieces]
        if index + 1 == len(self.plan["stages"]) and self.plan["part_off_rpm"]:
            pieces.append((self.job["length"], self.end, self.plan["part_off_rpm"], None))
        for low, high, rpm, segment in pieces:
            cut = self.cut(segment)
            last = self.last(low, True)
            places = []
            for t in np.linspace(low, high, max(math.ceil((high - low) / STEP), 1) + 1):
                places.append((float(t), nose, self.head(t, last, high), None, None))
                self.moment(index, places[-1], rpm, cut, nose)
            if segment and segment["work"] == "turn" and cut:
                self.whole.append(Spot(index, "cut", places[0], cut=cut | {"places": places, "segment": segment}))

    def moment(self, index, place, rpm, cut, nose):
        checks = ["stiffness", "whirl", "whip"]
        if nose is not None:
            checks += ["sag", "bore"] + ["span_stiffness"] * (not self.job["pair"])
        if cut:
            checks += ["chatter", "buckling"]
        self.spots += [Spot(index, check, place, rpm, cut) for check in checks]

    def cut(self, segment):
        """Forces of the nominal cut: net radial force of the last travel, stiffest process, largest axial force."""
        if not segment or segment["work"] not in ("turn", "thread") or not segment["cuts"]:
            return {}
        slope, axial, net = 0.0, 0.0, 0.0
        for cut in segment["cuts"]:
            edge = self.job | self.edges.get(cut["tools"][0], {})
            all_of = forces(edge, cut["depths_mm"], cut["feed_mm"])
            slope = max([slope] + [f["slope"] for f in all_of])
            axial = max(axial, sum(f["axial"] for f in all_of))
            net = net_radial(edge, cut["depths_mm"], cut["feed_mm"])
        return {"slope": slope, "axial": axial, "net": net, "travels": len(segment["cuts"]),
                "wide": segment["diameter_mm"] + 2 * sum(segment["depths_mm"][-len(segment["cuts"][-1]["depths_mm"]):])}

    def between(self, index, stage):
        """Driven work, bar fed on for it, and the opening or coming of the collet at the end of the stage."""
        nose, works = stage["grip"] and stage["grip"]["nose_mm"], list(driven_work(self.job))
        given = [f["at"] if "at" in f else f["to"] for f in self.raw["shaft"].get("features", []) if "thrust" in f]
        for f in self.plan["features"]:
            if f["stage"] != stage["number"] or f["thrust_n"] is None:
                continue
            newtons = next(n for kind, at, n in works if kind == f["feature"] and abs(at - f["at_mm"]) < SAME)
            if abs(newtons / f["thrust_n"] - 1) > 1e-6:
                raise ValueError(f"{f['text']}: {newtons} N here, {f['thrust_n']} N in the plan")
            t = f["turned_mm"]
            last = self.last(t, t <= stage["from_mm"] + SAME)
            place = (t, nose, self.head(t, last, t), None, f["at_mm"])
            fixed = any(abs(at - f["at_mm"]) < SAME for at in given)
            self.spots.append(Spot(index, "drill", place, load=newtons, scales=not fixed))
            if t > self.end + SAME:
                # The bar turns as at part-off.
                self.moment(index, place[:4] + (None,), self.plan["part_off_rpm"], {}, nose)
        if index + 1 < len(self.plan["stages"]):
            t = stage["to_mm"]
            head = self.head(t, self.last(t, any(abs(r - t) < SAME for r in stage["regrips_mm"])), t)
            if nose is None:
                self.spots.append(Spot(index, "pick_up", (t, None, head, None, None)))
            else:
                self.spots.append(Spot(index, "release", (t, None, head, nose, None)))

    def last_grip(self):
        """Torque and thrust on the last grip, thrust on the headstock's collet, bending of the rear end.

        Forces of work on the ends are those of the plan, which go with kc; how they act is read here."""
        index, stage, job = len(self.plan["stages"]) - 1, self.plan["stages"][-1], self.job
        ends = [(f, f["axial_n"] or 0.0, f["torque_nm"] or 0.0) for f in self.plan["features"]]
        head, front = self.machine["headstock"], [w for w in ends if w[0]["stage"] == 1 and w[1] > 0 and not w[0]["thrust_n"]]
        pushed = lambda axial, torque, d: job["limits"]["torque_margin"] * math.hypot(axial, 2000 * torque / d)
        if front and "clamp_force" in head:
            limit = head.get("friction", 0.15) * head["clamp_force"]
            most = max(pushed(a, m, job["stock"]) for _, a, m in front)
            self.spots.append(Spot(0, "push", (0.0, None, 0.0, None, None), load=most / limit))
        if not stage["grip"]:
            return
        back = [w for w in ends if w[0]["feature"] == "back_work"]
        spindle, held = self.machine["counter_spindle"], stage["grip"]["diameter_mm"]
        place = (job["length"], stage["grip"]["nose_mm"], None, None, None)
        carries = spindle.get("friction", 0.15) * self.collet["clamp_force"]
        plunged = PLUNGE * (0.15 if job["feed"] is None else job["feed"])
        parted = next((t["feed"] for t in self.raw.get("tool_list", []) if t["kind"] == "part_off"), plunged)
        metal, width = job["material"], self.end - job["length"]
        torques = [metal["kc11"] * parted ** (1 - metal["mc"]) * width * job["stock"] / 2000] + [m for _, _, m in back]
        self.spots.append(Spot(index, "torque", place,
                               load=job["limits"]["torque_margin"] * max(torques) / (carries * held / 2000)))
        if any(a > 0 for _, a, _ in back):
            self.spots.append(Spot(index, "push", place, load=max(pushed(a, m, held) for _, a, m in back) / carries))
        # Only a drill has its sideways force told by its thrust; facing presses with its feed force, which is less.
        drilled = [SIDEWAYS * a for f, a, _ in back if f["tool"].startswith("drill")]
        if drilled:
            self.spots.append(Spot(index, "back", place, load=max(drilled)))

    def verify(self):
        """What differs between the nominal part here and the plan."""
        wrong, seen = [], set()
        for index, stage in enumerate(self.plan["stages"]):
            for told in stage["checks"]:
                key = (index, told["check"])
                ours = max((s.use for s in self.groups.get(key, [])), default=0.0)
                seen.add(key)
                near = NOMINAL_CHATTER if told["check"] == "chatter" else NOMINAL
                if abs(ours - told["utilisation"]) > near[0] * told["utilisation"] + near[1]:
                    wrong.append(f"stage {stage['number']}: {told['check']} uses {ours:.4f} of its limit here, "
                                 f"{told['utilisation']:.4f} there")
        # Nothing is printed of `buckling` below a quarter, nor of a span that need not be stiff.
        for key in self.groups.keys() - seen:
            worst = self.groups[key][0].use
            if worst > 0.26 and key[1] != "span_stiffness":
                wrong.append(f"stage {key[0] + 1}: {key[1]} uses {worst:.4f} here and is not told")
        return wrong

    def broken(self, f, skipping=True):
        """Stage and name of the checks that fail on one part.

        Skipping is safe. With `m` the least factor of all stiffnesses that take part, the stiffness of the whole is at
        least `m` times the nominal one, so no flexibility is above `1/m` times its own, and no critical speed below
        `sqrt(m/c)` times its own, where `c` is the growth of the mass. Only for deflections by own weight that is not
        proven place by place; they have a factor of 2 in hand. `--no-skipping` compares."""
        part, out = Part(self, f), set()
        for key, spots in self.groups.items():
            for spot in spots:
                if skipping and spot.use and part.bound(spot) <= 1:
                    continue
                if part.use(spot) > PASSES:
                    out.add(key)
                    break
        self.states += len(part.kept)
        return out


class Part:
    def __init__(self, simulation, f):
        self.of, self.f, self.job = simulation, f, changed(simulation.job, f)
        self.force, self.m = f["kc"] * f["passive"], softest(simulation.job, f)
        # A buckling load goes with the stiffnesses too.
        self.is_pressed = simulation.most_pressed * self.force / self.m > PRESSED
        self.kept, self.speeds = {}, {}

    def state(self, place):
        if place not in self.kept:
            t, nose, head, opened, at = place
            if head is None:
                state = Parted(self.job, self.of.collet, nose)
            else:
                state = Coarse(self.job, t, self.of.collet, nose, head, opened)
            self.kept[place] = state if at is None else state.at_too(at)
        return self.kept[place]

    def critical(self, place):
        if place not in self.speeds:
            self.speeds[place] = first_rpm(self.state(place).beam)
        return self.speeds[place]

    def pressed(self, spot):
        """Softening by the axial load of a cut: its share of the buckling load, where that is above 5 %."""
        taken = self.buckling(spot) if self.is_pressed else 0.0
        return taken if taken > PRESSED else 0.0

    def buckling(self, spot):
        load = spot.cut.get("axial", 0.0) * self.force
        return load / column(self.job, spot.place[0], spot.place[2]) if load else 0.0

    def bound(self, spot):
        """No share of the limit is above this on this part."""
        f, m, soft = self.f, self.m, 1 / (1 - min(self.pressed(spot), 0.99))
        mass = max(1.0, f["bar"] ** 4)
        slow = math.sqrt(mass / m * soft)
        ratio = spot.ratio * slow
        grown = (1 - spot.ratio**2) / (1 - ratio**2) if ratio < 1 else math.inf
        match spot.check:
            case "stiffness" | "span_stiffness":
                return spot.use / m * soft
            case "whirl":
                return spot.use * slow
            case "whip":
                return spot.use * f["straightness"] * grown
            case "sag" | "release":
                return 2 * spot.use * mass / m * soft
            case "bore":
                return 2 * spot.use * mass / m * grown * soft
            case "pick_up":
                return spot.use * max(f["straightness"], 2 * mass / m)
            case "drill":
                return spot.use / m * (f["kc"] if spot.scales else 1.0)
            case "back":
                return spot.use / m * f["kc"]
            case "buckling":
                return spot.use * self.force / m
            case "chatter":
                damping = self.job["limits"]["damping"]
                return 2 * spot.cut["slope"] * self.force * spot.flexible / m * soft / (4 * damping * (1 + damping))
        return math.inf

    def use(self, spot):
        """Share of its limit that a check takes at a spot."""
        job, limits, cut = self.job, self.job["limits"], spot.cut
        match spot.check:
            case "torque" | "push":
                return spot.load * self.f["kc"]
            case "cut":
                return self.change(cut) / (limits["share"] * self.of.job["sections"][cut["segment"]["section"] - 1]["width"])
            case "buckling":
                return self.buckling(spot) / limits["buckling"]
        state, soft = self.state(spot.place), 1 / (1 - min(self.pressed(spot), 0.99))
        beam = state.beam
        flexible = lambda place: beam.flexibility(beam.node(place))[0] * soft
        match spot.check:
            case "stiffness":
                return 1000 * limits["stiffness"] * flexible(state.t)
            case "drill":
                return spot.load * (self.f["kc"] if spot.scales else 1.0) * flexible(spot.place[4]) / limits["drill"]
            case "back":
                return 2 * spot.load * self.f["kc"] * flexible(state.t) / (limits["share"] * BACK_WIDTH)
            case "chatter":
                damping = limits["damping"]
                most = 2 * cut["slope"] * self.force * flexible(state.t) / (4 * damping * (1 + damping))
                # All of the flexibility in one mode: the exact value is no larger.
                if most <= 1 and self.f is not NOMINAL_FACTORS:
                    return most
                return 2 * cut["slope"] * self.force * beam.least_real(state.t, damping) * soft
            case "pick_up":
                return state.pick_up() / limits["pick_up"]
            case "release":
                return abs(beam.sag()[beam.node(spot.place[3])]) / limits["release"]
            case "sag":
                return np.max(np.abs(beam.sag()[beam.within(state.low, state.face)])) * soft / limits["sag"]
            case "span_stiffness":
                worst = 1000 * limits["span"] * np.max(beam.flexibility(beam.within(state.low, state.face))) * soft
                return worst if worst <= 1 or not state.runs_free() else 0.0
        ratio = spot.rpm / self.critical(spot.place) * math.sqrt(soft)
        grown = 1 / (1 - ratio**2) if ratio < 1 else math.inf
        match spot.check:
            case "whirl":
                return ratio / limits["whirl"]
            case "whip":
                return state.bow() * grown / limits["whip"]
            case "bore":
                widest = max(s["largest"] for s in job["sections"] if s["from"] < state.nose - SAME)
                room = (job["machine"]["counter_spindle"]["bore"] - widest) / 2 - limits["clearance"]
                return share("bore", np.max(np.abs(beam.sag()[beam.within(0, state.nose)])) * soft * grown, room)
        raise KeyError(spot.check)

    def change(self, cut):
        """Change of the diameter along the last travel."""
        newtons, segment = cut["net"] * self.force, cut["segment"]
        if self.job["bush"]:
            if cut["travels"] < 2:
                return 0.0
            return pull_back_change(self.job, segment["to_mm"] - segment["from_mm"], cut["wide"], newtons)
        moved = []
        for place in cut["places"]:
            beam = self.state(place).beam
            moved.append(newtons * beam.flexibility(beam.node(place[0]))[0])
        return 2 * (max(moved) - min(moved))


class Parted(Coarse):
    """The part after part-off: only its grip and the sleeves hold it."""

    def __init__(self, job, collet, nose):
        length = job["length"]
        super().__init__(job, length, collet, nose, length + 1)
        kept = [(place, rate) for place, rate in self.springs if place <= nose + SAME]
        self.springs, self.end = kept, length
        self.places = [p for p in self.places if p <= length + SAME]

    @property
    def beam(self):
        if self._beam is None:
            cylinders = [p for p in pieces(self.job, self.t, self.end + 1) if p[0] < self.end - SAME]
            self._beam = Beam(cylinders, self.springs, self.places, self.job["material"], self.longest)
        return self._beam


def column(job, t, head):
    """Buckling load of the bar between tool and headstock, N, by the model's formulas for raw bar and for the overhang."""
    e, d = job["material"]["e"], job["stock"]
    bend, headstock = e * math.pi * d**4 / 64, job["machine"]["headstock"]
    slope = lambda stiffness, hold: 1 / (4 / (1000 * stiffness * hold**2) + hold / (3 * bend))
    cantilever = lambda length, c: 1 / (4 * length**2 / (math.pi**2 * bend) + length / c)
    collet = slope(headstock["stiffness"], headstock["hold"])
    if not job["bush"]:
        return cantilever(head - t, collet)
    bush = job["machine"]["bush"]
    long = head - t - bush["gap"] - bush["land"]
    if long <= 0:
        return cantilever(bush["gap"], slope(bush["stiffness"], bush["land"]))
    beta = collet * long / bend
    factor = (math.pi**2 + 2 * beta) / (math.pi**2 + 4 * beta)
    aside = 1 / (2 / (1000 * bush["stiffness"]) + 2 / (1000 * headstock["stiffness"]))
    raw = 1 / (factor * long**2 / (math.pi**2 * bend) + 1 / (aside * long))
    raw = max(raw, cantilever(long, collet))
    return min(raw, cantilever(bush["gap"], slope(bush["stiffness"], bush["land"])))


def first_rpm(beam):
    """The lowest natural frequency, in turns a minute: inverse iteration on four shapes, until it stands still."""
    x, size = beam.x / beam.x[-1], len(beam.k)
    shapes = np.zeros((size, 4))
    for i in range(4):
        shapes[::2, i] = np.cos(math.pi * (i + 0.3) * x)
    before = math.inf
    for _ in range(60):
        shapes = cho_solve(beam.factor, beam.m @ shapes)
        # Ritz: the small problem of the four shapes.
        shapes, _ = np.linalg.qr(shapes)
        k, m = shapes.T @ beam.k @ shapes, shapes.T @ beam.m @ shapes
        root = np.linalg.inv(np.linalg.cholesky(k))
        squared = 1 / np.max(np.linalg.eigvalsh(root @ m @ root.T))
        if abs(squared - before) < 1e-8 * squared:
            break
        before = squared
    return 60 * math.sqrt(squared) / (2 * math.pi)


# Comparison


def allowed(here, there, ours, theirs):
    pooled = (here * ours + there * theirs + 1) / (ours + theirs + 2)
    return ERRORS * math.sqrt(pooled * (1 - pooled) * (1 / ours + 1 / theirs))


def plan_of(program, path):
    """The stored answer with its scatter, or none where there is no plan."""
    done = subprocess.run([program, "plan", str(path), "--format", "json"], capture_output=True, text=True)
    if done.returncode not in (0, 1):
        raise RuntimeError(f"{path}: {done.stderr}")
    plan = json.loads(done.stdout)
    return None if plan["verdict"] == "infeasible" else plan


def varied(path, folder):
    """More jobs made from a demo job, with the name each has in the table."""
    if path.stem in WIDER:
        yield written(text_of(path) | {"scatter": WIDE}, folder / f"{path.stem}-wide.yaml")
    if path.stem == TWIN[0]:
        raw = text_of(path)
        features = raw["shaft"]["features"]
        features.append(next(f for f in features if "cross_hole" in f) | {"at": TWIN[1]})
        yield written(raw, folder / f"{path.stem}-twin.yaml")


def written(raw, path):
    path.write_text(yaml.safe_dump(raw, sort_keys=False), encoding="utf-8")
    return path


def compare(program, path, parts=PARTS, both=False):
    """Rows of the table of one job, and what is wrong."""
    plan = plan_of(program, path)
    if plan is None:
        return [], []
    raw = text_of(path)
    simulation = Simulation(raw if "machine" in raw else with_shop(path, plan), plan)
    wrong, told = simulation.verify(), plan["scatter"]
    samples = draws(simulation.raw, simulation.job, parts, SEED)
    found = [simulation.broken(f) for f in samples]
    if both and found != [simulation.broken(f, skipping=False) for f in samples]:
        wrong.append("skipping changes what is found")
    shares = [("all limits", sum(not f for f in found) / parts, told["good_share"])]
    theirs = {(i, b["check"]): b["share"] for i, stage in enumerate(told["stages"]) for b in stage["broken"]}
    for key in sorted(theirs.keys() | set().union(*found)):
        here, there = sum(key in f for f in found) / parts, theirs.get(key, 0.0)
        if here * parts >= FEW or there * told["samples"] >= FEW:
            shares.append((f"stage {key[0] + 1}: {key[1]} fails", here, there))
    rows = []
    for what, here, there in shares:
        limit = allowed(here, there, parts, told["samples"])
        agrees = abs(here - there) <= limit
        rows.append((path.stem, what, here, there, limit, "agrees" if agrees else "DIFFERS"))
        if not agrees:
            wrong.append(f"{what}: {here:.4f} here, {there:.4f} there, {limit:.4f} allowed")
    return rows, wrong


# Jobs, and checks that fail in some of their parts: fewer say nothing.
LEAST_JOBS, LEAST_CHECKS = 10, 20


def main(program, paths=None, both=False):
    """0 when all shares agree."""
    begun, jobs, checks, wrong = time.monotonic(), 0, 0, []
    demo = sorted(pathlib.Path("demo").glob("*.yaml"))
    demo += sorted(p for p in pathlib.Path("demo/shop").glob("*.yaml") if p.name != "shop.yaml")
    print(f"{'job':24} {'share of parts':30} {'here':>7} {'there':>7} {'allowed':>8}")
    with tempfile.TemporaryDirectory() as folder:
        more = [job for path in demo for job in varied(path, pathlib.Path(folder))]
        for path in paths or demo + more:
            parts = PARTS_WIDE if path.stem.endswith("-wide") else PARTS
            rows, differs = compare(program, path, parts, both)
            jobs, checks = jobs + bool(rows), checks + max(len(rows) - 1, 0)
            wrong += [f"{path.stem}: {line}" for line in differs]
            for name, what, here, there, limit, verdict in rows:
                print(f"{name:24} {what:30} {here:7.4f} {there:7.4f} {limit:8.4f}  {verdict}", flush=True)
    print(f"{jobs} jobs, {PARTS} parts each, {PARTS_WIDE} with wide spreads; {checks} checks that fail; "
          f"{time.monotonic() - begun:.0f} s")
    for line in wrong:
        print(f"    {line}")
    if paths is None and (jobs < LEAST_JOBS or checks < LEAST_CHECKS):
        print("too little was simulated")
        return 1
    return 1 if wrong else 0


if __name__ == "__main__":
    names = [a for a in sys.argv[1:] if not a.startswith("--")]
    if not names:
        sys.exit(__doc__)
    sys.exit(main(names[0], [pathlib.Path(n) for n in names[1:]] or None, "--no-skipping" in sys.argv))
