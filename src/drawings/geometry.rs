//! Points, lines and arcs of a drawing in mm, and how blocks move them.

/// A point of the drawing in mm.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Up.
    pub y: f64,
}

impl Point {
    /// Distance of two points in mm.
    pub fn distance(self, other: Point) -> f64 {
        (self.x - other.x).hypot(self.y - other.y)
    }

    /// For messages about two places that are close together: rounded to the micrometre.
    pub fn fine(self) -> String {
        let tidy = |v: f64| (v * 1e3).round() / 1e3 + 0.0;
        format!("({}, {})", tidy(self.x), tidy(self.y))
    }

    /// For messages: rounded to one decimal, which is enough to find the place.
    pub fn text(self) -> String {
        let tidy = |v: f64| (v * 10.0).round() / 10.0 + 0.0;
        format!("({}, {})", tidy(self.x), tidy(self.y))
    }
}

/// A line, or an arc through a third point between its ends.
#[derive(Debug, Clone, PartialEq)]
pub struct Segment {
    /// One end.
    pub a: Point,
    /// The other end.
    pub b: Point,
    /// A point of the arc between the ends. None: a line.
    pub mid: Option<Point>,
    /// What it is drawn as: `LINE`, `LWPOLYLINE`…
    pub entity: &'static str,
    /// Its layer.
    pub layer: String,
    /// Its line type in capitals. If it has none of its own, the line type of its layer.
    pub line_type: String,
}

impl Segment {
    /// Length of a line in mm. For an arc, the length of its chord.
    pub fn chord(&self) -> f64 {
        self.a.distance(self.b)
    }

    /// Corners of the box around the ends and the middle: smallest and largest coordinates.
    pub fn bounds(&self) -> (Point, Point) {
        let all = [self.a, self.b, self.mid.unwrap_or(self.a)];
        bounds(&all)
    }
}

/// Corners of the box around points: smallest and largest coordinates.
pub fn bounds(points: &[Point]) -> (Point, Point) {
    let mut low = Point { x: f64::INFINITY, y: f64::INFINITY };
    let mut high = Point { x: f64::NEG_INFINITY, y: f64::NEG_INFINITY };
    for p in points {
        low = Point { x: low.x.min(p.x), y: low.y.min(p.y) };
        high = Point { x: high.x.max(p.x), y: high.y.max(p.y) };
    }
    (low, high)
}

/// Centre and radius of the circle through three points. None if the points lie on a line.
pub fn circle(a: Point, m: Point, b: Point) -> Option<(Point, f64)> {
    let d = 2.0 * (a.x * (m.y - b.y) + m.x * (b.y - a.y) + b.x * (a.y - m.y));
    let square = |p: Point| p.x * p.x + p.y * p.y;
    let x = (square(a) * (m.y - b.y) + square(m) * (b.y - a.y) + square(b) * (a.y - m.y)) / d;
    let y = (square(a) * (b.x - m.x) + square(m) * (a.x - b.x) + square(b) * (m.x - a.x)) / d;
    let centre = Point { x, y };
    (x.is_finite() && y.is_finite()).then(|| (centre, centre.distance(a)))
}

/// Middle of the arc that a bulge makes of a chord. The bulge is the tangent of a quarter of the arc's angle, and is
/// positive if the arc runs anticlockwise.
pub fn bulge_middle(a: Point, b: Point, bulge: f64) -> Point {
    Point { x: (a.x + b.x) / 2.0 + bulge * (b.y - a.y) / 2.0, y: (a.y + b.y) / 2.0 - bulge * (b.x - a.x) / 2.0 }
}

/// A linear map and a shift: `x' = xx x + xy y + x0`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Affine {
    xx: f64,
    xy: f64,
    yx: f64,
    yy: f64,
    x0: f64,
    y0: f64,
}

impl Affine {
    /// Scales about the origin, by `x` across and by `y` up.
    pub fn scale(x: f64, y: f64) -> Affine {
        Affine { xx: x, xy: 0.0, yx: 0.0, yy: y, x0: 0.0, y0: 0.0 }
    }

    /// Turns about the origin, in degrees, anticlockwise. Quarter turns are exact.
    pub fn turn(degrees: f64) -> Affine {
        let (sin, cos) = match degrees.rem_euclid(360.0) {
            0.0 => (0.0, 1.0),
            90.0 => (1.0, 0.0),
            180.0 => (0.0, -1.0),
            270.0 => (-1.0, 0.0),
            other => other.to_radians().sin_cos(),
        };
        Affine { xx: cos, xy: -sin, yx: sin, yy: cos, x0: 0.0, y0: 0.0 }
    }

    /// Shifts by `x` across and by `y` up.
    pub fn shift(x: f64, y: f64) -> Affine {
        Affine { x0: x, y0: y, ..Affine::scale(1.0, 1.0) }
    }

    /// The map that applies first `inner`, then this map.
    pub fn after(&self, inner: &Affine) -> Affine {
        Affine {
            xx: self.xx * inner.xx + self.xy * inner.yx,
            xy: self.xx * inner.xy + self.xy * inner.yy,
            yx: self.yx * inner.xx + self.yy * inner.yx,
            yy: self.yx * inner.xy + self.yy * inner.yy,
            x0: self.xx * inner.x0 + self.xy * inner.y0 + self.x0,
            y0: self.yx * inner.x0 + self.yy * inner.y0 + self.y0,
        }
    }

    /// The point to which a point is moved.
    pub fn of(&self, p: Point) -> Point {
        Point { x: self.xx * p.x + self.xy * p.y + self.x0, y: self.yx * p.x + self.yy * p.y + self.y0 }
    }

    /// The factor of all lengths. None if it depends on the direction, because arcs then become parts of ellipses.
    pub fn factor(&self) -> Option<f64> {
        let (along, across) = (self.xx.hypot(self.yx), self.xy.hypot(self.yy));
        let skew = self.xx * self.xy + self.yx * self.yy;
        let same = (along - across).abs() <= 1e-9 * along.max(across) && skew.abs() <= 1e-9 * along * across;
        (same && along.is_finite() && along > 0.0).then_some(along)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn p(x: f64, y: f64) -> Point {
        Point { x, y }
    }

    #[test]
    fn a_bulge_of_one_is_half_a_circle_to_the_right_of_its_chord() {
        let mid = bulge_middle(p(0.0, 0.0), p(2.0, 0.0), 1.0);
        assert_eq!(mid, p(1.0, -1.0));
        let (centre, radius) = circle(p(0.0, 0.0), mid, p(2.0, 0.0)).expect("a circle");
        assert!(centre.distance(p(1.0, 0.0)) < 1e-12 && (radius - 1.0).abs() < 1e-12);
        assert_eq!(circle(p(0.0, 0.0), p(1.0, 0.0), p(2.0, 0.0)), None);
    }

    #[test]
    fn maps_follow_each_other_from_the_inside() {
        let map = Affine::shift(10.0, 0.0).after(&Affine::turn(90.0)).after(&Affine::scale(2.0, -2.0));
        assert_eq!(map.of(p(1.0, 1.0)), p(12.0, 2.0));
        assert_eq!(map.factor(), Some(2.0));
        assert_eq!(Affine::scale(1.0, 2.0).factor(), None);
    }
}
