"""A finished plan looked at from outside: its rules, every state of its stages, its times, and `at`."""

import math
from collections import Counter

import numpy as np
from cutting import (PLUNGE, drill_feed, driven_rpm, driven_work, finish_feed, force, net_radial, pull_back_change, tandem, tandem_change,
                     tooth_feed, top_rpm, travels)
from job import SAME, section_at
from state import State, share

# Statics are exact at nodes on any mesh, so values at the place the plan tells agree to rounding.
SAME_PLACE = 1e-6
# The program adds up the edge at a fixed number of points.
FORCE = 1e-4
# The model asks for the first frequency within 0.1 %.
NEAR = 1e-3
# The largest of a row of nodes: the true one may lie between two of theirs.
LARGEST = 1e-2
# Lengths and times are sums of the same few numbers.
EXACT = 1e-6
# Pitch and passes of threads of 60 degrees, as docs/model.md has them; hard materials take more.
THREAD_PASSES = [(0.75, 4), (1, 5), (1.25, 7), (1.5, 7), (1.75, 9.5), (2, 10), (2.5, 11.75), (3, 13.75), (4, 14.5), (6, 16.5), (8, 20)]
THREAD_PASSES_HARD = [(0.5, 5.5), (0.75, 6), (1, 8), (1.25, 9), (1.5, 10), (1.75, 12), (2, 12), (2.5, 14), (3, 16), (4, 18), (6, 22), (8, 25)]
# A state passes up to this; a speed that was lowered stays 1e-4 below its limit.
PASSES = 1 + 1e-3
CHATTER_STEPS = 12
# Checks that are the worst over places.
AT_PLACES = ("stiffness", "span_stiffness", "sag", "bore")


class Recheck:
    def __init__(self, job, plan, step):
        self.job, self.plan, self.step, self.wrong = job, plan, step, []
        self.states, self.worst, self.compared = 0, {}, Counter()
        # The largest share of the chatter limit found, over the one told of its stage.
        self.over = 0.0
        machine = job["machine"]
        spindle = machine.get("counter_spindle")
        self.collet = next((c for c in spindle["collets"] if c["name"] == plan["collet"]), None) if spindle else None
        self.end = job["length"] + machine.get("part_off", {}).get("width", 3)
        self.regrips = plan["headstock_regrips_mm"]

    def complain(self, text):
        self.wrong.append(text)

    def same(self, what, ours, theirs, near=EXACT):
        if not abs(ours - theirs) <= near * max(abs(ours), abs(theirs)) + 1e-9:
            self.complain(f"{what}: here {ours:.9g}, in the plan {theirs:.9g}")
        elif abs(theirs) > 1e-9:
            kind = what.split(" at ")[0]
            self.compared[kind] += 1
            self.worst[kind] = max(self.worst.get(kind, 0.0), abs(ours / theirs - 1))

    # Places

    def heads(self, t, low, high):
        """Places of the headstock's nose on the bar while the tool is at `t` within a stage from `low` to `high`."""
        headstock = self.job["machine"]["headstock"]
        if not self.job["bush"]:
            ends = [r for r in self.regrips if r >= t - SAME] + [self.end]
            nexts = {ends[0]} | {e for e in ends[1:2] if abs(ends[0] - t) < SAME and t < high - SAME}
            if abs(ends[0] - t) < SAME and t <= low + SAME and len(ends) > 1:
                nexts = {ends[1]}
            return [b + self.job["machine"]["no_bush"]["collet_gap"] for b in sorted(nexts)]
        face, far = t + self.job["machine"]["bush"]["gap"], headstock["nearest"] + headstock["stroke"]
        before = [r for r in self.regrips if r < t - SAME]
        here = any(abs(r - t) < SAME for r in self.regrips)
        lasts = [before[-1] if before else 0.0]
        if here:
            lasts = [t] if t <= low + SAME else lasts if t >= high - SAME else lasts + [t]
        # Where there is no plan its stages are told without re-grips: the headstock stands somewhere on its stroke.
        nearest = 0.0 if self.plan["verdict"] != "infeasible" else headstock["nearest"]
        return [face + max(far - (t - last), nearest) for last in lasts]

    def rules(self):
        job, plan, machine = self.job, self.plan, self.job["machine"]
        stages, gap = plan["stages"], machine["bush"]["gap"] if job["bush"] else 0.0
        feasible = plan["verdict"] != "infeasible"
        if feasible and abs(stages[-1]["to_mm"] - self.end) > SAME:
            self.complain(f"the last stage ends at {stages[-1]['to_mm']}, not at {self.end}")
        if stages and (stages[0]["from_mm"] != 0 or stages[0]["grip"]):
            self.complain("the first stage is not free from 0")
        if [s["from_mm"] for s in stages[1:]] != [s["to_mm"] for s in stages[:-1]]:
            self.complain("stages do not follow one another")
        if feasible and plan["hand_overs_mm"] != [s["to_mm"] for s in stages[:-1]]:
            self.complain("hand-overs are not the borders of stages")
        if job["centre"] and feasible:
            spindle, told = machine["counter_spindle"], plan["centre"]
            if len(stages) > 1 or told is None or abs(told["force_n"] - spindle["centre"]["force"]) > SAME:
                self.complain(f"a centre holds the front of one stage, here {len(stages)} with {told}")
            if job["length"] + gap > spindle["farthest"] + SAME:
                self.complain("the centre does not follow so far")
        for s in stages:
            if s["grip"]:
                self.grip(s, gap)
            for r in s["regrips_mm"]:
                if not s["grip"] and r > s["from_mm"] + SAME:
                    self.complain(f"re-grip at {r} while the front is free")
        stops, stroke = [0.0] + self.regrips + [self.end], machine["headstock"]["stroke"]
        for a, b in zip(stops, stops[1:]):
            b = self.runs_out(a, b)
            if feasible and b - a > stroke + SAME:
                self.complain(f"{b - a} mm from re-grip to re-grip, stroke {stroke}")
        for t in set(plan["hand_overs_mm"] + self.regrips):
            self.stop(t)

    def runs_out(self, a, b):
        """Where the bar is fed to between two places: beyond the end of a segment by the lag of a tandem."""
        ends = [s["to_mm"] for s in self.plan["segments"] if a + SAME < s["to_mm"] <= b + SAME and self.ends(s)]
        return max([b] + [end + self.job["tandem"]["lag"] for end in ends])

    def ends(self, s):
        """Whether a tandem ends a segment at the end of this piece of it."""
        section = self.job["sections"][s["section"] - 1]
        both = s["work"] in ("turn", "thread") and tandem(self.job, section)
        return both and (s["travels"] > 1 or abs(s["to_mm"] - section["to"]) < SAME)

    def line(self, t):
        """Where a stop leaves its line: where the tool stands that makes the size."""
        s = self.job["sections"][section_at(self.job, t)]
        if s["from"] + SAME < t < s["to"] - SAME and s["kind"] != "groove" and tandem(self.job, s) and len(travels(self.job, s)) < 2:
            return max(s["from"], t - self.job["tandem"]["lag"])
        return t

    def grip(self, stage, gap):
        job, grip, collet = self.job, stage["grip"], self.collet
        spindle = job["machine"]["counter_spindle"]
        nose, front = grip["nose_mm"], grip["nose_mm"] - collet["hold"]
        what = f"grip {front} to {nose}"
        self.same(f"front of a grip at {nose}", front, grip["from_mm"])
        on = [s for s in job["sections"] if front >= s["from"] - SAME and nose <= s["to"] + SAME]
        low, high = collet["range"]
        if not on or on[0]["kind"] != "plain" or not on[0]["grip"]:
            self.complain(f"{what}: not on one plain cylinder that may be held")
        elif not low - SAME <= on[0]["turned"] <= high + SAME:
            self.complain(f"{what}: {on[0]['turned']} is out of the collet's range")
        before = [s["largest"] for s in job["sections"] if s["from"] < nose - SAME]
        if max(before) > collet["passes"] + SAME or max(before) > spindle["bore"]:
            self.complain(f"{what}: {max(before)} does not pass")
        if nose > spindle["bore_depth"] + SAME:
            self.complain(f"{what}: deeper than the bore")
        for f in job["features"]:
            low, high = span_of(f)
            if low < nose - SAME and high > front + SAME:
                self.complain(f"{what}: over {f}")
        for t in (stage["from_mm"], stage["to_mm"]):
            for head in [t + gap] if job["bush"] else self.heads(t, stage["from_mm"], stage["to_mm"]):
                if not spindle["nearest"] - SAME <= head - nose <= spindle["farthest"] + SAME:
                    self.complain(f"{what}: {head - nose} mm from the bush at {t}")

    def stop(self, t):
        """A stop stands at a shoulder, or where its section may be interrupted."""
        for s in self.job["sections"]:
            if s["from"] + SAME < t < s["to"] - SAME and s["interrupt"] == "never" and s["kind"] != "groove":
                self.complain(f"a stop at {t} inside a section that says never")

    # States

    def states_of(self, stage):
        low, high = stage["from_mm"], stage["to_mm"]
        places = set(np.linspace(low, high, max(2, math.ceil((high - low) / self.step) + 1)))
        places |= {x for s in self.plan["segments"] for x in (s["from_mm"], s["to_mm"]) if low <= x <= high}
        # Bar that is fed on for driven work behind the part-off is neither cut there nor turning: only `drill` asks about it.
        places |= {c["turned_mm"] for c in stage["checks"] if c["turned_mm"] <= high + SAME} | set(stage["regrips_mm"])
        kept = []
        for t in sorted(places):
            if not kept or t - kept[-1] > SAME:
                kept.append(t)
        return kept

    def stage(self, stage):
        job, told = self.job, {c["check"]: c for c in stage["checks"]}
        low, high, nose = stage["from_mm"], stage["to_mm"], stage["grip"] and stage["grip"]["nose_mm"]
        segments = [s for s in self.plan["segments"] if s["stage"] == stage["number"]]
        found, near_told, longest = {}, {}, 0.0
        self.placed = {}
        chattered = -math.inf
        for t in self.states_of(stage):
            speeds = [s["rpm"] for s in segments if s["from_mm"] - SAME <= t <= s["to_mm"] + SAME]
            if t > job["length"] - SAME and self.plan["part_off_rpm"]:
                speeds.append(self.plan["part_off_rpm"])
            for head in self.heads(t, low, high):
                state = State(job, t, self.collet, nose, head)
                state.turns = [job["sections"][s["section"] - 1] for s in segments
                               if s["work"] in ("turn", "thread") and s["from_mm"] - SAME <= t <= s["to_mm"] + SAME]
                self.states += 1
                longest = max(longest, state.unsupported)
                every = state.checks(max(speeds, default=0.0))
                for check, (demand, limit) in every.items():
                    note(found, near_told, told, check, t, demand, limit)
                    if check in AT_PLACES and check in told and abs(told[check]["turned_mm"] - t) < SAME:
                        self.placed.setdefault(check, []).append(state.at_place(check, told[check]["at_mm"], every))
                wants = [x for x in ("chatter",) if x in told and abs(told[x]["turned_mm"] - t) < SAME]
                if wants or t - chattered > (high - low) / CHATTER_STEPS:
                    chattered = t
                    self.chatter(state, segments, t, told)
        self.drills(stage, told, found, near_told)
        self.compare(stage, told, found, near_told)
        self.same(f"longest unsupported length at stage {stage['number']}", longest, stage["unsupported_max_mm"])

    def chatter(self, state, segments, t, told):
        """One-sided: the plan may take a cut for nearer to its limit than it is, never for farther."""
        worst, bound, easiest = 0.0, 0.0, math.inf
        least = None
        for s in segments:
            if s["from_mm"] - SAME <= t <= s["to_mm"] + SAME and s["work"] in ("turn", "thread"):
                least = least or state.beam.least_real(t, self.job["limits"]["damping"])
                exact, by_bound, _ = state.chatter(self.job["sections"][s["section"] - 1], least)
                worst, bound, easiest = max(worst, exact), max(bound, by_bound), min(easiest, exact)
        if worst > PASSES:
            self.complain(f"chatter at {t}: {worst:.4f} of the limit")
        said = told.get("chatter")
        if said is None:
            if worst > 0 and told:
                self.complain(f"chatter is not told, {worst:.4f} at {t}")
            return
        here = abs(said["turned_mm"] - t) < SAME
        # At a border there are two cuts; which of them is told is not said.
        if here and math.isfinite(easiest) and easiest > said["utilisation"] * (1 + NEAR) + EXACT:
            self.complain(f"chatter at {t}: {easiest:.5f} of the limit, told as {said['utilisation']:.5f}")
        if worst > 1e-3:
            self.over = max(self.over, worst / said["utilisation"])
        if here and said["utilisation"] > bound * (1 + NEAR) + EXACT:
            self.complain(f"chatter at {t}: told as {said['utilisation']:.5f}, its bound is {bound:.5f}")

    def drills(self, stage, told, found, near_told):
        works = list(driven_work(self.job))
        for f in self.plan["features"]:
            if f["stage"] != stage["number"]:
                continue
            for at, thrust in [(at, n) for kind, at, n in works if kind == f["feature"] and abs(at - f["at_mm"]) < SAME]:
                self.same(f"force of driven work at {at}", thrust, f["thrust_n"])
                t = f["turned_mm"]
                for head in self.heads(t, stage["from_mm"], stage["to_mm"]) if t <= self.end else []:
                    nose = stage["grip"] and stage["grip"]["nose_mm"]
                    state = State(self.job, min(t, self.end), self.collet, nose, head).at_too(at)
                    moved = thrust * state.beam.flexibility(state.beam.node(at))[0]
                    note(found, near_told, told, "drill", t, moved, self.job["limits"]["drill"])

    def compare(self, stage, told, found, near_told):
        number = stage["number"]
        for check, (demand, limit, at) in found.items():
            if share(check, demand, limit) > PASSES:
                self.complain(f"stage {number}: {check} at {at}: {demand:.6g} breaks {limit:.6g}")
            # Where there is no plan, stages are told as far as they go, without their checks.
            if not told:
                continue
            if check not in told:
                self.complain(f"stage {number}: {check} is not told")
                continue
            worst = told[check]["utilisation"]
            more = LARGEST if check in AT_PLACES else NEAR
            if min(share(check, demand, limit), 1000) > worst * (1 + more) + EXACT:
                self.complain(f"stage {number}: {check} at {at}: {demand:.6g} is worse than what is told, "
                              f"{told[check]['demand']:.6g} at {told[check]['turned_mm']}")
        for check, (demand, limit) in near_told.items():
            near = NEAR
            if check in AT_PLACES:
                # At a stop the headstock stands in two places; one of them is told.
                demand = min(self.placed[check], key=lambda d: abs(d - told[check]["demand"]))
                near = SAME_PLACE if check != "bore" else NEAR
            self.same(f"{check} at {told[check]['turned_mm']} in stage {number}", demand, told[check]["demand"], near)
            self.same(f"limit of {check} at stage {number}", limit, told[check]["limit"])

    def release(self, before, after):
        """At a hand-over the collet opens at the old nose; the headstock holds, before or after a shared re-grip."""
        if not before["grip"]:
            self.pick_up(before)
            return
        t, old = before["to_mm"], before["grip"]["nose_mm"]
        told = next((c for c in before["checks"] if c["check"] == "release"), None)
        drops = []
        for head in {*self.heads(t, before["from_mm"], t), *self.heads(t, t, after["to_mm"])}:
            state = State(self.job, t, self.collet, None, head, open_nose=old)
            drops.append(abs(state.beam.sag()[state.beam.node(old)]))
        if not before["checks"]:
            return
        if told is None:
            self.complain(f"release at {t} is not told")
        elif not any(abs(told["demand"] - d) <= SAME_PLACE * d + 1e-12 for d in drops):
            self.complain(f"release at {t}: here {drops}, in the plan {told['demand']}")
        elif told["demand"] > told["limit"] * PASSES or told["limit"] != self.job["limits"]["release"]:
            self.complain(f"release at {t} breaks its limit")

    def pick_up(self, before):
        """At the first hand-over the collet comes over the free front."""
        t, told = before["to_mm"], next((c for c in before["checks"] if c["check"] == "pick_up"), None)
        if not before["checks"]:
            return
        if told is None:
            self.complain(f"pick_up at {t} is not told")
            return
        off = [State(self.job, t, self.collet, None, head).pick_up() for head in self.heads(t, before["from_mm"], t)]
        self.same(f"pick_up at {t}", min(off, key=lambda d: abs(d - told["demand"])), told["demand"], SAME_PLACE)
        self.same(f"limit of pick_up at {t}", self.job["limits"]["pick_up"], told["limit"])
        if told["demand"] > told["limit"] * PASSES:
            self.complain(f"pick_up at {t} breaks its limit")

    def cut(self):
        """The change of the diameter along the finishing travel."""
        job = self.job
        for stage in self.plan["stages"]:
            told = next((c for c in stage["checks"] if c["check"] == "cut"), None)
            worst = 0.0
            for s in self.plan["segments"]:
                section = job["sections"][s["section"] - 1]
                if s["stage"] != stage["number"] or s["work"] != "turn":
                    continue
                limit = job["limits"]["share"] * section["width"]
                worst = max(worst, self.change(stage, s, section) / limit)
            if worst > PASSES and self.plan["verdict"] != "infeasible":
                self.complain(f"stage {stage['number']}: cut takes {worst:.4f} of its limit")
            # Without a bush it is a difference of two largest values along the piece.
            near = NEAR if job["bush"] else LARGEST
            if told and not abs(worst - told["utilisation"]) <= near * worst + 1e-5:
                self.complain(f"stage {stage['number']}: cut is {worst:.6f} here, {told['utilisation']:.6f} there")
            elif not told and stage["checks"] and worst > 1e-5:
                self.complain(f"stage {stage['number']}: cut is not told")

    def change(self, stage, s, section):
        job, cuts = self.job, travels(self.job, section)
        if not job["bush"]:
            nose = stage["grip"] and stage["grip"]["nose_mm"]
            # Between a centre and the collet the bar is softest somewhere inside, so the places are closer.
            step = self.step / (8 if job["centre"] else 1)
            places = np.linspace(s["from_mm"], s["to_mm"], max(3, math.ceil((s["to_mm"] - s["from_mm"]) / step) + 1))
            moved = []
            for t in places:
                # The piece's own headstock: where it stands while this segment is cut.
                middle = min(max(t, s["from_mm"] + 1e-3), s["to_mm"] - 1e-3)
                head = self.heads(middle, stage["from_mm"], stage["to_mm"])[0]
                moved.append(State(job, t, self.collet, nose, head).tool_deflection(section))
            return 2 * (max(moved) - min(moved))
        if tandem(job, section):
            length = section["to"] - section["from"] if len(cuts) < 2 else s["to_mm"] - s["from_mm"]
            return tandem_change(job, section, length)
        if len(cuts) < 2:
            return 0.0
        newtons = net_radial(job, cuts[-1], finish_feed(job, section))
        return pull_back_change(job, s["to_mm"] - s["from_mm"], section["turned"] + 2 * sum(cuts[-1]), newtons)

    def torque(self):
        job, last = self.job, self.plan["stages"][-1]
        told = next((c for c in last["checks"] if c["check"] == "torque"), None)
        if self.plan["verdict"] == "infeasible" or not last["grip"]:
            return
        feed, metal = 0.15 if job["feed"] is None else job["feed"], job["material"]
        chip, width = PLUNGE * feed, job["machine"].get("part_off", {}).get("width", 3)
        main = metal["kc11"] * chip ** -metal["mc"] * chip * width
        demand = max([main * job["stock"] / 2000] + [w.get("torque", 0.0) for w in job["back_work"]])
        spindle = job["machine"]["counter_spindle"]
        limit = spindle.get("friction", 0.15) * self.collet["clamp_force"] * last["grip"]["diameter_mm"] / 2000
        if told is None:
            self.complain("torque is not told")
            return
        self.same("torque", job["limits"]["torque_margin"] * demand, told["demand"])
        self.same("limit of torque", limit, told["limit"])
        if told["demand"] > limit * PASSES:
            self.complain("torque breaks its limit")

    # Speeds and times

    def times(self):
        job, plan, machine = self.job, self.plan, self.job["machine"]
        overhead, total = machine.get("segment_overhead_s", 1.2), 0.0
        for s in plan["segments"]:
            section = job["sections"][s["section"] - 1]
            self.speed(s, section)
            count, seconds = segment_time(job, s, section)
            if seconds is not None and self.ends(s):
                lag, rapid = job["tandem"]["lag"], 1000 * machine.get("rapid", 20)
                seconds += 60 * lag / (finish_feed(job, section) * s["rpm"]) + 60 * lag / rapid
            if seconds is not None:
                self.same(f"time at {s['from_mm']} to {s['to_mm']} ({s['work']})", seconds + overhead * count, s["time_s"])
        for stage in plan["stages"]:
            self.same("time of a stage", sum(s["time_s"] for s in plan["segments"] if s["stage"] == stage["number"]),
                      stage["time_s"])
        if plan["verdict"] == "infeasible":
            return
        t = plan["time_s"]
        shared = set(plan["hand_overs_mm"]) & set(self.regrips)
        spindle = machine.get("counter_spindle") or {}
        stops = len(plan["hand_overs_mm"]) * spindle.get("hand_over_s", 0) \
            + len(self.regrips) * machine["headstock"]["regrip_s"] - len(shared) * machine.get("shared_stop_saving_s", 0)
        # A centre comes and leaves in the time of one hand-over.
        stops += spindle["hand_over_s"] if job["centre"] else 0
        self.same("time of stops", stops, t["hand_overs"] + t["regrips"])
        self.same("time of turning", sum(s["time_s"] for s in plan["segments"]), t["cutting"] + t["segments"])
        for f in plan["features"]:
            self.same(f"time of {f['feature']}", self.feature_time(f), f["time_s"])
        self.same("time of features", sum(f["time_s"] for f in plan["features"]), t["features"])
        self.same("time of part-off", machine.get("part_off", {}).get("time_s", 8), t["part_off"])
        self.same("time of back work", sum(w["time_s"] for w in job["back_work"]), t["back_work"])
        lines = {round(w["at_mm"], 6) for w in plan["witnesses"] if w["interrupt"] == "avoid" and w["cause"] != "feature"}
        self.same("penalties", len(lines) * job["limits"]["avoid_s"], t["penalties"])
        lines_at = [self.line(x) for x in plan["hand_overs_mm"] + self.regrips]
        inside = {round(x, 6) for x in lines_at if self.inside(x)}
        told = {round(w["at_mm"], 6) for w in plan["witnesses"] if w["cause"] in ("hand_over", "regrip")}
        if inside != told:
            self.complain(f"lines of stops: {sorted(inside)} here, {sorted(told)} in the plan")
        self.same("total time", sum(v for k, v in t.items() if k not in ("total", "penalties")), t["total"])
        length = job["length"] + machine.get("part_off", {}).get("width", 3) + machine.get("facing", 0.5)
        out_of_reach = machine["headstock"]["nearest"] + machine["headstock"]["hold"] + machine.get("bar_end", 20)
        pieces = max(math.floor((job["bar_length"] - out_of_reach) / length + 1e-9), 0)
        self.same("pieces per bar", pieces, plan["quote"]["pieces_per_bar"])
        self.same("remnant", job["bar_length"] - pieces * length, plan["quote"]["remnant_mm"])
        kilos = length * math.pi / 4 * job["stock"] ** 2 * job["material"]["rho"] * 1000
        self.same("material", kilos, plan["quote"]["material_kg"])
        if job["rates"]:
            # Seconds charged for lines are no machine time: the total is without them.
            cost = t["total"] / 3600 * job["rates"]["machine_per_hour"] + kilos * job["rates"]["material_per_kg"]
            self.same("cost", cost, plan["quote"]["cost"]["total"])

    def inside(self, x):
        return any(s["from"] + SAME < x < s["to"] - SAME and s["kind"] != "groove" for s in self.job["sections"])

    def speed(self, s, section):
        job = self.job
        if s["work"] == "whirl":
            return
        cuts = travels(job, section)
        before = section["turned"] + 2 * sum(cuts[-1]) if cuts else job["stock"]
        top = top_rpm(job, before if s["work"] in ("turn", "thread") else job["stock"], None)
        where = f"rpm at {s['from_mm']} ({s['work']})"
        if s["slowed_by"] is None:
            self.same(where, top, s["rpm"])
        elif not top * job["floor"] * (1 - EXACT) <= s["rpm"] <= top * (1 + EXACT):
            self.complain(f"{where}: slowed to {s['rpm']}, from {top}, floor {job['floor']}")
        if s["work"] == "turn":
            if len(cuts) != s["travels"] and cuts:
                self.complain(f"{where}: {s['travels']} travels, here {len(cuts)}")
            self.same(f"feed at {s['from_mm']}", finish_feed(job, section), s["feed_mm"])
            if (s.get("lag_mm") is not None) != tandem(job, section):
                self.complain(f"{where}: a second tool at {s.get('lag_mm')}, here {tandem(job, section)}")

    def feature_time(self, f):
        job = self.job
        if f["feature"] == "cross_hole":
            given = next(g for g in job["features"] if g.get("cross_hole") and abs(g["at"] - f["at_mm"]) < SAME)
            d = given["cross_hole"]
            deep = job["sections"][section_at(job, given["at"])]["turned"]
            return 60 * deep / (drill_feed(job, d) * driven_rpm(job, "drill", d)) + 4
        if f["feature"] == "keyseat":
            given = next(g for g in job["features"] if g.get("keyseat") and abs(g["to"] - f["at_mm"]) < SAME)
            width, depth = given["keyseat"]
            tooth = tooth_feed(job, width) * driven_rpm(job, "mill", width)
            return 60 * ((given["to"] - given["from"]) / (2 * tooth) + depth / tooth) + 2
        if f["feature"] == "flats":
            s = next(s for s in job["sections"] if s["flats"] and abs(s["to"] - f["at_mm"]) < SAME)
            width = math.sqrt(s["turned"] ** 2 - s["beam"][0] ** 2)
            return s["flats"] * (60 * (s["to"] - s["from"]) / (4 * tooth_feed(job, width) * driven_rpm(job, "mill", width)) + 2)
        return 4.0

    def all(self):
        self.rules()
        for stage in self.plan["stages"]:
            self.stage(stage)
        for a, b in zip(self.plan["stages"], self.plan["stages"][1:]):
            self.release(a, b)
        self.cut()
        if self.plan["stages"]:
            self.torque()
        self.times()
        return self.wrong


def span_of(feature):
    if "cross_hole" in feature:
        return feature["at"] - feature["cross_hole"] / 2, feature["at"] + feature["cross_hole"] / 2
    if "keyseat" in feature:
        return feature["from"], feature["to"]
    return math.inf, -math.inf


def note(found, near_told, told, check, t, demand, limit):
    """Keeps the worst of a check, and its value where the plan says it is worst."""
    if check not in found or share(check, demand, limit) > share(check, *found[check][:2]):
        found[check] = (demand, limit, t)
    said = told.get(check)
    if said and abs(said["turned_mm"] - t) < SAME:
        if check not in near_told or share(check, demand, limit) > share(check, *near_told[check]):
            near_told[check] = (demand, limit)


def segment_time(job, s, section):
    """Travels and seconds of a piece without its overheads; no seconds where a slowed rough travel's speed is not told."""
    length, rough = s["to_mm"] - s["from_mm"], 0.15 if job["feed"] is None else job["feed"]
    if s["work"] == "as_drawn":
        return None, None
    if s["work"] == "plunge":
        plunges = math.ceil(length / 3 - SAME)
        deep = (job["stock"] - section["turned"]) / 2
        return plunges, plunges * 60 * deep / (PLUNGE * rough * s["rpm"])
    if s["work"] == "whirl":
        ring_rpm = 1000 * job["vc"] / (math.pi * 1.5 * job["stock"])
        rpm = 0.08 * 6 * ring_rpm / (math.pi * job["stock"])
        return 1, 60 * length / (section["pitch"] * rpm)
    seconds, wide = 0.0, job["stock"]
    cuts = travels(job, section) or [[0.0]]
    if s["slowed_by"] and len(cuts) > 1:
        return None, None
    for turn, depths in enumerate(cuts):
        last = turn == len(cuts) - 1
        rpm = s["rpm"] if last and s["work"] == "turn" else top_rpm(job, wide, None)
        seconds += 60 * length / ((finish_feed(job, section) if last else rough) * (s["rpm"] if len(cuts) == 1 else rpm))
        wide -= 2 * sum(depths)
    count = len(cuts)
    if s["work"] == "thread":
        hard = any(word in (job["material"]["class"] or "") for word in ("tool", "stainless", "titanium", "cobalt", "nickel", "heat_resistant"))
        pitches, counts = zip(*(THREAD_PASSES_HARD if hard else THREAD_PASSES))
        passes = math.floor(float(np.interp(section["pitch"], pitches, counts)) + 0.5)
        wanted = 0.75 * min(1000 * job["vc"] / (math.pi * section["turned"]), top_rpm(job, 1e-9, None))
        rpm = min(wanted, 1000 * job["machine"].get("rapid", 20) / section["pitch"], s["rpm"])
        seconds += passes * (60 * length / (section["pitch"] * rpm) + 1)
    return count, seconds
