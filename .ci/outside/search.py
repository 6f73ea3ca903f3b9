"""Whether a job can be made at all, by a plain search: to contradict a verdict that it cannot.

Next to a bush only. Stations are shoulders, borders of segments and an even grid; noses stand at the ends of their lands
and on the same grid. Every state of a way found is looked at again, closely, before it counts.
"""

import math

import numpy as np
from cutting import PLUNGE, driven_work, obeys, tandem, top_rpm, travels
from job import SAME
from plan import PASSES, span_of
from state import State, share

GRID, NEXT, CLOSE = 10.0, 5.0, 1.0


class TooMuch(Exception):
    """More states than the search may look at."""


def pieces(job, s):
    """Fewest equal segments of a section that needs several travels next to a bush."""
    cuts, length = travels(job, s), s["to"] - s["from"]
    if len(cuts) < 2 or s["kind"] in ("groove", "thread"):
        return 1
    return next((n for n in range(1, 2001) if obeys(job, s, cuts, length / n)), None)


class Search:
    def __init__(self, job, collet, budget):
        self.job, self.collet, self.left = job, collet, budget
        machine = job["machine"]
        self.gap = machine["bush"]["gap"]
        self.far = machine["headstock"]["nearest"] + machine["headstock"]["stroke"]
        self.stroke = machine["headstock"]["stroke"]
        self.end = job["length"] + machine.get("part_off", {}).get("width", 3)
        self.known = {}
        self.possible = True
        # (place, whether the feed may stop there)
        self.stations = [0.0]
        for s in job["sections"]:
            count = pieces(job, s)
            if count is None or count > 1 and s["interrupt"] == "never":
                self.possible = False
                return
            # A tandem would stop near its shoulders where only one tool has begun.
            free = s["interrupt"] != "never" and not tandem(job, s) or s["kind"] == "groove"
            inner = count if count > 1 else math.ceil((s["to"] - s["from"]) / GRID) if free else 1
            self.stations += list(np.linspace(s["from"], s["to"], inner + 1)[1:])
        self.stations.append(self.end)
        self.noses = self.lands()

    def lands(self):
        """Noses that may hold, by the rules that ask for the shaft alone."""
        if self.collet is None:
            return []
        job, out, c = self.job, [], self.collet
        spindle = job["machine"]["counter_spindle"]
        for s in job["sections"]:
            if s["kind"] != "plain" or not s["grip"] or not c["range"][0] - SAME <= s["turned"] <= c["range"][1] + SAME:
                continue
            low, high = s["from"] + c["hold"], s["to"]
            if low > high + SAME:
                continue
            for nose in {*np.linspace(low, high, math.ceil((high - low) / GRID) + 1)}:
                before = max(x["largest"] for x in job["sections"] if x["from"] < nose - SAME)
                spans = [span_of(f) for f in job["features"]]
                if before <= min(c["passes"], spindle["bore"]) + SAME and nose <= spindle["bore_depth"] \
                        and not any(a < nose - SAME and b > nose - c["hold"] + SAME for a, b in spans):
                    out.append(float(nose))
        return out

    def holds(self, t, nose, last, close=False):
        """Whether a state passes, at the lowest speed the job allows."""
        key = (round(t, 6), nose, round(last, 6))
        if key not in self.known:
            self.known[key] = self.look(t, nose, last)
        return self.known[key]

    def look(self, t, nose, last):
        job, spindle = self.job, self.job["machine"].get("counter_spindle")
        if t - last > self.stroke + SAME:
            return False
        if nose is not None and not spindle["nearest"] - SAME <= t + self.gap - nose <= spindle["farthest"] + SAME:
            return False
        if self.left <= 0:
            raise TooMuch
        self.left -= 1
        state = State(job, t, self.collet, nose, t + self.gap + self.far - (t - last))
        inside = [s for s in job["sections"] if s["from"] - SAME <= t <= s["to"] + SAME]
        widest = [s["turned"] + 2 * sum(c[-1]) if s["kind"] in ("plain", "taper", "flats") and (c := travels(job, s))
                  else job["stock"] for s in inside] + ([job["stock"]] if t >= job["length"] - SAME else [])
        rpm = max(top_rpm(job, d, None) for d in widest) * job["floor"]
        if any(share(c, *v) > PASSES for c, v in state.checks(rpm).items()):
            return False
        if any(state.chatter(s)[1] > 1 for s in inside if s["kind"] in ("plain", "taper", "flats")):
            # Its bound does not pass: is it really so?
            least = state.beam.least_real(t, job["limits"]["damping"])
            if any(state.chatter(s, least)[0] > PASSES for s in inside if s["kind"] in ("plain", "taper", "flats")):
                return False
        return self.drill(t, state)

    def drill(self, t, state):
        job = self.job
        for _, at, thrust in driven_work(job):
            if abs(at + job["reaches"][0] - t) < SAME:
                beam = State(job, t, self.collet, state.nose, state.head).at_too(at).beam
                if thrust * beam.flexibility(beam.node(at))[0] > job["limits"]["drill"] * PASSES:
                    return False
        return True

    def between(self, a, b, step):
        marks = {*np.linspace(a, b, max(2, math.ceil((b - a) / step) + 1))}
        marks |= {at + self.job["reaches"][0] for _, at, _ in driven_work(self.job)}
        return sorted(float(m) for m in marks if a - SAME <= m <= b + SAME)

    def runs(self, i, nose, last, step=NEXT):
        a, b = self.stations[i], self.stations[i + 1]
        # Where a tandem ends a segment, the bar goes on until the finishing tool is there too.
        ends = [s for s in self.job["sections"] if s["from"] - SAME <= a and b <= s["to"] + SAME and tandem(self.job, s)
                and (abs(b - s["to"]) < SAME or len(travels(self.job, s)) > 1)]
        if ends:
            out, spindle = b + self.job["tandem"]["lag"], self.job["machine"].get("counter_spindle")
            if out - last > self.stroke + SAME or nose is not None and out + self.gap - nose > spindle["farthest"] + SAME:
                return False
        return all(self.holds(t, nose, last) for t in self.between(a, b, step))

    def drops(self, t, old, last):
        state = State(self.job, t, self.collet, None, t + self.gap + self.far - (t - last), open_nose=old)
        return abs(state.beam.sag()[state.beam.node(old)])

    def lets_go(self, t, nose, last):
        """Whether the collet may open at the old nose, or come over a front that was free."""
        limits = self.job["limits"]
        if nose is not None:
            return self.drops(t, nose, last) <= limits["release"] * PASSES
        free = State(self.job, t, self.collet, None, t + self.gap + self.far - (t - last))
        return free.pick_up() <= limits["pick_up"] * PASSES

    def may_end(self, nose):
        spindle = self.job["machine"].get("counter_spindle")
        if nose is None:
            return self.job["falls"]
        job, metal = self.job, self.job["material"]
        chip, width = PLUNGE * (0.15 if job["feed"] is None else job["feed"]), self.end - job["length"]
        torque = metal["kc11"] * chip ** -metal["mc"] * chip * width * job["stock"] / 2
        held = next(s["turned"] for s in job["sections"] if s["from"] < nose <= s["to"] + SAME)
        carries = spindle.get("friction", 0.15) * self.collet["clamp_force"] * held / 2
        return torque * job["limits"]["torque_margin"] <= carries * PASSES

    def way(self):
        """Stations, noses and last re-grips of a way, or none. Raises `TooMuch`."""
        if not self.possible:
            return None
        # Where the collet can never carry the part-off nothing has to be searched.
        if self.noses and not any(self.may_end(n) for n in [*self.noses, None]):
            return None
        if not self.job["falls"] and not self.noses:
            return None
        goal, seen, stack = len(self.stations) - 1, set(), [((0, None, 0.0), None)]
        while stack:
            node, before = stack.pop()
            i, nose, last = node
            if node in seen:
                continue
            seen.add(node)
            here = (node, before)
            if i == goal:
                if self.may_end(nose) and self.closely(here):
                    return here
                continue
            t = self.stations[i]
            if i > 0:
                if nose is not None and last != t:
                    stack.append(((i, nose, t), here))
                for other in self.noses:
                    # Hand-overs change nothing else; from one nose to another the collet opens.
                    if other != nose and other <= t and self.holds(t, other, last):
                        if self.lets_go(t, nose, last):
                            stack.append(((i, other, last), here))
            if self.runs(i, nose, last):
                stack.append(((i + 1, nose, last), here))
        return None

    def closely(self, here):
        """The way again, on states a millimetre apart."""
        while here[1]:
            (i, nose, last), (j, *_) = here[0], here[1][0]
            if i != j and not self.runs(j, nose, last, CLOSE):
                return False
            here = here[1]
        return True


def contradicts(job, budget=1500):
    """A way that the verdict misses as text; "" where there is none; none where the search ends undecided."""
    machine = job["machine"]
    if not job["bush"] or any(at + job["reaches"][0] > job["length"] for _, at, _ in driven_work(job)):
        return None
    if job["stock"] > machine["bush"]["max_bar"]:
        return ""
    spindle = machine.get("counter_spindle")
    try:
        for collet in spindle["collets"] if spindle else [None]:
            way = Search(job, collet, budget).way()
            if way:
                nodes = []
                while way:
                    nodes.append(way[0])
                    way = way[1]
                return f"can be made with collet {collet and collet['name']}: {nodes[::-1]}"
    except TooMuch:
        return None
    return ""
