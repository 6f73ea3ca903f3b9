//! The entities of a drawing as segments, texts and dimensions in mm, with blocks resolved. What is not read is noted
//! with its place.

use dxf::Drawing;
use dxf::XDataItem;
use dxf::entities::{DimensionBase, Entity, EntityType};
use dxf::enums::AcadVersion;
use std::collections::BTreeMap;

use super::census::{LENGTH_FACTOR, RawDimension};
use super::geometry::{Affine, Point, Segment, bulge_middle};
use super::words::INCH_MM;
use crate::lang;

/// Deepest nesting of blocks. Deeper blocks are reported.
const DEPTH_MAX: usize = 8;
/// Most segments. The limit ends the reading of blocks inside blocks.
pub const SEGMENTS_MAX: usize = 20_000;

/// A text.
#[derive(Debug, Clone, PartialEq)]
pub struct Text {
    /// Its place.
    pub at: Point,
    /// The text as it is drawn, with its formatting codes.
    pub text: String,
    /// `TEXT`, `MTEXT`, `ATTRIB`.
    pub entity: &'static str,
    /// Name of an attribute; empty for other texts.
    pub tag: String,
    /// Its layer.
    pub layer: String,
}

/// A dimension.
#[derive(Debug, Clone, PartialEq)]
pub struct Dimension {
    /// The two points it measures between.
    pub points: [Point; 2],
    /// Direction along which it measures, degrees. None: straight from point to point.
    pub along: Option<f64>,
    /// Its own text: empty, or with `<>` in place of the measured value.
    pub text: String,
    /// Whether it is a dimension of a circle's diameter.
    pub diametric: bool,
    /// Factor from the drawn to the shown length, by its own data or its style. It is used if the text has no number.
    pub factor: f64,
    /// Its layer.
    pub layer: String,
}

/// Entities that are not read.
#[derive(Debug, Clone, PartialEq)]
pub struct Left {
    /// Kind of the entities, such as `HATCH`.
    pub what: String,
    /// Its layer.
    pub layer: String,
    /// Why.
    pub why: &'static str,
    /// How many.
    pub count: usize,
    /// Where the first is, mm.
    pub at: Point,
}

impl Dimension {
    /// What it measures on the drawing, mm.
    pub fn measured(&self) -> f64 {
        let [a, b] = self.points;
        match self.along {
            None => a.distance(b),
            Some(degrees) => {
                let (sin, cos) = degrees.to_radians().sin_cos();
                ((b.x - a.x) * cos + (b.y - a.y) * sin).abs()
            }
        }
    }
}

/// Everything that was collected.
#[derive(Debug, Clone, Default)]
pub struct Collected {
    /// Lines and arcs.
    pub segments: Vec<Segment>,
    /// Texts.
    pub texts: Vec<Text>,
    /// Dimensions.
    pub dimensions: Vec<Dimension>,
    /// Factor for lengths by the name of a dimension style, in capitals.
    factors: BTreeMap<String, f64>,
    left: BTreeMap<(String, String, &'static str), (usize, Point)>,
}

impl Collected {
    /// Notes entities that are not read.
    pub fn leave(&mut self, what: &str, layer: &str, why: &'static str, at: Point, count: usize) {
        self.left.entry((what.to_owned(), layer.to_owned(), why)).or_insert((0, at)).0 += count;
    }

    /// Adds the dimensions that the library has not read.
    pub fn raw_dimensions(&mut self, raw: &[RawDimension], mm: f64) {
        for d in raw {
            let [first, second, third, on_circle] = d.points.map(|(x, y)| Point { x: x * mm, y: y * mm });
            let (points, along, diametric) = match d.flags & 7 {
                0 => ([second, third], Some(d.angle), false),
                1 => ([second, third], None, false),
                3 => ([first, on_circle], None, true),
                _ => {
                    self.leave("DIMENSION", &d.layer, lang::text("entity-unknown"), first, 1);
                    continue;
                }
            };
            let (text, layer) = (d.text.clone(), d.layer.clone());
            let factor = self.length_factor(d.factor, &d.style, mm);
            self.dimensions.push(Dimension { points, along, text, diametric, factor, layer });
        }
    }

    /// Factor from drawn to shown length of a dimension. A dimension that shows inches in a drawing in mm, or mm in one
    /// in inches, is at full size. A negative factor applies only to sheets of paper. In both cases the factor is 1.
    fn length_factor(&self, own: Option<f64>, style: &str, unit_mm: f64) -> f64 {
        let factor = own.or_else(|| self.factors.get(&style.to_uppercase()).copied()).unwrap_or(1.0);
        let other_unit = [unit_mm, 1.0 / INCH_MM].iter().any(|u| (factor / u - 1.0).abs() < 1e-3);
        if factor > 0.0 && factor.is_finite() && !other_unit { factor } else { 1.0 }
    }

    /// Enlarges everything by a factor.
    pub fn enlarge(&mut self, factor: f64) {
        let map = Affine::scale(factor, factor);
        for s in &mut self.segments {
            (s.a, s.b, s.mid) = (map.of(s.a), map.of(s.b), s.mid.map(|m| map.of(m)));
        }
        self.texts.iter_mut().for_each(|t| t.at = map.of(t.at));
        self.dimensions.iter_mut().for_each(|d| d.points = d.points.map(|p| map.of(p)));
        self.left.values_mut().for_each(|(_, at)| *at = map.of(*at));
    }

    /// The entities that were not read.
    pub fn left(&self) -> Vec<Left> {
        self.left
            .iter()
            .map(|((what, layer, why), (count, at))| Left {
                what: what.clone(),
                layer: layer.clone(),
                why,
                count: *count,
                at: *at,
            })
            .collect()
    }
}

/// Layers of the drawing: line type, and whether they are shown.
struct Layers<'a>(BTreeMap<String, (&'a str, bool)>);

struct Reading<'a> {
    drawing: &'a Drawing,
    layers: Layers<'a>,
    /// Whether texts are mended. Texts of a binary file come as single bytes, which from R2007 on are UTF-8.
    mend: bool,
    unit_mm: f64,
    out: Collected,
}

/// How an entity of a block is placed in the drawing.
#[derive(Clone)]
struct Place {
    map: Affine,
    /// Layer and line type of the insert. Entities on layer 0 and of type BYBLOCK take them over.
    layer: Option<String>,
    line_type: String,
    depth: usize,
}

/// Collects the model of a drawing. `mm` is the length of a drawing unit, `factors` are those of the dimension styles.
pub fn collect(drawing: &Drawing, mm: f64, binary: bool, factors: &BTreeMap<String, f64>) -> Collected {
    let of_layer = drawing.layers().map(|l| (l.name.to_uppercase(), (l.line_type_name.as_str(), l.is_layer_on)));
    let mut reading = Reading {
        drawing,
        layers: Layers(of_layer.collect()),
        mend: binary && drawing.header.version >= AcadVersion::R2007,
        unit_mm: mm,
        out: Collected { factors: factors.clone(), ..Collected::default() },
    };
    let place = Place { map: Affine::scale(mm, mm), layer: None, line_type: "CONTINUOUS".into(), depth: 0 };
    for entity in drawing.entities() {
        if !entity.common.is_in_paper_space {
            reading.entity(entity, &place);
        }
    }
    reading.out
}

/// A text that was read byte by byte, decoded as UTF-8 if it is UTF-8.
fn mended(text: &str) -> String {
    let bytes: Option<Vec<u8>> = text.chars().map(|c| u8::try_from(c as u32).ok()).collect();
    bytes.and_then(|b| String::from_utf8(b).ok()).unwrap_or_else(|| text.to_owned())
}

impl Reading<'_> {
    fn word(&self, text: &str) -> String {
        if self.mend { mended(text) } else { text.to_owned() }
    }

    fn entity(&mut self, entity: &Entity, place: &Place) {
        let own = self.word(&entity.common.layer);
        let layer = match &place.layer {
            Some(of_insert) if own == "0" => of_insert.clone(),
            _ => own,
        };
        let (of_layer, on) = self.layers.0.get(&layer.to_uppercase()).copied().unwrap_or(("CONTINUOUS", true));
        let line_type = match entity.common.line_type_name.to_uppercase() {
            name if name.is_empty() || name == "BYLAYER" => of_layer.to_uppercase(),
            name if name == "BYBLOCK" => place.line_type.clone(),
            name => name,
        };
        let (what, at) = about(entity);
        let at_mm = place.map.of(at);
        if !on || !entity.common.is_visible {
            self.out.leave(what, &layer, lang::text("entity-hidden"), at_mm, 1);
            return;
        }
        let line = |entity: &'static str, a: Point, b: Point, mid: Option<Point>, map: &Affine| Segment {
            a: map.of(a),
            b: map.of(b),
            mid: mid.map(|m| map.of(m)),
            entity,
            layer: layer.clone(),
            line_type: line_type.clone(),
        };
        let flat = |normal: &dxf::Vector| match (normal.x.abs() + normal.y.abs() < 1e-9, normal.z > 0.0) {
            (true, true) => Some(place.map),
            // Seen from behind: a mirrored arc or polyline is stored like this.
            (true, false) => Some(place.map.after(&Affine::scale(-1.0, 1.0))),
            _ => None,
        };
        match &entity.specific {
            EntityType::Line(l) => {
                let segment = line("LINE", xy(&l.p1), xy(&l.p2), None, &place.map);
                self.segments(vec![segment], what, &layer, at_mm);
            }
            EntityType::Arc(arc) => match flat(&arc.normal) {
                Some(map) if map.factor().is_some() => {
                    let sweep = (arc.end_angle - arc.start_angle).rem_euclid(360.0);
                    let on = |degrees: f64| {
                        let (sin, cos) = degrees.to_radians().sin_cos();
                        Point { x: arc.center.x + arc.radius * cos, y: arc.center.y + arc.radius * sin }
                    };
                    let (a, b) = (on(arc.start_angle), on(arc.start_angle + sweep));
                    let segment = line("ARC", a, b, Some(on(arc.start_angle + sweep / 2.0)), &map);
                    self.segments(vec![segment], what, &layer, at_mm);
                }
                _ => self.out.leave(what, &layer, lang::text("entity-squeezed"), at_mm, 1),
            },
            EntityType::LwPolyline(p) => {
                let vertices: Vec<(Point, f64)> =
                    p.vertices.iter().map(|v| (Point { x: v.x, y: v.y }, v.bulge)).collect();
                self.polyline(
                    "LWPOLYLINE",
                    &vertices,
                    p.is_closed(),
                    flat(&p.extrusion_direction),
                    &line,
                    &layer,
                    at_mm,
                );
            }
            EntityType::Polyline(p) if p.is_3d_polygon_mesh() || p.flags & 64 != 0 => {
                self.out.leave(what, &layer, lang::text("entity-mesh"), at_mm, 1);
            }
            EntityType::Polyline(p) => {
                // Points of a control frame are not on the curve.
                let vertices: Vec<(Point, f64)> =
                    p.vertices().filter(|v| v.flags & 16 == 0).map(|v| (xy(&v.location), v.bulge)).collect();
                self.polyline("POLYLINE", &vertices, p.is_closed(), flat(&p.normal), &line, &layer, at_mm);
            }
            EntityType::Insert(insert) => {
                let inner = Place { map: place.map, layer: Some(layer.clone()), line_type, depth: place.depth + 1 };
                for (attribute, _) in &insert.__attributes_and_handles {
                    let text = Text {
                        at: place.map.of(xy(&attribute.location)),
                        text: self.word(&attribute.value),
                        entity: "ATTRIB",
                        tag: self.word(&attribute.attribute_tag),
                        layer: layer.clone(),
                    };
                    self.out.texts.push(text);
                }
                match flat(&insert.extrusion_direction) {
                    Some(map) => self.insert(insert, Place { map, ..inner }, &layer, at_mm),
                    None => self.out.leave(what, &layer, lang::text("entity-at-angle"), at_mm, 1),
                }
            }
            EntityType::Text(t) => {
                let text = self.word(&t.value);
                self.out.texts.push(Text { at: at_mm, text, entity: "TEXT", tag: String::new(), layer });
            }
            EntityType::MText(t) => {
                let text = self.word(&(t.extended_text.concat() + &t.text));
                self.out.texts.push(Text { at: at_mm, text, entity: "MTEXT", tag: String::new(), layer });
            }
            EntityType::RotatedDimension(d) => {
                let points = [&d.definition_point_2, &d.definition_point_3].map(|p| place.map.of(xy(p)));
                self.dimension(entity, &d.dimension_base, points, Some(d.rotation_angle), layer);
            }
            EntityType::DiameterDimension(d) => {
                let points = [&d.dimension_base.definition_point_1, &d.definition_point_2].map(|p| place.map.of(xy(p)));
                self.dimension(entity, &d.dimension_base, points, None, layer);
            }
            // Attribute definitions are not shown in an insert. The end of a list is not an entity.
            EntityType::AttributeDefinition(_) | EntityType::Seqend(_) | EntityType::Vertex(_) => {}
            _ => self.out.leave(what, &layer, lang::text("entity-unknown"), at_mm, 1),
        }
    }

    fn segments(&mut self, segments: Vec<Segment>, what: &str, layer: &str, at: Point) {
        for segment in segments {
            let finite = [Some(segment.a), Some(segment.b), segment.mid].into_iter().flatten();
            if !finite.into_iter().all(|p| p.x.is_finite() && p.y.is_finite()) {
                self.out.leave(what, layer, lang::text("entity-not-finite"), Point::default(), 1);
            } else if self.out.segments.len() >= SEGMENTS_MAX {
                self.out.leave(what, layer, lang::text("entity-too-many"), at, 1);
            } else if segment.chord() > 0.0 {
                self.out.segments.push(segment);
            } else if segment.mid.is_some() {
                self.out.leave(what, layer, lang::text("entity-circle"), at, 1);
            }
        }
    }

    #[allow(clippy::too_many_arguments)]
    fn polyline(
        &mut self,
        what: &'static str,
        vertices: &[(Point, f64)],
        closed: bool,
        map: Option<Affine>,
        line: &impl Fn(&'static str, Point, Point, Option<Point>, &Affine) -> Segment,
        layer: &str,
        at: Point,
    ) {
        let Some(map) = map else {
            self.out.leave(what, layer, lang::text("entity-at-angle"), at, 1);
            return;
        };
        let last = closed.then(|| vertices.last().zip(vertices.first())).flatten();
        let pairs = vertices.iter().zip(vertices.iter().skip(1)).chain(last);
        let mut segments = Vec::new();
        for ((a, bulge), (b, _)) in pairs {
            if *bulge != 0.0 && map.factor().is_none() {
                self.out.leave(what, layer, lang::text("entity-squeezed-arc"), map.of(*a), 1);
                continue;
            }
            let mid = (*bulge != 0.0).then(|| bulge_middle(*a, *b, *bulge));
            segments.push(line(what, *a, *b, mid, &map));
        }
        self.segments(segments, what, layer, at);
    }

    fn insert(&mut self, insert: &dxf::entities::Insert, place: Place, layer: &str, at: Point) {
        let Some(block) = self.drawing.blocks().find(|b| b.name.eq_ignore_ascii_case(&insert.name)) else {
            self.out.leave("INSERT", layer, lang::text("entity-no-block"), at, 1);
            return;
        };
        if place.depth > DEPTH_MAX {
            self.out.leave("INSERT", layer, lang::text("entity-nested"), at, 1);
            return;
        }
        let (columns, rows) = (insert.column_count.max(1), insert.row_count.max(1));
        if i32::from(columns) * i32::from(rows) > 100 {
            self.out.leave("INSERT", layer, lang::text("entity-copies"), at, 1);
            return;
        }
        for (column, row) in (0..columns).flat_map(|c| (0..rows).map(move |r| (c, r))) {
            let copy = Affine::shift(f64::from(column) * insert.column_spacing, f64::from(row) * insert.row_spacing);
            let map = place
                .map
                .after(&Affine::shift(insert.location.x, insert.location.y))
                .after(&Affine::turn(insert.rotation))
                .after(&copy)
                .after(&Affine::scale(insert.x_scale_factor, insert.y_scale_factor))
                .after(&Affine::shift(-block.base_point.x, -block.base_point.y));
            for entity in &block.entities {
                if self.out.segments.len() < SEGMENTS_MAX {
                    self.entity(entity, &Place { map, ..place.clone() });
                }
            }
        }
    }

    fn dimension(
        &mut self,
        entity: &Entity,
        base: &DimensionBase,
        points: [Point; 2],
        along: Option<f64>,
        layer: String,
    ) {
        let text = self.word(&base.text);
        let diametric = matches!(entity.specific, EntityType::DiameterDimension(_));
        let own = entity.common.x_data.iter().find_map(|data| overriding(&data.items));
        let factor = self.out.length_factor(own, &self.word(&base.dimension_style_name), self.unit_mm);
        self.out.dimensions.push(Dimension { points, along, text, diametric, factor, layer });
    }
}

/// The factor for lengths by which a dimension overrides its style, from the pairs of code and value after `DSTYLE`.
fn overriding(items: &[XDataItem]) -> Option<f64> {
    let at = items.iter().position(|i| matches!(i, XDataItem::Str(what) if what == "DSTYLE"))?;
    let Some(XDataItem::ControlGroup(pairs)) = items.get(at + 1) else { return None };
    pairs.windows(2).find_map(|pair| match pair {
        [XDataItem::Integer(code), XDataItem::Real(factor)] if i32::from(*code) == LENGTH_FACTOR => Some(*factor),
        _ => None,
    })
}

fn xy(p: &dxf::Point) -> Point {
    Point { x: p.x, y: p.y }
}

/// Kind and place of an entity.
fn about(entity: &Entity) -> (&'static str, Point) {
    let none = Point::default();
    match &entity.specific {
        EntityType::Line(l) => ("LINE", xy(&l.p1)),
        EntityType::Arc(a) => ("ARC", xy(&a.center)),
        EntityType::Circle(c) => ("CIRCLE", xy(&c.center)),
        EntityType::Ellipse(e) => ("ELLIPSE", xy(&e.center)),
        EntityType::Spline(s) => ("SPLINE", s.control_points.first().or(s.fit_points.first()).map_or(none, xy)),
        EntityType::LwPolyline(p) => ("LWPOLYLINE", p.vertices.first().map_or(none, |v| Point { x: v.x, y: v.y })),
        EntityType::Polyline(p) => ("POLYLINE", p.vertices().next().map_or(none, |v| xy(&v.location))),
        EntityType::Insert(i) => ("INSERT", xy(&i.location)),
        EntityType::Text(t) => ("TEXT", xy(&t.location)),
        EntityType::MText(t) => ("MTEXT", xy(&t.insertion_point)),
        EntityType::RotatedDimension(d) => ("DIMENSION", xy(&d.definition_point_2)),
        EntityType::DiameterDimension(d) => ("DIMENSION", xy(&d.definition_point_2)),
        EntityType::RadialDimension(d) => ("DIMENSION", xy(&d.definition_point_2)),
        EntityType::AngularThreePointDimension(d) => ("DIMENSION", xy(&d.dimension_base.definition_point_1)),
        EntityType::OrdinateDimension(d) => ("DIMENSION", xy(&d.dimension_base.definition_point_1)),
        EntityType::Solid(s) => ("SOLID", xy(&s.first_corner)),
        EntityType::Leader(l) => ("LEADER", l.vertices.first().map_or(none, xy)),
        EntityType::ModelPoint(p) => ("POINT", xy(&p.location)),
        EntityType::Tolerance(t) => ("TOLERANCE", xy(&t.insertion_point)),
        EntityType::XLine(x) => ("XLINE", xy(&x.first_point)),
        EntityType::Ray(r) => ("RAY", xy(&r.start_point)),
        EntityType::MLine(m) => ("MLINE", xy(&m.start_point)),
        EntityType::Image(i) => ("IMAGE", xy(&i.location)),
        EntityType::Attribute(a) => ("ATTRIB", xy(&a.location)),
        _ => ("another entity", none),
    }
}

/// Kinds of entities that the library reads, so that they come through [`collect`].
pub const READ: [&str; 31] = [
    "LINE",
    "3DLINE",
    "ARC",
    "CIRCLE",
    "ELLIPSE",
    "SPLINE",
    "LWPOLYLINE",
    "POLYLINE",
    "VERTEX",
    "SEQEND",
    "INSERT",
    "TEXT",
    "MTEXT",
    "ATTRIB",
    "ATTDEF",
    "DIMENSION",
    "SOLID",
    "TRACE",
    "LEADER",
    "POINT",
    "TOLERANCE",
    "XLINE",
    "RAY",
    "MLINE",
    "IMAGE",
    "3DFACE",
    "3DSOLID",
    "BODY",
    "REGION",
    "SHAPE",
    "WIPEOUT",
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn texts_of_binary_files_are_mended() {
        assert_eq!(mended("\u{c3}\u{98}18 h6"), "Ø18 h6");
        assert_eq!(mended("Ø18 h6"), "Ø18 h6");
        assert_eq!(mended("plain"), "plain");
    }
}
